#pragma once

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

#include <berthwright/solve/cover/cover.h>
#include <berthwright/solve/load/loads.h>
#include <berthwright/solve/site/siting.h>

#include "view/on_screen.h"

namespace berthwright {

// The handover packet as a document: what is said and drawn, in order. Writers decide how it looks.

/// One paragraph.
struct PacketText {
  enum class Tone { plain, alert, quiet };
  std::string words;
  Tone tone = Tone::plain;
  bool on_screen_alone = false;  ///< not said on paper
};
struct PacketList {
  std::vector<std::string> items;
  bool numbered = false;
  bool of_the_shop = false;  ///< written by the shop alone, in whatever language
};
/// The first column names what the row is about.
struct PacketTable {
  std::vector<std::string> heads;
  std::vector<std::vector<std::string>> rows;  ///< as long as `heads`
};
/// A number or a sign on a drawing, and what it stands for.
struct PacketKey {
  int number = 0;  ///< 0: none
  std::optional<Sheet> sign;
  std::string words;
};
/// Drawings side by side.
struct PacketViews {
  std::vector<Sheet> views;
  std::vector<PacketKey> keys;
};
/// A smaller heading within a section, or a minor one under such.
struct PacketHeading {
  std::string words;
  bool minor = false;
};
/// A conversion, to be gone through stage by stage.
struct PacketStages {
  std::string heading;  ///< "From day to night: 8 steps"
  std::vector<StageDrawing> stages;
};
/// Lines to be signed, one for each.
struct PacketSignatures {
  std::vector<std::string> who;
};
using PacketBlock = std::variant<PacketText, PacketList, PacketTable, PacketViews, PacketHeading,
                                 PacketStages, PacketSignatures>;

struct PacketSection {
  std::string id;  ///< plain letters, of our own
  std::string heading;
  std::vector<PacketBlock> blocks;
};
struct Packet {
  std::string title;
  std::string under_title;  ///< whose work it is, for whom, when
  English english = English::american;
  std::vector<PacketText> lead;
  std::vector<PacketSection> sections;
  std::string caution;
};

/// All that a packet draws on; the others are of `plan`.
struct PacketMatter {
  const Plan& plan;
  const Answer& answer;
  std::span<const HeaterPlaces> heaters;
  std::span<const Conversion> conversions;
  const std::vector<Cover>& covers;
  std::span<const Loads> loads{};
};

/// For the person who takes the trailer home.
Packet buyer_packet(const PacketMatter& of);
/// For the people at the bench who build it.
Packet shop_packet(const PacketMatter& of);

}  // namespace berthwright

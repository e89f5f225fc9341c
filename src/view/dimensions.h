#pragma once

#include <optional>
#include <span>

#include <berthwright/plan/names.h>

#include "view/scale.h"

namespace berthwright {

/// A row of measures outside one wall: neighbouring stops, in plan lengths from the front or the left wall.
struct DimensionChain {
  Wall side = Wall::left;
  std::vector<Length> stops;  ///< ascending, at least two
  bool both_units = false;    ///< the other unit in brackets on the far side of the line
  enum class Of { openings, things, whole };
  Of what = Of::things;
  bool left_out = false;  ///< stops that cannot be told apart at the scale are merged
  bool feet = true;       ///< cushions are called by plain inches
};

/// How one chain is set, before its place is known.
struct ChainSetting {
  DimensionChain chain;
  std::vector<std::string> figures;  ///< one for each interval
  std::vector<std::string> others;   ///< in the other unit; empty unless the chain has both
  std::vector<PaperLength> middles;  ///< of the figures that stand within; along the wall from x = 0 or y = 0
  std::vector<bool> crossed;         ///< an extension line of a chain beyond runs through that figure
  /// Where a figure that finds no room within its interval stands: its middle, in the row outside; along the
  /// wall from x = 0 or y = 0.
  std::vector<std::optional<PaperLength>> moved_out;
  bool crowded = false;  ///< even that row is too short: say the chain in words instead
  PaperLength inward;    ///< room it needs between its line and the trailer
  PaperLength outward;   ///< and on the other side
};
/// Sets a chain alone: every figure in the middle of its interval.
ChainSetting set_chain(const DimensionChain& chain, std::int64_t ratio, Unit own);

/// Moves figures within their intervals off the extension lines of the chains `beyond`.
void keep_off(ChainSetting& setting, std::span<const ChainSetting> beyond, std::int64_t ratio);

/// A length as dimension chains print it: without the unit where the title block names it.
std::string dimension_figure(Length length, Unit own, bool feet = true);

/// Distances of the lines of `chains` (nearest first) from the wall's face, and the room they need in all.
struct Lanes {
  std::vector<PaperLength> lines;
  PaperLength depth;
};
Lanes lanes_of(const std::vector<ChainSetting>& chains, PaperLength first);

/// The chain at `distance` from the wall, whose inner face is the box `room`.
std::vector<Mark> marks_of(const ChainSetting& setting, const PlanView& view, const PaperBox& room,
                           PaperLength distance);

}  // namespace berthwright

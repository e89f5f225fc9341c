#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/write/interview.h>

namespace berthwright {

/// How far the walls of a room stand inside the box around it.
struct WallInsets {
  Length rear{};
  Length left{};
  Length right{};
};

/// The furniture of a layout, each thing as JSON.
struct StartLayout {
  std::vector<std::string> fixtures;
  std::vector<std::string> pieces;
  std::vector<std::string> day;
  std::vector<std::string> night;
  std::vector<std::string> beds;  ///< but for the one that is made over benches and boards
  Length bunk{};                  ///< how far a bunk reaches from the rear; what stands under it says on what
  std::string store;              ///< id of a bench in which things are kept by night
};

/// Writes single things of a plan in its unit.
class ThingWriter {
 public:
  explicit ThingWriter(Unit unit) : unit_(unit) {}
  std::string length(Length length) const;
  static std::string text(std::string_view text);
  /// One of `"left": "0"` and `"behind": ["bench", "0"]`.
  std::string from_wall(std::string_view wall, Length distance) const;
  std::string from_fixture(std::string_view word, std::string_view id, Length distance) const;
  static std::string at(const std::string& along, const std::string& across) {
    return "\"at\": { " + along + ", " + across + " }";
  }
  std::string sizes(Length along, Length across) const;
  /// Id, name and kind, with the braces open.
  static std::string thing(std::string_view id, std::string_view name, std::string_view kind);
  Length by_unit(Length inches, Length millimetres) const {
    return unit_ == Unit::inch ? inches : millimetres;
  }

 private:
  Unit unit_;
};

/// Benches, ledges, table and boards of the layout that was chosen, in a room that is `across` wide between
/// its walls.
StartLayout start_layout(const Interview& interview, const WallInsets& insets, Length across);

}  // namespace berthwright

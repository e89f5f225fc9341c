#include "plan/meant_field.h"

#include <algorithm>
#include <array>

#include "plan/nearest_name.h"

namespace berthwright {
namespace {

constexpr std::string_view from_two_walls =
    R"(write "at": {"front": "…", "left": "…"}, its distances from two walls)";
constexpr std::string_view length_or_width =
    R"(write "length" for the measure along the trailer, "width" for the one across it)";
constexpr std::string_view above_floor = R"(write "base", the height of the underside above the floor)";

/// A word that people type for a field of ours. The first whose field may stand there counts.
struct FieldWord {
  std::string_view typed;
  std::string_view ours;
  std::string_view cure{};  ///< where more is to be said than the name
};
constexpr std::array<FieldWord, 62> field_words{{
    // Where a thing is: of a measure its wall, of a door or window its distance, of all else the pair.
    {"from_front", "front"},
    {"from_rear", "rear"},
    {"from_back", "rear"},
    {"back", "rear"},
    {"from_left", "left"},
    {"from_right", "right"},
    {"x", "front"},
    {"y", "left"},
    {"in_front_of", "ahead_of"},
    {"before", "ahead_of"},
    {"after", "behind"},
    {"from_front", "from"},
    {"from_left", "from"},
    {"from_front", "at", from_two_walls},
    {"from_rear", "at", from_two_walls},
    {"from_back", "at", from_two_walls},
    {"from_left", "at", from_two_walls},
    {"from_right", "at", from_two_walls},
    {"front", "at", from_two_walls},
    {"rear", "at", from_two_walls},
    {"left", "at", from_two_walls},
    {"right", "at", from_two_walls},
    {"x", "at", from_two_walls},
    {"y", "at", from_two_walls},
    {"position", "at", from_two_walls},
    {"place", "at", from_two_walls},
    {"location", "at", from_two_walls},
    {"distance", "at", from_two_walls},
    {"front", "from_front"},
    {"left", "from_left"},
    {"from", "from_front"},
    {"from", "from_left"},
    {"at", "from_front"},
    {"at", "from_left"},
    {"z", "base", above_floor},
    {"bottom", "base", above_floor},
    {"underside", "base", above_floor},
    {"above_floor", "base", above_floor},
    {"bottom", "sill"},
    {"above_floor", "sill"},
    // How large it is.
    {"height", "stature"},
    {"tall", "stature"},
    {"depth", "width", length_or_width},
    {"deep", "width", length_or_width},
    {"breadth", "width"},
    {"wide", "width"},
    {"long", "length"},
    {"thick", "thickness"},
    {"depth", "thickness"},
    // What it is, and how it lies.
    {"label", "name"},
    {"called", "name"},
    {"type", "kind"},
    {"rotation", "turn"},
    {"rotated", "turn"},
    {"upside_down", "flipped"},
    {"supported_by", "on"},
    {"rests_on", "on"},
    {"stored_in", "stowed"},
    {"stored_in", "kept_in"},
    {"sleepers", "people"},
    {"wattage", "watts"},
    {"year", "built"},
}};

}  // namespace

std::optional<MeantField> meant_field(std::string_view typed, std::span<const std::string> fields) {
  const std::string word = folded_name(typed);
  for (const FieldWord& one : field_words) {
    if (folded_name(one.typed) != word || std::ranges::find(fields, one.ours) == fields.end()) continue;
    return MeantField{std::string(one.ours),
                      one.cure.empty() ? "write \"" + std::string(one.ours) + '"' : std::string(one.cure)};
  }
  const std::optional<std::string> near = nearest_name(typed, fields);
  return near ? std::optional(MeantField{*near, "write \"" + *near + '"'}) : std::nullopt;
}

}  // namespace berthwright

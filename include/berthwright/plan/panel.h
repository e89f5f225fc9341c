#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include <berthwright/plan/rules.h>

namespace berthwright {

/// Bending values of a strip of a panel 1 ft wide, in one direction of the face grain, for loads that are not
/// factored; rounded to the weak side.
struct StripValues {
  std::int64_t stiffness = 0;  ///< EI, lb-in² per foot of width
  std::int64_t strength = 0;   ///< FbS, the moment it may carry, lb-in per foot of width
  friend bool operator==(const StripValues&, const StripValues&) = default;
};

/// A board material with published bending values.
struct Panel {
  std::string name;                 ///< as the plan writes it: "48/24", "24 oc", "birch 12 mm"
  std::optional<int> plies;         ///< where the values differ by them; none: they hold for every count
  std::optional<Length> thickness;  ///< the real one, not the nominal one; none: we have no figure
  StripValues along;                ///< face grain along the span
  StripValues across;               ///< face grain across it
  Source source;                    ///< of the bending values
  Source thickness_source;
};

/// Every panel, in the order of the tables; a name stands once for each count of plies that has its own
/// values.
std::span<const Panel> all_panels();

/// The panel of this name with this many plies. Where the count is not given or not in the table, the least
/// of each value in it, and no plies. None: there is no such name.
std::optional<Panel> panel_named(std::string_view name, std::optional<int> plies);

}  // namespace berthwright

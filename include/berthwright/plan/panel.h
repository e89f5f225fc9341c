#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include <berthwright/plan/rules.h>

namespace berthwright {

/// Bending values of a strip of a panel 1 ft wide, in one direction of the face grain.
struct StripValues {
  std::int64_t stiffness;  ///< EI, lb-in² per foot of width
  std::int64_t strength;   ///< FbS, the moment it may carry, lb-in per foot of width
};

/// A board material with published bending values.
struct Panel {
  std::string_view name;     ///< as the plan writes it: "48/24", "birch 12 mm"
  std::optional<int> plies;  ///< where the values differ by them
  Length thickness;          ///< the real one, not the nominal one
  StripValues along;         ///< grain of the face along the span
  StripValues across;        ///< grain across it
  Source source;
};

/// Every panel, in the order of the tables.
std::span<const Panel> all_panels();

}  // namespace berthwright

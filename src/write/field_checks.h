#pragma once

#include <span>
#include <string_view>

namespace berthwright {

/// Which checks look at a field of the plan beyond where things are and how large they are.
struct FieldChecks {
  std::string_view field;   ///< section and name, as in plans/REFERENCE.md: "fixture.burns"
  std::string_view checks;  ///< rules, divided by spaces; "heat.*" are all of a room
};

std::span<const FieldChecks> field_checks();

}  // namespace berthwright

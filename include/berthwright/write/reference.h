#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace berthwright {

/// The page plans/REFERENCE.md: every field of a plan file with its meaning, what may stand there, its
/// default, an example and the checks that look at it. Made from the published schema; examples are the first
/// in `plans` (texts of plan files) that is short enough.
std::string reference_text(const std::vector<std::string>& plans);

}  // namespace berthwright

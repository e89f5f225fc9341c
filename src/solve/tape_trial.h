#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/finding.h>

namespace berthwright {

/// Whether a finding is on the good side of its limit.
bool is_fine(Status status);

/// Not met, then unknown, then close, then met; of equal ones that with less margin.
bool is_worse(const Finding& a, const Finding& b);

/// The same rule about the same thing, whatever its figures.
bool is_about_the_same(const Finding& a, const Finding& b);

/// What one plan with moved measures says of each finding of the plan as written, and what is new in it.
struct TapeTrial {
  std::vector<std::optional<Finding>> of;  ///< of each finding as written; none: nothing of its kind
  std::vector<Finding> arisen;             ///< not met or unknown, and not there as written
};

/// Findings about the same things are matched first; for each that is left, and for those without a subject
/// (which say that nothing is wrong anywhere), the worst of its rule, configuration and bed stands.
TapeTrial matched_to(const std::vector<Finding>& written, std::vector<Finding> tried);

}  // namespace berthwright

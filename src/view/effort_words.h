#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/convert/effort.h>

namespace berthwright {

/// As a machine reads it: "near", "far", "nowhere", "outside".
std::string_view word(Effort::Stand stand);

/// What the step asks beyond the limits, with the figure and whose limit it is; empty: nothing that is known.
std::vector<std::string> effort_sentences(const Plan& plan, const Step& step);
/// The pieces of its steps whose weight the plan does not give; empty: none.
std::string unknown_weights(const Plan& plan, const Conversion& conversion);

}  // namespace berthwright

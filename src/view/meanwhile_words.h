#pragma once

#include <string>
#include <string_view>

#include <berthwright/solve/convert/steps.h>

namespace berthwright {

/// What is wrong only while the steps are done: between which steps, the number, what it was compared with
/// and who says so, how it is at the start and at the end, and what to do about it.
std::string meanwhile_sentence(const Plan& plan, const Conversion& conversion, const Meanwhile& meanwhile);

/// What was looked at between the steps, in sentences.
std::string_view looked_at_meanwhile();

}  // namespace berthwright

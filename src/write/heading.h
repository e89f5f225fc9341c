#pragma once

#include <string>

#include <berthwright/solve/answer.h>

namespace berthwright {

/// Title, shop, owner and date of the plan, as the first line of a report.
std::string heading(const Plan& plan);
/// The same words, not yet broken into lines.
std::string heading_words(const Plan& plan);
/// "3 alerts not met, 1 unknown."
std::string alerts_line(const Answer& answer);

}  // namespace berthwright

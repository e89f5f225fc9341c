#pragma once

#include <vector>

#include <berthwright/write/interview.h>

namespace berthwright {

/// Every question that the answers so far lead to, in the order of the walk; those behind an unanswered one
/// that decides on more (a layout) are not yet there.
std::vector<Question> questions_after(const Interview& interview);

}  // namespace berthwright

#pragma once

#include <string>

#include "plan/commented.h"

namespace berthwright {

/// The text with its fields as they come, in house spacing: lines of at most 120 columns where words allow
/// it, each thing of a list on a line of its own, each part of the plan after an empty line. It depends on
/// the values, the comments, which of them end a line, and empty lines; not on other spaces.
std::string house_layout(const CommentedText& text);

}  // namespace berthwright

#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace berthwright {

/// The comments of a JSON text, in order, without spaces at their ends.
std::vector<std::string> comments_in(std::string_view text);

}  // namespace berthwright

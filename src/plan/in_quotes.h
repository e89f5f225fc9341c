#pragma once

#include <string>
#include <string_view>

#include "exact/code_points.h"

namespace berthwright {

/// What a person wrote, fit to stand in a message.
inline std::string in_quotes(std::string_view text) { return '"' + printable(text, 60) + '"'; }

}  // namespace berthwright

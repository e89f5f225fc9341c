#pragma once

#include <string_view>

namespace berthwright {

/// src/plan/rules.json, compiled in.
std::string_view rules_text();

}  // namespace berthwright

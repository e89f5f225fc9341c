#pragma once

#include <string_view>

namespace berthwright {

/// plans/berthwright.schema.json, compiled in.
std::string_view schema_text();

}  // namespace berthwright

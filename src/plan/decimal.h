#pragma once

#include <cstdint>

#include "plan/values.h"

namespace berthwright {

/// A decimal number of at most six digits before the point and `places` after it, times 10^places.
std::optional<std::int64_t> as_decimal(const Node& node, Reading& reading, std::size_t places,
                                       const std::string& allowed);

}  // namespace berthwright

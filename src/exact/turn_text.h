#pragma once

#include <cstdint>
#include <string_view>

#include <berthwright/exact/result.h>

namespace berthwright {

/// The angle as it is written, in millionths of a degree, whole turns kept: for an angle with a most. Else
/// the problems of `read_turn`.
Result<std::int64_t> read_microdegrees(std::string_view text);

}  // namespace berthwright

#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace berthwright {

/// A plain decimal number and the words after it, in small letters: "12.50 US gal" is 1250 / 100 of "us gal".
struct Counted {
  std::int64_t number = 0;
  std::int64_t parts = 1;
  std::string unit;
};

/// At most nine digits before the point and six after it, a minus sign before them, blanks around. None for
/// anything else.
std::optional<Counted> read_counted(std::string_view text);

}  // namespace berthwright

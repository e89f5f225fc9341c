#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace berthwright {

/// A piece of a JSON text with comments, as the file spells it.
struct PlanToken {
  enum class Kind { comment, text, bare, open, close, comma, colon };  ///< bare: number, true, false or null
  Kind kind = Kind::bare;
  std::string_view spelled;  ///< a // comment without its line end
  std::size_t at = 0;        ///< byte in the whole text
  std::size_t line = 1;      ///< line and column as a `Node` counts them
  std::size_t column = 1;
  std::size_t line_ends = 0;  ///< between the token before it and this one
};

/// The tokens of a text that `read_document` has read without a problem. Views into `text`.
std::vector<PlanToken> plan_tokens(std::string_view text);

inline constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";

}  // namespace berthwright

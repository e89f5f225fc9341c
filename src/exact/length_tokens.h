#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace berthwright {

enum class LengthSign { number, point, comma, slash, dash, blank, foot, inch, vulgar, word, other, end };

/// A piece of a written length. `text` holds the digits of a number and the small letters of a word.
struct LengthToken {
  LengthSign sign = LengthSign::end;
  std::size_t column = 0;  ///< 1-based, in characters
  std::string text;
  int top = 0;     ///< of a vulgar fraction
  int bottom = 1;  ///< of a vulgar fraction
};

/// Runs of blanks are one token, two equal foot marks are an inch mark, unit words are already marks; the
/// last token is `end`. Any text is cut, none is refused.
std::vector<LengthToken> length_tokens(std::u32string_view text);

}  // namespace berthwright

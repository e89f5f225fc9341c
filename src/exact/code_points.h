#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace berthwright {

/// The characters of a text; `broken` is the index of the first one that is no UTF-8, where `text` ends.
struct CodePoints {
  std::u32string text;
  std::optional<std::size_t> broken;
};

/// Strict: overlong forms, surrogates and anything above U+10FFFF are broken. Linear.
CodePoints code_points(std::string_view utf8);

inline constexpr std::size_t every_character = static_cast<std::size_t>(-1);
/// The text on one line, at most `longest` characters and then "…"; what cannot be shown becomes U+FFFD.
std::string printable(std::string_view utf8, std::size_t longest = 40);

bool is_blank(char32_t c);  ///< space, tab, and the spaces of typesetters; not a new line
bool is_dash(char32_t c);   ///< hyphen-minus, the dashes of typesetters, the minus sign
bool is_digit(char32_t c);
bool is_ascii_letter(char32_t c);

}  // namespace berthwright

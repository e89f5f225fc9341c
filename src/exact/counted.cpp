#include "exact/counted.h"

#include <algorithm>

#include "exact/code_points.h"

namespace berthwright {
namespace {

constexpr std::size_t counted_digits_before = 9;
constexpr std::size_t counted_digits_after = 6;

std::string unit_in_small_letters(std::u32string_view characters) {
  std::string word;
  for (const char32_t c : characters)
    if (c == U'°')
      continue;
    else if (is_blank(c))
      word += ' ';
    else if (c >= U'A' && c <= U'Z')
      word += static_cast<char>(c - U'A' + U'a');
    else
      word += c < 0x80 ? static_cast<char>(c) : '?';
  while (!word.empty() && word.back() == ' ') word.pop_back();
  return word.substr(std::min(word.size(), word.find_first_not_of(' ')));
}

}  // namespace

std::optional<Counted> read_counted(std::string_view text) {
  const CodePoints characters = code_points(text);
  if (characters.broken) return std::nullopt;
  const std::u32string& all = characters.text;
  std::size_t at = 0;
  const auto next = [&] { return at < all.size() ? all[at] : U'\0'; };
  while (is_blank(next())) ++at;
  const bool negative = is_dash(next());
  if (negative) ++at;
  Counted counted;
  std::size_t before = 0;
  std::size_t after = 0;
  for (; is_digit(next()); ++at, ++before) {
    if (before == counted_digits_before) return std::nullopt;
    counted.number = counted.number * 10 + static_cast<std::int64_t>(next() - U'0');
  }
  if (next() == U'.') {
    for (++at; is_digit(next()); ++at, ++after) {
      if (after == counted_digits_after) return std::nullopt;
      counted.number = counted.number * 10 + static_cast<std::int64_t>(next() - U'0');
      counted.parts *= 10;
    }
    if (after == 0) return std::nullopt;
  }
  if (before + after == 0) return std::nullopt;
  if (negative) counted.number = -counted.number;
  counted.unit = unit_in_small_letters(std::u32string_view(all).substr(at));
  return counted;
}

}  // namespace berthwright

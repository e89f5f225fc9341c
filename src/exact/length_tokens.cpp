#include "exact/length_tokens.h"

#include <algorithm>
#include <array>

#include "exact/code_points.h"

namespace berthwright {
namespace {

struct Vulgar {
  char32_t character;
  int top;
  int bottom;
};

constexpr std::array<Vulgar, 19> vulgars{{{U'½', 1, 2},
                                          {U'⅓', 1, 3},
                                          {U'⅔', 2, 3},
                                          {U'¼', 1, 4},
                                          {U'¾', 3, 4},
                                          {U'⅕', 1, 5},
                                          {U'⅖', 2, 5},
                                          {U'⅗', 3, 5},
                                          {U'⅘', 4, 5},
                                          {U'⅙', 1, 6},
                                          {U'⅚', 5, 6},
                                          {U'⅐', 1, 7},
                                          {U'⅛', 1, 8},
                                          {U'⅜', 3, 8},
                                          {U'⅝', 5, 8},
                                          {U'⅞', 7, 8},
                                          {U'⅑', 1, 9},
                                          {U'⅒', 1, 10},
                                          {U'↉', 0, 3}}};

constexpr std::array<std::string_view, 3> foot_words{"ft", "foot", "feet"};
constexpr std::array<std::string_view, 3> inch_words{"in", "inch", "inches"};

template <class List, class Item>
bool holds(const List& list, const Item& item) {
  return std::ranges::find(list, item) != list.end();
}

LengthSign sign_of(char32_t c) {
  constexpr std::u32string_view slashes = U"/\u2044\u2215";
  constexpr std::u32string_view foot_marks = U"'\u2032\u2018\u2019";
  constexpr std::u32string_view inch_marks = U"\"\u2033\u201C\u201D";
  if (is_digit(c)) return LengthSign::number;
  if (is_blank(c)) return LengthSign::blank;
  if (is_dash(c)) return LengthSign::dash;
  if (is_ascii_letter(c) || c == U'×') return LengthSign::word;
  if (c == U'.') return LengthSign::point;
  if (c == U',') return LengthSign::comma;
  if (holds(slashes, c)) return LengthSign::slash;
  if (holds(foot_marks, c)) return LengthSign::foot;
  if (holds(inch_marks, c)) return LengthSign::inch;
  const bool vulgar = std::ranges::any_of(vulgars, [c](const Vulgar& v) { return v.character == c; });
  return vulgar ? LengthSign::vulgar : LengthSign::other;
}

// "M" alone stays large: it is no unit, while "MM" and "IN" are what a shouting typewriter makes.
std::string small_letters(std::u32string_view word) {
  std::string out;
  for (const char32_t c : word) {
    if (c == U'×') return "x";
    out += static_cast<char>(c >= U'A' && c <= U'Z' && word.size() > 1 ? c - U'A' + U'a' : c);
  }
  return out;
}

std::size_t run_length(std::u32string_view text, LengthSign sign) {
  std::size_t end = 1;
  const bool runs = sign == LengthSign::number || sign == LengthSign::blank || sign == LengthSign::word;
  while (runs && text[0] != U'×' && end < text.size() && sign_of(text[end]) == sign && text[end] != U'×')
    ++end;
  if (sign == LengthSign::foot && text.size() > 1 && text[1] == text[0]) return 2;
  return end;
}

}  // namespace

std::vector<LengthToken> length_tokens(std::u32string_view text) {
  std::vector<LengthToken> out;
  for (std::size_t at = 0; at < text.size();) {
    LengthToken token{.sign = sign_of(text[at]), .column = at + 1, .text = {}};
    const std::size_t count = run_length(text.substr(at), token.sign);
    const std::u32string_view characters = text.substr(at, count);
    at += count;
    if (token.sign == LengthSign::number) token.text.assign(characters.begin(), characters.end());
    if (token.sign == LengthSign::foot && count == 2) token.sign = LengthSign::inch;
    if (token.sign == LengthSign::vulgar) {
      const auto* const found =
          std::ranges::find(vulgars, characters[0], [](const Vulgar& v) { return v.character; });
      token.top = found->top;
      token.bottom = found->bottom;
    }
    if (token.sign == LengthSign::word) {
      token.text = small_letters(characters);
      if (holds(foot_words, token.text)) token.sign = LengthSign::foot;
      if (holds(inch_words, token.text)) token.sign = LengthSign::inch;
      // "ft." and "in." are abbreviations; a point after "feet" is a mistake.
      if ((token.text == "ft" || token.text == "in") && at < text.size() && text[at] == U'.') ++at;
    }
    out.push_back(std::move(token));
  }
  out.push_back({.sign = LengthSign::end, .column = text.size() + 1, .text = {}});
  return out;
}

}  // namespace berthwright

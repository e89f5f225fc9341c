#include "exact/code_points.h"

#include <algorithm>
#include <cstdint>

namespace berthwright {
namespace {

struct Lead {
  std::size_t following;
  char32_t bits;
  char32_t least;  // below this the form is overlong
};

std::optional<Lead> lead(std::uint8_t byte) {
  if (byte < 0x80) return Lead{0, byte, 0};
  if (byte >= 0xC2 && byte < 0xE0) return Lead{1, byte & 0x1FU, 0x80};
  if (byte >= 0xE0 && byte < 0xF0) return Lead{2, byte & 0x0FU, 0x800};
  if (byte >= 0xF0 && byte < 0xF5) return Lead{3, byte & 0x07U, 0x10000};
  return std::nullopt;
}

// The next character and the bytes it takes; nothing where the bytes are no UTF-8.
std::optional<std::pair<char32_t, std::size_t>> next(std::string_view utf8) {
  const std::optional<Lead> first = lead(static_cast<std::uint8_t>(utf8.front()));
  if (!first || first->following >= utf8.size()) return std::nullopt;
  char32_t c = first->bits;
  for (std::size_t i = 1; i <= first->following; ++i) {
    const auto byte = static_cast<std::uint8_t>(utf8[i]);
    if ((byte & 0xC0U) != 0x80) return std::nullopt;
    c = c << 6 | (byte & 0x3FU);
  }
  if (c < first->least || c > 0x10FFFF || (c >= 0xD800 && c < 0xE000)) return std::nullopt;
  return std::pair{c, first->following + 1};
}

// Control characters, and those that are unseen or turn the direction of a line.
bool is_showable(char32_t c) {
  return c >= 0x20 && !(c >= 0x7F && c < 0xA0) && c != 0xAD && c != 0x61C && !(c >= 0x200B && c < 0x2010) &&
         !(c >= 0x2028 && c < 0x202F) && !(c >= 0x2060 && c < 0x2070) && c != 0xFEFF &&
         !(c >= 0xFFF0 && c < 0xFFFC) && (c & 0xFFFEU) != 0xFFFE && !(c >= 0xE0000 && c < 0xE1000);
}

}  // namespace

CodePoints code_points(std::string_view utf8) {
  CodePoints out;
  while (!utf8.empty()) {
    const auto character = next(utf8);
    if (!character) {
      out.broken = out.text.size();
      return out;
    }
    out.text.push_back(character->first);
    utf8.remove_prefix(character->second);
  }
  return out;
}

std::string printable(std::string_view utf8, std::size_t longest) {
  const bool plain =
      utf8.size() <= longest && std::ranges::all_of(utf8, [](char c) { return c >= ' ' && c <= '~'; });
  if (plain) return std::string(utf8);
  std::string out;
  for (std::size_t count = 0; !utf8.empty(); ++count) {
    if (count == longest) return out + "…";
    const auto character = next(utf8);
    const std::size_t bytes = character ? character->second : 1;
    if (character && is_showable(character->first))
      out.append(utf8.substr(0, bytes));
    else
      out.append("\uFFFD");
    utf8.remove_prefix(bytes);
  }
  return out;
}

bool is_blank(char32_t c) {
  return c == U' ' || c == U'\t' || c == 0xA0 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F || c == 0x205F;
}

bool is_dash(char32_t c) { return c == U'-' || (c >= 0x2010 && c <= 0x2014) || c == 0x2212; }

bool is_digit(char32_t c) { return c >= U'0' && c <= U'9'; }

bool is_ascii_letter(char32_t c) { return (c >= U'a' && c <= U'z') || (c >= U'A' && c <= U'Z'); }

}  // namespace berthwright

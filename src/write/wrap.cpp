#include "write/wrap.h"

#include <cstdint>

namespace berthwright {
namespace {

std::size_t columns(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text)
    if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) ++count;
  return count;
}

/// Bytes of the well-formed character at the start of `text`, 0 when there is none; its code point in
/// `point`.
std::size_t character(std::string_view text, std::uint32_t& point) {
  const auto byte = [&](std::size_t i) {
    return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i]));
  };
  const std::uint32_t lead = byte(0);
  const std::size_t size = lead < 0x80   ? 1
                           : lead < 0xC2 ? 0
                           : lead < 0xE0 ? 2
                           : lead < 0xF0 ? 3
                           : lead < 0xF5 ? 4
                                         : 0;
  if (size == 0 || size > text.size()) return 0;
  point = size == 1 ? lead : lead & (0x7FU >> size);
  for (std::size_t i = 1; i < size; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
    point = (point << 6) | (byte(i) & 0x3FU);
  }
  constexpr std::uint32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
  const bool surrogate = point >= 0xD800 && point <= 0xDFFF;
  return point < least[size] || surrogate || point > 0x10FFFF ? 0 : size;
}

bool obeyed_by_a_terminal(std::uint32_t point) {
  return point < 0x20 || (point >= 0x7F && point <= 0x9F) || point == 0x200E || point == 0x200F ||
         (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
}

}  // namespace

std::string wrapped(std::string_view text, Indent indent) {
  std::string lines;
  std::string line(indent.first);
  bool line_has_word = false;
  while (!text.empty()) {
    const std::size_t space = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, space);
    text.remove_prefix(std::min(space + 1, text.size()));
    if (word.empty()) continue;
    if (line_has_word && columns(line) + 1 + columns(word) > report_columns) {
      lines += line + '\n';
      line = indent.rest;
      line_has_word = false;
    }
    if (line_has_word) line += ' ';
    line += word;
    line_has_word = true;
  }
  return lines + line + '\n';
}

std::string printable(std::string_view text) {
  std::string shown;
  while (!text.empty()) {
    std::uint32_t point = 0;
    const std::size_t size = character(text, point);
    if (size == 0 || obeyed_by_a_terminal(point))
      shown += "\uFFFD";
    else
      shown += text.substr(0, size);
    text.remove_prefix(std::max<std::size_t>(size, 1));
  }
  return shown;
}

}  // namespace berthwright

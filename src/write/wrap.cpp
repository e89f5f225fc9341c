#include "write/wrap.h"

#include <algorithm>

#include "view/letters.h"

namespace berthwright {
namespace {

std::size_t columns(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text)
    if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) ++count;
  return count;
}

}  // namespace

std::string wrapped(std::string_view words, Indent indent) {
  const std::string held = unbroken_measures(words);
  std::string_view text = held;
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
  return plain_blanks(lines + line + '\n');
}

}  // namespace berthwright

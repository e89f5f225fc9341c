#pragma once

#include <string>
#include <string_view>

namespace berthwright::support {

/// Line ends and indents stand where words are parted: without them a text can be searched for a sentence.
inline std::string on_one_line(std::string_view text) {
  std::string line;
  for (const char c : text) {
    if (c != ' ' && c != '\n')
      line += c;
    else if (!line.empty() && line.back() != ' ')
      line += ' ';
  }
  return line;
}

}  // namespace berthwright::support

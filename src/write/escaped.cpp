#include "write/escaped.h"

#include "exact/code_points.h"

namespace berthwright {

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : printable(text, every_character)) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      case '\'':
        out += "&#39;";
        break;
      default:
        out += c;
    }
  }
  return out;
}

}  // namespace berthwright

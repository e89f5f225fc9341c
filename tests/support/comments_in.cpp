#include "support/comments_in.h"

namespace berthwright {

std::vector<std::string> comments_in(std::string_view text) {
  std::vector<std::string> found;
  enum class In { nothing, quotes, line, block } in = In::nothing;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    const char next = i + 1 < text.size() ? text[i + 1] : '\0';
    if (in == In::quotes) {
      if (c == '\\') ++i;
      if (c == '"') in = In::nothing;
    } else if (in == In::nothing) {
      if (c == '"') in = In::quotes;
      if (c != '/' || (next != '/' && next != '*')) continue;
      in = next == '/' ? In::line : In::block;
      found.emplace_back(text.substr(i++, 2));
    } else if (in == In::line && c == '\n') {
      in = In::nothing;
    } else {
      found.back() += c;
      if (in == In::block && c == '/' && text[i - 1] == '*' && found.back().size() > 3) in = In::nothing;
    }
  }
  for (std::string& comment : found) comment.erase(comment.find_last_not_of(" \t\r") + 1);
  return found;
}

}  // namespace berthwright

#include "plan/tokens.h"

#include <algorithm>

namespace berthwright {
namespace {

PlanToken::Kind kind_at(std::string_view rest) {
  switch (rest.front()) {
    case '/':
      return PlanToken::Kind::comment;
    case '"':
      return PlanToken::Kind::text;
    case '{':
    case '[':
      return PlanToken::Kind::open;
    case '}':
    case ']':
      return PlanToken::Kind::close;
    case ',':
      return PlanToken::Kind::comma;
    case ':':
      return PlanToken::Kind::colon;
    default:
      return PlanToken::Kind::bare;
  }
}

std::size_t length_of(std::string_view rest, PlanToken::Kind kind) {
  std::size_t end = 1;
  switch (kind) {
    case PlanToken::Kind::comment:
      end = rest.starts_with("//") ? rest.find('\n') : rest.find("*/", 2) + 2;
      break;
    case PlanToken::Kind::text:
      for (; end < rest.size() && rest[end] != '"'; ++end)
        if (rest[end] == '\\') ++end;
      ++end;
      break;
    case PlanToken::Kind::bare:
      end = rest.find_first_of(" \t\r\n,:]}[{\"/");
      break;
    case PlanToken::Kind::open:
    case PlanToken::Kind::close:
    case PlanToken::Kind::comma:
    case PlanToken::Kind::colon:
      break;  // one sign
  }
  return std::min(end, rest.size());
}

}  // namespace

std::vector<PlanToken> plan_tokens(std::string_view text) {
  std::vector<PlanToken> tokens;
  std::size_t at = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
  PlanToken token;
  const auto pass = [&](std::size_t end) {
    for (; at < end; ++at) {
      if (text[at] == '\n') {
        ++token.line;
        token.column = 1;
      } else if ((static_cast<unsigned char>(text[at]) & 0xc0U) != 0x80) {
        ++token.column;
      }
    }
  };
  for (;;) {
    const std::size_t line = token.line;
    pass(std::min(text.find_first_not_of(" \t\r\n", at), text.size()));
    if (at == text.size()) return tokens;
    const std::string_view rest = text.substr(at);
    token.kind = kind_at(rest);
    token.spelled = rest.substr(0, length_of(rest, token.kind));
    token.at = at;
    token.line_ends = token.line - line;
    tokens.push_back(token);
    pass(at + token.spelled.size());
  }
}

}  // namespace berthwright

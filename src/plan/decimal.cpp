#include "plan/decimal.h"

#include <algorithm>

namespace berthwright {

std::optional<std::int64_t> as_decimal(const Node& node, Reading& reading, std::size_t places,
                                       const std::string& allowed) {
  constexpr std::size_t most_before = 6;
  const std::string& text = node.text;
  const std::size_t point = std::min(text.find('.'), text.size());
  const std::string before = text.substr(0, point);
  std::string after = point < text.size() ? text.substr(point + 1) : "";
  const auto digits = [](const std::string& word) {
    return std::ranges::all_of(word, [](char c) { return c >= '0' && c <= '9'; });
  };
  const bool plain = node.kind == Node::Kind::text || node.kind == Node::Kind::number;
  if (plain && !before.empty() && before.size() <= most_before && after.size() <= places && digits(before) &&
      digits(after) && (point == text.size() || !after.empty())) {
    after.resize(places, '0');
    std::int64_t value = 0;
    for (const char c : before + after) value = value * 10 + (c - '0');
    return value;
  }
  reading.add(node, {.id = "value.decimal",
                     .message = "a plain number is expected here",
                     .found = found_at(node),
                     .allowed = allowed,
                     .cure = "write digits and at most one point, without a unit or a sign"});
  return std::nullopt;
}

}  // namespace berthwright

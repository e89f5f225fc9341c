#include "plan/nearest_name.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace berthwright {
namespace {

constexpr std::size_t longest_compared = 64;

/// Letters to change, add, drop or swap with their neighbour; `limit + 1` as soon as it is sure to be more.
std::size_t letters_apart(std::string_view a, std::string_view b, std::size_t limit) {
  if (std::max(a.size(), b.size()) - std::min(a.size(), b.size()) > limit) return limit + 1;
  std::array<std::array<std::size_t, longest_compared + 1>, 3> rows{};
  for (std::size_t j = 0; j <= b.size(); ++j) rows[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    auto& row = rows[i % 3];
    const auto& above = rows[(i + 2) % 3];
    row[0] = i;
    std::size_t least = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, changed});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], rows[(i + 1) % 3][j - 2] + 1);
      least = std::min(least, row[j]);
    }
    if (least > limit) return limit + 1;
  }
  return rows[a.size() % 3][b.size()];
}

}  // namespace

std::string folded_name(std::string_view name) {
  std::string result;
  for (const char c : name) {
    if (c == ' ' || c == '-' || c == '_') continue;
    result += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  return result;
}

std::optional<std::string> nearest_name(std::string_view name, std::span<const std::string> candidates) {
  if (name.size() > longest_compared) return std::nullopt;
  const std::string wanted = folded_name(name);
  std::size_t limit = std::min<std::size_t>(3, (wanted.size() + 1) / 3);
  std::optional<std::string> nearest;
  for (const std::string& candidate : candidates) {
    if (candidate.size() > longest_compared || candidate.empty()) continue;
    const std::size_t apart = letters_apart(wanted, folded_name(candidate), limit);
    if (apart > limit) continue;
    nearest = candidate;
    if (apart == 0) break;
    limit = apart - 1;
  }
  return nearest;
}

}  // namespace berthwright

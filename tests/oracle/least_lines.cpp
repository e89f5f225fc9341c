#include "oracle/least_lines.h"

#include <algorithm>
#include <array>

namespace berthwright::oracle {
namespace {

using LinePlace = std::array<double, 3>;

/// Where lines may run along one axis: pairs of places on the two boxes.
std::vector<std::pair<double, double>> pairs_on(int a0, int a1, int b0, int b1) {
  const int low = std::max(a0, b0), high = std::min(a1, b1);
  if (low > high) return {a1 < b0 ? std::pair<double, double>(a1, b0) : std::pair<double, double>(a0, b1)};
  if (low == high) return {{low, low}};
  std::vector<std::pair<double, double>> pairs;
  for (double at = low + 0.25; at < high; at += 0.5) pairs.emplace_back(at, at);
  return pairs;
}

bool is_stopped(const LinePlace& from, const LinePlace& to, const std::vector<InchBox>& shields) {
  constexpr int steps = 400;
  for (int i = 0; i < steps; ++i) {
    const double part = (i + 0.5) / steps;
    for (const InchBox& shield : shields) {
      bool inside = true;
      for (std::size_t k = 0; k < 3; ++k) {
        const double at = from[k] + (to[k] - from[k]) * part;
        inside = inside && shield.low[k] < at && at < shield.high[k];
      }
      if (inside) return true;
    }
  }
  return false;
}

}  // namespace

bool every_line_is_stopped(const InchBox& a, const InchBox& b, const std::vector<InchBox>& shields) {
  std::array<std::vector<std::pair<double, double>>, 3> pairs;
  for (std::size_t k = 0; k < 3; ++k) pairs[k] = pairs_on(a.low[k], a.high[k], b.low[k], b.high[k]);
  for (const auto& [ax, bx] : pairs[0])
    for (const auto& [ay, by] : pairs[1])
      for (const auto& [az, bz] : pairs[2])
        if (!is_stopped({ax, ay, az}, {bx, by, bz}, shields)) return false;
  return true;
}

}  // namespace berthwright::oracle

#include "geometry/heading_search.h"

#include <algorithm>

#include <berthwright/geometry/rectangle_in_region.h>

namespace berthwright {
namespace {

constexpr std::size_t most_peaks = 6;
// One degree is 0.01745 rad, and the half tangent grows by half the angle where it grows slowest.
constexpr double degree_step = 0.0087;
constexpr double eighth_turn = 0.41421356237309503;
constexpr double same_direction = 1e-8;
constexpr double finest_step = 4e-8;
// A peak between two directions a degree apart stands out of its neighbours by less than this share.
constexpr double coarse_share = 0.85;
constexpr double real_gain = 1 + 1e-10;
constexpr double worth_narrowing = 1.01;
constexpr double near_axis = 5e-7;
constexpr auto slack = static_cast<double>(turning_slack.ticks());

// Newton's rule; the start is above the root, so the steps only fall.
double root_above(double square, double above) {
  for (double last = above + 1; above < last;) {
    last = above;
    above = (above + square / above) / 2;
  }
  return above;
}

struct Direction {
  double half_tangent;
  double weight;
};

// Reduced by quarter turns to 0 <= angle < 90 degrees.
Direction direction_of(const Edge& edge) {
  auto x = static_cast<double>((edge.to.x - edge.from.x).ticks());
  auto y = static_cast<double>((edge.to.y - edge.from.y).ticks());
  if (x < 0) x = -x, y = -y;
  if (y < 0 || x == 0) {
    const double old = x;
    x = y < 0 ? -y : y, y = old;
  }
  const double squared = x * x + y * y;
  return {y / (x + root_above(squared, x + y)), squared};
}

// Half tangents in (0, 1), ascending; of nearly equal edge directions the longest edge's, being the most
// exact.
std::vector<double> half_tangents(const Border& border) {
  std::vector<Direction> all;
  // The eighth turn itself follows, so it is no matter whether the last step falls short of it.
  // NOLINTNEXTLINE(clang-analyzer-security.FloatLoopCounter)
  for (double t = degree_step; t < eighth_turn; t += degree_step) {
    all.push_back({t, 0});
    all.push_back({(1 - t) / (1 + t), 0});
  }
  all.push_back({eighth_turn, 0});
  for (const Edge& edge : border.edges) all.push_back(direction_of(edge));
  std::sort(all.begin(), all.end(), [](const Direction& a, const Direction& b) {
    return a.half_tangent != b.half_tangent ? a.half_tangent < b.half_tangent : a.weight < b.weight;
  });
  std::vector<double> result;
  for (std::size_t i = 0; i < all.size();) {
    Direction heaviest = all[i];
    std::size_t next = i + 1;
    for (; next < all.size() && all[next].half_tangent - all[next - 1].half_tangent < same_direction; ++next)
      if (all[next].weight > heaviest.weight) heaviest = all[next];
    if (heaviest.half_tangent > 0) result.push_back(heaviest.half_tangent);
    i = next;
  }
  return result;
}

std::vector<Heading> headings(const Border& border) {
  const std::vector<double> tangents = half_tangents(border);
  std::vector<Heading> result;
  for (const bool quarter : {false, true}) {
    result.push_back({0, quarter});
    for (const double t : tangents) result.push_back({t, quarter});
  }
  return result;
}

Candidate best_at(const Border& border, const Heading& heading, const Sought& sought) {
  Best best = best_along(slabs_across(border, heading), sought);
  return best.spans.empty() ? Candidate{heading, {}, 0} : Candidate{heading, best.spans.front(), best.value};
}

Candidate climbed(const Border& border, const Goal& goal, const Heading& start) {
  Candidate peak = best_at(border, start, {goal, 0});
  for (double step = degree_step / 2; step > finest_step;) {
    bool moved = false;
    for (const double by : {step, -step}) {
      const Heading heading{peak.heading.half_tangent + by, peak.heading.quarter};
      const Candidate there = best_at(border, heading, {goal, peak.value * real_gain});
      if (there.value <= peak.value) continue;
      peak = there;
      moved = true;
      break;
    }
    if (!moved) step /= 2;
  }
  const Candidate fine = best_at(border, peak.heading, {goal, peak.value * (1 - 1e-6), true});
  return fine.value >= peak.value ? fine : peak;
}

Goal widened(const Goal& goal, double by) { return goal.width ? Goal{*goal.width + by} : goal; }

bool lies_near_axis(const Heading& heading) {
  return heading.half_tangent < near_axis || heading.half_tangent > 1 - near_axis;
}

std::vector<Candidate> peaks_of(const std::vector<Candidate>& ring) {
  std::vector<Candidate> peaks;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const double before = ring[(i + ring.size() - 1) % ring.size()].value;
    const double after = ring[(i + 1) % ring.size()].value;
    if (ring[i].value > 0 && ring[i].value > before && ring[i].value >= after) peaks.push_back(ring[i]);
  }
  std::stable_sort(peaks.begin(), peaks.end(),
                   [](const Candidate& a, const Candidate& b) { return a.value > b.value; });
  if (peaks.size() > most_peaks) peaks.resize(most_peaks);
  return peaks;
}

}  // namespace

std::vector<std::vector<Candidate>> turned_candidates(const Border& border, const std::vector<Goal>& goals,
                                                      const std::vector<double>& floors) {
  std::vector<std::vector<Candidate>> rings(goals.size());
  std::vector<double> best = floors;
  for (const Heading& heading : headings(border)) {
    const Slabs slabs = slabs_across(border, heading);
    for (std::size_t g = 0; g < goals.size(); ++g) {
      if (heading.quarter && !goals[g].width) continue;  // the same rectangles a quarter turn on
      Best found = best_along(slabs, {widened(goals[g], -slack / 2), best[g] * coarse_share});
      if (found.spans.empty()) {
        rings[g].push_back({heading, {}, 0});
        continue;
      }
      best[g] = std::max(best[g], found.value);
      rings[g].push_back({heading, found.spans.front(), found.value});
    }
  }
  std::vector<std::vector<Candidate>> result(goals.size());
  for (std::size_t g = 0; g < goals.size(); ++g)
    for (const Candidate& peak : peaks_of(rings[g])) {
      Candidate top = climbed(border, widened(goals[g], slack), peak.heading);
      if (goals[g].width && top.value * worth_narrowing < peak.value && !lies_near_axis(peak.heading))
        top = peak;
      if (top.value > floors[g] && !top.heading.along_an_axis()) result[g].push_back(top);
    }
  return result;
}

}  // namespace berthwright

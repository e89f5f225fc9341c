#include "geometry/strands.h"

#include <algorithm>
#include <tuple>

#include "geometry/ring.h"

namespace berthwright {
namespace {

// Points of one list, by x and by y, so that a long strand looks at those of its narrower range only.
struct Sites {
  std::vector<Point> by_x;
  std::vector<Point> by_y;
};

bool lower(const Point& a, const Point& b) { return std::tie(a.y, a.x) < std::tie(b.y, b.x); }

Sites sites(std::vector<Point> points) {
  std::ranges::sort(points);
  points.erase(std::unique(points.begin(), points.end()), points.end());
  Sites result{points, std::move(points)};
  std::ranges::sort(result.by_y, lower);
  return result;
}

std::vector<Point> ends(std::span<const Strand> strands) {
  std::vector<Point> result;
  result.reserve(2 * strands.size());
  for (const Strand& strand : strands) {
    result.push_back(strand.low);
    result.push_back(strand.high);
  }
  return result;
}

int sign(Int128 value) { return value > 0 ? 1 : value < 0 ? -1 : 0; }

// Calls visit(i, j) for each pair whose boxes meet.
template <class Visit>
void for_each_near_pair(std::span<const Strand> strands, Visit visit) {
  std::vector<std::size_t> order(strands.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::ranges::sort(order, [&](std::size_t a, std::size_t b) {
    return std::tie(strands[a].low, strands[a].high, a) < std::tie(strands[b].low, strands[b].high, b);
  });
  std::vector<std::size_t> open;
  for (const std::size_t i : order) {
    const Strand& s = strands[i];
    const auto [bottom, top] = std::minmax(s.low.y, s.high.y);
    for (std::size_t k = 0; k < open.size();) {
      const Strand& t = strands[open[k]];
      if (t.high.x < s.low.x) {
        open[k] = open.back();
        open.pop_back();
        continue;
      }
      if (std::max(t.low.y, t.high.y) >= bottom && std::min(t.low.y, t.high.y) <= top) visit(open[k], i);
      ++k;
    }
    open.push_back(i);
  }
}

bool cross_inside(const Strand& s, const Strand& t) {
  return sign(cross(s.low, s.high, t.low)) * sign(cross(s.low, s.high, t.high)) < 0 &&
         sign(cross(t.low, t.high, s.low)) * sign(cross(t.low, t.high, s.high)) < 0;
}

bool in_box(const Strand& s, Point p) {
  const auto [bottom, top] = std::minmax(s.low.y, s.high.y);
  return s.low.x <= p.x && p.x <= s.high.x && bottom <= p.y && p.y <= top;
}

bool passes_exactly(const Strand& s, Point p) { return in_box(s, p) && cross(s.low, s.high, p) == 0; }

// Whether the strand meets the tick of p, the square [x - 1/2, x + 1/2) x [y - 1/2, y + 1/2). The ends of a
// strand are centres of ticks, so a strand whose box holds p crosses the whole tick or none of it.
bool passes_tick(const Strand& s, Point p) {
  if (!in_box(s, p)) return false;
  if (p == s.low || p == s.high) return true;
  const Int128 dx = (s.high.x - s.low.x).ticks();
  const Int128 dy = (s.high.y - s.low.y).ticks();
  const Int128 centre = 2 * (dx * (p.y - s.low.y).ticks() - dy * (p.x - s.low.x).ticks());
  const int corners[] = {sign(centre + dy - dx), sign(centre - dy - dx), sign(centre - dy + dx),
                         sign(centre + dy + dx)};
  const auto [least, greatest] = std::ranges::minmax(corners);
  return (least < 0 && greatest > 0) || corners[0] == 0;
}

template <class Passes>
std::vector<Point> stops(const Strand& strand, const Sites& sites, Passes passes) {
  const auto [bottom, top] = std::minmax(strand.low.y, strand.high.y);
  const auto left = std::ranges::lower_bound(sites.by_x, Point{strand.low.x, bottom});
  const auto right = std::ranges::upper_bound(sites.by_x, Point{strand.high.x, top});
  const auto below = std::ranges::lower_bound(sites.by_y, Point{strand.low.x, bottom}, lower);
  const auto above = std::ranges::upper_bound(sites.by_y, Point{strand.high.x, top}, lower);
  std::vector<Point> result;
  const auto collect = [&](auto begin, auto end) {
    std::copy_if(begin, end, std::back_inserter(result), [&](Point p) { return passes(strand, p); });
  };
  if (right - left <= above - below)
    collect(left, right);
  else
    collect(below, above);
  // Along a strand x never falls, and at one x the heights run one way.
  const bool rising = strand.high.y >= strand.low.y;
  std::ranges::sort(result, [&](const Point& a, const Point& b) {
    return a.x != b.x ? a.x < b.x : rising ? a.y < b.y : a.y > b.y;
  });
  return result;
}

std::vector<Strand> merged(std::vector<Strand> strands) {
  std::ranges::sort(strands, [](const Strand& a, const Strand& b) {
    return std::tie(a.low, a.high) < std::tie(b.low, b.high);
  });
  std::vector<Strand> result;
  for (const Strand& strand : strands) {
    if (!result.empty() && result.back().low == strand.low && result.back().high == strand.high) {
      result.back().gain = result.back().gain + strand.gain;
    } else {
      if (!result.empty() && result.back().gain == Winding{}) result.pop_back();
      result.push_back(strand);
    }
  }
  if (!result.empty() && result.back().gain == Winding{}) result.pop_back();
  return result;
}

template <class Passes>
std::vector<Strand> cut(std::span<const Strand> strands, const Sites& sites, Passes passes) {
  std::vector<Strand> result;
  result.reserve(2 * strands.size());
  for (const Strand& strand : strands) {
    const std::vector<Point> way = stops(strand, sites, passes);
    for (std::size_t i = 1; i < way.size(); ++i) {
      if (way[i - 1] < way[i])
        result.push_back({way[i - 1], way[i], strand.gain});
      else
        result.push_back({way[i], way[i - 1], Winding{} - strand.gain});
    }
  }
  return merged(std::move(result));
}

}  // namespace

std::vector<Strand> strands(std::span<const Edge> first, std::span<const Edge> second) {
  std::vector<Strand> result;
  result.reserve(first.size() + second.size());
  const auto add = [&](const Edge& edge, Winding gain) {
    if (edge.from < edge.to) result.push_back({edge.from, edge.to, gain});
    if (edge.to < edge.from) result.push_back({edge.to, edge.from, Winding{} - gain});
  };
  for (const Edge& edge : first) add(edge, {1, 0});
  for (const Edge& edge : second) add(edge, {0, 1});
  return result;
}

std::vector<Strand> cut_at_ends(std::vector<Strand> strands) {
  return cut(strands, sites(ends(strands)), passes_exactly);
}

bool operands_cross(std::span<const Strand> strands) {
  bool found = false;
  for_each_near_pair(strands, [&](std::size_t i, std::size_t j) {
    const Winding a = strands[i].gain;
    const Winding b = strands[j].gain;
    const bool foreign = (a.first != 0 && b.second != 0) || (a.second != 0 && b.first != 0);
    if (!found && foreign && cross_inside(strands[i], strands[j])) found = true;
  });
  return found;
}

std::vector<Strand> noded(std::vector<Strand> strands) {
  strands = merged(std::move(strands));
  std::vector<Point> points = ends(strands);
  bool exact = true;
  for_each_near_pair(strands, [&](std::size_t i, std::size_t j) {
    if (!cross_inside(strands[i], strands[j])) return;
    points.push_back(crossing_point(strands[i].low, strands[i].high, strands[j].low, strands[j].high));
    exact = exact && passes_exactly(strands[i], points.back()) && passes_exactly(strands[j], points.back());
  });
  const Sites all = sites(std::move(points));
  return exact ? cut(strands, all, passes_exactly) : cut(strands, all, passes_tick);
}

}  // namespace berthwright

#include <berthwright/geometry/rectangle_in_region.h>

#include <algorithm>
#include <stdexcept>

#include "exact/required.h"
#include "geometry/heading_search.h"
#include "geometry/inscribed.h"
#include "geometry/remembered.h"

namespace berthwright {
namespace {

// A rectangle is turned away from the axes only for a gain of 0.01 mm: less is the noise of rounded corners.
constexpr Length worth_turning = Length::from_ticks(400);

double ticks(Length length) { return static_cast<double>(length.ticks()); }

std::int64_t nearest_whole(double value) {
  const auto whole = static_cast<std::int64_t>(value);
  const double rest = value - static_cast<double>(whole);
  return rest >= 0.5 ? whole + 1 : rest < -0.5 ? whole - 1 : whole;
}

// Values this near a whole tick are meant to be one.
constexpr double whole_noise = 1e-4;
Length rounded_up(double value) {
  const std::int64_t whole = nearest_whole(value);
  return Length::from_ticks(value - static_cast<double>(whole) > whole_noise ? whole + 1 : whole);
}
Length rounded_down(double value) { return -rounded_up(-value); }

Point transposed(Point p) { return {p.y, p.x}; }
Rect transposed(const Rect& r) { return {transposed(r.low), transposed(r.high)}; }

/// Counter-clockwise corners with the first edge along the length, in [0, 180) degrees.
TurnedRectangle named(Corners corners) {
  const auto squared = [](Vector v) {
    return Int128{v.x.ticks()} * v.x.ticks() + Int128{v.y.ticks()} * v.y.ticks();
  };
  const auto turn_corners = [&](int by) {
    std::rotate(corners.begin(), corners.begin() + by, corners.end());
  };
  const auto points_back = [&] {
    const Vector first = corners[1] - corners[0];
    return first.y < Length{} || (first.y == Length{} && first.x < Length{});
  };
  const Int128 along = squared(corners[1] - corners[0]);
  const Int128 across = squared(corners[2] - corners[1]);
  if (along < across) turn_corners(1);
  if (points_back()) turn_corners(2);
  const Vector first = corners[1] - corners[0];
  if (along == across && first.x <= Length{}) {  // a square: the side less turned
    turn_corners(1);
    if (points_back()) turn_corners(2);
  }
  const Vector length = corners[1] - corners[0];
  const Held held = held_by(corners);
  return {corners, Turn::toward(length.x.ticks(), length.y.ticks()), std::max(held.along, held.across),
          std::min(held.along, held.across)};
}

class Finder {
 public:
  explicit Finder(const Region& region) : border_(border_of(region)) {
    for (const Edge& edge : border_.edges)
      transposed_.push_back({transposed(edge.from), transposed(edge.to)});
  }

  std::optional<TurnedRectangle> find_upright() const { return best_along_axes(Goal{}); }

  std::vector<std::optional<TurnedRectangle>> find(const std::vector<Goal>& goals) const {
    std::vector<std::optional<TurnedRectangle>> result;
    std::vector<double> floors;
    for (const Goal& goal : goals) {
      const std::optional<TurnedRectangle> level = best_along_axes(goal);
      floors.push_back(level ? score(*level, goal) : 0);
      result.push_back(level);
    }
    const auto candidates = turned_candidates(border_, goals, floors);
    for (std::size_t g = 0; g < goals.size(); ++g) {
      std::optional<TurnedRectangle>& best = result[g];
      for (const Candidate& candidate : candidates[g])
        if (const auto found = settled(candidate, goals[g]))
          if (!best || is_better(*found, *best, goals[g], worth_turning)) best = found;
    }
    return result;
  }

 private:
  static Length width_of(const Goal& goal) { return Length::from_ticks(nearest_whole(required(goal.width))); }

  // The area, or the side that does not have the width asked for.
  static Int128 exact_score(const TurnedRectangle& r, const Goal& goal) {
    if (!goal.width) return Int128{r.length.ticks()} * r.width.ticks();
    return r.length > width_of(goal) ? r.length.ticks() : r.width.ticks();
  }
  static double score(const TurnedRectangle& r, const Goal& goal) {
    return static_cast<double>(exact_score(r, goal));
  }

  // Longer by more than the noise, then less turned, then lower down the axes.
  static bool is_better(const TurnedRectangle& a, const TurnedRectangle& b, const Goal& goal, Length noise) {
    const Int128 doubt =
        goal.width ? Int128{noise.ticks()} : Int128{noise.ticks()} * (b.length + b.width).ticks();
    const Int128 gain = exact_score(a, goal) - exact_score(b, goal);
    if (gain > doubt || gain < -doubt) return gain > 0;
    if (a.turn.is_quarter() != b.turn.is_quarter() && noise > Length{}) return a.turn.is_quarter();
    if (a.length - b.length > noise || b.length - a.length > noise) return a.length > b.length;
    const Vector a_first = a.corners[1] - a.corners[0];
    const Vector b_first = b.corners[1] - b.corners[0];
    const std::int64_t turned_more =
        a_first.x.ticks() * b_first.y.ticks() - a_first.y.ticks() * b_first.x.ticks();
    if (turned_more != 0) return turned_more > 0;
    return a.corners < b.corners;
  }

  std::optional<TurnedRectangle> best_along_axes(const Goal& goal) const {
    std::optional<TurnedRectangle> best;
    for (const bool quarter : {false, true}) {
      if (quarter && !goal.width) break;
      const Heading heading{0, quarter};
      const Slabs slabs = slabs_across(border_, heading);
      for (const Span2& span : best_along(slabs, {goal, 0, true}).spans)
        if (const auto found = settled_on_axes(span, heading, goal))
          if (!best || is_better(*found, *best, goal, Length{})) best = found;
    }
    return best;
  }

  std::optional<TurnedRectangle> settled_on_axes(const Span2& span, const Heading& heading,
                                                 const Goal& goal) const {
    const Spot a = unturned(border_, {span.x1, span.y1}, heading);
    const Spot b = unturned(border_, {span.x2, span.y2}, heading);
    const Rect inner{{rounded_up(std::min(a.x, b.x)), rounded_up(std::min(a.y, b.y))},
                     {rounded_down(std::max(a.x, b.x)), rounded_down(std::max(a.y, b.y))}};
    std::optional<Rect> rect;
    if (!goal.width)
      rect = stretched(inner);
    else if (heading.quarter)
      rect = longest_within(transposed(inner), width_of(goal), transposed_);
    else
      rect = longest_within(inner, width_of(goal), border_.edges);
    if (!rect) return std::nullopt;
    if (goal.width && heading.quarter) rect = transposed(*rect);
    const Corners corners{rect->low, {rect->high.x, rect->low.y}, rect->high, {rect->low.x, rect->high.y}};
    if (!is_inscribed(corners, border_.edges)) return std::nullopt;
    return named(corners);
  }

  // As far as it is free up and down, then to both sides: exact, whatever the doubles lost.
  std::optional<Rect> stretched(Rect rect) const {
    const auto y = free_along_x(transposed(rect), rect.low.y + half(rect.height()), transposed_);
    if (!y) return std::nullopt;
    rect.low.y = y->from, rect.high.y = y->to;
    const auto x = free_along_x(rect, rect.low.x + half(rect.width()), border_.edges);
    if (!x) return std::nullopt;
    rect.low.x = x->from, rect.high.x = x->to;
    return rect;
  }

  // Both ends of the free height are tried: between slanted edges one of them may be half a tick short.
  static std::optional<Rect> longest_within(const Rect& rect, Length width, std::span<const Edge> border) {
    std::optional<Rect> best;
    for (const Length low : {rect.low.y, rect.high.y - width}) {
      Rect strip{{rect.low.x, low}, {rect.high.x, low + width}};
      const auto x = free_along_x(strip, rect.low.x + half(rect.width()), border);
      if (!x) continue;
      strip.low.x = x->from, strip.high.x = x->to;
      if (!best || best->width() < strip.width()) best = strip;
    }
    return best;
  }

  // Corners go to the nearest tick, so the rectangle is drawn in until it lies inside for certain.
  std::optional<TurnedRectangle> settled(const Candidate& candidate, const Goal& goal) const {
    for (const double inset : {0.0, 0.75, 1.5, 3.0, 6.0}) {
      Span2 span = candidate.span;
      if (goal.width) {
        const double spare = span.y2 - span.y1 - (*goal.width + 2 * inset + 2);
        if (spare > 0) span.y1 += spare / 2, span.y2 -= spare / 2;
      }
      const Spot spots[4] = {{span.x1 + inset, span.y1 + inset},
                             {span.x2 - inset, span.y1 + inset},
                             {span.x2 - inset, span.y2 - inset},
                             {span.x1 + inset, span.y2 - inset}};
      Corners corners;
      for (std::size_t i = 0; i < 4; ++i) {
        const Spot place = unturned(border_, spots[i], candidate.heading);
        corners[i] = {Length::from_ticks(nearest_whole(place.x)), Length::from_ticks(nearest_whole(place.y))};
      }
      if (!is_inscribed(corners, border_.edges)) continue;
      TurnedRectangle found = named(corners);
      if (found.width <= Length{}) return std::nullopt;
      return goal.width ? trimmed(found, held_by(corners), width_of(goal)) : found;
    }
    return std::nullopt;
  }

  static std::optional<TurnedRectangle> trimmed(TurnedRectangle found, const Held& held, Length width) {
    if (held.across < width - turning_slack) return std::nullopt;
    const Length across = std::min(held.across, width);
    found.length = std::max(held.along, across);
    found.width = std::min(held.along, across);
    return found;
  }

  Border border_;
  std::vector<Edge> transposed_;
};

}  // namespace

std::optional<TurnedRectangle> largest_rectangle(const Region& region) {
  if (region.empty()) return std::nullopt;
  return remembered<std::optional<TurnedRectangle>>(
      [&] { return Construction(Construction::Kind::largest).of(region); },
      [&] { return Finder(region).find({Goal{}}).front(); });
}

std::optional<TurnedRectangle> largest_upright_rectangle(const Region& region) {
  if (region.empty()) return std::nullopt;
  return remembered<std::optional<TurnedRectangle>>(
      [&] { return Construction(Construction::Kind::upright).of(region); },
      [&] { return Finder(region).find_upright(); });
}

std::vector<std::optional<TurnedRectangle>> longest_rectangles(const Region& region,
                                                               std::span<const Length> widths) {
  std::vector<Goal> goals;
  for (const Length width : widths) {
    if (width <= Length{}) throw std::invalid_argument("a rectangle needs a positive width");
    goals.push_back({ticks(width)});
  }
  if (region.empty()) return std::vector<std::optional<TurnedRectangle>>(widths.size());
  return remembered<std::vector<std::optional<TurnedRectangle>>>(
      [&] { return Construction(Construction::Kind::rectangles).of(region).of(widths); },
      [&] { return Finder(region).find(goals); });
}

std::optional<TurnedRectangle> longest_rectangle(const Region& region, Length width) {
  return longest_rectangles(region, std::span(&width, 1)).front();
}

}  // namespace berthwright

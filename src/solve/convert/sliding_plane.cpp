#include "solve/convert/sliding_plane.h"

#include <algorithm>
#include <queue>
#include <utility>

#include "solve/room/columns.h"

namespace berthwright {
namespace {

std::vector<Length> lines_between(Length low, Length high, std::vector<Length> lines) {
  std::erase_if(lines, [&](Length line) { return line <= low || high <= line; });
  lines.push_back(low);
  lines.push_back(high);
  std::ranges::sort(lines);
  lines.erase(std::ranges::unique(lines).begin(), lines.end());
  return lines;
}

bool is_rectilinear(const Region& region) {
  return std::ranges::all_of(region.faces(), [](const Face& face) {
    return face.outer.is_rectilinear() &&
           std::ranges::all_of(face.holes, [](const Polygon& hole) { return hole.is_rectilinear(); });
  });
}

// Neighbouring columns as one: where nothing is added, or where they are narrow and alike.
bool may_join(const std::vector<Rect>& before, const std::vector<Rect>& next) {
  if (before.empty() || before.size() != next.size()) return false;
  bool same = true, alike = next.front().high.x - before.front().low.x <= 1_in;
  for (std::size_t i = 0; i < next.size(); ++i) {
    same = same && before[i].low.y == next[i].low.y && before[i].high.y == next[i].high.y;
    alike = alike && before[i].low.y < next[i].high.y && next[i].low.y < before[i].high.y;
  }
  return same || alike;
}

}  // namespace

std::optional<std::size_t> SlidingPlane::Lines::cell(Length where) const {
  if (where < at.front() || at.back() < where) return std::nullopt;
  const auto line = std::ranges::lower_bound(at, where);
  const auto before = static_cast<std::size_t>(line - at.begin());
  return *line == where ? 2 * before : 2 * before - 1;
}

Length SlidingPlane::Lines::middle(std::size_t cell) const {
  return cell % 2 == 0 ? at[cell / 2] : at[cell / 2] + half(at[cell / 2 + 1] - at[cell / 2]);
}

SlidingPlane::SlidingPlane(const Rect& range, std::span<const Rect> forbidden, std::span<const Point> marks) {
  std::vector<Length> xs, ys;
  for (const Rect& rect : forbidden) {
    if (!meets(rect, range)) continue;
    xs.insert(xs.end(), {rect.low.x, rect.high.x});
    ys.insert(ys.end(), {rect.low.y, rect.high.y});
  }
  for (const Point mark : marks) xs.push_back(mark.x), ys.push_back(mark.y);
  xs_.at = lines_between(range.low.x, range.high.x, std::move(xs));
  ys_.at = lines_between(range.low.y, range.high.y, std::move(ys));
  part_.assign(xs_.cells() * ys_.cells(), no_part);
  const auto first_within = [](const Lines& lines, Length low) {
    return low < lines.at.front() ? 0 : *lines.cell(low) + 1;
  };
  const auto past_last = [](const Lines& lines, Length high) {
    return lines.at.back() < high ? lines.cells() : *lines.cell(high);
  };
  for (const Rect& rect : forbidden) {
    const bool bars = rect.low.x < rect.high.x && rect.low.y < rect.high.y && rect.low.x < range.high.x &&
                      range.low.x < rect.high.x && rect.low.y < range.high.y && range.low.y < rect.high.y;
    if (!bars) continue;
    const std::size_t first = first_within(ys_, rect.low.y), last = past_last(ys_, rect.high.y);
    const std::size_t end = past_last(xs_, rect.high.x);
    for (std::size_t x = first_within(xs_, rect.low.x); x < end; ++x)
      std::fill(part_.begin() + static_cast<std::ptrdiff_t>(number({x, first})),
                part_.begin() + static_cast<std::ptrdiff_t>(number({x, last})), forbidden_part);
  }
  number_parts();
}

void SlidingPlane::number_parts() {
  std::vector<Cell> open;
  for (std::size_t x = 0; x < xs_.cells(); ++x)
    for (std::size_t y = 0; y < ys_.cells(); ++y) {
      if (part_[number({x, y})] != no_part) continue;
      part_[number({x, y})] = parts_;
      open = {{x, y}};
      while (!open.empty()) {
        const Cell cell = open.back();
        open.pop_back();
        const auto reach = [&](Cell next) {
          if (next.x >= xs_.cells() || next.y >= ys_.cells() || part_[number(next)] != no_part) return;
          part_[number(next)] = parts_;
          open.push_back(next);
        };
        reach({cell.x + 1, cell.y});
        reach({cell.x - 1, cell.y});  // of 0: the greatest number, out of range
        reach({cell.x, cell.y + 1});
        reach({cell.x, cell.y - 1});
      }
      ++parts_;
    }
}

std::optional<SlidingPlane::Cell> SlidingPlane::cell_at(Point at) const {
  const std::optional<std::size_t> x = xs_.cell(at.x);
  const std::optional<std::size_t> y = ys_.cell(at.y);
  return x && y ? std::optional(Cell{*x, *y}) : std::nullopt;
}

Point SlidingPlane::point_of(Cell cell) const { return {xs_.middle(cell.x), ys_.middle(cell.y)}; }

std::optional<std::size_t> SlidingPlane::part_at(Point at) const {
  const std::optional<Cell> cell = cell_at(at);
  return cell && free(*cell) ? std::optional(part_[number(*cell)]) : std::nullopt;
}

std::vector<Point> SlidingPlane::way(Point from, Point to) const {
  const std::optional<Cell> start = cell_at(from), goal = cell_at(to);
  if (!start || !goal || !free(*start) || !free(*goal)) return {};
  if (part_[number(*start)] != part_[number(*goal)]) return {};
  using Open = std::pair<std::int64_t, std::size_t>;
  std::priority_queue<Open, std::vector<Open>, std::greater<>> open;
  std::vector<std::int64_t> length(part_.size(), -1);
  std::vector<std::size_t> before(part_.size());
  length[number(*start)] = 0;
  open.emplace(0, number(*start));
  while (!open.empty()) {
    const auto [so_far, at] = open.top();
    open.pop();
    if (so_far != length[at]) continue;
    if (at == number(*goal)) break;
    const Cell cell{at / ys_.cells(), at % ys_.cells()};
    const auto reach = [&](Cell next) {
      if (next.x >= xs_.cells() || next.y >= ys_.cells() || !free(next)) return;
      const Point a = point_of(cell), b = point_of(next);
      const std::int64_t sum = so_far + abs(a.x - b.x).ticks() + abs(a.y - b.y).ticks();
      std::int64_t& known = length[number(next)];
      if (known >= 0 && known <= sum) return;
      known = sum;
      before[number(next)] = at;
      open.emplace(sum, number(next));
    };
    reach({cell.x + 1, cell.y});
    reach({cell.x - 1, cell.y});
    reach({cell.x, cell.y + 1});
    reach({cell.x, cell.y - 1});
  }
  std::vector<Point> way;
  for (std::size_t at = number(*goal); at != number(*start); at = before[at])
    way.push_back(point_of({at / ys_.cells(), at % ys_.cells()}));
  way.push_back(from);
  std::ranges::reverse(way);
  way.back() = to;
  return straightened(std::move(way));
}

bool SlidingPlane::is_free_between(Point from, Point to) const {
  const std::optional<Cell> a = cell_at({std::min(from.x, to.x), std::min(from.y, to.y)});
  const std::optional<Cell> b = cell_at({std::max(from.x, to.x), std::max(from.y, to.y)});
  if (!a || !b || (from.x != to.x && from.y != to.y)) return false;
  for (std::size_t x = a->x; x <= b->x; ++x)
    for (std::size_t y = a->y; y <= b->y; ++y)
      if (!free({x, y})) return false;
  return true;
}

// From each corner on to the farthest one that is reached along at most two straight lines.
std::vector<Point> SlidingPlane::straightened(std::vector<Point> way) const {
  std::vector<Point> straight{way.front()};
  for (std::size_t at = 0; at + 1 < way.size();) {
    const Point from = straight.back();
    std::size_t next = way.size() - 1;
    std::optional<Point> corner;
    for (; next > at + 1; --next) {
      const Point to = way[next];
      for (const Point bend : {Point{to.x, from.y}, Point{from.x, to.y}})
        if (!corner && is_free_between(from, bend) && is_free_between(bend, to)) corner = bend;
      if (corner) break;
    }
    if (corner && *corner != from && *corner != way[next]) straight.push_back(*corner);
    straight.push_back(way[next]);
    at = next;
  }
  std::vector<Point> corners;  // without those in the middle of a straight line
  for (const Point point : straight) {
    if (!corners.empty() && corners.back() == point) continue;
    const std::size_t n = corners.size();
    const bool along_x = n >= 2 && corners[n - 2].y == corners[n - 1].y && corners[n - 1].y == point.y;
    const bool along_y = n >= 2 && corners[n - 2].x == corners[n - 1].x && corners[n - 1].x == point.x;
    if (along_x || along_y)
      corners.back() = point;
    else
      corners.push_back(point);
  }
  return corners;
}

std::vector<Point> SlidingPlane::free_crossings() const {
  std::vector<Point> points;
  for (std::size_t x = 0; x < xs_.cells(); x += 2)
    for (std::size_t y = 0; y < ys_.cells(); y += 2)
      if (free({x, y})) points.push_back(point_of({x, y}));
  return points;
}

std::vector<Rect> rectangles_over(const Region& region) {
  if (region.empty()) return {};
  std::vector<Length> more;
  const Rect bounds = region.bounds();
  if (!is_rectilinear(region))
    for (Length x = bounds.low.x + 1_in; x < bounds.high.x; x += 1_in) more.push_back(x);
  std::vector<Rect> rects;
  std::vector<Rect> last;  // of the columns before, joined as far as they may be
  for (const Column& column : columns_of(region, cuts_through({&region}, more))) {
    std::vector<Rect> here;
    for (const Trapezoid& stretch : column.stretches)
      here.push_back({{column.from, std::min(stretch.low_from, stretch.low_to)},
                      {column.to, std::max(stretch.high_from, stretch.high_to)}});
    std::erase_if(here, [](const Rect& rect) { return rect.high.y <= rect.low.y; });
    if (may_join(last, here)) {
      for (std::size_t i = 0; i < here.size(); ++i) last[i] = hull(last[i], here[i]);
      continue;
    }
    rects.insert(rects.end(), last.begin(), last.end());
    last = std::move(here);
  }
  rects.insert(rects.end(), last.begin(), last.end());
  return rects;
}

}  // namespace berthwright

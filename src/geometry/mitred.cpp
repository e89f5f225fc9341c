#include <berthwright/geometry/mitred.h>

#include <vector>

#include "geometry/root.h"

namespace berthwright {
namespace {

struct Way {
  double x;
  double y;
};

Way way_along(Point from, Point to) {
  const auto x = static_cast<double>((to.x - from.x).ticks());
  const auto y = static_cast<double>((to.y - from.y).ticks());
  const double length = length_of(x, y);
  return {x / length, y / length};
}

Length to_tick(double ticks) {
  return Length::from_ticks(static_cast<std::int64_t>(ticks < 0 ? ticks - 0.5 : ticks + 0.5));
}

Point moved(Point corner, double x, double y) { return corner + Vector{to_tick(x), to_tick(y)}; }

// 1 + cosine of the turn below which a tip is cut off.
constexpr double bluntest = 0.25;

void add_corner(std::vector<Point>& corners, Point at, Way in, Way out, double by) {
  const double turn = 1 + in.x * out.x + in.y * out.y;
  const bool tip = by > 0 && in.x * out.y - in.y * out.x > 0 && turn < bluntest;
  // The outward normal of a way (x, y) is (y, -x).
  if (!tip) {
    corners.push_back(moved(at, by * (in.y + out.y) / turn, -by * (in.x + out.x) / turn));
    return;
  }
  // Square to the middle between both edges and `by` away.
  const double half_cosine = root(turn / 2);
  const double half_sine = root(1 - turn / 2);
  const double along = by * (1 - half_cosine) / half_sine;
  corners.push_back(moved(at, by * in.y + along * in.x, -by * in.x + along * in.y));
  corners.push_back(moved(at, by * out.y - along * out.x, -by * out.x - along * out.y));
}

}  // namespace

std::optional<Polygon> mitred(const Polygon& outline, Length by) {
  const auto old = outline.vertices();
  const std::size_t count = old.size();
  std::vector<Way> ways;
  for (std::size_t i = 0; i < count; ++i) ways.push_back(way_along(old[i], old[(i + 1) % count]));
  std::vector<Point> corners;
  std::vector<std::size_t> last;  // corner of the result at which the edge from old corner i begins
  for (std::size_t i = 0; i < count; ++i) {
    add_corner(corners, old[i], ways[(i + count - 1) % count], ways[i], static_cast<double>(by.ticks()));
    last.push_back(corners.size() - 1);
  }
  for (std::size_t i = 0; i < count; ++i) {
    const Point from = corners[last[i]];
    const Point to = corners[(last[i] + 1) % corners.size()];
    const Vector now = to - from;
    const Vector before = old[(i + 1) % count] - old[i];
    const Int128 along = Int128{now.x.ticks()} * before.x.ticks() + Int128{now.y.ticks()} * before.y.ticks();
    if (along <= 0) return std::nullopt;
  }
  Result<Polygon> checked = Polygon::checked(std::move(corners));
  return checked ? std::optional(std::move(checked).value()) : std::nullopt;
}

}  // namespace berthwright

#include <berthwright/geometry/four_walls.h>

#include <algorithm>
#include <cstddef>
#include <utility>

#include <berthwright/exact/squared_length.h>

#include "geometry/root.h"

namespace berthwright {
namespace {

constexpr std::size_t unknowns =
    5;  // the right end of the front wall, and both coordinates of both rear corners
using Shape = std::array<double, unknowns>;
using Row = std::array<double, unknowns + 1>;

/// Corners: front left 0, front right 1, rear left 2, rear right 3.
struct Line {
  std::size_t from;
  std::size_t to;
};
/// In the order of the misfits.
constexpr std::array<Line, 6> lines{{{0, 1}, {2, 3}, {0, 2}, {1, 3}, {0, 3}, {1, 2}}};

/// Which unknowns a corner's x and y are; -1: it is zero.
constexpr std::array<std::array<int, 2>, 4> corner_places{{{-1, -1}, {-1, 0}, {1, 2}, {3, 4}}};

double coordinate(const Shape& shape, std::size_t corner, std::size_t axis) {
  const int place = corner_places[corner][axis];
  return place < 0 ? 0 : shape[static_cast<std::size_t>(place)];
}

/// How far a line falls short of its measure, and how that changes with each unknown.
Row misfit_row(const Shape& shape, const Line& line, double measured) {
  const std::array<double, 2> span{coordinate(shape, line.to, 0) - coordinate(shape, line.from, 0),
                                   coordinate(shape, line.to, 1) - coordinate(shape, line.from, 1)};
  const double length = length_of(span[0], span[1]);
  Row row{};
  row[unknowns] = measured - length;
  for (std::size_t axis = 0; axis < 2; ++axis) {
    const double along = length > 0 ? span[axis] / length : 0;
    if (corner_places[line.to][axis] >= 0)
      row[static_cast<std::size_t>(corner_places[line.to][axis])] += along;
    if (corner_places[line.from][axis] >= 0)
      row[static_cast<std::size_t>(corner_places[line.from][axis])] -= along;
  }
  return row;
}

/// Solves the equations by elimination; none where they do not say enough.
std::optional<Shape> solved(std::array<Row, unknowns> rows) {
  for (std::size_t step = 0; step < unknowns; ++step) {
    const auto best =
        std::max_element(rows.begin() + static_cast<std::ptrdiff_t>(step), rows.end(),
                         [&](const Row& a, const Row& b) { return a[step] * a[step] < b[step] * b[step]; });
    std::swap(rows[step], *best);
    constexpr double nothing = 1e-9;
    if (rows[step][step] < nothing && rows[step][step] > -nothing) return std::nullopt;
    for (std::size_t other = 0; other < unknowns; ++other) {
      if (other == step) continue;
      const double times = rows[other][step] / rows[step][step];
      for (std::size_t i = step; i <= unknowns; ++i) rows[other][i] -= times * rows[step][i];
    }
  }
  Shape solution{};
  for (std::size_t i = 0; i < unknowns; ++i) solution[i] = rows[i][unknowns] / rows[i][i];
  return solution;
}

using Measures = std::array<std::optional<Length>, 6>;

/// The step to a better shape: least squares of the misfits as far as they are straight.
std::optional<Shape> step_from(const Shape& shape, const Measures& measures) {
  std::array<Row, unknowns> normal{};
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::optional<Length>& measure = measures[i];
    if (!measure) continue;
    const Row row = misfit_row(shape, lines[i], static_cast<double>(measure->ticks()));
    for (std::size_t a = 0; a < unknowns; ++a)
      for (std::size_t b = 0; b <= unknowns; ++b) normal[a][b] += row[a] * row[b];
  }
  return solved(normal);
}

Length rounded_tick(double ticks) {
  return Length::from_ticks(static_cast<std::int64_t>(ticks < 0 ? ticks - 0.5 : ticks + 0.5));
}

Length distance(Point a, Point b) {
  const Int128 x = (b - a).x.ticks();
  const Int128 y = (b - a).y.ticks();
  return SquaredLength(x * x + y * y, 1).floor();
}

Problem no_room() {
  return {
      .id = "walls.no-room",
      .message = "no room with four corners has these walls and diagonals",
      .found = "walls and diagonals that do not meet",
      .allowed =
          "each diagonal shorter than two walls that lead to its end, and walls that meet at four corners",
      .cure = "measure again, both diagonals at the same height, from corner to corner"};
}

}  // namespace

Result<FittedWalls> fitted(const MeasuredWalls& measured) {
  const Measures measures{
      measured.front,           measured.rear, measured.left, measured.right, measured.from_front_left,
      measured.from_front_right};
  if (!measured.from_front_left && !measured.from_front_right)
    return Problem{.id = "walls.no-diagonal",
                   .message = "four walls alone do not say how far a room is out of square",
                   .found = "no diagonal",
                   .allowed = "at least one diagonal, better both",
                   .cure = "measure from the front left corner to the rear right one, and across"};
  for (const std::optional<Length>& one : measures)
    if (one && *one <= Length{}) return no_room();
  const auto spans = [](const std::optional<Length>& diagonal, Length a, Length b) {
    return !diagonal || *diagonal < a + b;
  };
  if (!spans(measured.from_front_left, measured.front, measured.right) ||
      !spans(measured.from_front_left, measured.left, measured.rear) ||
      !spans(measured.from_front_right, measured.front, measured.left) ||
      !spans(measured.from_front_right, measured.right, measured.rear))
    return no_room();
  Shape shape{static_cast<double>(measured.front.ticks()), static_cast<double>(measured.left.ticks()), 0,
              static_cast<double>(measured.right.ticks()), static_cast<double>(measured.rear.ticks())};
  constexpr int steps =
      50;  // each about squares the error of the last; what has not settled by then never does
  double last = 0;
  for (int i = 0; i < steps; ++i) {
    const std::optional<Shape> step = step_from(shape, measures);
    if (!step) return no_room();
    last = 0;
    for (std::size_t u = 0; u < unknowns; ++u) {
      shape[u] += (*step)[u];
      last += (*step)[u] * (*step)[u];
    }
  }
  if (!(last < 1)) return no_room();
  std::array<Point, 4> at{};
  for (std::size_t corner = 0; corner < 4; ++corner)
    at[corner] = {rounded_tick(coordinate(shape, corner, 0)), rounded_tick(coordinate(shape, corner, 1))};
  FittedWalls result;
  for (std::size_t i = 0; i < lines.size(); ++i)
    if (measures[i]) result.misfits[i] = *measures[i] - distance(at[lines[i].from], at[lines[i].to]);
  const Length low = std::min({at[0].y, at[1].y, at[2].y, at[3].y});
  for (Point& corner : at) corner.y = corner.y - low;
  result.corners = {at[0], at[2], at[3], at[1]};
  // Convex, and walked one way round: else two walls cross.
  for (std::size_t i = 0; i < 4; ++i)
    if (cross(result.corners[i], result.corners[(i + 1) % 4], result.corners[(i + 2) % 4]) <= 0)
      return no_room();
  return result;
}

}  // namespace berthwright

#include "solve/heat/plate.h"

#include <algorithm>
#include <array>
#include <set>
#include <stdexcept>
#include <tuple>
#include <utility>

#include "plan/wall_names.h"

namespace berthwright {
namespace {

struct Range {
  Length low;
  Length high;
};

// Coordinates lie within `farthest`, turned ones within its diagonal: nothing reaches these ends.
constexpr Length beyond = 4 * farthest;

Range part_of(Length low, Length high, int side) {
  if (side < 0) return {-beyond, low};
  if (side > 0) return {high, beyond};
  return {low, high};
}

Length gap(Range range, Length value) { return std::max({range.low - value, value - range.high, Length{}}); }

// A point of an edge as a fraction: (x, y) / parts. Differences fit 32 bits, so x and y fit 65.
struct FractionPoint {
  Int128 x;
  Int128 y;
  Int128 parts;
};

bool lies_in(Range range, Int128 value, Int128 parts) {
  return parts * range.low.ticks() <= value && value <= parts * range.high.ticks();
}

Int128 gap(Range range, Int128 value, Int128 parts) {
  return std::max({parts * range.low.ticks() - value, value - parts * range.high.ticks(), Int128{0}});
}

Length rounded(Int128 value, Int128 parts) {
  const Int128 doubled = 2 * value + parts;
  Int128 quotient = doubled / (2 * parts);
  if (quotient * 2 * parts > doubled) --quotient;
  return Length::from_ticks(static_cast<std::int64_t>(quotient));
}

// Walks the candidates for the least plan distance between a rectangle and the part of a region in a cell.
class CellSearch {
 public:
  CellSearch(const Rect& box, Range x, Range y)
      : box_x_{box.low.x, box.high.x}, box_y_{box.low.y, box.high.y}, x_(x), y_(y) {}

  void visit(const Region& region) {
    for (const Length x : {box_x_.low, box_x_.high})
      for (const Length y : {box_y_.low, box_y_.high})
        if (region.side_of({x, y}) != Side::outside) visit(FractionPoint{x.ticks(), y.ticks(), 1});
    for (const Edge& edge : edges(region)) visit(edge);
  }

  const std::optional<Nearest>& least() const { return least_; }

 private:
  void visit(const Edge& edge) {
    visit(at(edge, 0, 1));
    for (const Length x : {x_.low, x_.high}) visit_crossing(edge, edge.from.x, edge.to.x, x);
    for (const Length y : {y_.low, y_.high}) visit_crossing(edge, edge.from.y, edge.to.y, y);
    for (const Length x : {box_x_.low, box_x_.high})
      for (const Length y : {box_y_.low, box_y_.high}) visit_foot(edge, {x, y});
  }

  static FractionPoint at(const Edge& edge, Int128 part, Int128 parts) {
    const Vector along = edge.to - edge.from;
    return {parts * edge.from.x.ticks() + part * along.x.ticks(),
            parts * edge.from.y.ticks() + part * along.y.ticks(), parts};
  }

  void visit_crossing(const Edge& edge, Length from, Length to, Length line) {
    Int128 part = (line - from).ticks();
    Int128 parts = (to - from).ticks();
    if (parts < 0) part = -part, parts = -parts;
    if (parts > 0 && 0 <= part && part <= parts) visit(at(edge, part, parts));
  }

  // The foot's own fraction would overflow when squared; its distance is the cross product over the length.
  void visit_foot(const Edge& edge, Point corner) {
    const Vector along = edge.to - edge.from;
    const Vector to_corner = corner - edge.from;
    const std::int64_t reach = along.x.ticks() * to_corner.x.ticks() + along.y.ticks() * to_corner.y.ticks();
    const std::int64_t squared = along.x.ticks() * along.x.ticks() + along.y.ticks() * along.y.ticks();
    if (reach <= 0 || reach >= squared) return;
    const FractionPoint foot = at(edge, reach, squared);
    if (!inside_cell(foot) || lies_in(box_x_, foot.x, foot.parts) || lies_in(box_y_, foot.y, foot.parts))
      return;
    const Int128 twice_area = cross(edge.from, edge.to, corner);
    offer({twice_area * twice_area, squared}, foot);
  }

  void visit(const FractionPoint& point) {
    if (!inside_cell(point)) return;
    const Int128 along = gap(box_x_, point.x, point.parts);
    const Int128 across = gap(box_y_, point.y, point.parts);
    offer({along * along + across * across, point.parts * point.parts}, point);
  }

  bool inside_cell(const FractionPoint& point) const {
    return lies_in(x_, point.x, point.parts) && lies_in(y_, point.y, point.parts);
  }

  void offer(SquaredLength squared, const FractionPoint& point) {
    const Point to{rounded(point.x, point.parts), rounded(point.y, point.parts)};
    const Point from{std::clamp(to.x, box_x_.low, box_x_.high), std::clamp(to.y, box_y_.low, box_y_.high)};
    if (least_) {
      const auto order = squared <=> least_->squared;
      if (order > 0) return;
      if (order == 0 && std::tie(least_->from.plan, least_->to.plan) <= std::tie(from, to)) return;
    }
    least_ = Nearest{squared, {from, Length{}}, {to, Length{}}};
  }

  Range box_x_;
  Range box_y_;
  Range x_;
  Range y_;
  std::optional<Nearest> least_;
};

}  // namespace

std::vector<ApplianceFace> faces_of(Wall front, Cell cell) {
  using Kind = ApplianceFace::Kind;
  std::vector<ApplianceFace> faces;
  const auto add_side = [&](Wall side) {
    faces.push_back({side == front ? Kind::front : side == opposite(front) ? Kind::back : Kind::side, side});
  };
  if (cell.x != 0) add_side(cell.x < 0 ? Wall::front : Wall::rear);
  if (cell.y != 0) add_side(cell.y < 0 ? Wall::left : Wall::right);
  if (cell.z != 0) faces.push_back({cell.z < 0 ? Kind::underside : Kind::top, Wall::front});
  std::ranges::sort(faces);
  return faces;
}

const std::optional<Length>& given(const DataPlate& plate, const ApplianceFace& face) {
  switch (face.kind) {
    case ApplianceFace::Kind::front:
      return plate.front;
    case ApplianceFace::Kind::back:
      return plate.back;
    case ApplianceFace::Kind::top:
      return plate.top;
    case ApplianceFace::Kind::side:
    case ApplianceFace::Kind::underside:
      return plate.sides;
  }
  throw std::logic_error("ApplianceFace::Kind out of range");
}

Demand demand_of(const DataPlate& plate, Wall front, Cell cell) {
  Demand demand;
  const auto add = [&](const std::optional<Length>& face) {
    if (!face) demand.incomplete = true;
    if (face && (!demand.required || *demand.required < *face)) demand.required = face;
  };
  for (const ApplianceFace& face : faces_of(front, cell)) add(given(plate, face));
  if (cell == Cell{})
    for (const auto& face : {plate.front, plate.back, plate.sides, plate.top}) add(face);
  return demand;
}

std::optional<Nearest> nearest_in_cell(const SourceBox& box, const Solid& solid, Cell cell) {
  const Range heights = part_of(box.base, box.top, cell.z);
  const Range shared{std::max(heights.low, solid.base()), std::min(heights.high, solid.top())};
  if (shared.low > shared.high) return std::nullopt;
  CellSearch search(box.plan, part_of(box.plan.low.x, box.plan.high.x, cell.x),
                    part_of(box.plan.low.y, box.plan.high.y, cell.y));
  search.visit(solid.outline());
  std::optional<Nearest> in_plan = search.least();
  if (!in_plan) return std::nullopt;
  Nearest& nearest = *in_plan;
  nearest.to.z = cell.z < 0 ? shared.high : shared.low;
  nearest.from.z = std::clamp(nearest.to.z, box.base, box.top);
  nearest.squared = nearest.squared.plus_square_of(gap({box.base, box.top}, nearest.to.z));
  return nearest;
}

PlateReading plate_reading(const SourceBox& box, const DataPlate& plate, const std::vector<Solid>& solids) {
  PlateReading reading;
  std::set<ApplianceFace> missing;
  const Solid body(Region(box.plan), box.base, box.top);
  const auto faces_before = [](Cell cell) { return cell.x * cell.x + cell.y * cell.y + cell.z * cell.z; };
  constexpr std::array sides{-1, 0, 1};
  for (const int x : sides)
    for (const int y : sides)
      for (const int z : sides)
        for (const Solid& solid : solids) {
          const Cell cell{x, y, z};
          if (cell == Cell{} && !overlaps(body, solid)) continue;
          const std::optional<Nearest> nearest = nearest_in_cell(box, solid, cell);
          if (!nearest) continue;
          const Demand demand = demand_of(plate, box.front, cell);
          reading.incomplete = reading.incomplete || demand.incomplete;
          for (const ApplianceFace& face : faces_of(box.front, cell))
            if (!given(plate, face)) missing.insert(face);
          if (!demand.required) continue;
          const Length margin = nearest->squared.floor() - *demand.required;
          if (!reading.least || std::pair(margin, faces_before(cell)) <
                                    std::pair(reading.least->margin, faces_before(reading.least->cell)))
            reading.least = PlateReading::Least{margin, *demand.required, *nearest, cell};
        }
  reading.missing.assign(missing.begin(), missing.end());
  return reading;
}

}  // namespace berthwright

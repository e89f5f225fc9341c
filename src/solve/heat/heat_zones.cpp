#include <berthwright/solve/heat/heat_zones.h>

#include <algorithm>

#include "solve/heat/burnables.h"
#include "solve/heat/plate.h"

namespace berthwright {
namespace {

bool outline_has_arcs(const Placed& source) {
  return source.fixture != nullptr ? !source.fixture->arcs.empty() : !source.pose->arcs.empty();
}

// What lies before one face or edge of the box as far as `reach`.
Region before(const Rect& box, int x, int y, Length reach) {
  const auto span = [&](int side, Length low, Length high) -> std::pair<Length, Length> {
    if (side == 0) return {low, high};
    return side > 0 ? std::pair(high, high + reach) : std::pair(low - reach, low);
  };
  const auto [left, right] = span(x, box.low.x, box.high.x);
  const auto [near, far] = span(y, box.low.y, box.high.y);
  Region square(Rect{{left, near}, {right, far}});
  if (x == 0 || y == 0) return square;
  const Vector corner{x > 0 ? box.high.x : box.low.x, y > 0 ? box.high.y : box.low.y};
  return common(square, moved(disc_around(reach), corner));
}

std::optional<Region> plate_zone(const Placed& source, Length more) {
  const DataPlate* plate = plate_of(source);
  const std::optional<Wall> front = way_of_front(source);
  if (plate == nullptr || !front) return std::nullopt;
  const Rect box = source.solid.outline().bounds();
  const Length inexact = outline_has_arcs(source) ? arc_error : Length{};
  std::vector<Region> parts{source.solid.outline()};
  bool given = false;
  for (const int x : {-1, 0, 1})
    for (const int y : {-1, 0, 1}) {
      if (x == 0 && y == 0) continue;
      const std::optional<Length> required = demand_of(*plate, *front, {x, y, 0}).required;
      given = given || required;
      if (required && *required + more > Length{})
        parts.push_back(before(box, x, y, *required + more + inexact));
    }
  return given ? std::optional(united(parts)) : std::nullopt;
}

}  // namespace

std::vector<HeatZones> heat_zones(const Plan& plan, const Arrangement& arrangement) {
  const Length three_feet = plan.limit(*find_rule("heat.three-feet"));
  const Length more = plan.limit(*find_rule("heat.data-plate"));
  std::vector<HeatZones> all;
  for (const Placed& source : arrangement.things) {
    if (!gives_heat(source)) continue;
    HeatZones zones{source.id, std::nullopt, plate_zone(source, more)};
    if (is_heater(source))
      zones.published =
          grown(source.solid.outline(), three_feet + (outline_has_arcs(source) ? arc_error : Length{}));
    all.push_back(std::move(zones));
  }
  return all;
}

}  // namespace berthwright

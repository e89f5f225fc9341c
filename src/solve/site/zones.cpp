#include "solve/site/zones.h"

#include <algorithm>
#include <array>
#include <map>

#include "geometry/convex.h"
#include "solve/heat/plate.h"

namespace berthwright {
namespace {

using Level = BurnGroup::Level;

Level level_of(const Solid& solid, Length base, Length top) {
  Level level;
  level.beside = solid.base() <= top && base <= solid.top();
  if (solid.top() >= top) level.above = std::max(solid.base() - top, Length{});
  if (solid.base() <= base) level.below = std::max(base - solid.top(), Length{});
  return level;
}

// How far in plan a distance reaches to what lies `apart` in height; none where it does not.
std::optional<Length> reach_in_plan(Length asked, Length apart) {
  if (asked <= apart) return std::nullopt;
  const Int128 squared = Int128{asked.ticks()} * asked.ticks() - Int128{apart.ticks()} * apart.ticks();
  return SquaredLength(squared, 1).ceiling();
}

Length with_arcs(Length asked, const Level& level) { return asked + level.arcs * arc_error; }

// Of the corner, less the place of what burns: the box lies behind it.
Polygon footprint(const Stance& stance) { return Polygon::rectangle({{-stance.along, -stance.across}, {}}); }

// On a shared plane the larger distance rules. So what lies before an edge reaches over its planes by this,
// and no place on the border of the zone is free that the plane takes away.
constexpr Length over_the_plane = Length::from_ticks(4);

// A quarter of the disc that covers its circle, about `centre`, toward the signs of x and y.
Polygon quarter_disc(Length radius, Point centre, int x, int y) {
  const Polygon disc = disc_around(radius);
  std::vector<Point> corners{{}, {radius, {}}, {{}, radius}};
  for (const Point p : disc.vertices())
    if (p.x > Length{} && p.y > Length{}) corners.push_back(p);
  for (Point& p : corners) p = centre + Vector{p.x * x, p.y * y};
  const Point over{-over_the_plane * x, -over_the_plane * y};
  const Rect square{{std::min(over.x, Length{}), std::min(over.y, Length{})},
                    {std::max(over.x, Length{}), std::max(over.y, Length{})}};
  return convex_sum(Polygon::promised(convex_hull(std::move(corners))), Polygon::rectangle(square));
}

// What lies before a face, an edge or above: the same shape as for a place of the appliance, seen from the
// thing, so turned by half a turn: what lies beyond its high side forbids places on its own low side.
Polygon zone(const Stance& stance, int x, int y, Length reach) {
  const auto span = [&](int side, Length size) -> std::pair<Length, Length> {
    if (side == 0) return {-size, {}};
    return side > 0 ? std::pair(-size - reach, -size) : std::pair(Length{}, reach);
  };
  const auto [left, right] = span(x, stance.along);
  const auto [low, high] = span(y, stance.across);
  if (x == 0 || y == 0) return Polygon::rectangle({{left, low}, {right, high}});
  return quarter_disc(reach, {x > 0 ? right : left, y > 0 ? high : low}, -x, -y);
}

// The farthest that the plate asks in plan before one of the nine parts in which the box is seen from above.
std::optional<Length> plate_reach(const DataPlate& plate, Wall front, const Level& level, Cell cell,
                                  Length more) {
  std::optional<Length> farthest_reach;
  const auto ask = [&](int z, Length apart) {
    cell.z = z;
    const std::optional<Length> required = demand_of(plate, front, cell).required;
    if (!required) return;
    const std::optional<Length> reach = reach_in_plan(with_arcs(*required + more, level), apart);
    if (reach && (!farthest_reach || *farthest_reach < *reach)) farthest_reach = reach;
  };
  if (level.beside) ask(0, {});
  if (level.above) ask(1, *level.above);
  if (level.below) ask(-1, *level.below);
  return farthest_reach;
}

void add_sums(const std::vector<Polygon>& parts, const Polygon& zone, std::vector<Polygon>& polygons) {
  for (const Polygon& part : parts) polygons.push_back(convex_sum(part, zone));
}

}  // namespace

std::vector<BurnGroup> burn_groups(std::span<const Burnable> burnables, Length base, Length top, bool arcs) {
  std::map<Level, std::vector<Region>> outlines;
  for (const Burnable& burnable : burnables)
    for (const Solid& solid : burnable.solids) {
      Level level = level_of(solid, base, top);
      level.arcs = (burnable.has_arcs ? 1 : 0) + (arcs ? 1 : 0);
      outlines[level].push_back(solid.outline());
    }
  std::vector<BurnGroup> groups;
  for (const auto& [level, regions] : outlines) groups.push_back({level, convex_parts(united(regions))});
  return groups;
}

std::vector<Polygon> too_near(std::span<const BurnGroup> groups, const Stance& stance, Length asked,
                              Length everywhere) {
  std::vector<Polygon> polygons;
  for (const BurnGroup& group : groups) {
    const Level& level = group.level;
    const Length apart = level.beside  ? Length{}
                         : level.above ? *level.above
                                       : level.below.value_or(Length{});
    const std::optional<Length> reach = reach_in_plan(with_arcs(asked, level), apart);
    if (!reach) continue;
    const Polygon disc = disc_around(std::min(*reach, everywhere));
    add_sums(group.parts, convex_sum(footprint(stance), disc), polygons);
  }
  return polygons;
}

std::vector<Polygon> too_near_for_plate(std::span<const BurnGroup> groups, const Stance& stance,
                                        const DataPlate& plate, Length more, Length everywhere) {
  constexpr std::array sides{-1, 0, 1};
  std::vector<Polygon> polygons;
  for (const BurnGroup& group : groups)
    for (const int x : sides)
      for (const int y : sides) {
        const std::optional<Length> reach =
            plate_reach(plate, stance.faces, group.level, Cell{x, y, 0}, more);
        if (reach) add_sums(group.parts, zone(stance, x, y, std::min(*reach, everywhere)), polygons);
      }
  return polygons;
}

}  // namespace berthwright

#include <berthwright/solve/way/clear_opening.h>

#include <algorithm>
#include <tuple>

#include "solve/way/wall_frame.h"

namespace berthwright {
namespace {

/// x along the wall, y the height above the floor.
Rect seen(const Opening& opening) {
  return {{opening.from, opening.sill}, {opening.from + opening.width, opening.sill + opening.height}};
}

/// What of the thing stands before the opening, seen square to the wall; one box for each part.
std::vector<Rect> shadows(const Placed& thing, const Rect& strip, const Opening& opening) {
  std::vector<Rect> boxes;
  const Region before = common(thing.solid.outline(), Region(strip));
  for (const Face& face : before.faces()) {
    const Rect bounds = face.outer.bounds();
    const bool level = runs_along_x(opening.wall);
    const Rect box{{level ? bounds.low.x : bounds.low.y, thing.solid.base()},
                   {level ? bounds.high.x : bounds.high.y, thing.solid.top()}};
    if (overlaps(box, seen(opening))) boxes.push_back(box);
  }
  return boxes;
}

/// The clear rectangles between two uprights: as high as they get.
void add_between(Length left, Length right, const Rect& hole, const std::vector<Rect>& boxes,
                 std::vector<Sides>& clear) {
  std::vector<std::pair<Length, Length>> taken;
  for (const Rect& box : boxes)
    if (box.low.x < right && left < box.high.x) taken.emplace_back(box.low.y, box.high.y);
  std::ranges::sort(taken);
  Length free_from = hole.low.y;
  taken.emplace_back(hole.high.y, hole.high.y);
  for (const auto& [low, high] : taken) {
    const Length end = std::min(low, hole.high.y);
    if (free_from < end) clear.push_back({right - left, end - free_from});
    free_from = std::max(free_from, high);
  }
}

std::vector<Sides> clear_rectangles(const Rect& hole, const std::vector<Rect>& boxes) {
  std::vector<Length> uprights{hole.low.x, hole.high.x};
  for (const Rect& box : boxes)
    for (const Length x : {box.low.x, box.high.x})
      if (hole.low.x < x && x < hole.high.x) uprights.push_back(x);
  std::ranges::sort(uprights);
  const auto repeated = std::ranges::unique(uprights);
  uprights.erase(repeated.begin(), repeated.end());
  std::vector<Sides> clear;
  for (std::size_t i = 0; i < uprights.size(); ++i)
    for (std::size_t k = i + 1; k < uprights.size(); ++k)
      add_between(uprights[i], uprights[k], hole, boxes, clear);
  return clear;
}

Area area(const Sides& sides) { return Area::rectangle(sides.length, sides.width); }

bool holds_vehicle(const Sides& sides) {
  return sides.length >= vehicle_opening.length && sides.width >= vehicle_opening.width;
}
bool holds_dwelling(const Sides& sides) {
  return std::min(sides.length, sides.width) >= dwelling_side && area(sides) >= dwelling_area;
}

/// All that the leaf passes through, about one of its ends.
Solid leaf_about(Point pin, const Interior& room, const Opening& opening) {
  const Region circle = moved(disc_around(opening.width), pin - Point{});
  const Rect inside = before_opening(room, opening, Length{}, opening.width);
  return {common(circle, inside), opening.sill, opening.sill + opening.height};
}

template <class Rank>
Sides best(const std::vector<Sides>& clear, Rank rank) {
  const auto found = std::ranges::max_element(clear, {}, rank);
  return found == clear.end() ? Sides{} : *found;
}

}  // namespace

bool ClearOpening::holds_vehicle_opening() const { return holds_vehicle(for_vehicle); }
bool ClearOpening::holds_dwelling_opening() const { return holds_dwelling(for_dwelling); }

ClearOpening clear_opening(const Plan& plan, const Arrangement& arrangement, const Opening& opening) {
  ClearOpening result;
  result.opening = &opening;
  const Rect strip = before_opening(plan->interior, opening, Length{}, before_an_opening);
  std::vector<Rect> boxes;
  for (const Placed& thing : arrangement.things) {
    if (thing.is_curtain()) continue;
    const std::vector<Rect> more = shadows(thing, strip, opening);
    if (more.empty()) continue;
    boxes.insert(boxes.end(), more.begin(), more.end());
    result.blocked_by.push_back(thing.id);
  }
  std::ranges::sort(result.blocked_by);
  const std::vector<Sides> clear = clear_rectangles(seen(opening), boxes);
  result.for_vehicle = best(clear, [](const Sides& s) {
    return std::tuple(std::min(s.length - vehicle_opening.length, s.width - vehicle_opening.width), area(s),
                      s.length);
  });
  result.for_dwelling = best(clear, [](const Sides& s) {
    return std::tuple(holds_dwelling(s), std::min(s.length, s.width), area(s), s.length);
  });
  return result;
}

Length distance_from_bed(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                         const Opening& opening) {
  const Region wall = before_opening(plan->interior, opening, -1_in, Length{});
  Length least = farthest;
  for (const PieceId& id : bed.pieces)
    if (const Placed* piece = arrangement.find(id.text()))
      least = std::min(least, nearest(piece->solid.outline(), wall).squared.ceiling());
  return least;
}

std::vector<Solid> inward_sweeps(const Interior& room, const Opening& opening) {
  const Edge ends = threshold(room, opening);
  const bool at_near_end = opening.hinge == Wall::front || opening.hinge == Wall::left;
  std::vector<Solid> sweeps;
  for (const Point pin : {ends.from, ends.to})
    if (!opening.hinge || (pin == ends.from) == at_near_end) sweeps.push_back(leaf_about(pin, room, opening));
  return sweeps;
}

InwardSwing inward_swing(const Plan& plan, const Arrangement& arrangement, const Opening& opening) {
  InwardSwing result;
  result.opening = &opening;
  for (const Solid& sweep : inward_sweeps(plan->interior, opening))
    for (const Placed& thing : arrangement.things)
      if (!thing.is_curtain() && overlaps(sweep, thing.solid)) result.blocked_by.push_back(thing.id);
  std::ranges::sort(result.blocked_by);
  const auto repeated = std::ranges::unique(result.blocked_by);
  result.blocked_by.erase(repeated.begin(), repeated.end());
  result.known = opening.hinge || result.blocked_by.empty();
  return result;
}

}  // namespace berthwright

#include "solve/convert/room_around.h"

#include <berthwright/solve/open/leaves.h>

#include "solve/convert/sliding_plane.h"
#include "solve/room/room_shape.h"
#include "solve/way/wall_frame.h"

namespace berthwright {
namespace {

// Where a wall curves away from the line of its door, the doorway begins this far inside.
constexpr Length thick_of_wall = 6_in;

}  // namespace

bool is_way_out(const Opening& opening) {
  return opening.kind == Opening::Kind::door && opening.swing != Opening::Swing::fixed;
}

Rect outside_door(const Interior& room, const Opening& door, Length from, Length to) {
  return before_opening(room, door, -from, -to);
}

RoomAround::RoomAround(const Plan& plan)
    : plan_(plan), range_(grown(plan->interior.outline.polygon().bounds(), outside)) {
  for (const Fixture& fixture : plan->fixtures)
    if (fixture.kind != Fixture::Kind::curtain)
      built_in_.push_back(
          {rectangles_over(fixture.solid.outline()), fixture.solid.base(), fixture.solid.top()});
}

const Region& RoomAround::room(Length low, Length high) const {
  const auto [known, fresh] = rooms_.try_emplace({low, high});
  if (fresh) known->second = room_between(plan_->interior, low, high);
  return known->second;
}

const std::vector<Rect>& RoomAround::beyond(Length low, Length high) const {
  const auto [known, fresh] = beyond_.try_emplace({low, high});
  if (!fresh) return known->second;
  std::vector<Region> open{room(low, high)};
  for (const Opening& opening : plan_->openings)
    if (is_way_out(opening) && opening.sill <= low && high <= opening.sill + opening.height)
      open.emplace_back(outside_door(plan_->interior, opening, -thick_of_wall, outside));
  known->second = rectangles_over(without(Region(range_), united(open)));
  return known->second;
}

const Region& RoomAround::sweep(const Fixture& fixture, const Leaf& leaf, Length low, Length high) const {
  const auto [known, fresh] = sweeps_.try_emplace({&leaf, low, high});
  if (fresh) known->second = leaf_sweep(fixture, leaf, low, high);
  return known->second;
}

}  // namespace berthwright

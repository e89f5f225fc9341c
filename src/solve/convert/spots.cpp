#include "solve/convert/spots.h"

#include <algorithm>

namespace berthwright {
namespace {

// The fixture or leaf in which the piece is kept; what no plan shows has no place in it.
Rect reach_of_place(const Plan& plan, const std::string& place) {
  if (const Leaf* leaf = plan.leaf(place)) {
    if (leaf->kind == Leaf::Kind::lid) return leaf->outline;
    return plan.fixture(leaf->fixture.text())->solid.outline().bounds();
  }
  if (const Fixture* fixture = plan.fixture(place)) return fixture->solid.outline().bounds();
  return plan->interior.outline.polygon().bounds();
}

}  // namespace

PiecePlace spot_in(const Plan& plan, const Arrangement& arrangement, const Pose& pose) {
  PiecePlace spot;
  spot.pose = pose;
  if (pose.manner == Pose::Manner::stowed) {
    spot.kind = PiecePlace::Kind::stowed;
    spot.place = pose.stowed_in;
    spot.reach = reach_of_place(plan, pose.stowed_in);
    return spot;
  }
  const Placed& placed = *arrangement.find(pose.piece.text());
  spot.base = placed.solid.base();
  spot.carried_by = placed.carried_by;
  spot.reach = pose.outline.bounds();
  return spot;
}

bool is_same_spot(const PiecePlace& a, const PiecePlace& b) {
  if (a.kind != b.kind || a.place != b.place) return false;
  if (!a.stands_in_room()) return true;
  const bool same_face = a.pose.faces == b.pose.faces || a.pose.manner == Pose::Manner::flat;
  return a.pose.outline == b.pose.outline && a.base == b.base && a.pose.manner == b.pose.manner &&
         same_face && a.pose.placement.flipped == b.pose.placement.flipped &&
         a.pose.placement.turn == b.pose.placement.turn;
}

bool half_turns(const PiecePlace& spot) {
  const Turn turn = spot.pose.placement.turn;
  return turn.sine() < 0 || (turn.sine() == 0 && turn.cosine() < 0);
}

}  // namespace berthwright

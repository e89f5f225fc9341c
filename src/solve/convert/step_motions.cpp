#include "solve/convert/step_motions.h"

#include <algorithm>
#include <ranges>
#include <stdexcept>
#include <utility>

#include "solve/convert/motion_room.h"

namespace berthwright {
namespace {

const WayAnchor& anchor_of(const SpotTable& made, std::size_t spot, std::size_t joins, const SpotSet& taken) {
  const std::vector<OpenWay>& ways = made.table.spots[spot].ways;
  for (std::size_t i = 0; i < ways.size(); ++i)
    if (ways[i].joins == joins && (ways[i].barred_by & taken).none()) return made.anchors[spot][i];
  throw std::logic_error("a move without a way");
}

void open_leaf(Step& step, const std::string& leaf) {
  if (!leaf.empty() && std::ranges::find(step.opens, leaf) == step.opens.end()) step.opens.push_back(leaf);
}

// Up to the level, and to its own box where it was turned by no quarter.
void take_up(std::vector<Motion>& motions, const Carrying& carrying, const PiecePlace& spot,
             const WayAnchor& anchor) {
  if (!spot.stands_in_room()) return;
  const Length height = carrying.heights()[anchor.level];
  Solid solid = spot.solid();
  if (anchor.tilt) {
    motions.push_back(tilted(solid, height, *anchor.tilt));
    return;
  }
  if (height != solid.base()) {
    motions.push_back(raised(solid, height));
    solid = motions.back().after;
  }
  if (spot.pose.placement.turn.is_quarter()) return;
  const Rect box = carrying.box(anchor.held);
  motions.push_back(
      {Motion::Kind::turn,
       solid,
       Solid(Region(box), solid.base(), solid.top()),
       {Solid(Region(hull(turning_room(box).needed, solid.outline().bounds())), solid.base(), solid.top())}});
}

Carrying::Detour detour_between(const Step& step) {
  const auto lies_flat = [](const PiecePlace& spot) {
    return spot.stands_in_room() && spot.pose.manner == Pose::Manner::flat;
  };
  if (step.flipped) return Carrying::Detour::flip;
  const bool both_posed =
      step.from.kind == PiecePlace::Kind::posed && step.to.kind == PiecePlace::Kind::posed;
  return both_posed && lies_flat(step.from) && lies_flat(step.to) &&
                 half_turns(step.from) != half_turns(step.to)
             ? Carrying::Detour::spin
             : Carrying::Detour::none;
}

}  // namespace

Motion backwards(Motion motion) {
  std::swap(motion.before, motion.after);
  if (motion.swing) std::ranges::reverse(motion.swing->keys);
  if (motion.kind == Motion::Kind::lift)
    motion.kind = Motion::Kind::lower;
  else if (motion.kind == Motion::Kind::lower)
    motion.kind = Motion::Kind::lift;
  return motion;
}

Step step_of(const Searched& searched, const TableMove& move, const SpotSet& taken) {
  const SpotTable& made = searched.made;
  Step step;
  step.from = searched.entries[move.from].spot;
  step.to = searched.entries[move.to].spot;
  step.piece = step.from.pose.piece;
  const std::optional<std::size_t> joins = searched.rules.joined_by(move.from, move.to, taken);
  if (!joins) throw std::logic_error("a step that cannot be done");
  const WayAnchor& from = anchor_of(made, move.from, *joins, taken);
  const WayAnchor& to = anchor_of(made, move.to, *joins, taken);
  open_leaf(step, from.leaf);
  open_leaf(step, to.leaf);
  step.bent = *joins == bent_ways;
  const bool both_stand = step.from.stands_in_room() && step.to.stands_in_room();
  step.flipped = both_stand && step.from.pose.manner == Pose::Manner::flat &&
                 step.to.pose.manner == Pose::Manner::flat &&
                 step.from.pose.placement.flipped != step.to.pose.placement.flipped;
  if (step.bent) return step;
  if (*joins >= fold_ways) {
    step.motions.push_back(*folded(step.from.solid(), step.to.solid()));
    return step;
  }
  const Carrying& carrying = *searched.carrying[move.piece];
  take_up(step.motions, carrying, step.from, from);
  for (Motion& motion : carrying.route(from.level, from.held, to.held, detour_between(step)))
    step.motions.push_back(std::move(motion));
  std::vector<Motion> down;
  take_up(down, carrying, step.to, to);
  for (Motion& motion : std::views::reverse(down)) step.motions.push_back(backwards(std::move(motion)));
  return step;
}

}  // namespace berthwright

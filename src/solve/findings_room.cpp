#include <algorithm>

#include "plan/wall_names.h"
#include "solve/comparing.h"
#include "solve/findings.h"
#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

Finding of_configuration(const Plan& plan, std::string_view rule, const ConfigurationAnswer& answer) {
  Finding finding = finding_of(plan, rule);
  finding.configuration = answer.configuration->id;
  return finding;
}

// What foam gives is measured and shown, and weighs as close.
void weigh(const Plan& plan, Finding& finding, Length depth, bool tolerated, const std::string& mover) {
  compare(plan, finding, depth);
  if (finding.status == Status::not_met && tolerated) finding.status = Status::close;
  if (finding.status == Status::not_met)
    finding.cure = Cure{Cure::Kind::move_apart, mover, marked_out(shortfall(finding), plan->unit)};
}

// Square to a slanted wall the depth is enough; on the floor it is farther. Tried up to four times the depth,
// so for slopes of up to 75 degrees: beyond that the depth itself is told.
Length way_into_the_room(const Plan& plan, const Placed& thing, Length by) {
  const Region inside = room_between(plan->interior, thing.solid.base(), thing.solid.top());
  for (std::int64_t eighths = 8; eighths <= 32; ++eighths) {
    const Length step = marked_out(Length::from_ticks(by.ticks() * eighths / 8), plan->unit);
    for (const Vector along : {Vector{step, {}}, {-step, {}}, {{}, step}, {{}, -step}})
      if (contains(inside, moved(thing.solid.outline(), along))) return step;
  }
  return by;
}

bool is_larger_than_the_room(const Plan& plan, const Placed& thing) {
  const Rect room = plan->interior.outline.polygon().bounds();
  const Rect box = thing.solid.outline().bounds();
  return box.width() > room.width() || box.height() > room.height() ||
         thing.solid.top() - thing.solid.base() > plan->interior.height;
}

// By the depth the one clears the other where a way leads straight out; a thing in the midst of another has
// farther to go, over the whole of it.
Length way_to_be_clear(const Placed& first, const Placed& second, Length by) {
  const auto clears = [&](Vector along, Length up) {
    const Solid there(moved(second.solid.outline(), along), second.solid.base() + up,
                      second.solid.top() + up);
    return !overlaps(there, first.solid);
  };
  for (const Length step : {by, -by})
    if (clears({step, {}}, {}) || clears({{}, step}, {}) || clears({}, step)) return by;
  const Rect still = first.solid.outline().bounds();
  const Rect moving = second.solid.outline().bounds();
  return std::min({still.high.x - moving.low.x, moving.high.x - still.low.x, still.high.y - moving.low.y,
                   moving.high.y - still.low.y, first.solid.top() - second.solid.base(),
                   second.solid.top() - first.solid.base()});
}

// The side of the second thing on which the first one meets it; none: it lies above or below, or within.
std::optional<Wall> side_met(const ConfigurationAnswer& answer, const Collision& collision) {
  const Rect thing = answer.arrangement.find(collision.second)->solid.outline().bounds();
  const Rect shared = collision.shared.bounds();
  const auto side = [](Length low, Length high, Length from, Length to, Wall before, Wall behind) {
    if ((from == low) == (to == high)) return std::optional<Wall>();
    return std::optional(from == low ? before : behind);
  };
  if (collision.top - collision.base < std::min(shared.width(), shared.height())) return std::nullopt;
  return shared.width() < shared.height()
             ? side(thing.low.x, thing.high.x, shared.low.x, shared.high.x, Wall::front, Wall::rear)
             : side(thing.low.y, thing.high.y, shared.low.y, shared.high.y, Wall::left, Wall::right);
}

// What meets things on two opposite sides gets away from neither by moving: it must become smaller.
void shorten_what_is_wedged(const ConfigurationAnswer& answer, const Collision& collision, Finding& finding) {
  const std::optional<Wall> side = side_met(answer, collision);
  if (!side || !finding.cure) return;
  for (const Collision& other : answer.collisions)
    if (other.second == collision.second && !other.tolerated && side_met(answer, other) == opposite(*side)) {
      finding.cure->kind = Cure::Kind::shorten;
      finding.cure->side = side;
    }
}

Point3 middle_of(const Collision& collision) {
  const auto disc = largest_disc(collision.shared);
  const Rect bounds = collision.shared.bounds();
  const Point plan =
      disc ? disc->centre : Point{half(bounds.low.x + bounds.high.x), half(bounds.low.y + bounds.high.y)};
  return {plan, half(collision.base + collision.top)};
}

}  // namespace

void add_room_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const Overreach& reach : answer.overreach) {
    Finding finding = of_configuration(plan, "room.inside", answer);
    finding.subjects = {reach.thing};
    finding.where = {reach.where};
    weigh(plan, finding, reach.by, reach.tolerated, reach.thing);
    const Placed& thing = *answer.arrangement.find(reach.thing);
    if (finding.cure && is_larger_than_the_room(plan, thing))
      finding.cure = Cure{Cure::Kind::as_told, reach.thing, {}};
    else if (finding.cure)
      finding.cure->by = way_into_the_room(plan, thing, finding.cure->by);
    findings.push_back(std::move(finding));
  }
  for (const Collision& collision : answer.collisions) {
    Finding finding = of_configuration(plan, "room.overlap", answer);
    finding.subjects = {collision.first, collision.second};
    finding.where = {middle_of(collision)};
    weigh(plan, finding, collision.depth, collision.tolerated, collision.second);
    if (finding.cure)
      finding.cure->by =
          marked_out(way_to_be_clear(*answer.arrangement.find(collision.first),
                                     *answer.arrangement.find(collision.second), finding.cure->by),
                     plan->unit);
    shorten_what_is_wedged(answer, collision, finding);
    findings.push_back(std::move(finding));
  }
  const auto all_clear = [&](std::string_view rule) {
    Finding finding = of_configuration(plan, rule, answer);
    compare(plan, finding, Length{});
    findings.push_back(std::move(finding));
  };
  if (answer.overreach.empty()) all_clear("room.inside");
  if (answer.collisions.empty()) all_clear("room.overlap");
}

}  // namespace berthwright

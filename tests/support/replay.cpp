#include "support/replay.h"

#include <algorithm>
#include <cmath>

namespace berthwright::support {
namespace {

constexpr double foam_gives = 12.7;

double mm(Length length) { return static_cast<double>(length.ticks()) / ticks_per_mm; }

std::vector<std::array<double, 2>> ring(const Polygon& polygon) {
  std::vector<std::array<double, 2>> corners;
  for (const Point p : polygon.vertices()) corners.push_back({mm(p.x), mm(p.y)});
  return corners;
}

oracle::PlainRoom plain_room(const Plan& plan) {
  oracle::PlainRoom room{
      ring(plan->interior.outline.polygon()), ring(plan->interior.side_profile.polygon()), {}};
  const double length = mm(plan->interior.length), width = mm(plan->interior.width), out = 2800, in = 160;
  for (const Opening& door : plan->openings) {
    if (door.kind != Opening::Kind::door || door.swing == Opening::Swing::fixed) continue;
    const double from = mm(door.from), to = from + mm(door.width), low = mm(door.sill),
                 high = low + mm(door.height);
    switch (door.wall) {
      case Wall::front:
        room.doors.push_back({-out, in, from, to, low, high});
        break;
      case Wall::rear:
        room.doors.push_back({length - in, length + out, from, to, low, high});
        break;
      case Wall::left:
        room.doors.push_back({from, to, -out, in, low, high});
        break;
      case Wall::right:
        room.doors.push_back({from, to, width - in, width + out, low, high});
        break;
    }
  }
  return room;
}

std::vector<oracle::PlainPrism> standing(const Arrangement& stage, const std::string& without) {
  std::vector<oracle::PlainPrism> prisms;
  for (const Placed& thing : stage.things)
    if (thing.id != without && !thing.is_curtain())
      prisms.push_back(plain(thing.id, thing.solid, thing.is_soft() ? foam_gives : 0));
  return prisms;
}

Rect box(const Solid& solid) { return solid.outline().bounds(); }

// Steps that are followed lead from spot to spot without a leap.
std::string leap_of(const Step& step) {
  if (step.motions.empty()) return step.bent ? "" : "no movement";
  const auto same = [](const Solid& a, const Solid& b) {
    return box(a) == box(b) && a.base() == b.base() && a.top() == b.top();
  };
  if (step.from.stands_in_room() && !same(step.motions.front().before, step.from.solid()))
    return "begins elsewhere";
  if (step.to.stands_in_room() && !same(step.motions.back().after, step.to.solid())) return "ends elsewhere";
  for (std::size_t i = 1; i < step.motions.size(); ++i)
    if (!same(step.motions[i - 1].after, step.motions[i].before))
      return "leaps before movement " + std::to_string(i);
  return "";
}

std::string carried_fault(const Plan& plan, const Conversion& conversion, std::size_t number) {
  const Step& step = conversion.steps[number];
  const Arrangement stage = stage_after(plan, conversion, number);
  for (const Placed& thing : stage.things)
    if (std::ranges::find(thing.carried_by, step.piece.text()) != thing.carried_by.end())
      return "moves under " + thing.id;
  for (const std::string& carrier : step.to.carried_by)
    if (carrier != "floor" && stage.find(carrier) == nullptr)
      return "is laid on " + carrier + ", which is not there";
  return "";
}

// What is put aside has something beneath over 2/3 of it each way, so at 4/9 of its places or more (a few
// less where a row of samples falls just beyond an edge), and lies on nothing that gives heat.
std::string aside_fault(const Plan& plan, const Conversion& conversion, std::size_t number) {
  const PiecePlace& to = conversion.steps[number].to;
  if (to.kind != PiecePlace::Kind::parked) return "";
  const Arrangement stage = stage_after(plan, conversion, number);
  const Rect bounds = to.pose.outline.bounds();
  constexpr int rows = 40;
  int all = 0;
  int carried = 0;
  for (int i = 0; i < rows; ++i)
    for (int k = 0; k < rows; ++k) {
      const auto part = [&](Length from, Length size, int at) {
        return Length::from_ticks(from.ticks() + size.ticks() * (2 * at + 1) / (2 * rows));
      };
      const Point at{part(bounds.low.x, bounds.width(), i), part(bounds.low.y, bounds.height(), k)};
      if (to.pose.outline.side_of(at) != Side::inside) continue;
      ++all;
      for (const Placed& thing : stage.things) {
        if (thing.solid.outline().side_of(at) != Side::inside) continue;
        if (thing.solid.top() == to.base) ++carried;
        const bool heats = thing.fixture != nullptr && thing.fixture->heat.has_value();
        if (heats && thing.solid.base() <= to.base && to.base <= thing.solid.top())
          return "is put upon " + thing.id;
      }
    }
  const bool on_the_floor = to.carried_by == std::vector<std::string>{"floor"};
  return on_the_floor || carried * 100 >= all * 42 ? "" : "has too little beneath it";
}

}  // namespace

oracle::PlainPrism plain(const std::string& name, const Solid& solid, double gives) {
  return {name, ring(solid.outline().faces().front().outer), mm(solid.base()), mm(solid.top()), gives};
}

oracle::PlainMotion plain_motion(const Motion& motion, double gives) {
  using Kind = oracle::PlainMotion::Kind;
  if (motion.swing) {
    const Swing& swing = *motion.swing;
    oracle::PlainMotion plainly{Kind::swing,
                                plain("", swing.upright, gives),
                                plain("", motion.after, gives),
                                swing.along ? 0 : 1,
                                {mm(swing.pivot.x), mm(swing.pivot.y)},
                                {}};
    for (const Swing::Key& key : swing.keys)
      plainly.keys.push_back({std::atan2(static_cast<double>(key.turn.sine()), static_cast<double>(key.turn.cosine())),
                              mm(key.pivot.x), mm(key.pivot.y)});
    return plainly;
  }
  const Kind kind = motion.kind == Motion::Kind::turn  ? Kind::turn
                    : motion.kind == Motion::Kind::tip ? Kind::tip
                                                       : Kind::straight;
  return {kind, plain("", motion.before, gives), plain("", motion.after, gives)};
}

std::string replayed(const Plan& plan, const Conversion& conversion) {
  const oracle::PlainRoom room = plain_room(plan);
  for (std::size_t i = 0; i < conversion.steps.size(); ++i) {
    const Step& step = conversion.steps[i];
    const std::string name = "step " + std::to_string(i + 1) + ", " + step.piece.text() + ": ";
    const std::string fault =
        leap_of(step) + carried_fault(plan, conversion, i) + aside_fault(plan, conversion, i);
    if (!fault.empty()) return name + fault;
    const std::vector<oracle::PlainPrism> others =
        standing(stage_after(plan, conversion, i), step.piece.text());
    const double gives = plan.piece(step.piece.text())->is_soft() ? foam_gives : 0;
    for (const Motion& motion : step.motions) {
      const std::string met = oracle::first_overlap(plain_motion(motion, gives), others, room);
      if (!met.empty()) return name + "meets " + met;
    }
  }
  const Arrangement end = stage_after(plan, conversion, conversion.steps.size());
  for (const Pose& pose : conversion.to->poses) {
    const Placed* thing = end.find(pose.piece.text());
    if ((pose.manner == Pose::Manner::stowed) != (thing == nullptr))
      return pose.piece.text() + " is not where it belongs";
    if (thing != nullptr && thing->solid.outline() != pose.outline)
      return pose.piece.text() + " lies elsewhere";
  }
  return "";
}

}  // namespace berthwright::support

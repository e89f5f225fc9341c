#include <berthwright/solve/heat/cord.h>

#include <algorithm>
#include <array>
#include <utility>

#include <berthwright/geometry/cut_line.h>

#include "geometry/box_room.h"
#include "plan/box_sides.h"
#include "solve/heat/cord_floor.h"

namespace berthwright {
namespace {

// Design 2: chords stray at most 0.05 mm from their arc. Round a quarter circle that much farther out a cord
// is longer by less than twice that.
constexpr Length for_an_arc = Length::from_ticks(ticks_per_mm / 10);
// How far a wall may curve in below an outlet (our own choice).
constexpr Length curves_in = 12_in;
constexpr std::array sides_of_a_box{Wall::front, Wall::rear, Wall::left, Wall::right};

std::size_t arcs_of(const Placed& thing) {
  if (thing.fixture != nullptr) return thing.fixture->arcs.size();
  return thing.pose != nullptr ? thing.pose->arcs.size() : 0;
}

bool is_against(Vector way, Wall side) {
  const Vector out = outward(side);
  return out.x.ticks() * way.x.ticks() + out.y.ticks() * way.y.ticks() < 0;
}

Rect moved_box(const Rect& box, Vector by) { return {box.low + by, box.high + by}; }

// A square before the middle of the side where the cord comes out.
Rect before_exit(const CordExit& exit) {
  const Point at = exit.at();
  const Length aside = half(cord_room);
  return is_end_wall(exit.side)
             ? beyond_side({{at.x, at.y - aside}, {at.x, at.y + aside}}, exit.side, cord_room)
             : beyond_side({{at.x - aside, at.y}, {at.x + aside, at.y}}, exit.side, cord_room);
}

// The first place of the level straight out from the face; none within `curves_in`.
std::optional<Point> first_floor(const Region& bare, Point from, Wall faces) {
  if (bare.side_of(from) != Side::outside) return from;
  const bool along_x = is_end_wall(faces);
  const CutLine line{along_x ? CutLine::Along::x : CutLine::Along::y, along_x ? from.y : from.x};
  const Length start = along_x ? from.x : from.y;
  const bool ahead = faces == Wall::rear || faces == Wall::right;
  std::optional<Length> nearest;
  for (const Interval& stretch : cut(bare, line)) {
    // Two ticks in: the ends are rounded outward.
    const Length at = ahead ? stretch.from + 2 * one_tick : stretch.to - 2 * one_tick;
    const bool before_face = ahead ? at >= start : at <= start;
    if (before_face && abs(at - start) <= curves_in && (!nearest || abs(at - start) < abs(*nearest - start)))
      nearest = at;
  }
  if (!nearest) return std::nullopt;
  return along_x ? Point{*nearest, from.y} : Point{from.x, *nearest};
}

}  // namespace

Point CordExit::at() const { return middle_of_side(body, side); }

std::optional<CordExit> cord_exit(const Placed& appliance) {
  if (appliance.piece == nullptr || !appliance.piece->cord) return std::nullopt;
  const Pose& pose = *appliance.pose;
  if (pose.manner != Pose::Manner::flat || pose.placement.flipped || !pose.placement.turn.is_quarter())
    return std::nullopt;
  return CordExit{appliance.solid.outline().bounds(), appliance.solid.base(),
                  turned(appliance.piece->cord->leaves_at, pose.placement.turn)};
}

CordReach::CordReach(const Plan& plan, const Arrangement& arrangement, std::string_view appliance,
                     CordGround ground, const Fixture& outlet)
    : plan_(&plan),
      arrangement_(&arrangement),
      appliance_(appliance),
      level_(std::move(ground.level)),
      floor_(std::move(ground.floor)),
      outlet_(&outlet) {
  std::size_t arcs = 0;
  for (const Placed& thing : arrangement.things)
    if (thing.id != appliance_ && takes_floor(thing, level_)) arcs += arcs_of(thing);
  arcs_ = static_cast<std::int64_t>(arcs) * for_an_arc;
  if (outlet.solid.top() <= level_.height) return;
  const Region bare = bare_level(plan, arrangement, level_);
  for (const Wall side : sides_of_a_box) {
    if (outlet.faces && *outlet.faces != side) continue;
    const Point face = middle_of_side(outlet.solid.outline().bounds(), side);
    const std::optional<Point> at = first_floor(bare, face, side);
    const bool opens =
        at && floor_.side_of(*at) != Side::outside && floor_.side_of(*at + outward(side)) != Side::outside;
    if (!opens || !over_of(*at).empty()) {
      if (outlet.faces) shut_out_by_ = at && !over_of(*at).empty() ? over_of(*at) : taking(at.value_or(face));
      continue;
    }
    const Vector aside = *at - face;
    feet_.push_back({ShortestWays(floor_, *at), side, abs(aside.x) + abs(aside.y)});
  }
}

// What hangs over the place, between the level and the outlet.
std::string CordReach::over_of(Point place) const {
  for (const Placed& thing : arrangement_->things)
    if (thing.id != appliance_ && thing.fixture != outlet_ &&
        thing.solid.base() >= level_.height + over_a_cord && thing.solid.base() < outlet_->solid.base() &&
        thing.solid.outline().side_of(place) == Side::inside)
      return thing.id;
  return {};
}

std::string CordReach::taking(Point place) const {
  return taker_of_floor(*plan_, *arrangement_, level_, place, outlet_->id.text());
}

CordRun CordReach::run(const Foot& foot, const CordExit& exit) const {
  CordRun run;
  const Point out = exit.at();
  const Rect before = before_exit(exit);
  const auto shut_in = [&] {
    run.end = CordRun::End::shut_in;
    run.blocked_by = taker_of_floor(*plan_, *arrangement_, level_, out, appliance_);
    return run;
  };
  if (floor_.side_of(out) == Side::outside) return shut_in();
  std::optional<ShortestWay> way = foot.ways.from(out);
  const bool stands = exit.base < level_.height + over_a_cord;
  const bool sets_out = way && way->path.size() > 1 && !is_against(way->path[1] - way->path[0], exit.side) &&
                        contains(floor_, united(Region(exit.body), Region(before)));
  // A way that sets out from a box that stands on free floor does not come back across it: it would be
  // shorter to begin there.
  if (stands && !sets_out) {
    const Region round = covered_by_squares(without(floor_, Region(exit.body)), cord_room);
    if (round.side_of(out) == Side::outside) return shut_in();
    if (round.side_of(foot.ways.goal()) == Side::outside) {
      run.end = CordRun::End::shut_out;
      run.blocked_by = appliance_;
      return run;
    }
    way = ShortestWays(round, foot.ways.goal()).from(out);
  }
  if (!way) return run;
  const Length top = outlet_->solid.top();
  run.end = CordRun::End::reached;
  run.length = way->length + abs(exit.base - level_.height) + foot.sideways + (top - level_.height) + arcs_;
  run.path = std::move(way->path);
  run.route.push_back({out, exit.base});
  for (const Point place : run.path) run.route.push_back({place, level_.height});
  run.route.push_back({run.path.back(), top});
  if (foot.sideways > Length{})
    run.route.push_back({middle_of_side(outlet_->solid.outline().bounds(), foot.faces), top});
  run.route.erase(std::unique(run.route.begin(), run.route.end()), run.route.end());
  return run;
}

CordRun CordReach::from(const CordExit& exit) const {
  CordRun worst;
  worst.end = CordRun::End::shut_out;
  worst.blocked_by = shut_out_by_;
  bool first = true;
  for (const Foot& foot : feet_) {
    CordRun next = run(foot, exit);
    if (first || std::pair(next.reached(), next.length) > std::pair(worst.reached(), worst.length))
      worst = std::move(next);
    first = false;
  }
  return worst;
}

// Shifts of the exit; `body` is measured from it. A shortest way that sets out from the body does not come
// back across it, and any other is led round it by at most its side more.
Region CordReach::exits_round(const Foot& foot, Length enough, const Rect& body, Wall side) const {
  const Vector out = outward(side);
  const Length more = side_length(body, side);
  const Region room_to_set_out =
      common(shifts_inside(floor_, body), shifts_inside(floor_, beyond_side(body, side, cord_room)));
  const Region ahead = without(common(foot.ways.within(enough, out), room_to_set_out),
                               foot.ways.within(enough, Vector{-out.x, -out.y}));
  Region round;
  if (enough > more)
    round = common(foot.ways.within(enough - more), shifts_inside(floor_, grown(body, cord_room)));
  const Rect near = grown(body, cord_room);
  const Vector to_foot = foot.ways.goal() - Point{};
  const Rect over_foot{Point{} + to_foot - (near.high - Point{}), Point{} + to_foot - (near.low - Point{})};
  return without(united(ahead, round), Region(over_foot));
}

Region CordReach::places(Length cord, const CordExit& exit) const {
  const Rect body = moved_box(exit.body, Point{} - exit.at());
  const bool stands = exit.base < level_.height + over_a_cord;
  std::optional<Region> all;
  for (const Foot& foot : feet_) {
    const Length enough = cord - abs(exit.base - level_.height) - foot.sideways -
                          (outlet_->solid.top() - level_.height) - arcs_;
    if (enough <= Length{}) return {};
    const Region exits = stands ? exits_round(foot, enough, body, exit.side) : foot.ways.within(enough);
    all = all ? common(*all, exits) : exits;
  }
  return all ? moved(*all, Point{} - exit.at()) : Region();
}

std::string_view why_not(CordRun::End end) {
  switch (end) {
    case CordRun::End::reached:
      return "";
    case CordRun::End::shut_in:
      return "shut in";
    case CordRun::End::shut_out:
      return "shut out";
    case CordRun::End::no_way:
      return "no way";
  }
  throw std::logic_error("CordRun::End out of range");
}

}  // namespace berthwright

#include "solve/convert/swing.h"

#include <array>
#include <cstdlib>
#include <stdexcept>

#include "plan/wall_names.h"

namespace berthwright {
namespace {

constexpr int degrees_a_key = 2;
constexpr Length stretch_swept = 4_in;

Turn whole_degrees(int degrees) { return Turn::degrees(degrees * std::int64_t{1'000'000}); }

Length divided_down(Int128 numerator, Int128 denominator) {
  const Int128 quotient = numerator / denominator;
  return Length::from_ticks(
      static_cast<std::int64_t>(numerator % denominator < 0 ? quotient - 1 : quotient));
}
Length divided_up(Int128 numerator, Int128 denominator) { return -divided_down(-numerator, denominator); }

/// A place in the section, relative to the pivot, after a turn: exact fractions of one unit.
struct TurnedPlace {
  Int128 x;
  Int128 y;
  std::int64_t unit;
};
TurnedPlace turned_place(Vector place, Turn turn) {
  const Int128 x = place.x.ticks(), y = place.y.ticks();
  return {x * turn.cosine() - y * turn.sine(), x * turn.sine() + y * turn.cosine(), turn.unit()};
}

// Of the arc on which a place goes from one turn to another one less than a right angle on: its ends, and the
// farthest point of its circle where it passes over an axis.
Rect box_of_arc(Vector place, Turn from, Turn to) {
  const TurnedPlace a = turned_place(place, from), b = turned_place(place, to);
  const Length radius = SquaredLength::of(place.x).plus_square_of(place.y).ceiling();
  const auto corner = [](const TurnedPlace& at) {
    return Rect{{divided_down(at.x, at.unit), divided_down(at.y, at.unit)},
                {divided_up(at.x, at.unit), divided_up(at.y, at.unit)}};
  };
  Rect box = hull(corner(a), corner(b));
  const bool over_level = (a.y < 0) != (b.y < 0), over_upright = (a.x < 0) != (b.x < 0);
  if (over_level && a.x > 0) box.high.x = std::max(box.high.x, radius);
  if (over_level && a.x < 0) box.low.x = std::min(box.low.x, -radius);
  if (over_upright && a.y > 0) box.high.y = std::max(box.high.y, radius);
  if (over_upright && a.y < 0) box.low.y = std::min(box.low.y, -radius);
  return box;
}

/// The box cut by the plane of its section, relative to the pivot.
Rect section_of(const Swing& swing) {
  const Rect plan = swing.upright.outline().bounds();
  const Length low = swing.along ? plan.low.x : plan.low.y, high = swing.along ? plan.high.x : plan.high.y;
  return {{low - swing.pivot.x, swing.upright.base() - swing.pivot.y},
          {high - swing.pivot.x, swing.upright.top() - swing.pivot.y}};
}

Rect in_section(const Solid& solid, bool along) {
  const Rect plan = solid.outline().bounds();
  return {{along ? plan.low.x : plan.low.y, solid.base()}, {along ? plan.high.x : plan.high.y, solid.top()}};
}

Solid out_of_section(const Swing& swing, const Rect& box) {
  const Rect plan = swing.upright.outline().bounds();
  const Rect over = swing.along ? Rect{{box.low.x, plan.low.y}, {box.high.x, plan.high.y}}
                                : Rect{{plan.low.x, box.low.x}, {plan.high.x, box.high.x}};
  return {Region(over), box.low.y, box.high.y};
}

Rect shifted(const Rect& box, Point by) {
  return {box.low + Vector{by.x, by.y}, box.high + Vector{by.x, by.y}};
}

Rect box_between(const Rect& part, const Swing::Key& from, const Swing::Key& to) {
  std::optional<Rect> box;
  for (const Length x : {part.low.x, part.high.x})
    for (const Length y : {part.low.y, part.high.y}) {
      const Rect arc = box_of_arc({x, y}, from.turn, to.turn);
      box = box ? hull(*box, arc) : arc;
    }
  return hull(shifted(*box, from.pivot), shifted(*box, to.pivot));
}

// The middle of the hinge for a quarter turn, positive or not, from one section to the other: the place that
// this turn leaves where it is. None: between ticks.
std::optional<Point> hinge_of(const Rect& before, const Rect& after, int quarters) {
  const auto doubled = [](const Rect& box) {
    return std::array{(box.low.x + box.high.x).ticks(), (box.low.y + box.high.y).ticks()};
  };
  const auto a = doubled(before), b = doubled(after);
  std::array<std::int64_t, 2> four_times{};
  if (std::abs(quarters) == 2) {
    four_times = {a[0] + b[0], a[1] + b[1]};
  } else {
    const std::int64_t s = quarters;
    const std::int64_t u = b[0] + s * a[1], v = b[1] - s * a[0];  // doubled (1 - turn) hinge
    four_times = {u - s * v, s * u + v};
  }
  if (four_times[0] % 4 != 0 || four_times[1] % 4 != 0) return std::nullopt;
  return Point{Length::from_ticks(four_times[0] / 4), Length::from_ticks(four_times[1] / 4)};
}

// At one end of the longer side, within the thickness.
bool is_at_an_end(const Rect& box, Point hinge) {
  const Length thick = std::min(box.width(), box.height());
  const auto within = [](Length low, Length at, Length high) { return low <= at && at <= high; };
  if (!within(box.low.x, hinge.x, box.high.x) || !within(box.low.y, hinge.y, box.high.y)) return false;
  return box.width() >= box.height()
             ? hinge.x - box.low.x <= thick || box.high.x - hinge.x <= thick
             : hinge.y - box.low.y <= thick || box.high.y - hinge.y <= thick;
}

std::optional<Swing> swing_about_hinge(const Solid& before, const Solid& after, bool along, int quarters) {
  const Rect from = in_section(before, along), to = in_section(after, along);
  const std::optional<Point> hinge = hinge_of(from, to, quarters);
  if (!hinge || !is_at_an_end(from, *hinge) || !is_at_an_end(to, *hinge)) return std::nullopt;
  Swing swing{along, Solid(Region(before.outline().bounds()), before.base(), before.top()), *hinge, {},
              90 * std::abs(quarters)};
  for (int degrees = 0; degrees <= swing.degrees; degrees += degrees_a_key)
    swing.keys.push_back({whole_degrees(quarters < 0 ? -degrees : degrees), *hinge});
  return swing;
}

}  // namespace

std::vector<Solid> swept_by(const Swing& swing) {
  const Rect section = section_of(swing);
  const bool lies = section.width() >= section.height();
  const Length size = lies ? section.width() : section.height();
  const std::int64_t parts = (size.ticks() + stretch_swept.ticks() - 1) / stretch_swept.ticks();
  std::vector<Solid> sweep;
  for (std::size_t i = 1; i < swing.keys.size(); ++i)
    for (std::int64_t k = 0; k < parts; ++k) {
      const auto at = [&](std::int64_t number) {
        return Length::from_ticks((lies ? section.low.x : section.low.y).ticks() +
                                  size.ticks() * number / parts);
      };
      const Rect part = lies ? Rect{{at(k), section.low.y}, {at(k + 1), section.high.y}}
                             : Rect{{section.low.x, at(k)}, {section.high.x, at(k + 1)}};
      sweep.push_back(out_of_section(swing, box_between(part, swing.keys[i - 1], swing.keys[i])));
    }
  return sweep;
}

Solid held_at(const Swing& swing, const Swing::Key& key) {
  return out_of_section(swing, box_between(section_of(swing), key, key));
}

Swing tilting(const Solid& piece, Length to_base, const Tilt& tilt) {
  if (to_base == piece.base()) throw std::invalid_argument("a tilt needs another height");
  if (tilt.degrees < degrees_a_key || tilt.degrees > 88 || tilt.degrees % degrees_a_key != 0)
    throw std::invalid_argument("a tilt goes by even degrees up to 88");
  const bool along = is_end_wall(tilt.low);
  const bool low_first = tilt.low == Wall::front || tilt.low == Wall::left;
  const Rect from = in_section(piece, along);
  const Length edge = low_first ? from.low.x : from.high.x;
  Swing swing{along,
              Solid(Region(piece.outline().bounds()), piece.base(), piece.top()),
              {edge, piece.base()},
              {{Turn(), {edge, piece.base()}}},
              tilt.degrees};
  const auto turn_by = [&](int degrees) { return whole_degrees(low_first ? degrees : -degrees); };
  // Where its low corner is so that the side that stays down does not go beyond its line.
  const auto corner = [&](int degrees) {
    const Turn turn = turn_by(degrees);
    const Length inward = divided_up(Int128{piece.height().ticks()} * std::abs(turn.sine()), turn.unit());
    return low_first ? edge - tilt.shift + inward : edge + tilt.shift - inward;
  };
  swing.keys.push_back({turn_by(0), {corner(0), piece.base()}});
  for (int degrees = degrees_a_key; degrees <= tilt.degrees; degrees += degrees_a_key)
    for (const int turned : {degrees - degrees_a_key, degrees})  // first shifted, then turned
      swing.keys.push_back({turn_by(turned), {corner(degrees), piece.base()}});
  swing.keys.push_back({turn_by(tilt.degrees), {corner(tilt.degrees), to_base}});
  for (int degrees = tilt.degrees; degrees > 0; degrees -= degrees_a_key)
    for (const int at : {degrees, degrees - degrees_a_key})  // and back
      swing.keys.push_back({turn_by(degrees - degrees_a_key), {corner(at), to_base}});
  return swing;
}

Motion tilted(const Solid& piece, Length to_base, const Tilt& tilt) {
  Swing swing = tilting(piece, to_base, tilt);
  Motion motion{Motion::Kind::tilt, swing.upright, held_at(swing, swing.keys.back()), swept_by(swing), {}};
  motion.swing = std::move(swing);
  return motion;
}

Wall low_side(const Swing& tilt) {
  const Rect plan = tilt.upright.outline().bounds();
  if (tilt.along) return tilt.pivot.x == plan.low.x ? Wall::front : Wall::rear;
  return tilt.pivot.x == plan.low.y ? Wall::left : Wall::right;
}

std::optional<Motion> folded(const Solid& before, const Solid& after) {
  const Rect a = before.outline().bounds(), b = after.outline().bounds();
  for (const bool along : {true, false}) {
    const bool beside = along ? a.low.y == b.low.y && a.high.y == b.high.y
                              : a.low.x == b.low.x && a.high.x == b.high.x;
    if (!beside) continue;
    for (const int quarters : {1, -1, 2, -2}) {
      std::optional<Swing> swing = swing_about_hinge(before, after, along, quarters);
      if (!swing) continue;
      const Solid reached = held_at(*swing, swing->keys.back());
      const Solid meant(Region(b), after.base(), after.top());
      // Half a turn goes by way of standing up; the other one would pass below.
      const bool upward = std::abs(quarters) == 1 ||
                          (in_section(before, along).low.x < swing->pivot.x ? quarters < 0 : quarters > 0);
      if (reached != meant || !upward) continue;
      Motion motion{Motion::Kind::fold, swing->upright, meant, swept_by(*swing), {}};
      motion.swing = std::move(*swing);
      return motion;
    }
  }
  return std::nullopt;
}

}  // namespace berthwright

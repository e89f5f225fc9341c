#include "view/figures.h"

#include <array>
#include <stdexcept>

#include <berthwright/exact/squared_length.h>
#include <berthwright/solve/body.h>

namespace berthwright {
namespace {

// What the survey's table here does not give, drawn at our own choice.
constexpr Length head_radius = 110_mm;
constexpr Length neck_radius = 55_mm;
constexpr Length ankle_height = 80_mm;
constexpr Length ankle_radius = 42_mm;
constexpr Length toe_radius = 22_mm;
constexpr Length sole_length = 185_mm;  // heel to ball
constexpr Length chest_radius = 118_mm;
constexpr Length tiptoe = 100_mm;  // how far the toes of a hanging foot reach down

Length scaled(Length length, std::int64_t times, std::int64_t parts) {
  return Length::from_ticks(static_cast<std::int64_t>(Int128{length.ticks()} * times / parts));
}

struct Ball {
  Point middle;
  Length radius;
};

Region disc(const Ball& ball) {
  return moved(Region(disc_around(ball.radius)), {ball.middle.x, ball.middle.y});
}

// Two balls and what lies between them.
Region limb(const Ball& a, const Ball& b) {
  const Vector way = b.middle - a.middle;
  const Length far = SquaredLength::of(way.x).plus_square_of(way.y).floor();
  if (far <= abs(a.radius - b.radius)) return united(disc(a), disc(b));
  const auto beside = [&](const Ball& ball, int side) {
    return ball.middle + Vector{scaled(-way.y, ball.radius.ticks() * side, far.ticks()),
                                scaled(way.x, ball.radius.ticks() * side, far.ticks())};
  };
  const Region between(Polygon::promised({beside(a, -1), beside(b, -1), beside(b, 1), beside(a, 1)}));
  return united(std::array{disc(a), disc(b), between});
}

Build build_of(Sex sex, Length BodyFigures::*percentile) {
  const auto of = [&](BodyMeasure measure) { return body_figures(measure, sex).*percentile; };
  return {of(BodyMeasure::stature),          of(BodyMeasure::sitting_height),
          of(BodyMeasure::popliteal_height), of(BodyMeasure::buttock_popliteal),
          of(BodyMeasure::buttock_knee),     of(BodyMeasure::knee_height),
          of(BodyMeasure::thigh_clearance),  of(BodyMeasure::abdominal_depth),
          of(BodyMeasure::shoulder_breadth), of(BodyMeasure::hip_breadth)};
}

// How much lower than the heel the toes are, under a leg that ends at the ankle.
Length dropped_toes(Length ankle) { return std::clamp(ankle - ankle_height, Length{}, tiptoe); }

// The foot under a leg that ends at the ankle; `toward` points from heel to toes.
Region foot(Point ankle, int toward) {
  const Length heel = ankle.y - ankle_height;
  return limb({{ankle.x, heel + ankle_radius}, ankle_radius},
              {{ankle.x + sole_length * toward, heel - dropped_toes(ankle.y) + toe_radius}, toe_radius});
}

// The other side of a right triangle; zero where `side` is the longer.
Length other_side(Length longest, Length side) {
  if (abs(side) >= longest) return {};
  const Int128 l = longest.ticks();
  const Int128 s = side.ticks();
  return SquaredLength(l * l - s * s, 1).floor();
}

/// Joints of a leg in the sitter's own frame: `x` forward of the back, `y` above the floor.
struct Leg {
  Point hip;
  Point knee;
  Point ankle;
};

// Thigh level, shin upright; or with the feet forward where the seat is too low for that.
Leg leg_at_ease(const Build& build, Length seat) {
  const Length thigh = half(build.thigh_clearance);
  const Length knee = half(build.knee_height - build.popliteal_height);
  Leg leg{{thigh, seat + thigh}, {build.buttock_knee - knee, seat + knee}, {}};
  const Length shin = build.knee_height - knee - ankle_height;
  const Length drop = std::clamp(leg.knee.y - ankle_height, Length{}, shin);
  leg.ankle = {leg.knee.x + other_side(shin, drop), leg.knee.y - drop};
  return leg;
}

// The same leg with its ankle drawn in to `forward`: a foot on the floor stays there and the knee rises; a
// foot that hangs swings back under a knee that stays.
Leg drawn_in(const Leg& leg, Length forward) {
  const auto apart = [](Point a, Point b) {
    return SquaredLength::of(b.x - a.x).plus_square_of(b.y - a.y).floor();
  };
  const Length thigh = apart(leg.hip, leg.knee);
  const Length shin = apart(leg.knee, leg.ankle);
  const Point ankle{forward, leg.ankle.y};
  const Length far = apart(leg.hip, ankle);
  Leg out = leg;
  out.ankle = ankle;
  if (thigh + shin > far && abs(thigh - shin) < far) {
    // Where circles around hip and ankle meet: `foot` along the line between them, `rise` aside of it.
    const Int128 d = far.ticks();
    const Int128 t = thigh.ticks();
    const Int128 s = shin.ticks();
    const Length along = Length::from_ticks(static_cast<std::int64_t>((d * d + t * t - s * s) / (2 * d)));
    const Length rise = other_side(thigh, along);
    const Vector way = ankle - leg.hip;
    out.knee = leg.hip +
               Vector{scaled(way.x, along.ticks(), far.ticks()), scaled(way.y, along.ticks(), far.ticks())} +
               Vector{scaled(-way.y, rise.ticks(), far.ticks()), scaled(way.x, rise.ticks(), far.ticks())};
    if (out.knee.y >= leg.knee.y) return out;
  }
  out = leg;
  out.ankle = {forward, leg.knee.y - other_side(shin, forward - leg.knee.x)};
  return out;
}

constexpr Length to_the_toes = sole_length + toe_radius;

Leg leg_of(const Build& build, const SeatUnder& seat) {
  const Leg leg = leg_at_ease(build, seat.height);
  if (!seat.toes_before) return leg;
  const Length most = seat.looks_onward ? *seat.toes_before - seat.back : seat.back - *seat.toes_before;
  const Length ankle = std::max(most - to_the_toes, half(leg.knee.x));
  return ankle < leg.ankle.x ? drawn_in(leg, ankle) : leg;
}

}  // namespace

Build large_man() { return build_of(Sex::men, &BodyFigures::p95); }
Build small_woman() { return build_of(Sex::women, &BodyFigures::p5); }

Point seated_head(const Build& build, const SeatUnder& seat) {
  const int onward = seat.looks_onward ? 1 : -1;
  return {seat.back + 150_mm * onward, seat.height + build.sitting_height - head_radius};
}

Region seated_figure(const Build& build, const SeatUnder& seat) {
  const int onward = seat.looks_onward ? 1 : -1;
  const auto at = [&](Length forward, Length up) {
    return Point{seat.back + forward * onward, seat.height + up};
  };
  const Length belly = half(build.abdominal_depth);
  const Ball hip{at(belly, belly), belly};
  const Ball chest{at(chest_radius, build.sitting_height - 370_mm), chest_radius};
  const Ball head{seated_head(build, seat), head_radius};
  const Ball nape{at(130_mm, build.sitting_height - 270_mm), neck_radius};
  const Leg leg = leg_of(build, seat);
  const auto joint = [&](Point p) { return Point{seat.back + p.x * onward, p.y}; };
  const Ball seat_end{joint(leg.hip), half(build.thigh_clearance)};
  const Ball knees{joint(leg.knee), half(build.knee_height - build.popliteal_height)};
  const Point ankle = joint(leg.ankle);
  return united(std::array{limb(hip, chest), limb(chest, nape), limb(nape, head), disc(head),
                           limb(seat_end, knees), limb(knees, {ankle, ankle_radius}), foot(ankle, onward)});
}

Length toes_of(const Build& build, const SeatUnder& seat) {
  const Length reach = leg_at_ease(build, seat.height).ankle.x + to_the_toes;
  return seat.looks_onward ? seat.back + reach : seat.back - reach;
}

Region lying_figure(const Build& build, Length crown, Length heels, Length level) {
  if (abs(heels - crown) < 1_ft) throw std::invalid_argument("crown and heels are too near");
  // Thousandths of the stature from the crown, after the proportions of the seated figure.
  const auto at = [&](std::int64_t thousandths, Length radius) {
    return Ball{{crown + scaled(heels - crown, thousandths, 1000), level + radius}, radius};
  };
  const int onward = heels > crown ? 1 : -1;
  const Ball head{{crown + head_radius * onward, level + head_radius}, head_radius};
  const Ball nape = at(150, neck_radius);
  const Ball chest = at(235, chest_radius);
  const Ball hip = at(490, scaled(build.thigh_clearance, 58, 100));
  const Ball knees = at(725, half(build.knee_height - build.popliteal_height));
  const Ball ankles = at(960, ankle_radius);
  const Ball toes{{heels - toe_radius * onward, level + sole_length}, toe_radius};
  const Ball heel{{heels - ankle_radius * onward, level + ankle_radius}, ankle_radius};
  return united(std::array{disc(head), limb(head, nape), limb(nape, chest), limb(chest, hip),
                           limb(hip, knees), limb(knees, ankles), limb(heel, toes)});
}

std::vector<Region> figure_from_the_feet(const Build& build, Length middle, Length level) {
  const Length reach = half(build.shoulder_breadth) - chest_radius;
  const auto sole = [&](int side) {
    return limb({{middle + 70_mm * side, level + ankle_radius}, ankle_radius},
                {{middle + 110_mm * side, level + sole_length}, ankle_radius});
  };
  return {limb({{middle - reach, level + chest_radius}, chest_radius},
               {{middle + reach, level + chest_radius}, chest_radius}),
          sole(-1), sole(1)};
}

Region trunk_figure(const Build& build, Length middle, Length level) {
  constexpr Length shoulder_radius = 75_mm;
  constexpr Length hip_radius = 90_mm;
  const Length shoulders = half(build.shoulder_breadth) - shoulder_radius;
  const Length hips = half(build.hip_breadth) - hip_radius;
  const Length height = level + build.sitting_height;
  const auto shoulder = [&](int side) {
    return Ball{{middle + shoulders * side, height - 380_mm}, shoulder_radius};
  };
  const auto hip = [&](int side) { return Ball{{middle + hips * side, level + hip_radius}, hip_radius}; };
  const Ball nape{{middle, height - 270_mm}, neck_radius};
  const Region body(Polygon::promised(
      {hip(-1).middle, hip(1).middle, shoulder(1).middle, nape.middle, shoulder(-1).middle}));
  return united(std::array{disc({{middle, height - head_radius}, head_radius}), body,
                           limb(shoulder(-1), hip(-1)), limb(shoulder(1), hip(1)), limb(hip(-1), hip(1)),
                           limb(shoulder(-1), nape), limb(shoulder(1), nape),
                           limb(nape, {{middle, height - head_radius}, neck_radius})});
}

std::vector<Region> legs_from_before(const Build& build, Length middle, Length level) {
  constexpr Length apart = 105_mm;  // of each knee from the middle
  const Leg leg = leg_at_ease(build, level);
  const Length knee = half(build.knee_height - build.popliteal_height);
  const Length toes = leg.ankle.y - ankle_height - dropped_toes(leg.ankle.y) + ankle_radius;
  std::vector<Region> legs;
  for (const int side : {-1, 1}) {
    const Length x = middle + apart * side;
    const Ball ankle{{x, leg.ankle.y}, ankle_radius};
    legs.push_back(united(std::array{limb({{x, leg.knee.y}, knee}, ankle),
                                     limb(ankle, {{x + 15_mm * side, toes}, ankle_radius})}));
  }
  return legs;
}

}  // namespace berthwright

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

// The foot under a leg that ends at the ankle; `toward` points from heel to toes.
Region foot(Point ankle, Length sole, int toward) {
  return limb({{ankle.x, sole + ankle_radius}, ankle_radius},
              {{ankle.x + sole_length * toward, sole + toe_radius}, toe_radius});
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
  const Length knee = half(build.knee_height - build.popliteal_height);
  const Ball knees{at(build.buttock_knee - knee, knee), knee};
  const Length thigh = half(build.thigh_clearance);
  const Ball seat_end{at(thigh, thigh), thigh};
  // From the middle of the knee down to the ankle; slanted forward where the seat is too low for it.
  const Length shin = build.knee_height - knee - ankle_height;
  const Length drop = std::min(shin, seat.height + knee - ankle_height);
  const Length forward =
      drop < Length{}
          ? shin
          : SquaredLength(Int128{shin.ticks()} * shin.ticks() - Int128{drop.ticks()} * drop.ticks(), 1)
                .floor();
  const Point ankle = knees.middle + Vector{forward * onward, -std::max(drop, Length{})};
  return united(std::array{limb(hip, chest), limb(chest, nape), limb(nape, head), disc(head),
                           limb(seat_end, knees), limb(knees, {ankle, ankle_radius}),
                           foot(ankle, ankle.y - ankle_height, onward)});
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

}  // namespace berthwright

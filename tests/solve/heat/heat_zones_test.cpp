#include <berthwright/solve/heat/heat_zones.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "support/trailer_text.h"

namespace berthwright {
namespace {

// A heater of 10 x 14 x 12 in on the floor, from 100 in in both ways as it lies unturned, looking to the
// rear.
TrailerText heater_alone(const std::string& plate, const std::string& pose = "") {
  TrailerText text;
  text.interior = R"({"length": 240, "width": 240, "height": 90})";
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 14, "height": 12, "faces": "rear")" +
                 plate + "}"};
  text.day = {R"({"piece": "H", "at": {"front": 100, "left": 100}, "on": "floor")" + pose + "}"};
  return text;
}
const std::string plated = R"(, "data_plate": {"front": 36, "back": 4, "sides": 12, "top": 20})";

std::vector<HeatZones> zones_by_day(const Answered& made) {
  return heat_zones(made.plan, made.answer.configurations.front().arrangement);
}

double square_inches(const Region& region) {
  return static_cast<double>(region.area().doubled()) / 2 / (1'016'000.0 * 1'016'000.0);
}

// Published: 3 ft = 36 in = 914.4 mm (CPSC space-heater tips; NFPA sheet of 2018; New York City Fire Code FC
// 605.10.3(2), 914 mm). Area: the box 140, its sides 2 (10 + 14) 36 = 1728, a disc of 36: 4071.5.
TEST(HeatZones, ThePublishedOneEndsThreeFeetFromTheOutline) {
  const Answered made(heater_alone(plated));
  const auto zones = zones_by_day(made);
  ASSERT_EQ(zones.size(), 1U);
  EXPECT_EQ(zones[0].source, "H");
  const Region& zone = zones[0].published.value();
  EXPECT_EQ(zone.bounds(), (Rect{{64_in, 64_in}, {146_in, 150_in}}));
  EXPECT_EQ(zone.bounds().high.x - 110_in, Length::millimetres(9144, 10));
  EXPECT_NEAR(square_inches(zone), 140 + 1728 + 4071.504, 0.003 * 4071);
}

// Front 36, back 4, sides 12 in; a corner takes the larger: two quarter discs of 36, two of 12, a half disc
// each: pi/2 (1296 + 144) = 2261.9. Before the front 36 x 14 = 504, behind 4 x 14 = 56, beside 2 x 12 x 10 =
// 240.
TEST(HeatZones, ThatOfADataPlateReachesAsFarAsEachFaceAsks) {
  const Answered made(heater_alone(plated));
  const Region zone = zones_by_day(made)[0].plate.value();
  EXPECT_EQ(zone.bounds().high.x, 110_in + 36_in);
  EXPECT_EQ(zone.bounds().low.x, 100_in - 12_in) << "the corners behind ask what the sides do";
  EXPECT_EQ(zone.side_of({96_in, 107_in}), Side::boundary) << "4 in behind";
  EXPECT_NEAR(square_inches(zone), 140 + 504 + 56 + 240 + 2261.947, 0.003 * 2262);
}

// A slow twin: which face or corner a place lies before, what it asks, and how far the place is from the box.
// All in ticks of one inch; it shares nothing with the zones.
TEST(HeatZones, HoldEveryPlaceThatIsTooNearAndNoOther) {
  struct Turn {
    const char* turn;
    int front_x, front_y;  // the way the front looks
    double low_x, low_y, high_x, high_y;
  };
  std::mt19937 random(20261128);
  std::uniform_real_distribution<double> place(50, 190);
  for (const Turn& turn : {Turn{"0", 1, 0, 100, 100, 110, 114}, Turn{"90", 0, 1, 100, 100, 114, 110},
                           Turn{"180", -1, 0, 100, 100, 110, 114}, Turn{"270", 0, -1, 100, 100, 114, 110}}) {
    SCOPED_TRACE(turn.turn);
    const Answered made(heater_alone(plated, std::string(R"(, "turn": )") + turn.turn));
    const auto zones = zones_by_day(made);
    int inside = 0;
    for (int i = 0; i < 2000; ++i) {
      const double x = place(random);
      const double y = place(random);
      const int side_x = x > turn.high_x ? 1 : x < turn.low_x ? -1 : 0;
      const int side_y = y > turn.high_y ? 1 : y < turn.low_y ? -1 : 0;
      if (side_x == 0 && side_y == 0) continue;
      double asked = 0;
      for (const auto& [sx, sy] : {std::pair{side_x, 0}, std::pair{0, side_y}}) {
        if (sx == 0 && sy == 0) continue;
        const int toward_front = sx * turn.front_x + sy * turn.front_y;
        asked = std::max(asked, toward_front > 0 ? 36.0 : toward_front < 0 ? 4.0 : 12.0);
      }
      const double dx = std::max({turn.low_x - x, x - turn.high_x, 0.0});
      const double dy = std::max({turn.low_y - y, y - turn.high_y, 0.0});
      const double squared = dx * dx + dy * dy;
      const Point at{Length::from_ticks(static_cast<std::int64_t>(x * 1'016'000)),
                     Length::from_ticks(static_cast<std::int64_t>(y * 1'016'000))};
      for (const auto& [zone, reach] :
           {std::pair{&*zones[0].plate, asked}, std::pair{&*zones[0].published, 36.0}}) {
        const Side side = zone->side_of(at);
        inside += side == Side::inside;
        // Polygons around circles: too large by at most 0.13 %.
        EXPECT_TRUE(squared >= reach * reach * 0.99999 || side != Side::outside) << x << ' ' << y;
        EXPECT_TRUE(squared <= reach * reach * 1.0027 || side == Side::outside) << x << ' ' << y;
      }
    }
    EXPECT_GT(inside, 200);
  }
}

TEST(HeatZones, AreMirroredAndShiftedWithTheirSource) {
  TrailerText text = heater_alone(plated);
  text.pieces[0].replace(text.pieces[0].find("rear"), 4, "right");
  const Answered made(text);
  const Answered mirror(text.mirrored());
  const auto a = zones_by_day(made);
  const auto b = zones_by_day(mirror);
  for (const auto& zone : {&HeatZones::published, &HeatZones::plate})
    EXPECT_EQ(moved(mirrored((a[0].*zone).value()), {{}, 240_in}), (b[0].*zone).value());
  text.day[0].replace(text.day[0].find("100"), 3, "111");
  const Answered shifted(text);
  EXPECT_EQ(moved(*a[0].plate, {11_in, {}}), *zones_by_day(shifted)[0].plate);
}

TEST(HeatZones, WhatIsNotKnownHasNone) {
  EXPECT_FALSE(zones_by_day(Answered(heater_alone("")))[0].plate.has_value());
  const std::string top_alone = R"(, "data_plate": {"top": 20})";
  EXPECT_FALSE(zones_by_day(Answered(heater_alone(top_alone)))[0].plate.has_value());
  const std::string front_alone = R"(, "data_plate": {"front": 36})";
  const auto zones = zones_by_day(Answered(heater_alone(front_alone)));
  EXPECT_EQ(zones[0].plate->bounds().low.x, 100_in) << "nothing behind the back";
  PlanParts parts = *heater_alone(plated).plan().operator->();
  parts.configurations[0].poses[0].manner = Pose::Manner::on_length;
  const Answered on_its_side(Plan::checked(parts).value());
  EXPECT_FALSE(zones_by_day(on_its_side)[0].plate.has_value());
  EXPECT_TRUE(zones_by_day(on_its_side)[0].published.has_value());
}

TEST(HeatZones, AStowedHeaterHasNoneAndACooktopNoPublishedOne) {
  TrailerText text = heater_alone(plated);
  text.day[0] = R"({"piece": "H", "stowed": "galley"})";
  EXPECT_TRUE(zones_by_day(Answered(text)).empty());
  text.fixtures = {R"({"id": "hob", "kind": "cooktop", "length": 20, "width": 16, "faces": "right",
                       "at": {"front": 40, "left": 40}, "base": 34, "top": 36,
                       "data_plate": {"front": 0, "back": 2, "sides": 6, "top": 30}})"};
  const Answered made(text);
  const auto zones = zones_by_day(made);
  ASSERT_EQ(zones.size(), 1U);
  EXPECT_FALSE(zones[0].published.has_value());
  // Sides of 6 in look to front and rear; before the front nothing is asked but by the corners.
  EXPECT_EQ(zones[0].plate->bounds(), (Rect{{34_in, 34_in}, {66_in, 62_in}}));
}

TEST(HeatZones, ThePlansOwnNumberRules) {
  TrailerText text = heater_alone(plated);
  text.rules = {R"("heat.three-feet": {"limit": 30, "reason": "test bench only"})"};
  EXPECT_EQ(zones_by_day(Answered(text))[0].published->bounds().low.x, 70_in);
}

}  // namespace
}  // namespace berthwright

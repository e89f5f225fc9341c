#include <berthwright/solve/site/stowing.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "support/trailer_text.h"

namespace berthwright {
namespace {

// A trailer of about 10 x 6 ft with a heater of 350 W, 6 x 7 x 10 in, that is kept in a drawer when it is not
// in use: common practice, no source. The drawer is 11 x 17 in and 8 in high inside; the heater is 10 in
// high, so it lies on its side.
TrailerText heater_in_a_drawer() {
  TrailerText text;
  text.interior = R"({"length": "10 ft", "width": "6 ft", "height": "6 ft"})";
  text.pieces = {R"({"id": "H", "name": "Heater of 350 W", "kind": "heater", "length": 6, "width": 7,
                     "height": 10, "faces": "rear"})"};
  text.fixtures = {
      R"({"id": "galley", "kind": "counter", "length": 34, "width": 20, "at": {"front": 38, "left": 0},
                       "top": 36, "opens": [{"id": "drawer", "kind": "drawer", "face": "right", "from": 0,
                       "width": 13, "base": 3, "top": 13, "pull": 17,
                       "inside": {"length": 11, "width": 17, "height": 8}}]})"};
  text.day = {R"({"piece": "H", "at": {"rear": 10, "left": 30}})"};
  text.night = {R"({"piece": "H", "stowed": "drawer"})"};
  return text;
}

StowFit only_fit(const TrailerText& text) {
  const Plan plan = text.plan();
  const std::vector<StowFit> fits = stow_fits(plan, *plan.piece("H"));
  EXPECT_EQ(fits.size(), 1U);
  return fits.at(0);
}

// Six ways: 6 7 10 and 7 6 10 are 10 high: 2 in too high. 6 10 7 leaves 5, 7 and 1; 10 6 7 leaves 1, 11 and
// 1; 7 10 6 leaves 4, 7 and 2; 10 7 6 leaves 1, 10 and 2. The least room is greatest with 2: 7 10 6.
TEST(Stowing, TheHeaterOf350WattsLiesInItsDrawer) {
  const StowFit fit = only_fit(heater_in_a_drawer());
  EXPECT_EQ(fit.place, "drawer");
  EXPECT_EQ(fit.stowed_in, std::vector<std::string>{"night"});
  EXPECT_TRUE(fit.fits());
  EXPECT_EQ(fit.laid, (LaidBox{7_in, 10_in, 6_in}));
  EXPECT_EQ(fit.clearance, (std::array{4_in, 7_in, 2_in}));
  EXPECT_TRUE(fit.through.empty() && fit.too_small.empty());
}

// A heater that fits to the tick fits; a 64th more does not, and is told by how much.
TEST(Stowing, ToTheTickFitsAndALittleMoreDoesNot) {
  TrailerText text = heater_in_a_drawer();
  const auto heater = [](const char* height) {
    return R"({"id": "H", "kind": "heater", "length": 11, "width": 8, "height": ")" + std::string(height) +
           R"(", "faces": "rear"})";
  };
  text.pieces[0] = heater("17");
  EXPECT_TRUE(only_fit(text).fits());
  EXPECT_EQ(only_fit(text).clearance, (std::array<Length, 3>{}));
  text.pieces[0] = heater("17 1/64");
  EXPECT_FALSE(only_fit(text).fits());
  EXPECT_EQ(only_fit(text).clearance, (std::array{Length{}, -Length::inches(1, 64), Length{}}));
}

// Every orientation is tried: a thing of 1 x 2 x 3 fits into each of the six boxes of these sides and into
// none a little smaller in one of them.
TEST(Stowing, AllSixWaysAreTried) {
  TrailerText text = heater_in_a_drawer();
  text.pieces[0] = R"({"id": "H", "kind": "heater", "length": 4, "width": 5, "height": 6, "faces": "rear"})";
  std::array<int, 3> sides{4, 5, 6};
  do {
    for (int less = 0; less <= 3; ++less) {
      std::array<std::string, 3> inside;
      for (int i = 0; i < 3; ++i) {
        const auto at = static_cast<std::size_t>(i);
        inside[at] = i == less ? std::to_string(sides[at] - 1) + " 63/64" : std::to_string(sides[at]);
      }
      TrailerText drawn = text;
      std::string& galley = drawn.fixtures[0];
      const std::string old = R"("length": 11, "width": 17, "height": 8)";
      galley.replace(galley.find(old), old.size(),
                     R"("length": ")" + inside[0] + R"(", "width": ")" + inside[1] + R"(", "height": ")" +
                         inside[2] + '"');
      EXPECT_EQ(only_fit(drawn).fits(), less == 3) << inside[0] << " x " << inside[1] << " x " << inside[2];
    }
  } while (std::ranges::next_permutation(sides).found);
}

// A bench of ample inside whose lid of 6 x 30 in lets the heater through on end (6 x 7 does not, but 6 x 10
// does), and one of 5 x 30 in that does not.
TEST(Stowing, SaysThroughWhichOpeningsItPasses) {
  for (const auto& [lid, passes] : {std::pair{"6", true}, {"5", false}}) {
    TrailerText text = heater_in_a_drawer();
    text.fixtures = {
        R"({"id": "bench", "kind": "bench", "length": 40, "width": 22, "at": {"rear": 0, "left": 0},
                         "top": 14, "inside": {"length": 38, "width": 20, "height": 12},
                         "opens": [{"id": "lid", "kind": "lid", "length": 30, "width": ")" +
        std::string(lid) + R"(", "at": {"rear": 4, "left": 4}, "hinge": "left"}]})"};
    text.night = {R"({"piece": "H", "stowed": "lid"})"};
    const StowFit fit = only_fit(text);
    EXPECT_EQ(fit.place, "bench");
    EXPECT_EQ(fit.stowed_in, std::vector<std::string>{"night"});
    EXPECT_TRUE(fit.fits());
    EXPECT_EQ(fit.through.empty(), !passes);
    EXPECT_EQ(fit.too_small.empty(), passes);
  }
}

TEST(Stowing, WhatThePlanDoesNotMeasureIsUnknown) {
  TrailerText text = heater_in_a_drawer();
  text.fixtures.clear();
  text.night = {R"({"piece": "H", "stowed": "in the car"})"};
  const StowFit fit = only_fit(text);
  EXPECT_EQ(fit.place, "in the car");
  EXPECT_FALSE(fit.inside.has_value());
  EXPECT_FALSE(fit.fits());
}

}  // namespace
}  // namespace berthwright

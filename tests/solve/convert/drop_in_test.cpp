#include <berthwright/solve/convert/drop_in.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "support/convert_trailers.h"

namespace berthwright {
namespace {

DropIn table_by_night(const TrailerText& text) {
  const Plan plan = text.plan();
  const std::vector<DropIn> found = drop_ins(plan, arranged(plan, *plan.configuration("night")).value());
  EXPECT_EQ(found.size(), 1U);
  return found.at(0);
}

// The benches stand 32 in apart, the table is 31 3/4 wide: 1/8 on each side. Its section of 31 3/4 x 3/4 has
// a diagonal of 31.7589, less than 32. Along the trailer 1/8 to the rear wall, and 82 1/8 of room before it.
TEST(DropIn, TellsTheClearanceOnEachSide) {
  const DropIn table = table_by_night(dinette());
  EXPECT_EQ(table.ledges, (std::vector<std::string>{"left ledge", "right ledge"}));
  const DropIn::Direction& across = table.directions[1];
  EXPECT_EQ(across.before, Length::inches(1, 8));
  EXPECT_EQ(across.behind, Length::inches(1, 8));
  EXPECT_EQ(across.thing_before, "left bench");
  EXPECT_EQ(across.thing_behind, "right bench");
  EXPECT_EQ(across.gap(), 32_in);
  EXPECT_GT(across.diagonal, Length::inches(31758, 1000));
  EXPECT_LT(across.diagonal, Length::inches(31759, 1000));
  EXPECT_EQ(across.tilt, std::nullopt);
  EXPECT_EQ(table.directions[0].thing_behind, "room");
  EXPECT_EQ(table.directions[0].behind, Length::inches(1, 8));
  EXPECT_EQ(table.directions[0].before, Length::inches(657, 8));
}

// 32 1/2 in wide it reaches 1/4 in into each bench.
TEST(DropIn, ATableTooWideReachesIntoBoth) {
  TrailerText text = dinette();
  text.pieces[0] =
      R"({"id": "table", "kind": "table", "length": "37 3/4", "width": "32 1/2", "thickness": "3/4"})";
  text.night[1] = R"({"piece": "table", "at": {"rear": "1/8", "left": "21 3/4"}, "base": "13 1/4"})";
  const DropIn::Direction across = table_by_night(text).directions[1];
  EXPECT_EQ(across.before, -Length::inches(1, 4));
  EXPECT_EQ(across.behind, -Length::inches(1, 4));
  EXPECT_EQ(across.thing_before, "left bench");
  EXPECT_TRUE(across.tilt.has_value());
  EXPECT_EQ(table_by_night(text).directions[0].thing_behind, "room");
}

// 20 cos 60 + 1 sin 60 = 10 + 0.8660: a gap of 10.867 in lets it pass at 60 degrees, one of 10.866 at 61
// only.
TEST(DropIn, TiltsByTheLeastWholeDegree) {
  EXPECT_EQ(least_tilt(20_in, 1_in, Length::inches(10867, 1000)), 60);
  EXPECT_EQ(least_tilt(20_in, 1_in, Length::inches(10866, 1000)), 61);
  EXPECT_EQ(least_tilt(20_in, 1_in, 20_in), 0);
  EXPECT_EQ(least_tilt(20_in, 1_in, 1_in), 90);
  EXPECT_EQ(least_tilt(20_in, 1_in, Length::inches(999, 1000)), std::nullopt);
}

// Slow twin: the widest of the four corners of the turned section, in plain arithmetic.
TEST(DropIn, TiltAgreesWithTurnedCorners) {
  for (int thickness = 1; thickness <= 7; thickness += 2)
    for (int gap = thickness; gap < 40; gap += 3) {
      std::optional<int> expected;
      for (int degrees = 0; degrees <= 90 && !expected; ++degrees) {
        const double c = std::cos(degrees * std::numbers::pi / 180),
                     s = std::sin(degrees * std::numbers::pi / 180);
        const double corners[] = {0, 33 * c, thickness * s, 33 * c + thickness * s};
        if (*std::max_element(corners, corners + 4) <= gap + 1e-7) expected = degrees;
      }
      EXPECT_EQ(least_tilt(33_in, Length::inches(thickness), Length::inches(gap)), expected)
          << thickness << ' ' << gap;
    }
}

}  // namespace
}  // namespace berthwright

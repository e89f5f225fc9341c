#include "view/figures.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

using namespace literals;

// Half a millimetre: balls are polygons of 64 sides around the circle.
void expect_near(Length a, Length b) {
  EXPECT_LE(abs(a - b), Length::millimetres(1, 2)) << a.ticks() - b.ticks();
}

// ANSUR II: sitting height of the 95th percentile man 977 mm, of the 5th percentile woman 803 mm.
TEST(Figures, WhoSitsIsAsHighAsTheSurveySays) {
  for (const auto& [build, high] : {std::pair(large_man(), 977_mm), std::pair(small_woman(), 803_mm)}) {
    const Region figure = seated_figure(build, {1000_mm, 430_mm, true});
    expect_near(figure.bounds().high.y, 430_mm + high);
    expect_near(seated_head(build, {1000_mm, 430_mm, true}).y, 430_mm + high - 110_mm);
    expect_near(trunk_figure(build, 0_mm, 430_mm).bounds().high.y, 430_mm + high);
    expect_near(trunk_figure(build, 0_mm, 430_mm).bounds().low.y, 430_mm);
  }
}

// Buttock-knee length of that man 669 mm, knee height 602 mm.
TEST(Figures, TheKneesReachAsFarAsTheSurveySays) {
  const Build man = large_man();
  // On a seat as high as the hollow of the knee the shins stand upright, the knees are foremost but for the
  // feet.
  const Region figure = seated_figure(man, {{}, man.popliteal_height, true});
  expect_near(figure.bounds().low.x, {});
  expect_near(figure.bounds().low.y, {});
  EXPECT_NE(figure.side_of({man.buttock_knee - 2_mm, man.popliteal_height + 65_mm}), Side::outside);
  EXPECT_EQ(figure.side_of({man.buttock_knee + 2_mm, man.popliteal_height + 65_mm}), Side::outside);
}

// Toes reach 100 mm below the heels (our own choice of posture), no farther than the floor.
TEST(Figures, FeetStandOnTheFloorOrTheToesReachForIt) {
  const Build woman = small_woman();  // hollow of the knee at 350 mm
  expect_near(seated_figure(woman, {{}, 300_mm, true}).bounds().low.y, {});
  expect_near(seated_figure(woman, {{}, 430_mm, true}).bounds().low.y, {});
  expect_near(seated_figure(woman, {{}, 500_mm, true}).bounds().low.y, 50_mm);
  EXPECT_FALSE(seated_figure(woman, {{}, 0_mm, true}).empty()) << "on the bare floor";
  for (const Length seat : {300_mm, 430_mm, 500_mm})
    for (const Region& leg : legs_from_before(woman, 0_mm, seat))
      expect_near(leg.bounds().low.y, seat == 500_mm ? 50_mm : 0_mm);
}

TEST(Figures, ToesReachAsFarAsTheyAreSaidToAndStayBeforeWhatStandsThere) {
  const Build man = large_man();
  for (const bool onward : {true, false}) {
    SCOPED_TRACE(onward);
    SeatUnder seat{1000_mm, 430_mm, onward};
    const auto reach = [&](const SeatUnder& of) {
      const Rect box = seated_figure(man, of).bounds();
      return onward ? box.high.x - 1000_mm : 1000_mm - box.low.x;
    };
    const Length at_ease = onward ? toes_of(man, seat) - 1000_mm : 1000_mm - toes_of(man, seat);
    expect_near(reach(seat), at_ease);
    // A post 150 mm nearer: the feet stay on the floor, so the knees rise.
    const Length knees = seated_figure(man, seat).bounds().low.y;
    const Length post = at_ease - 150_mm;
    seat.toes_before = onward ? 1000_mm + post : 1000_mm - post;
    EXPECT_LE(reach(seat), post + Length::millimetres(1, 2));
    expect_near(seated_figure(man, seat).bounds().low.y, knees);
  }
}

TEST(Figures, WhoLooksTheOtherWayIsTheMirrorImage) {
  const Build man = large_man();
  const Rect onward = seated_figure(man, {100_mm, 420_mm, true}).bounds();
  const Rect back = seated_figure(man, {100_mm, 420_mm, false}).bounds();
  expect_near(onward.high.x - 100_mm, 100_mm - back.low.x);
  EXPECT_EQ(onward.high.y, back.high.y);
}

TEST(Figures, WhoLiesIsAsLongAsTheStatureEitherWay) {
  const Build man = large_man();
  for (const auto& [crown, heels] : {std::pair(0_mm, man.stature), std::pair(man.stature, 0_mm)}) {
    const Rect box = lying_figure(man, crown, heels, 457_mm).bounds();
    expect_near(box.low.x, {});
    expect_near(box.high.x, man.stature);
    expect_near(box.low.y, 457_mm);
    EXPECT_LT(box.high.y, 457_mm + 10_in);
  }
  // Seen aslant: between the same places.
  const Rect aslant = lying_figure(man, 0_mm, 1200_mm, {}).bounds();
  expect_near(aslant.high.x, 1200_mm);
  EXPECT_THROW(lying_figure(man, 0_mm, 200_mm, {}), std::invalid_argument);
}

// Shoulder breadth of the 95th percentile man 567 mm.
TEST(Figures, FromTheFeetAPersonIsAsBroadAsTheShoulders) {
  const std::vector<Region> parts = figure_from_the_feet(large_man(), 900_mm, 457_mm);
  expect_near(parts.front().bounds().width(), 567_mm);
  for (const Region& part : parts) expect_near(part.bounds().low.y, 457_mm);
}

}  // namespace
}  // namespace berthwright

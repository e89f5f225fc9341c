#include <gtest/gtest.h>

#include "support/small_bunks.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

std::string locker(const char* front, const char* length, const char* base) {
  return std::string(R"({"id": "locker", "kind": "locker", "width": 24, "top": 70, "at": {"front": )") +
         front + R"(, "left": 0}, "length": )" + length + R"(, "base": )" + base + "}";
}
TrailerText sleeper(const char* stature) {
  TrailerText text = bunk("75", "24", "10", "11");
  text.beds = {std::string(R"({"id": "bed", "configuration": "night", "pieces": ["M"],
                               "people": [{"name": "Ada", "stature": ")") +
               stature + R"("}]})"};
  return text;
}

// Common practice, no source: 24 in clear over head and chest, 12 in are enough over the last 24 in at the
// foot. Level 15. A locker at 27 in over the last 20 in leaves 12 there: all 75 in count. A 1/64 in lower
// only the 55 before it do: 55 - 70 = -15 in of length for Ada.
TEST(Sleepers, MayPutTheirFeetUnderALowLocker) {
  TrailerText text = sleeper("70");
  text.fixtures.push_back(locker("55", "20", R"("27")"));
  EXPECT_EQ(Answered(text).one("bed.person-length").measured, Quantity(5_in));
  EXPECT_EQ(Answered(text).one("bed.berth-length").measured,
            Quantity(55_in));  // the berth rule knows no feet
  text.fixtures.back() = locker("55", "20", R"("26 63/64")");
  const Finding low = Answered(text).one("bed.person-length");
  EXPECT_EQ(low.measured, Quantity(-15_in));
  EXPECT_EQ(low.cure, (Cure{Cure::Kind::lengthen, "bed", 19_in}));
  // Over 30 in at the foot only 24 of them count: 45 + 24 = 69.
  text.fixtures.back() = locker("45", "30", R"("27")");
  EXPECT_EQ(Answered(text).one("bed.person-length").measured, Quantity(-1_in));
}

TEST(Sleepers, TheTallestPersonTheBedSuitsIsToldUnderTheSameRule) {
  TrailerText text = sleeper("70");
  text.fixtures.push_back(locker("55", "20", R"("27")"));
  const Answered made(text);
  const SleepingRoom& room = made.answer.configurations.back().beds.front().room;
  EXPECT_EQ(room.people.front().suits_stature, 71_in);
  EXPECT_EQ(room.place->length, 75_in);
}

// A bed of 75 x 46 whose right rear corner of 30 x 20 is gone: Ada of 70 in needs 74, and there it is 46 - 20
// = 26 wide. At 40 in she needs 44, which the 45 in before the corner have at the full width of 46.
TEST(Sleepers, GetTheWidthThatTheBedHasAtTheirLength) {
  const auto width = [](const char* stature) {
    TrailerText text = sleeper(stature);
    text.fixtures[0] =
        R"({"id": "bunk", "kind": "shelf", "length": 75, "width": 46, "at": {"front": 0, "left": 0},
                           "base": 10, "top": 11})";
    text.pieces[0] = R"({"id": "M", "kind": "cushion", "length": 75, "width": 46, "thickness": 4,
                         "corners": {"rear right": {"notch": [30, 20]}}})";
    return Answered(text).one("bed.person-width").measured;
  };
  EXPECT_EQ(width("70"), Quantity(26_in));
  EXPECT_EQ(width("40"), Quantity(46_in));
}

// 75 x 44 in, an ordinary double: 48 in of shoulders do not fit, so side by side it is 4 in short across;
// head to foot takes 24 + 16 = 40 and is 75 in long, 2 short of Ben's 73 + 4.
TEST(Sleepers, TwoOnAnOrdinaryDoubleLieHeadToFoot) {
  const Answered made(bed_for_two("44", "60", "73"));
  const Finding side = made.one("bed.side-by-side");
  EXPECT_EQ(side.status, Status::not_met);
  const Finding head_to_foot = made.one("bed.head-to-foot");
  EXPECT_EQ(head_to_foot.measured, Quantity(Sides{75_in, 40_in}));
  EXPECT_EQ(head_to_foot.compared, Quantity(Sides{77_in, 40_in}));
  EXPECT_EQ(head_to_foot.margin, -2_in);
  const Answered shorter(bed_for_two("44", "60", "70"));
  EXPECT_EQ(shorter.one("bed.head-to-foot").status, Status::met);
  EXPECT_EQ(shorter.one("bed.side-by-side").measured, Quantity(Sides{74_in, 44_in}));
  EXPECT_EQ(shorter.one("bed.side-by-side").margin, -4_in);
  EXPECT_EQ(Answered(bed_for_two("40", "60", "70")).one("bed.head-to-foot").status, Status::met);
  EXPECT_EQ(Answered(bed_for_two("39", "60", "70")).one("bed.head-to-foot").status, Status::not_met);
}

TEST(Sleepers, TwoOnFortyEightInchesLieSideBySide) {
  const Finding side = Answered(bed_for_two("48", "60", "70")).one("bed.side-by-side");
  EXPECT_EQ(side.status, Status::met);
  EXPECT_EQ(side.measured, Quantity(Sides{75_in, 48_in}));
  EXPECT_EQ(side.subjects, (std::vector<std::string>{"Ada", "Ben"}));
  EXPECT_EQ(Answered(bed_for_two("48", "60", "")).one("bed.side-by-side").status, Status::unknown);
  EXPECT_FALSE(Answered(bed_for_two("48", "", "")).one("bed.side-by-side").compared.has_value());
  EXPECT_TRUE(Answered(sleeper("70")).of("bed.side-by-side").empty());
}

TEST(Sleepers, ABedWithoutCushionsIsToldWithItsBoard) {
  const Answered made(bare_board());
  const Finding bare = made.one("bed.no-cushion");
  EXPECT_EQ(bare.status, Status::not_met);
  EXPECT_EQ(bare.measured, Quantity(14_in));
  EXPECT_EQ(bare.subjects, (std::vector<std::string>{"bed", "P"}));
  ASSERT_EQ(bare.where.size(), 1U);
  EXPECT_EQ(bare.where[0], (Point3{{Length::inches(75, 2), 12_in}, 14_in}));
  EXPECT_EQ(made.one("bed.berth-width").cure, (Cure{Cure::Kind::lay_cushion, "P", 24_in}));
  EXPECT_TRUE(Answered(sleeper("70")).of("bed.no-cushion").empty());
}

// The room is 60 x 45 in: its diagonal is 75 in, so 76 is longer than anything in it.
TEST(Sleepers, WhoIsLongerThanTheRoomIsToldThatNothingMendsIt) {
  const auto length_in_60_by_45 = [](const char* stature) {
    TrailerText text = sleeper(stature);
    text.interior = R"({"length": 60, "width": 45, "height": 76})";
    text.fixtures[0] = R"({"id": "bunk", "kind": "shelf", "length": 60, "width": 24,
                           "at": {"front": 0, "left": 0}, "base": 10, "top": 11})";
    text.pieces[0] = R"({"id": "M", "kind": "cushion", "length": 60, "width": 24, "thickness": 4})";
    return Answered(text).one("bed.person-length");
  };
  const Finding giant = length_in_60_by_45("76");
  EXPECT_EQ(giant.measured, Quantity(-16_in));
  EXPECT_EQ(giant.variant, "longer than the room");
  ASSERT_TRUE(giant.cure.has_value());
  EXPECT_EQ(giant.cure->kind, Cure::Kind::none);
  EXPECT_EQ(length_in_60_by_45("75").variant, "");
  // 75 + 4 in are more than the diagonal as well; 70 + 4 are not: 74 - 60.
  EXPECT_EQ(length_in_60_by_45("75").cure->kind, Cure::Kind::none);
  EXPECT_EQ(length_in_60_by_45("70").cure, (Cure{Cure::Kind::lengthen, "bed", 14_in}));
}

// The ceiling at 37 in lies 5 in below the top of the mattress at 42; asked are 24 above it.
TEST(Sleepers, ACeilingBelowTheBedIsANegativeHeight) {
  TrailerText text = bunk("75", "24", "37", "38");
  text.interior = R"({"length": 120, "width": 76, "height": 37})";
  const Answered made(text);
  const Finding clear = made.one("bed.clear-height");
  EXPECT_EQ(clear.measured, Quantity(-5_in));
  EXPECT_EQ(clear.margin, -29_in);
  EXPECT_EQ(clear.subjects, std::vector<std::string>{"roof"});
  EXPECT_EQ(clear.cure, (Cure{Cure::Kind::lower, "bed", 29_in}));
  EXPECT_EQ(made.one("bed.sitting-up").measured, Quantity(Length{}));
  EXPECT_EQ(made.one("bed.overhead").measured, Quantity(-5_in));
}

TEST(Sleepers, WhatHangsLowIsToldOnceForEachThing) {
  TrailerText text = sleeper("70");
  text.fixtures.push_back(locker("55", "20", R"("27")"));
  const Answered made(text);
  const Finding overhead = made.one("bed.overhead");
  EXPECT_EQ(overhead.measured, Quantity(12_in));
  EXPECT_EQ(overhead.subjects, std::vector<std::string>{"locker"});
  text.fixtures.back() = locker("55", "20", R"("51")");  // 36 in: who sits there sits upright
  EXPECT_TRUE(Answered(text).of("bed.overhead").empty());
}

// A bed of 75 x 38 turned by 0.5 degrees, 0.0087 of a radian: unturned, 38 x 0.0087 = 0.33 in are lost of its
// length and 75 x 0.0087 = 0.65 in of its width, 0.4 and 1.7 %: the turned one is told. At 0.1 degrees a
// fifth of that is lost, 0.4 %: the unturned one.
TEST(Sleepers, TheLargestRectangleIsTurnedOnlyForMoreThanAHundredth) {
  TrailerText text = bunk("75", "38", "10", "11");
  text.night = {R"({"piece": "M", "at": {"front": 10, "left": 10}, "turn": "0.5", "base": 11})"};
  const SleepingRoom turned = Answered(text).answer.configurations.back().beds.front().room;
  EXPECT_FALSE(turned.largest->turn.is_quarter());
  text.night = {R"({"piece": "M", "at": {"front": 10, "left": 10}, "turn": "0.1", "base": 11})"};
  const SleepingRoom nearly = Answered(text).answer.configurations.back().beds.front().room;
  EXPECT_TRUE(nearly.largest->turn.is_quarter());
  ASSERT_TRUE(nearly.largest_turned);
  EXPECT_GT(nearly.largest_turned->length, nearly.largest->length);
}

}  // namespace
}  // namespace berthwright

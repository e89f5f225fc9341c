#include "solve/findings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "support/small_trailers.h"

namespace berthwright {
namespace {

// 16 CFR 1213.2 and 1213.3(a): over 30 in (762 mm) from the floor to the underside of the mattress support it
// is a bunk bed and needs rails at least 5 in above the mattress; 30.0 in is none, 30.5 in is one.
TEST(Findings, AGuardRailIsAskedForOverThirtyInches) {
  EXPECT_EQ(Answered(bunk("75", "24", "29", "30")).one("bed.guard-rail").status, Status::met);
  EXPECT_EQ(Answered(bunk("75", "24", "30", "31")).one("bed.guard-rail").status, Status::close);
  const Answered high(bunk("75", "24", "30.5", "31.5"));
  const Finding finding = high.one("bed.guard-rail");
  EXPECT_EQ(finding.status, Status::not_met);
  EXPECT_EQ(finding.margin, -Length::inches(1, 2));
  EXPECT_EQ(finding.cure, (Cure{Cure::Kind::add_guard_rail, "bed", 5_in}));
  EXPECT_EQ(exit_code(high.answer), 1);
}

// 46 CFR 116.810(a), (b): a berth of at least 74 x 24 in with 24 in above it; more than 60 in above the deck
// it needs an aid for access. A berth of 74 x 24 in at 61 in: its size holds, an aid is asked for.
TEST(Findings, ABerthAtSixtyOneInchesNeedsAnAidForAccess) {
  const Answered made(bunk("74", "24", "56", "57"));
  const Finding aid = made.one("bed.access-aid");
  EXPECT_EQ(aid.measured, Quantity(61_in));
  EXPECT_EQ(aid.status, Status::not_met);
  EXPECT_EQ(made.one("bed.vessel-length").status, Status::close);  // exactly 74 in
  EXPECT_EQ(made.one("bed.berth-width").status, Status::close);    // exactly 24 in
  EXPECT_EQ(made.one("bed.clear-height").status, Status::met);     // 96 - 61 = 35 in
  EXPECT_EQ(made.one("bed.clear-height").measured, Quantity(35_in));
  EXPECT_EQ(Answered(bunk("74", "24", "55", "56")).one("bed.access-aid").status, Status::close);
  EXPECT_EQ(Answered(bunk("74", "24", "20", "21")).one("bed.access-aid").status, Status::met);
}

// 49 CFR 393.76(a), berths installed after 30 September 1975: 75 x 24 in, 24 in clear above the mattress. A
// berth of 75 x 22 with 22 in above fails on width and height.
TEST(Findings, ATruckBerthOfTwentyTwoInchesFailsOnWidthAndHeight) {
  TrailerText text = bunk("75", "22", "10", "11");
  const auto overhead = [](const char* base) {
    return std::string(R"({"id": "locker", "kind": "locker", "length": 75, "width": 24,
                           "at": {"front": 0, "left": 0}, "base": )") +
           base + R"(, "top": 50})";
  };
  EXPECT_EQ(Answered(text).one("bed.berth-width").measured, Quantity(22_in));
  EXPECT_EQ(Answered(text).one("bed.berth-width").status, Status::not_met);
  text.fixtures.push_back(overhead("37"));  // 15 in level, 22 in clear
  const Finding clear = Answered(text).one("bed.clear-height");
  EXPECT_EQ(clear.measured, Quantity(22_in));
  EXPECT_EQ(clear.status, Status::not_met);

  TrailerText enough = bunk("75", "24", "10", "11");
  enough.fixtures.push_back(overhead("39"));
  const Answered made(enough);
  EXPECT_EQ(made.one("bed.clear-height").measured, Quantity(24_in));
  EXPECT_EQ(made.one("bed.clear-height").status, Status::close);
  EXPECT_EQ(made.one("bed.berth-width").measured, Quantity(24_in));
  EXPECT_EQ(made.one("bed.berth-length").measured, Quantity(75_in));
  EXPECT_EQ(made.one("bed.berth-length").status, Status::close);
  EXPECT_EQ(Answered(bunk("74", "24", "10", "11")).one("bed.berth-length").status, Status::not_met);
  EXPECT_EQ(Answered(bunk("76", "30", "10", "11")).one("bed.berth-length").status, Status::met);
}

TEST(Findings, AGapIsComparedWithAnInchAndTheCureNamesItsNeighbour) {
  const Answered closed(two_benches("0", "14"));
  EXPECT_EQ(closed.one("bed.gap").status, Status::met);
  EXPECT_TRUE(closed.one("bed.gap").subjects.empty());
  const Finding close = Answered(two_benches("1", "14")).one("bed.gap");
  EXPECT_EQ(close.status, Status::close);
  EXPECT_EQ(close.subjects, (std::vector<std::string>{"A", "B"}));
  const Finding wide = Answered(two_benches("2", "14")).one("bed.gap");
  EXPECT_EQ(wide.status, Status::not_met);
  EXPECT_EQ(wide.cure->kind, Cure::Kind::widen);
  EXPECT_EQ(wide.cure->subject, "A");
  EXPECT_EQ(wide.cure->side, Wall::right) << "toward B";
  EXPECT_GE(wide.cure->by, 1_in);
  EXPECT_LE(wide.cure->by, 1_in + Length::inches(1, 8));
}

// A disc of 3 in radius passes an opening of 7 in, so it is no gap; the bed is in two parts all the same.
TEST(Findings, AHoleTooWideForAGapLeavesTheBedInParts) {
  const Finding parts = Answered(two_benches("7", "14")).one("bed.gap");
  EXPECT_EQ(parts.variant, "parts");
  EXPECT_EQ(parts.status, Status::not_met);
  EXPECT_EQ(parts.measured, Quantity(7_in));
  EXPECT_EQ(Answered(two_benches("5", "14")).one("bed.gap").variant, "");
}

// Both cushions stand 1/2 in off the front wall: the slot there runs into the gap of 5 in between them and
// must not make a gap to the wall of it.
TEST(Findings, SlackAtAWallHidesNoGapBetweenCushions) {
  TrailerText text = two_benches("5", "14");
  for (std::string& pose : text.night) pose.replace(pose.find(R"("front": 0)"), 10, R"("front": "1/2")");
  const Answered made(text);
  EXPECT_EQ(made.one("bed.gap").measured, Quantity(5_in));
  EXPECT_EQ(made.one("bed.gap").status, Status::not_met);
  for (const Finding& slot : made.of("bed.wall-gap"))
    EXPECT_EQ(slot.measured, Quantity(Length::inches(1, 2)));
  EXPECT_FALSE(made.of("bed.wall-gap").empty());
}

// Both lie on benches, which nobody moves for a cushion.
TEST(Findings, ARidgeOfBenchesNamesTheFiller) {
  const Finding none = Answered(two_benches("0", "14")).one("bed.ridge");
  EXPECT_EQ(none.status, Status::met);
  EXPECT_FALSE(none.measured.has_value());
  EXPECT_EQ(Answered(two_benches("0", "14 1/4")).one("bed.ridge").status, Status::met);
  const Finding close = Answered(two_benches("0", "14 1/2")).one("bed.ridge");
  EXPECT_EQ(close.status, Status::close);
  EXPECT_EQ(close.subjects, (std::vector<std::string>{"A", "B"}));
  EXPECT_EQ(close.cure, (Cure{Cure::Kind::pad, "A", Length::inches(1, 2)}));
}

// B lies 3 in higher; equal areas make the higher level the bed's, so A has dropped out: it wants a
// filler of 3.
TEST(Findings, ADroppedPieceNamesWhatBringsItBack) {
  const Answered made(two_benches("0", "17"));
  const Finding dropped = made.one("bed.dropped-piece");
  EXPECT_EQ(dropped.status, Status::not_met);
  EXPECT_EQ(dropped.measured, Quantity(3_in));
  EXPECT_EQ(dropped.cure, (Cure{Cure::Kind::pad, "A", 3_in}));
  EXPECT_EQ(Answered(two_benches("0", "14")).one("bed.dropped-piece").status, Status::met);
}

// A bed of 75 x 48 in: Ada is 67 in and keeps 8 in, Ben is 74 in and keeps 1 of the 4 asked: 3 in short. Of
// three people of 24 in each, everyone gets 48 / 3 = 16 in: 8 in short.
TEST(Findings, PeopleGetTheirLengthAndTheirShareOfTheWidth) {
  const Answered made(two_benches("0", "14"));
  std::map<std::string, Finding> length;
  for (const Finding& f : made.of("bed.person-length")) length[f.subjects.at(0)] = f;
  EXPECT_EQ(length["Ada"].measured, Quantity(8_in));
  EXPECT_EQ(length["Ada"].status, Status::met);
  EXPECT_EQ(length["Ben"].status, Status::not_met);
  EXPECT_EQ(length["Ben"].margin, -3_in);
  EXPECT_EQ(length["Ben"].cure, (Cure{Cure::Kind::lengthen, "bed", 3_in}));
  EXPECT_EQ(length["Cy"].status, Status::unknown);
  EXPECT_EQ(length["Cy"].cure, (Cure{Cure::Kind::state_measure, "Cy", {}}));
  ASSERT_EQ(made.of("bed.person-width").size(), 3U);
  for (const Finding& f : made.of("bed.person-width")) {
    EXPECT_EQ(f.measured, Quantity(16_in));
    EXPECT_EQ(f.status, Status::not_met);
  }
}

TEST(Findings, APersonsOwnWidthIsTheNumberAsked) {
  TrailerText text = bunk("75", "24", "10", "11");
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"],
                   "people": [{"name": "Fay", "width": 20}]})"};
  const Finding own = Answered(text).one("bed.person-width");
  EXPECT_EQ(own.compared, Quantity(20_in));
  EXPECT_EQ(own.status, Status::met);
  EXPECT_FALSE(own.override_reason.empty());
  text.rules = {R"("bed.person-width": {"limit": 26, "reason": "broad shoulders"})"};
  const Finding ruled = Answered(text).one("bed.person-width");
  EXPECT_EQ(ruled.compared, Quantity(26_in));
  EXPECT_EQ(ruled.status, Status::not_met);
  EXPECT_EQ(ruled.override_reason, "broad shoulders");
}

TEST(Findings, SizeAreaAndSharesAreReported) {
  const Answered made(two_benches("0", "14"));
  EXPECT_EQ(made.one("bed.size").measured, Quantity(Sides{75_in, 48_in}));
  EXPECT_EQ(made.one("bed.area").measured, Quantity(Area::rectangle(75_in, 48_in)));
  EXPECT_TRUE(std::holds_alternative<Shares>(*made.one("bed.fits-people").measured));
  for (const char* rule : {"bed.size", "bed.area", "bed.fits-people"}) {
    EXPECT_EQ(made.one(rule).status, Status::met);
    EXPECT_FALSE(made.one(rule).compared.has_value());
  }
  const std::vector<Finding> sizes = made.of("bed.named-size");
  EXPECT_TRUE(std::ranges::any_of(sizes, [](const Finding& f) { return f.status == Status::met; }));
  EXPECT_TRUE(std::ranges::all_of(sizes, [](const Finding& f) { return f.compared && !f.variant.empty(); }));
}

// A bed of 75 x 46 in holds the twin of 75 x 38; the three-quarter of 75 x 48 misses by 2 in and is named,
// the full of 75 x 54 misses by 8 and is not. A cot of 60 x 20 in holds nothing: the size it misses by least
// is named.
TEST(Findings, NamesTheSizesThatAreHeldAndThoseThatMissByALittle) {
  std::map<std::string, Finding> sizes;
  for (const Finding& f : Answered(bunk("75", "46", "10", "11")).of("bed.named-size")) sizes[f.variant] = f;
  const auto of_sides = [&](Length length, Length width) -> const Finding* {
    for (const auto& [name, f] : sizes)
      if (f.compared == Quantity(Sides{length, width})) return &f;
    return nullptr;
  };
  ASSERT_NE(of_sides(75_in, 38_in), nullptr);
  EXPECT_EQ(of_sides(75_in, 38_in)->status, Status::met);
  ASSERT_NE(of_sides(75_in, 48_in), nullptr);
  EXPECT_EQ(of_sides(75_in, 48_in)->status, Status::not_met);
  EXPECT_EQ(of_sides(75_in, 48_in)->margin, -2_in);
  EXPECT_EQ(of_sides(75_in, 48_in)->measured, Quantity(Sides{75_in, 46_in}));
  EXPECT_EQ(of_sides(75_in, 54_in), nullptr);
  const std::vector<Finding> none = Answered(bunk("60", "20", "10", "11")).of("bed.named-size");
  ASSERT_EQ(none.size(), 1U);
  EXPECT_EQ(none[0].status, Status::not_met);
}

// 1/4 in of foam into foam is what a joint gives: shown, and close; 2 in are too much.
TEST(Findings, WhatFoamGivesIsClose) {
  TrailerText text = two_benches("0", "14");
  const auto overlap = [&](const char* from_left) {
    text.night[1] = std::string(R"({"piece": "B", "at": {"front": 0, "left": ")") + from_left +
                    R"("}, "on": ["left bench", "right bench"]})";
    return Answered(text).one_in("night", "room.overlap");
  };
  EXPECT_EQ(overlap("23 3/4").status, Status::close);
  EXPECT_EQ(overlap("23 3/4").measured, Quantity(Length::inches(1, 4)));
  EXPECT_FALSE(overlap("23 3/4").cure.has_value());
  EXPECT_EQ(overlap("22").status, Status::not_met);
}

TEST(Findings, TheRoomIsCheckedInEveryConfiguration) {
  TrailerText text = two_benches("0", "14");
  Answered clear(text);
  ASSERT_EQ(clear.of("room.inside").size(), 2U);
  ASSERT_EQ(clear.of("room.overlap").size(), 2U);
  EXPECT_EQ(exit_code(clear.answer), 0);
  text.day = {R"({"piece": "H", "at": {"front": 115, "left": 60}, "on": "floor"})"};
  const Answered outside(text);
  const Finding reach = outside.of("room.inside").front();
  EXPECT_EQ(reach.configuration.text(), "day");
  EXPECT_EQ(reach.status, Status::not_met);
  EXPECT_EQ(reach.measured, Quantity(3_in));
  EXPECT_EQ(reach.cure, (Cure{Cure::Kind::move_apart, "H", 3_in}));
  EXPECT_EQ(exit_code(outside.answer), 1);
  text.day = {R"({"piece": "H", "at": {"front": 73, "left": 0}, "base": 0})"};
  const Finding overlap = Answered(text).of("room.overlap").front();
  EXPECT_EQ(overlap.status, Status::not_met);
  EXPECT_EQ(overlap.subjects, (std::vector<std::string>{"left bench", "H"}));
  EXPECT_EQ(overlap.cure, (Cure{Cure::Kind::move_apart, "H", 2_in}));
}

// A board of 21 in between two cabinets 20 in apart, half an inch into each: moved off one it is an inch into
// the other. At one of them alone it can be moved.
TEST(Findings, WhatIsWedgedBetweenTwoThingsMustBecomeSmaller) {
  TrailerText text;
  const std::string size = R"("kind": "cabinet", "length": 30, "width": 20, "top": 30, )";
  text.fixtures = {R"({"id": "a", )" + size + R"("at": {"front": 0, "left": 0}})",
                   R"({"id": "b", )" + size + R"("at": {"front": 0, "left": 40}})"};
  text.pieces = {R"({"id": "T", "kind": "board", "length": 30, "width": 21, "thickness": 1})"};
  text.day = {R"({"piece": "T", "at": {"front": 0, "left": "19.5"}, "base": 10})"};
  const auto cures = [](const TrailerText& of) {
    std::vector<Cure> found;
    for (const Finding& finding : Answered(of).of("room.overlap"))
      if (finding.cure) found.push_back(*finding.cure);
    return found;
  };
  const Length half_inch = Length::inches(1, 2);
  Cure left{Cure::Kind::shorten, "T", half_inch};
  Cure right = left;
  left.side = Wall::left, right.side = Wall::right;
  EXPECT_EQ(cures(text), (std::vector{left, right}));
  text.fixtures.pop_back();
  EXPECT_EQ(cures(text), std::vector{(Cure{Cure::Kind::move_apart, "T", half_inch})});
}

// Two cushions of 75 x 24 in, 1/2 in apart, the right one an inch low: of equal areas the higher is the bed.
// Raised by that inch it joins: 24 + 1/2 + 24 = 48 1/2 in.
TEST(Findings, ABedThatLostAPieceIsAlsoToldAsItWouldBeOnceLevelled) {
  const Answered low(two_benches("0.5", "13"));
  const BedAnswer& bed = low.answer.configurations.back().beds.front();
  EXPECT_EQ(bed.room.largest->width, 24_in);
  ASSERT_TRUE(bed.levelled.has_value());
  EXPECT_EQ(bed.levelled->largest->length, 75_in);
  EXPECT_EQ(bed.levelled->largest->width, Length::inches(97, 2));
  for (const Finding& finding : low.of("bed.person-width"))
    EXPECT_EQ(finding.cure, (Cure{Cure::Kind::pad, "B", 1_in}));
  EXPECT_FALSE(Answered(two_benches("0.5", "14")).answer.configurations.back().beds.front().levelled);
}

// An L of 110 x 20 in with 75 x 4 in beside it: the largest rectangle is 110 x 20 (2,200 sq in against 75 x
// 24 = 1,800), yet a berth of 24 in is there.
TEST(Findings, ANarrowLargestRectangleHidesNoBerth) {
  TrailerText text;
  text.fixtures = {R"({"id": "bench", "kind": "bench", "length": 110, "width": 24,
                       "at": {"front": 0, "left": 0}, "top": 14})"};
  text.pieces = {R"({"id": "A", "kind": "cushion", "length": 110, "width": 20, "thickness": 4})",
                 R"({"id": "B", "kind": "cushion", "length": 75, "width": 4, "thickness": 4})"};
  text.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}})",
                R"({"piece": "B", "at": {"front": 0, "left": 20}})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A", "B"]})"};
  const Answered made(text);
  EXPECT_EQ(made.one("bed.size").measured, Quantity(Sides{110_in, 20_in}));
  EXPECT_EQ(made.one("bed.berth-width").measured, Quantity(24_in));
  EXPECT_NE(made.one("bed.berth-width").status, Status::not_met);
  EXPECT_EQ(made.one("bed.berth-length").measured, Quantity(75_in));
}

}  // namespace
}  // namespace berthwright

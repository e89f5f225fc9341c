#include <gtest/gtest.h>

#include <cmath>

#include <berthwright/exact/squared_length.h>

#include "support/cord_trailers.h"

namespace berthwright {
namespace {

// The run is 54 in: a cord of 60 in leaves 6 to spare and is met, 59 7/8 is close, 54 too, 53 is 1 in short.
TEST(CordFindings, AnExtensionCordIsNoCure) {
  EXPECT_EQ(Answered(cord_trailer("60")).one("cord.reach").status, Status::met);
  EXPECT_EQ(Answered(cord_trailer("59 7/8")).one("cord.reach").status, Status::close);
  EXPECT_EQ(Answered(cord_trailer("54")).one("cord.reach").status, Status::close);
  const Answered made(cord_trailer("53"));
  const Finding finding = made.one("cord.reach");
  EXPECT_EQ(finding.status, Status::not_met);
  EXPECT_EQ(finding.measured, Quantity(54_in));
  EXPECT_EQ(finding.compared, Quantity(53_in));
  EXPECT_EQ(finding.margin, -1_in);
  EXPECT_EQ(finding.cure, (Cure{Cure::Kind::bring_nearer, "H", 1_in}));
  EXPECT_EQ(finding.subjects, (std::vector<std::string>{"H", "outlet"}));
  EXPECT_EQ(exit_code(made.answer), 1);
  EXPECT_EQ(exit_code(Answered(cord_trailer("54")).answer), 0);
}

TEST(CordFindings, WhatThePlanDoesNotTellIsUnknown) {
  const Finding no_length = Answered(cord_trailer("")).one("cord.reach");
  EXPECT_EQ(no_length.status, Status::unknown);
  EXPECT_EQ(no_length.variant, "no length");
  EXPECT_EQ(no_length.cure, (Cure{Cure::Kind::state_cord, "H", {}}));
  EXPECT_EQ(exit_code(Answered(cord_trailer("")).answer), 2);
  TrailerText text = cord_trailer("80");
  text.fixtures.clear();
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 30}})"};
  const Answered no_outlet(text);
  EXPECT_EQ(no_outlet.one("cord.reach").status, Status::unknown);
  EXPECT_EQ(no_outlet.one("cord.reach").variant, "no outlet");
  text.pieces = cord_trailer("").pieces;
  const Answered nothing(text);
  EXPECT_TRUE(nothing.of("cord.reach").empty());
  EXPECT_EQ(nothing.one("cord.not-given").status, Status::unknown);
  EXPECT_TRUE(no_outlet.of("cord.not-given").empty());
  EXPECT_EQ(exit_code(nothing.answer), 0);
  // A plan built in memory may lay it on its side.
  PlanParts parts = *cord_trailer("80").plan().operator->();
  parts.configurations[0].poses[0].manner = Pose::Manner::on_length;
  EXPECT_EQ(Answered(Plan::checked(parts).value()).one("cord.reach").variant, "not upright");
}

// Odd places of the heater: each gives a finding that says so, with what is in the way.
TEST(CordFindings, OfAHeaterInAnOddPlaceSayWhatIsInTheWay) {
  const auto at = [](const std::string& front, const std::string& left, const std::string& more = "") {
    TrailerText text = cord_and_bed("80");
    text.fixtures.push_back(cabinet("wardrobe", "0", "0", "20", "20"));
    text.fixtures.push_back(cabinet("loft", "0", "50", "20", "20", "2", "40"));
    text.night[1] = R"({"piece": "H", "on": "floor", "plugged_into": "outlet", "at": {"front": ")" + front +
                    R"(", "left": ")" + left + R"("})" + more + "}";
    text.day = {text.night[1]};
    return text;
  };
  const auto reach = [](const TrailerText& text) { return Answered(text).one_in("night", "cord.reach"); };
  const Finding outside = reach(at("130", "30"));
  EXPECT_EQ(outside.status, Status::not_met);
  EXPECT_EQ(outside.variant, "shut in");
  EXPECT_EQ(outside.subjects.back(), "the rear wall");
  EXPECT_FALSE(Answered(at("130", "30")).of("room.inside").empty());
  const Finding inside_cabinet = reach(at("5", "5"));
  EXPECT_EQ(inside_cabinet.variant, "shut in");
  EXPECT_EQ(inside_cabinet.subjects.back(), "wardrobe");
  const Finding under_bed = reach(at("100", "30"));
  EXPECT_EQ(under_bed.variant, "shut in");
  EXPECT_EQ(under_bed.subjects.back(), "bench");
  EXPECT_EQ(reach(at("5", "55")).subjects.back(), "loft");
}

TEST(CordFindings, ACordAcrossTheWalkwayIsToldWithItsPlace) {
  // The door is at the front, the bed at the rear: whoever goes from one to the other passes between.
  const Finding crossing = Answered(across_the_walkway("200", "2")).one("cord.walkway");
  EXPECT_EQ(crossing.status, Status::not_met);
  EXPECT_EQ(crossing.bed.text(), "bed");
  ASSERT_EQ(crossing.where.size(), 1U);
  EXPECT_GT(crossing.where[0].plan.y, 10_in);
  EXPECT_LT(crossing.where[0].plan.y, 66_in);
  // The door is between the outlet and the bed: the walkway ends before it.
  TrailerText beside = across_the_walkway("200", "62");
  beside.fixtures[0].replace(beside.fixtures[0].find("58"), 2, "10");
  EXPECT_EQ(Answered(beside).one("cord.walkway").status, Status::met);
}

// A box from 75 to 89 in along and 20 to 60 across; the bedding hangs to 88. From (80, 10) to the outlet's
// foot at (85, 66) it is shorter behind the box, under the bedding: (9, 10), 40, (4, 6): sqrt(181) + 40 +
// sqrt(52) = 60.66 in. Before it, round the heater's corner (80, 15): 5, (5, 5), 40, (10, 6): 5 + sqrt(50) +
// 40 + sqrt(136) = 63.73. Up 18 in each.
TEST(CordFindings, ALongerWayIsTakenWhereItKeepsClear) {
  TrailerText text = cord_and_bed("82");
  text.openings.clear();
  text.fixtures.push_back(cabinet("box", "75", "20", "14", "40"));
  text.fixtures[0] = outlet("outlet", "85", "64", "front");
  text.night[1] =
      R"({"piece": "H", "at": {"front": 70, "left": 5}, "on": "floor", "plugged_into": "outlet", "turn": 180})";
  const auto root = [](int square) {
    return SquaredLength(Int128{square} * ticks_per_inch * ticks_per_inch, 1).ceiling();
  };
  const Answered longer(text);
  EXPECT_EQ(longer.one("cord.under-bedding").status, Status::met);
  EXPECT_EQ(longer.one_in("night", "cord.reach").measured, Quantity(63_in + root(50) + root(136)));
  text.pieces[0] = cord_trailer("80").pieces[0];
  const Answered shorter(text);
  EXPECT_EQ(shorter.one_in("night", "cord.reach").measured, Quantity(58_in + root(181) + root(52)));
  const Finding under = shorter.one("cord.under-bedding");
  EXPECT_EQ(under.status, Status::not_met);
  // The cord is 1/2 in wide, so from x = 87 3/4 on: 1 1/4 of 9 in of the first part, 40, 1 1/4 of 4 of the
  // last.
  EXPECT_NEAR(static_cast<double>(std::get<Length>(*under.measured).ticks()) / ticks_per_inch,
              std::sqrt(181) * 1.25 / 9 + 40 + std::sqrt(52) * 1.25 / 4, 5e-6);
}

TEST(CordFindings, RoomForThePlugAndTheWayItFaces) {
  TrailerText text = cord_and_bed("90");
  const auto outlet_at = [&](const std::string& front, const std::string& faces) {
    text.fixtures[0] = outlet("outlet", front, "33", faces);
    return text;
  };
  EXPECT_EQ(Answered(outlet_at("85", "rear")).one_in("night", "cord.plug-room").status, Status::close);
  const Finding tight = Answered(outlet_at("85 1/2", "rear")).one_in("night", "cord.plug-room");
  EXPECT_EQ(tight.status, Status::not_met);
  EXPECT_EQ(tight.measured, Quantity(Length::inches(3, 2)));
  EXPECT_EQ(tight.subjects, (std::vector<std::string>{"outlet", "bed"}));
  EXPECT_EQ(tight.cure, (Cure{Cure::Kind::stow_heater, "H", {}}));
  EXPECT_EQ(Answered(outlet_at("85", "")).one_in("night", "cord.plug-room").status, Status::unknown);
  const Finding looks_at_it = Answered(outlet_at("60", "rear")).one("cord.outlet-faces");
  EXPECT_EQ(looks_at_it.status, Status::not_met);  // 27 in to the bedding at 88
  EXPECT_EQ(looks_at_it.measured, Quantity(27_in));
  EXPECT_EQ(Answered(outlet_at("51", "rear")).one("cord.outlet-faces").status, Status::close);
  EXPECT_EQ(Answered(outlet_at("60", "front")).one("cord.outlet-faces").status, Status::met);
  EXPECT_EQ(Answered(outlet_at("60", "")).one("cord.outlet-faces").status, Status::unknown);
}

// Trade practice (common practice, no source): a 350 W heater in a trailer of about 10 x 6 ft, plugged so
// that the way its outlet faces keeps it away from the bedding, stowed in a drawer when it is not in use.
TEST(CordFindings, TheTradesSmallHeaterInASmallTrailer) {
  TrailerText text = cord_and_bed("5 ft");
  text.interior = R"({"length": "10 ft", "width": "6 ft", "height": "6 ft"})";
  text.openings.clear();
  text.fixtures = {
      R"({"id": "bench", "kind": "bench", "length": 38, "width": 72, "at": {"rear": 0, "left": 0}, "top": 14})",
      R"({"id": "galley", "kind": "counter", "length": 30, "width": 20, "at": {"front": 45, "left": 0}, "top": 36,
          "opens": [{"id": "drawer", "kind": "drawer", "face": "right", "from": 4, "width": 12, "base": 20, "top": 32,
                     "inside": {"length": 18, "width": 10, "height": 11}}]})",
      R"({"id": "outlet", "kind": "outlet", "length": 1, "width": 4, "at": {"front": 44, "left": 4}, "base": 14,
          "top": 18, "faces": "front"})"};
  text.pieces = {
      R"({"id": "H", "name": "350 W heater", "kind": "heater", "length": 6, "width": 5, "height": 9, "faces": "front",
          "cord": {"length": "5 ft"}})",
      R"({"id": "M", "kind": "cushion", "length": 38, "width": 72, "thickness": 4})"};
  text.night = {R"({"piece": "M", "at": {"rear": 0, "left": 0}, "on": "bench"})",
                R"({"piece": "H", "at": {"front": 30, "left": 4}, "on": "floor", "plugged_into": "outlet"})"};
  text.day = {text.night[0], R"({"piece": "H", "stowed": "drawer"})"};
  const Answered made(text);
  EXPECT_EQ(made.one_in("night", "cord.reach").status, Status::met);
  EXPECT_EQ(made.one("cord.outlet-faces").status, Status::met);
  EXPECT_EQ(made.one("cord.under-bedding").status, Status::met);
  EXPECT_EQ(made.one("heat.three-feet", "made up").status, Status::met);  // 80 - 36 = 44 in and 14 up
  EXPECT_EQ(made.one("heat.stowed").status, Status::met);
  EXPECT_EQ(made.one("heat.stowed").configuration.text(), "day");
  EXPECT_EQ(find_rule("cord.outlet-faces")->source.kind, Source::Kind::common_practice);
  // Facing the bed instead, from the other end of the galley, it would blow at the bedding 4 in before it.
  text.fixtures[2].replace(text.fixtures[2].find(R"("front": 44)"), 11, R"("front": 75)");
  text.fixtures[2].replace(text.fixtures[2].find(R"("faces": "front")"), 16, R"("faces": "rear")");
  const Finding toward = Answered(text).one("cord.outlet-faces");
  EXPECT_EQ(toward.status, Status::not_met);
  EXPECT_EQ(toward.measured, Quantity(4_in));
}

}  // namespace
}  // namespace berthwright

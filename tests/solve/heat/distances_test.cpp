#include <berthwright/solve/heat/distances.h>

#include <gtest/gtest.h>

#include "support/trailer_text.h"

namespace berthwright {
namespace {

// A heater of 10 x 10 x 10 in on the floor, from 60 to 70 in both ways, looking to the rear, and a cushion of
// 20 x 20 x 4 in whose front left corner is at (x, y).
TrailerText heater_and_cushion(const std::string& x, const std::string& y, const std::string& base = "0") {
  TrailerText text;
  text.interior = R"({"length": 200, "width": 140, "height": 90})";
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 10, "faces": "rear"})",
                 R"({"id": "C", "kind": "cushion", "length": 20, "width": 20, "thickness": 4})"};
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 60}, "on": "floor"})",
              R"({"piece": "C", "at": {"front": ")" + x + R"(", "left": ")" + y + R"("}, "base": ")" + base +
                  R"("})"};
  return text;
}

// Published: 3 ft = 36 in = 914.4 mm from everything that can burn (CPSC space-heater tips; NFPA sheet of
// 2018; New York City Fire Code FC 605.10.3(2), which writes 914 mm). Corner offsets of 30 and 20 in:
// sqrt(1300) = 36.0555 in, met; of 30 and 19.8 in: sqrt(1292.04) = 35.9450 in, not met. Each axis alone would
// fail both.
TEST(HeatDistances, TheCornerCaseInAllFourQuadrants) {
  // The heater covers 60..70 both ways; a cushion of 20 in begins 30 in beyond 70 or ends 30 in before 60.
  for (const char* x : {"100", "10"})
    for (const auto& [y, met] : {std::pair{"90", true}, {"20", true}, {"89.8", false}, {"20.2", false}}) {
      SCOPED_TRACE(std::string(x) + ' ' + y);
      const Answered made(heater_and_cushion(x, y));
      const Finding finding = made.one("heat.three-feet", "cushion");
      EXPECT_EQ(finding.status, met ? Status::close : Status::not_met);  // close: less than 1/2 in to spare
      EXPECT_EQ(finding.measured, Quantity(Length::from_ticks(met ? 36'632'400 : 36'520'077)));
      EXPECT_EQ(finding.compared, Quantity(36_in));
      EXPECT_EQ(finding.margin, Length::from_ticks(met ? 56'400 : -55'923));
      EXPECT_EQ(exit_code(made.answer), met ? 0 : 1);
    }
}

// In height: the cushion hangs 20 in above the heater's top (30 in above the floor), 30 in behind it.
TEST(HeatDistances, TheCornerCaseInHeight) {
  EXPECT_EQ(Answered(heater_and_cushion("100", "55", "30")).one("heat.three-feet").status, Status::close);
  EXPECT_EQ(Answered(heater_and_cushion("100", "55", "29.8")).one("heat.three-feet").status, Status::not_met);
}

TEST(HeatDistances, ThreeFeetInMillimetresIs914Point4) {
  TrailerText text = heater_and_cushion("1914.4", "1500");
  text.unit = "mm";
  text.interior = R"({"length": 4000, "width": 3500, "height": 2200})";
  for (std::string& piece : text.pieces)
    for (const auto& [inches, metric] : {std::pair{" 10", " 254"}, {" 20", " 508"}, {" 4}", " 100}"}})
      for (std::size_t i = 0; (i = piece.find(inches, i)) != std::string::npos; i += 3)
        piece.replace(i, std::string(inches).size(), metric);
  text.day[0] = R"({"piece": "H", "at": {"front": 746, "left": 1500}, "on": "floor"})";  // ends at 1000
  EXPECT_EQ(Answered(text).one("heat.three-feet").status, Status::close);
  text.day[1] = R"({"piece": "C", "at": {"front": "1914.3", "left": 1500}, "base": 0})";
  const Finding finding = Answered(text).one("heat.three-feet");
  EXPECT_EQ(finding.status, Status::not_met);
  EXPECT_EQ(finding.margin, -Length::millimetres(1, 10));
  // Short by 0.1 mm: move it by the next whole millimetre.
  EXPECT_EQ(finding.cure, (Cure{Cure::Kind::move_apart, "H", 1_mm}));
  // 900 mm, which metric sheets print for 3 ft, is not enough.
  text.day[1] = R"({"piece": "C", "at": {"front": "1900", "left": 1500}, "base": 0})";
  EXPECT_EQ(Answered(text).one("heat.three-feet").status, Status::not_met);
}

TEST(HeatDistances, NamesBothNearestPointsAndAnEighthOfAnInchMore) {
  const Answered made(heater_and_cushion("100.03", "55"));
  const Finding finding = made.one("heat.three-feet");
  EXPECT_EQ(finding.where,
            (std::vector<Point3>{{{70_in, 60_in}, 0_in}, {{Length::inches(10003, 100), 60_in}, 0_in}}));
  EXPECT_EQ(finding.measured, Quantity(Length::inches(3003, 100)));
  // Short by 5.97 in: 6 in is the next eighth.
  EXPECT_EQ(finding.cure, (Cure{Cure::Kind::move_apart, "H", 6_in}));
  EXPECT_EQ(finding.subjects, (std::vector<std::string>{"H", "C"}));
}

TEST(HeatDistances, ThePlansOwnNumberRulesAndItsReasonShows) {
  TrailerText text = heater_and_cushion("100", "55");
  text.rules = {R"("heat.three-feet": {"limit": 30, "reason": "test bench only"})"};
  const Finding finding = Answered(text).one("heat.three-feet");
  EXPECT_EQ(finding.status, Status::close);
  EXPECT_EQ(finding.compared, Quantity(30_in));
  EXPECT_EQ(finding.override_reason, "test bench only");
}

TEST(HeatDistances, OffButPluggedInIsMeasuredLikeRunning) {
  TrailerText text = heater_and_cushion("100", "55");
  const Finding running = Answered(text).one("heat.three-feet");
  text.day[0].insert(text.day[0].size() - 1, R"(, "state": "off")");
  const Finding off = Answered(text).one("heat.three-feet");
  EXPECT_EQ(off.measured, running.measured);
  EXPECT_EQ(off.status, Status::not_met);
}

TEST(HeatDistances, AStowedHeaterIsNotMeasuredAndItsStowingIsAFinding) {
  TrailerText text = heater_and_cushion("100", "55");
  text.day[0] = R"({"piece": "H", "stowed": "galley"})";
  const Answered made(text);
  EXPECT_TRUE(made.of("heat.three-feet").empty());
  for (const Finding& stowed : made.of("heat.stowed")) EXPECT_EQ(stowed.status, Status::met);
  EXPECT_EQ(made.of("heat.stowed").size(), 2U);  // by day and by night
  EXPECT_EQ(exit_code(made.answer), 0);
}

// A plan file cannot say so, a plan built in memory can: it stands in the room, but its state is stowed.
TEST(HeatDistances, TheStateStowedIsEnough) {
  PlanParts parts = *heater_and_cushion("100", "55").plan().operator->();
  parts.configurations[0].poses[0].state = Pose::State::stowed;
  const Answered made(Plan::checked(parts).value());
  EXPECT_TRUE(made.of("heat.three-feet").empty());
  EXPECT_EQ(made.of("heat.stowed").size(), 2U);
}

TEST(HeatDistances, APlateDoesNotHoldForAHeaterOnItsSide) {
  TrailerText text = heater_and_cushion("150", "55");
  text.pieces[0].insert(text.pieces[0].size() - 1,
                        R"(, "data_plate": {"front": 1, "back": 1, "sides": 1, "top": 1})");
  EXPECT_EQ(Answered(text).one("heat.data-plate").status, Status::met);
  PlanParts parts = *text.plan().operator->();
  parts.configurations[0].poses[0].manner = Pose::Manner::on_length;
  const Answered made(Plan::checked(parts).value());
  EXPECT_EQ(made.one("heat.data-plate").status, Status::unknown);
  EXPECT_EQ(made.one("heat.three-feet").status, Status::met);
}

// Design 2: every heat figure subtracts 0.05 mm for each arc involved.
TEST(HeatDistances, ArcsCostATwentiethOfAMillimetreEach) {
  const std::string round = R"(, "corners": {"front left": {"round": 2}})";
  const Length arc = Length::millimetres(5, 100);
  TrailerText text = heater_and_cushion("106", "55");
  EXPECT_EQ(Answered(text).one("heat.three-feet").measured, Quantity(36_in));
  text.pieces[1].insert(text.pieces[1].size() - 1, round);
  EXPECT_EQ(Answered(text).one("heat.three-feet").measured, Quantity(36_in - arc));
  EXPECT_EQ(Answered(text).one("heat.three-feet").status, Status::not_met);
  text.pieces[0].insert(text.pieces[0].size() - 1, round);
  EXPECT_EQ(Answered(text).one("heat.three-feet").measured, Quantity(36_in - 2 * arc));
}

// A shelf of cork 30 in behind the heater: measured where the plan says that it burns, and only there.
TEST(HeatDistances, WhatElseThePlanSaysCanBurnIsMeasured) {
  TrailerText text = heater_and_cushion("150", "55");
  const std::string shelf = R"({"id": "cork", "kind": "shelf", "length": 10, "width": 10, "at": {"front": 100,
                               "left": 60}, "base": 2, "top": 3)";
  text.fixtures = {shelf + R"(, "burns": true})"};
  const Finding finding = Answered(text).one("heat.three-feet", "other");
  EXPECT_EQ(finding.measured, Quantity(30_in));
  EXPECT_EQ(finding.status, Status::not_met);
  EXPECT_EQ(finding.subjects, (std::vector<std::string>{"H", "cork"}));
  text.fixtures = {shelf + "}"};
  EXPECT_TRUE(Answered(text).of("heat.three-feet", "other").empty());
}

// Design 4.6: a cabinet in between never shortens the distance.
TEST(HeatDistances, WhatStandsInBetweenShortensNothing) {
  TrailerText text = heater_and_cushion("100", "55");
  text.fixtures = {R"({"id": "screen", "kind": "cabinet", "length": 4, "width": 60, "at": {"front": 80,
                       "left": 40}, "top": 90})"};
  const Finding finding = Answered(text).one("heat.three-feet");
  EXPECT_EQ(finding.measured, Quantity(30_in));
  EXPECT_EQ(finding.status, Status::not_met);
}

// The front looks to the rear as the heater is drawn; a quarter turn counter-clockwise makes it look right.
TEST(HeatDistances, ATurnedHeaterTurnsItsPlate) {
  TrailerText text = heater_and_cushion("100", "62");
  text.pieces[1] = R"({"id": "C", "kind": "cushion", "length": 20, "width": 6, "thickness": 4})";
  text.pieces[0].insert(text.pieces[0].size() - 1,
                        R"(, "data_plate": {"front": 36, "back": 1, "sides": 2, "top": 1})");
  for (const auto& [turn, margin] : {std::pair{"0", -6_in}, {"90", 28_in}, {"180", 28_in}, {"270", 28_in}}) {
    TrailerText turned = text;
    turned.day[0].insert(turned.day[0].size() - 1, std::string(R"(, "turn": ")") + turn + '"');
    EXPECT_EQ(Answered(turned).one("heat.data-plate").margin, margin) << turn;
  }
}

TEST(HeatDistances, CurtainsBurnToo) {
  TrailerText text = heater_and_cushion("150", "100");
  text.fixtures = {R"({"id": "drape", "kind": "curtain", "length": 1, "width": 20,
                       "at": {"front": 90, "left": 60}, "base": 5, "top": 40})"};
  const Answered made(text);
  const Finding finding = made.one("heat.three-feet", "curtain");
  EXPECT_EQ(finding.measured, Quantity(20_in));
  EXPECT_EQ(made.one("heat.three-feet", "cushion").status, Status::met);
}

// A heater by a bed: 40 in from the bare cushion, 2 in less from the overhang, both at the bed's own height.
TrailerText heater_and_bed(const std::string& plate) {
  TrailerText text = heater_and_cushion("110", "55");
  text.pieces[0].insert(text.pieces[0].size() - 1, plate);
  text.night = text.day;
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["C"]})"};
  return text;
}

TEST(HeatDistances, MadeUpBeddingIsNearerThanBare) {
  const Answered made(heater_and_bed(""));
  const auto& heat = made.answer.configurations[1].heat;
  ASSERT_EQ(heat.size(), 2U);
  EXPECT_FALSE(heat[0].made_up);
  EXPECT_TRUE(heat[1].made_up);
  EXPECT_EQ(heat[0].distance, 40_in);
  EXPECT_EQ(heat[1].distance, 38_in);
  EXPECT_EQ(made.of("heat.three-feet", "bare").size(), 1U);
  EXPECT_EQ(made.one("heat.three-feet", "made up").bed, BedId("bed"));
  EXPECT_EQ(made.of("heat.three-feet", "cushion").size(), 1U);  // by day it is no bed
}

TEST(HeatDistances, AtNightThePortableHeaterIsStowed) {
  TrailerText text = heater_and_bed("");
  text.night[1] = R"({"piece": "C", "at": {"front": 100, "left": 55}, "base": 0})";
  const Answered made(text);
  EXPECT_EQ(made.one("heat.three-feet", "made up").cure, (Cure{Cure::Kind::stow_heater, "H", {}}));
}

TEST(HeatDistances, ThePlateIsComparedFaceByFace) {
  // Bare 40 in, made up 38 in before the front: 39 in asked, so 1 in to spare and 1 in short.
  const Answered made(heater_and_bed(R"(, "data_plate": {"front": 39, "back": 1, "sides": 1, "top": 1})"));
  const auto nights = [&](const char* variant) {
    for (const Finding& f : made.of("heat.data-plate", variant))
      if (f.configuration.text() == "night") return f;
    return Finding{};
  };
  EXPECT_EQ(nights("bare").status, Status::met);
  EXPECT_EQ(nights("bare").margin, 1_in);
  EXPECT_EQ(nights("made up").status, Status::not_met);
  EXPECT_EQ(nights("made up").margin, -1_in);
  EXPECT_EQ(nights("made up").source.kind, Source::Kind::maker);
}

TEST(HeatDistances, AFaceThePlateLacksIsUnknownUnlessAnotherFails) {
  const Answered unknown(heater_and_bed(R"(, "data_plate": {"front": 12, "back": 1, "sides": 1})"));
  // The cushion is 4 in high and stands below the heater's top: nothing lies before that face.
  EXPECT_EQ(unknown.of("heat.data-plate-missing").size(), 0U);
  const Answered no_front(heater_and_bed(R"(, "data_plate": {"back": 1, "sides": 1, "top": 1})"));
  const Finding finding = no_front.one("heat.data-plate", "made up");
  EXPECT_EQ(finding.status, Status::unknown);
  EXPECT_EQ(finding.cure, (Cure{Cure::Kind::state_plate, "H", {}}));
  EXPECT_FALSE(no_front.of("heat.data-plate-missing").empty());
  TrailerText no_bed = heater_and_cushion("150", "55");
  no_bed.pieces[0].insert(no_bed.pieces[0].size() - 1,
                          R"(, "data_plate": {"back": 1, "sides": 1, "top": 1})");
  EXPECT_EQ(exit_code(Answered(no_bed).answer), 2);
  const Answered fails(heater_and_bed(R"(, "data_plate": {"front": 60, "back": 1, "top": 1})"));
  EXPECT_EQ(fails.one("heat.data-plate", "made up").status, Status::not_met);
}

// The cushion behind stands nearer, 10 in off, but the back asks for 4 only; the one before the front stands
// 30 in off where 36 are asked: the least distance and the least margin belong to different cushions.
TEST(HeatDistances, OfSeveralThingsTheWorstIsNamed) {
  TrailerText text = heater_and_cushion("100", "55");
  text.pieces[0].insert(text.pieces[0].size() - 1,
                        R"(, "data_plate": {"front": 36, "back": 4, "sides": 4, "top": 4})");
  text.pieces.push_back(R"({"id": "D", "kind": "cushion", "length": 20, "width": 20, "thickness": 4})");
  text.day.push_back(R"({"piece": "D", "at": {"front": 30, "left": 55}, "base": 0})");
  const Answered made(text);
  EXPECT_EQ(made.one("heat.three-feet").subjects, (std::vector<std::string>{"H", "D"}));
  EXPECT_EQ(made.one("heat.three-feet").measured, Quantity(10_in));
  EXPECT_EQ(made.one("heat.data-plate").subjects, (std::vector<std::string>{"H", "C"}));
  EXPECT_EQ(made.one("heat.data-plate").margin, -6_in);
  // What is broken weighs more than what is unknown, and that more than what is met.
  const auto without = [&](const std::string& face) {
    TrailerText changed = text;
    changed.pieces[0].erase(changed.pieces[0].find(face), face.size());
    return Answered(changed).one("heat.data-plate");
  };
  EXPECT_EQ(without(R"(, "back": 4)").status, Status::not_met);
  EXPECT_EQ(without(R"("front": 36, )").status, Status::unknown);
  EXPECT_EQ(without(R"("front": 36, )").subjects, (std::vector<std::string>{"H", "C"}));
}

TEST(HeatDistances, WithoutAPlateAHeaterHasThreeFeetAndACooktopNothing) {
  const Answered heater(heater_and_cushion("150", "55"));
  const Finding missing = heater.one("heat.data-plate-missing");
  EXPECT_EQ(missing.status, Status::unknown);
  EXPECT_EQ(missing.cure, (Cure{Cure::Kind::state_plate, "H", {}}));
  EXPECT_TRUE(heater.of("heat.data-plate").empty());
  EXPECT_EQ(exit_code(heater.answer), 0);

  TrailerText text = heater_and_cushion("150", "55");
  text.fixtures = {R"({"id": "hob", "kind": "cooktop", "length": 18, "width": 16, "faces": "right",
                       "at": {"front": 0, "left": 0}, "base": 30, "top": 34})"};
  const Answered cooktop(text);
  const Finding unknown = cooktop.one("heat.data-plate");
  EXPECT_EQ(unknown.status, Status::unknown);
  EXPECT_EQ(unknown.subjects, (std::vector<std::string>{"hob", "C"}));
  EXPECT_EQ(cooktop.of("heat.three-feet").size(), 1U);
  EXPECT_EQ(exit_code(cooktop.answer), 2);
}

TEST(HeatDistances, ABuiltInHeaterCannotBeStowed) {
  TrailerText text = heater_and_bed("");
  text.fixtures = {R"({"id": "wall heater", "kind": "heater", "length": 10, "width": 4, "faces": "left",
                       "at": {"front": 110, "right": 30}, "base": 0, "top": 20})"};
  const Answered made(text);
  std::vector<Finding> built_in = made.of("heat.three-feet", "bare");
  std::erase_if(built_in, [](const Finding& f) { return f.subjects.front() != "wall heater"; });
  // 140 - 30 - 4 = 106 in from the left, the cushion ends at 75: 31 in, 5 short.
  ASSERT_EQ(built_in.size(), 1U);
  EXPECT_EQ(built_in[0].measured, Quantity(31_in));
  EXPECT_EQ(built_in[0].cure, (Cure{Cure::Kind::move_apart, "wall heater", 5_in}));
}

}  // namespace
}  // namespace berthwright

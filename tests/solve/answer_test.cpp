#include <berthwright/solve/answer.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

#include "support/board_trailers.h"
#include "support/cord_trailers.h"
#include "support/every_status.h"
#include "support/seat_trailers.h"
#include "support/small_bunks.h"
#include "support/small_trailers.h"
#include "support/way_trailers.h"

namespace berthwright {
namespace {

// In a message a list of names is cut; a line is not.
std::string in_a_row(const std::vector<std::string>& names) {
  std::string row;
  for (const std::string& name : names) row += (row.empty() ? "" : ", ") + name;
  return row;
}

TEST(Answer, OnlyAlertsChangeTheExitCode) {
  const auto code = [](std::vector<std::pair<const char*, Status>> entries) {
    Answer answer;
    for (const auto& [rule, status] : entries) {
      Finding finding;
      finding.rule = RuleId(rule);
      finding.status = status;
      answer.findings.push_back(finding);
    }
    return exit_code(answer);
  };
  EXPECT_EQ(code({}), 0);
  EXPECT_EQ(code({{"heat.three-feet", Status::met}, {"room.inside", Status::close}}), 0);
  EXPECT_EQ(code({{"bed.ridge", Status::not_met}, {"bed.area", Status::unknown}}), 0);
  EXPECT_EQ(code({{"heat.data-plate", Status::unknown}, {"bed.ridge", Status::not_met}}), 2);
  EXPECT_EQ(code({{"heat.data-plate", Status::unknown}, {"room.inside", Status::not_met}}), 1);
}

TEST(Answer, CollectsTheFaultsOfAllConfigurations) {
  TrailerText text = two_benches("0", "14");
  const std::string in_the_air = R"({"piece": "H", "at": {"front": 100, "left": 60}, "on": "left bench"})";
  text.day = {in_the_air};
  text.night.push_back(in_the_air);
  const Plan plan = text.plan();
  EXPECT_EQ(answered(plan).problems().size(), 2U);
}

// Everything but the place of a finding, which a mirror or a shift must move.
std::vector<std::string> without_places(const Answer& answer) {
  std::vector<std::string> lines;
  for (const Finding& f : answer.findings) {
    std::string line = f.rule.text() + '|' + f.configuration.text() + '|' + f.bed.text() + '|' + f.variant +
                       '|' + std::to_string(static_cast<int>(f.status));
    for (const std::string& subject : f.subjects) line += '|' + subject;
    if (f.margin) line += "|margin " + std::to_string(f.margin->ticks());
    if (f.measured && std::holds_alternative<Length>(*f.measured))
      line += "|length " + std::to_string(std::get<Length>(*f.measured).ticks());
    if (f.cure) line += "|cure " + f.cure->subject + ' ' + std::to_string(f.cure->by.ticks());
    lines.push_back(line);
  }
  return lines;
}

// A trailer drawn at random: a bed on an island, cabinets around it, two heaters, a cooktop, a curtain.
TrailerText random_trailer(unsigned seed, int shift) {
  std::mt19937 random(seed);
  const auto draw = [&](int low, int high) {
    return std::to_string(std::uniform_int_distribution<int>(low, high)(random));
  };
  const auto place = [&](int low, int high) {
    return R"("at": {"front": )" + std::to_string(std::stoi(draw(low, high)) + shift) + R"(, "left": )" +
           std::to_string(std::stoi(draw(10, 60)) + shift) + "}";
  };
  TrailerText text;
  text.interior = R"({"length": 300, "width": 120, "height": 90})";
  const std::string bed_place = R"("at": {"front": )" + std::to_string(100 + shift) + R"(, "left": )" +
                                std::to_string(20 + shift) + "}";
  text.fixtures = {
      R"({"id": "bench", "kind": "bench", "length": 76, "width": 40, )" + bed_place + R"(, "top": 14})",
      R"({"id": "chest", "kind": "cabinet", "length": 12, "width": 10, )" + place(177, 185) + R"(, "top": )" +
          draw(5, 30) + "}",
      R"({"id": "hob", "kind": "cooktop", "length": 18, "width": 16, "faces": "right", )" + place(200, 220) +
          R"(, "base": 30, "top": 34, "data_plate": {"front": 2, "sides": )" + draw(4, 60) +
          R"(, "top": 30}})",
      R"({"id": "drape", "kind": "curtain", "length": 1, "width": 20, )" + place(230, 240) +
          R"(, "base": 5, "top": 40})"};
  text.pieces = {R"({"id": "A", "kind": "cushion", "length": 76, "width": 40, "thickness": 4})",
                 R"({"id": "B", "kind": "bolster", "length": 8, "width": 20, "thickness": 8})",
                 R"({"id": "H", "kind": "heater", "length": 8, "width": 10, "height": 15, "faces": "left",
                     "data_plate": {"front": )" +
                     draw(10, 60) + R"(, "back": 12, "sides": )" + draw(5, 40) + R"(, "top": 36}})",
                 R"({"id": "K", "kind": "heater", "length": 8, "width": 10, "height": 15, "faces": "rear"})"};
  const std::string cushion = R"({"piece": "A", )" + bed_place + R"(, "on": "bench"})";
  const std::string bolster = R"({"piece": "B", )" + place(20, 40) + R"(, "on": "floor"})";
  const std::string heater = R"({"piece": "H", )" + place(50, 80) + R"(, "on": "floor"})";
  text.day = {cushion, bolster, heater, R"({"piece": "K", )" + place(200, 250) + R"(, "base": 45})"};
  text.night = {cushion, bolster, heater};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A"],
                   "people": [{"name": "Ada", "stature": "5 ft 7"}]})"};
  return text;
}

TEST(Answer, IsTheSameInTheMirror) {
  for (unsigned seed = 0; seed < 6; ++seed) {
    SCOPED_TRACE(seed);
    const TrailerText text = random_trailer(seed, 0);
    EXPECT_EQ(without_places(Answered(text).answer), without_places(Answered(text.mirrored()).answer));
  }
}

TEST(Answer, IsTheSameSomewhereElse) {
  for (unsigned seed = 0; seed < 6; ++seed) {
    SCOPED_TRACE(seed);
    EXPECT_EQ(without_places(Answered(random_trailer(seed, 0)).answer),
              without_places(Answered(random_trailer(seed, 7)).answer));
  }
}

TEST(Answer, DoesNotDependOnTheOrderOfThePlan) {
  for (unsigned seed = 0; seed < 4; ++seed) {
    SCOPED_TRACE(seed);
    TrailerText text = random_trailer(seed, 0);
    const auto expected = without_places(Answered(text).answer);
    std::mt19937 random(seed);
    std::ranges::shuffle(text.fixtures, random);
    std::ranges::shuffle(text.pieces, random);
    std::ranges::shuffle(text.day, random);
    std::ranges::shuffle(text.night, random);
    EXPECT_EQ(without_places(Answered(text).answer), expected);
  }
}

TEST(Answer, EveryRuleIsProducedBySomePlan) {
  std::set<std::string> produced;
  const auto note = [&](const TrailerText& text) {
    for (const Finding& f : Answered(text).answer.findings) produced.insert(f.rule.text());
  };
  note(random_trailer(1, 0));
  TrailerText off_the_wall = two_benches("1", "14 1/4");
  off_the_wall.fixtures.push_back(R"({"id": "wall", "kind": "wall", "length": 75, "width": 2,
                                      "at": {"front": 0, "right_of": ["right bench", 2]}, "top": 76})");
  off_the_wall.pieces[0].insert(1, R"("foam": "2535", )");
  note(off_the_wall);
  note(board_between_benches({.right_ledge = "12.797"}));
  note(board_between_benches({.ledge_length = "36"}));
  note(cushion_on_two_benches("13 1/2"));
  note(table_on_the_bed());
  for (const TrailerText& text : seats_of_every_status()) note(text);
  for (const TrailerText& text : plans_of_sleepers()) note(text);
  TrailerText opening = what_opens("6");
  note(opening);
  opening.road = {
      R"({"piece": "M", "at": {"rear": 0, "left": 0}, "stands_on": "length", "faces": "right", "on": "bench"})",
      opening.day[1]};
  note(opening);
  for (const TrailerText& text : ways_of_every_status()) note(text);
  for (const TrailerText& text : cords_of_every_status()) note(text);
  for (const char* panel : {"", R"("panel": "48/24", "grain": "width", )"}) {
    TrailerText board = board_between_benches();
    board.pieces.front().insert(1, panel);
    note(board);
  }
  std::vector<std::string> never;
  for (const Rule& rule : all_rules())
    if (!produced.contains(rule.id.text())) never.push_back(rule.id.text());
  EXPECT_EQ(in_a_row(never), "");
  EXPECT_LE(produced.size(), all_rules().size());
}

TEST(Answer, EveryRuleComesInEveryStatusThatMakesSense) {
  const std::string met = "met ", close = "close ", not_met = "not met ", unknown = "unknown ";
  std::set<std::string> expected;
  const auto expect = [&](std::vector<std::string> rules, std::vector<std::string> statuses) {
    for (const std::string& rule : rules)
      for (const std::string& status : statuses) expected.insert(status + rule);
  };
  expect({"room.inside", "room.overlap", "bed.gap", "bed.wall-gap", "bed.ridge", "bed.berth-width",
          "bed.berth-length", "bed.vessel-length", "bed.clear-height", "bed.access-aid", "bed.guard-rail",
          "bed.person-length", "bed.person-width", "heat.three-feet", "heat.data-plate"},
         {met, close, not_met});
  expect({"support.bearing", "support.two-heights"}, {close, not_met});
  expect({"support.bearing", "support.flush", "support.rests", "support.tipping", "support.unsupported",
          "bed.laid-upon"},
         {met, not_met});
  expect({"support.span", "support.free-edge"}, {met});
  expect({"support.fastening"}, {unknown});
  expect({"bed.dropped-piece", "bed.named-size", "foam.thickness", "foam.firmness"}, {met, not_met});
  expect({"bed.size", "bed.area", "bed.fits-people", "heat.stowed"}, {met});
  // Of two limits of one measure only one is told; a table at ease over the thighs is told as room for them.
  expect(
      {"seat.low", "seat.high", "seat.shallow", "seat.deep", "seat.low-back", "seat.high-back", "seat.people",
       "seat.head-room", "seat.way-in", "seat.thigh-room", "seat.knee-height", "seat.knee-depth",
       "seat.table-over", "seat.table-away", "knock.sitting", "knock.elbow", "knock.lying"},
      {met, not_met});
  expect({"seat.low-table", "seat.high-table"}, {not_met});
  expect({"seat.people"}, {close});
  expect({"seat.shallow"}, {unknown});
  expect({"bed.rail-closed-side", "bed.rail-opening", "bed.rail-height"}, {met, not_met});
  expect({"bed.side-by-side", "bed.head-to-foot"}, {met, not_met, unknown});
  expect({"bed.no-cushion"}, {not_met});
  expect({"bed.size", "bed.area", "bed.fits-people", "bed.overhead", "bed.sitting-up", "heat.stowed"}, {met});
  expect({"bed.person-length", "foam.grade", "heat.data-plate", "heat.data-plate-missing"}, {unknown});
  expect({"alarm.below-ceiling", "alarm.cooking", "alarm.covered", "alarm.dead-air", "alarm.gas-height",
          "strength.knee", "strength.thickness", "way.dwelling-window", "way.none", "way.second"},
         {met, not_met});
  expect({"alarm.co", "alarm.gas", "alarm.smoke"}, {met, unknown});
  expect({"alarm.inside-wall", "strength.sag", "way.opening"}, {met, not_met, unknown});
  expect({"strength.knee-sag", "strength.ledge"}, {met});
  expect({"strength.load"}, {close, met, not_met, unknown});
  expect({"strength.panel", "way.not-stated"}, {unknown});
  expect({"way.aisle", "way.sill"}, {close, met, not_met});
  expect({"way.swing"}, {not_met, unknown});
  expect({"cord.reach", "cord.plug-room", "cord.outlet-faces"}, {met, close, not_met, unknown});
  expect({"cord.under-bedding", "cord.walkway"}, {met, not_met});
  expect({"cord.not-given"}, {unknown});
  expect({"heat.also-three-feet"}, {met, close, not_met});
  expect({"heat.shield"}, {met});
  expect({"leaf.opens"}, {met, close, not_met, unknown});
  expect({"leaf.opens-by-bed"}, {close, not_met});
  expect({"bed.bedding-locker"}, {met, not_met, unknown});
  expect({"leaf.under-pieces", "road.hold"}, {met});
  expect({"road.hold", "road.on-edge", "road.heater", "road.unchecked"}, {unknown});
  std::set<std::string> produced;
  for (const auto& made : answers_of_every_status())
    for (const Finding& f : made->answer.findings)
      produced.insert((f.status == Status::met       ? met
                       : f.status == Status::close   ? close
                       : f.status == Status::unknown ? unknown
                                                     : not_met) +
                      f.rule.text());
  std::vector<std::string> missing, surprising;
  std::ranges::set_difference(expected, produced, std::back_inserter(missing));
  std::ranges::set_difference(produced, expected, std::back_inserter(surprising));
  EXPECT_EQ(in_a_row(missing), "");
  EXPECT_EQ(in_a_row(surprising), "");
}

TEST(Answer, ABedOfABareBoardHasNoRoomToLie) {
  TrailerText text = bunk("75", "24", "10", "11");
  text.pieces = {R"({"id": "M", "kind": "board", "length": 75, "width": 24, "thickness": 1})"};
  const Answered made(text);
  EXPECT_EQ(made.one("bed.area").measured, Quantity(Area{}));
  EXPECT_EQ(made.one("bed.berth-width").status, Status::not_met);
  EXPECT_TRUE(made.of("bed.gap").empty());
  EXPECT_TRUE(made.of("bed.guard-rail").empty());
}

}  // namespace
}  // namespace berthwright

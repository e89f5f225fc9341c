#include <berthwright/solve/worst_case.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

#include <berthwright/solve/answer.h>

#include "solve/tape_trial.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

TapedPlan tape_of(const std::string& text) {
  Result<TapedPlan> read = TapedPlan::read(text);
  if (!read) throw std::logic_error(listed(read.problems()));
  return std::move(read).value();
}

/// Cushions in a row across a room on a bench from wall to wall. All but the last are laid from `from`, one
/// against the other, the last from the other wall, `gap` away from them.
struct ClosingRow {
  std::vector<std::string> widths;
  std::string room;
  std::string tape = "{}";
  std::string from = "left";
  bool reversed = false;  ///< pieces are listed the other way round
};
std::string text_of_row(const ClosingRow& row) {
  std::vector<std::string> pieces;
  std::vector<std::string> poses;
  std::string ids;
  std::int64_t at = 0;
  for (std::size_t i = 0; i < row.widths.size(); ++i) {
    const std::string id(1, static_cast<char>('A' + i));
    ids += (ids.empty() ? "\"" : ", \"") + id + "\"";
    pieces.push_back(R"({"id": ")" + id + R"(", "kind": "cushion", "length": "38", "width": ")" +
                     row.widths[i] + R"(", "thickness": "4"})");
    const bool last = i + 1 == row.widths.size();
    const std::string other = row.from == "left" ? "right" : "left";
    const std::string place =
        last ? "\"" + other + "\": \"0\"" : "\"" + row.from + "\": \"" + std::to_string(at) + "\"";
    poses.push_back(R"({"piece": ")" + id + R"(", "at": {"front": "0", )" + place + "}}");
    at += std::stoll(row.widths[i]);
  }
  if (row.reversed) std::ranges::reverse(pieces), std::ranges::reverse(poses);
  const auto listed_up = [](const std::vector<std::string>& parts) {
    std::string text;
    for (const std::string& part : parts) text += (text.empty() ? "" : ",\n") + part;
    return text;
  };
  return R"({"berthwright": 1, "title": "Row", "unit": "in",
"interior": {"length": "100", "width": ")" +
         row.room + R"(", "height": "72"},
"openings": [{"id": "window", "kind": "window", "wall": "front", "from_left": "10", "width": "30", "height": "20", "sill": "35", "escape": true}],
"fixtures": [{"id": "bench", "kind": "bench", "length": "38", "width": ")" +
         row.room + R"(", "at": {"front": "0", "left": "0"}, "top": "14"}],
"pieces": [)" +
         listed_up(pieces) +
         R"(],
"configurations": {"night": [)" +
         listed_up(poses) + R"(]},
"beds": [{"id": "bed", "configuration": "night", "pieces": [)" +
         ids + R"(]}],
"tape": )" +
         row.tape + "}";
}

const WorstCase& case_of(const WorstCases& worst, const std::string& rule) {
  const auto found = std::ranges::find_if(
      worst.cases, [&](const WorstCase& one) { return one.written.rule.text() == rule; });
  if (found == worst.cases.end()) throw std::logic_error("no finding of " + rule);
  return *found;
}

const Decider& decider_of(const TapedPlan& plan, const WorstCase& one, const std::string& measure) {
  const auto found = std::ranges::find_if(
      one.deciders, [&](const Decider& decider) { return plan.measures()[decider.measure].name == measure; });
  if (found == one.deciders.end()) throw std::logic_error(measure + " decides nothing");
  return *found;
}

/// Only the room across and the widths of so many cushions may be off; `more` measures follow.
std::string only_widths(int cushions, const std::string& more = "") {
  std::string measures;
  for (int i = 0; i < cushions; ++i)
    measures +=
        std::string(R"(, {"measure": ")") + static_cast<char>('A' + i) + R"(/width", "tolerance": "1/8"})";
  return R"({"tolerances": {"walls": "0", "openings": "0", "fixtures": "0", "cushions": "0", "boards": "0"},
"measures": [)" +
         (more.empty() ? R"({"measure": "interior/width", "tolerance": "1/4"})" : more) + measures + "]}";
}

constexpr Length eighth = Length::inches(1, 8);

TEST(WorstCase, AChainOfPiecesIsOffByTheSumOfItsTolerances) {
  // Three of 20 in in a room of 60 1/2 in leave 1/2 in; asked at most 1 in. Worst: 1/2 + 3 × 1/8 + 1/4 = 1
  // 1/8, which is 1/8 in too much. Root of the squares: √(3 × 1/64 + 1/16) in = √7 eighths = 2.64575 ×
  // 127,000 ticks = 336,010.4 ticks.
  const TapedPlan plan = tape_of(text_of_row({{"20", "20", "20"}, "60 1/2", only_widths(3)}));
  const WorstCases worst = worst_cases(plan).value();
  const WorstCase& gap = case_of(worst, "bed.gap");
  EXPECT_EQ(gap.written.margin, Length::inches(1, 2));
  EXPECT_EQ(gap.standing, TapeStanding::turns);
  EXPECT_EQ(gap.at_worst.margin, -eighth);
  EXPECT_EQ(gap.at_worst.status, Status::not_met);
  EXPECT_TRUE(gap.adds_up);
  ASSERT_EQ(gap.deciders.size(), 4U);
  EXPECT_EQ(plan.measures()[gap.deciders.front().measure].name, "interior/width");
  EXPECT_EQ(gap.deciders.front().effect, 2 * eighth);
  EXPECT_TRUE(gap.deciders.front().longer);
  EXPECT_FALSE(gap.deciders.front().turns);
  EXPECT_EQ(decider_of(plan, gap, "B/width").effect, eighth);
  EXPECT_FALSE(decider_of(plan, gap, "B/width").longer);
  EXPECT_EQ(root_of_squares(gap.deciders), Length::from_ticks(336'010));
  ASSERT_EQ(worst.again.size(), 4U);
  EXPECT_EQ(plan.measures()[worst.again.front().measure].name, "interior/width");
  EXPECT_EQ(worst.again.front().findings, 1U);
}

TEST(WorstCase, AChainWithRoomToSpareHoldsAndSaysItIsNoProof) {
  // 1/4 + 2 × 1/8 + 1/4 = 3/4 in of at most 1 in.
  const TapedPlan plan = tape_of(text_of_row({{"20", "20"}, "40 1/4", only_widths(2)}));
  const WorstCases worst = worst_cases(plan).value();
  const WorstCase& gap = case_of(worst, "bed.gap");
  EXPECT_EQ(gap.standing, TapeStanding::looked_at);
  EXPECT_EQ(gap.at_worst.margin, Length::inches(1, 4));
  EXPECT_TRUE(worst.again.empty());
}

/// A heater whose plate says how far its front, back and top, and nothing of its sides; `tape` measure is off
/// by 1/8 in, all else is true.
std::string text_with_half_a_plate(const std::string& front, const std::string& at,
                                   const std::string& measure) {
  return R"({"berthwright": 1, "title": "Plate", "unit": "in",
"interior": {"length": "120", "width": "72", "height": "72"},
"fixtures": [{"id": "bench", "kind": "bench", "length": "20", "width": "8", "at": {"front": "80", "left": "30"}, "top": "6"}],
"pieces": [{"id": "A", "kind": "cushion", "length": "20", "width": "8", "thickness": "4"},
 {"id": "heater", "kind": "heater", "length": "7", "width": "8.125", "height": "16", "faces": "rear",
  "data_plate": {"front": ")" +
         front + R"(", "back": "6", "top": "24"}}],
"configurations": {"day": [{"piece": "A", "at": {"front": "80", "left": "30"}},
 {"piece": "heater", "at": )" +
         at + R"(, "state": "running"}]},
"tape": {"tolerances": {"walls": "0", "openings": "0", "fixtures": "0", "cushions": "0", "boards": "0", "places": "0"},
 "measures": [{"measure": "day/heater/)" +
         measure + R"(", "tolerance": "1/8"}]}})";
}

// The cushion from 30 to 38 in lies wholly before the front of the heater from 29 15/16 to 38 1/16; 1/8 in to
// the left its end at 37 15/16 leaves a strip before the side, of which the plate says nothing.
TEST(WorstCase, WhatMayBecomeUnknownIsNotToldToHold) {
  const WorstCases worst =
      worst_cases(tape_of(text_with_half_a_plate("36", R"({"front": "10", "left": "29.9375"})", "left")))
          .value();
  const WorstCase& plate = case_of(worst, "heat.data-plate");
  EXPECT_EQ(plate.written.status, Status::met);
  EXPECT_EQ(plate.standing, TapeStanding::turns);
  EXPECT_EQ(plate.at_worst.status, Status::unknown);
  ASSERT_EQ(plate.deciders.size(), 1U);
  ASSERT_TRUE(plate.deciders.front().turns);
  EXPECT_FALSE(plate.deciders.front().longer);
  EXPECT_EQ(
      plate.deciders.front().turns->holds - plate.deciders.front().turns->turned <= Length::inches(1, 64),
      true);
  EXPECT_EQ(exit_code(worst), 2);
}

// 80 - 33 - 7 = 40 in before the front, asked 40: exactly kept, with the sides unknown. Any longer it is
// short.
TEST(WorstCase, WhatIsUnknownMayTurnOutNotMet) {
  const WorstCases worst =
      worst_cases(tape_of(text_with_half_a_plate("40", R"({"front": "33", "left": "25"})", "front"))).value();
  const WorstCase& plate = case_of(worst, "heat.data-plate");
  EXPECT_EQ(plate.written.status, Status::unknown);
  EXPECT_EQ(plate.standing, TapeStanding::turns);
  EXPECT_EQ(plate.at_worst.status, Status::not_met);
  EXPECT_EQ(plate.at_worst.margin, -eighth);
  EXPECT_EQ(exit_code(worst), 1);
}

TEST(WorstCase, FindsTheTickAtWhichAnEvenFigureTurns) {
  // 7/8 in of at most 1 in: the room alone turns it beyond 60 7/8 + 1/8, a cushion of 20 in only at its end.
  const TapedPlan plan = tape_of(text_of_row({{"20", "20", "20"}, "60 7/8", only_widths(3)}));
  const WorstCases worst = worst_cases(plan).value();
  const WorstCase& gap = case_of(worst, "bed.gap");
  const Decider& room = decider_of(plan, gap, "interior/width");
  ASSERT_TRUE(room.turns);
  EXPECT_EQ(room.turns->holds, 61_in);
  EXPECT_EQ(room.turns->turned, 61_in + one_tick);
  EXPECT_FALSE(decider_of(plan, gap, "A/width").turns);
}

TEST(WorstCase, ASillAloneIsProvenOrTurnsAtItsLimit) {
  // Rule way.sill asks at most 36 in.
  const auto with_sill = [](const std::string& sill) {
    std::string text = text_of_row({{"20", "20"}, "40", R"({"tolerances": {"walls": "0", "fixtures": "0",
"cushions": "0", "boards": "0"}})"});
    text.replace(text.find(R"("sill": "35")"), 12, R"("sill": ")" + sill + "\"");
    return tape_of(text);
  };
  EXPECT_EQ(case_of(worst_cases(with_sill("35")).value(), "way.sill").standing, TapeStanding::proven);
  EXPECT_EQ(case_of(worst_cases(with_sill("38")).value(), "way.sill").standing, TapeStanding::proven);
  const TapedPlan near = with_sill("35 15/16");
  const WorstCases worst = worst_cases(near).value();
  const WorstCase& sill = case_of(worst, "way.sill");
  EXPECT_EQ(sill.standing, TapeStanding::turns);
  ASSERT_EQ(sill.deciders.size(), 1U);
  EXPECT_EQ(sill.deciders.front().turns, (TurnsBetween{36_in, 36_in + one_tick}));
  EXPECT_EQ(sill.moved,
            (std::vector<MovedMeasure>{{sill.deciders.front().measure, 36_in + Length::inches(1, 16)}}));
  // What is not met turns the other way: 36 1/16 in comes down to 36 in.
  const TapedPlan over = with_sill("36 1/16");
  const WorstCases better = worst_cases(over).value();
  const WorstCase& high = case_of(better, "way.sill");
  EXPECT_EQ(high.standing, TapeStanding::turns);
  ASSERT_TRUE(high.deciders.front().turns);
  EXPECT_EQ(*high.deciders.front().turns, (TurnsBetween{36_in + one_tick, 36_in}));
  EXPECT_TRUE(is_fine(high.at_worst.status));
}

TEST(WorstCase, NothingTurnsWhereNothingMayBeOff) {
  const WorstCases worst =
      worst_cases(tape_of(text_of_row({{"20", "20"}, "41", R"({"tolerances": {"walls": "0",
"openings": "0", "fixtures": "0", "cushions": "0", "boards": "0"}})"})))
          .value();
  EXPECT_EQ(worst.looked_at, 0U);
  EXPECT_EQ(worst.loose, 0U);
  EXPECT_TRUE(worst.again.empty());
  for (const WorstCase& one : worst.cases) {
    EXPECT_NE(one.standing, TapeStanding::turns) << one.written.rule.text();
    EXPECT_EQ(one.at_worst.margin, one.written.margin);
    EXPECT_TRUE(one.moved.empty() && one.deciders.empty());
  }
}

TEST(WorstCase, HugeTolerancesThatMakeNoPlanAreTold) {
  // A window from 10 in to 40 in along a wall of 40 in does not fit once it begins 6 in farther on.
  const TapedPlan plan =
      tape_of(text_of_row({{"20", "20"}, "40", R"({"tolerances": {"walls": "0", "openings": "0",
"fixtures": "0", "cushions": "0", "boards": "0"},
"measures": [{"measure": "window/sill", "tolerance": "6"}, {"measure": "window/from_left", "tolerance": "6"}]})"}));
  const WorstCases worst = worst_cases(plan).value();
  EXPECT_EQ(worst.loose, 2U);
  ASSERT_EQ(worst.untried.size(), 1U);
  EXPECT_EQ(plan.measures()[worst.untried.front().moved.measure].name, "window/from_left");
  EXPECT_EQ(worst.untried.front().moved.to, 16_in);
  EXPECT_FALSE(worst.untried.front().reason.empty());
  EXPECT_EQ(worst.not_stood_up, 1U);  // all long
  EXPECT_EQ(case_of(worst, "way.sill").standing, TapeStanding::turns);
}

TEST(WorstCase, AMeasureThatWasCheckedIsNotAskedForAgain) {
  const std::string tape =
      only_widths(3, R"({"measure": "interior/width", "state": "checked", "tolerance": "1/4"})");
  const TapedPlan plan = tape_of(text_of_row({{"20", "20", "20"}, "60 1/2", tape}));
  const WorstCases worst = worst_cases(plan).value();
  EXPECT_EQ(case_of(worst, "bed.gap").standing, TapeStanding::turns);
  ASSERT_EQ(worst.again.size(), 3U);
  for (const TakeAgain& one : worst.again) EXPECT_TRUE(plan.measures()[one.measure].name.ends_with("/width"));
}

struct GapFigures {
  TapeStanding standing;
  std::optional<Length> margin;
  std::vector<Length> effects;
  friend bool operator==(const GapFigures&, const GapFigures&) = default;
};
GapFigures figures_of(const ClosingRow& row) {
  const WorstCases worst = worst_cases(tape_of(text_of_row(row))).value();
  const WorstCase& gap = case_of(worst, "bed.gap");
  GapFigures figures{gap.standing, gap.at_worst.margin, {}};
  for (const Decider& one : gap.deciders) figures.effects.push_back(one.effect);
  return figures;
}

TEST(WorstCase, DoesNotCareAboutMirrorsAndOrder) {
  const GapFigures as_it_is = figures_of({{"20", "22", "18"}, "60 1/2", only_widths(3)});
  EXPECT_EQ(as_it_is.standing, TapeStanding::turns);
  EXPECT_EQ(figures_of({{"20", "22", "18"}, "60 1/2", only_widths(3), "right"}), as_it_is);
  EXPECT_EQ(figures_of({{"20", "22", "18"}, "60 1/2", only_widths(3), "left", true}), as_it_is);
}

/// Every plan of a grid in the box of tolerances, `steps` + 1 values a measure.
std::vector<std::vector<Length>> grid_of(const TapedPlan& plan, std::int64_t steps) {
  std::vector<std::vector<Length>> all(1);
  for (const TapeMeasure& one : plan.measures()) {
    std::vector<std::vector<Length>> wider;
    const std::int64_t count = one.tolerance > Length{} ? steps : 0;
    for (const std::vector<Length>& lengths : all)
      for (std::int64_t k = 0; k <= count; ++k) {
        wider.push_back(lengths);
        const std::int64_t off = count == 0 ? 0 : one.tolerance.ticks() * (2 * k - count) / count;
        wider.back().push_back(one.length + Length::from_ticks(off));
      }
    all = std::move(wider);
  }
  return all;
}

TEST(WorstCase, MissesNoTurnThatDenseSamplesFind) {
  // 8/16 + 2 × 1/8 + 1/4 is just 1 in, the limit, and 9/16 beyond it. The slow twin stands up the whole grid
  // and asks the check alone.
  std::size_t turned_in_samples = 0;
  for (const int sixteenths : {8, 9}) {
    SCOPED_TRACE(sixteenths);
    const std::string room = "40 " + std::to_string(sixteenths) + "/16";
    const TapedPlan plan = tape_of(text_of_row({{"20", "20"}, room, only_widths(2)}));
    const WorstCases worst = worst_cases(plan).value();
    std::vector<std::vector<Finding>> sampled;
    for (const std::vector<Length>& lengths : grid_of(plan, 2))
      sampled.push_back(answered(plan.made_from(lengths).value()).value().findings);
    EXPECT_EQ(sampled.size(), 27U);
    for (const WorstCase& one : worst.cases) {
      if (one.written.rule.text() != "bed.gap" && one.standing != TapeStanding::proven) continue;
      bool turned = false;
      for (const std::vector<Finding>& findings : sampled) {
        const auto same = std::ranges::find_if(
            findings, [&](const Finding& other) { return other.rule == one.written.rule; });
        ASSERT_NE(same, findings.end());
        turned = turned || is_fine(same->status) != is_fine(one.written.status);
      }
      turned_in_samples += turned ? 1 : 0;
      EXPECT_EQ(one.standing == TapeStanding::turns, turned) << one.written.rule.text();
    }
  }
  EXPECT_EQ(turned_in_samples, 1U);
}

TEST(WorstCase, EveryTurnIsThatOfAPlanWhichCanBeMadeAgain) {
  const TapedPlan plan = tape_of(text_of_row({{"20", "20", "20"}, "60 1/2", only_widths(3)}));
  const WorstCases worst = worst_cases(plan).value();
  std::size_t witnessed = 0;
  for (const WorstCase& one : worst.cases) {
    if (one.standing != TapeStanding::turns || one.vanishes) continue;
    std::vector<Length> lengths;
    for (const TapeMeasure& measure : plan.measures()) lengths.push_back(measure.length);
    for (const MovedMeasure& moved : one.moved) {
      EXPECT_LE(abs(moved.to - lengths[moved.measure]), plan.measures()[moved.measure].tolerance);
      lengths[moved.measure] = moved.to;
    }
    const Plan tried = plan.made_from(lengths).value();
    const Answer answer = answered(tried).value();
    EXPECT_TRUE(std::ranges::any_of(answer.findings, [&](const Finding& other) {
      return is_about_the_same(other, one.at_worst) && other.status == one.at_worst.status &&
             other.margin == one.at_worst.margin;
    })) << one.written.rule.text();
    ++witnessed;
  }
  EXPECT_GT(witnessed, 0U);
}

}  // namespace
}  // namespace berthwright

#include <berthwright/plan/tape.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

/// Three cushions side by side across a room of 60 in on a bench from wall to wall; a table at the height of
/// a ledge. `from` is the wall that the cushions are measured from, `other` the one they reach to.
std::string row_of_three(const std::string& tape, const std::string& from = "left",
                         const std::string& order = "ABC") {
  std::string poses;
  for (const char id : order) {
    const int at = 20 * (id - 'A');
    poses += std::string(R"({"piece": ")") + id + R"(", "at": {"front": "0", ")" + from + R"(": ")" +
             std::to_string(at) + "\"}},\n";
  }
  return R"({"berthwright": 1, "title": "Row", "unit": "in",
"interior": {"length": "100", "width": "60", "height": "72"},
"fixtures": [
{"id": "bench", "kind": "bench", "length": "38", "width": "60", "at": {"front": "0", "left": "0"}, "top": "14"},
{"id": "ledge", "kind": "ledge", "length": "1/8", "width": "30", "at": {"front": "80", "left": "4"}, "base": "11", "top": "12"}],
"pieces": [
{"id": "A", "kind": "cushion", "length": "38", "width": "20", "thickness": "4"},
{"id": "B", "kind": "cushion", "length": "38", "width": "20", "thickness": "4"},
{"id": "C", "kind": "cushion", "length": "38", "width": "20", "thickness": "4"},
{"id": "table", "kind": "table", "length": "20", "width": "30", "thickness": "1"},
{"id": "stool", "kind": "leg", "length": "5", "width": "5", "thickness": "10"}],
"configurations": {"night": [
)" + poses +
         R"({"piece": "table", "at": {"front": "62", "left": "4"}, "base": "12"},
{"piece": "stool", "at": {"front": "38", "left": "50"}}]}
)" + (tape.empty() ? "" : ", \"tape\": " + tape) +
         "}";
}

TapedPlan taped(const std::string& text) {
  Result<TapedPlan> read = TapedPlan::read(text);
  if (!read) throw std::logic_error(listed(read.problems()));
  return std::move(read).value();
}

const TapeMeasure& measure_called(const TapedPlan& plan, const std::string& name) {
  const auto found = std::ranges::find(plan.measures(), name, &TapeMeasure::name);
  if (found == plan.measures().end()) throw std::logic_error("no measure " + name);
  return *found;
}

struct Off {
  std::string name;
  Length by;
};
Plan off_by(const TapedPlan& plan, const std::vector<Off>& offs) {
  std::vector<Length> lengths;
  for (const TapeMeasure& one : plan.measures()) {
    Length length = one.length;
    for (const Off& off : offs)
      if (off.name == one.name) length += off.by;
    lengths.push_back(length);
  }
  return plan.made_from(lengths).value();
}

Rect bounds_of(const Plan& plan, const std::string& piece) {
  for (const Pose& pose : plan->configurations.front().poses)
    if (pose.piece.text() == piece) return pose.outline.bounds();
  throw std::logic_error("no pose of " + piece);
}

constexpr Length tape_eighth = Length::inches(1, 8);

TEST(Tape, EachKindHasItsUsualTolerance) {
  // Design 4.16: 1/8 in, walls 1/4 in; boards are worked to 1/32 in (common practice, no source).
  const TapedPlan plan = taped(row_of_three(""));
  EXPECT_EQ(measure_called(plan, "interior/width").tolerance, Length::inches(1, 4));
  EXPECT_EQ(measure_called(plan, "ledge/front").tolerance, tape_eighth);
  EXPECT_EQ(measure_called(plan, "A/width").tolerance, tape_eighth);
  EXPECT_EQ(measure_called(plan, "table/width").tolerance, Length::inches(1, 32));
  EXPECT_EQ(measure_called(plan, "night/B/left").tolerance, Length{});
  EXPECT_EQ(measure_called(plan, "night/table/base").tolerance, tape_eighth);
  // Two things touch where a measure is zero; a usual tolerance is at most half its measure: 1/8 / 2 = 1/16.
  EXPECT_EQ(measure_called(plan, "bench/front").tolerance, Length{});
  EXPECT_EQ(measure_called(plan, "ledge/length").tolerance, Length::inches(1, 16));
  for (const TapeMeasure& one : plan.measures()) EXPECT_EQ(one.state, TapeState::planned) << one.name;
}

TEST(Tape, ABenchFromWallToWallIsAsWideAsTheRoom) {
  const TapedPlan plan = taped(row_of_three(""));
  const TapeMeasure& width = measure_called(plan, "interior/width");
  EXPECT_EQ(width.also, std::vector<std::string>{"bench/width"});
  const Plan wider = off_by(plan, {{"interior/width", tape_eighth}});
  EXPECT_EQ(wider->fixtures[0].solid.outline().bounds().high.y, 60_in + tape_eighth);
}

TEST(Tape, EntriesRuleOverKindsAndTheMeasureOverItsThing) {
  const TapedPlan plan = taped(row_of_three(R"({"tolerances": {"cushions": "3/8", "checked": "1/32"},
    "state": "as built",
    "measures": [{"measure": "A/width", "tolerance": "1/2"}, {"measure": "A", "state": "checked"},
                 {"measure": "bench/width", "tolerance": "3", "as_built": "59 7/8"},
                 {"measure": "/pieces/1/length", "state": "planned"}]})"));
  EXPECT_EQ(measure_called(plan, "A/width").tolerance, Length::inches(1, 2));
  EXPECT_EQ(measure_called(plan, "A/width").state, TapeState::as_built);
  EXPECT_EQ(measure_called(plan, "A/length").tolerance, Length::inches(1, 32));
  EXPECT_EQ(measure_called(plan, "A/length").state, TapeState::checked);
  EXPECT_EQ(measure_called(plan, "B/width").tolerance, Length::inches(3, 8));
  EXPECT_EQ(measure_called(plan, "B/length").state, TapeState::planned);
  EXPECT_EQ(measure_called(plan, "interior/width").tolerance, 3_in);
  EXPECT_EQ(measure_called(plan, "interior/width").as_built, 60_in - tape_eighth);
}

TEST(Tape, ACheckedMeasureIsNeverLooserThanItsKind) {
  const TapedPlan plan = taped(row_of_three(R"({"state": "checked"})"));
  EXPECT_EQ(measure_called(plan, "A/width").tolerance, Length::inches(1, 16));
  EXPECT_EQ(measure_called(plan, "table/width").tolerance, Length::inches(1, 32));
}

TEST(TapedPlan, OfItsOwnLengthsIsThePlanItself) {
  for (const std::string file : {"plans/sanderling.json", "plans/dunnock.json", "plans/nuthatch.json",
                                 "plans/siskin.json", "plans/goldcrest.json", "plans/whinchat.json"}) {
    const TapedPlan plan = taped(repository_text(file));
    const Plan again = off_by(plan, {});
    for (std::size_t c = 0; c < again->configurations.size(); ++c)
      for (std::size_t i = 0; i < again->configurations[c].poses.size(); ++i)
        EXPECT_EQ(again->configurations[c].poses[i].outline, plan.plan()->configurations[c].poses[i].outline);
    // Once something else is off, no pose moves that has nothing to do with it.
    const Plan higher = off_by(plan, {{"interior/height", tape_eighth}});
    for (std::size_t i = 0; i < higher->configurations[0].poses.size(); ++i)
      EXPECT_EQ(higher->configurations[0].poses[i].outline, plan.plan()->configurations[0].poses[i].outline);
  }
}

TEST(TapedPlan, AClosingRowOfThreeLosesThreeTimesTheTolerance) {
  // 3 x (20 - 1/8) = 59 5/8 of 60: the row ends 3/8 in short, n t for n pieces; with 1/4 of the room 5/8.
  const TapedPlan plan = taped(row_of_three(""));
  const std::vector<Off> shorter{
      {"A/width", -tape_eighth}, {"B/width", -tape_eighth}, {"C/width", -tape_eighth}};
  const Plan row = off_by(plan, shorter);
  EXPECT_EQ(bounds_of(row, "B").low.y, 20_in - tape_eighth);
  EXPECT_EQ(bounds_of(row, "C").low.y, 40_in - 2 * tape_eighth);
  EXPECT_EQ(60_in - bounds_of(row, "C").high.y, 3 * tape_eighth);
  std::vector<Off> both = shorter;
  both.push_back({"interior/width", Length::inches(1, 4)});
  const Plan wide = off_by(plan, both);
  EXPECT_EQ(wide->interior.width - bounds_of(wide, "C").high.y, Length::inches(5, 8));
}

TEST(TapedPlan, MirroredAndReorderedARowClosesAlike) {
  const std::vector<Off> shorter{
      {"A/width", -tape_eighth}, {"B/width", tape_eighth}, {"C/width", -2 * tape_eighth}};
  const Plan left = off_by(taped(row_of_three("")), shorter);
  const Plan right = off_by(taped(row_of_three("", "right")), shorter);
  const Plan turned = off_by(taped(row_of_three("", "left", "CAB")), shorter);
  for (const std::string id : {"A", "B", "C"}) {
    EXPECT_EQ(bounds_of(left, id).low.y, 60_in - bounds_of(right, id).high.y) << id;
    EXPECT_EQ(bounds_of(left, id), bounds_of(turned, id)) << id;
  }
}

TEST(TapedPlan, WhatIsHeldLevelWithATopFollowsIt) {
  const TapedPlan plan = taped(row_of_three(""));
  const Plan higher = off_by(plan, {{"ledge/top", tape_eighth}});
  // The table reaches from 62 to 82, over the ledge at 80.
  EXPECT_EQ(higher->configurations[0].poses[3].base, 12_in + tape_eighth);
}

TEST(TapedPlan, NothingRigidIsLaidAgainstACushion) {
  // The stool stands at 38, where cushions and bench end. The bench is what it stands against.
  const TapedPlan plan = taped(row_of_three(""));
  EXPECT_EQ(bounds_of(off_by(plan, {{"C/length", tape_eighth}}), "stool").low.x, 38_in);
  EXPECT_EQ(bounds_of(off_by(plan, {{"bench/length", tape_eighth}}), "stool").low.x, 38_in + tape_eighth);
}

TEST(TapedPlan, WhatIsMeasuredFromAFixtureFollowsItAndNoNeighbour) {
  // A table laid on the cushions ends at 38 too, beside the stool.
  std::string text = row_of_three("");
  const auto put = [&](const std::string& old, const std::string& now) {
    text.replace(text.find(old), old.size(), now);
  };
  put(R"("front": "38", "left": "50")", R"("behind": ["bench", "0"], "left": "50")");
  put(R"({"front": "62", "left": "4"}, "base": "12")", R"({"front": "18", "left": "25"})");
  const TapedPlan plan = taped(text);
  EXPECT_EQ(bounds_of(off_by(plan, {{"table/length", tape_eighth}}), "stool").low.x, 38_in);
  EXPECT_EQ(bounds_of(off_by(plan, {{"bench/length", tape_eighth}}), "stool").low.x, 38_in + tape_eighth);
}

TEST(TapedPlan, LengthsThatContradictEachOtherAreToldAndTooFewRefused) {
  const TapedPlan plan = taped(row_of_three(""));
  std::vector<Length> lengths;
  for (const TapeMeasure& one : plan.measures())
    lengths.push_back(one.name == "ledge/top" ? 10_in : one.length);
  EXPECT_EQ(plan.made_from(lengths).problems().front().id, "fixture.upside-down");
  lengths.pop_back();
  EXPECT_THROW(plan.made_from(lengths).ok(), std::invalid_argument);
}

/// The ids of the faults of a tape, each with its cure.
std::string faults_of(const std::string& tape) {
  std::string list;
  const Result<Plan> plan = read_plan(row_of_three(tape));
  for (const Problem& one : plan.problems()) list += (list.empty() ? "" : "; ") + one.id + ": " + one.cure;
  return list;
}

TEST(Tape, FaultsNameTheNearestMeasureAndTheCure) {
  const auto entry = [](const std::string& fields) {
    return faults_of(R"({"measures": [{)" + fields + "}]}");
  };
  EXPECT_EQ(entry(R"("measure": "A/widht", "state": "checked")"), "tape.unknown: write \"A/width\"");
  EXPECT_EQ(entry(R"("measure": "A", "state": "checked")"), "");
  EXPECT_EQ(entry(R"("measure": "night/D/left", "state": "checked")"),
            "tape.unknown: write \"night/A/left\"");
  EXPECT_EQ(entry(R"("measure": "A/width")"), "tape.empty: say what is known of it, or take the entry away");
  EXPECT_EQ(entry(R"("measure": "A/width", "tolerance": "0")"), "");
  EXPECT_EQ(entry(R"("measure": "A/thickness", "tolerance": "4")"),
            "tape.larger-than-measure: check both; what may as well be nothing is not measured");
  EXPECT_EQ(entry(R"("measure": "A/width", "tolerance": "7")"),
            "tape.too-large: give how far the true measure may lie from the one written, and check the unit");
  EXPECT_EQ(entry(R"("measure": "bench/front", "tolerance": "1/8")"),
            "tape.larger-than-measure: write how far apart they may be as the distance, or take the "
            "tolerance away");
  EXPECT_EQ(entry(R"("measure": "A/width", "state": "planned", "as_built": "20 1/8")"),
            "tape.state: write \"as built\", or take \"as_built\" away");
  // One measure under two names, as the bench is as wide as the room.
  EXPECT_EQ(faults_of(R"({"measures": [{"measure": "interior/width", "as_built": "60 1/8"},
                                       {"measure": "bench/width", "as_built": "59 7/8"}]})"),
            "tape.twice: keep the one that was measured last");
  EXPECT_EQ(faults_of(R"({"tolerances": {"walls": "1 ft"}})").substr(0, 14), "tape.too-large");
}

}  // namespace
}  // namespace berthwright

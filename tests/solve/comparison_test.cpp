#include <berthwright/solve/comparison.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "support/compared_texts.h"
#include "support/demos.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

using Verdict = ComparedFigure::Verdict;
using Because = ComparedFigure::Because;
using support::ComparedTexts;
using support::heater_before_cushion;
using support::warming_heater;
using support::weighed_cabinet;

/// Demos and small plans with all that is compared of them.
struct StoodDemo {
  explicit StoodDemo(const std::string& name) : made(answered_demo(name)), compared(compared_of(made)) {}
  static ComparedPlan compared_of(const Answered& made) {
    return {&made.plan, &made.answer, loads_of(made.plan)};
  }
  const Answered& made;
  ComparedPlan compared;
};

Verdict turned_verdict(Verdict verdict) {
  switch (verdict) {
    case Verdict::first_better:
      return Verdict::second_better;
    case Verdict::second_better:
      return Verdict::first_better;
    case Verdict::only_first:
      return Verdict::only_second;
    case Verdict::only_second:
      return Verdict::only_first;
    case Verdict::differs:
    case Verdict::unknown:
      return verdict;
  }
  throw std::logic_error("Verdict out of range");
}

bool is_same(const std::optional<FigureSide>& a, const std::optional<FigureSide>& b) {
  if (!a || !b) return a.has_value() == b.has_value();
  const bool loads = a->load && b->load ? a->load->is_named_like(*b->load) && a->load->value == b->load->value
                                        : a->load.has_value() == b->load.has_value();
  return a->finding == b->finding && a->length == b->length && loads;
}

void expect_mirrored(const Comparison& there, const Comparison& back) {
  EXPECT_EQ(there.only_first, back.only_second);
  EXPECT_EQ(there.only_second, back.only_first);
  EXPECT_EQ(exit_code(there), exit_code(back));
  ASSERT_EQ(there.pairs.size(), back.pairs.size());
  for (std::size_t i = 0; i < there.pairs.size(); ++i) {
    EXPECT_EQ(there.pairs[i].first, back.pairs[i].second);
    EXPECT_EQ(there.pairs[i].alike, back.pairs[i].alike);
    const std::vector<ComparedFigure>& a = there.pairs[i].figures;
    const std::vector<ComparedFigure>& b = back.pairs[i].figures;
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t k = 0; k < a.size(); ++k) {
      EXPECT_EQ(a[k].verdict, turned_verdict(b[k].verdict));
      EXPECT_EQ(a[k].because, b[k].because);
      EXPECT_EQ(a[k].size, b[k].size);
      EXPECT_TRUE(is_same(a[k].first, b[k].second));
      EXPECT_TRUE(is_same(a[k].second, b[k].first));
    }
  }
}

TEST(ComparedPlans, TurnedRoundAreTheMirrorImage) {
  const StoodDemo dunnock("dunnock");
  const StoodDemo sanderling("sanderling");
  const Comparison there = compared_plans(dunnock.compared, sanderling.compared);
  expect_mirrored(there, compared_plans(sanderling.compared, dunnock.compared));
  EXPECT_EQ(exit_code(there), 1);
  EXPECT_EQ(there.only_second, std::vector<ConfigurationId>{ConfigurationId("road")});
  ASSERT_EQ(there.pairs.size(), 3U);
  for (const ComparedPair& pair : there.pairs) EXPECT_FALSE(pair.figures.empty());
  // The mirror is put to the test by every kind of verdict.
  for (const Verdict verdict : {Verdict::first_better, Verdict::second_better, Verdict::differs,
                                Verdict::unknown, Verdict::only_first, Verdict::only_second})
    EXPECT_TRUE(std::ranges::any_of(there.pairs, [&](const ComparedPair& pair) {
      return std::ranges::count(pair.figures, verdict, &ComparedFigure::verdict) > 0;
    })) << static_cast<int>(verdict);
}

TEST(ComparedConfigurations, TurnedRoundAreTheMirrorImage) {
  const StoodDemo sanderling("sanderling");
  const Plan& plan = sanderling.made.plan;
  const Configuration& day = *plan.configuration("day");
  const Configuration& night = *plan.configuration("night");
  expect_mirrored(compared_configurations(sanderling.compared, day, night),
                  compared_configurations(sanderling.compared, night, day));
}

// What is unknown of it is unknown on both sides.
TEST(ComparedPlans, APlanDiffersNowhereFromItself) {
  for (const std::string& name : demo_names()) {
    const StoodDemo demo(name);
    const Comparison of = compared_plans(demo.compared, demo.compared);
    std::size_t alike = 0;
    std::size_t unknown = 0;
    for (const ComparedPair& pair : of.pairs) {
      alike += pair.alike;
      unknown += pair.figures.size();
      for (const ComparedFigure& figure : pair.figures) {
        EXPECT_EQ(figure.verdict, Verdict::unknown) << name;
        EXPECT_TRUE(is_same(figure.first, figure.second)) << name;
      }
    }
    EXPECT_GT(alike + unknown, demo.made.answer.findings.size());
    EXPECT_EQ(exit_code(of), unknown > 0 ? 2 : 0);
    EXPECT_GE(unknown, static_cast<std::size_t>(
                           std::ranges::count(demo.made.answer.findings, Status::unknown, &Finding::status)));
  }
}

// Every finding of both sides is in one place: alike (twice), or on its side of a row.
TEST(ComparedPlans, LoseNoFigure) {
  const StoodDemo dunnock("dunnock");
  const StoodDemo sanderling("sanderling");
  const Comparison of = compared_plans(dunnock.compared, sanderling.compared);
  for (const ComparedPair& pair : of.pairs) {
    if (pair.first == nullptr) continue;
    const auto in = [](const ComparedPlan& plan, const Configuration* configuration) {
      return static_cast<std::size_t>(
          std::ranges::count(plan.answer->findings, configuration->id, &Finding::configuration));
    };
    const auto loads_in = [](const ComparedPlan& plan, const Configuration* configuration) {
      const auto loads = std::ranges::find(plan.loads, configuration, &Loads::configuration);
      return load_figures(*plan.plan, *loads).size();
    };
    std::size_t first = pair.alike;
    std::size_t second = pair.alike;
    for (const ComparedFigure& figure : pair.figures) {
      first += figure.first ? 1 : 0;
      second += figure.second ? 1 : 0;
    }
    EXPECT_EQ(first, in(*of.first, pair.first) + loads_in(*of.first, pair.first));
    EXPECT_EQ(second, in(*of.second, pair.second) + loads_in(*of.second, pair.second));
  }
}

// 3 ft are asked between the cushion, 20 in long, and the heater.
TEST(ComparedPlans, BetterIsWhoKeepsTheRuleThenWhoFallsShortByLessThenWhoHasMoreToSpare) {
  const auto expect = [](int first, int second, Verdict verdict, Because because) {
    const ComparedTexts both(heater_before_cushion(first), heater_before_cushion(second));
    EXPECT_EQ(both.figure("heat.three-feet").verdict, verdict);
    EXPECT_EQ(both.figure("heat.three-feet").because, because);
  };
  expect(40, 70, Verdict::second_better, Because::keeps);          // 20 in against 50
  expect(44, 40, Verdict::first_better, Because::less_short);      // 24 against 20
  expect(70, 90, Verdict::second_better, Because::more_to_spare);  // 50 against 70
}

// Between its limits a seat is neither better high nor low.
TEST(HasOneWay, IsFalseWhereAnotherRuleLimitsTheSameFromTheOtherSide) {
  EXPECT_TRUE(has_one_way(*find_rule("heat.three-feet")));
  EXPECT_TRUE(has_one_way(*find_rule("way.aisle")));
  for (const char* rule : {"seat.low", "seat.high", "seat.shallow", "seat.deep", "bed.guard-rail"})
    EXPECT_FALSE(has_one_way(*find_rule(rule))) << rule;
  EXPECT_FALSE(has_one_way(*find_rule("bed.area")));
}

std::vector<std::string> own_feet(const std::string& limit, const std::string& reason) {
  return {R"("heat.three-feet": {"limit": )" + limit + R"(, "reason": ")" + reason + R"("})"};
}

// 12 in keep the plan's own 10 and 30 in fall short of its own 36: another rule, though the reason is the
// same, and whichever of the two has the number.
TEST(ComparedPlans, NeitherIsBetterByNumbersOfTheirOwnThatDiffer) {
  const auto expect_differs = [](const TrailerText& a, const TrailerText& b) {
    for (const auto* turned : {&a, &b}) {
      const ComparedTexts both(*turned, turned == &a ? b : a);
      EXPECT_EQ(both.figure("heat.three-feet").verdict, Verdict::differs);
      EXPECT_EQ(both.figure("heat.three-feet").because, Because::other_limits);
    }
  };
  const TrailerText far = heater_before_cushion(50, own_feet("36", "our own choice"));
  expect_differs(far, heater_before_cushion(32, own_feet("10", "our own choice")));
  expect_differs(far, heater_before_cushion(32, own_feet("10", "another one")));
  expect_differs(heater_before_cushion(50), heater_before_cushion(32, own_feet("10", "our own choice")));
  expect_differs(heater_before_cushion(70), heater_before_cushion(90, own_feet("30", "our own choice")));
}

// 12 and 30 in against the same 20 of their own, or 36 of one's own that the rule asks too.
TEST(ComparedPlans, OneIsBetterByTheSameNumberOfTheirOwn) {
  const ComparedTexts both(heater_before_cushion(50, own_feet("20", "our own choice")),
                           heater_before_cushion(32, own_feet("20", "another one")));
  EXPECT_EQ(both.figure("heat.three-feet").verdict, Verdict::first_better);
  EXPECT_EQ(both.figure("heat.three-feet").because, Because::keeps);
  const ComparedTexts same(heater_before_cushion(70, own_feet("36", "as asked")), heater_before_cushion(90));
  EXPECT_EQ(same.figure("heat.three-feet").because, Because::more_to_spare);
}

/// One finding by day in each of two plans of nothing else.
struct ComparedFindings {
  ComparedFindings(Finding a, Finding b) : plan(TrailerText{}.plan()) {
    for (auto* finding : {&a, &b}) finding->configuration = ConfigurationId("day");
    first.findings = {std::move(a)};
    second.findings = {std::move(b)};
    of = compared_plans(one, other, {ConfigurationId("day")});
  }
  ComparedFindings(const ComparedFindings&) = delete;
  ComparedFindings& operator=(const ComparedFindings&) = delete;
  const ComparedFigure& row() const {
    const auto found = std::ranges::find_if(of.pairs.at(0).figures, [](const ComparedFigure& figure) {
      return figure.either().finding != nullptr;
    });
    if (found == of.pairs.at(0).figures.end()) throw std::invalid_argument("alike");
    return *found;
  }
  Plan plan;
  Answer first;
  Answer second;
  ComparedPlan one{&plan, &first, loads_of(plan)};
  ComparedPlan other{&plan, &second, loads_of(plan)};
  Comparison of;
};

Finding compared_finding(Status status, std::optional<Length> measured, std::optional<Length> compared,
                         const char* rule = "cord.reach") {
  Finding finding;
  finding.rule = RuleId(rule);
  finding.status = status;
  if (measured) finding.measured = *measured;
  if (compared) finding.compared = *compared;
  if (measured && compared) finding.margin = *compared - *measured;
  return finding;
}

TEST(ComparedPlans, AnUnknownFindingIsNeverBetterNorWorse) {
  const Finding unknown = compared_finding(Status::unknown, std::nullopt, 72_in);
  for (const Status status : {Status::met, Status::close, Status::not_met}) {
    const Finding known = compared_finding(status, 70_in, 72_in);
    const ComparedFindings there(unknown, known);
    EXPECT_EQ(there.row().verdict, Verdict::unknown);
    EXPECT_EQ(there.row().because, Because::nothing);
    EXPECT_EQ(ComparedFindings(known, unknown).row().verdict, Verdict::unknown);
  }
}

// Nobody knows whether they are alike.
TEST(ComparedPlans, UnknownOnBothSidesIsUnknown) {
  const Finding unknown = compared_finding(Status::unknown, std::nullopt, 72_in);
  const ComparedFindings both(unknown, unknown);
  EXPECT_EQ(both.row().verdict, Verdict::unknown);
  EXPECT_EQ(both.of.pairs.at(0).figures.size(), 1U);
  EXPECT_EQ(exit_code(both.of), 2);
  const ComparedTexts weights(weighed_cabinet(""), weighed_cabinet(""));
  for (const auto kind : {LoadFigure::Kind::whole, LoadFigure::Kind::share, LoadFigure::Kind::axle})
    EXPECT_EQ(weights.figure(kind).verdict, Verdict::unknown);
  EXPECT_THROW(weights.figure(LoadFigure::Kind::coupling), std::invalid_argument) << "120 lb each";
  EXPECT_EQ(exit_code(weights.of), 2);
}

// Each cord is asked to be as long as its way: what keeps its own is better than what does not, but two that
// are too short by 5 and by 3 in of different cords are not told as nearer.
TEST(ComparedPlans, WhatEachIsAskedByItselfItKeepsOrNot) {
  const Finding six_feet_short = compared_finding(Status::not_met, 77_in, 72_in);
  const Finding eight_feet_short = compared_finding(Status::not_met, 99_in, 96_in);
  const ComparedFindings keeps(six_feet_short, compared_finding(Status::met, 90_in, 96_in));
  EXPECT_EQ(keeps.row().verdict, Verdict::second_better);
  EXPECT_EQ(keeps.row().because, Because::keeps);
  const ComparedFindings both_short(six_feet_short, eight_feet_short);
  EXPECT_EQ(both_short.row().verdict, Verdict::differs);
  EXPECT_EQ(both_short.row().because, Because::other_limits);
  const ComparedFindings one_cord(six_feet_short, compared_finding(Status::not_met, 75_in, 72_in));
  EXPECT_EQ(one_cord.row().verdict, Verdict::second_better);
  EXPECT_EQ(one_cord.row().because, Because::less_short);
}

Verdict load_verdict(const TrailerText& first, const TrailerText& second, LoadFigure::Kind kind) {
  return ComparedTexts(first, second).figure(kind).verdict;
}

// Unknown is never better, nor worse: 40 lb against what nobody says.
TEST(ComparedPlans, UnknownAgainstKnownIsUnknown) {
  for (const auto& [first, second] : {std::pair(R"("40 lb")", ""), std::pair("", R"("40 lb")")}) {
    const ComparedTexts both(weighed_cabinet(first), weighed_cabinet(second));
    EXPECT_EQ(both.figure(LoadFigure::Kind::whole).verdict, Verdict::unknown);
    EXPECT_EQ(both.figure(LoadFigure::Kind::share).verdict, Verdict::unknown);
    EXPECT_EQ(both.figure(LoadFigure::Kind::share).because, Because::nothing);
  }
}

// 1500 W by a cord are too much for 15 A; what nobody says may be too.
TEST(ComparedPlans, AHeaterWithoutWattsIsNotBetterThanOneThatIsTooLarge) {
  for (const auto& [first, second] : {std::pair("", "1500"), std::pair("1500", "")})
    for (const LoadFigure::Kind kind : {LoadFigure::Kind::circuit, LoadFigure::Kind::supply,
                                        LoadFigure::Kind::together, LoadFigure::Kind::warm_up})
      EXPECT_EQ(load_verdict(warming_heater(first), warming_heater(second), kind), Verdict::unknown);
  EXPECT_EQ(load_verdict(warming_heater("600"), warming_heater("1500"), LoadFigure::Kind::circuit),
            Verdict::first_better);
}

// 1500 W count for 1875, more than a supply of 15 A carries, 1800, and less than one of 20 A: 2400. Whether a
// circuit carries them is told of the circuit, 15 A in one and 20 A in the other.
TEST(ComparedPlans, ASupplyIsJudgedBesideItsOwnAmperes) {
  const auto heater_on = [](const std::string& amps, const std::string& breaker) {
    TrailerText text = warming_heater("1500");
    text.more = R"("supply": {)" + amps + R"("circuits": [{"id": "one", "breaker": )" + breaker +
                R"(, "feeds": ["O"]}]}, )";
    return text;
  };
  const TrailerText ample = heater_on(R"("amps": 20, )", "15");
  const TrailerText over = heater_on(R"("amps": 15, )", "20");
  EXPECT_EQ(load_verdict(ample, over, LoadFigure::Kind::supply), Verdict::first_better);
  EXPECT_EQ(load_verdict(over, ample, LoadFigure::Kind::supply), Verdict::second_better);
  EXPECT_EQ(load_verdict(ample, over, LoadFigure::Kind::circuit), Verdict::second_better);
  // Beside no amperes nothing is said of the whole, whatever its circuit carries.
  const ComparedTexts none(ample, heater_on("", "15"));
  EXPECT_EQ(none.figure(LoadFigure::Kind::supply).first->load->status, Status::met);
  EXPECT_FALSE(none.figure(LoadFigure::Kind::supply).second->load->status);
}

// The shell loses more than 100 W at 40 °F, 30 K above the outside, so 100 and 90 W never warm the room,
// which is known, and alike; 8000 W do.
TEST(ComparedPlans, NeverIsKnownAndIsNoTime) {
  const ComparedTexts both(warming_heater("100"), warming_heater("8000"));
  const ComparedFigure& row = both.figure(LoadFigure::Kind::warm_up);
  EXPECT_EQ(row.verdict, Verdict::differs);
  ASSERT_TRUE(row.first->load->value && row.second->load->value);
  EXPECT_TRUE(std::holds_alternative<Never>(*row.first->load->value));
  EXPECT_TRUE(std::holds_alternative<CountSpan>(*row.second->load->value));
  const ComparedTexts cold(warming_heater("100"), warming_heater("90"));
  EXPECT_THROW(cold.figure(LoadFigure::Kind::warm_up), std::invalid_argument);
}

// Beside a furnace that says nothing neither 100 W, which alone never warm the room, nor 8000 are all there
// is.
TEST(ComparedPlans, HeatOfWhichSomeIsUnknownIsUnknown) {
  for (const char* watts : {"100", "8000"}) {
    TrailerText dark = warming_heater(watts);
    dark.fixtures.emplace_back(
        R"({"id": "F", "kind": "heater", "length": 10, "width": 10, "at": {"front": 100, "left": 0}, "top": 20, "faces": "right"})");
    EXPECT_EQ(load_verdict(dark, warming_heater("8000"), LoadFigure::Kind::warm_up), Verdict::unknown);
    EXPECT_EQ(load_verdict(warming_heater("100"), dark, LoadFigure::Kind::warm_up), Verdict::unknown);
  }
}

// 120 of 1000 lb are within 10 to 15 %, 80 are not.
TEST(ComparedPlans, AShareWithinItsRangeIsBetterAndAWeightIsNot) {
  const TrailerText within = weighed_cabinet("0");
  const TrailerText below = weighed_cabinet("0", "80 lb", "940 lb");
  EXPECT_EQ(load_verdict(within, below, LoadFigure::Kind::share), Verdict::first_better);
  EXPECT_EQ(load_verdict(below, within, LoadFigure::Kind::share), Verdict::second_better);
  EXPECT_EQ(load_verdict(within, below, LoadFigure::Kind::whole), Verdict::differs);
}

// 12 % are within 10 to 15 and above 5 to 7; 10 % are within 10 to 15 and, of the plate, 8 to 10.
TEST(ComparedPlans, NeitherShareIsBetterWhereTheRangesDiffer) {
  const auto of_range = [](const char* range, const char* coupling, const char* axle) {
    return weighed_cabinet("0", coupling, axle,
                           std::string(R"(, "limits": {"whole": "1000 lb"}, "range": ")") + range + '"');
  };
  for (const auto& [share, axle, other] :
       {std::tuple("120 lb", "880 lb", "uk"), std::tuple("100 lb", "900 lb", "australia")}) {
    const ComparedTexts both(of_range("us", share, axle), of_range(other, share, axle));
    EXPECT_EQ(both.figure(LoadFigure::Kind::share).verdict, Verdict::differs);
    EXPECT_EQ(both.figure(LoadFigure::Kind::share).because, Because::other_limits);
  }
}

// What only one of them has is told, and unknown alone is 2.
TEST(ExitCode, OfAComparisonTellsDifferentFromUnknown) {
  ComparedPair pair;
  ComparedFigure figure;
  figure.verdict = Verdict::unknown;
  Comparison of;
  of.pairs = {pair};
  EXPECT_EQ(exit_code(of), 0);
  of.pairs[0].figures = {figure};
  EXPECT_EQ(exit_code(of), 2);
  figure.verdict = Verdict::only_second;
  of.pairs[0].figures.push_back(figure);
  EXPECT_EQ(exit_code(of), 1);
  Comparison lacking;
  lacking.only_first = {ConfigurationId("road")};
  EXPECT_EQ(exit_code(lacking), 1);
}

}  // namespace
}  // namespace berthwright

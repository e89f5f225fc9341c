#include <berthwright/solve/comparison.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <list>

#include "support/demos.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

using Verdict = ComparedFigure::Verdict;
using Because = ComparedFigure::Because;

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
}

TEST(ComparedConfigurations, TurnedRoundAreTheMirrorImage) {
  const StoodDemo sanderling("sanderling");
  const Plan& plan = sanderling.made.plan;
  const Configuration& day = *plan.configuration("day");
  const Configuration& night = *plan.configuration("night");
  expect_mirrored(compared_configurations(sanderling.compared, day, night),
                  compared_configurations(sanderling.compared, night, day));
}

TEST(ComparedPlans, APlanDiffersNowhereFromItself) {
  for (const std::string& name : demo_names()) {
    const StoodDemo demo(name);
    const Comparison of = compared_plans(demo.compared, demo.compared);
    std::size_t alike = 0;
    for (const ComparedPair& pair : of.pairs) {
      EXPECT_TRUE(pair.figures.empty()) << name;
      alike += pair.alike;
    }
    EXPECT_GT(alike, demo.made.answer.findings.size());
    EXPECT_EQ(exit_code(of), 0);
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

/// A heater of 10 x 10 in whose near face is `away` from a cushion to its front.
TrailerText heater_at(int front) {
  TrailerText text;
  text.pieces = {
      R"({"id": "C", "kind": "cushion", "length": 20, "width": 20, "thickness": 4})",
      R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear"})"};
  text.day = {R"({"piece": "C", "at": {"front": 0, "left": 20}})",
              R"({"piece": "H", "at": {"front": )" + std::to_string(front) + R"(, "left": 25}})"};
  return text;
}

ComparedFigure three_feet(int first, int second) {
  static std::list<Answered> kept;
  const Answered& a = kept.emplace_back(heater_at(first));
  const Answered& b = kept.emplace_back(heater_at(second));
  static std::list<ComparedPlan> plans;
  const ComparedPlan& left = plans.emplace_back(StoodDemo::compared_of(a));
  const ComparedPlan& right = plans.emplace_back(StoodDemo::compared_of(b));
  const Comparison of = compared_plans(left, right, {ConfigurationId("day")});
  for (const ComparedFigure& figure : of.pairs.at(0).figures)
    if (figure.either().finding != nullptr && figure.either().finding->rule.text() == "heat.three-feet")
      return figure;
  throw std::invalid_argument("nothing differs");
}

// 3 ft are asked between the cushion, 20 in long, and the heater.
TEST(ComparedPlans, BetterIsWhoKeepsTheRuleThenWhoFallsShortByLessThenWhoHasMoreToSpare) {
  const ComparedFigure keeps = three_feet(40, 70);  // 20 in against 50
  EXPECT_EQ(keeps.verdict, Verdict::second_better);
  EXPECT_EQ(keeps.because, Because::keeps);
  const ComparedFigure short_of = three_feet(44, 40);  // 24 against 20
  EXPECT_EQ(short_of.verdict, Verdict::first_better);
  EXPECT_EQ(short_of.because, Because::less_short);
  const ComparedFigure spare = three_feet(70, 90);  // 50 against 70
  EXPECT_EQ(spare.verdict, Verdict::second_better);
  EXPECT_EQ(spare.because, Because::more_to_spare);
}

// Between its limits a seat is neither better high nor low.
TEST(HasOneWay, IsFalseWhereAnotherRuleLimitsTheSameFromTheOtherSide) {
  EXPECT_TRUE(has_one_way(*find_rule("heat.three-feet")));
  EXPECT_TRUE(has_one_way(*find_rule("way.aisle")));
  for (const char* rule : {"seat.low", "seat.high", "seat.shallow", "seat.deep", "bed.guard-rail"})
    EXPECT_FALSE(has_one_way(*find_rule(rule))) << rule;
  EXPECT_FALSE(has_one_way(*find_rule("bed.area")));
}

/// A trailer with a cabinet of that weight; its coupling carries `share` per cent of what the scales said.
TrailerText cabinet_of(const std::string& weight, const std::string& coupling = "120 lb",
                       const std::string& axle = "880 lb") {
  TrailerText text;
  text.fixtures = {
      R"({"id": "K", "kind": "cabinet", "length": 20, "width": 20, "at": {"front": 60, "left": 0}, "top": 30)" +
      (weight.empty() ? std::string{} : R"(, "weight": )" + weight) + "}"};
  text.more = R"("chassis": {"coupling": 40, "axle": 70, "weighed": {"coupling": ")" + coupling +
              R"(", "axle": ")" + axle + R"("}}, )";
  return text;
}

ComparedFigure load_row(const TrailerText& first, const TrailerText& second, LoadFigure::Kind kind) {
  static std::list<Answered> kept;
  const Answered& a = kept.emplace_back(first);
  const Answered& b = kept.emplace_back(second);
  static std::list<ComparedPlan> plans;
  const ComparedPlan& left = plans.emplace_back(StoodDemo::compared_of(a));
  const ComparedPlan& right = plans.emplace_back(StoodDemo::compared_of(b));
  const Comparison of = compared_plans(left, right, {ConfigurationId("day")});
  for (const ComparedFigure& figure : of.pairs.at(0).figures)
    if (figure.either().load && figure.either().load->kind == kind) return figure;
  throw std::invalid_argument("nothing differs");
}

// Unknown is never better, nor worse: 40 lb against what nobody says.
TEST(ComparedPlans, UnknownAgainstKnownIsUnknown) {
  for (const auto& [first, second] : {std::pair(R"("40 lb")", ""), std::pair("", R"("40 lb")")}) {
    EXPECT_EQ(load_row(cabinet_of(first), cabinet_of(second), LoadFigure::Kind::whole).verdict,
              Verdict::unknown);
    const ComparedFigure share = load_row(cabinet_of(first), cabinet_of(second), LoadFigure::Kind::share);
    EXPECT_EQ(share.verdict, Verdict::unknown);
    EXPECT_EQ(share.because, Because::nothing);
  }
}

/// A heater on a circuit of 15 A; empty: nobody says what it draws.
TrailerText plugged_heater(const std::string& watts) {
  TrailerText text;
  text.more = R"("supply": {"circuits": [{"id": "one", "breaker": 15, "feeds": ["O"]}]}, )";
  text.fixtures = {
      R"({"id": "O", "kind": "outlet", "length": 1, "width": 3, "at": {"front": 0, "left": 24}, "base": 14, "top": 18})"};
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear")" +
                 (watts.empty() ? std::string{} : R"(, "watts": )" + watts) + "}"};
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 25}, "plugged_into": "O"})"};
  return text;
}

// 1500 W by a cord are too much for 15 A; what nobody says may be too.
TEST(ComparedPlans, AHeaterWithoutWattsIsNotBetterThanOneThatIsTooLarge) {
  for (const auto& [first, second] : {std::pair("", "1500"), std::pair("1500", "")})
    for (const LoadFigure::Kind kind :
         {LoadFigure::Kind::circuit, LoadFigure::Kind::supply, LoadFigure::Kind::together})
      EXPECT_EQ(load_row(plugged_heater(first), plugged_heater(second), kind).verdict, Verdict::unknown);
  EXPECT_EQ(load_row(plugged_heater("600"), plugged_heater("1500"), LoadFigure::Kind::circuit).verdict,
            Verdict::first_better);
}

// 120 of 1000 lb are within 10 to 15 %, 80 are not.
TEST(ComparedPlans, AShareWithinItsRangeIsBetterAndAWeightIsNot) {
  const TrailerText within = cabinet_of("0");
  const TrailerText below = cabinet_of("0", "80 lb", "940 lb");
  EXPECT_EQ(load_row(within, below, LoadFigure::Kind::share).verdict, Verdict::first_better);
  EXPECT_EQ(load_row(below, within, LoadFigure::Kind::share).verdict, Verdict::second_better);
  EXPECT_EQ(load_row(within, below, LoadFigure::Kind::whole).verdict, Verdict::differs);
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

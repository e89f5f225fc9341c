#include <berthwright/solve/convert/effort.h>

#include <gtest/gtest.h>

#include "support/convert_trailers.h"
#include "support/plan_builder.h"
#include "view/effort_words.h"

namespace berthwright {
namespace {

Plan dinette_with_a_table_of(const std::string& weight, const std::string& more = "") {
  TrailerText text = dinette();
  if (!weight.empty()) text.pieces[0].insert(1, R"("weight": ")" + weight + R"(", )");
  text.more = more;
  return text.plan();
}

Conversion to_night(const Plan& plan) {
  Result<std::vector<Conversion>> found = conversions(plan);
  return std::move(found).value().front();
}

// 35 lb are lifted, a tenth of a gram more is not; 16 kg are 35.27 lb.
TEST(Effort, ComparesTheWeightWithWhatOnePersonLifts) {
  const auto heavy = [](const std::string& weight, const std::string& more = "") {
    const Plan plan = dinette_with_a_table_of(weight, more);
    const Conversion way = to_night(plan);
    EXPECT_EQ(way.steps[0].piece.text(), "table");
    return effort_of(plan, way.steps[0]).too_heavy;
  };
  EXPECT_FALSE(heavy("35 lb"));
  EXPECT_TRUE(heavy("35.001 lb"));
  EXPECT_FALSE(heavy("15.8 kg"));
  EXPECT_TRUE(heavy("16 kg"));
  const std::string two = R"("lifting": {"weight": "60 lb", "reason": "two of us"}, )";
  EXPECT_FALSE(heavy("60 lb", two));
  EXPECT_TRUE(heavy("61 lb", two));
}

TEST(Effort, TellsAWeightThatTheWordsRoundTowardCare) {
  const Plan plan = dinette_with_a_table_of("35.001 lb");
  const std::vector<std::string> told = effort_sentences(plan, to_night(plan).steps[0]);
  ASSERT_FALSE(told.empty());
  EXPECT_EQ(told[0],
            "table weighs 36 lb (15.9 kg); one person lifts at most 35 lb (15.8 kg) (common practice, no "
            "source): lift it with two.");
}

TEST(Effort, OfAnUnknownWeightIsUnknown) {
  const Plan plan = dinette_with_a_table_of("");
  const Conversion way = to_night(plan);
  const Effort effort = effort_of(plan, way.steps[0]);
  EXPECT_FALSE(effort.weight);
  EXPECT_FALSE(effort.too_heavy);
  EXPECT_EQ(unknown_weights(plan, way),
            "The plan does not say what table and leg weigh: whether one person lifts each is unknown.");
  const Plan known = dinette_with_a_table_of("20 lb");
  EXPECT_EQ(unknown_weights(known, to_night(known)),
            "The plan does not say what leg weighs: whether one person lifts it is unknown.");
}

// 30 in are reached, 30 in and a tick are not; beyond a door no floor is known.
TEST(Effort, ComparesTheReach) {
  const Plan plan = dinette_with_a_table_of("");
  Step step = to_night(plan).steps[0];
  const auto taking = [&](const std::optional<StandingPlace>& place, const Plan& of) {
    step.taking = place;
    return effort_of(of, step).taking;
  };
  EXPECT_EQ(taking(StandingPlace{{}, 30_in}, plan), Effort::Stand::near);
  EXPECT_EQ(taking(StandingPlace{{}, 30_in + one_tick}, plan), Effort::Stand::far);
  EXPECT_EQ(taking(std::nullopt, plan), Effort::Stand::nowhere);
  const Plan longer = dinette_with_a_table_of("", R"("lifting": {"reach": 36, "reason": "long arms"}, )");
  EXPECT_EQ(taking(StandingPlace{{}, 36_in}, longer), Effort::Stand::near);
  EXPECT_EQ(taking(StandingPlace{{}, 36_in + one_tick}, longer), Effort::Stand::far);
  const std::vector<std::string> told = effort_sentences(longer, step);
  ASSERT_EQ(told.size(), 1U);
  EXPECT_NE(told[0].find("(the plan's own figure, long arms, in place of common practice)"),
            std::string::npos);
  step.from.kind = PiecePlace::Kind::outside;
  EXPECT_EQ(effort_of(plan, step).taking, Effort::Stand::outside);
}

// The piece itself takes its floor: who lets it go stands beside it, who takes it up too.
TEST(Effort, NobodyStandsWhereThePieceStands) {
  const Plan plan = dinette_with_cushions().plan();
  for (const Conversion& way : conversions(plan).value())
    for (std::size_t i = 0; i < way.steps.size(); ++i) {
      const Step& step = way.steps[i];
      const auto meets = [](const PiecePlace& end, const std::optional<StandingPlace>& place) {
        return place && end.stands_in_room() && end.base < 72_in && end.base + end.pose.height > 4_in &&
               overlaps(end.pose.outline, Region(place->square));
      };
      EXPECT_FALSE(meets(step.from, step.taking)) << i;
      EXPECT_FALSE(meets(step.to, step.letting_go)) << i;
    }
}

TEST(Effort, RefusesWhatNobodyWeighs) {
  for (const std::string& weight : {std::string("0 lb"), std::string("1001 lb")}) {
    TrailerText text = dinette();
    text.pieces[0].insert(1, R"("weight": ")" + weight + R"(", )");
    const Result<Plan> plan = read_plan(text.json());
    ASSERT_FALSE(plan) << weight;
    EXPECT_EQ(plan.problems().front().id, "piece.weight");
  }
  TrailerText text = dinette();
  text.more = R"("lifting": {"weight": "20 lb"}, )";
  EXPECT_FALSE(read_plan(text.json()));
}

}  // namespace
}  // namespace berthwright

#include <berthwright/plan/rules.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <set>
#include <string>

namespace berthwright {
namespace {

Length limit(std::string_view id) {
  const Rule* rule = find_rule(id);
  return rule != nullptr && rule->limit ? *rule->limit : Length::from_ticks(-1);
}

TEST(Rules, EveryRuleIsWrittenOutAndNamedOnce) {
  std::set<RuleId> ids;
  for (const Rule& rule : all_rules()) {
    SCOPED_TRACE(rule.id.text());
    EXPECT_TRUE(ids.insert(rule.id).second);
    EXPECT_FALSE(rule.title.empty());
    EXPECT_TRUE(rule.meaning.ends_with("."));
    EXPECT_TRUE(rule.caution.empty() || rule.caution.ends_with("."));
    EXPECT_EQ(find_rule(rule.id.text()), &rule);
    EXPECT_TRUE(rule.source.kind == Source::Kind::common_practice || !rule.source.text.empty());
    EXPECT_TRUE(rule.source.kind != Source::Kind::published || !rule.source.address.empty());
  }
  EXPECT_EQ(ids.size(), 102U);
}

TEST(Rules, AnUnknownNameIsNoRule) { EXPECT_EQ(find_rule("bed.gaps"), nullptr); }

// 49 CFR 393.76(a), berths installed after 30 Sep 1975: 75 x 24 in, 24 in clear above the mattress. 46 CFR
// 116.810(a): 74 x 24 in, 24 in; (b): an aid above 60 in. (Copies of both texts, read 2026.)
TEST(Rules, BerthsAreComparedWithTheTwoFederalRules) {
  EXPECT_EQ(limit("bed.berth-width"), 24_in);
  EXPECT_EQ(limit("bed.berth-length"), 75_in);
  EXPECT_EQ(limit("bed.vessel-length"), 74_in);
  EXPECT_EQ(limit("bed.clear-height"), 24_in);
  EXPECT_EQ(limit("bed.access-aid"), 60_in);
  EXPECT_FALSE(find_rule("bed.access-aid")->at_least);
}

// 16 CFR 1213.2: a bunk bed is one whose mattress support has its underside over 30 in above the floor.
TEST(Rules, AnUndersideAtThirtyInchesIsNotYetABunk) {
  EXPECT_EQ(limit("bed.guard-rail"), 30_in);
  EXPECT_FALSE(find_rule("bed.guard-rail")->at_least);
}

// 16 CFR 1213.3(a): rails at least 5 in above the mattress, at most 15 in open, gaps of at most 0.22 in (5.6
// mm) on the closed side.
TEST(Rules, RailsOfBunksAreComparedWithTheFederalRule) {
  EXPECT_EQ(limit("bed.rail-height"), 5_in);
  EXPECT_TRUE(find_rule("bed.rail-height")->at_least);
  EXPECT_EQ(limit("bed.rail-opening"), 15_in);
  EXPECT_FALSE(find_rule("bed.rail-opening")->at_least);
  EXPECT_EQ(limit("bed.rail-closed-side"), Length::inches(22, 100));
  EXPECT_FALSE(find_rule("bed.rail-closed-side")->at_least);
}

// New York City Fire Code FC 605.10.3(2): 3 ft (914 mm); 3 x 12 x 25.4 = 914.4 exactly. Never 900.
TEST(Rules, ThreeFeetIsNotRoundedToMetric) {
  EXPECT_EQ(limit("heat.three-feet"), Length::millimetres(9144, 10));
  EXPECT_EQ(find_rule("heat.three-feet")->weight, Weight::alert);
}

// Plain facts: two things cannot share a space, and nothing lies on air.
TEST(Rules, OnlyAlertsNameAPublishedRuleTheMakerOrAPlainFact) {
  for (const Rule& rule : all_rules()) {
    if (rule.weight != Weight::alert) continue;
    EXPECT_TRUE(rule.source.kind == Source::Kind::published || rule.source.kind == Source::Kind::maker ||
                rule.id.text().starts_with("room.") || rule.id.text() == "support.rests")
        << rule.id.text();
  }
}

// What is compared is never called more than that: nobody is told that a layout is right.
TEST(Rules, NoRuleClaimsConformity) {
  for (const Rule& rule : all_rules()) {
    std::string words = rule.title + ' ' + rule.meaning + ' ' + rule.caution;
    std::ranges::transform(words, words.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    for (const std::string_view claim : {"safe", "approved", "compl", "conform", "certif", "guarantee"})
      EXPECT_EQ(words.find(claim), std::string::npos) << rule.id.text() << " says " << claim;
  }
}

}  // namespace
}  // namespace berthwright

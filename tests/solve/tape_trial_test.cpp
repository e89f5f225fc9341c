#include "solve/tape_trial.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

Finding trial_finding(const std::string& subject, Status status, std::optional<Length> margin = {},
                      const std::string& rule = "bed.gap") {
  Finding finding;
  finding.rule = RuleId(rule);
  finding.configuration = ConfigurationId("night");
  if (!subject.empty()) finding.subjects = {subject};
  finding.status = status;
  finding.margin = margin;
  return finding;
}

TEST(TapeTrial, MatchesTheSameThingFirst) {
  const TapeTrial trial =
      matched_to({trial_finding("A", Status::met, 2_in), trial_finding("B", Status::met, 1_in)},
                 {trial_finding("B", Status::not_met, -1_in), trial_finding("A", Status::met, 3_in)});
  EXPECT_EQ(trial.of[0]->margin, 3_in);
  EXPECT_EQ(trial.of[1]->margin, -1_in);
  EXPECT_TRUE(trial.arisen.empty());
}

TEST(TapeTrial, TakesTheWorstOfItsKindForWhatIsAboutAnotherThingNow) {
  const TapeTrial trial =
      matched_to({trial_finding("A", Status::met, 2_in)},
                 {trial_finding("C", Status::met, 3_in), trial_finding("B", Status::close, 1_in)});
  EXPECT_EQ(trial.of[0]->subjects, std::vector<std::string>{"B"});
}

TEST(TapeTrial, AFaultBreaksTheFindingThatNothingIsWrong) {
  const TapeTrial trial = matched_to({trial_finding("", Status::met)},
                                     {trial_finding("", Status::met), trial_finding("A", Status::not_met)});
  EXPECT_EQ(trial.of[0]->status, Status::not_met);
  EXPECT_TRUE(trial.arisen.empty());
}

TEST(TapeTrial, ANewFaultArisesAndAnOldOneMayBeGone) {
  const TapeTrial trial = matched_to({trial_finding("A", Status::not_met)},
                                     {trial_finding("A", Status::not_met, {}, "room.overlap"),
                                      trial_finding("B", Status::met, {}, "seat.low")});
  EXPECT_FALSE(trial.of[0]);
  ASSERT_EQ(trial.arisen.size(), 1U);
  EXPECT_EQ(trial.arisen.front().rule.text(), "room.overlap");
}

// Nothing of the kind was fine before, so what is new is not another face of the old.
TEST(TapeTrial, ANewFaultBesideOneThatIsGoneArises) {
  const TapeTrial trial =
      matched_to({trial_finding("A", Status::not_met)}, {trial_finding("B", Status::not_met)});
  ASSERT_EQ(trial.arisen.size(), 1U);
  EXPECT_EQ(trial.arisen.front().subjects, std::vector<std::string>{"B"});
}

TEST(TapeTrial, WhatIsUnknownAndNewArises) {
  const TapeTrial trial =
      matched_to({}, {trial_finding("A", Status::unknown), trial_finding("B", Status::met)});
  ASSERT_EQ(trial.arisen.size(), 1U);
  EXPECT_EQ(trial.arisen.front().status, Status::unknown);
}

TEST(TapeTrial, WorseIsTheOtherSideThenLessMargin) {
  const Finding met = trial_finding("A", Status::met, 2_in);
  const Finding close = trial_finding("A", Status::close, 1_in);
  const Finding not_met = trial_finding("A", Status::not_met, -1_in);
  EXPECT_TRUE(is_worse(close, met) && is_worse(not_met, close) &&
              is_worse(not_met, trial_finding("A", Status::unknown)));
  EXPECT_FALSE(is_worse(met, close) || is_worse(met, met));
}

}  // namespace
}  // namespace berthwright

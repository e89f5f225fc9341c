#include <berthwright/solve/finding.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <stdexcept>

namespace berthwright {
namespace {

// heat.three-feet is an alert, bed.ridge an advice, bed.area an information (src/plan/rules.json).
Finding finding(const char* rule, Status status, const char* configuration = "night") {
  Finding made;
  made.rule = RuleId(rule);
  made.status = status;
  made.configuration = ConfigurationId(configuration);
  return made;
}

std::vector<std::string> labels(const std::vector<Finding>& findings) {
  std::vector<std::string> labels;
  for (const Finding& f : findings) labels.push_back(f.rule.text() + "/" + std::to_string(int(f.status)));
  return labels;
}

TEST(Findings, AlertsComeFirstThenAdviceThenInformation) {
  std::vector<Finding> findings{finding("bed.area", Status::not_met), finding("bed.ridge", Status::not_met),
                                finding("heat.three-feet", Status::met)};
  sort_findings(findings);
  EXPECT_EQ(findings[0].rule.text(), "heat.three-feet");
  EXPECT_EQ(findings[1].rule.text(), "bed.ridge");
  EXPECT_EQ(findings[2].rule.text(), "bed.area");
}

TEST(Findings, OfOneNameAreOrderedByWhateverTheyMeasure) {
  for (const auto& [less, more] : {std::pair<Quantity, Quantity>{Mass::pounds(1), Mass::pounds(2)},
                                   {Portion{1}, Portion{2}},
                                   {Count{1}, Count{2}},
                                   {1_in, 2_in},
                                   {Shares{1, 2}, Shares{1, 3}}}) {
    std::vector<Finding> findings{finding("bed.area", Status::met), finding("bed.area", Status::met)};
    findings[0].measured = more;
    findings[1].measured = less;
    sort_findings(findings);
    EXPECT_EQ(findings[0].measured, less);
  }
}

TEST(Findings, WithinAWeightTheWorstStatusComesFirst) {
  std::vector<Finding> findings{
      finding("heat.three-feet", Status::met), finding("room.overlap", Status::close),
      finding("room.inside", Status::unknown), finding("heat.data-plate", Status::not_met)};
  sort_findings(findings);
  const std::vector<Status> order{Status::not_met, Status::unknown, Status::close, Status::met};
  for (std::size_t i = 0; i < 4; ++i) EXPECT_EQ(findings[i].status, order[i]);
}

TEST(Findings, ThenByConfigurationBedRuleSubjectsVariant) {
  Finding day = finding("heat.three-feet", Status::met, "day");
  day.bed = BedId("z");
  Finding night = finding("heat.data-plate", Status::met, "night");
  Finding night_bed = night;
  night_bed.bed = BedId("a");
  Finding later_rule = night_bed;
  later_rule.rule = RuleId("heat.three-feet");
  Finding later_subject = later_rule;
  later_subject.subjects = {"heater"};
  Finding later_variant = later_subject;
  later_variant.variant = "made up";
  std::vector<Finding> findings{later_variant, later_subject, later_rule, night_bed, night, day};
  sort_findings(findings);
  EXPECT_EQ(findings[0].configuration.text(), "day");
  EXPECT_TRUE(findings[1].bed.empty());
  EXPECT_EQ(findings[2].rule.text(), "heat.data-plate");
  EXPECT_TRUE(findings[3].subjects.empty());
  EXPECT_TRUE(findings[4].variant.empty());
  EXPECT_EQ(findings[5].variant, "made up");
}

TEST(Findings, NumbersAndPlacesSettleWhatNamesDoNot) {
  Finding shorter = finding("heat.three-feet", Status::not_met);
  shorter.measured = Length(10_in);
  Finding longer = shorter;
  longer.measured = Length(12_in);
  Finding elsewhere = longer;
  elsewhere.where = {{{1_in, 1_in}, 1_in}};
  std::vector<Finding> findings{elsewhere, longer, shorter};
  sort_findings(findings);
  EXPECT_EQ(findings[0].measured, Quantity(10_in));
  EXPECT_TRUE(findings[1].where.empty());
  EXPECT_FALSE(findings[2].where.empty());
}

TEST(Findings, TheOrderDoesNotDependOnTheOrderTheyCameIn) {
  std::vector<Finding> findings;
  for (const char* rule : {"bed.area", "bed.ridge", "heat.three-feet", "heat.stowed", "room.inside"})
    for (const Status status : {Status::met, Status::close, Status::not_met, Status::unknown})
      for (const char* configuration : {"day", "night"})
        findings.push_back(finding(rule, status, configuration));
  sort_findings(findings);
  const auto expected = labels(findings);
  std::mt19937 random(3);
  for (int round = 0; round < 20; ++round) {
    SCOPED_TRACE(round);
    std::ranges::shuffle(findings, random);
    sort_findings(findings);
    EXPECT_EQ(labels(findings), expected);
  }
}

TEST(Findings, ARuleThatDoesNotExistIsOurOwnFault) {
  std::vector<Finding> findings{finding("heat.nonsense", Status::met), finding("bed.area", Status::met)};
  EXPECT_THROW(sort_findings(findings), std::logic_error);
}

}  // namespace
}  // namespace berthwright

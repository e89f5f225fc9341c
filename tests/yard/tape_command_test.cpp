#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>
#include <string>

#include <nlohmann/json.hpp>

#include "support/program_said.h"
#include "support/temporary_folder.h"
#include "support/yard_plans.h"

namespace berthwright {
namespace {

using support::ProgramSaid;
using support::told;

class TapeCommand : public testing::Test {
 protected:
  std::string plan(const std::string& text) const { return folder.put("plan.json", text); }
  TemporaryFolder folder;
};

TEST_F(TapeCommand, TellsHowItLookedAndThatThisIsNoProof) {
  const ProgramSaid said = told({"check", "--tape", plan(plan_that_does_not())});
  EXPECT_EQ(said.code, 1) << said.out;
  EXPECT_EQ(said.err, "");
  EXPECT_NE(said.out.find("\nIf the tape is off\n"), std::string::npos) << said.out;
  EXPECT_NE(said.out.find("is no proof"), std::string::npos) << said.out;
  EXPECT_NE(said.out.find("Measure before you cut.\n"), std::string::npos) << said.out;
  std::istringstream lines(said.out);
  for (std::string line; std::getline(lines, line);)
    EXPECT_LE(std::ranges::count_if(line, [](char c) { return (c & 0xC0) != 0x80; }), 100) << line;
}

TEST_F(TapeCommand, CountsAnAlertThatMayTurnOver) {
  // The carrier of the bunk is 31 in up where 30 in asks for rails; at 30 in as written, 1/8 in more turns
  // it.
  std::string text = plan_that_does_not();
  EXPECT_EQ(told({"check", "--tape", "--json", plan(text)}).code, 1);
  const auto at = text.find("31");
  ASSERT_NE(at, std::string::npos);
  text.replace(at, 2, "30");
  ASSERT_EQ(told({"check", plan(text)}).code, 0);
  const ProgramSaid said = told({"check", "--tape", "--json", plan(text)});
  EXPECT_EQ(said.code, 1);
  const auto json = nlohmann::json::parse(said.out);
  EXPECT_EQ(json["exit_code"], 1);
  const auto& findings = json["findings"];
  const auto rail =
      std::ranges::find_if(findings, [](const auto& one) { return one["rule"] == "bed.guard-rail"; });
  ASSERT_NE(rail, findings.end());
  EXPECT_EQ((*rail)["standing"], "turns");
  EXPECT_FALSE((*rail)["with"].empty());
  EXPECT_FALSE(json["measure_again"].empty());
}

TEST_F(TapeCommand, RefusesWhatBelongsToTheCheckAsWritten) {
  const std::string file = plan(plan_that_meets());
  EXPECT_EQ(told({"check", "--tape", "--details", file}).code, 64);
  EXPECT_EQ(told({"check", "--tape", "--defaults", file}).code, 64);
  EXPECT_EQ(told({"check", "--tape", plan(plan_that_is_broken())}).code, 65);
  EXPECT_EQ(told({"check", "--tape", plan(plan_that_falls())}).code, 65);
  EXPECT_EQ(told({"check", "--tape", folder.path("none.json")}).code, 66);
}

}  // namespace
}  // namespace berthwright

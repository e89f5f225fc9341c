#include <berthwright/yard/program.h>

#include <gtest/gtest.h>

#include <filesystem>
#include <sstream>

#include <nlohmann/json.hpp>

#include "support/plan_builder.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

class SplitCommand : public testing::Test {
 protected:
  int split(std::vector<std::string> more, const std::string& plan = "plans/dunnock.json") {
    std::vector<std::string> arguments{"split", repository_path(plan)};
    arguments.insert(arguments.end(), more.begin(), more.end());
    out.str("");
    err.str("");
    return run(arguments, out, err);
  }
  TemporaryFolder folder;
  std::ostringstream out;
  std::ostringstream err;
};

// Dunnock: 22 + 15 1/2 + 15 1/2 + 22 = 75 in, the wheel well in the rear seat.
TEST_F(SplitCommand, WritesAPlanThatTheCheckReadsAndThatClosesAgain) {
  const std::string file = folder.path("chosen.json");
  EXPECT_EQ(split({"--write", file, "--choose", "2"}), 0) << err.str();
  EXPECT_NE(out.str().find("a back 15 1/2\" (393.7 mm) high on the seat"), std::string::npos) << out.str();
  std::ostringstream checked;
  EXPECT_LE(run({"check", "--json", file}, checked, err), 2) << err.str();
  const nlohmann::json answer = nlohmann::json::parse(checked.str());
  for (const auto& finding : answer["findings"])
    EXPECT_FALSE(finding["rule"] == "bed.gap" && finding["status"] == "not met") << finding;
  std::ostringstream again;
  EXPECT_EQ(run({"split", file}, again, err), 0);
  EXPECT_NE(again.str().find("C, Rear seat: 40\" (1016 mm) x 22\" (558.8 mm), cut out 18\" (457.2 mm) x 7\""),
            std::string::npos)
      << again.str();
}

// A filler of one bay once took the letter that a cushion of the other had.
TEST_F(SplitCommand, WritesAPlanWhicheverProposalsOfTwoBaysAreChosen) {
  const std::string file = folder.path("chosen.json");
  for (const char* first : {"0", "1", "2", "3", "4"})
    for (const char* second : {"1", "4"}) {
      SCOPED_TRACE(first + std::string(second));
      ASSERT_EQ(
          split({"--write", file, "--force", "--choose", first, "--choose", second}, "plans/sanderling.json"),
          0);
      const Result<Plan> written = read_plan(bytes_of(file));
      EXPECT_TRUE(written.ok()) << listed(written.problems());
    }
}

TEST_F(SplitCommand, ReplacesNoFileUnasked) {
  const std::string file = folder.put("mine.json", "mine");
  EXPECT_EQ(split({"--write", file}), 73);
  EXPECT_NE(err.str().find("--force"), std::string::npos) << err.str();
  EXPECT_EQ(std::filesystem::file_size(file), 4U);
  EXPECT_EQ(split({"--write", file, "--force"}), 0) << err.str();
  EXPECT_GT(std::filesystem::file_size(file), 1000U);
}

TEST_F(SplitCommand, RefusesWhatItCannotDo) {
  for (const std::vector<std::string>& flags : std::vector<std::vector<std::string>>{
           {"--thickness", "thick"},
           {"--thickness", "0"},
           {"--least-back", "23"},
           {"--least-side", "81 in"},
           {"--night", "noon"},
           {"--fillers", "9"},
           {"--write", folder.path("a.json"), "--choose", "9"},
           {"--write", folder.path("a.json"), "--choose", "1", "--choose", "1"},
           {"--write", folder.path("a.json"), "--choose", "0"}}) {
    SCOPED_TRACE(flags[1]);
    EXPECT_EQ(split(flags), 64);
    EXPECT_NE(err.str(), "");
    EXPECT_EQ(out.str(), "");
  }
  EXPECT_FALSE(std::filesystem::exists(folder.path("a.json")));
}

// Its table lies 1 5/16 in below the benches: 13.297 in would be flush, its ledges carry it at 12 + 0.703.
TEST_F(SplitCommand, SaysWhyThereIsNoBay) {
  EXPECT_EQ(split({}, "plans/nuthatch.json"), 2);
  EXPECT_NE(out.str().find("Table lies 1 5/16\" (32.9 mm) below Left bench by night"), std::string::npos)
      << out.str();
}

TEST_F(SplitCommand, DrawsASheetForEachBay) {
  EXPECT_EQ(split({"--out", folder.path("drawn")}, "plans/sanderling.json"), 0) << err.str();
  EXPECT_TRUE(std::filesystem::exists(folder.path("drawn/1-cushions-bay-1.svg")));
  EXPECT_TRUE(std::filesystem::exists(folder.path("drawn/2-cushions-bay-2.svg")));
}

// What README quotes stands there in order.
TEST_F(SplitCommand, SaysWhatTheReadmeQuotes) {
  const std::string readme = repository_text("README.md");
  const std::size_t told = readme.find("A part of [out/dunnock/split.txt]");
  ASSERT_NE(told, std::string::npos);
  const std::size_t from = readme.find("```\n", told) + 4;
  const std::string quoted = readme.substr(from, readme.find("```", from) - from);
  EXPECT_GT(quoted.size(), 500U);
  EXPECT_NE(repository_text("out/dunnock/split.txt").find(quoted), std::string::npos);
}

TEST_F(SplitCommand, TellsAMachineTheSame) {
  EXPECT_EQ(split({"--json", "--fillers", "0"}), 0);
  const nlohmann::json told = nlohmann::json::parse(out.str());
  ASSERT_EQ(told["bays"].size(), 1U);
  EXPECT_EQ(told["bays"][0]["bounds"]["opposite"]["x_mm"], 115 * 25.4);
  EXPECT_EQ(told["bays"][0]["proposals"][0]["cushions"].size(), 4U);
}

}  // namespace
}  // namespace berthwright

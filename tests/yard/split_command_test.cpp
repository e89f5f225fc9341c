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
           {"--most-back", "5"},
           {"--gap", "0"},
           {"--write", folder.path("a.json"), "--reuse"},
           {"--least-back", "13", "--reuse"},
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

// The back limit under the least piece: both numbers are named.
TEST_F(SplitCommand, SaysWhichLimitsContradictEachOther) {
  EXPECT_EQ(split({"--least-back", "3", "--most-back", "5 in"}), 64);
  EXPECT_NE(err.str().find("the least side of a cushion, 6 in, is larger than the highest back, 5 in"),
            std::string::npos)
      << err.str();
}

// A filler of the second bay is written under the letter it was printed with, though the first is left alone.
TEST_F(SplitCommand, WritesTheLettersThatItPrints) {
  const std::string file = folder.path("chosen.json");
  ASSERT_EQ(split({"--json"}, "plans/sanderling.json"), 0);
  const nlohmann::json told = nlohmann::json::parse(out.str());
  for (const std::size_t number : {std::size_t{1}, told["bays"][1]["proposals"].size()}) {
    ASSERT_EQ(split({"--write", file, "--force", "--choose", "0", "--choose", std::to_string(number)},
                    "plans/sanderling.json"),
              0);
    const Result<Plan> written = read_plan(bytes_of(file));
    ASSERT_TRUE(written.ok());
    for (const auto& cushion : told["bays"][1]["proposals"][number - 1]["cushions"]) {
      const Piece* piece = written->piece(cushion["id"].get<std::string>());
      ASSERT_NE(piece, nullptr) << cushion;
      EXPECT_EQ(piece->name, cushion["name"].get<std::string>());
    }
  }
}

// Dunnock's own four close it: 22 + 15 1/2 + 15 1/2 + 22 = 75 in, the rear seat cut out for the wheel well.
TEST_F(SplitCommand, LaysThePlansOwnCushions) {
  EXPECT_EQ(split({"--reuse"}), 0) << out.str();
  EXPECT_NE(out.str().find("4 cushions of the plan lie on it by day or by night. Laid as follows they close"),
            std::string::npos)
      << out.str();
  EXPECT_EQ(split({"--reuse", "--json"}), 0);
  const nlohmann::json told = nlohmann::json::parse(out.str());
  EXPECT_EQ(told["bays"][0]["reuse"]["closes"], true);
  EXPECT_EQ(told["bays"][0]["reuse"]["cushions"].size(), 4U);
  EXPECT_EQ(split({"--reuse"}, "plans/nuthatch.json"), 2);
}

class OddSplit : public SplitCommand {
 protected:
  // A dinette 60 x 36 in: benches 18 in deep, `table` in between; `more` at the end of the plan.
  std::string dinette(const std::string& table, const std::string& more = "",
                      const std::string& bench_length = "18 in") {
    return folder.put("odd.json", R"({"berthwright": 1, "title": "Odd", "unit": "in",
  "interior": {"length": "10 ft", "width": "6 ft", "height": "6 ft"},
  "fixtures": [
    {"id": "front bench", "kind": "bench", "length": ")" +
                                      bench_length + R"(", "width": "36 in", "top": "14 in",
     "at": {"front": 0, "left": 0}},
    {"id": "rear bench", "kind": "bench", "length": "18 in", "width": "36 in", "top": "14 in",
     "at": {"front": "42 in", "left": 0}}],
  "pieces": [{"id": "table", "kind": "table", "length": ")" +
                                      table + R"(", "width": "36 in", "thickness": "1 in"}],
  "configurations": {
    "day": [{"piece": "table", "at": {"front": "19 in", "left": 0}, "base": "28 in"}],
    "night": [{"piece": "table", "at": {"front": "18 in", "left": 0}, "base": "13 in"}]})" +
                                      more + "}");
  }
  int split_file(const std::string& file, std::vector<std::string> more = {}) {
    more.insert(more.begin(), {"split", file});
    out.str("");
    err.str("");
    return run(more, out, err);
  }
};

// 24 / 2 = 12 in on the seats.
TEST_F(OddSplit, IsProposedWithinTheLimitsOfThePlan) {
  const std::string own =
      dinette("24 in", R"(, "split": {"least_back": "12 in", "most_back": "12 in", "fillers": 0})");
  EXPECT_EQ(split_file(own), 0) << out.str() << err.str();
  EXPECT_NE(out.str().find("a back 12\" (304.8 mm) high on the seat"), std::string::npos) << out.str();
  EXPECT_NE(out.str().find("backs from 12\" (304.8 mm) to 12\" (304.8 mm)"), std::string::npos) << out.str();
  // A flag takes the place of the plan's own.
  EXPECT_EQ(split_file(own, {"--most-back", "14"}), 0);
  EXPECT_NE(out.str().find("backs from 12\" (304.8 mm) to 14\" (355.6 mm)"), std::string::npos) << out.str();
}

TEST_F(OddSplit, TellsHowNearItComes) {
  const std::string plan = dinette(
      "24 in", R"(, "split": {"least_back": "11 7/8", "most_back": "11 7/8", "fillers": 0, "gap": "1/2"})");
  EXPECT_EQ(split_file(plan), 1) << out.str() << err.str();
  EXPECT_NE(out.str().find("Nothing closes exactly"), std::string::npos) << out.str();
  EXPECT_NE(out.str().find("Leaves a gap of 1/4\" (6.4 mm)"), std::string::npos) << out.str();
}

TEST_F(OddSplit, NamesWhatIsWrongInThePlan) {
  EXPECT_EQ(split_file(dinette("24 in", "", "0 in")), 65);
  EXPECT_NE(err.str().find("zero"), std::string::npos) << err.str();
  EXPECT_EQ(split_file(dinette("24 in", R"(, "split": {"fillers": 4, "foam_density": "thick",
      "foam_stock": [{"length": "82 in", "width": "54 in", "thickness": "4 in", "price": "1.234"}], "lift": 0,
      "least_bak": "12 in"})")),
            65);
  for (const char* fault :
       {"0, 1, 2 or 3", "pounds per cubic foot", "a price such as 89", "weighs nothing", "least_back"})
    EXPECT_NE(err.str().find(fault), std::string::npos) << fault << '\n' << err.str();
}

// A table of 25 in on a span of 24 in reaches over both lids: it overlaps a bench.
TEST_F(OddSplit, StandsATableWiderThanTheSpan) {
  EXPECT_EQ(split_file(dinette("25 in")), 0) << err.str();
  EXPECT_NE(out.str().find("rear bench and table need the same space"), std::string::npos) << out.str();
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

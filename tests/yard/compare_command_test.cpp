#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <regex>
#include <set>

#include <nlohmann/json.hpp>

#include "support/plan_builder.h"
#include "support/program_said.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

using ComparedJson = nlohmann::json;
using support::ProgramSaid;
using support::told;

std::string demo(const char* name) { return repository_path(std::string("plans/") + name + ".json"); }

/// "A is better, B not" as "B is better, A not"; where both are told one after the other, A first again.
std::string with_letters_exchanged(std::string sentence) {
  const auto is_word = [&](std::size_t at) {
    const auto is_letter = [&](std::size_t i) {
      return i < sentence.size() && std::isalnum(static_cast<unsigned char>(sentence[i])) != 0;
    };
    return (at == 0 || !is_letter(at - 1)) && !is_letter(at + 1);
  };
  for (std::size_t at = 0; at < sentence.size(); ++at)
    if ((sentence[at] == 'A' || sentence[at] == 'B') && is_word(at))
      sentence[at] = sentence[at] == 'A' ? 'B' : 'A';
  return std::regex_replace(sentence, std::regex("B with (.*); A with (.*)[.]$"), "A with $2; B with $1.");
}

/// The answer of `compare`, its sides, verdicts and the letters of its sentences exchanged.
ComparedJson turned_round(ComparedJson answer) {
  const auto exchange = [](ComparedJson& object, const char* a, const char* b) {
    std::swap(object[a], object[b]);
  };
  exchange(answer, "first", "second");
  exchange(answer, "only_first", "only_second");
  for (ComparedJson& pair : answer["pairs"]) {
    exchange(pair, "first", "second");
    for (ComparedJson& figure : pair["figures"]) {
      exchange(figure, "first", "second");
      std::string verdict = figure["verdict"];
      if (verdict.starts_with("first"))
        verdict.replace(0, 5, "second");
      else if (verdict.starts_with("second"))
        verdict.replace(0, 6, "first");
      else if (verdict == "only first")
        verdict = "only second";
      else if (verdict == "only second")
        verdict = "only first";
      figure["verdict"] = verdict;
      figure["sentence"] = with_letters_exchanged(figure["sentence"]);
    }
  }
  return answer;
}

TEST(CompareCommand, TurnedRoundAnswersTheMirrorImage) {
  const ProgramSaid there = told({"compare", demo("dunnock"), demo("nuthatch"), "--json"});
  const ProgramSaid back = told({"compare", demo("nuthatch"), demo("dunnock"), "--json"});
  EXPECT_EQ(there.code, 1);
  EXPECT_EQ(back.code, 1);
  EXPECT_EQ(there.err, "");
  const ComparedJson answer = ComparedJson::parse(there.out);
  ComparedJson turned = turned_round(answer);
  ComparedJson returned = ComparedJson::parse(back.out);
  ASSERT_EQ(turned["pairs"].size(), returned["pairs"].size());
  std::set<std::string> verdicts;
  for (std::size_t i = 0; i < turned["pairs"].size(); ++i) {
    ComparedJson& there_figures = turned["pairs"][i]["figures"];
    ComparedJson& back_figures = returned["pairs"][i]["figures"];
    ASSERT_EQ(there_figures.size(), back_figures.size());
    for (std::size_t k = 0; k < there_figures.size(); ++k) {
      EXPECT_EQ(there_figures[k], back_figures[k]);
      verdicts.insert(there_figures[k]["verdict"]);
    }
    there_figures.clear();
    back_figures.clear();
  }
  EXPECT_EQ(turned, returned);
  for (const char* verdict : {"first better", "second better", "differs", "only first", "only second"})
    EXPECT_TRUE(verdicts.contains(verdict)) << verdict;
}

TEST(CompareCommand, TellsDayFromNightAndWhichIsBetterByWhichRule) {
  const ProgramSaid said = told({"compare", demo("nuthatch"), "day", "night"});
  EXPECT_EQ(said.code, 1) << said.err;
  EXPECT_TRUE(said.out.starts_with("A: day: Nuthatch")) << said.out.substr(0, 80);
  EXPECT_NE(said.out.find("\nA by day, B by night\n"), std::string::npos);
  EXPECT_NE(said.out.find("(bed.area), only B: "), std::string::npos);
  EXPECT_NE(said.out.find("never of a whole layout"), std::string::npos);
  const ProgramSaid same = told({"compare", demo("nuthatch"), "day", "day"});
  EXPECT_EQ(same.code, 2) << "what is unknown of it is unknown twice";
  EXPECT_NE(same.out.find("Nothing that is known differs; "), std::string::npos) << same.out;
}

TEST(CompareCommand, RefusesWhatItCannotCompare) {
  TemporaryFolder folder;
  EXPECT_EQ(told({"compare", demo("dunnock")}).code, 64);
  EXPECT_EQ(told({"compare", demo("dunnock"), "day", "noon"}).code, 64);
  EXPECT_EQ(told({"compare", demo("dunnock"), "day", "night", "noon"}).code, 64);
  EXPECT_EQ(told({"compare", demo("dunnock"), "day", "night", "--configuration", "day"}).code, 64);
  EXPECT_EQ(told({"compare", demo("dunnock"), demo("nuthatch"), "--configuration", "noon"}).code, 64);
  EXPECT_EQ(told({"compare", "-", "-"}).code, 64);
  EXPECT_EQ(told({"compare", demo("dunnock"), "nowhere.json"}).code, 66);
  const std::string broken = folder.put("broken.json", "{");
  EXPECT_EQ(told({"compare", demo("nuthatch"), broken}).code, 65);
  const ProgramSaid problems = told({"compare", demo("nuthatch"), broken, "--json"});
  EXPECT_EQ(problems.code, 65);
  EXPECT_EQ(ComparedJson::parse(problems.out)["file"], broken);
}

// Each drawing names both, and the table comes last; tests/view/compare_words_test.cpp measures them.
TEST(CompareCommand, DrawsBothSideBySide) {
  TemporaryFolder folder;
  const ProgramSaid said = told({"compare", demo("dunnock"), demo("nuthatch"), "--configuration", "night",
                                 "--out", folder.path("drawn")});
  EXPECT_EQ(said.code, 1) << said.err;
  const std::map<std::string, std::string> files = files_in(folder.path("drawn"));
  ASSERT_FALSE(files.empty());
  const auto has = [&](const std::string& part) {
    return std::ranges::any_of(files,
                               [&](const auto& file) { return file.first.find(part) != std::string::npos; });
  };
  EXPECT_TRUE(has("1-night-plan.svg"));
  EXPECT_TRUE(has("night-heat.svg"));
  EXPECT_TRUE(has("night-ways.svg"));
  EXPECT_FALSE(has("numbers")) << "neither states weights";
  for (const auto& [name, drawing] : files) {
    EXPECT_NE(drawing.find("Dunnock"), std::string::npos) << name;
    EXPECT_NE(drawing.find("Nuthatch"), std::string::npos) << name;
  }
  EXPECT_TRUE(has(std::to_string(files.size()) + "-what-differs.svg"));
}

}  // namespace
}  // namespace berthwright

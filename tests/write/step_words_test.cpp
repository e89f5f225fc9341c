#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <berthwright/write/outputs.h>

#include "support/convert_trailers.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::vector<Conversion> steps_found_in(const Plan& plan) {
  Result<std::vector<Conversion>> found = conversions(plan);
  return std::move(found).value();
}

TEST(StepWords, TellEachStepAsAPersonSaysIt) {
  const Plan plan = dinette().plan();
  const std::string text = steps_text(plan, steps_found_in(plan));
  EXPECT_NE(text.find("From day to night: 3 steps\n  1. Lift table off leg and "), std::string::npos) << text;
  EXPECT_NE(text.find("  2. Open left lid. Lift leg off the floor and put it into left bench.\n"),
            std::string::npos)
      << text;
  EXPECT_NE(text.find(" and lay it flat on left ledge and right ledge.\n"), std::string::npos) << text;
  EXPECT_NE(text.find("  No order has fewer steps, wherever pieces are put aside.\n"), std::string::npos)
      << text;
  EXPECT_NE(text.find("From night to day: 3 steps\n"), std::string::npos) << text;
  EXPECT_NE(text.find("1/8\" (3.1 mm) to left bench and 1/8\" (3.1 mm) to right bench"), std::string::npos)
      << text;
  EXPECT_NE(text.find("the plan does not say (held_by)"), std::string::npos) << text;
}

TEST(StepWords, SayThatThereIsNoneAndWhy) {
  TrailerText trailer = dinette();
  trailer.pieces[0] =
      R"({"id": "table", "kind": "table", "length": "37 3/4", "width": "32 1/2", "thickness": "3/4"})";
  trailer.night[1] = R"({"piece": "table", "at": {"rear": "1/8", "left": "21 3/4"}, "base": "13 1/4"})";
  const Plan plan = trailer.plan();
  const std::string text = steps_text(plan, steps_found_in(plan));
  EXPECT_NE(
      text.find("From day to night: none within these moves, places and sweep bounds\n"
                "  table cannot come to its place of night: it reaches 1/4\" (6.4 mm) into left bench and "
                "right bench."),
      std::string::npos)
      << text;
  // 32 1/2 x cosine + 3/4 x sine: 31.90 + 0.14 = 32.05 at 11 degrees, 31.79 + 0.16 = 31.95 at 12.
  EXPECT_NE(text.find("tilted by 12° it would pass, and not lie flat"), std::string::npos) << text;
}

TEST(StepWords, AreTheSameInJson) {
  const Plan plan = dinette().plan();
  const std::vector<Conversion> found = steps_found_in(plan);
  const auto told = nlohmann::json::parse(steps_json(plan, found));
  ASSERT_EQ(told["conversions"].size(), found.size());
  EXPECT_EQ(told["exit_code"], 0);
  const auto& steps = told["conversions"][0]["steps"];
  ASSERT_EQ(steps.size(), found[0].steps.size());
  for (std::size_t i = 0; i < steps.size(); ++i) {
    EXPECT_EQ(steps[i]["piece"], found[0].steps[i].piece.text());
    EXPECT_EQ(steps[i]["motions"].size(), found[0].steps[i].motions.size());
  }
}

// The seat is put aside beside the counter, sqrt(1096) = 33.1059 in (840.89 mm) from the stove: by hand in
// the tests of what holds meanwhile.
TEST(StepWords, TellWhatIsWrongMeanwhileAndTheCure) {
  TrailerText trailer = dinette_with_cushions();
  trailer.pieces[0].insert(1, R"("weight": "41 lb", )");
  trailer.fixtures.push_back(
      R"({"id": "counter", "kind": "counter", "length": 40, "width": 24, "at": {"rear": 40, "left": 0},
          "top": 30})");
  trailer.fixtures.push_back(
      R"({"id": "stove", "kind": "heater", "length": 10, "width": 10, "at": {"rear": 90, "left": 0},
          "base": 0, "top": 20, "faces": "rear"})");
  const Plan plan = trailer.plan();
  const std::vector<Conversion> found = steps_found_in(plan);
  std::string text = steps_text(plan, found);
  for (std::size_t at = 0; (at = text.find("\n    ")) != std::string::npos;) text.replace(at, 5, " ");
  ASSERT_EQ(found[0].meanwhile.size(), 1U);
  const std::string from = std::to_string(found[0].meanwhile[0].from);
  const std::string until = std::to_string(found[0].meanwhile[0].until);
  EXPECT_NE(
      text.find("After step " + from + ", until step " + until +
                " is done, left seat lies 2' 9 1/16\" (840.8 mm) from stove; at the start and at the end "
                "it is 4' 4\" (1320.8 mm); asked: at least 3' 0\" (914.4 mm) (CPSC"),
      std::string::npos)
      << text;
  EXPECT_NE(text.find("Switch stove off and let it cool before step " + from + "; leave it so until step " +
                      until + " is done."),
            std::string::npos)
      << text;
  EXPECT_NE(
      text.find("table weighs 41 lb (18.6 kg); one person lifts at most 35 lb (15.8 kg) (common practice, no "
                "source): lift it with two."),
      std::string::npos)
      << text;
  EXPECT_NE(text.find("whether one person lifts each is unknown."), std::string::npos) << text;
  EXPECT_EQ(text.find("safe"), std::string::npos);
  EXPECT_EQ(exit_code(found), 0);
  const auto told = nlohmann::json::parse(steps_json(plan, found))["conversions"][0]["meanwhile"];
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0]["rule"], "heat.three-feet");
  EXPECT_EQ(told[0]["at_start"]["mm"], 1320.8);
  EXPECT_EQ(told[0]["compared"]["mm"], 914.4);
}

// What README quotes stands there in order.
TEST(StepWords, AreWhatTheReadmeQuotes) {
  const std::string readme = repository_text("README.md");
  const std::size_t told = readme.find("A part of [out/dunnock/steps.txt]");
  ASSERT_NE(told, std::string::npos);
  const std::size_t from = readme.find("```\n", told) + 4;
  const std::string quoted = readme.substr(from, readme.find("```", from) - from);
  EXPECT_GT(quoted.size(), 500U);
  EXPECT_NE(repository_text("out/dunnock/steps.txt").find(quoted), std::string::npos);
}

TEST(StepWords, ExitCodesFollowTheWorstVerdict) {
  using Verdict = Conversion::Verdict;
  const auto code = [](const std::vector<Verdict>& verdicts) {
    std::vector<Conversion> all(verdicts.size());
    for (std::size_t i = 0; i < verdicts.size(); ++i) all[i].verdict = verdicts[i];
    return exit_code(all);
  };
  EXPECT_EQ(code({Verdict::order, Verdict::order}), 0);
  EXPECT_EQ(code({Verdict::order, Verdict::undecided, Verdict::none}), 1);
  EXPECT_EQ(code({Verdict::order, Verdict::undecided}), 2);
  EXPECT_EQ(code({}), 2);
}

}  // namespace
}  // namespace berthwright

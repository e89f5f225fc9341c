#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::size_t token_end(const std::string& text, std::size_t from) {
  const std::size_t end = text.find_first_of(" ,:{}[]\"\n", from + 1);
  return end == std::string::npos ? text.size() : end;
}

/// One random injury: a changed, lost or doubled byte, a lost, doubled or exchanged token, a cut.
void injure(std::string& text, std::mt19937& random) {
  if (text.size() < 2) return;
  const std::size_t at = random() % text.size();
  const std::size_t token = token_end(text, at) - at;
  const std::vector<std::string> pieces{"0",       "-1",      "1e9",      "\"",          "{",
                                        "}",       "[",       "]",        "null",        "true",
                                        "\"A\"",   ",",       "\xff",     "99999999999", "\"9 9/9\"",
                                        "\\u202e", "\"lid\"", "\"door\"", "\"rear\"",    "\"9 kg\""};
  switch (random() % 8) {
    case 0:
      text[at] = static_cast<char>(random() % 256);
      break;
    case 1:
      text.erase(at, 1);
      break;
    case 2:
      text.insert(at, 1, text[at]);
      break;
    case 3:
      text.erase(at, token);
      break;
    case 4:
      text.insert(at, text.substr(at, token));
      break;
    case 5:
      text.replace(at, token, pieces[random() % pieces.size()]);
      break;
    case 6:
      text.insert(at, pieces[random() % pieces.size()]);
      break;
    case 7:
      if (random() % 4 == 0) text.resize(at);
      break;
  }
}

TEST(MutatedPlans, GiveAPlanOrProblemsWithAPlace) {
  const std::string example = repository_text("tests/plan/example.json");
  std::size_t plans = 0;
  std::size_t refused_by_meaning = 0;
  std::size_t refused_leaves = 0;
  for (unsigned seed = 0; seed < 2000; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    std::string text = example;
    for (unsigned injuries = 1 + seed % 3; injuries > 0; --injuries) injure(text, random);
    const Result<Plan> plan = read_plan(text);
    plans += plan.ok();
    refused_by_meaning += !plan.ok() && !plan.problems().front().id.starts_with("json.");
    std::size_t line = 1;
    for (const Problem& problem : plan.problems()) {
      refused_leaves += problem.pointer.find("/opens/") != std::string::npos;
      ASSERT_GE(problem.line, line) << listed(plan.problems());
      ASSERT_GE(problem.column, 1U);
      ASSERT_FALSE(problem.message.empty());
      ASSERT_FALSE(problem.found.empty() || problem.allowed.empty() || problem.cure.empty())
          << listed({problem});
      line = problem.line;
    }
  }
  // The injuries must reach past the spelling, or the test would try the parser alone.
  EXPECT_GT(plans, 200U);
  EXPECT_GT(refused_by_meaning, 300U);
  EXPECT_GT(refused_leaves, 30U);
}

}  // namespace
}  // namespace berthwright

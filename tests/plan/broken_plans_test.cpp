#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::vector<std::string> broken_plans() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(repository_path("plans/broken")))
    names.push_back(entry.path().filename().string());
  std::ranges::sort(names);
  return names;
}

/// The first line is "// expect: id line, id line; schema refuses".
std::string expected_of(const std::string& text) {
  constexpr std::string_view start = "// expect: ";
  return text.starts_with(start) ? text.substr(start.size(), text.find(';') - start.size()) : "nothing";
}

std::string reported(const Problems& problems) {
  std::string list;
  for (const Problem& p : problems) list += (list.empty() ? "" : ", ") + p.id + ' ' + std::to_string(p.line);
  return list;
}

class BrokenPlan : public testing::TestWithParam<std::string> {};

TEST_P(BrokenPlan, ReportsEveryFaultInItsLine) {
  const std::string text = repository_text("plans/broken/" + GetParam());
  const Result<Plan> plan = read_plan(text);
  EXPECT_EQ(reported(plan.problems()), expected_of(text)) << listed(plan.problems());
  for (const Problem& problem : plan.problems()) {
    EXPECT_GE(problem.line, 1U);
    EXPECT_GE(problem.column, 1U);
    EXPECT_FALSE(problem.message.empty());
    EXPECT_FALSE(problem.message.ends_with('.'));
    EXPECT_FALSE(problem.found.empty()) << problem.message;
    EXPECT_FALSE(problem.allowed.empty()) << problem.message;
    EXPECT_FALSE(problem.cure.empty()) << problem.message;
  }
}

INSTANTIATE_TEST_SUITE_P(Plans, BrokenPlan, testing::ValuesIn(broken_plans()), [](const auto& name) {
  std::string letters = name.param.substr(0, name.param.find('.'));
  std::ranges::replace(letters, '-', '_');
  return letters;
});

TEST(BrokenPlans, CoverManyKindsOfFaults) { EXPECT_GE(broken_plans().size(), 20U); }

}  // namespace
}  // namespace berthwright

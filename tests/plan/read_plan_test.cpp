#include <berthwright/plan/plan.h>

#include <gtest/gtest.h>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

TEST(ReadPlan, ReadsTheExampleWholly) {
  const Result<Plan> plan = read_plan(repository_text("tests/plan/example.json"));
  ASSERT_TRUE(plan) << listed(plan.problems());
  EXPECT_EQ((*plan)->fixtures.size(), 11U);
}

}  // namespace
}  // namespace berthwright

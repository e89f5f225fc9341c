#include <berthwright/exact/result.h>

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <type_traits>
#include <utility>

namespace berthwright {
namespace {

Problem problem(const char* id) {
  Problem out;
  out.id = id;
  return out;
}

TEST(Result, GivesItsValue) {
  const Result<std::string> name(std::string("lapwing"));
  EXPECT_TRUE(name.ok());
  EXPECT_EQ(*name, "lapwing");
  EXPECT_EQ(name->size(), 7U);
  EXPECT_TRUE(name.problems().empty());
}

TEST(Result, GivesEveryProblemInsteadOfAValue) {
  const Result<int> failed(Problems{problem("a"), problem("b")});
  EXPECT_FALSE(failed);
  ASSERT_EQ(failed.problems().size(), 2U);
  EXPECT_EQ(failed.problems()[1], problem("b"));
  EXPECT_THROW((void)failed.value(), std::logic_error);
}

TEST(Result, HoldsAProblemAsAValueOnlyWhenAsked) {
  const Result<int> failed(problem("a"));
  ASSERT_EQ(failed.problems().size(), 1U);
  EXPECT_EQ(failed.problems()[0].id, "a");
}

TEST(Result, RefusesToFailWithoutAReason) { EXPECT_THROW(Result<int>(Problems{}), std::logic_error); }

// A reference would dangle in a loop over the value of a temporary.
TEST(Result, GivesTheValueOfATemporaryByValue) {
  static_assert(std::is_same_v<decltype(std::declval<Result<std::string>>().value()), std::string>);
  std::string all;
  for (const char c : Result<std::string>("some text longer than fits into the string itself").value()) all += c;
  EXPECT_EQ(all, "some text longer than fits into the string itself");
}

TEST(Result, LetsItsValueMoveOut) {
  Result<std::unique_ptr<int>> owner(std::make_unique<int>(5));
  const std::unique_ptr<int> taken = std::move(owner).value();
  EXPECT_EQ(*taken, 5);
}

}  // namespace
}  // namespace berthwright

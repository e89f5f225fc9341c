#include "solve/cover/joins.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <random>

namespace berthwright {
namespace {

// Every choice of whole inches, by trying them all. Stretches are given in whole inches too.
std::optional<JoinCost> least_cost(const std::vector<JoinStretch>& stretches, int total, int shortest,
                                   int longest) {
  std::optional<JoinCost> best;
  std::vector<Join> chosen;
  const std::function<void(int)> go_on = [&](int last) {
    if (total - last <= longest && (total - last >= shortest || last == 0)) {
      int front = 0, seen = 0;
      std::int64_t far = 0;
      for (const Join& join : chosen) {
        front += join.front ? 1 : 0;
        seen += join.seen;
        far += std::min(join.at, Length::inches(total) - join.at).ticks();
      }
      const JoinCost cost{front, static_cast<int>(chosen.size()), seen, far};
      if (!best || cost < *best) best = cost;
    }
    for (int at = last + shortest; at <= last + longest && at <= total - shortest; ++at)
      for (const JoinStretch& there : stretches) {
        if (Length::inches(at) < there.from || there.to < Length::inches(at)) continue;
        chosen.push_back({Length::inches(at), there.edge, there.front, there.seen});
        go_on(at);
        chosen.pop_back();
      }
  };
  go_on(0);
  return best;
}

std::vector<JoinStretch> random_stretches(std::mt19937_64& random, int total) {
  const auto upto = [&](int most) { return std::uniform_int_distribution(0, most)(random); };
  std::vector<JoinStretch> stretches;
  int at = upto(2);
  while (at < total) {
    const int to = std::min(total, at + upto(8));
    stretches.push_back({Length::inches(at), Length::inches(to), upto(2) == 0, upto(2), stretches.size()});
    at = to + 1 + upto(4) * upto(3);
  }
  return stretches;
}

// A seat of 42 x 23: the zip takes the back of 42 and 3 in of each side; 20 + 42 + 20 = 82 are left. With
// strips of 53 none may end on the front, 20 to 62: two joins, at least 29 in from the ends together (82 -
// 53).
TEST(Joins, KeepOffTheFrontOfASeat) {
  const std::vector<JoinStretch> seat{
      {Length{}, 19_in, false, 1, 0}, {21_in, 61_in, true, 2, 1}, {63_in, 82_in, false, 1, 2}};
  const auto joins = best_joins(seat, 82_in, 6_in, 53_in);
  ASSERT_TRUE(joins);
  ASSERT_EQ(joins->size(), 2U);
  EXPECT_FALSE((*joins)[0].front || (*joins)[1].front);
  EXPECT_LE((*joins)[1].at - (*joins)[0].at, 53_in);
  EXPECT_EQ(cost_of(*joins, 82_in), (JoinCost{0, 2, 2, (29_in).ticks()}));
}

TEST(Joins, AreNoneWhereOneStripDoes) {
  EXPECT_EQ(best_joins({}, 53_in, 6_in, 53_in), std::vector<Join>{});
  EXPECT_FALSE(best_joins({}, 54_in, 6_in, 53_in));
}

TEST(Joins, FallOnAFrontOnlyWhereNothingElseDoes) {
  const std::vector<JoinStretch> front{{1_in, 79_in, true, 2, 0}};
  const auto joins = best_joins(front, 80_in, 6_in, 53_in);
  ASSERT_TRUE(joins);
  EXPECT_EQ(joins->size(), 1U);
  EXPECT_TRUE(joins->front().front);
}

TEST(Joins, AreHiddenWhereTheyCan) {
  const std::vector<JoinStretch> mixed{{1_in, 30_in, false, 2, 0}, {31_in, 50_in, false, 0, 1}};
  const auto joins = best_joins(mixed, 80_in, 6_in, 53_in);
  ASSERT_TRUE(joins);
  ASSERT_EQ(joins->size(), 1U);
  EXPECT_EQ(joins->front().edge, 1U);
  EXPECT_EQ(joins->front().at, 50_in);
}

TEST(Joins, AgreeWithATwinThatTriesEveryInch) {
  std::mt19937_64 random(20261128);
  int cut = 0, never = 0;
  for (int i = 0; i < 300; ++i) {
    const int total = std::uniform_int_distribution(8, 34)(random);
    const std::vector<JoinStretch> stretches = random_stretches(random, total);
    const auto joins = best_joins(stretches, Length::inches(total), 3_in, 10_in);
    const auto twin = least_cost(stretches, total, 3, 10);
    ASSERT_EQ(joins.has_value(), twin.has_value()) << i;
    if (!joins) {
      ++never;
      continue;
    }
    cut += joins->empty() ? 0 : 1;
    EXPECT_EQ(cost_of(*joins, Length::inches(total)), *twin) << i;
    Length last;
    for (const Join& join : *joins) {
      EXPECT_LE(3_in, join.at - last);
      EXPECT_LE(join.at - last, 10_in);
      last = join.at;
    }
    if (!joins->empty()) {
      EXPECT_LE(3_in, Length::inches(total) - last);
    }
  }
  EXPECT_GT(cut, 100);
  EXPECT_GT(never, 10);
}

// The other way round, the cost is the same.
TEST(Joins, CostTheSameInTheMirror) {
  std::mt19937_64 random(11);
  for (int i = 0; i < 200; ++i) {
    const int total = std::uniform_int_distribution(20, 60)(random);
    std::vector<JoinStretch> stretches = random_stretches(random, total);
    const auto joins = best_joins(stretches, Length::inches(total), 3_in, 10_in);
    for (JoinStretch& one : stretches)
      one = {Length::inches(total) - one.to, Length::inches(total) - one.from, one.front, one.seen, one.edge};
    std::ranges::reverse(stretches);
    const auto other = best_joins(stretches, Length::inches(total), 3_in, 10_in);
    ASSERT_EQ(joins.has_value(), other.has_value());
    if (joins) {
      EXPECT_EQ(cost_of(*joins, Length::inches(total)), cost_of(*other, Length::inches(total)));
    }
  }
}

}  // namespace
}  // namespace berthwright

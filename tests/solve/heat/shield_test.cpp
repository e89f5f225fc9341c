#include "solve/heat/shield.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "oracle/least_lines.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using oracle::InchBox;

Solid block(const InchBox& box) {
  return Solid(Region(support::inch_rect(box.low[0], box.low[1], box.high[0], box.high[1])),
               Length::inches(box.low[2]), Length::inches(box.high[2]));
}

/// Things of which only the solid and the id count.
class Screens {
 public:
  explicit Screens(const std::vector<Solid>& solids) {
    for (std::size_t i = 0; i < solids.size(); ++i)
      things_.push_back(
          {std::string(1, static_cast<char>('a' + i)), nullptr, nullptr, nullptr, solids[i], {}, {}});
  }
  std::vector<std::string> between(const Solid& source, const std::vector<Solid>& solids) const {
    std::vector<const Placed*> shields;
    for (const Placed& thing : things_) shields.push_back(&thing);
    return shielding(shields, source, solids);
  }

 private:
  std::vector<Placed> things_;
};

using Names = std::vector<std::string>;
// A heater of 10 x 10 x 10 in, and a cushion 30 in behind it, 5 in wider on both sides, 4 in high.
const Solid warm_box = block({{0, 0, 0}, {10, 10, 10}});
const Solid cushion = block({{40, -5, 0}, {60, 15, 4}});

Names screened(const std::vector<InchBox>& screens) {
  std::vector<Solid> solids;
  for (const InchBox& box : screens) solids.push_back(block(box));
  return Screens(solids).between(warm_box, {cushion});
}

// The lines of least distance, 30 in, run from y = 0 to 10 and from the floor to 4 in.
TEST(Shield, StandsOnEveryLineOfLeastDistance) {
  EXPECT_EQ(screened({{{20, 0, 0}, {21, 10, 4}}}), Names{"a"});
  EXPECT_EQ(screened({{{20, -9, 0}, {21, 19, 30}}}), Names{"a"});
  EXPECT_TRUE(screened({{{20, 1, 0}, {21, 10, 4}}}).empty());
  EXPECT_TRUE(screened({{{20, 0, 0}, {21, 10, 3}}}).empty());
  EXPECT_TRUE(screened({{{20, 0, 1}, {21, 10, 4}}}).empty());
  EXPECT_TRUE(screened({{{70, 0, 0}, {71, 10, 4}}}).empty());
  EXPECT_TRUE(screened({}).empty());
}

TEST(Shield, SeveralMayStandThereTogether) {
  EXPECT_EQ(screened({{{20, -5, 0}, {21, 6, 4}}, {{25, 6, 0}, {29, 12, 9}}}), (Names{"a", "b"}));
  EXPECT_TRUE(screened({{{20, -5, 0}, {21, 5, 4}}, {{25, 6, 0}, {29, 12, 9}}}).empty());
  EXPECT_EQ(screened({{{20, 0, 0}, {21, 10, 2}}, {{25, 0, 2}, {29, 10, 9}}}), (Names{"a", "b"}));
}

// Corner to corner there is one line: from (10, 10) to (40, 50).
TEST(Shield, OnTheLineFromCornerToCorner) {
  const std::vector<Solid> beyond{block({{40, 50, 0}, {60, 70, 4}})};
  const auto with = [&](const InchBox& screen) { return Screens({block(screen)}).between(warm_box, beyond); };
  EXPECT_EQ(with({{24, 28, 0}, {26, 32, 4}}), Names{"a"});
  EXPECT_TRUE(with({{24, 31, 0}, {25, 33, 4}}).empty());
  EXPECT_TRUE(with({{24, 28, 0}, {26, 32, 3}}).empty());
}

// What can burn hangs 20 in above the heater's top, straight over it or 30 in behind: upright or slanting
// lines.
TEST(Shield, OnLinesThatRise) {
  const std::vector<Solid> over{block({{2, -20, 30}, {40, 6, 34}})};
  EXPECT_EQ(Screens({block({{0, 0, 20}, {10, 10, 21}})}).between(warm_box, over), Names{"a"});
  EXPECT_EQ(Screens({block({{2, 0, 20}, {10, 6, 21}})}).between(warm_box, over), Names{"a"});
  EXPECT_TRUE(Screens({block({{3, 0, 20}, {10, 6, 21}})}).between(warm_box, over).empty());
  const std::vector<Solid> behind{block({{40, 0, 30}, {60, 10, 34}})};
  // At x = 25 the lines are halfway up, at 20 in.
  EXPECT_EQ(Screens({block({{24, 0, 19}, {26, 10, 21}})}).between(warm_box, behind), Names{"a"});
  EXPECT_TRUE(Screens({block({{24, 0, 22}, {26, 10, 30}})}).between(warm_box, behind).empty());
  EXPECT_TRUE(Screens({block({{24, 0, 10}, {26, 10, 18}})}).between(warm_box, behind).empty());
}

TEST(Shield, OfSeveralSolidsEveryNearestOneMustBeScreened) {
  const Screens screen({block({{20, 0, 0}, {21, 10, 10}})});
  const Solid left = block({{0, -50, 0}, {10, -30, 4}});  // as far off, on another side
  const Solid farther = block({{0, -70, 0}, {10, -31, 4}});
  EXPECT_TRUE(screen.between(warm_box, {cushion, left}).empty());
  EXPECT_EQ(screen.between(warm_box, {cushion, farther}), Names{"a"});
  EXPECT_TRUE(screen.between(warm_box, {block({{5, 5, 5}, {9, 9, 9}})})
                  .empty());  // nothing stands between what meets
}

// Parallel faces that slant are not followed.
TEST(Shield, BetweenSlantingFacesNothingIsTold) {
  const auto slanting = [](int by) {
    return Solid(
        Region(Polygon::promised({support::inch_point(by, by), support::inch_point(by + 10, by - 10),
                                  support::inch_point(by + 20, by), support::inch_point(by + 10, by + 10)})),
        0_in, 5_in);
  };
  EXPECT_TRUE(Screens({block({{5, -40, 0}, {30, 60, 9}})}).between(slanting(0), {slanting(40)}).empty());
}

InchBox drawn_box(std::mt19937& random, int most) {
  InchBox box{};
  for (int k = 0; k < 3; ++k) {
    box.low[k] = static_cast<int>(random() % static_cast<unsigned>(most));
    box.high[k] = box.low[k] + 1 + static_cast<int>(random() % 12);
  }
  return box;
}

InchBox mirror_of(InchBox box) {
  std::swap(box.low[1], box.high[1]);
  box.low[1] = -box.low[1], box.high[1] = -box.high[1];
  return box;
}

// Twin: lines at every half inch. And the same in the mirror, elsewhere and in another order.
TEST(Shield, AgreesWithTheLinesOfTheTwin) {
  int stopped = 0;
  int together = 0;
  for (unsigned seed = 0; seed < 3000; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const InchBox a = drawn_box(random, 24), b = drawn_box(random, 24);
    if (nearest(block(a), block(b)).squared == Length{}) continue;
    std::vector<InchBox> shields;
    for (int i = 0; i < 4; ++i) shields.push_back(drawn_box(random, 20));
    std::vector<Solid> solids, mirrors, shifted;
    for (const InchBox& shield : shields) {
      solids.push_back(block(shield));
      mirrors.push_back(block(mirror_of(shield)));
      shifted.emplace_back(moved(solids.back().outline(), {7_in, 5_in}), solids.back().base(),
                           solids.back().top());
    }
    const Names names = Screens(solids).between(block(a), {block(b)});
    const Region in_plan = block(a).outline();
    if (nearest(in_plan, block(b).outline()).squared == Length{} && !overlaps(in_plan, block(b).outline())) {
      EXPECT_TRUE(names.empty());  // one beside the other, seen from above: nothing is told
      continue;
    }
    ASSERT_EQ(!names.empty(), oracle::every_line_is_stopped(a, b, shields));
    EXPECT_EQ(Screens(mirrors).between(block(mirror_of(a)), {block(mirror_of(b))}), names);
    const auto elsewhere = [](const Solid& s) {
      return Solid(moved(s.outline(), {7_in, 5_in}), s.base(), s.top());
    };
    EXPECT_EQ(Screens(shifted).between(elsewhere(block(a)), {elsewhere(block(b))}), names);
    EXPECT_EQ(Screens(solids).between(block(b), {block(a)}).size(), names.size());
    std::ranges::reverse(solids);
    EXPECT_EQ(Screens(solids).between(block(a), {block(b)}).size(), names.size());
    stopped += names.empty() ? 0 : 1;
    together += names.size() > 1 ? 1 : 0;
  }
  EXPECT_GT(stopped, 100);
  EXPECT_GT(together, 20);
}

}  // namespace
}  // namespace berthwright

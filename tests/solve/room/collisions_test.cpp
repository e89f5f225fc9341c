#include <berthwright/solve/room/collisions.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using support::Furniture;
using support::Spot;

std::vector<Collision> collisions_in(const Plan& plan) {
  const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
  if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
  return find_collisions(*arrangement);
}

// Two pieces side by side on the floor, the second reaching `over` into the first.
std::vector<Collision> side_by_side(const std::string& kind, const std::string& first_length) {
  return collisions_in(Furniture()
                           .lay("first", kind, {"0", "0", first_length, "24"}, "4", R"("base": "0")")
                           .lay("second", kind, {"38", "0", "38", "24"}, "4", R"("base": "0")")
                           .plan());
}

TEST(Collisions, TouchingIsNone) {
  EXPECT_TRUE(side_by_side("cushion", "38").empty());
  // One upon the other.
  EXPECT_TRUE(collisions_in(Furniture()
                                .lay("lower", "board", {"0", "0", "38", "24"}, "1")
                                .lay("upper", "board", {"0", "0", "38", "24"}, "1")
                                .plan())
                  .empty());
}

TEST(Collisions, FoamGivesAQuarterOfAnInchAtAJoint) {
  const std::vector<Collision> quarter = side_by_side("cushion", "38 1/4");
  ASSERT_EQ(quarter.size(), 1U);
  EXPECT_EQ(quarter[0].first, "first");
  EXPECT_EQ(quarter[0].second, "second");
  EXPECT_EQ(quarter[0].shared, Region(Rect{{38_in, 0_in}, {38_in + Length::inches(1, 4), 24_in}}));
  EXPECT_EQ(quarter[0].base, 0_in);
  EXPECT_EQ(quarter[0].top, 4_in);
  EXPECT_EQ(quarter[0].depth, Length::inches(1, 4));
  EXPECT_TRUE(quarter[0].tolerated);
  const std::vector<Collision> more = side_by_side("cushion", "38 17/64");
  ASSERT_EQ(more.size(), 1U);
  EXPECT_EQ(more[0].depth, Length::inches(17, 64));
  EXPECT_FALSE(more[0].tolerated);
}

TEST(Collisions, BoardsNeverGive) {
  const std::vector<Collision> boards = side_by_side("board", "38 1/64");
  ASSERT_EQ(boards.size(), 1U);
  EXPECT_EQ(boards[0].depth, Length::inches(1, 64));
  EXPECT_FALSE(boards[0].tolerated);
}

// Cushions of 20 1/4 in every 20 in: each joint gives 1/4, three of them give 1/2 in all, four 3/4.
TEST(Collisions, ARowGivesHalfAnInch) {
  const auto row_of = [](int count) {
    Furniture furniture;
    for (int i = 0; i < count; ++i)
      furniture.lay("c" + std::to_string(i), "cushion", {std::to_string(20 * i), "0", "20 1/4", "24"}, "4");
    return collisions_in(furniture.plan());
  };
  const auto is_tolerated = [](const Collision& collision) { return collision.tolerated; };
  EXPECT_EQ(row_of(3).size(), 2U);
  EXPECT_TRUE(std::ranges::all_of(row_of(3), is_tolerated));
  EXPECT_EQ(row_of(4).size(), 3U);
  EXPECT_TRUE(std::ranges::none_of(row_of(4), is_tolerated));
}

// Joints across the row do not add to those along it.
TEST(Collisions, ARowRunsInOneDirection) {
  const std::vector<Collision> square =
      collisions_in(Furniture()
                        .lay("a", "cushion", {"0", "0", "20 1/4", "20 1/4"}, "4")
                        .lay("b", "cushion", {"20", "0", "20", "20 1/4"}, "4")
                        .lay("c", "cushion", {"0", "20", "20 1/4", "20"}, "4")
                        .lay("d", "cushion", {"20", "20", "20", "20"}, "4")
                        .plan());
  // Four joints and two corners where opposite cushions meet.
  ASSERT_EQ(square.size(), 6U);
  for (const Collision& collision : square) {
    EXPECT_EQ(collision.depth, Length::inches(1, 4));
    EXPECT_TRUE(collision.tolerated) << collision.first << collision.second;
  }
}

TEST(Collisions, AnUprightCabinetPressesACushionAsAWallDoes) {
  const auto beside = [](const std::string& kind) {
    std::string more = kind == "heater" ? R"("faces": "rear")" : "";
    return collisions_in(Furniture()
                             .fixture("bench", "bench", {"0", "0", "40", "24"}, "0", "14")
                             .fixture("thing", kind, {"40", "0", "20", "24"}, "0", "36", more)
                             .lay("seat", "cushion", {"0", "0", "40 1/4", "24"}, "4")
                             .plan());
  };
  for (const std::string kind : {"cabinet", "wall", "locker"}) {
    ASSERT_EQ(beside(kind).size(), 1U) << kind;
    EXPECT_TRUE(beside(kind)[0].tolerated) << kind;
    EXPECT_EQ(beside(kind)[0].first, "thing") << kind;
  }
  for (const std::string kind : {"heater", "refrigerator", "smoke alarm"}) {
    ASSERT_EQ(beside(kind).size(), 1U) << kind;
    EXPECT_FALSE(beside(kind)[0].tolerated) << kind;
  }
}

TEST(Collisions, ALipThatPressesFromBelowIsTolerated) {
  const std::vector<Collision> found =
      collisions_in(Furniture()
                        .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
                        .fixture("lip", "ledge", {"0", "23 1/4", "75", "3/4"}, "14", "14 3/4")
                        .lay("seat", "cushion", {"0", "0", "75", "24"}, "4")
                        .plan());
  ASSERT_EQ(found.size(), 1U);
  EXPECT_TRUE(found[0].tolerated);
  EXPECT_EQ(found[0].depth, Length::inches(3, 4));
}

// The board at 14 in runs 10 x 6 in into a cabinet that reaches 1/2 in above its underside.
TEST(Collisions, TheDepthIsTheLeastWayOut) {
  const auto depth = [](const std::string& cabinet_top) {
    const std::vector<Collision> found =
        collisions_in(Furniture()
                          .fixture("cabinet", "cabinet", {"30", "0", "20", "6"}, "0", cabinet_top)
                          .lay("board", "board", {"0", "0", "40", "24"}, "8", R"("base": "14")")
                          .plan());
    return found.at(0).depth;
  };
  EXPECT_EQ(depth("14 1/2"), Length::inches(1, 2));
  EXPECT_EQ(depth("30"), 6_in);
}

TEST(Collisions, FixturesAreNotTestedAgainstEachOther) {
  EXPECT_TRUE(collisions_in(Furniture()
                                .fixture("a", "cabinet", {"0", "0", "20", "20"}, "0", "30")
                                .fixture("b", "cabinet", {"10", "0", "20", "20"}, "0", "30")
                                .plan())
                  .empty());
}

/// A box of whole inches.
struct CellBox {
  int x, y, length, width, base, height;
  bool overlaps_in_some_cell(const CellBox& other) const {
    for (int i = x; i < x + length; ++i)
      for (int j = y; j < y + width; ++j)
        for (int k = base; k < base + height; ++k)
          if (other.x <= i && i < other.x + other.length && other.y <= j && j < other.y + other.width &&
              other.base <= k && k < other.base + other.height)
            return true;
    return false;
  }
};

Plan plan_of(const std::vector<CellBox>& boxes, bool mirror) {
  Furniture furniture;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    const CellBox& box = boxes[i];
    const int y = mirror ? 76 - box.y - box.width : box.y;
    furniture.lay(
        "p" + std::to_string(i), "board",
        {std::to_string(box.x), std::to_string(y), std::to_string(box.length), std::to_string(box.width)},
        std::to_string(box.height), R"("base": ")" + std::to_string(box.base) + '"');
  }
  return furniture.plan();
}

TEST(Collisions, AgreesWithCountingCellsAndDoesNotCareForMirror) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto draw = [&](int low, int high) {
      return std::uniform_int_distribution<int>(low, high)(random);
    };
    std::vector<CellBox> boxes;
    for (int i = 0; i < 8; ++i)
      boxes.push_back({draw(0, 30), draw(0, 30), draw(1, 14), draw(1, 14), draw(0, 10), draw(1, 6)});
    const std::vector<Collision> found = collisions_in(plan_of(boxes, false));
    std::size_t next = 0;
    for (std::size_t i = 0; i < boxes.size(); ++i)
      for (std::size_t j = i + 1; j < boxes.size(); ++j) {
        if (!boxes[i].overlaps_in_some_cell(boxes[j])) continue;
        ASSERT_LT(next, found.size());
        EXPECT_EQ(found[next].first, "p" + std::to_string(i));
        EXPECT_EQ(found[next].second, "p" + std::to_string(j));
        const auto share = [](int low_a, int size_a, int low_b, int size_b) {
          return std::min(low_a + size_a, low_b + size_b) - std::max(low_a, low_b);
        };
        const CellBox& a = boxes[i];
        const CellBox& b = boxes[j];
        EXPECT_EQ(found[next].depth, Length::inches(std::min({share(a.x, a.length, b.x, b.length),
                                                              share(a.y, a.width, b.y, b.width),
                                                              share(a.base, a.height, b.base, b.height)})));
        ++next;
      }
    EXPECT_EQ(next, found.size());
    const std::vector<Collision> other = collisions_in(plan_of(boxes, true));
    ASSERT_EQ(other.size(), found.size());
    for (std::size_t i = 0; i < found.size(); ++i) EXPECT_EQ(other[i].depth, found[i].depth);
  }
}

}  // namespace
}  // namespace berthwright

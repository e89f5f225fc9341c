#include "view/hatching.h"

#include <gtest/gtest.h>

#include "support/paper_boxes.h"

namespace berthwright {
namespace {

using support::box_mm;

bool on_box(const PaperBox& box, PaperPoint p) { return holds(box, PaperBox{p, p}); }

void expect_clear(const std::vector<Path>& paths, const PaperBox& box, const PaperBox& words) {
  ASSERT_FALSE(paths.empty());
  for (const Path& path : paths)
    for (const PaperLine& line : lines(path)) {
      EXPECT_TRUE(on_box(box, line.from) && on_box(box, line.to));
      EXPECT_FALSE(crosses(line, words));
    }
}

TEST(Hatching, StaysInItsBoxAndOffTheLettering) {
  const PaperBox box = box_mm(10, 10, 60, 20);
  const PaperBox words = box_mm(22, 13, 35, 17);
  expect_clear(zigzag_in(box, {words}), box, words);
  expect_clear(diagonals_in(box, {words}), box, words);
  EXPECT_EQ(zigzag_in(box, {words}).size(), 2U) << "before and behind the words";
  const PaperBox upright = box_mm(10, 10, 18, 70);
  expect_clear(zigzag_in(upright, {box_mm(11, 30, 17, 40)}), upright, box_mm(11, 30, 17, 40));
}

TEST(Hatching, ParallelLinesKeepApart) {
  const std::vector<Path> paths = diagonals_in(box_mm(0, 0, 30, 30), {});
  std::int64_t last = -1;
  for (const Path& path : paths) {
    const std::int64_t sum = (path.from.x + path.from.y).micrometres();
    // 1.7 mm along the level is 1.2 mm between lines at 45 degrees; 0.7 mm is asked.
    if (last >= 0) {
      EXPECT_EQ(sum - last, 1700);
    }
    last = sum;
  }
  EXPECT_GT(paths.size(), 30U);
}

// A square of 20 mm with a hole of 10 mm in it, rising and falling.
TEST(Hatching, KeepsOutOfHolesAndOfTheOutside) {
  const auto ring = [](const PaperBox& b) {
    return PaperRing{b.low, {b.high.x, b.low.y}, b.high, {b.low.x, b.high.y}};
  };
  const PaperBox outer = box_mm(10, 30, 30, 50);
  const PaperBox hole = box_mm(15, 35, 25, 45);
  for (const Diagonal way : {Diagonal::rising, Diagonal::falling}) {
    const std::vector<Path> paths = diagonals_in({ring(outer), ring(hole)}, paper_mm(2), way, {});
    ASSERT_FALSE(paths.empty());
    std::int64_t length = 0;
    for (const Path& path : paths) {
      const PaperPoint to = path.stretches[0].to;
      EXPECT_TRUE(on_box(outer, path.from) && on_box(outer, to));
      EXPECT_FALSE(crosses({path.from, to}, grown(hole, -paper_mm(1, 100))));
      const bool rises = (to.y < path.from.y) == (to.x > path.from.x);
      EXPECT_EQ(rises, way == Diagonal::rising);
      length += std::abs((to.x - path.from.x).micrometres());
    }
    // 300 mm² of material, a line every 2 mm of the level: its lines are 150 mm long, measured along the
    // level.
    EXPECT_NEAR(static_cast<double>(length), 150e3, 5e3);
  }
}

TEST(Hatching, AThinBoxHasNone) {
  EXPECT_TRUE(zigzag_in({{}, {paper_mm(40), paper_mm(1)}}, {}).empty());
  EXPECT_TRUE(zigzag_in(box_mm(0, 0, 40, 5), {box_mm(0, 0, 40, 5)}).empty());
}

}  // namespace
}  // namespace berthwright

#include "view/hatching.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

PaperBox box_mm(std::int64_t x0, std::int64_t y0, std::int64_t x1, std::int64_t y1) {
  return {{paper_mm(x0), paper_mm(y0)}, {paper_mm(x1), paper_mm(y1)}};
}

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

TEST(Hatching, AThinBoxHasNone) {
  EXPECT_TRUE(zigzag_in({{}, {paper_mm(40), paper_mm(1)}}, {}).empty());
  EXPECT_TRUE(zigzag_in(box_mm(0, 0, 40, 5), {box_mm(0, 0, 40, 5)}).empty());
}

}  // namespace
}  // namespace berthwright

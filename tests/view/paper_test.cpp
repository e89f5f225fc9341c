#include "view/paper.h"

#include <gtest/gtest.h>

#include <random>

namespace berthwright {
namespace {

PaperPoint at(std::int64_t x, std::int64_t y) {
  return {PaperLength::micrometres(x), PaperLength::micrometres(y)};
}
const PaperBox ten_square{at(10, 10), at(20, 20)};

TEST(PaperBox, TouchingIsNoOverlap) {
  EXPECT_FALSE(overlaps(ten_square, {at(20, 10), at(30, 20)}));
  EXPECT_TRUE(overlaps(ten_square, {at(19, 19), at(30, 30)}));
}

TEST(PaperLine, CrossesABoxItRunsThrough) {
  EXPECT_TRUE(crosses(PaperLine{at(0, 15), at(30, 15)}, ten_square)) << "level";
  EXPECT_TRUE(crosses(PaperLine{at(15, 0), at(15, 30)}, ten_square)) << "upright";
  EXPECT_TRUE(crosses(PaperLine{at(5, 5), at(25, 25)}, ten_square)) << "slanted";
  EXPECT_TRUE(crosses(PaperLine{at(14, 14), at(16, 15)}, ten_square)) << "within";
  EXPECT_FALSE(crosses(PaperLine{at(0, 10), at(30, 10)}, ten_square)) << "along its border";
  EXPECT_FALSE(crosses(PaperLine{at(0, 25), at(25, 30)}, ten_square));
  EXPECT_FALSE(crosses(PaperLine{at(18, 5), at(26, 13)}, ten_square))
      << "past a corner, though their bounds meet";
}

// The slow twin walks the line in small steps.
TEST(PaperLine, AgreesWithWalkingAlongIt) {
  std::mt19937 random(7);
  int crossing = 0;
  for (int n = 0; n < 4000; ++n) {
    SCOPED_TRACE(n);
    const auto any = [&] {
      return at(static_cast<std::int64_t>(random() % 31), static_cast<std::int64_t>(random() % 31));
    };
    const PaperLine line{any(), any()};
    bool walked = false;
    for (int i = 0; i <= 1000; ++i) {
      const auto x = line.from.x.micrometres() * (1000 - i) + line.to.x.micrometres() * i;
      const auto y = line.from.y.micrometres() * (1000 - i) + line.to.y.micrometres() * i;
      walked |= 10'000 < x && x < 20'000 && 10'000 < y && y < 20'000;
    }
    crossing += walked;
    EXPECT_EQ(crosses(line, ten_square), walked);
  }
  EXPECT_GT(crossing, 500);
}

TEST(PaperRing, HolesAreOutside) {
  const std::vector<PaperRing> rings{{at(0, 0), at(100, 0), at(100, 100), at(0, 100)},
                                     {at(40, 40), at(60, 40), at(60, 60), at(40, 60)}};
  EXPECT_TRUE(inside(rings, at(20, 20)));
  EXPECT_FALSE(inside(rings, at(50, 50)));
  EXPECT_TRUE(holds(rings, PaperBox{at(5, 5), at(30, 95)}));
  EXPECT_FALSE(holds(rings, PaperBox{at(30, 30), at(70, 70)})) << "the hole lies within the box";
  EXPECT_FALSE(holds(rings, PaperBox{at(45, 45), at(55, 55)}));
}

TEST(PaperPath, ArcsBulgeToTheirOwnSide) {
  // A quarter circle about (0, 0) from (1000, 0) to (0, 1000) on paper, whose y runs down: clockwise as seen.
  const Path quarter{Ink::wall, at(1000, 0), {{at(0, 1000), PaperLength::micrometres(1000), true}}, false};
  for (const PaperLine& line : lines(quarter)) {
    const std::int64_t x = line.to.x.micrometres();
    const std::int64_t y = line.to.y.micrometres();
    EXPECT_NEAR(static_cast<double>(x * x + y * y), 1e6, 1e4);
    EXPECT_GE(std::min(x, y), 0);
  }
}

TEST(Toward, StepsAlongTheWay) {
  EXPECT_EQ(toward(at(0, 0), at(3000, 4000), paper_mm(1)), at(600, 800));
  EXPECT_EQ(toward(at(5, 5), at(5, 5), paper_mm(1)), at(5, 5));
}

}  // namespace
}  // namespace berthwright

#include "view/section_faults.h"

#include <gtest/gtest.h>

#include "support/demo_sections.h"

namespace berthwright {
namespace {

constexpr Length mils(std::int64_t thousandths) { return Length::inches(thousandths, 1000); }

// Nuthatch by night: the left back, 3 in on a table of 0.703 at 12, ends at 15.703; the left seat at 18. They
// meet at y = 20. The right back ends 1 1/4 in short of the right seat: a gap, no ridge.
TEST(SectionFaults, ARidgeIsToldWhereThePlaneCutsBothPieces) {
  const CutTrailer& trailer = CutTrailer::demo("nuthatch");
  const DrawnConfiguration& night = trailer.of("night");
  const auto ridges = section_ridges(night, trailer.cut(night, {CutLine::Along::y, 101_in}));
  ASSERT_EQ(ridges.size(), 1U);
  EXPECT_EQ(ridges[0].along, 20_in);
  EXPECT_EQ(ridges[0].low, mils(15703));
  EXPECT_EQ(ridges[0].high, 18_in);
  EXPECT_EQ(ridges[0].high - ridges[0].low, ridges[0].ridge->step);
  EXPECT_TRUE(ridges[0].onward) << "the lower lies to the right of the edge";
  EXPECT_TRUE(section_ridges(night, trailer.cut(night, {CutLine::Along::x, 10_in})).empty());
  EXPECT_TRUE(section_ridges(night, trailer.cut(night, {CutLine::Along::y, 60_in})).empty());
}

// The table, 19 1/2 to 52 1/2 and 12 to 12.703 up, stands in benches that end at 20 and begin at 52.
TEST(SectionFaults, SpaceThatTwoThingsNeedIsToldWhereThePlaneCutsIt) {
  const CutTrailer& trailer = CutTrailer::demo("nuthatch");
  const DrawnConfiguration& night = trailer.of("night");
  const auto clashes = section_clashes(night, trailer.cut(night, {CutLine::Along::y, 101_in}));
  ASSERT_EQ(clashes.size(), 2U);
  EXPECT_EQ(clashes[0].box, (Rect{{mils(19500), 12_in}, {20_in, mils(12703)}}));
  EXPECT_EQ(clashes[1].box, (Rect{{52_in, 12_in}, {mils(52500), mils(12703)}}));
  EXPECT_EQ(clashes[0].collision->depth, Length::inches(1, 2));
  EXPECT_TRUE(section_clashes(night, trailer.cut(night, {CutLine::Along::x, 10_in})).empty());
}

TEST(SectionFaults, WhatIsToleratedIsNotMarked) {
  const CutTrailer& trailer = CutTrailer::demo("nuthatch");
  ConfigurationAnswer answer = *trailer.of("night").answer;
  for (Collision& collision : answer.collisions) collision.tolerated = true;
  const DrawnConfiguration of{&trailer.plan(), &answer, {}, {}};
  EXPECT_TRUE(section_clashes(of, trailer.cut(of, {CutLine::Along::y, 101_in})).empty());
}

}  // namespace
}  // namespace berthwright

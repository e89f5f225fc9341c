#include <berthwright/solve/place/sheet_worth.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <stdexcept>

#include "oracle/every_cut.h"

namespace berthwright {
namespace {

Length units(std::int64_t count) { return Length::from_ticks(count); }
WorthyPart worthy(int length, int width, std::int64_t worth, std::optional<std::size_t> most = {}) {
  return {units(length), units(width), worth, most};
}
WorthyPart by_area(int length, int width, std::optional<std::size_t> most = {}) {
  return worthy(length, width, std::int64_t{length} * width, most);
}

// A sheet of 7 x 5: the one part of 4 x 5 leaves 3 x 5, of which two of 3 x 2 are cut and 3 x 1 is left:
// 20 + 6 + 6 = 32. Without the large one 7 x 5 holds two of 3 x 2 beside each other, two deep: 24.
TEST(SheetWorth, OfASmallSheetIsThatAddedUpByHand) {
  const SheetWorth result = most_worth(units(7), units(5), {worthy(4, 5, 20, 1), worthy(3, 2, 6, 4)});
  EXPECT_EQ(result.worth, 32);
  EXPECT_TRUE(result.proven());
  EXPECT_EQ(result.laid.size(), 3U);
  EXPECT_EQ(most_worth(units(7), units(5), {worthy(3, 2, 6, 4)}).worth, 24);
  EXPECT_EQ(most_worth(units(7), units(5), {worthy(8, 2, 6, 4)}).worth, 0);
}

// Christofides & Whitlock (1977), problems 1 and 2: sizes and numbers as in OR-Library (cgcut1, cgcut2),
// worth from memory; least upper bounds reached: 244 and 2892. Problem 3 (1860) is not here: its sizes are
// those of Wang below, its worths we do not have.
TEST(SheetWorth, OfChristofidesAndWhitlockIsTheOptimum) {
  const std::vector<WorthyPart> first{worthy(8, 4, 66, 2), worthy(3, 7, 35, 1), worthy(8, 2, 24, 3),
                                      worthy(3, 4, 17, 5), worthy(3, 3, 11, 2), worthy(3, 2, 8, 2),
                                      worthy(2, 1, 2, 1)};
  const SheetWorth one = most_worth(units(15), units(10), first);
  EXPECT_EQ(one.worth, 244);
  EXPECT_TRUE(one.proven());
  const std::vector<WorthyPart> second{worthy(21, 22, 582, 1), worthy(31, 13, 403, 1), worthy(9, 35, 315, 3),
                                       worthy(9, 24, 216, 3),  worthy(30, 7, 210, 2),  worthy(11, 13, 143, 3),
                                       worthy(10, 14, 140, 1), worthy(14, 8, 110, 3),  worthy(12, 8, 94, 3),
                                       worthy(13, 7, 90, 3)};
  const SheetWorth two = most_worth(units(40), units(70), second);
  EXPECT_EQ(two.worth, 2892);
  EXPECT_TRUE(two.proven());
}

// Wang (1983): sheet 40 x 70, areas; optimum 2721. Sizes and numbers: cgcut3 of OR-Library, which has the
// same.
TEST(SheetWorth, OfWangIsTheOptimum) {
  const std::vector<WorthyPart> parts{
      by_area(31, 43, 4), by_area(30, 41, 2), by_area(29, 39, 4), by_area(28, 38, 4), by_area(27, 37, 3),
      by_area(26, 36, 4), by_area(25, 35, 3), by_area(24, 34, 4), by_area(33, 23, 4), by_area(22, 32, 3),
      by_area(31, 21, 3), by_area(29, 18, 3), by_area(17, 27, 2), by_area(15, 24, 3), by_area(16, 25, 4),
      by_area(23, 14, 4), by_area(21, 12, 3), by_area(19, 11, 4), by_area(9, 17, 1)};
  const SheetWorth result = most_worth(units(40), units(70), parts);
  EXPECT_EQ(result.worth, 2721);
  EXPECT_TRUE(result.proven());
}

// Herz (1972): 127 x 98, numbers unlimited, areas; optimum 12348. Sizes from memory.
// Beasley (1985), gcut1: 250 x 250, numbers unlimited, areas; optimum 56460. Sizes: OR-Library.
TEST(SheetWorth, WithoutLimitOfNumbersIsTheOptimum) {
  EXPECT_EQ(most_worth(units(127), units(98),
                       {by_area(21, 13), by_area(36, 17), by_area(54, 20), by_area(24, 27), by_area(18, 65)})
                .worth,
            12'348);
  const SheetWorth beasley = most_worth(
      units(250), units(250),
      {by_area(167, 184), by_area(114, 118), by_area(167, 152), by_area(83, 140), by_area(70, 86),
       by_area(143, 166), by_area(120, 160), by_area(66, 148), by_area(87, 141), by_area(69, 165)});
  EXPECT_EQ(beasley.worth, 56'460);
  Area laid;
  for (const WorthyPlace& place : beasley.laid) laid += Area::rectangle(place.at.width(), place.at.height());
  EXPECT_EQ(laid, Area::rectangle(units(56'460), units(1)));
}

struct SmallSheet {
  int length = 0;
  int width = 0;
  std::vector<oracle::CuttablePart> cuttable;
  std::vector<WorthyPart> parts;
};
SmallSheet small_sheet(std::mt19937& dice) {
  const auto between = [&](int low, int high) {
    return low + static_cast<int>(dice() % static_cast<unsigned>(high - low + 1));
  };
  SmallSheet result{between(3, 6), between(3, 6), {}, {}};
  const int kinds = between(1, 3);
  for (int i = 0; i < kinds; ++i) {
    const oracle::CuttablePart part{between(1, 4), between(1, 4), between(1, 2), between(1, 12),
                                    between(0, 1) == 1};
    result.cuttable.push_back(part);
    result.parts.push_back({units(part.length), units(part.width), part.worth,
                            static_cast<std::size_t>(part.count), part.turns});
  }
  return result;
}

TEST(SheetWorth, IsThatOfEveryCutAtEveryUnit) {
  std::mt19937 dice(11);
  for (int round = 0; round < 150; ++round) {
    SCOPED_TRACE(round);
    const SmallSheet sheet = small_sheet(dice);
    const SheetWorth result = most_worth(units(sheet.length), units(sheet.width), sheet.parts);
    EXPECT_EQ(result.worth, oracle::most_worth_by_every_cut(sheet.length, sheet.width, sheet.cuttable));
    EXPECT_TRUE(result.proven());
    std::int64_t laid = 0;
    for (const WorthyPlace& place : result.laid) laid += sheet.parts[place.part].worth;
    EXPECT_EQ(laid, result.worth);
  }
}

TEST(SheetWorth, DoesNotCareForMirrorsAndOrder) {
  std::mt19937 dice(12);
  for (int round = 0; round < 60; ++round) {
    SCOPED_TRACE(round);
    SmallSheet sheet = small_sheet(dice);
    const std::int64_t worth = most_worth(units(sheet.length), units(sheet.width), sheet.parts).worth;
    std::ranges::reverse(sheet.parts);
    for (WorthyPart& part : sheet.parts) std::swap(part.length, part.width);
    EXPECT_EQ(most_worth(units(sheet.width), units(sheet.length), sheet.parts).worth, worth);
  }
}

TEST(SheetWorth, SaysABoundWhereTheEffortEndsFirst) {
  const SheetWorth result = most_worth(units(40), units(70), {by_area(9, 13, 9), by_area(8, 11, 9)}, 3);
  EXPECT_EQ(result.blocks, 3U);
  EXPECT_FALSE(result.proven());
  EXPECT_GT(result.bound, result.worth);
}

TEST(SheetWorth, RefusesNonsense) {
  EXPECT_THROW(most_worth(units(0), units(1), {}), std::invalid_argument);
  EXPECT_THROW(most_worth(units(1), units(1), {worthy(0, 1, 1)}), std::invalid_argument);
  EXPECT_THROW(most_worth(units(1), units(1), {worthy(1, 1, -1)}), std::invalid_argument);
}

}  // namespace
}  // namespace berthwright

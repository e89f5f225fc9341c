#include <berthwright/solve/place/placing.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <stdexcept>

#include "oracle/every_cut.h"
#include "support/placed_case.h"

namespace berthwright {
namespace {

StockPart part_of(std::string id, Length length, Length width, std::size_t count = 1,
                  PartLay lay = PartLay::quarters) {
  return {std::move(id), length, width, count, lay};
}
Placing sound_placing(const PlacingTask& task, const PlacingEffort& effort = {}) {
  Placing placing = placed(task, effort);
  EXPECT_EQ(oracle::cut_faults(checked_case(task, placing)), std::vector<std::string>{});
  EXPECT_LE(placing.bound, placing.cost);
  return placing;
}

// Parts of 600 x 400 with a kerf of 4: two beside each other need 1204, three need 1812; two deep 804. A
// sheet of 1204 x 804 gives four, one of 1203 x 804 two along (600) and turned: 400 + 4 + 400 + 4 + 400 =
// 1208, too long: so two columns of 400, two... 804 wide, 600 deep each: one row of two, then 204 left; as
// rows: one of 600 long two deep = 2, beside it 603 - 4 = 599 left: turned, 400 long, 600 deep: 1. Three.
TEST(Placing, OfFourPartsFollowsTheKerf) {
  PlacingTask task{{{"sheet", 1204_mm, 804_mm, 50}}, {part_of("panel", 600_mm, 400_mm, 4)}, 4_mm};
  EXPECT_EQ(sound_placing(task).cuts.size(), 1U);
  task.manner = CutManner::free;
  EXPECT_EQ(sound_placing(task).cuts.size(), 1U);
  task.manner = CutManner::through;
  task.stock[0].length = 1203_mm;
  const Placing two = sound_placing(task);
  EXPECT_EQ(two.cuts.size(), 2U);
  EXPECT_EQ(two.cost, 100);
  EXPECT_TRUE(two.proven());
  EXPECT_EQ(two.bound_kind, CostBoundKind::every_way);
}

// One part of 300 x 200 in the corner of 1000 x 600, kerf 5: beside it 695 x 600 is left or, behind it,
// 1000 x 395 = 395,000 mm2 against 417,000: the saw cuts crosswise first.
TEST(Placing, LeavesTheLargestOffcut) {
  PlacingTask task{{{"sheet", 1000_mm, 600_mm, 50}}, {part_of("lid", 300_mm, 200_mm)}, 5_mm};
  task.parts[0].lay = PartLay::grain;
  task.least_offcut = 100_mm;
  const Placing placing = sound_placing(task);
  EXPECT_EQ(placing.largest_offcut, Area::rectangle(695_mm, 600_mm));
  ASSERT_EQ(placing.cuts.at(0).cuts.size(), 2U);
  EXPECT_TRUE(placing.cuts[0].cuts[0].crosswise);
  EXPECT_EQ(placing.cuts[0].cuts[0].at, 300_mm);
  task.manner = CutManner::free;
  EXPECT_EQ(sound_placing(task).largest_offcut, Area::rectangle(695_mm, 600_mm));
}

TEST(Placing, TakesRemnantsFirst) {
  PlacingTask task{{{"sheet", 1000_mm, 600_mm, 50}, {"rest", 320_mm, 210_mm, 0, 1, true}},
                   {part_of("lid", 300_mm, 200_mm, 2)},
                   5_mm};
  const Placing both = sound_placing(task);
  EXPECT_EQ(both.cost, 50);
  task.parts[0].count = 1;
  const Placing one = sound_placing(task);
  EXPECT_EQ(one.cost, 0);
  ASSERT_EQ(one.cuts.size(), 1U);
  EXPECT_EQ(one.cuts[0].kind, 1U);
}

TEST(Placing, KeepsGrainAndNapAndTurnsTheRest) {
  PlacingTask task{{{"sheet", 500_mm, 200_mm, 50}}, {part_of("door", 200_mm, 500_mm)}, 3_mm};
  const Placing turned = sound_placing(task);
  ASSERT_EQ(turned.cuts.size(), 1U);
  EXPECT_TRUE(turned.cuts[0].places.at(0).turned);
  for (const PartLay lay : {PartLay::grain, PartLay::nap}) {
    task.parts[0].lay = lay;
    const Placing kept = sound_placing(task);
    EXPECT_TRUE(kept.cuts.empty());
    ASSERT_EQ(kept.unplaced.size(), 1U);
    EXPECT_EQ(kept.unplaced[0].fault, PlacingFault::larger_than_any_stock);
  }
}

// Of 600 x 300, trimmed by 10, 580 x 280 is left. A knot of 20 x 20 leaves 280 x 280 on either side.
TEST(Placing, KeepsClearOfTrimAndDefects) {
  for (const CutManner manner : {CutManner::through, CutManner::free}) {
    PlacingTask task{{{"sheet", 600_mm, 300_mm, 50}}, {part_of("lid", 290_mm, 280_mm, 2)}, {}};
    task.manner = manner;
    task.stock[0].trim = 10_mm;
    EXPECT_EQ(sound_placing(task).cuts.size(), 1U);
    task.stock[0].defects = {{{290_mm, 140_mm}, {310_mm, 160_mm}}};
    EXPECT_EQ(sound_placing(task).unplaced.size(), 1U);
    task.parts[0].length = 280_mm;
    EXPECT_EQ(sound_placing(task).cuts.size(), 1U);
  }
}

// 7 x 7 with four of 4 x 3 around one of 1 x 1 (48 + 1 = 49, nothing is left). A first through-cut would
// leave a column 3 wide, which 4 and 3 deep would fill (no part is 3 x 3), or one 4 wide: 3 + 3 + 1 (none is
// 4 x 1).
TEST(Placing, AKnifeCutsWhatASawCannot) {
  PlacingTask task{{{"square", 70_mm, 70_mm, 7}},
                   {part_of("arm", 40_mm, 30_mm, 4), part_of("eye", 10_mm, 10_mm)}};
  const Placing sawn = sound_placing(task);
  EXPECT_EQ(sawn.cost, 14);
  EXPECT_TRUE(sawn.proven());
  task.manner = CutManner::free;
  const Placing cut = sound_placing(task);
  EXPECT_EQ(cut.cost, 7);
  EXPECT_TRUE(cut.proven());
}

// 3 x 2 and 1 x 1 in 4 x 2: crosswise at 3, then lengthwise: two stages; in one stage there is no room
// beside.
TEST(Placing, KeepsToTheStages) {
  PlacingTask task{{{"sheet", 40_mm, 20_mm, 7}}, {part_of("a", 30_mm, 20_mm), part_of("b", 10_mm, 10_mm)}};
  task.stages = 2;
  EXPECT_EQ(sound_placing(task).cuts.size(), 1U);
  task.stages = 1;
  const Placing one = sound_placing(task);
  EXPECT_EQ(one.unplaced.size(), 1U);
}

TEST(Placing, CostsWhatEveryCutCosts) {
  std::mt19937 dice(21);
  const auto between = [&](int low, int high) {
    return low + static_cast<int>(dice() % static_cast<unsigned>(high - low + 1));
  };
  for (int round = 0; round < 60; ++round) {
    SCOPED_TRACE(round);
    PlacingTask task;
    std::vector<oracle::PricedSheet> sheets;
    std::vector<oracle::CuttablePart> cuttable;
    for (int s = between(1, 2); s > 0; --s) sheets.push_back({between(3, 6), between(3, 5), between(3, 9)});
    for (int p = between(1, 3); p > 0; --p)
      cuttable.push_back({between(1, 3), between(1, 3), between(1, 2), 1, between(0, 1) == 1});
    for (const oracle::PricedSheet& sheet : sheets)
      task.stock.push_back(
          {"s", Length::millimetres(sheet.length), Length::millimetres(sheet.width), sheet.price});
    for (const oracle::CuttablePart& part : cuttable)
      task.parts.push_back(part_of("p", Length::millimetres(part.length), Length::millimetres(part.width),
                                   static_cast<std::size_t>(part.count),
                                   part.turns ? PartLay::quarters : PartLay::grain));
    const int least = oracle::least_cost_by_every_cut(sheets, cuttable);
    ASSERT_GE(least, 0);
    const Placing exact = sound_placing(task, {.rounds = 0});
    EXPECT_EQ(exact.cost, least);
    EXPECT_TRUE(exact.proven());
    // By search alone it is never cheaper, the bound never above.
    const Placing searched = sound_placing(task, {.rounds = 2'000, .merges = 0});
    EXPECT_GE(searched.cost, least);
    EXPECT_LE(searched.bound, least);
    task.manner = CutManner::free;
    EXPECT_LE(sound_placing(task, {.rounds = 2'000}).bound, least);
  }
}

TEST(Placing, DoesNotCareForMirrorsAndOrderWhereEveryWayIsTried) {
  for (unsigned seed = 0; seed < 6; ++seed) {
    SCOPED_TRACE(seed);
    PlacingTask task = generated_job(seed, 9);
    const Placing placing = sound_placing(task, {.rounds = 200});
    ASSERT_EQ(placing.bound_kind, CostBoundKind::every_way);
    std::ranges::reverse(task.parts);
    std::ranges::reverse(task.stock);
    for (StockPart& part : task.parts) std::swap(part.length, part.width);
    for (StockKind& stock : task.stock) std::swap(stock.length, stock.width);
    EXPECT_EQ(sound_placing(task, {.rounds = 200}).cost, placing.cost);
  }
}

TEST(Placing, OfGeneratedJobsIsSoundAndTheSameEachTime) {
  for (unsigned seed = 0; seed < 8; ++seed) {
    SCOPED_TRACE(seed);
    PlacingTask task = generated_job(seed, 10 + 7 * seed);
    task.least_offcut = 150_mm;
    if (seed % 2 == 1) task.manner = CutManner::free;
    if (seed % 4 == 2) task.stages = 3;
    if (seed % 3 == 0) {
      task.stock[0].trim = 10_mm;
      task.stock[0].defects = {{{500_mm, 300_mm}, {560_mm, 340_mm}}, {{1500_mm, 900_mm}, {1501_mm, 901_mm}}};
    }
    const Placing placing = sound_placing(task, {.rounds = 600});
    EXPECT_TRUE(placing.unplaced.empty());
    const Placing again = placed(task, {.rounds = 600});
    ASSERT_EQ(again.cuts.size(), placing.cuts.size());
    for (std::size_t c = 0; c < again.cuts.size(); ++c)
      EXPECT_TRUE(std::ranges::equal(again.cuts[c].places, placing.cuts[c].places, {}, &StockPlace::at,
                                     &StockPlace::at));
  }
}

TEST(Placing, TellsWhatThereIsNoStockFor) {
  PlacingTask task{{}, {part_of("lid", 300_mm, 200_mm, 3)}, 3_mm};
  const Placing none = sound_placing(task);
  ASSERT_EQ(none.unplaced.size(), 1U);
  EXPECT_EQ(none.unplaced[0].count, 3U);
  EXPECT_EQ(none.unplaced[0].fault, PlacingFault::no_stock);
  task.stock = {{"gone", 2440_mm, 1220_mm, 50, 0}};
  EXPECT_EQ(sound_placing(task).unplaced.at(0).fault, PlacingFault::no_stock);
  task.stock = {{"strip", 2440_mm, 150_mm, 50}};
  EXPECT_EQ(sound_placing(task).unplaced.at(0).fault, PlacingFault::larger_than_any_stock);
  task.stock = {{"rest", 310_mm, 420_mm, 0, 1, true}};
  const Placing scarce = sound_placing(task);
  EXPECT_EQ(scarce.unplaced.at(0).fault, PlacingFault::too_little_stock);
  EXPECT_EQ(scarce.unplaced.at(0).count, 1U);
  EXPECT_FALSE(scarce.proven());
}

TEST(Placing, TakesOddInput) {
  PlacingTask task{{{"sheet", 1000_mm, 500_mm, 50}}, {part_of("chip", 2_mm, 1_mm, 20)}, 3_mm};
  EXPECT_EQ(sound_placing(task).cuts.size(), 1U);
  task.parts[0].count = 0;
  EXPECT_TRUE(sound_placing(task).cuts.empty());
  task.parts[0].count = 1;
  task.stock[0].trim = 300_mm;
  EXPECT_EQ(sound_placing(task).unplaced.size(), 1U);
  task.stock[0].price = 0;
  task.stock[0].trim = {};
  EXPECT_EQ(sound_placing(task).cost, 0);
  task.parts[0].width = {};
  EXPECT_THROW(placed(task), std::invalid_argument);
  task.parts[0].width = 1_mm;
  task.kerf = -1_mm;
  EXPECT_THROW(placed(task), std::invalid_argument);
}

TEST(Placing, OfFiveHundredPartsEnds) {
  PlacingTask alike{{{"sheet", 2440_mm, 1220_mm, 50}}, {part_of("slat", 300_mm, 60_mm, 500)}, 3_mm};
  const Placing slats = sound_placing(alike, {.rounds = 50});
  EXPECT_TRUE(slats.unplaced.empty());
  const Placing mixed = sound_placing(generated_job(5, 500), {.rounds = 50});
  EXPECT_TRUE(mixed.unplaced.empty());
}

}  // namespace
}  // namespace berthwright

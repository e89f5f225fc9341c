#include <berthwright/solve/split/night_bay.h>

#include <gtest/gtest.h>

#include "support/plan_builder.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

Plan demo(const std::string& name) { return read_plan(bytes_of(repository_path("plans/" + name))).value(); }

NightBays bays_of(const Plan& plan) {
  return night_bays(plan, *plan.configuration("day"), *plan.configuration("night"), 4_in).value();
}

// Dunnock's benches lie from 40 to 62 and from 93 to 115 in from the front, 40 in wide; its table, 38 in
// wide, from 62 1/8 to 92 7/8: drawn out over the play of 1/8 in and the 2 in to the line of the benches.
TEST(NightBay, JoinsBenchesAndTheBoardBetweenThem) {
  const Plan plan = demo("dunnock.json");
  const NightBays found = bays_of(plan);
  ASSERT_EQ(found.bays.size(), 1U);
  const NightBay& bay = found.bays[0];
  EXPECT_EQ(bay.level, 14_in);
  EXPECT_EQ(bay.bounds(), (Rect{{40_in, Length{}}, {115_in, 40_in}}));
  ASSERT_EQ(bay.lids.size(), 2U);
  EXPECT_EQ(bay.lids[0].faces, Wall::rear);
  EXPECT_EQ(bay.lids[1].faces, Wall::front);
  EXPECT_EQ(bay.lids[0].depth(), 22_in);
  EXPECT_EQ(bay.lids[0].length(), 40_in);
  EXPECT_EQ(bay.lids[0].before_board, bay.lids[0].top);
  EXPECT_EQ(bay.boards, std::vector<std::string>{"table"});
  EXPECT_EQ(bay.cushions.size(), 4U);
  // The wheel well, 18 x 7 in, top at 17: through cushions that lie from 14 to 18.
  EXPECT_EQ(bay.risen, std::vector<std::string>{"wheel well"});
  EXPECT_EQ(bay.kept_out.bounds(), (Rect{{97_in, Length{}}, {115_in, 7_in}}));
}

TEST(NightBay, TellsABoardThatLiesOffTheLevel) {
  const Plan plan = demo("nuthatch.json");
  const NightBays found = bays_of(plan);
  EXPECT_TRUE(found.bays.empty());
  ASSERT_EQ(found.off_level.size(), 1U);
  EXPECT_EQ(found.off_level[0].board, "table");
  // 12 + 0.703 - 14
  EXPECT_EQ(found.off_level[0].above, Length::inches(-1297, 1000));
}

TEST(NightBay, KeepsTheBedsOfOnePlanApart) {
  const Plan plan = demo("sanderling.json");
  EXPECT_EQ(bays_of(plan).bays.size(), 2U);
}

}  // namespace
}  // namespace berthwright

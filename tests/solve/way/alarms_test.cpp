#include <berthwright/solve/way/alarms.h>

#include <gtest/gtest.h>

#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using support::Furniture;
using support::Spot;
using Mount = AlarmPlace::Mount;
using Names = std::vector<std::string>;

/// A room of 120 x 76 in under a roof at 80 in.
Furniture room() { return Furniture().interior(R"("length": 120, "width": 76, "height": 80)"); }
Furniture with_alarm(const Spot& spot, const char* base, const char* top) {
  return room().fixture("alarm", "smoke alarm", spot, base, top);
}
AlarmPlace place_in(const Plan& plan) {
  const std::vector<AlarmPlace> places = alarm_places(plan);
  if (places.size() != 1U) throw std::invalid_argument("not one alarm");
  return places.front();
}
Names covering_in(const Plan& plan) {
  const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
  if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
  return covering(*arrangement, place_in(plan));
}

TEST(Alarms, HangOnWhatLiesBehindTheirWidestSide) {
  const Plan left = with_alarm({"40", "0", "5", "2"}, "70", "74").plan();
  EXPECT_EQ(place_in(left).mount, Mount::outside_wall);
  EXPECT_EQ(place_in(left).faces, Wall::right);
  const Plan rear = with_alarm({"118", "30", "2", "5"}, "70", "74").plan();
  EXPECT_EQ(place_in(rear).mount, Mount::outside_wall);
  EXPECT_EQ(place_in(rear).faces, Wall::front);
  // On the front of a closet in the corner, its narrow end against the wall of the room.
  const Plan inside = with_alarm({"60", "0", "2", "5"}, "70", "74")
                          .fixture("closet", "cabinet", {"62", "0", "20", "20"}, "0", "80")
                          .plan();
  EXPECT_EQ(place_in(inside).mount, Mount::inside);
  EXPECT_EQ(place_in(inside).faces, Wall::front);
  const Plan afloat = with_alarm({"60", "30", "5", "2"}, "70", "74").plan();
  EXPECT_EQ(place_in(afloat).mount, Mount::unknown);
  EXPECT_FALSE(place_in(afloat).faces.has_value());
}

// Half an inch off the wall still hangs on it, more does not.
TEST(Alarms, MayStandALittleOffTheWall) {
  EXPECT_EQ(place_in(with_alarm({"40", "31/64", "5", "2"}, "70", "74").plan()).mount, Mount::outside_wall);
  EXPECT_EQ(place_in(with_alarm({"40", "1/2", "5", "2"}, "70", "74").plan()).mount, Mount::unknown);
}

TEST(Alarms, AreMeasuredToTheRoofOverThem) {
  const AlarmPlace low = place_in(with_alarm({"40", "0", "5", "2"}, "70", "74").plan());
  EXPECT_EQ(low.below_ceiling, 6_in);
  const AlarmPlace up = place_in(with_alarm({"40", "20", "5", "5"}, "78", "79 3/4").plan());
  EXPECT_EQ(up.mount, Mount::ceiling);
  // The roof slants from 60 in at the front up to 80 in at 40 in; over the alarm it is lowest at x = 20: 70.
  Furniture sloping = Furniture().interior(
      R"("length": 120, "width": 76, "height": 80, "side_profile": {"corners": {"roof front": {"clip": [40, 20]}}})");
  sloping.fixture("alarm", "smoke alarm", {"20", "0", "5", "2"}, "60", "64");
  EXPECT_EQ(place_in(sloping.plan()).below_ceiling, 6_in);
}

// 30 in along and 40 in up: 50 in.
TEST(Alarms, KnowTheNearestCookingAppliance) {
  Furniture furniture = with_alarm({"40", "0", "5", "2"}, "70", "74");
  EXPECT_TRUE(place_in(furniture.plan()).nearest_cooking.empty());
  furniture.fixture("stove", "cooktop", {"75", "0", "10", "10"}, "28", "30", R"("faces": "right")")
      .fixture("oven", "oven", {"110", "0", "10", "10"}, "28", "30", R"("faces": "right")");
  const AlarmPlace place = place_in(furniture.plan());
  EXPECT_EQ(place.nearest_cooking, "stove");
  EXPECT_EQ(place.to_cooking, 50_in);
}

TEST(Alarms, AreCoveredByCurtainsAndCushionsBeforeThem) {
  const auto behind = [](const char* kind, const Spot& spot) {
    return covering_in(
        with_alarm({"40", "0", "5", "2"}, "70", "74").fixture("it", kind, spot, "20", "72").plan());
  };
  EXPECT_EQ(behind("curtain", {"30", "2", "30", "1"}), Names{"it"});
  EXPECT_EQ(behind("curtain", {"30", "13", "30", "2"}), Names{"it"});
  EXPECT_EQ(behind("curtain", {"30", "14", "30", "2"}), Names{});
  EXPECT_EQ(behind("curtain", {"45", "2", "30", "1"}), Names{});
  EXPECT_EQ(behind("cabinet", {"30", "2", "30", "1"}), Names{});
  EXPECT_EQ(covering_in(with_alarm({"40", "0", "5", "2"}, "6", "10")
                            .lay("pad", "cushion", {"30", "4", "30", "20"}, "8", R"("base": 0)")
                            .plan()),
            Names{"pad"});
}

TEST(Alarms, OnTheCeilingAreCoveredFromBeneath) {
  const auto beneath = [](const char* top) {
    return covering_in(with_alarm({"40", "20", "5", "5"}, "78", "80")
                           .fixture("drape", "curtain", {"30", "22", "30", "1"}, "20", top)
                           .plan());
  };
  EXPECT_EQ(beneath("67"), Names{"drape"});
  EXPECT_EQ(beneath("66"), Names{});
}

// Nothing shows which way it looks, so every side counts.
TEST(Alarms, ThatHangOnNothingAreLookedAtFromAllSides) {
  for (const Spot& spot : {Spot{"50", "28", "1", "10"}, Spot{"69", "28", "1", "10"},
                           Spot{"58", "20", "10", "1"}, Spot{"58", "40", "10", "1"}})
    EXPECT_EQ(covering_in(with_alarm({"60", "30", "5", "2"}, "70", "74")
                              .fixture("drape", "curtain", spot, "20", "72")
                              .plan()),
              Names{"drape"});
}

}  // namespace
}  // namespace berthwright

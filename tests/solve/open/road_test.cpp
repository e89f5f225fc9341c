#include <berthwright/solve/open/road.h>

#include <gtest/gtest.h>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

using Ids = std::vector<std::string>;

// A bench with a latched lid, a galley with a drawer without catch, an open shelf.
std::string trailer(const std::string& poses, const std::string& name = "road") {
  return R"("fixtures": [
      {"id": "bench", "kind": "bench", "length": 40, "width": 22, "at": {"front": 0, "left": 0}, "top": 14,
       "opens": [{"id": "lid", "kind": "lid", "hinge": "left", "held_by": "latch"}]},
      {"id": "galley", "kind": "counter", "length": 30, "width": 20, "at": {"front": 60, "left": 0}, "top": 36,
       "opens": [{"id": "drawer", "kind": "drawer", "face": "right"}]},
      {"id": "shelf", "kind": "shelf", "length": 20, "width": 10, "at": {"front": 60, "right": 0}, "base": 40, "top": 41}],
    "pieces": [
      {"id": "back", "kind": "cushion", "length": 40, "width": 16, "thickness": 4},
      {"id": "seat", "kind": "cushion", "length": 40, "width": 22, "thickness": 4, "held_by": "snap"},
      {"id": "heater", "kind": "heater", "length": 8, "width": 10, "height": 14, "faces": "right"},
      {"id": "leg", "kind": "leg", "length": 2, "width": 2, "thickness": 27}],
    "configurations": {")" +
         name + R"(": [{"piece": "seat", "at": {"front": 0, "left": 0}}, )" + poses + "]}";
}

const char* const on_edge =
    R"({"piece": "back", "at": {"front": 0, "left": 0}, "stands_on": "length", "faces": "right"},)";
const char* const flat = R"({"piece": "back", "at": {"front": 0, "left": 0}},)";
const char* const about = R"({"piece": "heater", "at": {"front": 40, "left": 40}, "state": "off"},)";
std::string stowed(const std::string& piece, const std::string& where) {
  return R"({"piece": ")" + piece + R"(", "stowed": ")" + where + "\"}";
}

RoadHolds holds(const std::string& poses) {
  const Plan plan = small_plan(trailer(poses));
  return holds_on_the_road(plan);
}

TEST(RoadHolds, NamesWhatHasNoHold) {
  const RoadHolds found =
      holds(on_edge + std::string(about) + R"({"piece": "leg", "at": {"front": 50, "left": 40}})");
  EXPECT_EQ(found.loose, (Ids{"leg", "drawer"}));
  EXPECT_EQ(found.on_edge, Ids{"back"});
  EXPECT_EQ(found.heaters, Ids{"heater"});
  EXPECT_FALSE(found.all_named());
}

TEST(RoadHolds, WhatIsStowedIsHeldAsItsLockerIs) {
  for (const char* place : {"bench", "lid", "galley", "drawer"})
    EXPECT_EQ(holds(flat + stowed("heater", place) + "," + stowed("leg", place)).loose,
              (Ids{"back", "drawer"}))
        << place;
  // An open shelf holds nothing, and of words of the plan's own we know nothing.
  for (const char* place : {"shelf", "under the rug"})
    EXPECT_EQ(holds(flat + stowed("heater", place) + "," + stowed("leg", place)).loose,
              (Ids{"back", "heater", "leg", "drawer"}))
        << place;
}

TEST(RoadHolds, AreUnknownWithoutARoadConfiguration) {
  const Plan plan = small_plan(trailer(flat + stowed("heater", "lid") + "," + stowed("leg", "lid"), "day"));
  EXPECT_EQ(holds_on_the_road(plan).configuration, nullptr);
}

}  // namespace
}  // namespace berthwright

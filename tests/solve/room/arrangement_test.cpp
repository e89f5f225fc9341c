#include <berthwright/solve/room/arrangement.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "solve/room/laying_order.h"
#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using support::Furniture;
using Ids = std::vector<std::string>;

Arrangement night(const Plan& plan) {
  Result<Arrangement> result = arranged(plan, plan->configurations.front());
  if (!result) throw std::invalid_argument(listed(result.problems()));
  return std::move(result).value();
}
Problems faults(const Plan& plan) { return arranged(plan, plan->configurations.front()).problems(); }

Length base(const Arrangement& arrangement, std::string_view id) {
  return arrangement.find(id)->solid.base();
}

// A dinette of two benches 14 in high with cleats for the table between them.
Furniture dinette() {
  Furniture dinette;
  dinette.fixture("left bench", "bench", {"80", "0", "40", "24"}, "0", "14")
      .fixture("right bench", "bench", {"80", "52", "40", "24"}, "0", "14")
      .fixture("left cleat", "ledge", {"80", "24", "40", "1"}, "12 1/4", "13 1/4")
      .fixture("right cleat", "ledge", {"80", "51", "40", "1"}, "12 1/4", "13 1/4");
  return dinette;
}

TEST(Arrangement, WhatHasNothingBeneathLiesOnTheFloor) {
  const Plan plan = Furniture().lay("mat", "cushion", {"10", "10", "30", "20"}, "2").plan();
  const Arrangement arrangement = night(plan);
  EXPECT_EQ(base(arrangement, "mat"), 0_in);
  EXPECT_EQ(arrangement.find("mat")->solid.top(), 2_in);
  EXPECT_EQ(arrangement.find("mat")->carried_by, Ids{"floor"});
}

// Cleats at 13 1/4 and a table 3/4 thick: flush with the benches at 14. Cushions over both lie at 14.
TEST(Arrangement, ATableOnItsCleatsIsFlushWithTheBenches) {
  const Plan plan = dinette()
                        .lay("table", "table", {"80", "24 1/8", "40", "27 3/4"}, "3/4")
                        .lay("back", "cushion", {"80", "20", "40", "14"}, "4")
                        .plan();
  const Arrangement arrangement = night(plan);
  EXPECT_EQ(base(arrangement, "table"), Length::inches(53, 4));
  EXPECT_EQ(arrangement.find("table")->carried_by, (Ids{"left cleat", "right cleat"}));
  EXPECT_EQ(base(arrangement, "back"), 14_in);
  // 9 7/8 in of it lie on the table, 4 in on the bench.
  EXPECT_EQ(arrangement.find("back")->carried_by, (Ids{"table", "left bench"}));
  EXPECT_TRUE(arrangement.find("back")->pressed_by.empty());
}

TEST(Arrangement, FixturesStandFirstThenPiecesAsTheyAreLaid) {
  const Plan plan = dinette()
                        .lay("seat", "cushion", {"80", "0", "40", "24"}, "4")
                        .lay("table", "table", {"80", "24", "40", "28"}, "3/4")
                        .plan();
  const Arrangement arrangement = night(plan);
  ASSERT_EQ(arrangement.things.size(), 6U);
  EXPECT_EQ(arrangement.things[3].id, "right cleat");
  EXPECT_EQ(arrangement.things[4].id, "seat");
  EXPECT_EQ(arrangement.things[5].id, "table");
}

TEST(Arrangement, TouchingEdgesCarryNothing) {
  const Plan plan = Furniture()
                        .fixture("cabinet", "cabinet", {"0", "0", "20", "20"}, "0", "30")
                        .lay("board", "board", {"20", "0", "30", "20"}, "3/4")
                        .plan();
  EXPECT_EQ(base(night(plan), "board"), 0_in);
}

TEST(Arrangement, ABoardLiesOnItsHighestBearing) {
  const Plan plan = Furniture()
                        .fixture("low", "bench", {"0", "0", "40", "20"}, "0", "14")
                        .fixture("high", "bench", {"0", "40", "40", "2"}, "0", "14 1/16")
                        .lay("board", "board", {"0", "0", "40", "42"}, "3/4")
                        .plan();
  const Arrangement arrangement = night(plan);
  EXPECT_EQ(base(arrangement, "board"), Length::inches(225, 16));
  EXPECT_EQ(arrangement.find("board")->carried_by, Ids{"high"});
}

// A lip of 3/4 x 3/4 in at the edge of the bench: the cushion stays on the bench, the lip presses into it.
TEST(Arrangement, ALipPressesIntoACushion) {
  const Plan plan = Furniture()
                        .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
                        .fixture("lip", "ledge", {"0", "23 1/4", "75", "3/4"}, "14", "14 3/4")
                        .lay("seat", "cushion", {"0", "0", "75", "24"}, "4")
                        .plan();
  const Arrangement arrangement = night(plan);
  EXPECT_EQ(base(arrangement, "seat"), 14_in);
  EXPECT_EQ(arrangement.find("seat")->carried_by, Ids{"bench"});
  EXPECT_EQ(arrangement.find("seat")->pressed_by, Ids{"lip"});
}

TEST(Arrangement, WhatIsWiderThanALipDoesNotPressIntoACushion) {
  const auto seat_on_lip = [](const std::string& width) {
    return Furniture()
        .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
        .fixture("lip", "ledge", {"0", "0", "75", width}, "14", "14 3/4")
        .lay("seat", "cushion", {"0", "0", "75", "24"}, "4")
        .plan();
  };
  const Plan two_inches = seat_on_lip("2");
  EXPECT_EQ(night(two_inches).find("seat")->pressed_by, Ids{"lip"});
  const Plan more = seat_on_lip("2 1/64");
  EXPECT_EQ(base(night(more), "seat"), 14_in);
  EXPECT_TRUE(night(more).find("seat")->pressed_by.empty());
}

TEST(Arrangement, OfEqualAreasACushionLiesOnTheHigher) {
  const Plan plan = Furniture()
                        .fixture("low", "bench", {"0", "0", "20", "24"}, "0", "14")
                        .fixture("high", "bench", {"20", "0", "20", "24"}, "0", "15")
                        .lay("seat", "cushion", {"0", "0", "40", "24"}, "4")
                        .plan();
  EXPECT_EQ(base(night(plan), "seat"), 15_in);
}

// Seen from above only the seat shows beneath the back, though the bench reaches just as far.
TEST(Arrangement, ACushionLiesOnTheCushionThatHidesTheBench) {
  const Plan plan = Furniture()
                        .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
                        .lay("seat", "cushion", {"0", "0", "75", "20"}, "4")
                        .lay("back", "cushion", {"0", "8", "75", "14"}, "3")
                        .plan();
  EXPECT_EQ(base(night(plan), "back"), 18_in);
}

TEST(Arrangement, WhatBeginsAtTheDropHeightCarriesOnlyWhenNamed) {
  const auto under_a_shelf = [](const std::string& shelf_base, const std::string& pose) {
    const Plan plan = Furniture()
                          .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
                          .fixture("shelf", "shelf", {"0", "0", "75", "24"}, shelf_base, "50")
                          .lay("board", "board", {"0", "0", "75", "24"}, "3/4", pose)
                          .plan();
    return base(night(plan), "board");
  };
  EXPECT_EQ(under_a_shelf("48", ""), 14_in);
  EXPECT_EQ(under_a_shelf("47 63/64", ""), 50_in);
  EXPECT_EQ(under_a_shelf("48", R"("on": ["shelf"])"), 50_in);
  EXPECT_EQ(under_a_shelf("20", R"("on": ["bench"])"), 14_in);
}

TEST(Arrangement, WhatHangsOnTheWallCarriesOnlyWhenNamed) {
  for (const std::string kind : {"light", "outlet", "protrusion", "curtain", "smoke alarm"}) {
    SCOPED_TRACE(kind);
    const auto beneath = [&](const std::string& pose) {
      const Plan plan = Furniture()
                            .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
                            .fixture("thing", kind, {"30", "0", "4", "3"}, "30", "34")
                            .lay("board", "board", {"0", "0", "75", "24"}, "3/4", pose)
                            .plan();
      return base(night(plan), "board");
    };
    EXPECT_EQ(beneath(""), 14_in);
    EXPECT_EQ(beneath(R"("on": ["thing"])"), 34_in);
  }
}

TEST(Arrangement, AGivenUndersideIsKept) {
  const Plan plan = dinette()
                        .lay("table", "table", {"80", "24", "40", "28"}, "3/4", R"("base": "28")")
                        .lay("seat", "cushion", {"80", "0", "40", "26"}, "4")
                        .plan();
  const Arrangement arrangement = night(plan);
  EXPECT_EQ(base(arrangement, "table"), 28_in);
  EXPECT_TRUE(arrangement.find("table")->carried_by.empty());
  // The seat reaches 2 in under the table, its 24 in on the bench decide.
  EXPECT_EQ(base(arrangement, "seat"), 14_in);
}

TEST(Arrangement, APieceBesideWhatItNamesHasNothingToRestOn) {
  const Plan plan =
      dinette().lay("seat", "cushion", {"40", "0", "40", "24"}, "4", R"("on": ["left bench"])").plan();
  const Problems problems = faults(plan);
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(problems[0].id, "rest.nothing-beneath");
  EXPECT_EQ(problems[0].pointer, "/configurations/night/0");
  EXPECT_GT(problems[0].line, 0U);
  EXPECT_GT(problems[0].column, 0U);
  EXPECT_NE(problems[0].found.find("left bench"), std::string::npos);
}

TEST(Arrangement, OneFaultIsToldOnceThoughMoreWouldRestOnThePiece) {
  const Plan plan = dinette()
                        .lay("seat", "cushion", {"40", "0", "40", "24"}, "4", R"("on": ["left bench"])")
                        .lay("back", "cushion", {"40", "0", "40", "14"}, "4", R"("on": ["seat"])")
                        .plan();
  EXPECT_EQ(faults(plan).size(), 1U);
}

// The filler is listed before the table it is to lie on, so it would fall to the floor.
TEST(Arrangement, ThePairWhoseOrderDecidesTheirHeightsIsNamed) {
  const auto filler_and_table = [](const std::string& pose) {
    return dinette()
        .lay("filler", "cushion", {"80", "26", "40", "24"}, "4", pose)
        .lay("table", "table", {"80", "24", "40", "28"}, "3/4", R"("on": ["left cleat", "right cleat"])")
        .plan();
  };
  const Plan plan = filler_and_table("");
  const Problems problems = faults(plan);
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(problems[0].id, "rest.order");
  EXPECT_EQ(problems[0].pointer, "/configurations/night/0");
  EXPECT_NE(problems[0].message.find("\"filler\" and \"table\""), std::string::npos);
  const Plan on_the_floor = filler_and_table(R"("on": ["floor"])");
  EXPECT_EQ(base(night(on_the_floor), "filler"), 0_in);
}

TEST(Arrangement, AStackInItsOrderIsNoFault) {
  const Plan plan = Furniture()
                        .fixture("bench", "bench", {"0", "0", "75", "24"}, "0", "14")
                        .lay("seat", "cushion", {"0", "0", "75", "24"}, "4")
                        .lay("board", "board", {"0", "0", "75", "20"}, "3/4")
                        .lay("back", "cushion", {"0", "0", "75", "14"}, "4")
                        .plan();
  EXPECT_EQ(base(night(plan), "back"), 18_in + Length::inches(3, 4));
}

TEST(Arrangement, CushionsPressedTogetherSideBySideAreNoFault) {
  const Plan plan = Furniture()
                        .fixture("bench", "bench", {"0", "0", "76", "24"}, "0", "14")
                        .lay("first", "cushion", {"0", "0", "38 1/4", "24"}, "4")
                        .lay("second", "cushion", {"38", "0", "38", "24"}, "4")
                        .plan();
  const Arrangement arrangement = night(plan);
  EXPECT_EQ(base(arrangement, "first"), 14_in);
  EXPECT_EQ(base(arrangement, "second"), 14_in);
}

Pose waiting_pose(const std::string& id, std::vector<std::string> on = {}) {
  Pose pose;
  pose.piece = PieceId(id);
  pose.on = std::move(on);
  pose.origin = {"/configurations/night/" + id, 7, 3};
  return pose;
}
Ids names(const std::vector<const Pose*>& poses) {
  Ids ids;
  for (const Pose* pose : poses) ids.push_back(pose->piece.text());
  return ids;
}

TEST(LayingOrder, APieceWaitsForWhatItNames) {
  Configuration configuration;
  configuration.poses = {waiting_pose("back", {"seat"}), waiting_pose("mat"),
                         waiting_pose("seat", {"table", "bench"}), waiting_pose("table")};
  EXPECT_EQ(names(*laying_order(configuration)), (Ids{"mat", "table", "seat", "back"}));
}

TEST(LayingOrder, StowedPiecesAreLeftOut) {
  Configuration configuration;
  configuration.poses = {waiting_pose("back"), waiting_pose("seat")};
  configuration.poses[0].manner = Pose::Manner::stowed;
  EXPECT_EQ(names(*laying_order(configuration)), Ids{"seat"});
}

TEST(LayingOrder, ACircleNamesAPairOfIt) {
  Configuration configuration;
  configuration.poses = {waiting_pose("mat"), waiting_pose("on top", {"a"}), waiting_pose("a", {"b"}),
                         waiting_pose("b", {"c"}), waiting_pose("c", {"a"})};
  const Result<std::vector<const Pose*>> order = laying_order(configuration);
  ASSERT_EQ(order.problems().size(), 1U);
  EXPECT_EQ(order.problems()[0].id, "rest.circle");
  EXPECT_EQ(order.problems()[0].pointer, "/configurations/night/c");
  EXPECT_EQ(order.problems()[0].line, 7U);
  EXPECT_NE(order.problems()[0].message.find("\"c\" and \"a\""), std::string::npos);
}

/// A box of whole inches.
struct Box {
  int x, y, length, width, base, height;
  bool soft;
};

// Slow twin: looks down on every square inch of the piece.
int height_by_cells(const Box& piece, const std::vector<Box>& standing) {
  std::map<int, int> area;
  int highest = 0;
  for (int x = piece.x; x < piece.x + piece.length; ++x)
    for (int y = piece.y; y < piece.y + piece.width; ++y) {
      int top = -1;
      for (const Box& box : standing)
        if (box.x <= x && x < box.x + box.length && box.y <= y && y < box.y + box.width && box.base < 48)
          top = std::max(top, box.base + box.height);
      if (top >= 0) ++area[top];
      highest = std::max(highest, top);
    }
  if (area.empty() || !piece.soft) return highest;
  int most = 0;
  for (const auto& [top, count] : area)
    if (count >= area[most]) most = top;
  return most;
}

struct Scene {
  std::vector<Box> fixtures;
  std::vector<Box> pieces;
};

Scene random_scene(unsigned seed) {
  std::mt19937 random(seed);
  const auto draw = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(random); };
  const auto box = [&](int base, int height, bool soft) {
    return Box{draw(0, 70), draw(0, 45), draw(5, 40), draw(5, 25), base, height, soft};
  };
  Scene scene;
  for (int i = 0; i < 5; ++i)
    scene.fixtures.push_back(box(draw(0, 6) == 0 ? draw(40, 55) : 0, draw(4, 9), false));
  for (int i = 0; i < 4; ++i) scene.pieces.push_back(box(0, draw(1, 5), draw(0, 1) == 1));
  return scene;
}

support::Spot spot(const Box& box, bool mirror) {
  const int y = mirror ? 76 - box.y - box.width : box.y;
  return {std::to_string(box.x), std::to_string(y), std::to_string(box.length), std::to_string(box.width)};
}

Plan plan_of(const Scene& scene, bool mirror = false) {
  Furniture furniture;
  for (std::size_t i = 0; i < scene.fixtures.size(); ++i) {
    const Box& box = scene.fixtures[i];
    furniture.fixture("f" + std::to_string(i), "cabinet", spot(box, mirror), std::to_string(box.base),
                      std::to_string(box.base + box.height));
  }
  for (std::size_t i = 0; i < scene.pieces.size(); ++i) {
    const Box& box = scene.pieces[i];
    furniture.lay("p" + std::to_string(i), box.soft ? "cushion" : "board", spot(box, mirror),
                  std::to_string(box.height));
  }
  return furniture.plan();
}

TEST(Arrangement, AgreesWithLookingAtEverySquareInch) {
  int compared = 0;
  for (unsigned seed = 0; seed < 300; ++seed) {
    SCOPED_TRACE(seed);
    Scene scene = random_scene(seed);
    const Plan plan = plan_of(scene);
    const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
    if (!arrangement) {
      for (const Problem& problem : arrangement.problems()) EXPECT_EQ(problem.id, "rest.order");
      continue;
    }
    std::vector<Box> standing = scene.fixtures;
    for (std::size_t i = 0; i < scene.pieces.size(); ++i) {
      scene.pieces[i].base = height_by_cells(scene.pieces[i], standing);
      standing.push_back(scene.pieces[i]);
      EXPECT_EQ(base(*arrangement, "p" + std::to_string(i)), Length::inches(scene.pieces[i].base));
      ++compared;
    }
  }
  EXPECT_GT(compared, 600);
}

TEST(Arrangement, DoesNotCareForMirrorShiftOrTheOrderOfFixtures) {
  for (unsigned seed = 0; seed < 60; ++seed) {
    SCOPED_TRACE(seed);
    const Scene scene = random_scene(seed);
    const Plan plan = plan_of(scene);
    const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
    const auto expect_same = [&](const Plan& other) {
      const Result<Arrangement> changed = arranged(other, other->configurations.front());
      ASSERT_EQ(changed.ok(), arrangement.ok());
      if (!changed.ok()) return;
      for (std::size_t i = 0; i < scene.pieces.size(); ++i) {
        const std::string id = "p" + std::to_string(i);
        EXPECT_EQ(base(*changed, id), base(*arrangement, id));
        EXPECT_EQ(changed->find(id)->pressed_by.size(), arrangement->find(id)->pressed_by.size());
      }
    };
    expect_same(plan_of(scene, true));
    Scene moved = scene;
    for (Box& box : moved.fixtures) box.x += 9;
    for (Box& box : moved.pieces) box.x += 9;
    expect_same(plan_of(moved));
    Scene reordered = scene;
    std::ranges::reverse(reordered.fixtures);
    expect_same(plan_of(reordered));
  }
}

}  // namespace
}  // namespace berthwright

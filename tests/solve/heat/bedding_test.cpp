#include <berthwright/solve/heat/bedding.h>

#include <gtest/gtest.h>

#include <random>

#include "oracle/bedding_raster.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

using oracle::Hang;

std::string box_at(const std::string& id, const std::string& kind, int x, int y, int length, int width,
                   int base, int top) {
  const auto text = [](int number) { return std::to_string(number); };
  return R"({"id": ")" + id + R"(", "kind": ")" + kind + R"(", "length": )" + text(length) +
         R"(, "width": )" + text(width) + R"(, "at": {"front": )" + text(x) + R"(, "left": )" + text(y) +
         R"(}, "base": )" + text(base) + R"(, "top": )" + text(top) + "}";
}

// A bench of 75 x 38 in in the front left corner, 14 high, with a cushion of 4: the level is 18 in.
TrailerText corner_bed() {
  TrailerText text;
  text.fixtures = {box_at("bench", "bench", 0, 0, 75, 38, 0, 14)};
  text.pieces = {R"({"id": "A", "kind": "cushion", "length": 75, "width": 38, "thickness": 4})"};
  text.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A"]})"};
  return text;
}

Point at(Length x, Length y) { return {x, y}; }

std::vector<Hang> hangs(const Answered& made, Point p) {
  return oracle::hangs_in(made.answer.configurations[1].beds[0].bedding, p);
}

// 2 in over the free edges at x = 75 and y = 38, from 18 down to 18 - 12 = 6 in; nothing beyond the walls at
// x = 0 and y = 0, nothing 2 1/4 in out.
TEST(Bedding, HangsTwoInchesOutAndTwelveDownOverFreeEdgesOnly) {
  const Answered made(corner_bed());
  const std::vector<Hang> free{{6_in, 18_in}};
  EXPECT_EQ(hangs(made, at(76_in, 10_in)), free);
  EXPECT_EQ(hangs(made, at(10_in, 39_in)), free);
  EXPECT_EQ(hangs(made, at(77_in, 10_in)), free);
  EXPECT_TRUE(hangs(made, at(Length::inches(309, 4), 10_in)).empty());
  EXPECT_TRUE(hangs(made, at(-1_in, 10_in)).empty());
  EXPECT_TRUE(hangs(made, at(40_in, 20_in)).empty());
  const Bedding& bedding = made.answer.configurations[1].beds[0].bedding;
  ASSERT_EQ(bedding.bare.size(), 1U);
  EXPECT_EQ(bedding.bare[0], Solid(Region(Rect{{0_in, 0_in}, {75_in, 38_in}}), 14_in, 18_in));
}

TEST(Bedding, RestsOnTheHighestThingBelow) {
  TrailerText text = corner_bed();
  text.fixtures.push_back(box_at("chest", "cabinet", 75, 0, 12, 10, 0, 10));
  text.fixtures.push_back(box_at("low box", "cabinet", 75, 10, 12, 10, 0, 5));
  text.fixtures.push_back(box_at("even", "cabinet", 75, 20, 12, 10, 0, 18));
  text.fixtures.push_back(box_at("tall", "cabinet", 75, 30, 12, 8, 0, 36));
  text.fixtures.push_back(box_at("tray", "shelf", 75, 0, 12, 5, 12, 13));
  text.fixtures.push_back(box_at("overhead", "locker", 75, 0, 12, 38, 50, 60));
  const Answered made(text);
  EXPECT_EQ(hangs(made, at(76_in, 7_in)), (std::vector<Hang>{{10_in, 18_in}}));
  EXPECT_EQ(hangs(made, at(76_in, 3_in)), (std::vector<Hang>{{13_in, 18_in}}));  // the tray over the chest
  EXPECT_EQ(hangs(made, at(76_in, 15_in)), (std::vector<Hang>{{6_in, 18_in}}));
  // Level with the bed: the bedding lies there, a sheet one tick thick.
  EXPECT_EQ(hangs(made, at(76_in, 25_in)), (std::vector<Hang>{{18_in - one_tick, 18_in}}));
  EXPECT_TRUE(hangs(made, at(76_in, 34_in)).empty());
}

TEST(Bedding, OfALowBedReachesTheFloorAndNoFarther) {
  TrailerText text = corner_bed();
  text.fixtures = {box_at("bench", "bench", 0, 0, 75, 38, 0, 3)};
  EXPECT_EQ(hangs(Answered(text), at(76_in, 5_in)), (std::vector<Hang>{{0_in, 7_in}}));
}

// Twin: a raster of plumb lines, one every 7/16 in around the bed, each told by the words of design 4.15.
TEST(Bedding, AgreesWithTheRasterTwin) {
  for (unsigned seed = 0; seed < 8; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto draw = [&](int low, int high) {
      return std::uniform_int_distribution<int>(low, high)(random);
    };
    TrailerText text;
    const int x = draw(0, 30), y = draw(0, 20), length = draw(30, 60), width = draw(20, 40),
              bench = draw(4, 30);
    text.fixtures = {box_at("bench", "bench", x, y, length, width, 0, bench)};
    for (int i = 0; i < 6; ++i) {
      const int base = draw(0, 20);
      text.fixtures.push_back(box_at("box" + std::to_string(i), "cabinet", draw(0, 90), draw(0, 50),
                                     draw(4, 20), draw(4, 20), base, base + draw(2, 25)));
    }
    text.pieces = {R"({"id": "A", "kind": "cushion", "length": )" + std::to_string(length) +
                   R"(, "width": )" + std::to_string(width) +
                   R"(, "thickness": 4, "corners": {"rear right": {"round": 6}}})"};
    text.night = {R"({"piece": "A", "at": {"front": )" + std::to_string(x) + R"(, "left": )" +
                  std::to_string(y) + R"(}, "on": "bench"})"};
    text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A"]})"};
    const Answered made(text);
    const ConfigurationAnswer& night = made.answer.configurations[1];
    const BedAnswer& bed = night.beds[0];
    const Rect around = grown(bed.mattress.closed.bounds(), 3_in);
    const Length step = Length::inches(7, 16);
    int compared = 0;
    int hanging = 0;
    for (Length px = around.low.x; px < around.high.x; px += step)
      for (Length py = around.low.y; py < around.high.y; py += step) {
        const oracle::HangAt told = oracle::hang_at(made.plan, night.arrangement, bed.mattress, {px, py});
        if (!told.sure) continue;
        const std::vector<Hang> expected = told.hang ? std::vector{*told.hang} : std::vector<Hang>{};
        EXPECT_EQ(oracle::hangs_in(bed.bedding, {px, py}), expected) << px.ticks() << ' ' << py.ticks();
        ++compared;
        hanging += told.hang ? 1 : 0;
      }
    EXPECT_GT(compared, 2000);
    EXPECT_GT(hanging, 50);
  }
}

}  // namespace
}  // namespace berthwright

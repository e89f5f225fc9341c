#include <berthwright/solve/convert/steps.h>

#include <gtest/gtest.h>


#include "support/convert_trailers.h"
#include "support/replay.h"

namespace berthwright {
namespace {

std::vector<Conversion> solved(const Plan& plan) {
  Result<std::vector<Conversion>> found = conversions(plan);
  return std::move(found).value();
}

// Both ways as many steps, replayed by the slow twin.
void expect_steps(const TrailerText& text, std::size_t count) {
  const Plan plan = text.plan();
  for (const Conversion& one : solved(plan)) {
    ASSERT_EQ(one.verdict, Conversion::Verdict::order) << one.from->name;
    EXPECT_EQ(one.steps.size(), count) << one.from->name;
    EXPECT_EQ(support::replayed(plan, one), "") << one.from->name;
  }
}

void expect_none(const TrailerText& text, const std::string& piece, const std::string& by) {
  const Plan plan = text.plan();
  for (const Conversion& one : solved(plan)) {
    EXPECT_EQ(one.verdict, Conversion::Verdict::none) << one.from->name;
    ASSERT_EQ(one.stuck.size(), 1U);
    EXPECT_EQ(one.stuck[0].piece, piece);
    EXPECT_EQ(one.stuck[0].by, std::vector<std::string>{by});
  }
}

TrailerText without_cushions(TrailerText text) {
  text.pieces.erase(text.pieces.begin() + 1, text.pieces.end());
  text.day = {R"({"piece": "table", "stowed": "elsewhere"})"};
  text.night.erase(text.night.begin());
  return text;
}

// The leg goes where no lid is in the way: table two, leg one, backs one each: 5.
TEST(BenchmarkSet, NoLidNoDetour) {
  TrailerText text = dinette_with_cushions();
  text.night[0] = R"({"piece": "leg", "stowed": "elsewhere"})";
  expect_steps(text, 5);
}

// Without a door the table waits inside, as before: 3.
TEST(BenchmarkSet, WithoutADoorThingsAreParkedInside) {
  TrailerText text = dinette();
  text.openings.clear();
  expect_steps(text, 3);
  const Plan plan = text.plan();
  const std::vector<Conversion> found = solved(plan);
  EXPECT_EQ(found[0].steps[0].to.kind, PiecePlace::Kind::parked);
}

// Two boards change places on two benches, one waits: 3.
TEST(BenchmarkSet, TwoBoardsChangePlaces) {
  TrailerText text = dinette();
  text.pieces = {R"({"id": "one", "kind": "board", "length": 36, "width": 20, "thickness": "3/4"})",
                 R"({"id": "two", "kind": "board", "length": 36, "width": 20, "thickness": "3/4"})"};
  const auto at = [](const char* id, const char* side) {
    return R"({"piece": ")" + std::string(id) + R"(", "at": {"rear": 1, ")" + side + R"(": 1}})";
  };
  text.day = {at("one", "left"), at("two", "right")};
  text.night = {at("one", "right"), at("two", "left")};
  expect_steps(text, 3);
}

// Three cushions lie on each other, by night the other way round: the lowest must leave before the highest
// comes, so each is put aside once: 6.
TEST(BenchmarkSet, AStackIsTurnedOver) {
  TrailerText text = dinette();
  text.pieces.clear();
  text.day.clear();
  text.night.clear();
  for (const char* id : {"A", "B", "C"}) {
    text.pieces.push_back(R"({"id": ")" + std::string(id) +
                          R"(", "kind": "cushion", "length": 36, "width": 20, "thickness": 3})");
    const std::string pose = R"({"piece": ")" + std::string(id) + R"(", "at": {"rear": 1, "left": 1}})";
    text.day.push_back(pose);
    text.night.insert(text.night.begin(), pose);
  }
  expect_steps(text, 6);
}

// A table larger than the door: it cannot wait outside, and does inside.
TEST(BenchmarkSet, ATableLargerThanTheDoorWaitsInside) {
  TrailerText text = dinette();
  text.openings = {
      R"({"id": "hatch", "kind": "door", "wall": "right", "from_front": 40, "width": 26, "height": 30, "sill": 2,
          "opens": "out"})"};
  expect_steps(text, 3);
  const Plan plan = text.plan();
  const std::vector<Conversion> found = solved(plan);
  for (const Step& step : found[0].steps) EXPECT_NE(step.to.kind, PiecePlace::Kind::outside);
}

// A board that lies flat by day stands on its edge by night: one step, tipped on the way.
TEST(BenchmarkSet, ABoardIsStoodOnEdge) {
  TrailerText text = dinette();
  text.pieces = {R"({"id": "board", "kind": "board", "length": 30, "width": 18, "thickness": "3/4"})"};
  text.day = {R"({"piece": "board", "at": {"rear": 1, "left": 1}})"};
  text.night = {
      R"({"piece": "board", "at": {"rear": 1, "right": 0}, "stands_on": "length", "faces": "left"})"};
  expect_steps(text, 1);
  const Plan plan = text.plan();
  std::size_t tips = 0;
  const std::vector<Conversion> found = solved(plan);
  for (const Motion& motion : found[0].steps[0].motions)
    tips += motion.kind == Motion::Kind::tip ? 1U : 0U;
  EXPECT_EQ(tips, 1U);
}

// The same board turned by a quarter, and turned over: one step each.
TEST(BenchmarkSet, ABoardIsTurnedAndTurnedOver) {
  TrailerText text = dinette();
  text.pieces = {R"({"id": "board", "kind": "board", "length": 30, "width": 18, "thickness": "3/4"})"};
  text.day = {R"({"piece": "board", "at": {"rear": 1, "left": 1}})"};
  text.night = {R"({"piece": "board", "at": {"rear": 1, "left": 24}, "turn": 90})"};
  expect_steps(text, 1);
  text.night = {R"({"piece": "board", "at": {"rear": 1, "left": 1}, "flipped": true})"};
  expect_steps(text, 1);
  const Plan plan = text.plan();
  EXPECT_TRUE(solved(plan)[0].steps[0].flipped);
}

// A shelf 6 in above the ledges, over the whole bay: the table is slid in beneath it from the front. With a
// wall before the bay it comes neither from there nor straight down.
TEST(BenchmarkSet, UnderAShelfFromTheFrontAndNoneBehindAWall) {
  TrailerText text = without_cushions(dinette());
  text.fixtures.push_back(
      R"({"id": "shelf", "kind": "shelf", "length": 38, "width": 32, "at": {"rear": 0, "left": 22}, "base": 20, "top": 21})");
  text.night[0] =
      R"({"piece": "table", "at": {"rear": "1/8", "left": "22 1/8"}, "on": ["left ledge", "right ledge"]})";
  expect_steps(text, 1);
  text.fixtures.push_back(
      R"({"id": "screen", "kind": "wall", "length": 1, "width": 32, "at": {"front": 81, "left": 22}, "top": 76})");
  expect_none(text, "table", "shelf");
}

// A board lies on the floor of a bay that a wall closes; above it, not on it, the table lies on its ledges,
// day and night. The board comes out only while the table is away: 3.
TEST(BenchmarkSet, WhatLiesAboveIsTakenAwayFirst) {
  TrailerText text = dinette();
  text.fixtures.push_back(
      R"({"id": "screen", "kind": "wall", "length": 1, "width": 32, "at": {"front": 81, "left": 22}, "top": 76})");
  text.pieces[1] = R"({"id": "board", "kind": "board", "length": 30, "width": 18, "thickness": "3/4"})";
  const std::string table = text.night[1];
  text.day = {R"({"piece": "board", "at": {"rear": 2, "left": 26}, "base": 0})", table};
  text.night = {R"({"piece": "board", "at": {"rear": 2, "left": 1}})", table};
  expect_steps(text, 3);
}

// The table is kept in the bench by day, whose lid of 30 x 16 in lets 31 3/4 in not through.
TEST(BenchmarkSet, NoneThroughALidThatIsTooSmall) {
  TrailerText text = without_cushions(dinette());
  text.day = {R"({"piece": "table", "stowed": "left bench"})"};
  expect_none(text, "table", "left lid");
}

// By day the table stands partly in a cabinet: it starts in collision, and nothing frees it.
TEST(BenchmarkSet, NoneWhereAPieceStartsInACabinet) {
  TrailerText text = dinette();
  text.fixtures.push_back(
      R"({"id": "cabinet", "kind": "cabinet", "length": 10, "width": 20, "at": {"front": 74, "left": 30}, "top": 60})");
  text.day[1] = R"({"piece": "table", "at": {"rear": 4, "left": "22 1/8"}, "on": "leg"})";
  text.night[1] = R"({"piece": "table", "at": {"front": 0, "left": 0}})";
  expect_none(text, "table", "cabinet");
}

// Two dinettes and a bench with eight cushions whose order is turned over in pairs: twenty pieces.
TrailerText twenty_pieces() {
  TrailerText text;
  text.interior = R"({"length": 260, "width": 76, "height": 76})";
  text.openings = {
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 120, "width": 26, "height": 68, "sill": 2,
          "opens": "out"})"};
  const auto at = [](int front, const std::string& side) {
    return R"("at": {"front": )" + std::to_string(front) + ", " + side + "}";
  };
  for (const auto& [name, front] : {std::pair<std::string, int>{"1", 0}, {"2", 222}}) {
    for (const char* side : {"left", "right"}) {
      const std::string bench = std::string(side) + " bench " + name;
      text.fixtures.push_back(
          R"({"id": ")" + bench + R"(", "kind": "bench", "length": 38, "width": 22, "top": 14, )" +
          at(front, '"' + std::string(side) + R"(": 0)") + R"(, "opens": [{"id": "lid of )" + bench +
          R"(", "kind": "lid", "hinge": ")" + side + "\"}]}");
      text.fixtures.push_back(
          R"({"id": ")" + std::string(side) + " ledge " + name +
          R"(", "kind": "ledge", "length": 38, "width": 1, "base": 12, "top": "13 1/4", )" +
          at(front, '"' + std::string(side) + R"(": 22)") + "}");
      const std::string seat = std::string(side) + " seat " + name,
                        back = std::string(side) + " back " + name;
      text.pieces.push_back(R"({"id": ")" + seat +
                            R"(", "kind": "cushion", "length": 38, "width": 22, "thickness": 4})");
      text.pieces.push_back(R"({"id": ")" + back +
                            R"(", "kind": "cushion", "length": 38, "width": 16, "thickness": 4})");
      const std::string pose =
          R"({"piece": ")" + seat + R"(", )" + at(front, '"' + std::string(side) + R"(": 0)") + "}";
      text.day.push_back(pose);
      text.night.push_back(pose);
    }
    text.pieces.push_back(
        R"({"id": "table )" + name +
        R"(", "kind": "table", "length": "37 3/4", "width": "31 3/4", "thickness": "3/4"})");
    text.pieces.push_back(R"({"id": "leg )" + name +
                          R"(", "kind": "leg", "length": 2, "width": 2, "thickness": 27})");
    text.day.push_back(R"({"piece": "leg )" + name + R"(", )" + at(front + 18, R"("left": 37)") + "}");
    text.day.push_back(R"({"piece": "table )" + name + R"(", )" + at(front, R"("left": "22 1/8")") +
                       R"(, "on": "leg )" + name + "\"}");
    text.night.push_back(R"({"piece": "leg )" + name + R"(", "stowed": "left bench )" + name + "\"}");
    text.night.push_back(R"({"piece": "table )" + name + R"(", )" + at(front, R"("left": "22 1/8")") + "}");
    for (const char* side : {"left", "right"}) {
      const std::string back = std::string(side) + " back " + name;
      const std::string looks = std::string(side) == "left" ? "right" : "left";
      text.day.push_back(R"({"piece": ")" + back + R"(", )" + at(front, '"' + std::string(side) + R"(": 0)") +
                         R"(, "stands_on": "length", "faces": ")" + looks + "\"}");
      text.night.push_back(R"({"piece": ")" + back + R"(", )" +
                           at(front, '"' + std::string(side) + R"(": 22)") + "}");
    }
  }
  text.fixtures.push_back(R"({"id": "long bench", "kind": "bench", "length": 80, "width": 22, "top": 14, )" +
                          at(60, R"("left": 0)") + "}");
  for (int i = 0; i < 8; ++i) {
    const std::string id = "cushion " + std::to_string(i);
    text.pieces.push_back(R"({"id": ")" + id +
                          R"(", "kind": "cushion", "length": 20, "width": 20, "thickness": 3})");
    const std::string pose = R"({"piece": ")" + id + R"(", )" + at(60 + i / 2 * 20, R"("left": 1)") + "}";
    text.day.push_back(pose);
    if (i % 2 == 0)
      text.night.push_back(pose);
    else
      text.night.insert(text.night.end() - 1, pose);
  }
  return text;
}

// Each dinette as for WhatLiesOnTheLidIsPutAsideFirst: 8. Each pair of cushions: the upper one aside, the
// lower one aside, the one that comes first, the other: the upper one is laid down before the lower one
// returns, so 4, and 16 for all: 32.
TEST(BenchmarkSet, TwentyPiecesAreDecided) {
  const Plan plan = twenty_pieces().plan();
  ASSERT_EQ(plan->pieces.size(), 20U);
  const std::vector<Conversion> found = solved(plan);
  ASSERT_EQ(found[0].verdict, Conversion::Verdict::order);
  EXPECT_EQ(found[0].steps.size(), 32U);
  EXPECT_EQ(found[0].at_least, 32U);
  EXPECT_EQ(support::replayed(plan, found[0]), "");
}

// One of them is given a table that its benches do not let in: twenty pieces, proved to be none.
TEST(BenchmarkSet, TwentyPiecesAreProvedToHaveNone) {
  TrailerText text = twenty_pieces();
  for (std::string& pose : text.night)
    if (pose.find(R"("table 2")") != std::string::npos)
      pose = R"({"piece": "table 2", "at": {"front": 222, "left": "21 1/2"}, "base": "13 1/4"})";
  const Plan plan = text.plan();
  const std::vector<Conversion> found = solved(plan);
  ASSERT_EQ(found[0].verdict, Conversion::Verdict::none);
  ASSERT_EQ(found[0].stuck.size(), 1U);
  EXPECT_EQ(found[0].stuck[0].by, std::vector<std::string>{"left bench 2"});
  EXPECT_EQ(found[0].stuck[0].depth, Length::inches(1, 2));
}

}  // namespace
}  // namespace berthwright

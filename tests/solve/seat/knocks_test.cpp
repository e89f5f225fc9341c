#include <berthwright/solve/seat/knocks.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "support/seat_trailers.h"

namespace berthwright {
namespace {

std::vector<Knock> knocks_in(const Answered& made, Knock::Of of, std::size_t configuration = 0) {
  std::vector<Knock> found = made.answer.configurations[configuration].knocks;
  std::erase_if(found, [&](const Knock& knock) { return knock.of != of; });
  return found;
}

std::vector<Knock> knocks_of_box(Knock::Of of, const std::string& kind,
                                 const std::array<std::string, 6>& sides) {
  const Answered made(booth({.table_base = "", .more = {box("thing", kind, sides)}}));
  return knocks_in(made, of);
}
constexpr auto head = Knock::Of::sitting_head;
constexpr auto elbow = Knock::Of::elbow;

// Backs' faces are at x = 4 in, so eyes are at x = 12, y from 203 mm to 42 in less that; in height 18 in
// (457.2 mm) and 698 to 860 mm (ANSUR II: eye height sitting, 5th percentile woman, 95th percentile man):
// 1155.2 to 1317.2 mm, or 45.5 to 51.9 in.
TEST(Knocks, ACrankOnTheWallBehindIsNearTheEyes) {
  // From x = 0 to 6 at the height of the eyes: 6 in = 152.4 mm before them, under 200.
  const std::vector<Knock> near = knocks_of_box(head, "protrusion", {"0", "20", "6", "2", "47", "49"});
  ASSERT_EQ(near.size(), 1U);
  EXPECT_EQ(near[0].thing, "thing");
  EXPECT_EQ(near[0].cushions, std::vector<std::string>{"A"});
  EXPECT_EQ(near[0].by, 6_in);
  // 8 in = 203.2 mm: out of it.
  EXPECT_TRUE(knocks_of_box(head, "protrusion", {"0", "20", "4", "2", "47", "49"}).empty());
  // 3-4-5: 3 in before the eyes and 4 in above 1317.2 mm = 51.858267… in: a base at 55.858 (in thousandths
  // rounded down) lies 5 in away, less a whisker.
  const std::vector<Knock> corner = knocks_of_box(head, "protrusion", {"0", "20", "9", "2", "55.858", "60"});
  ASSERT_EQ(corner.size(), 1U);
  EXPECT_LE(corner[0].by, 5_in);
  EXPECT_GT(corner[0].by, 5_in - Length::inches(1, 1000));
}

TEST(Knocks, TheEdgeOfALockerCountsBesideTheHeadNotOverIt) {
  // 7 in deep: its edge is 5 in behind the eyes; heads begin at x = 8, so nothing hangs over them.
  const std::vector<Knock> beside = knocks_of_box(head, "locker", {"0", "0", "7", "42", "46", "60"});
  ASSERT_EQ(beside.size(), 1U);
  EXPECT_EQ(beside[0].by, 5_in);
  // 14 in deep it hangs over the heads: head room tells it.
  EXPECT_TRUE(knocks_of_box(head, "locker", {"0", "0", "14", "42", "46", "60"}).empty());
  // A protrusion counts also there, a cabinet does not jut out.
  EXPECT_EQ(knocks_of_box(head, "protrusion", {"8", "10", "8", "8", "52", "60"}).size(), 1U);
  EXPECT_TRUE(knocks_of_box(head, "cabinet", {"0", "0", "7", "42", "46", "60"}).empty());
}

// Elbows: from the back at x = 4 to 16; in height 18 in and 189 to 291 mm, that is 25.44 to 29.46 in; across
// 42 in and at each end half of what 666.9 mm (ANSUR II: forearm breadth, 95th percentile man) go beyond 24
// in (609.6 mm): 28.65 mm.
TEST(Knocks, ALatchReachesIntoTheElbowRoom) {
  const std::vector<Knock> in = knocks_of_box(elbow, "protrusion", {"0", "20", "6", "2", "26", "28"});
  ASSERT_EQ(in.size(), 1U);
  EXPECT_EQ(in[0].by, 2_in);  // 6 - 4
  EXPECT_TRUE(knocks_of_box(elbow, "protrusion", {"0", "20", "4", "2", "26", "28"}).empty());
  EXPECT_TRUE(knocks_of_box(elbow, "protrusion", {"0", "20", "6", "2", "30", "34"}).empty());
  // At the aisle end: 1 in beyond 42 is inside 28.65 mm, 1 1/4 in (31.75 mm) is not.
  const std::vector<Knock> end = knocks_of_box(elbow, "protrusion", {"6", "43", "4", "4", "20", "40"});
  ASSERT_EQ(end.size(), 1U);
  EXPECT_EQ(end[0].by, Length::millimetres(2865, 100) - 1_in);
  EXPECT_TRUE(knocks_of_box(elbow, "protrusion", {"6", "43 1/4", "4", "4", "20", "40"}).empty());
}

// A cot of 42 x 23 in, its level at 19: pillows at both ends. A crank over the left end at 22 in: 3 in above
// the level; one on the wall beyond the front end, 4 in away and 3 in up: 5 in; one at 27 in (8 in = 203.2
// mm up) is far enough, and so is one lower than the level.
TEST(Knocks, ACrankNearEitherEndOfABedIsNearAPillow) {
  const auto lying = [](const std::array<std::string, 6>& sides) {
    TrailerText text =
        booth({.bench_width = "70", .table_base = "", .more = {box("crank", "protrusion", sides)}});
    text.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "front bench"})"};
    text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A"]})"};
    return knocks_in(Answered(text), Knock::Of::lying_head, 1);
  };
  const std::vector<Knock> over = lying({"8", "2", "3", "3", "22", "25"});
  ASSERT_EQ(over.size(), 1U);
  EXPECT_EQ(over[0].by, 3_in);
  EXPECT_EQ(over[0].bed, BedId("bed"));
  EXPECT_EQ(lying({"8", "64", "3", "3", "22", "25"}).size(), 1U);
  EXPECT_TRUE(lying({"8", "34", "3", "3", "22", "25"}).empty());  // over the hips
  const std::vector<Knock> beside = lying({"8", "74", "2", "2", "22", "25"});
  ASSERT_EQ(beside.size(), 1U);
  EXPECT_EQ(beside[0].by, 5_in);
  EXPECT_TRUE(lying({"8", "2", "3", "3", "27", "30"}).empty());
  EXPECT_TRUE(lying({"8", "71", "3", "3", "10", "18"}).empty());
}

TEST(Knocks, AreTheSameInTheMirror) {
  std::size_t number = 0;
  std::size_t any = 0;
  for (const TrailerText& text : seats_of_every_status()) {
    SCOPED_TRACE(number++);
    const Answered as_drawn(text);
    const Answered mirrored(text.mirrored());
    for (std::size_t c = 0; c < as_drawn.answer.configurations.size(); ++c) {
      const std::vector<Knock>& a = as_drawn.answer.configurations[c].knocks;
      const std::vector<Knock>& b = mirrored.answer.configurations[c].knocks;
      ASSERT_EQ(a.size(), b.size());
      for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_EQ(a[i].thing, b[i].thing);
        EXPECT_EQ(a[i].by, b[i].by);
      }
      any += a.size();
    }
  }
  EXPECT_GE(any, 4U);
}

}  // namespace
}  // namespace berthwright

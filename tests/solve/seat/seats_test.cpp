#include <berthwright/solve/seat/seats.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "support/seat_trailers.h"

namespace berthwright {
namespace {

struct Seated {
  explicit Seated(const TrailerText& text) : made(text), seats(made.answer.configurations.front().seats) {}
  const Seat* of(std::string_view cushion) const {
    for (const Seat& seat : seats)
      if (std::ranges::find(seat.cushions, cushion) != seat.cushions.end()) return &seat;
    return nullptr;
  }
  Answered made;
  const std::vector<Seat>& seats;
};

constexpr Length thou(std::int64_t thousandths) { return Length::inches(thousandths, 1000); }

// The booth of a bay of 76 x 42 in: benches 23 deep and 15 high, cushions 4, backs 15 high and 4 thick, a
// table of 23/32 plywood (0.703) whose top is at 29.5. By hand:
//   a person sits at 15 + 4 - 1 = 18; depth 23 - 4 = 19; the back sinks 1/2: 15 - 1/2 = 14 1/2;
//   thighs 29.5 - 0.703 - 18 = 10.797; top 29.5 - 18 = 11.5; the table clears each bench by 1/8;
//   knees: 28.797 high; 29 3/4 of table shared by two: 14.875; roof 76 - 18 = 58.
TEST(Seats, ABoothMeasuresAsByHand) {
  const Seated made(booth({}));
  ASSERT_EQ(made.seats.size(), 2U);
  for (const auto& [cushion, back, faces] : {std::tuple{"A", "B", Wall::rear}, {"D", "C", Wall::front}}) {
    SCOPED_TRACE(cushion);
    const Seat& seat = *made.of(cushion);
    EXPECT_EQ(seat.faces, faces);
    EXPECT_EQ(seat.backs, std::vector<std::string>{back});
    EXPECT_EQ(seat.top, 19_in);
    EXPECT_EQ(seat.sits_at, 18_in);
    EXPECT_EQ(seat.height, 18_in);
    EXPECT_EQ(seat.depth, 19_in);
    EXPECT_EQ(seat.back_height, Length::inches(29, 2));
    EXPECT_EQ(seat.length, 42_in);
    EXPECT_EQ(seat.sitting.area(), Area::rectangle(19_in, 42_in));
    ASSERT_TRUE(seat.head_room.has_value());
    EXPECT_EQ(seat.head_room->height, 58_in);
    EXPECT_EQ(seat.head_room->under, "");
    ASSERT_TRUE(seat.table.has_value());
    EXPECT_EQ(seat.table->thigh_room, thou(10797));
    EXPECT_EQ(seat.table->top, Length::inches(23, 2));
    EXPECT_EQ(seat.table->overlap, -Length::inches(1, 8));
    EXPECT_EQ(seat.table->knee_height, thou(28797));
    EXPECT_EQ(seat.table->knee_depth, thou(14875));
    // At the aisle end: from the back at 4 in to 18 in before the front at 23: 4 to 41.
    EXPECT_EQ(seat.way_in, 37_in);
  }
}

// A locker of 4 in stands under that table from 30 to 34 in, as high as 24: from the table's edges at 23 1/8
// and 52 7/8 the knees of one have 30 - 23.125 = 6.875 in to it, those of the other 52.875 - 34 = 18.875,
// which is more than their half of the 29 3/4, 14.875.
TEST(Seats, KneesEndAtWhatStandsUnderTheTableAndAtTheMiddle) {
  const Seated made(booth({.more = {box("locker", "locker", {"30", "0", "4", "42", "0", "24"})}}));
  EXPECT_EQ(made.of("A")->table->knee_depth, thou(6875));
  EXPECT_EQ(made.of("D")->table->knee_depth, thou(14875));
  // What ends below the seat stands before the shins only.
  const Seated low(booth({.more = {box("locker", "locker", {"30", "0", "4", "42", "0", "18"})}}));
  EXPECT_EQ(low.of("A")->table->knee_depth, thou(14875));
}

// An L: seat A along the front wall, seat D along the left one from 22 to 62 in, a table over x 22 to 52 and
// y 22 to 60. Knees of A have 52 - 22 = 30 in under it: D begins beside the table, not under it. Knees of D
// have 60 - 22 = 38. A locker under it at x 40 leaves A 40 - 22 = 18; at y 0 to 20 it stands under no table.
TEST(Seats, KneesAreMeasuredUnderTheTableAndNotBesideIt) {
  const auto seated = [](const std::vector<std::string>& more) {
    TrailerText text;
    text.interior = R"({"length": 100, "width": 76, "height": 76})";
    text.fixtures = {box("front bench", "bench", {"0", "0", "22", "76", "0", "14"}),
                     box("left bench", "bench", {"22", "0", "40", "22", "0", "14"})};
    text.fixtures.insert(text.fixtures.end(), more.begin(), more.end());
    text.pieces = {R"({"id": "A", "kind": "cushion", "length": 22, "width": 76, "thickness": 4})",
                   R"({"id": "D", "kind": "cushion", "length": 40, "width": 22, "thickness": 4})",
                   R"({"id": "table", "kind": "table", "length": 30, "width": 38, "thickness": 1})"};
    text.day = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "front bench"})",
                R"({"piece": "D", "at": {"front": 22, "left": 0}, "on": "left bench"})",
                R"({"piece": "table", "at": {"front": 22, "left": 22}, "base": 27})"};
    return Seated(text);
  };
  const Seated lounge = seated({});
  ASSERT_EQ(lounge.of("A")->faces, Wall::rear);
  ASSERT_EQ(lounge.of("D")->faces, Wall::right);
  EXPECT_EQ(lounge.of("A")->table->knee_depth, 30_in);
  EXPECT_EQ(lounge.of("D")->table->knee_depth, 38_in);
  EXPECT_EQ(seated({box("locker", "locker", {"40", "30", "4", "4", "0", "24"})}).of("A")->table->knee_depth,
            18_in);
  EXPECT_EQ(seated({box("locker", "locker", {"62", "0", "4", "20", "0", "24"})}).of("A")->table->knee_depth,
            30_in);
}

// Style B of the same bay: seats 19 deep that slide in, backs 19 high behind them on the lid, which do not
// sink: 14 + 19 less the seat's top at 18 = 15.
TEST(Seats, ABackBehindTheSeatOnTheLidCountsAsItsBack) {
  TrailerText text;
  text.fixtures = {box("bench", "bench", {"0", "0", "23", "42", "0", "14"})};
  text.pieces = {R"({"id": "A", "kind": "cushion", "length": 19, "width": 42, "thickness": 4})",
                 R"({"id": "B", "kind": "cushion", "length": 19, "width": 42, "thickness": 4})"};
  text.day = {R"({"piece": "A", "at": {"front": 4, "left": 0}})",
              R"({"piece": "B", "at": {"front": 0, "left": 0}, "stands_on": "width", "faces": "rear"})"};
  const Seated made(text);
  ASSERT_EQ(made.seats.size(), 1U);
  EXPECT_EQ(made.seats[0].faces, Wall::rear);
  EXPECT_EQ(made.seats[0].depth, 19_in);
  EXPECT_EQ(made.seats[0].back_height, 15_in);
}

TEST(Seats, WithoutBackOneSitsAwayFromTheWallAlongMostOfASide) {
  const Seated made(booth({.back = ""}));
  EXPECT_EQ(made.of("A")->faces, Wall::rear);  // 42 in along the front wall, 23 along the left one
  EXPECT_EQ(made.of("D")->faces, Wall::front);
  EXPECT_EQ(made.of("A")->depth, 23_in);
  EXPECT_FALSE(made.of("A")->back_height.has_value());
}

TEST(Seats, WithoutBackAndWallTheWayOneSitsIsUnknown) {
  const Seated made(seats_of_every_status().back());
  ASSERT_EQ(made.seats.size(), 1U);
  EXPECT_FALSE(made.seats[0].faces.has_value());
  EXPECT_FALSE(made.seats[0].table.has_value());
  EXPECT_EQ(made.seats[0].height, 17_in);
  ASSERT_TRUE(made.seats[0].head_room.has_value());
  EXPECT_EQ(made.seats[0].head_room->height, 59_in);  // 76 - 17
}

TEST(Seats, ACushionOnTheFloorIsNoneAndOneOnATallCabinetNeither) {
  EXPECT_TRUE(Seated(booth({.bench_top = "5"})).seats.empty());                      // tops at 9 in
  EXPECT_EQ(Seated(booth({.bench_top = "6"})).seats.size(), 2U);                     // at 10
  EXPECT_EQ(Seated(booth({.bench_top = "20", .table_base = ""})).seats.size(), 2U);  // at 24
  EXPECT_TRUE(Seated(booth({.bench_top = "20 1/4", .table_base = ""})).seats.empty());
}

TEST(Seats, ABedOfTheConfigurationIsNoSeat) {
  TrailerText text = booth({});
  text.beds = {R"({"id": "bed", "configuration": "day", "pieces": ["A"]})"};
  const Seated made(text);
  EXPECT_EQ(made.of("A"), nullptr);
  EXPECT_NE(made.of("D"), nullptr);
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A"]})"};
  text.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "front bench"})"};
  EXPECT_NE(Seated(text).of("A"), nullptr);
}

TEST(Seats, ACoveredCushionIsNoneButTheOneOnTopIs) {
  TrailerText text = booth({.back = "", .table_base = ""});
  text.pieces.push_back(R"({"id": "pad", "kind": "cushion", "length": 23, "width": 30, "thickness": 2})");
  text.day.push_back(R"({"piece": "pad", "at": {"front": 0, "left": 0}, "on": "A"})");
  const Seated made(text);
  EXPECT_EQ(made.of("A"), nullptr);
  ASSERT_NE(made.of("pad"), nullptr);
  EXPECT_EQ(made.of("pad")->sits_at, 20_in);  // 15 + 4 + 2 - 1
}

// Two cushions of 20 and 22 in side by side on one bench are one seat of 42; with a board between that
// stands up 6 in between them, one of them alone.
TEST(Seats, CushionsInARowAreOneSeat) {
  TrailerText text;
  text.fixtures = {box("bench", "bench", {"0", "0", "23", "60", "0", "14"})};
  text.pieces = {R"({"id": "A", "kind": "cushion", "length": 23, "width": 20, "thickness": 4})",
                 R"({"id": "B", "kind": "cushion", "length": 23, "width": 22, "thickness": 4})"};
  text.day = {R"({"piece": "A", "at": {"front": 0, "left": 6}})",
              R"({"piece": "B", "at": {"front": 0, "left": 26}})"};
  const Seated row(text);
  ASSERT_EQ(row.seats.size(), 1U);
  EXPECT_EQ(row.seats[0].cushions, (std::vector<std::string>{"A", "B"}));
  EXPECT_EQ(row.seats[0].length, 42_in);
  text.day[1] = R"({"piece": "B", "at": {"front": 0, "left": 28}})";
  EXPECT_EQ(Seated(text).seats.size(), 2U);  // 2 in apart
  text.day[1] = R"({"piece": "B", "at": {"front": 0, "left": "26 3/4"}})";
  EXPECT_EQ(Seated(text).seats[0].length, Length::inches(171, 4));
  text.fixtures.push_back(box("arm", "wall", {"0", "26", "23", "3/4", "14", "24"}));
  EXPECT_EQ(Seated(text).seats[0].length, 22_in);
}

// Tops of two cushions side by side that differ by 1/2 in make one seat; by 5/8 in they make two.
TEST(Seats, CushionsOfARowAreOfOneHeight) {
  const auto seats = [](const char* thickness) {
    TrailerText text;
    text.fixtures = {box("bench", "bench", {"0", "0", "23", "60", "0", "14"})};
    text.pieces = {R"({"id": "A", "kind": "cushion", "length": 23, "width": 20, "thickness": 4})",
                   R"({"id": "B", "kind": "cushion", "length": 23, "width": 22, "thickness": ")" +
                       std::string(thickness) + R"("})"};
    text.day = {R"({"piece": "A", "at": {"front": 0, "left": 6}})",
                R"({"piece": "B", "at": {"front": 0, "left": 26}})"};
    return Seated(text).seats.size();
  };
  EXPECT_EQ(seats("4 1/2"), 1U);
  EXPECT_EQ(seats("4 5/8"), 2U);
}

// A seat's front on a step 6 in high all along: 18 - 6 = 12 in to sit at, too low a cushion for none.
TEST(Seats, FeetOnARaisedFloorAreMeasuredFromIt) {
  const Seated made(
      booth({.table_base = "", .more = {box("step", "cabinet", {"23", "0", "30", "42", "0", "6"})}}));
  EXPECT_EQ(made.of("A")->height, 12_in);
  const Seated part(
      booth({.table_base = "", .more = {box("step", "cabinet", {"23", "0", "30", "20", "0", "6"})}}));
  EXPECT_EQ(part.of("A")->height, 18_in);
}

// Heads are within 4 in of a line 8 in before the back (at x = 4): x 8 to 16. A locker whose front is at 8
// does not hang over them, one at 8 1/4 does; it hangs 48 - 18 = 30 in above who sits.
TEST(Seats, HeadRoomIsToTheLowestThingOverTheHeads) {
  const auto under = [](const char* depth) {
    return *Seated(booth({.more = {box("locker", "locker", {"0", "0", depth, "42", "48", "64"})}}))
                .of("A")
                ->head_room;
  };
  EXPECT_EQ(under("8").under, "");
  EXPECT_EQ(under("8 1/4").under, "locker");
  EXPECT_EQ(under("8 1/4").height, 30_in);
}

// A seat without a table, and a table without a seat, say nothing of each other.
TEST(Seats, ATableFarFromTheSeatIsNotItsTable) {
  EXPECT_FALSE(Seated(booth({.table_base = ""})).of("A")->table.has_value());
  EXPECT_FALSE(Seated(booth({.table_base = "8"})).of("A")->table.has_value());  // lower than the seat
  EXPECT_FALSE(Seated(booth({.table_front = "36", .table_length = "10"})).of("A")->table.has_value());
  TrailerText alone = booth({});
  alone.day.erase(alone.day.begin(), alone.day.begin() + 4);
  EXPECT_TRUE(Seated(alone).seats.empty());
}

// A roof 36 in over the floor, seats pressed to 18: 18 in.
TEST(Seats, ALowRoofIsTheHeadRoom) {
  const Seated made(booth({.table_base = "", .room_height = "36"}));
  EXPECT_EQ(made.of("A")->head_room->height, 18_in);
}

void expect_same_measures(const Seat& a, const Seat& b) {
  EXPECT_EQ(a.height, b.height);
  EXPECT_EQ(a.depth, b.depth);
  EXPECT_EQ(a.length, b.length);
  EXPECT_EQ(a.back_height, b.back_height);
  EXPECT_EQ(a.way_in, b.way_in);
  EXPECT_EQ(a.backs, b.backs);
  EXPECT_EQ(a.sitting.area(), b.sitting.area());
  ASSERT_EQ(a.head_room.has_value(), b.head_room.has_value());
  if (a.head_room) {
    EXPECT_EQ(a.head_room->height, b.head_room->height);
  }
  ASSERT_EQ(a.table.has_value(), b.table.has_value());
  if (!a.table) return;
  EXPECT_EQ(a.table->overlap, b.table->overlap);
  EXPECT_EQ(a.table->thigh_room, b.table->thigh_room);
  EXPECT_EQ(a.table->knee_depth, b.table->knee_depth);
}

TEST(Seats, AreTheSameInTheMirrorAndWhateverTheOrderOfTheFile) {
  std::size_t number = 0;
  for (const TrailerText& text : seats_of_every_status()) {
    SCOPED_TRACE(number++);
    const Seated as_drawn(text);
    const Seated mirrored(text.mirrored());
    TrailerText turned = text;
    std::ranges::reverse(turned.fixtures);
    std::ranges::reverse(turned.pieces);
    const Seated reordered(turned);
    ASSERT_EQ(as_drawn.seats.size(), mirrored.seats.size());
    ASSERT_EQ(as_drawn.seats.size(), reordered.seats.size());
    for (std::size_t i = 0; i < as_drawn.seats.size(); ++i) {
      expect_same_measures(as_drawn.seats[i], mirrored.seats[i]);
      expect_same_measures(as_drawn.seats[i], reordered.seats[i]);
    }
  }
}

}  // namespace
}  // namespace berthwright

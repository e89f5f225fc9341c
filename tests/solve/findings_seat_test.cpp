#include <gtest/gtest.h>

#include <algorithm>

#include "solve/findings.h"
#include "support/seat_trailers.h"

namespace berthwright {
namespace {

/// The only finding of one of the rules about the seat of cushion A; fails the test otherwise.
Finding of_front_seat(const Answered& made, std::initializer_list<std::string_view> rules) {
  std::vector<Finding> found;
  for (const std::string_view rule : rules)
    for (const Finding& finding : made.of(rule))
      if (!finding.subjects.empty() && finding.subjects.front() == "A") found.push_back(finding);
  EXPECT_EQ(found.size(), 1U) << *rules.begin();
  return found.empty() ? Finding{} : found.front();
}

struct Expected {
  Booth booth;
  std::vector<std::string_view> rules;  ///< of one measure; the first is the one that is told
  Status status;
  Length measured;
};

TEST(SeatFindings, OneOfEachMeasureTellsTheLimitThatIsMissedOrNearer) {
  using S = Status;
  const auto eighths = [](int count) { return Length::inches(count, 8); };
  const auto thou = [](int count) { return Length::inches(count, 1000); };
  const Expected rows[] = {
      {{}, {"seat.high", "seat.low"}, S::met, 18_in},
      {{.bench_top = "13"}, {"seat.low", "seat.high"}, S::met, 16_in},
      {{.bench_top = "12 7/8"}, {"seat.low", "seat.high"}, S::not_met, eighths(127)},
      {{.bench_top = "16"}, {"seat.high", "seat.low"}, S::met, 19_in},
      {{.bench_top = "16 1/8"}, {"seat.high", "seat.low"}, S::not_met, eighths(153)},
      {{}, {"seat.deep", "seat.shallow"}, S::met, 19_in},  // 23 less 4 of back
      {{.bench_depth = "20"}, {"seat.shallow", "seat.deep"}, S::met, 16_in},
      {{.bench_depth = "19 7/8"}, {"seat.shallow", "seat.deep"}, S::not_met, eighths(127)},
      {{.bench_depth = "24 1/8"}, {"seat.deep", "seat.shallow"}, S::not_met, eighths(161)},
      {{.back = "12 1/2"}, {"seat.low-back", "seat.high-back"}, S::met, 12_in},  // it sinks 1/2
      {{.back = "12 3/8"}, {"seat.low-back", "seat.high-back"}, S::not_met, eighths(95)},
      {{.back = "22 5/8"}, {"seat.high-back", "seat.low-back"}, S::not_met, eighths(177)},
      {{}, {"seat.people"}, S::met, 42_in},
      {{.bench_width = "21"}, {"seat.people"}, S::close, 21_in},
      {{.bench_width = "20 7/8"}, {"seat.people"}, S::not_met, eighths(167)},
      {{}, {"seat.thigh-room", "seat.low-table", "seat.high-table"}, S::met, thou(10797)},
      {{.table_base = "25 1/2"},
       {"seat.low-table", "seat.thigh-room", "seat.high-table"},
       S::not_met,
       eighths(60)},
      {{.table_base = "25 3/8"},
       {"seat.thigh-room", "seat.low-table", "seat.high-table"},
       S::not_met,
       eighths(59)},
      {{.table_base = "30 1/8"},
       {"seat.high-table", "seat.low-table", "seat.thigh-room"},
       S::not_met,
       eighths(97)},
      {{.bench_top = "13", .table_base = "24"}, {"seat.knee-height", "seat.knee-depth"}, S::met, 24_in},
      {{.bench_top = "13", .table_base = "23 7/8"},
       {"seat.knee-height", "seat.knee-depth"},
       S::not_met,
       eighths(191)},
      {{}, {"seat.knee-depth", "seat.knee-height"}, S::met, thou(14875)},
      {{.bench_depth = "27", .table_front = "27", .table_length = "22"},
       {"seat.knee-depth", "seat.knee-height"},
       S::not_met,
       11_in},  // 22 shared by two
      {{}, {"seat.table-away", "seat.table-over"}, S::met, eighths(1)},
      {{.table_front = "24 1/8"}, {"seat.table-away", "seat.table-over"}, S::not_met, eighths(9)},
      {{.table_front = "19"}, {"seat.table-over", "seat.table-away"}, S::met, 4_in},
      {{.table_front = "18 7/8"}, {"seat.table-over", "seat.table-away"}, S::not_met, eighths(33)},
      {{}, {"seat.way-in"}, S::met, 37_in},
  };
  int number = 0;
  for (const Expected& row : rows) {
    SCOPED_TRACE(testing::Message() << "row " << number++ << ": " << row.rules.front());
    const Answered made(booth(row.booth));
    std::vector<Finding> told;
    for (const std::string_view rule : row.rules)
      for (const Finding& finding : made.of(rule))
        if (finding.subjects.front() == "A") told.push_back(finding);
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0].rule.text(), row.rules.front());
    EXPECT_EQ(told[0].status, row.status);
    EXPECT_EQ(told[0].measured, Quantity(row.measured));
  }
}

TEST(SeatFindings, CuresNameWhatToMoveAndByHowMuch) {
  EXPECT_EQ(of_front_seat(Answered(booth({.bench_top = "12"})), {"seat.low"}).cure,
            (Cure{Cure::Kind::raise, "front bench", 1_in}));
  EXPECT_EQ(of_front_seat(Answered(booth({.bench_top = "18"})), {"seat.high"}).cure,
            (Cure{Cure::Kind::lower, "front bench", 2_in}));
  EXPECT_EQ(of_front_seat(Answered(booth({.table_base = "24"})), {"seat.thigh-room"}).cure,
            (Cure{Cure::Kind::raise, "table", Length::inches(3, 2)}));
  EXPECT_EQ(of_front_seat(Answered(booth({.table_front = "18"})), {"seat.table-over"}).cure,
            (Cure{.kind = Cure::Kind::shorten, .subject = "table", .by = 1_in, .side = Wall::front}));
}

// ANSUR II: the sitting height of the 95th percentile man is 977 mm. Seats pressed to 18 in (457.2 mm) under
// a roof of 1434.2 mm: exactly that.
TEST(SeatFindings, HeadRoomIsComparedWithALargeManSitting) {
  const auto under = [](const char* roof) {
    return of_front_seat(Answered(booth({.table_base = "", .room_height = roof})), {"seat.head-room"});
  };
  EXPECT_EQ(under("1434.2 mm").status, Status::met);
  EXPECT_EQ(under("1434.2 mm").measured, Quantity(977_mm));
  EXPECT_EQ(under("1434.1 mm").status, Status::not_met);
  EXPECT_EQ(under("1434.1 mm").variant, "roof");
  const Answered low(booth({.more = {box("locker", "locker", {"0", "0", "14", "42", "48", "64"})}}));
  const Finding locker = of_front_seat(low, {"seat.head-room"});
  EXPECT_EQ(locker.subjects, (std::vector<std::string>{"A", "locker"}));
  EXPECT_EQ(locker.measured, Quantity(30_in));
}

TEST(SeatFindings, WhatThePlanDoesNotShowIsUnknown) {
  const Answered made(seats_of_every_status().back());
  EXPECT_EQ(made.one("seat.shallow").status, Status::unknown);
  EXPECT_FALSE(made.one("seat.shallow").measured.has_value());
  EXPECT_TRUE(made.of("seat.people").empty());
  EXPECT_TRUE(made.of("seat.way-in").empty());
  EXPECT_EQ(made.one("seat.head-room").status, Status::met);
}

TEST(SeatFindings, AWayOntoTheSeatThatIsShutIsNotMet) {
  const Answered made(booth({.more = {box("wardrobe", "cabinet", {"0", "42", "76", "10", "0", "60"})}}));
  const Finding shut = of_front_seat(made, {"seat.way-in"});
  EXPECT_EQ(shut.status, Status::not_met);
  EXPECT_EQ(shut.measured, Quantity(Length{}));
}

TEST(SeatFindings, HeadBumpsAreToldOnceForEachThingElseThatThereAreNone) {
  const Answered none(booth({}));
  EXPECT_EQ(none.one_in("day", "knock.sitting").status, Status::met);
  EXPECT_EQ(none.one_in("day", "knock.elbow").status, Status::met);
  EXPECT_TRUE(none.of("knock.lying").empty());  // no bed
  const Answered crank(booth({.more = {box("crank", "protrusion", {"0", "20", "6", "2", "47", "49"})}}));
  const Finding near = crank.one_in("day", "knock.sitting");
  EXPECT_EQ(near.status, Status::not_met);
  EXPECT_EQ(near.subjects, (std::vector<std::string>{"A", "crank"}));
  EXPECT_EQ(near.measured, Quantity(6_in));
  EXPECT_EQ(near.compared, Quantity(200_mm));
  ASSERT_EQ(near.where.size(), 2U);
  EXPECT_EQ(near.where[0].plan.x, 6_in);   // the crank's end
  EXPECT_EQ(near.where[1].plan.x, 12_in);  // the eyes
  EXPECT_EQ(near.cure->kind, Cure::Kind::move_apart);
  EXPECT_EQ(near.cure->by, Length::inches(15, 8));  // 47.6 mm, marked out at the next 1/8 in
}

// 26 in from the front to the wall behind, 20 are asked: what nobody sleeps on is cut back by 6 in; of a
// bed's cushion nothing is cut, a back takes the 6 in.
TEST(SeatFindings, WhatIsSleptOnIsNotCutBackForASeat) {
  TrailerText text = booth({.bench_depth = "26", .back = "", .table_base = ""});
  const auto cure_of_front_seat = [](const TrailerText& of) {
    for (const Finding& finding : Answered(of).of("seat.deep"))
      if (finding.subjects == std::vector<std::string>{"A"}) return finding.cure;
    return std::optional<Cure>{};
  };
  EXPECT_EQ(cure_of_front_seat(text),
            (Cure{.kind = Cure::Kind::shorten, .subject = "A", .by = 6_in, .side = Wall::rear}));
  text.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "front bench"})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A"]})"};
  EXPECT_EQ(cure_of_front_seat(text), (Cure{Cure::Kind::as_told, "A", 6_in}));
}

}  // namespace
}  // namespace berthwright

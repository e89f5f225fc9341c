#include <berthwright/solve/bed/sleeping_room.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "support/berth.h"
#include "support/furniture.h"
#include "support/plan_builder.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::berth;
using support::Furniture;
using support::rect;

SleepingRoom room_in(const Plan& plan, std::size_t bed = 0) {
  const Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
  if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
  return sleeping_room(plan, *arrangement, plan->beds[bed], mattress_of(plan, *arrangement, plan->beds[bed]));
}

const SizeHeld& size_named(const SleepingRoom& room, std::string_view name) {
  for (const SizeHeld& held : room.sizes)
    if (held.size->name == name) return held;
  throw std::invalid_argument("no such size");
}

TEST(SleepingRoom, MeasuresAPlainBed) {
  const Plan plan =
      berth("75", "38", R"("people": [{"name": "Ada"}, {"name": "Ben", "width": "14"}])").plan();
  const SleepingRoom room = room_in(plan);
  EXPECT_EQ(room.lying, rect(0_in, 0_in, 75_in, 38_in));
  EXPECT_EQ(room.area, Area::rectangle(75_in, 38_in));
  ASSERT_TRUE(room.largest);
  EXPECT_EQ(room.largest->length, 75_in);
  EXPECT_EQ(room.largest->width, 38_in);
  ASSERT_TRUE(room.longest);
  EXPECT_EQ(room.longest->length, 75_in);
  EXPECT_EQ(room.longest->width, 24_in);
  ASSERT_EQ(room.people.size(), 2U);
  EXPECT_EQ(room.people[0].suits_stature, 71_in);
  EXPECT_EQ(room.people[1].place->width, 14_in);
  ASSERT_TRUE(room.abreast);
  EXPECT_EQ(room.abreast->width, 38_in);
  EXPECT_EQ(room.abreast->length, 75_in);
  // The roof at 76 over the level of 18.
  EXPECT_EQ(room.least_clear_height, 58_in);
}

TEST(SleepingRoom, PeopleWhoDoNotFitAbreastAreToldSo) {
  const Plan plan = berth("75", "38", R"("people": [{"name": "Ada"}, {"name": "Ben"}])").plan();
  EXPECT_FALSE(room_in(plan).abreast && room_in(plan).abreast->length >= 75_in);
  EXPECT_EQ(room_in(plan).people[1].place->length, 75_in);
}

// Common practice, no source: a trailer of about 10 by 6 ft inside has two beds of 38 x 75 in. In exactly
// 120 x 72 in a bed of 38 in laid across is 72 in long, 3 in short; beside a first bed along the wall
// 72 - 38 = 34 in are left, 4 in too few.
TEST(SleepingRoom, TwoBedsOf38By75DoNotFitIn120By72) {
  const auto two_beds = [](const std::string& width, support::Spot first, support::Spot second) {
    Furniture furniture;
    furniture.interior(R"("length": 120, "height": 76, "width": )" + width);
    furniture.lay("first", "cushion", first, "4")
        .lay("second", "cushion", second, "4")
        .bed("first bed", {"first"})
        .bed("second bed", {"second"});
    return furniture.plan();
  };
  const Plan across = two_beds("72", {"0", "0", "75", "38"}, {"82", "0", "38", "72"});
  EXPECT_TRUE(size_named(room_in(across, 0), "Twin").held);
  EXPECT_FALSE(size_named(room_in(across, 1), "Twin").held);
  EXPECT_EQ(size_named(room_in(across, 1), "Twin").spare_length, -3_in);
  EXPECT_EQ(room_in(across, 1).longest->length, 72_in);

  const Plan beside = two_beds("72", {"0", "0", "75", "38"}, {"0", "38", "75", "34"});
  EXPECT_TRUE(size_named(room_in(beside, 0), "Twin").held);
  EXPECT_FALSE(size_named(room_in(beside, 1), "Twin").held);
  EXPECT_EQ(size_named(room_in(beside, 1), "Twin").spare_width, -4_in);

  const Plan wider = two_beds("76", {"0", "0", "75", "38"}, {"0", "38", "75", "38"});
  for (const std::size_t bed : {0U, 1U}) {
    const SleepingRoom room = room_in(wider, bed);
    EXPECT_TRUE(size_named(room, "Twin").held);
    EXPECT_EQ(size_named(room, "Twin").spare_length, 0_in);
    EXPECT_EQ(size_named(room, "Twin").spare_width, 0_in);
  }
}

// 49 CFR 393.76(a): a sleeper berth of a truck must be at least 75 x 24 in with 24 in of clear height when
// installed after 30 September 1975; 75 x 21 and 21 in from 1953 to then; 72 x 18 and 18 in before 1953.
TEST(SleepingRoom, BerthsAreComparedWithTheRuleOfTheirDate) {
  struct Rule393 {
    int length, width, height;
  };
  const auto meets = [](int length, int width, int height, const Rule393& rule) {
    Furniture furniture = berth(std::to_string(length), std::to_string(width));
    furniture.fixture("shelf", "shelf", {"0", "0", "120", "76"}, std::to_string(18 + height), "60");
    const Plan plan = small_plan(furniture.text() + R"(, "rules": {"bed.clear-height": {"limit": ")" +
                                 std::to_string(rule.height) + R"(", "reason": "the rule of its date"}})");
    const SleepingRoom room = room_in(plan);
    const std::optional<TurnedRectangle> longest = longest_rectangle(room.lying, Length::inches(rule.width));
    return longest && longest->length >= Length::inches(rule.length);
  };
  const Rule393 since_1975{75, 24, 24};
  const Rule393 since_1953{75, 21, 21};
  const Rule393 before_1953{72, 18, 18};
  EXPECT_TRUE(meets(75, 22, 22, since_1953));
  EXPECT_FALSE(meets(75, 22, 22, since_1975));
  EXPECT_FALSE(meets(75, 22, 24, since_1975));
  EXPECT_FALSE(meets(75, 24, 22, since_1975));
  EXPECT_TRUE(meets(75, 24, 24, since_1975));
  EXPECT_TRUE(meets(72, 18, 18, before_1953));
  EXPECT_FALSE(meets(72, 18, 18, since_1953));
}

// 46 CFR 116.810(a): a berth of a small passenger vessel is at least 74 x 24 in (1880 x 610 mm) with 24 in
// (610 mm) above it.
TEST(SleepingRoom, AVesselsBerthIsHeldByItsOwnSize) {
  Furniture furniture = berth("74", "24");
  furniture.fixture("shelf", "shelf", {"0", "0", "74", "24"}, "42", "50");
  const Plan plan = furniture.plan();
  const SleepingRoom room = room_in(plan);
  ASSERT_TRUE(room.longest);
  EXPECT_EQ(room.longest->length, 74_in);
  EXPECT_GE(room.longest->length, 1879_mm);
  EXPECT_EQ(room.least_clear_height, 24_in);
}

// ANSUR II raw shares (NATICK/TR-15/007, public raw files) of people whose stature plus 100 mm fits.
TEST(SleepingRoom, TellsWhomTheBedFits) {
  const Plan short_bed = berth("74", "24").plan();
  EXPECT_NEAR(room_in(short_bed).fits.men, 635, 10);
  EXPECT_NEAR(room_in(short_bed).fits.women, 990, 10);
  const Plan long_bed = berth("75", "24").plan();
  EXPECT_NEAR(room_in(long_bed).fits.men, 770, 10);
  EXPECT_NEAR(room_in(long_bed).fits.women, 996, 10);
  const Plan narrow = berth("75", "23").plan();
  EXPECT_EQ(room_in(narrow).fits, (Shares{}));
}

TEST(SleepingRoom, WhatHangsLowerThan24InchesTakesLyingSpace) {
  const auto under_a_locker = [](const std::string& locker_base) {
    Furniture furniture = berth("75", "38");
    furniture.fixture("locker", "locker", {"0", "0", "75", "12"}, locker_base, "60");
    return room_in(furniture.plan());
  };
  EXPECT_EQ(under_a_locker("42").lying, rect(0_in, 0_in, 75_in, 38_in));
  EXPECT_EQ(under_a_locker("42").least_clear_height, 24_in);
  EXPECT_EQ(under_a_locker("41 63/64").lying, rect(0_in, 12_in, 75_in, 38_in));
  EXPECT_EQ(under_a_locker("41 63/64").least_clear_height, 58_in);
}

TEST(SleepingRoom, WhatStandsOnTheBedTakesLyingSpace) {
  Furniture furniture;
  furniture.fixture("bench", "bench", {"0", "0", "75", "38"}, "0", "14")
      .lay("pad", "cushion", {"0", "0", "75", "38"}, "4")
      .lay("bolster", "bolster", {"0", "0", "8", "38"}, "6")
      .bed("bed", {"pad"});
  EXPECT_EQ(room_in(furniture.plan()).lying, rect(8_in, 0_in, 75_in, 38_in));
}

// The roof slopes from (0, 36) to (40, 76): 24 in over the level of 18 it is clear from x = 6 on.
TEST(SleepingRoom, ALowRoofTakesLyingSpace) {
  Furniture furniture = berth("75", "38");
  furniture.interior(
      R"("length": 120, "width": 76, "height": 76, "side_profile": {"corners": {"roof front": {"clip": ["40", "40"]}}})");
  const SleepingRoom room = room_in(furniture.plan());
  EXPECT_EQ(room.lying, rect(6_in, 0_in, 75_in, 38_in));
  EXPECT_EQ(room.least_clear_height, 24_in);
}

TEST(SleepingRoom, SideWallsThatLeanInTakeLyingSpace) {
  Furniture furniture = berth("75", "38");
  furniture.interior(R"("length": 120, "width": 76, "height": 76,
                        "cross_profile": {"corners": {"roof left": {"clip": ["40", "40"]}}})");
  EXPECT_EQ(room_in(furniture.plan()).lying, rect(0_in, 6_in, 75_in, 38_in));
}

TEST(SleepingRoom, AnLShapedBedHoldsWhatItsLongerLegHolds) {
  Furniture furniture;
  furniture.fixture("bench", "bench", {"0", "0", "75", "60"}, "0", "14")
      .lay("long", "cushion", {"0", "0", "75", "28"}, "4")
      .lay("short", "cushion", {"0", "28", "30", "32"}, "4")
      .bed("bed", {"long", "short"});
  const SleepingRoom room = room_in(furniture.plan());
  EXPECT_EQ(room.area, Area::rectangle(75_in, 28_in) + Area::rectangle(30_in, 32_in));
  EXPECT_GE(room.longest->length, 75_in);
  EXPECT_TRUE(size_named(room, "Cot").held);
  EXPECT_EQ(size_named(room, "Cot").spare_width, 0_in);
  EXPECT_FALSE(size_named(room, "Twin").held);
}

TEST(NamedSizes, AreTheTradesAndSayWhereTheyComeFrom) {
  const auto find = [](std::string_view name) {
    return *std::ranges::find(named_sizes(), name, &NamedSize::name);
  };
  // Trade charts of the United States: twin 38 x 75, full 54 x 75, queen 60 x 80, king 76 x 80.
  EXPECT_EQ(find("Twin").width, 38_in);
  EXPECT_EQ(find("Twin").length, 75_in);
  EXPECT_EQ(find("Full").width, 54_in);
  EXPECT_EQ(find("Queen").length, 80_in);
  EXPECT_EQ(find("King").width, 76_in);
  EXPECT_EQ(find("UK single").source.kind, Source::Kind::from_memory);
  EXPECT_EQ(find("90 x 200 cm").length, 2000_mm);
  for (const NamedSize& size : named_sizes()) {
    EXPECT_LT(size.width, size.length) << size.name;
    EXPECT_NE(size.source.kind, Source::Kind::published) << size.name;
    EXPECT_EQ(size.source.kind == Source::Kind::from_memory, size.source.address.empty()) << size.name;
  }
}

// Slow twin on whole inches: lying space is the cells of the pad without a low locker above; the longest
// rectangle of 24 in that is parallel to the axes is no longer than the one found.
TEST(SleepingRoom, AgreesWithCountingCells) {
  for (unsigned seed = 0; seed < 12; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto draw = [&](int low, int high) {
      return std::uniform_int_distribution<int>(low, high)(random);
    };
    const int length = draw(60, 90), width = draw(30, 60);
    std::vector<std::vector<bool>> free(static_cast<std::size_t>(length),
                                        std::vector<bool>(static_cast<std::size_t>(width), true));
    for (const bool mirror : {false, true}) {
      std::mt19937 again(seed + 100);
      const auto pick = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(again);
      };
      Furniture furniture;
      furniture
          .fixture(
              "bench", "bench",
              {"0", mirror ? std::to_string(76 - width) : "0", std::to_string(length), std::to_string(width)},
              "0", "14")
          .lay(
              "pad", "cushion",
              {"0", mirror ? std::to_string(76 - width) : "0", std::to_string(length), std::to_string(width)},
              "4")
          .bed("bed", {"pad"});
      for (int i = 0; i < 3; ++i) {
        const int x = pick(0, length - 10), y = pick(0, width - 8), dx = pick(2, 10), dy = pick(2, 8);
        const int base = pick(36, 47);
        furniture.fixture("l" + std::to_string(i), "locker",
                          {std::to_string(x), std::to_string(mirror ? 76 - y - dy : y), std::to_string(dx),
                           std::to_string(dy)},
                          std::to_string(base), "60");
        if (base < 18 + 24)
          for (int cx = x; cx < x + dx; ++cx)
            for (int cy = y; cy < y + dy; ++cy)
              free[static_cast<std::size_t>(cx)][static_cast<std::size_t>(cy)] = false;
      }
      int cells = 0;
      for (const auto& column : free) cells += static_cast<int>(std::ranges::count(column, true));
      const SleepingRoom room = room_in(furniture.plan());
      EXPECT_EQ(room.area, Area::rectangle(Length::inches(cells), 1_in));
      int longest = 0;
      for (int y = 0; y + 24 <= width; ++y) {
        int run = 0;
        for (int x = 0; x < length; ++x) {
          bool clear = true;
          for (int k = y; k < y + 24; ++k)
            clear = clear && free[static_cast<std::size_t>(x)][static_cast<std::size_t>(k)];
          run = clear ? run + 1 : 0;
          longest = std::max(longest, run);
        }
      }
      if (longest > 24) {
        ASSERT_TRUE(room.longest);
        EXPECT_GE(room.longest->length, Length::inches(longest));
      }
    }
  }
}

}  // namespace
}  // namespace berthwright

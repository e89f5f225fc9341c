#include "solve/heat/plate.h"

#include <gtest/gtest.h>

#include <array>
#include <random>

#include "oracle/plate_margin.h"

namespace berthwright {
namespace {

Solid box(Length x0, Length x1, Length y0, Length y1, Length z0, Length z1) {
  return Solid(Region(Rect{{x0, y0}, {x1, y1}}), z0, z1);
}

// A heater of 10 x 10 x 10 in with its low corner at (100, 100, 20) in, looking to the rear (+x).
const SourceBox heater{{{100_in, 100_in}, {110_in, 110_in}}, 20_in, 30_in, Wall::rear};
constexpr DataPlate all_three_feet{36_in, 36_in, 36_in, 36_in};

Length margin_of(const DataPlate& plate, const Solid& solid) {
  const PlateReading reading = plate_reading(heater, plate, {solid});
  EXPECT_TRUE(reading.least.has_value());
  return reading.least ? reading.least->margin : Length{};
}

// Corner offsets of 30 and 20 in: sqrt(900 + 400) = sqrt(1300) = 36.0555 in, beyond 36; of 30 and 19.8 in:
// sqrt(900 + 392.04) = 35.9450 in, short of it. Rule: 3 ft = 36 in, CPSC space-heater tips and NFPA sheet
// 2018, New York City Fire Code FC 605.10.3(2) (914 mm); the geometry is computed here.
TEST(Plate, TheCornerCaseIsDecidedByTheStraightLineInEveryQuadrant) {
  const Length almost = Length::inches(198, 10);
  for (const int sx : {-1, 1})
    for (const int sy : {-1, 1})
      for (const Length across : {20_in, almost}) {
        SCOPED_TRACE(sx * 2 + sy);
        const Length x0 = sx > 0 ? 140_in : 50_in;
        const Length y0 = sy > 0 ? 110_in + across : 80_in - across;
        const Length margin = margin_of(all_three_feet, box(x0, x0 + 20_in, y0, y0 + 20_in, 0_in, 60_in));
        // sqrt(1300) x 1,016,000 = 36,632,400.96 ticks and sqrt(1292.04) x 1,016,000 = 36,520,077.25, less
        // 36 x 1,016,000 = 36,576,000, rounded down.
        EXPECT_EQ(margin.ticks(), across == 20_in ? 56'400 : -55'923);
      }
}

TEST(Plate, TheCornerCaseHoldsAcrossTheTopEdges) {
  const Length almost = Length::inches(198, 10);
  const auto above = [](Length rise) { return box(140_in, 160_in, 90_in, 120_in, 30_in + rise, 80_in); };
  EXPECT_GE(margin_of(all_three_feet, above(20_in)), Length{});
  EXPECT_LT(margin_of(all_three_feet, above(almost)), Length{});
  // 24, 24 and 12 in beyond a corner: sqrt(576 + 576 + 144) = 36 in exactly: met, and a tick less is not.
  const auto corner = [](Length x) { return box(110_in + x, 150_in, 134_in, 150_in, 0_in, 8_in); };
  EXPECT_EQ(margin_of(all_three_feet, corner(24_in)), Length{});
  EXPECT_EQ(margin_of(all_three_feet, corner(24_in - one_tick)), -one_tick);
}

// The same 30 and 20 in up and down: before every upper and lower edge of the heater, which stands from 20 to
// 30 in.
TEST(Plate, TheCornerCaseHoldsAcrossEveryEdgeInHeight) {
  const Length almost = Length::inches(198, 10);
  SourceBox high = heater;
  high.base = 50_in, high.top = 60_in;
  for (const auto& [x, y] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}})
    for (const bool above : {true, false})
      for (const Length rise : {20_in, almost}) {
        SCOPED_TRACE(x * 4 + y * 2 + (above ? 1 : 0));
        const auto part = [&](int side) {
          return side > 0   ? std::pair{140_in, 150_in}
                 : side < 0 ? std::pair{60_in, 70_in}
                            : std::pair{102_in, 108_in};
        };
        const auto [x0, x1] = part(x);
        const auto [y0, y1] = part(y);
        const Solid solid =
            above ? box(x0, x1, y0, y1, 60_in + rise, 90_in) : box(x0, x1, y0, y1, 0_in, 50_in - rise);
        const PlateReading reading = plate_reading(high, all_three_feet, {solid});
        ASSERT_TRUE(reading.least.has_value());
        EXPECT_EQ(reading.least->margin.ticks(), rise == 20_in ? 56'400 : -55'923);
        EXPECT_EQ(faces_of(high.front, reading.least->cell).size(), 2U);
      }
}

// Before all eight corners: 24, 24 and 12 in off, sqrt(576 + 576 + 144) = 36 in, and 23.9 in place of one 24.
TEST(Plate, TheCornerCaseHoldsBeforeAllEightCorners) {
  SourceBox high = heater;
  high.base = 50_in, high.top = 60_in;
  for (const int sx : {-1, 1})
    for (const int sy : {-1, 1})
      for (const int sz : {-1, 1})
        for (const Length off : {24_in, Length::inches(239, 10)}) {
          const auto beyond = [](int side, Length low, Length high_end, Length by) {
            return side > 0 ? std::pair{high_end + by, high_end + by + 5_in}
                            : std::pair{low - by - 5_in, low - by};
          };
          const auto [x0, x1] = beyond(sx, 100_in, 110_in, off);
          const auto [y0, y1] = beyond(sy, 100_in, 110_in, 24_in);
          const auto [z0, z1] = beyond(sz, 50_in, 60_in, 12_in);
          const PlateReading reading = plate_reading(high, all_three_feet, {box(x0, x1, y0, y1, z0, z1)});
          EXPECT_EQ(reading.least->margin < Length{}, off != 24_in);
          EXPECT_EQ(faces_of(high.front, reading.least->cell).size(), 3U);
        }
}

constexpr DataPlate mixed{36_in, 4_in, 12_in, 18_in};  // front, back, sides, top

TEST(Plate, EachFaceAsksItsOwnDistance) {
  // Clear of all planes of the box, 40 in before the front, 5 behind, 13 beside, 20 above, 13 below.
  EXPECT_EQ(margin_of(mixed, box(150_in, 160_in, 102_in, 108_in, 22_in, 28_in)), 4_in);
  EXPECT_EQ(margin_of(mixed, box(90_in, 95_in, 102_in, 108_in, 22_in, 28_in)), 1_in);
  EXPECT_EQ(margin_of(mixed, box(102_in, 108_in, 123_in, 130_in, 22_in, 28_in)), 1_in);
  EXPECT_EQ(margin_of(mixed, box(102_in, 108_in, 80_in, 87_in, 22_in, 28_in)), 1_in);
  EXPECT_EQ(margin_of(mixed, box(102_in, 108_in, 102_in, 108_in, 50_in, 55_in)), 2_in);
  EXPECT_EQ(margin_of(mixed, box(102_in, 108_in, 102_in, 108_in, 0_in, 7_in)), 1_in);  // underside = side
}

TEST(Plate, AnEdgeAsksTheLargerOfItsFaces) {
  // 6 in behind and 8 in beside the back edge: 10 in away, sides' 12 asked: 2 in short.
  EXPECT_EQ(margin_of(mixed, box(90_in, 94_in, 118_in, 130_in, 22_in, 28_in)), -2_in);
}

TEST(Plate, OnASharedPlaneTheLargerDistanceRules) {
  // Behind the heater, 5 in off, ending exactly at the plane of the right side: its end face lies in the edge
  // region too, where 12 in is asked. One tick less and only the back's 4 in is asked.
  EXPECT_EQ(margin_of(mixed, box(90_in, 95_in, 102_in, 110_in, 22_in, 28_in)), -7_in);
  EXPECT_EQ(margin_of(mixed, box(90_in, 95_in, 102_in, 110_in - one_tick, 22_in, 28_in)), 1_in);
  // The same at the plane of the top (18 in asked), and for a plan corner that only touches the plane.
  EXPECT_EQ(margin_of(mixed, box(90_in, 95_in, 102_in, 108_in, 22_in, 30_in)), -13_in);
  const auto kite = Polygon::checked({{90_in, 105_in}, {92_in, 103_in}, {95_in, 107_in}, {92_in, 110_in}});
  // The kite's corner (92, 110) is 8 in behind: 8 - 12 = -4; its nearest corner (95, 107) is 5 - 4 = 1.
  EXPECT_EQ(margin_of(mixed, Solid(Region(*kite), 22_in, 28_in)), -4_in);
}

TEST(Plate, WhatReachesIntoTheBoxIsComparedWithTheLargestFace) {
  EXPECT_EQ(margin_of(mixed, box(104_in, 106_in, 104_in, 106_in, 24_in, 26_in)), -36_in);
  // Touching the back from outside asks the back's distance only.
  EXPECT_EQ(margin_of(mixed, box(90_in, 100_in, 102_in, 108_in, 22_in, 28_in)), -4_in);
}

TEST(Plate, AFaceThePlateDoesNotGiveIsUnknownHoweverFar) {
  DataPlate plate = mixed;
  plate.top.reset();
  const PlateReading behind = plate_reading(heater, plate, {box(0_in, 9_in, 102_in, 108_in, 22_in, 28_in)});
  EXPECT_FALSE(behind.incomplete);
  const PlateReading above = plate_reading(heater, plate, {box(0_in, 9_in, 102_in, 108_in, 22_in, 31_in)});
  EXPECT_TRUE(above.incomplete);
  const PlateReading only_above =
      plate_reading(heater, plate, {box(102_in, 108_in, 102_in, 108_in, 70_in, 80_in)});
  EXPECT_TRUE(only_above.incomplete);
  EXPECT_FALSE(only_above.least.has_value());
}

TEST(Plate, TheFrontIsWhereTheSourceLooks) {
  const Solid rearward = box(130_in, 140_in, 102_in, 108_in, 22_in, 28_in);  // 20 in off, along +x
  for (const auto& [front, margin] :
       {std::pair{Wall::rear, -16_in}, {Wall::front, 16_in}, {Wall::left, 8_in}, {Wall::right, 8_in}}) {
    SourceBox turned = heater;
    turned.front = front;
    EXPECT_EQ(plate_reading(turned, mixed, {rearward}).least->margin, margin);
  }
}

TEST(Plate, NamesBothNearestPoints) {
  const PlateReading reading =
      plate_reading(heater, mixed, {box(90_in, 94_in, 118_in, 130_in, 22_in, 28_in)});
  EXPECT_EQ(reading.least->nearest.from, (Point3{{100_in, 110_in}, 22_in}));
  EXPECT_EQ(reading.least->nearest.to, (Point3{{94_in, 118_in}, 22_in}));
  EXPECT_EQ(reading.least->required, 12_in);
}

using Kind = ApplianceFace::Kind;
using Faces = std::vector<ApplianceFace>;

TEST(Plate, NamesTheFacesOfEachCellByTheWayItLooks) {
  EXPECT_EQ(faces_of(Wall::rear, {1, 0, 0}), (Faces{{Kind::front, Wall::rear}}));
  EXPECT_EQ(faces_of(Wall::rear, {-1, 0, 0}), (Faces{{Kind::back, Wall::front}}));
  EXPECT_EQ(faces_of(Wall::rear, {0, -1, 0}), (Faces{{Kind::side, Wall::left}}));
  EXPECT_EQ(faces_of(Wall::left, {0, -1, 0}), (Faces{{Kind::front, Wall::left}}));
  EXPECT_EQ(faces_of(Wall::left, {-1, 0, 0}), (Faces{{Kind::side, Wall::front}}));
  EXPECT_EQ(faces_of(Wall::rear, {1, 1, 1}),
            (Faces{{Kind::front, Wall::rear}, {Kind::side, Wall::right}, {Kind::top}}));
  EXPECT_EQ(faces_of(Wall::rear, {0, 0, -1}), Faces{{Kind::underside}});
  EXPECT_TRUE(faces_of(Wall::rear, {}).empty());
}

// A wide block behind the heater lies before its back and before both of its back edges, where 12 in are
// asked.
TEST(Plate, TellsWhereTheMarginIsLeast) {
  const auto least = [](const DataPlate& plate, const Solid& solid) {
    return faces_of(heater.front, plate_reading(heater, plate, {solid}).least->cell);
  };
  EXPECT_EQ(least(mixed, box(90_in, 95_in, 102_in, 108_in, 22_in, 28_in)),
            (Faces{{Kind::back, Wall::front}}));
  EXPECT_EQ(least(mixed, box(90_in, 95_in, 102_in, 118_in, 22_in, 28_in)),
            (Faces{{Kind::back, Wall::front}, {Kind::side, Wall::right}}));
  // Where all faces ask the same the plain face is told, not an edge of it.
  EXPECT_EQ(least(all_three_feet, box(90_in, 95_in, 90_in, 120_in, 10_in, 40_in)),
            (Faces{{Kind::back, Wall::front}}));
  EXPECT_TRUE(least(mixed, box(104_in, 106_in, 104_in, 106_in, 24_in, 26_in)).empty());
}

TEST(Plate, TellsWhichFacesAreMissing) {
  DataPlate plate = mixed;
  plate.top.reset();
  plate.sides.reset();
  const PlateReading reading =
      plate_reading(heater, plate, {box(90_in, 95_in, 102_in, 118_in, 22_in, 40_in)});
  EXPECT_EQ(reading.missing, (Faces{{Kind::side, Wall::right}, {Kind::top}}));
  EXPECT_TRUE(plate_reading(heater, mixed, {box(0_in, 9_in, 0_in, 9_in, 22_in, 31_in)}).missing.empty());
}

// A box in one far corner of all that a plan may hold and a sliver that fills the other: every product must
// still fit its 128 bits.
TEST(Plate, HoldsAtTheFarthestCorners) {
  const Length f = farthest;
  const SourceBox source{{{f - 10_in, f - 10_in}, {f, f}}, f - 10_in, f, Wall::rear};
  const auto sliver = Polygon::checked({{-f, Length{}}, {-f, -f}, {Length{}, -f}});
  const PlateReading reading =
      plate_reading(source, all_three_feet, {Solid(Region(*sliver), -f, -f + one_tick)});
  ASSERT_TRUE(reading.least.has_value());
  // Plan distance from (f - 10 in, f - 10 in) to the line x + y = -f is (3 f - 20 in) / sqrt(2); the sliver's
  // top lies 2 f - 10 in - 1 tick below the box. f = 1e9 ticks, 10 in = 10,160,000 ticks:
  // sqrt((3e9 - 20,320,000)^2 / 2 + (2e9 - 10,160,001)^2) = 2,898,052,738.1 ticks, less 36 in.
  EXPECT_EQ(reading.least->margin, Length::from_ticks(2'898'052'738) - 36_in);
}

std::optional<Length> drawn_face(std::mt19937& random) {
  const auto draw = std::uniform_int_distribution<int>(-1, 10)(random);
  return draw < 0 ? std::nullopt : std::optional(Length::inches(4 * draw));
}

// On a grid of 2 in with every corner on the grid, the least margin is attained on the grid: the twin must
// give the same number, save for the rounding down to a tick.
TEST(Plate, AgreesWithTheGridTwinOnBlocks) {
  std::mt19937 random(11);
  std::uniform_int_distribution<int> place(0, 14);
  std::uniform_int_distribution<int> size(1, 6);
  constexpr std::array walls{Wall::front, Wall::rear, Wall::left, Wall::right};
  for (int round = 0; round < 300; ++round) {
    SCOPED_TRACE(round);
    const auto at = [&] { return Length::inches(2 * place(random)); };
    const auto by = [&] { return Length::inches(2 * size(random)); };
    const SourceBox source{{{16_in, 16_in}, {22_in, 20_in}}, 12_in, 18_in, walls[random() % 4]};
    const DataPlate plate{drawn_face(random), drawn_face(random), drawn_face(random), drawn_face(random)};
    std::vector<Solid> solids;
    for (int i = 0; i < 2; ++i) {
      const Length x = at(), y = at(), z = at();
      solids.push_back(box(x, x + by(), y, y + by(), z, z + by()));
    }
    const PlateReading fast = plate_reading(source, plate, solids);
    const oracle::SlowReading slow = oracle::slow_plate_reading(source, plate, solids, 2_in);
    EXPECT_EQ(fast.incomplete, slow.incomplete);
    ASSERT_EQ(fast.least.has_value(), slow.margin.has_value());
    if (!fast.least) continue;
    EXPECT_LE(static_cast<double>(fast.least->margin.ticks()), *slow.margin + 1e-6);
    EXPECT_GT(static_cast<double>(fast.least->margin.ticks()), *slow.margin - 1 - 1e-6);
  }
}

// Slanted outlines: the twin walks each edge in 500 steps, so it may miss the nearest point by half of one:
// at most 57 in / 1000, less than 1/16 in.
TEST(Plate, AgreesWithTheEdgeTwinOnTriangles) {
  std::mt19937 random(12);
  std::uniform_int_distribution<std::int64_t> place(0, 40 * ticks_per_inch);
  int compared = 0;
  for (int round = 0; round < 60; ++round) {
    SCOPED_TRACE(round);
    const auto at = [&] { return Length::from_ticks(place(random)); };
    const SourceBox source{{{16_in, 16_in}, {22_in, 20_in}}, 12_in, 18_in, Wall::left};
    const auto triangle = Polygon::checked({{at(), at()}, {at(), at()}, {at(), at()}});
    if (!triangle) continue;
    const Length base = at();
    const std::vector<Solid> solids{Solid(Region(*triangle), base, base + 5_in)};
    const PlateReading fast = plate_reading(source, mixed, solids);
    const oracle::SlowReading slow = oracle::slow_plate_reading(source, mixed, solids, 2_in);
    ASSERT_TRUE(fast.least.has_value() && slow.margin.has_value());
    const double difference = *slow.margin - static_cast<double>(fast.least->margin.ticks());
    EXPECT_GE(difference, -1e-6);
    EXPECT_LE(difference, ticks_per_inch / 16);
    ++compared;
  }
  EXPECT_GT(compared, 50);
}

}  // namespace
}  // namespace berthwright

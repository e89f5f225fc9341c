#include <berthwright/solve/place/nesting.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "oracle/nest_apart.h"
#include "oracle/nest_cells.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using Corners = std::vector<std::pair<int, int>>;

Region inch_polygon(const Corners& corners) {
  std::vector<Point> points;
  for (const auto& [x, y] : corners) points.push_back({Length::inches(x), Length::inches(y)});
  return support::polygon(std::move(points));
}

const std::vector<Turn> half_turns{Turn::quarters(0), Turn::quarters(2)};
const std::vector<Turn> quarter_turns{Turn::quarters(0), Turn::quarters(1), Turn::quarters(2),
                                      Turn::quarters(3)};

oracle::NestRings rings_of_laid(const Region& region) {
  oracle::NestRings rings;
  for (const Face& face : region.faces()) {
    std::vector<const Polygon*> polygons{&face.outer};
    for (const Polygon& hole : face.holes) polygons.push_back(&hole);
    for (const Polygon* polygon : polygons) {
      auto& ring = rings.emplace_back();
      for (const Point& p : polygon->vertices()) ring.push_back({p.x.ticks(), p.y.ticks()});
      if (polygon != &face.outer) std::ranges::reverse(ring);
    }
  }
  return rings;
}

// Every part is there once, lies as it may and on the stock; no two interiors meet, and the gap is kept.
void expect_sound(const std::vector<NestPart>& parts, const NestStock& stock, const Nesting& nesting,
                  Length gap = {}) {
  std::vector<std::size_t> counts(parts.size());
  std::vector<oracle::NestRings> rings;
  Length end;
  Area area;
  for (const NestedPart& laid : nesting.laid) {
    ++counts.at(laid.part);
    const NestPart& part = parts[laid.part];
    EXPECT_TRUE(part.mirrored || !laid.lies.flipped);
    EXPECT_TRUE(std::ranges::find(part.turns, laid.lies.turn) != part.turns.end());
    EXPECT_LT(laid.sheet, nesting.sheets);
    const Region lies = laid.lies(part.outline);
    rings.push_back(rings_of_laid(lies));
    area += part.outline.area();
    const bool last = laid.sheet + 1 == nesting.sheets;
    if (last) end = std::max(end, lies.bounds().high.x);
    const Length along = last ? nesting.length : stock.length.value();
    EXPECT_TRUE(oracle::nest_lies_in(rings.back(), {0, 0}, {along.ticks(), stock.width.ticks()}));
  }
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const bool misfit = std::ranges::find(nesting.misfits, i, &NestMisfit::part) != nesting.misfits.end();
    EXPECT_EQ(counts[i], misfit ? 0 : parts[i].count);
  }
  EXPECT_EQ(area, nesting.parts);
  EXPECT_LE(end, nesting.length);
  EXPECT_GE(nesting.sheets, nesting.least_sheets);
  if (nesting.sheets == nesting.least_sheets) {
    EXPECT_GE(nesting.length, nesting.least_length);
  }
  for (std::size_t i = 0; i < rings.size(); ++i)
    for (std::size_t j = i + 1; j < rings.size(); ++j) {
      if (nesting.laid[i].sheet != nesting.laid[j].sheet) continue;
      EXPECT_FALSE(oracle::nest_interiors_meet(rings[i], rings[j])) << i << " and " << j;
      if (gap > Length{}) {
        EXPECT_TRUE(oracle::nest_borders_apart(rings[i], rings[j], gap.ticks())) << i << ", " << j;
      }
    }
}

// Two triangles of 4 x 3 in, one turned half round, make the rectangle: 2 x 6 sq in / 3 in = 4 in.
TEST(Nesting, TwoTrianglesMakeTheRectangle) {
  const std::vector<NestPart> parts{{inch_polygon({{0, 0}, {4, 0}, {0, 3}}), 2, half_turns}};
  const Nesting nesting = nested(parts, {3_in}, {.effort = 20'000});
  expect_sound(parts, {3_in}, nesting);
  EXPECT_EQ(nesting.length, 4_in);
  EXPECT_EQ(nesting.least_length, 4_in);
  EXPECT_EQ(nesting.density(), 1);
}

// Hooks of three squares of 1 in on a strip of 2 in: turned half round the second fills the first, 6 / 2 = 3
// in. Without a turn each needs its own 2 in along the lower side, 4 in together.
TEST(Nesting, HooksInterlockWhereTheyMayBeTurned) {
  const Region hook = inch_polygon({{0, 0}, {2, 0}, {2, 1}, {1, 1}, {1, 2}, {0, 2}});
  const std::vector<NestPart> turned{{hook, 2, half_turns}};
  const Nesting both = nested(turned, {2_in}, {.effort = 20'000});
  expect_sound(turned, {2_in}, both);
  EXPECT_EQ(both.length, 3_in);
  const std::vector<NestPart> straight{{hook, 2}};
  const Nesting one_way = nested(straight, {2_in}, {.effort = 20'000});
  expect_sound(straight, {2_in}, one_way);
  EXPECT_EQ(one_way.length, 4_in);
  EXPECT_EQ(one_way.least_length, 3_in);
}

std::vector<NestPart> frame_and_filling(const Corners& hole, const Corners& filling, bool mirrored) {
  const Region frame = without(inch_polygon({{0, 0}, {6, 0}, {6, 6}, {0, 6}}), inch_polygon(hole));
  return {{frame}, {inch_polygon(filling), 1, {Turn{}}, mirrored}};
}

// A square of 2 in lies in a hole of its own size; with a gap of 1/8 in it does not, and 6 + 1/8 + 2 in are
// needed.
TEST(Nesting, WhatFitsAHoleExactlyLiesInIt) {
  const auto parts =
      frame_and_filling({{1, 2}, {3, 2}, {3, 4}, {1, 4}}, {{0, 0}, {2, 0}, {2, 2}, {0, 2}}, false);
  const Nesting nesting = nested(parts, {6_in}, {.effort = 20'000});
  expect_sound(parts, {6_in}, nesting);
  EXPECT_EQ(nesting.length, 6_in);
  EXPECT_EQ(nesting.least_length, 6_in);

  const Length gap = Length::inches(1, 8);
  const Nesting apart = nested(parts, {6_in}, {.gap = gap, .effort = 20'000});
  expect_sound(parts, {6_in}, apart, gap);
  EXPECT_GE(apart.length, 8_in + gap);
  EXPECT_LE(apart.length, 8_in + gap + 10 * one_tick);
}

// The hole is the filling's mirror image.
TEST(Nesting, TurnsOverOnlyWhereThatIsAllowed) {
  const Corners hole{{1, 1}, {4, 1}, {4, 2}, {2, 2}, {2, 3}, {1, 3}};
  const Corners filling{{0, 0}, {1, 0}, {1, 1}, {3, 1}, {3, 2}, {0, 2}};
  const auto over = frame_and_filling(hole, filling, true);
  const Nesting turned_over = nested(over, {6_in}, {.effort = 20'000});
  expect_sound(over, {6_in}, turned_over);
  EXPECT_EQ(turned_over.length, 6_in);
  EXPECT_TRUE(turned_over.laid[1].lies.flipped);
  const auto face_up = frame_and_filling(hole, filling, false);
  const Nesting beside = nested(face_up, {6_in}, {.effort = 20'000});
  expect_sound(face_up, {6_in}, beside);
  EXPECT_EQ(beside.length, 9_in);
}

// Of 6 x 4 in two lie on a sheet of 10 x 8 in one above the other, none beside: five take three sheets, the
// last for 6 in. By area two might do: 5 x 24 = 120 of 160 sq in, and 120 / 8 - 10 = 5 in of the second.
TEST(Nesting, FillsSheetsOneAfterAnother) {
  const std::vector<NestPart> parts{{inch_polygon({{0, 0}, {6, 0}, {6, 4}, {0, 4}}), 5}};
  const NestStock sheets{8_in, 10_in};
  const Nesting nesting = nested(parts, sheets, {.effort = 20'000});
  expect_sound(parts, sheets, nesting);
  EXPECT_EQ(nesting.sheets, 3U);
  EXPECT_EQ(nesting.length, 6_in);
  EXPECT_EQ(nesting.least_sheets, 2U);
  EXPECT_EQ(nesting.least_length, 5_in);
}

// Hooks again: two to a sheet of 3 x 2 in, nothing left over; with a kerf each needs its own.
TEST(Nesting, HooksInterlockOnSheets) {
  const Region hook = inch_polygon({{0, 0}, {2, 0}, {2, 1}, {1, 1}, {1, 2}, {0, 2}});
  const std::vector<NestPart> parts{{hook, 6, quarter_turns}};
  const NestStock sheets{2_in, 3_in};
  const Nesting tight = nested(parts, sheets, {.effort = 100'000});
  expect_sound(parts, sheets, tight);
  EXPECT_EQ(tight.sheets, 3U);
  const Nesting loose = nested(parts, sheets, {.gap = 1_mm, .effort = 20'000});
  expect_sound(parts, sheets, loose, 1_mm);
  EXPECT_EQ(loose.sheets, 6U);
}

TEST(Nesting, NamesWhatDoesNotFitAndLaysTheRest) {
  const std::vector<NestPart> parts{{inch_polygon({{0, 0}, {9, 0}, {9, 5}, {0, 5}}), 2, quarter_turns},
                                    {inch_polygon({{0, 0}, {3, 0}, {3, 3}})}};
  const Nesting strip = nested(parts, {4_in}, {.effort = 1'000});
  expect_sound(parts, {4_in}, strip);
  ASSERT_EQ(strip.misfits.size(), 1U);
  EXPECT_EQ(strip.misfits[0].part, 0U);
  EXPECT_EQ(strip.misfits[0].least_width, 5_in);
  EXPECT_EQ(strip.laid.size(), 1U);
  EXPECT_TRUE(nested({parts[0]}, {5_in, 9_in}, {.effort = 1'000}).misfits.empty());
  EXPECT_EQ(nested({parts[0]}, {5_in, 8_in}, {.effort = 1'000}).misfits.size(), 1U);
  const Nesting nothing = nested(parts, {Length{}}, {.effort = 1'000});
  EXPECT_EQ(nothing.misfits.size(), 2U);
  EXPECT_EQ(nothing.sheets, 0U);
  EXPECT_EQ(nothing.density(), 0);
  EXPECT_TRUE(nested({}, {4_in}).laid.empty());
  EXPECT_THROW(nested({{Region{}}}, {4_in}), std::invalid_argument);
  EXPECT_THROW(nested(parts, {4_in}, {.gap = -one_tick}), std::invalid_argument);
}

// The set "fu" of twelve convex parts on a strip of 38, with quarter turns (ESICUP data sets,
// 2d_irregular/fu, CC0-1.0); a unit is 1 in here. Best published density 92.41 % (Gardeyn, Vanden Berghe and
// Wauters 2025, table 2).
std::vector<NestPart> fu() {
  const std::vector<Corners> outlines{{{0, 0}, {10, 0}, {10, 10}, {0, 10}},
                                      {{0, 0}, {10, 0}, {10, 10}, {0, 10}},
                                      {{0, 0}, {14, 0}, {14, 9}, {0, 9}},
                                      {{0, 0}, {14, 0}, {7, 7}},
                                      {{0, 9}, {0, 0}, {14, 9}},
                                      {{0, 0}, {14, 0}, {14, 14}, {0, 14}},
                                      {{0, 0}, {10, 4}, {10, 9}, {0, 9}},
                                      {{0, 0}, {5, 0}, {5, 9}, {0, 9}},
                                      {{0, 0}, {14, 0}, {14, 14}},
                                      {{0, 0}, {10, 0}, {10, 10}, {0, 14}},
                                      {{0, 8}, {4, 0}, {8, 8}},
                                      {{0, 0}, {14, 0}, {7, 12}}};
  std::vector<NestPart> parts;
  for (const Corners& outline : outlines) parts.push_back({inch_polygon(outline), 1, quarter_turns});
  return parts;
}

TEST(Nesting, ComesNearTheBestPublishedForASmallSet) {
  const Nesting nesting = nested(fu(), {38_in}, {.effort = 400'000});
  expect_sound(fu(), {38_in}, nesting);
  EXPECT_EQ(nesting.parts.doubled(), Int128{2 * 1083} * (1_in).ticks() * (1_in).ticks());
  EXPECT_GT(nesting.density(), 0.94 * 0.9241);
  EXPECT_LE(nesting.effort, 410'000U);
}

TEST(Nesting, IsTheSameWhateverTheOrderThePlaceOfOutlinesAndTheThreads) {
  const NestLimits limits{.effort = 30'000, .seed = 7};
  const std::vector<NestPart> parts = fu();
  const Nesting nesting = nested(parts, {38_in}, limits);
  EXPECT_EQ(nested(parts, {38_in}, limits).length, nesting.length);
  const Nesting sooner = nested(parts, {38_in}, {.effort = 30'000, .seed = 7, .two_threads = true});
  for (std::size_t i = 0; i < parts.size(); ++i)
    EXPECT_EQ(sooner.laid[i].lies(parts[i].outline), nesting.laid[i].lies(parts[i].outline)) << i;
  std::vector<NestPart> changed = parts;
  std::ranges::reverse(changed);
  for (NestPart& part : changed) part.outline = moved(part.outline, {3_in, -(5_mm)});
  const Nesting other = nested(changed, {38_in}, limits);
  expect_sound(changed, {38_in}, other);
  EXPECT_EQ(other.length, nesting.length);
  for (std::size_t i = 2; i < parts.size(); ++i) {  // the first two are alike
    const Region there = other.laid[parts.size() - 1 - i].lies(changed[parts.size() - 1 - i].outline);
    EXPECT_EQ(there, nesting.laid[i].lies(parts[i].outline)) << i;
  }
  EXPECT_NE(nested(parts, {38_in}, {.effort = 30'000, .seed = 8}).length, nesting.length);
}

// Turns that leave the lattice, a gap, holes: only what must hold always.
TEST(Nesting, OfOddPartsIsSound) {
  for (unsigned seed = 0; seed < 12; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    std::vector<NestPart> parts;
    for (int k = 0; k < 6; ++k) {
      const Region region = k % 2 == 0 ? support::random_region(random, 8, 200'003)
                                       : support::random_boxes(random, 5, 8, 200'003).parts().front();
      const Region one = Region::from_faces({region.faces().front()});
      parts.push_back({one, 1 + seed % 2, {Turn{}, Turn::degrees(37'000'000)}, k % 3 == 0});
    }
    const NestStock stock{60_mm, seed % 3 == 0 ? std::optional(80_mm) : std::nullopt};
    const Length gap = seed % 2 == 0 ? Length{} : Length::millimetres(1, 4);
    const Nesting nesting = nested(parts, stock, {.gap = gap, .effort = 15'000, .seed = seed});
    expect_sound(parts, stock, nesting, gap);
  }
}

// Parts of whole cells can be moved onto whole cells without being longer: round both coordinates of each
// down.
TEST(Nesting, OfCellsIsAsShortAsTheShortest) {
  for (unsigned seed = 0; seed < 25; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937_64 random(seed);
    std::vector<NestPart> parts;
    std::vector<oracle::CellPart> cells;
    for (int k = 0; k < 4; ++k) {
      oracle::CellPart part{{{0, 0}}, {0, 1, 2, 3}};
      while (part.cells.size() < 3 + random() % 3) {
        auto [x, y] = part.cells[random() % part.cells.size()];
        (random() % 2 == 0 ? x : y) += random() % 2 == 0 ? 1 : -1;
        if (std::ranges::find(part.cells, std::pair(x, y)) == part.cells.end()) part.cells.emplace_back(x, y);
      }
      std::vector<Region> squares;
      for (const auto& [x, y] : part.cells)
        squares.emplace_back(
            Rect{{Length::inches(x), Length::inches(y)}, {Length::inches(x + 1), Length::inches(y + 1)}});
      parts.push_back({united(squares), 1, quarter_turns});
      cells.push_back(part);
    }
    const Nesting nesting = nested(parts, {4_in}, {.effort = 60'000});
    expect_sound(parts, {4_in}, nesting);
    EXPECT_EQ(nesting.length, Length::inches(oracle::fewest_columns(cells, 4)));
  }
}

}  // namespace
}  // namespace berthwright

#include <berthwright/solve/cover/cover.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <random>

#include "support/convert_trailers.h"
#include "support/cushions.h"
#include "support/demos.h"
#include "support/plan_builder.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

// The cover of a cushion that lies nowhere: all its edges are stowed, so the zip is on its longest.
Cover stowed_cover(const Piece& piece, const Sewing& sewing = {}) {
  static const Plan plan = TrailerText{}.plan();
  return cover_of(plan, sewing, {}, piece);
}

// With seams of 1/2 in it takes strips of 1 1/2 in, as the closed example has them.
constexpr Length cord = Length::inches(5, 32);

// By night the cushions are a bed, in which nobody sits.
TrailerText made_up_dinette() {
  TrailerText text = dinette_with_cushions();
  text.beds = {
      R"({"id": "bed", "configuration": "night", "pieces": ["left seat", "left back", "right back", "right seat"]})"};
  return text;
}

Length sum_of(const Boxing& boxing) {
  Length sum;
  for (const BoxingStrip& strip : boxing.strips) sum += strip.finished;
  return sum;
}

// E1, instructables.com, bench cushion: 32 5/8 x 14 5/8 x 3, seams of 5/8: panels 33 7/8 x 15 7/8, boxing 4
// 1/4, its front as long as the panel, sides too. The page cuts the zip strips 3 in wide; by the rule of the
// two other sources 4 1/4 in of boxing give 2 7/8.
TEST(Cover, OfABenchCushionIsCutAsPublished) {
  Sewing sewing;
  sewing.seam_allowance = Length::inches(5, 8);
  const Cover cover = stowed_cover(cushion(Length::inches(261, 8), Length::inches(117, 8), 3_in), sewing);
  EXPECT_EQ(cover.panel.length, Length::inches(271, 8));
  EXPECT_EQ(cover.panel.width, Length::inches(127, 8));
  EXPECT_EQ(cover.boxing.width, Length::inches(17, 4));
  EXPECT_EQ(cover.zip.cut_width, Length::inches(23, 8));
  // A piece of boxing from corner to corner has a seam at either end, as the page cuts it.
  EXPECT_EQ(cover.rim.edges[0].length + sewing.seam_allowance * 2, Length::inches(271, 8));
  EXPECT_EQ(cover.rim.edges[1].length + sewing.seam_allowance * 2, Length::inches(127, 8));
}

// E2, yahoo.com/lifestyle: 18 x 24 x 6, seams of 1/2: panels 19 x 25, gusset 7 wide and 84 round (88 cut with
// 4 to spare); batting 17 x 23 twice and 84 x 5.
TEST(Cover, OfABoxCushionIsCutAsPublished) {
  Sewing sewing;
  sewing.foam_cut = FoamCut::wrapped;
  sewing.batting = true;
  const Cover cover = stowed_cover(cushion(24_in, 18_in, 6_in), sewing);
  EXPECT_EQ(cover.panel.outline, Polygon::rectangle({{-Length::inches(1, 2), -Length::inches(1, 2)},
                                                     {Length::inches(49, 2), Length::inches(37, 2)}}));
  EXPECT_EQ(cover.panel.length, 25_in);
  EXPECT_EQ(cover.panel.width, 19_in);
  EXPECT_EQ(cover.boxing.width, 7_in);
  EXPECT_EQ(cover.rim.perimeter, 84_in);
  ASSERT_TRUE(cover.batting);
  EXPECT_EQ(cover.batting->length, 23_in);
  EXPECT_EQ(cover.batting->width, 17_in);
  EXPECT_EQ(cover.batting->strip_length, 84_in);
  EXPECT_EQ(cover.batting->strip_width, 5_in);
}

// E3, transcript of a sewing video at ehow: 11 x 15 x 3, seams of 1/2: panels 12 x 16, boxing 4 wide.
TEST(Cover, OfASmallCushionIsCutAsPublished) {
  const Cover cover = stowed_cover(cushion(15_in, 11_in, 3_in));
  EXPECT_EQ(cover.panel.length, 16_in);
  EXPECT_EQ(cover.panel.width, 12_in);
  EXPECT_EQ(cover.boxing.width, 4_in);
}

// E4, upholsteryresource.com, node 56: boxing of 4 1/4 in: zip strips of 2 7/8. E5, somethingfortheroad.com:
// boxing of 5: strips of 3 1/4.
TEST(Cover, ZipStripsAreHalfTheBoxingAndThreeQuarters) {
  EXPECT_EQ(zip_strip_width(Length::inches(17, 4)), Length::inches(23, 8));
  EXPECT_EQ(zip_strip_width(5_in), Length::inches(13, 4));
  EXPECT_EQ(zip_strip_width(5_in + one_tick), Length::inches(13, 4) + one_tick);
}

// E5: 24 x 24 x 4, seams of 1/2: panels 25 x 25, boxing 5 wide, welt at least 192. The page makes zip strips
// of the back and 8, over boxing of front and two sides (72) that is trimmed; ours of the back and 6 between
// boxing of 96 - 30 = 66.
TEST(Cover, OfASquareCushionIsCutByTheFormulas) {
  Sewing sewing;
  sewing.welt = cord;
  const Cover cover = stowed_cover(cushion(24_in, 24_in, 4_in), sewing);
  EXPECT_EQ(cover.panel.length, 25_in);
  EXPECT_EQ(cover.panel.width, 25_in);
  EXPECT_EQ(cover.boxing.width, 5_in);
  EXPECT_EQ(cover.zip.finished, 30_in);
  EXPECT_EQ(cover.zip.cut_length, 31_in);
  EXPECT_EQ(cover.zip.cut_width, Length::inches(13, 4));
  EXPECT_EQ(cover.boxing.finished, 66_in);
  EXPECT_EQ(cover.welt->length, 192_in + 6_in);
  EXPECT_EQ(cover.zip.marks, (std::vector<Length>{3_in, 27_in}));
  // The far corners: 21 in round the first side, then the 24 of the front.
  EXPECT_EQ(cover.boxing.marks, (std::vector<Length>{21_in, 45_in}));
}

// facts/cushions.md 8: a seat of 23 x 42 x 4: panels 24 x 43, zip 48, strips 49 x 3 1/4, boxing 82, cut 83 x
// 5 where the fabric is wide enough for one strip; welt 266 in: 5 strips of 54, 7 1/2 in of roll.
TEST(Cover, OfTheClosedExampleIsCutAsThere) {
  Sewing sewing;
  sewing.welt = cord;
  sewing.fabric.width = 84_in;
  const Cover wide = stowed_cover(cushion(42_in, 23_in, 4_in), sewing);
  EXPECT_EQ(wide.panel.length, 43_in);
  EXPECT_EQ(wide.panel.width, 24_in);
  EXPECT_EQ(wide.zip.cut_length, 49_in);
  EXPECT_EQ(wide.zip.cut_width, Length::inches(13, 4));
  ASSERT_EQ(wide.boxing.strips.size(), 1U);
  EXPECT_EQ(wide.boxing.strips[0].cut, 83_in);
  EXPECT_EQ(wide.boxing.width, 5_in);
  sewing.fabric.width = 54_in;
  const Cover narrow = stowed_cover(cushion(42_in, 23_in, 4_in), sewing);
  EXPECT_EQ(narrow.welt->length, 266_in);
  EXPECT_EQ(narrow.welt->strips.count, 5);
  EXPECT_EQ(narrow.welt->strips.of_roll, Length::inches(15, 2));
}

// What E6 cuts from 54 in goods, 73 in of boxing as 54 and 20, are two strips with one join of 1 in: 73 + 1
// = 74.
TEST(Cover, StripsTakeASeamAtEveryJoin) {
  const Cover cover = stowed_cover(cushion(30_in, 30_in, 4_in));
  EXPECT_EQ(cover.boxing.finished, 120_in - 36_in);
  Length cut;
  for (const BoxingStrip& strip : cover.boxing.strips) {
    EXPECT_LE(strip.cut, 54_in);
    cut += strip.cut;
  }
  EXPECT_EQ(cut, 84_in + 1_in * static_cast<std::int64_t>(cover.boxing.strips.size()));
}

// Boxing and zip together are the perimeter; 200 seeded outlines, worked and free.
TEST(Cover, BoxingAndZipAreThePerimeter) {
  std::mt19937_64 random(20261128);
  int joined = 0;
  for (int i = 0; i < 200; ++i) {
    SCOPED_TRACE(i);
    Piece piece = worked_cushion(random_rectangle(random), 4_in);
    if (i % 4 == 0) {
      const Polygon polygon = support::random_polygon(random, 9, 30, 2 * ticks_per_inch);
      const Rect box = polygon.bounds();
      std::vector<Point> corners;
      for (const Point& p : polygon.vertices()) corners.push_back(p - (box.low - Point{}));
      piece.outline = Outline::free(corners).value();
      piece.length = box.width();
      piece.width = box.height();
    }
    const Cover cover = stowed_cover(piece);
    Length perimeter;
    for (const RimEdge& edge : cover.rim.edges) perimeter += edge.length;
    EXPECT_EQ(sum_of(cover.boxing) + cover.zip.finished, perimeter);
    EXPECT_EQ(cover.boxing.strips.size(), cover.boxing.joins.size() + 1);
    for (const BoxingStrip& strip : cover.boxing.strips) {
      EXPECT_GT(strip.finished, Length{});
      EXPECT_LE(strip.cut, 54_in);
    }
    joined += cover.boxing.joins.empty() ? 0 : 1;
  }
  EXPECT_GT(joined, 100);
}

// The left seat: zip at the wall, so boxing runs from there over rear, front and far side; the front of 38 in
// is whole, and joins fall on the sides.
TEST(Cover, JoinsNeverFallOnAFrontFace) {
  const Plan plan = made_up_dinette().plan();
  const auto all = covers(plan, {});
  ASSERT_TRUE(all);
  ASSERT_EQ(all->size(), 4U);
  int joins = 0;
  for (const Cover& cover : *all) {
    joins += static_cast<int>(cover.boxing.joins.size());
    EXPECT_EQ(sum_of(cover.boxing) + cover.zip.finished, cover.rim.perimeter);
    for (const BoxingJoin& join : cover.boxing.joins) EXPECT_FALSE(join.front) << cover.piece->name;
    EXPECT_FALSE(is_front(cover.zip.place.sights[cover.zip.place.edge]));
  }
  // A seat of 38 x 22 keeps 120 - 44 = 76, its front from 19 to 57: with strips of 53 two joins. A back of 38
  // x 16 keeps 108 - 44 = 64, its upper edge from 13 to 51: one join at 11 to 12, or 52 to 53.
  EXPECT_EQ(joins, 2 * 2 + 2 * 1);
  EXPECT_EQ(all->front().up, Wall::left) << "nap points to the back of the left seat";
}

// Sanderling's settee is 75 in long, and no strip across 54 in goods is: plain fabric is cut along the roll,
// 196 - 81 in one piece; with a nap a join falls on the front.
TEST(Cover, ALongFrontIsCutAlongTheRoll) {
  const Plan plan = plan_from(demo_text("sanderling"));
  Sewing sewing;
  const auto plain = covers(plan, sewing);
  const Boxing& whole = plain->front().boxing;
  EXPECT_TRUE(whole.along_roll);
  ASSERT_EQ(whole.strips.size(), 1U);
  EXPECT_EQ(whole.strips[0].cut, 116_in);
  sewing.fabric.up_across = true;  // woven railroaded: no strip lies across it
  const auto railroaded = covers(plan, sewing);
  for (const Cover& cover : *railroaded) EXPECT_EQ(cover.boxing.strips.size(), 1U);
  sewing.fabric.up_across = false;
  sewing.fabric.one_way = true;
  const auto napped = covers(plan, sewing);
  const Boxing& joined = napped->front().boxing;
  EXPECT_FALSE(joined.along_roll);
  EXPECT_EQ(std::ranges::count(joined.joins, true, &BoxingJoin::front), 1);
}

TEST(Cover, SaysWhereTheFabricIsTooNarrow) {
  const Plan plan = made_up_dinette().plan();
  Sewing sewing;
  EXPECT_EQ(covers(plan, sewing)->front().lay.fit, PanelFit::fits);
  sewing.fabric.width = 30_in;  // 38 + 1 across the roll, 22 + 1 along it
  EXPECT_EQ(covers(plan, sewing)->front().lay.fit, PanelFit::fits);
  sewing.fabric.one_way = true;
  EXPECT_EQ(covers(plan, sewing)->front().lay.fit, PanelFit::turned_only);
  // 39 in across 30: the middle 30, and two sides that make up 9 in and what two seams take, 2 in: 5 1/2
  // each.
  const Length side = Length::inches(11, 2);
  EXPECT_EQ(covers(plan, sewing)->front().lay.widths, (std::vector<Length>{side, 30_in, side}));
  sewing.fabric.width = 20_in;
  EXPECT_EQ(covers(plan, sewing)->front().lay.fit, PanelFit::too_wide);
}

TEST(Cover, TellsWhereTopAndBottomDiffer) {
  EXPECT_TRUE(cover_panel(cushion(40_in, 20_in, 4_in).outline, 1_in).symmetric);
  const std::array<Corner, 4> one_notch{SquareCorner{}, Notch{9_in, 5_in}, SquareCorner{}, SquareCorner{}};
  EXPECT_FALSE(cover_panel(worked_cushion({40_in, 20_in, one_notch}, 4_in).outline, 1_in).symmetric);
  const std::array<Corner, 4> two{SquareCorner{}, Round{4_in}, Round{4_in}, SquareCorner{}};
  EXPECT_TRUE(cover_panel(worked_cushion({40_in, 20_in, two}, 4_in).outline, 1_in).symmetric);
}

// Left and right exchanged, or everything moved along: the same cuts.
TEST(Cover, IsTheSameInTheMirrorAndShifted) {
  const Plan plan = made_up_dinette().plan();
  const Plan mirrored = made_up_dinette().mirrored().plan();
  TrailerText further = made_up_dinette();
  further.interior = R"({"length": 150, "width": 76, "height": 76})";
  const Plan shifted = further.plan();
  const auto as_drawn = covers(plan, {}), in_mirror = covers(mirrored, {}), moved_on = covers(shifted, {});
  for (const auto* other : {&in_mirror, &moved_on}) {
    ASSERT_EQ(as_drawn->size(), (*other)->size());
    for (const Cover& one : *as_drawn) {
      const auto twin = std::ranges::find_if(**other, [&](const Cover& c) {
        return c.piece->length == one.piece->length && c.piece->width == one.piece->width;
      });
      ASSERT_NE(twin, (*other)->end());
      EXPECT_EQ(one.zip.finished, twin->zip.finished);
      EXPECT_EQ(one.boxing.finished, twin->boxing.finished);
      EXPECT_EQ(one.boxing.strips.size(), twin->boxing.strips.size());
      EXPECT_EQ(times_seen(one.zip.place.sights[one.zip.place.edge]),
                times_seen(twin->zip.place.sights[twin->zip.place.edge]));
    }
  }
}

TEST(Cover, OfAPlanThatDoesNotStandIsAProblem) {
  TrailerText text;
  text.pieces = {R"({"id": "c", "kind": "cushion", "length": 20, "width": 30, "thickness": 4})"};
  text.fixtures = {
      R"({"id": "box", "kind": "cabinet", "length": 10, "width": 10, "at": {"front": 90, "left": 0}, "top": 10})"};
  text.day = text.night = {R"({"piece": "c", "at": {"front": 40, "left": 20}, "on": "box"})"};
  EXPECT_FALSE(covers(text.plan(), {}));
}

}  // namespace
}  // namespace berthwright

#include <berthwright/geometry/outline.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "geometry/segment.h"
#include "support/shapes.h"

namespace berthwright {
namespace {

using support::at;

constexpr Length tick_count(std::int64_t count) { return Length::from_ticks(count); }

TEST(Outline, AnUnworkedRectangleIsARectangle) {
  const auto outline = Outline::worked({75_in, 38_in, {}});
  ASSERT_TRUE(outline.ok());
  EXPECT_EQ(outline->polygon(), Polygon::rectangle({{}, {75_in, 38_in}}));
  EXPECT_TRUE(outline->arcs().empty());
}

// Front-left notch 2 along x, 1 along y; rear-left clip 3 along x, 2 along y; rear-right square;
// front-right notch 1 along x, 4 along y, of a rectangle 10 x 8. Area 80 - 2 - 3 - 4 = 71.
TEST(Outline, CutsEachCornerInItsOwnPlace) {
  const auto l = tick_count;
  const auto outline = Outline::worked(
      {l(10), l(8), {Notch{l(2), l(1)}, Clip{l(3), l(2)}, SquareCorner{}, Notch{l(1), l(4)}}});
  ASSERT_TRUE(outline.ok());
  EXPECT_EQ(outline->polygon(), support::polygon({at(0, 1), at(2, 1), at(2, 0), at(7, 0), at(10, 2),
                                                  at(10, 8), at(1, 8), at(1, 4), at(0, 4)}));
  EXPECT_EQ(outline->polygon().area(), Area::from_doubled(142));
}

TEST(Outline, RoundCornersAreChordsOfTheirArcs) {
  for (const std::int64_t radius :
       {1L, 1500L, 2'000L, 40'000L, 1'016'000L, 2'032'000L, 12'700'000L, 38'608'000L / 2}) {
    SCOPED_TRACE(radius);
    const Length r = tick_count(radius);
    const Corner round = Round{r};
    const auto outline = Outline::worked({75_in, 38_in, {round, round, round, round}});
    ASSERT_TRUE(outline.ok());
    ASSERT_EQ(outline->arcs().size(), 4u);
    EXPECT_EQ(outline->arcs()[0].from, at(0, radius));
    EXPECT_EQ(outline->arcs()[0].to, at(radius, 0));
    EXPECT_EQ(outline->arcs()[2].from, (Point{75_in, 38_in - r}));
    EXPECT_EQ(outline->arcs()[2].to, (Point{75_in - r, 38_in}));
    const Point centre{r, r};
    const auto corners = outline->polygon().vertices();
    std::size_t on_arc = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const Point p = corners[i];
      const Point q = corners[(i + 1) % corners.size()];
      if (p.x > r || p.y > r || q.x > r || q.y > r) continue;
      ++on_arc;
      EXPECT_LE(squared_distance(centre, {p, p}), r + one_tick);
      EXPECT_GE(squared_distance(centre, {p, p}), r - one_tick);
      // design: the error of a chord is at most 0.05 mm.
      EXPECT_GE(squared_distance(centre, {p, q}), std::max(r - Length::millimetres(5, 100), Length{}));
    }
    EXPECT_GE(on_arc, 1u);
    // The four corners are mirror images of each other, and each of itself in its diagonal.
    for (const Point& p : corners) {
      EXPECT_NE(std::ranges::find(corners, Point{75_in - p.x, p.y}), corners.end());
      EXPECT_NE(std::ranges::find(corners, Point{p.x, 38_in - p.y}), corners.end());
      const bool in_corner = p.x <= r && p.y <= r;
      EXPECT_TRUE(!in_corner || std::ranges::find(corners, Point{p.y, p.x}) != corners.end());
    }
  }
}

// Two radii of 19 in fill the side of 38 in exactly: a half round end.
TEST(Outline, TwoRoundCornersMayShareAWholeSide) {
  const auto outline =
      Outline::worked({75_in, 38_in, {Round{19_in}, SquareCorner{}, SquareCorner{}, Round{19_in}}});
  ASSERT_TRUE(outline.ok());
  EXPECT_EQ(outline->polygon().vertices().front(), (Point{Length{}, 19_in}));
}

TEST(Outline, NamesTheCornersThatDoNotFitAndTheAllowance) {
  const auto outline =
      Outline::worked({75_in, 38_in, {Round{20_in}, SquareCorner{}, SquareCorner{}, Round{19_in}}});
  ASSERT_FALSE(outline.ok());
  ASSERT_EQ(outline.problems().size(), 1u);
  const Problem& problem = outline.problems()[0];
  EXPECT_EQ(problem.id, "outline.corner");
  EXPECT_EQ(problem.message,
            "the front-right and the front-left corner together take more than the side between them");
  EXPECT_EQ(problem.found, "19\" (482.6 mm) and 20\" (508 mm)");
  EXPECT_EQ(problem.allowed, "at most 38\" (965.2 mm) together");
  EXPECT_EQ(problem.cure, "make one of the two smaller, or the side longer");
}

TEST(Outline, RefusesWhatIsNoShape) {
  const auto id = [](const WorkedRectangle& r) {
    const auto outline = Outline::worked(r);
    return outline.ok() ? std::string() : outline.problems()[0].id;
  };
  const SquareCorner plain;
  EXPECT_EQ(id({Length{}, 38_in, {}}), "outline.size");
  EXPECT_EQ(id({75_in, -38_in, {}}), "outline.size");
  EXPECT_EQ(id({75_in, 38_in, {Notch{Length{}, 1_in}, plain, plain, plain}}), "outline.corner");
  EXPECT_EQ(id({75_in, 38_in, {plain, Round{-1_in}, plain, plain}}), "outline.corner");
  EXPECT_EQ(id({75_in, 38_in, {Notch{40_in, 1_in}, Notch{35_in, 2_in}, plain, plain}}), "outline.corner");
  EXPECT_EQ(id({75_in, 38_in, {Notch{40_in, 30_in}, plain, Notch{40_in, 30_in}, plain}}), "outline.corner");
  EXPECT_EQ(id({75_in, 38_in, {Clip{75_in, 38_in}, plain, Clip{75_in, 38_in}, plain}}), "outline.corner");
  EXPECT_EQ(id({75_in, 38_in, {Clip{75_in, 38_in}, plain, plain, plain}}), "");
}

TEST(Outline, AFreeOutlineReportsWhatThePolygonReports) {
  EXPECT_EQ(Outline::free({at(0, 0), at(4, 4), at(4, 0), at(0, 4)}).problems()[0].id, "polygon.crossing");
  const auto outline = Outline::free({at(0, 0), at(4, 0), at(0, 4)});
  ASSERT_TRUE(outline.ok());
  EXPECT_EQ(*outline, Outline::free({at(4, 0), at(0, 4), at(0, 0)}).value());
}

}  // namespace
}  // namespace berthwright

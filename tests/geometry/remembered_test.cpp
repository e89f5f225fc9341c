#include "geometry/remembered.h"

#include <gtest/gtest.h>

#include <random>
#include <tuple>

#include <berthwright/geometry/disc.h>
#include <berthwright/geometry/rectangle_in_region.h>
#include <berthwright/geometry/widest_way.h>

#include "support/shapes.h"

namespace berthwright {
namespace {

using support::box;

Construction disc_of(const Region& region) { return Construction(Construction::Kind::disc).of(region); }

TEST(Remembered, MakesOnceWhatIsAskedTwiceAndForgetsAtTheEnd) {
  const Region square(box(0, 0, 10, 10));
  int made = 0;
  const auto ask = [&](const Region& region) {
    return remembered<int>([&] { return disc_of(region); }, [&] { return ++made; });
  };
  EXPECT_EQ(ask(square), 1);
  EXPECT_EQ(ask(square), 2);
  {
    const Remembering remembering;
    EXPECT_EQ(ask(square), 3);
    EXPECT_EQ(ask(square), 3);
    EXPECT_EQ(ask(Region(box(0, 0, 10, 11))), 4);
    {
      const Remembering inner;
      EXPECT_EQ(ask(square), 3);
    }
    EXPECT_EQ(ask(square), 3);
  }
  EXPECT_EQ(ask(square), 5);
}

TEST(Remembered, TellsConstructionsApart) {
  const Region one(box(0, 0, 10, 10));
  const Region two(box(20, 0, 30, 10));
  // The same corners, once as a hole and once as a face of its own.
  const Region ring = without(Region(box(0, 0, 90, 90)), Region(box(30, 30, 60, 60)));
  const Region faces = Region::from_faces(
      {{Polygon::rectangle(box(0, 0, 90, 90)), {}}, {Polygon::rectangle(box(30, 30, 60, 60)), {}}});
  EXPECT_NE(disc_of(one), disc_of(two));
  EXPECT_NE(disc_of(ring), disc_of(faces));
  EXPECT_NE(disc_of(one), Construction(Construction::Kind::upright).of(one));
  EXPECT_NE(Construction(Construction::Kind::common).of(one).of(two),
            Construction(Construction::Kind::common).of(two).of(one));
  EXPECT_EQ(disc_of(one), disc_of(Region(box(0, 0, 10, 10))));
}

// Of one region, what is asked besides tells constructions apart. Three rooms in a row: the one at the left
// is reached through a neck of 20 in, the one at the right through one of 10.
TEST(Remembered, AsksAnewForAnotherGoalAndAnotherWidth) {
  const auto inches = [](int x0, int y0, int x1, int y1) {
    return Region(Rect{{Length::inches(x0), Length::inches(y0)}, {Length::inches(x1), Length::inches(y1)}});
  };
  const Region left = inches(0, 0, 30, 76);
  const Region right = inches(90, 0, 120, 76);
  const Region rooms = united(united(united(left, right), inches(40, 0, 80, 76)),
                              united(inches(30, 20, 40, 40), inches(80, 20, 90, 30)));
  const std::vector<Edge> from{{{50_in, {}}, {70_in, {}}}};
  const auto clearance = [&](const Region& goal) { return widest_way(rooms, from, goal).value().width; };
  const auto reach = [&](Length width) {
    return longest_rectangles(rooms, std::vector{width}).front().value().length;
  };
  const auto disc = [](const Region& region) { return largest_disc(region).value().centre; };
  const auto all = [&] {
    return std::tuple(clearance(left), clearance(right), reach(8_in), reach(40_in), disc(left), disc(rooms));
  };
  const auto apart = all();
  EXPECT_EQ(std::get<0>(apart), 20_in);
  EXPECT_EQ(std::get<1>(apart), 10_in);
  EXPECT_GT(std::get<2>(apart), 120_in);  // from corner to corner
  EXPECT_LT(std::get<3>(apart), 120_in);
  const Remembering remembering;
  EXPECT_EQ(all(), apart);
  EXPECT_EQ(all(), apart);
}

TEST(Remembered, ChangesNoResult) {
  std::mt19937_64 random(20261129);
  for (int seed = 0; seed < 12; ++seed) {
    SCOPED_TRACE(seed);
    const Region a = support::random_region(random, 8, 1'000'000);
    const Region b = support::random_region(random, 8, 1'000'000);
    const auto all = [&] {
      return std::tuple(united(a, b), common(a, b), without(a, b), overlaps(a, b), contains(a, b),
                        grown(a, Length::from_ticks(300'000)));
    };
    const auto apart = all();
    const auto wide = largest_upright_rectangle(a);
    const Remembering remembering;
    EXPECT_EQ(all(), apart);
    EXPECT_EQ(all(), apart);
    for (int twice = 0; twice < 2; ++twice) {
      const auto again = largest_upright_rectangle(a);
      ASSERT_EQ(again.has_value(), wide.has_value());
      if (wide) {
        EXPECT_EQ(again->corners, wide->corners);
      }
    }
  }
}

}  // namespace
}  // namespace berthwright

#include "view/raised.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <random>
#include <set>

#include "support/drawn_room.h"

namespace berthwright {
namespace {

// 1:10 of inches: 10 in are 25.4 mm on paper.
const RaisedView tenth{10, {paper_mm(100), paper_mm(200)}};

RaisedThing prism(const Rect& outline, Length base, Length top, Ink ink) {
  return {Region(outline), base, top, ink, ink};
}

// x 20 in: 50.8 mm. y 10 in: 3 in to the right, 6 in up: 7.62 and 15.24 mm. z 5 in: 3 in up: 7.62 mm.
TEST(RaisedView, LeansDepthsAndRaisesHeights) {
  const PaperPoint p = tenth({20_in, 10_in}, 5_in);
  EXPECT_EQ(p.x.micrometres(), 100'000 + 50'800 + 7'620);
  EXPECT_EQ(p.y.micrometres(), 200'000 - 15'240 - 7'620);
}

// The colour that is seen at a point is that of the last filled path around it.
std::optional<Ink> seen_at(const std::vector<Path>& paths, PaperPoint point) {
  std::optional<Ink> seen;
  for (const Path& path : paths) {
    if (!path.closed) continue;
    PaperRing ring{path.from};
    for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
    if (inside({ring}, point)) seen = path.ink;
  }
  return seen;
}

// The slow twin: walks along the line of sight from the eye down to the floor, in steps of 1/20 in, and tells
// the first box it enters. A line of sight through (x, y, 0) passes (x - 0.3 t, y + t, -t) for every t.
std::optional<Ink> met_first(const std::vector<RaisedThing>& things, double x, double y) {
  for (double t = -60; t <= 0; t += 0.05)
    for (const RaisedThing& thing : things) {
      const Rect r = thing.outline.bounds();
      const auto in = [](Length length) { return static_cast<double>(length.ticks()) / 1'016'000; };
      const double px = x - 0.3 * t;
      const double py = y + t;
      if (in(r.low.x) < px && px < in(r.high.x) && in(r.low.y) < py && py < in(r.high.y) &&
          in(thing.base) < -t && -t < in(thing.top))
        return thing.lid;
    }
  return std::nullopt;
}

// A low box before a tall one hides its foot, not its top; behind it, it is hidden.
TEST(RaisedPaths, NearThingsHideFarOnes) {
  const RaisedThing tall = prism(inches(0, 20, 20, 30), {}, 30_in, Ink::fixture);
  const RaisedThing low = prism(inches(0, 0, 20, 10), {}, 15_in, Ink::cushion);
  for (const auto& things : {std::vector{tall, low}, std::vector{low, tall}}) {
    const std::vector<Path> paths = raised_paths(tenth, things);
    // At y = 20 in on the tall face, 2 in above the floor: 22 in of rise; the low top spans 15 to 25 in.
    EXPECT_EQ(seen_at(paths, tenth({10_in, 20_in}, 2_in)), Ink::cushion);
    EXPECT_EQ(seen_at(paths, tenth({10_in, 20_in}, 20_in)), Ink::fixture);
    EXPECT_EQ(seen_at(paths, tenth({10_in, 25_in}, 30_in)), Ink::fixture);
  }
}

TEST(RaisedPaths, AgreeWithALineOfSightWalkedThroughBoxesThatShareNoSpace) {
  std::mt19937 random(20261128);
  const auto pick = [&](int low, int high) { return std::uniform_int_distribution(low, high)(random); };
  constexpr std::array inks{Ink::fixture, Ink::cushion,     Ink::board, Ink::table,
                            Ink::alarm,   Ink::bed_outline, Ink::gap,   Ink::ridge};
  for (int round = 0; round < 4; ++round) {
    std::vector<RaisedThing> things;
    for (int tries = 0; tries < 200 && things.size() < inks.size(); ++tries) {
      const int x = pick(0, 40);
      const int y = pick(0, 40);
      const int z = pick(0, 20);
      const RaisedThing one = prism(inches(x, y, x + pick(4, 25), y + pick(4, 25)), Length::inches(z),
                                    Length::inches(z + pick(2, 20)), inks.at(things.size()));
      const Solid solid(one.outline, one.base, one.top);
      if (std::ranges::none_of(things, [&](const RaisedThing& other) {
            return overlaps(Solid(other.outline, other.base, other.top), solid);
          }))
        things.push_back(one);
    }
    const std::vector<Path> paths = raised_paths(tenth, things);
    int compared = 0;
    for (int i = 0; i < 150; ++i) {
      const double x = pick(-20, 75) + 0.37;
      const double y = pick(0, 90) + 0.41;
      const PaperPoint at = tenth({Length::inches(static_cast<std::int64_t>(x * 100), 100),
                                   Length::inches(static_cast<std::int64_t>(y * 100), 100)},
                                  {});
      // Lines are as wide as a pen and faces lap by a hair: where a neighbouring line of sight tells another
      // thing, nothing is compared.
      const std::optional<Ink> expected = met_first(things, x, y);
      bool at_border = false;
      for (const double d : {-0.1, 0.1})
        at_border =
            at_border || met_first(things, x + d, y) != expected || met_first(things, x, y + d) != expected;
      if (at_border) continue;
      ++compared;
      EXPECT_EQ(seen_at(paths, at), expected) << round << " at " << x << ", " << y;
    }
    EXPECT_GT(compared, 50);
  }
}

TEST(RaisedPaths, DoNotDependOnTheOrderOfThings) {
  std::vector<RaisedThing> things{prism(inches(0, 0, 20, 10), {}, 15_in, Ink::cushion),
                                  prism(inches(0, 20, 20, 30), {}, 30_in, Ink::fixture),
                                  prism(inches(5, 0, 15, 30), 30_in, 32_in, Ink::board)};
  const std::vector<Path> one = raised_paths(tenth, things);
  std::ranges::reverse(things);
  const std::vector<Path> other = raised_paths(tenth, things);
  for (int x = 0; x < 40; ++x)
    for (int y = 0; y < 70; ++y) {
      const PaperPoint at = tenth({Length::inches(4 * x + 1, 4), Length::inches(y)}, 1_in);
      EXPECT_EQ(seen_at(one, at), seen_at(other, at)) << x << ", " << y;
    }
}

// Three faces, nine edges: a closed top, two feet, three uprights.
TEST(RaisedOutline, HasTheEdgesThatTheSolidDoesNotHideItself) {
  const std::vector<Path> paths =
      raised_outline(tenth, Solid(Region(inches(0, 0, 10, 10)), {}, 10_in), Ink::ghost);
  EXPECT_EQ(std::ranges::count_if(paths, &Path::closed), 1);
  std::set<std::pair<PaperPoint, PaperPoint>> edges;
  for (const Path& path : paths)
    if (!path.closed) edges.insert({path.from, path.stretches.front().to});
  EXPECT_EQ(edges.size(), 5U);
}

}  // namespace
}  // namespace berthwright

#include <berthwright/solve/heat/cord.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "oracle/cord_raster.h"
#include "support/cord_trailers.h"
#include "support/plan_builder.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::inch_point;

/// A plan of one heater "H" and one outlet, and the arrangement by day.
struct Corded {
  explicit Corded(const TrailerText& text) : plan(text.plan()) {
    Result<Arrangement> made = arranged(plan, plan->configurations.front());
    if (!made) throw std::invalid_argument(listed(made.problems()));
    arrangement = std::move(made).value();
    heater = arrangement.find("H");
    outlet = plan.fixture("outlet");
    level = level_under(*heater);
    exit = cord_exit(*heater).value();
  }
  Corded(const Corded&) = delete;
  Corded& operator=(const Corded&) = delete;

  CordReach reach() const {
    return CordReach(plan, arrangement, "H", {level, cord_floor(plan, arrangement, "H", level)}, *outlet);
  }
  CordRun run() const { return reach().from(exit); }

  Plan plan;
  Arrangement arrangement;
  const Placed* heater = nullptr;
  const Fixture* outlet = nullptr;
  CordLevel level;
  CordExit exit;
};

CordRun run_of(const TrailerText& text) { return Corded(text).run(); }
TrailerText with(const std::string& fixture) {
  TrailerText text = cord_trailer("80");
  text.fixtures.push_back(fixture);
  return text;
}
TrailerText leaving(const std::string& side) {
  TrailerText text = cord_trailer("80");
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 10, "faces": "rear",
                     "cord": {"length": 80, "leaves_at": ")" +
                 side + R"("}})"};
  return text;
}

// From (60, 35) straight to (24, 35), 36 in, and up to the top of the outlet, 18 in: 54 in.
TEST(Cord, RunsStraightOverAFreeFloorAndUpToTheOutlet) {
  const CordRun run = run_of(cord_trailer("80"));
  ASSERT_TRUE(run.reached());
  EXPECT_EQ(run.length, 54_in);
  EXPECT_EQ(run.path, (std::vector<Point>{inch_point(60, 35), inch_point(24, 35)}));
  EXPECT_EQ(run.route, (std::vector<Point3>{
                           {inch_point(60, 35), {}}, {inch_point(24, 35), {}}, {inch_point(24, 35), 18_in}}));
}

// A cabinet from 40 to 44 in, from the left wall to 47 in: (60, 35) to (44, 47) is 16 and 12: 20 in; 4 along
// it; (40, 47) to (24, 35) again 20 in; up 18: 62 in.
TEST(Cord, GoesRoundWhatStandsInBetween) {
  const CordRun run = run_of(with(cabinet("box", "40", "0", "4", "47")));
  EXPECT_EQ(run.length, 62_in);
  EXPECT_EQ(run.path, (std::vector<Point>{inch_point(60, 35), inch_point(44, 47), inch_point(40, 47),
                                          inch_point(24, 35)}));
}

// 3 15/16 in over the floor there is no room for it, 4 in is enough.
TEST(Cord, PassesUnderWhatHangsFourInchesUpAndUnderCurtains) {
  EXPECT_EQ(run_of(with(cabinet("box", "40", "0", "4", "47", "3 15/16"))).length, 62_in);
  EXPECT_EQ(run_of(with(cabinet("box", "40", "0", "4", "47", "4"))).length, 54_in);
  std::string curtain = cabinet("box", "40", "0", "4", "47");
  curtain.replace(curtain.find("cabinet"), 7, "curtain");
  EXPECT_EQ(run_of(with(curtain)).length, 54_in);
}

// Two cabinets from wall to wall with a crack of 1/2 in between them, then with 3/4 in.
TEST(Cord, IsNotLedThroughACrackOfHalfAnInch) {
  TrailerText text = with(cabinet("box", "40", "0", "4", "35"));
  text.fixtures.push_back(cabinet("chest", "40", "35 1/2", "4", "40 1/2"));
  EXPECT_EQ(run_of(text).end, CordRun::End::no_way);
  text.fixtures.back() = cabinet("chest", "40", "35 3/4", "4", "40 1/4");
  EXPECT_TRUE(run_of(text).reached());
}

// Out at the front, (70, 35): 5 in to the corner (70, 40), 10 along the side, then (60, 40) to (24, 35): 36
// and 5, sqrt(1321) = 36.3456 in; up 18. Or out at a side, (65, 40): 5 and the same.
TEST(Cord, GoesRoundTheHeaterItself) {
  const Length slanted = SquaredLength::of(36_in).plus_square_of(5_in).ceiling();
  EXPECT_EQ(run_of(leaving("rear")).length, 33_in + slanted);
  EXPECT_EQ(run_of(leaving("right")).length, 23_in + slanted);
  EXPECT_EQ(run_of(leaving("left")).length, 23_in + slanted);
  EXPECT_EQ(run_of(leaving("front")).length, 54_in);
}

TEST(Cord, TurnsWithTheHeater) {
  TrailerText text = cord_trailer("80");
  for (const auto& [turn, side] :
       {std::pair{"0", Wall::front}, {"90", Wall::left}, {"180", Wall::rear}, {"270", Wall::right}}) {
    TrailerText turned = text;
    turned.day[0].insert(turned.day[0].size() - 1, std::string(R"(, "turn": ")") + turn + '"');
    EXPECT_EQ(Corded(turned).exit.side, side) << turn;
  }
}

TEST(Cord, NamesWhatShutsItInOrOut) {
  const CordRun in = run_of(with(cabinet("box", "50", "20", "10", "30")));
  EXPECT_EQ(in.end, CordRun::End::shut_in);
  EXPECT_EQ(in.blocked_by, "box");
  EXPECT_EQ(run_of(with(cabinet("box", "49 5/8", "20", "10", "30"))).end, CordRun::End::shut_in);
  EXPECT_TRUE(run_of(with(cabinet("box", "49 1/4", "20", "10", "30"))).reached());
  const CordRun out = run_of(with(cabinet("box", "20", "30", "10", "10", "0", "12")));
  EXPECT_EQ(out.end, CordRun::End::shut_out);
  EXPECT_EQ(out.blocked_by, "box");
  // A shelf below the outlet, at any height: the cord would have to go round it.
  const CordRun over = run_of(with(cabinet("shelf", "20", "30", "10", "10", "10", "11")));
  EXPECT_EQ(over.end, CordRun::End::shut_out);
  EXPECT_EQ(over.blocked_by, "shelf");
  TrailerText wall = cord_trailer("80");
  wall.fixtures[0] = outlet("outlet", "0", "33", "front");
  EXPECT_EQ(run_of(wall).end, CordRun::End::shut_out);
  EXPECT_EQ(run_of(wall).blocked_by, "the front wall");
  EXPECT_EQ(run_of(with(cabinet("wall", "40", "0", "1", "76"))).end, CordRun::End::no_way);
}

// The heater stands on the outlet's foot.
TEST(Cord, TheHeaterMayStandBeforeItsOwnOutlet) {
  TrailerText text = leaving("rear");
  text.fixtures[0] = outlet("outlet", "63", "33", "rear");
  const CordRun run = run_of(text);
  EXPECT_EQ(run.end, CordRun::End::shut_out);
  EXPECT_EQ(run.blocked_by, "H");
}

// Which way it faces is not told: the free sides are met at 36, 37 and, to the side, (23 1/2, 33) 36 1/2
// along and 2 across. The longest rules.
TEST(Cord, ToAnOutletOfUnknownFaceTheLongestRunRules) {
  TrailerText text = cord_trailer("80");
  text.fixtures[0] = outlet("outlet", "23", "33", "");
  EXPECT_EQ(run_of(text).length, 37_in + 18_in);
  text.fixtures.push_back(cabinet("box", "21", "0", "2", "76"));
  EXPECT_EQ(run_of(text).length,
            SquaredLength::of(Length::inches(73, 2)).plus_square_of(2_in).ceiling() + 18_in);
}

// On a counter 30 in high, outlet above it: 20 in over its top and 38 - 30 up. Not over its edge.
TEST(Cord, OverTheTopThatCarriesTheHeater) {
  TrailerText text = cord_trailer("80");
  text.fixtures = {
      cabinet("counter", "30", "20", "50", "30", "0", "30"),
      R"({"id": "outlet", "kind": "outlet", "length": 1, "width": 4, "at": {"front": 39, "left": 33},
                       "base": 34, "top": 38, "faces": "rear"})"};
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 30}})"};
  const CordRun run = run_of(text);
  EXPECT_EQ(run.length, 28_in);
  EXPECT_EQ(run.route.front().z, 30_in);
  TrailerText beyond = text;
  beyond.fixtures[1] = outlet("outlet", "23", "33", "rear");
  EXPECT_EQ(run_of(beyond).end, CordRun::End::shut_out);
  TrailerText behind = text;
  behind.fixtures.push_back(cabinet("jar", "45", "20", "2", "30", "30", "40"));
  EXPECT_EQ(run_of(behind).end, CordRun::End::no_way);
}

// Nothing carries it: the cord hangs down 20 in and then runs over the floor.
TEST(Cord, OfAHeaterThatHangsComesDownFirst) {
  TrailerText text = cord_trailer("80");
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 30}, "base": 20})"};
  EXPECT_EQ(run_of(text).length, 74_in);
  TrailerText other = leaving("rear");
  other.day = text.day;  // nothing to go round on the floor: 46 in
  EXPECT_EQ(run_of(other).length, 84_in);
}

// Design 2: chords lie at most 0.05 mm inside their arc; 0.1 mm for each is more than the way round gains.
TEST(Cord, ArcsCostATenthOfAMillimetreEach) {
  TrailerText text = cord_trailer("80");
  text.fixtures.push_back(R"({"id": "box", "kind": "cabinet", "length": 10, "width": 10, "top": 30,
      "at": {"front": 90, "left": 0}, "corners": {"front left": {"round": 2}, "rear left": {"round": 2}}})");
  EXPECT_EQ(run_of(text).length, 54_in + Length::millimetres(2, 10));
}

// Round the quarter circle of a cabinet: tangent, arc, tangent. Centre (44, 37), radius 10, the arc above it.
// In inches and plain doubles; the chords are shorter by less than what is added for them.
TEST(Cord, RoundACornerIsNotShorterThanTheTrueArc) {
  TrailerText text = cord_trailer("80");
  text.fixtures.push_back(R"({"id": "box", "kind": "cabinet", "length": 20, "width": 47, "top": 30,
      "at": {"front": 34, "left": 0}, "corners": {"rear right": {"round": 10}, "front right": {"round": 10}}})");
  const auto tangent = [](double dx, double dy) { return std::sqrt(dx * dx + dy * dy - 100); };
  const double pi = std::acos(-1.0);
  const auto part = [&](double dx, double dy) {  // the angle from the tangent's touching point up to the top
    return pi / 2 - (std::atan2(dy, dx) + std::acos(10 / std::sqrt(dx * dx + dy * dy)));
  };
  // The left corner of the box is centred at (44, 37) too: both arcs share their centre.
  const double way = tangent(16, -2) + 10 * part(16, -2) + 10 * part(20, -2) + tangent(20, -2);
  const double length = static_cast<double>(run_of(text).length.ticks()) / ticks_per_inch - 18;
  EXPECT_GE(length, way);
  EXPECT_LE(length, way + 0.3 / 25.4);
}

TrailerText random_floor(unsigned seed) {
  std::mt19937 random(seed);
  const auto draw = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(random); };
  const char* sides[] = {"front", "rear", "left", "right"};
  TrailerText text = leaving(sides[draw(0, 3)]);
  text.day = {R"({"piece": "H", "on": "floor", "at": {"front": )" + std::to_string(draw(0, 110)) +
              R"(, "left": )" + std::to_string(draw(0, 66)) + "}}"};
  text.fixtures = {R"({"id": "outlet", "kind": "outlet", "length": 2, "width": 2, "base": 14, "top": 18,
                       "at": {"front": )" +
                   std::to_string(draw(1, 117)) + R"(, "left": )" + std::to_string(draw(1, 73)) +
                   R"(}, "faces": ")" + sides[draw(0, 3)] + "\"}"};
  for (int i = 0; i < 9; ++i)
    text.fixtures.push_back(cabinet("box" + std::to_string(i), std::to_string(draw(0, 100)),
                                    std::to_string(draw(0, 60)), std::to_string(draw(4, 20)),
                                    std::to_string(draw(4, 30))));
  return text;
}

std::vector<Rect> boxes_on_the_floor(const Arrangement& arrangement) {
  std::vector<Rect> boxes;
  for (const Placed& thing : arrangement.things)
    if (thing.solid.base() < 4_in) boxes.push_back(thing.solid.outline().bounds());
  return boxes;
}

// The outlet is a box of 2 x 2 in.
Point foot_of(const Fixture& outlet) {
  const Rect face = outlet.solid.outline().bounds();
  switch (outlet.faces.value()) {
    case Wall::front:
      return {face.low.x, face.low.y + 1_in};
    case Wall::rear:
      return {face.high.x, face.low.y + 1_in};
    case Wall::left:
      return {face.low.x + 1_in, face.low.y};
    case Wall::right:
      return {face.low.x + 1_in, face.high.y};
  }
  throw std::logic_error("Wall out of range");
}

// Twin: a raster of squares of one inch.
TEST(Cord, AgreesWithTheRasterTwin) {
  int reached = 0;
  int not_reached = 0;
  int bent = 0;
  for (unsigned seed = 0; seed < 30; ++seed) {
    SCOPED_TRACE(seed);
    const Corded made(random_floor(seed));
    const Point foot = foot_of(*made.outlet);
    const CordRun run = made.run();
    const double slow =
        oracle::raster_way(boxes_on_the_floor(made.arrangement), {{}, {120_in, 76_in}}, made.exit.at(), foot);
    EXPECT_EQ(run.reached(), slow >= 0);
    if (!run.reached()) {
      ++not_reached;
      continue;
    }
    ++reached;
    bent += run.path.size() > 2 ? 1 : 0;
    const double length = static_cast<double>((run.length - 18_in).ticks()) / ticks_per_inch;
    EXPECT_LE(length, slow + oracle::raster_ends);
    EXPECT_GE(length, slow / 1.03 - oracle::raster_ends);
  }
  EXPECT_GT(reached, 10);
  EXPECT_GT(not_reached, 3);
  EXPECT_GT(bent, 5);
}

TEST(Cord, IsAsLongInTheMirrorAndElsewhereInTheList) {
  for (unsigned seed = 0; seed < 16; ++seed) {
    SCOPED_TRACE(seed);
    TrailerText text = random_floor(seed);
    const CordRun run = run_of(text);
    const CordRun mirrored = run_of(text.mirrored());
    EXPECT_EQ(mirrored.end, run.end);
    EXPECT_EQ(mirrored.length, run.length);
    std::ranges::reverse(text.fixtures);
    EXPECT_EQ(run_of(text).length, run.length);
  }
}

CordExit shifted(const CordExit& exit, Vector by) {
  return {{exit.body.low + by, exit.body.high + by}, exit.base, exit.side};
}

// Every place has a run that short; and a run shorter by the side of the heater and 1 in, from where nothing
// stands close, belongs to the places.
TEST(Cord, PlacesAreNeverTooManyAndNotManyTooFew) {
  int in = 0;
  int had_to_be_in = 0;
  for (unsigned seed = 0; seed < 10; ++seed) {
    SCOPED_TRACE(seed);
    const Corded made(random_floor(seed));
    const CordReach reach = made.reach();
    const Length cord = Length::inches(40 + 5 * static_cast<int>(seed % 8));
    const Region places = reach.places(cord, made.exit);
    const Region floor = cord_floor(made.plan, made.arrangement, "H", made.level);
    for (int x = 0; x < 110; x += 7)
      for (int y = 0; y < 66; y += 5) {
        const Vector by = Point{Length::inches(x), Length::inches(y)} - made.exit.body.low;
        const CordExit exit = shifted(made.exit, by);
        const bool belongs = !places.empty() && places.side_of(Point{} + by) != Side::outside;
        const Rect near = grown(exit.body, cord_room);
        if (!belongs && (meets(near, Rect{foot_of(*made.outlet), foot_of(*made.outlet)}) ||
                         !contains(floor, Region(near))))
          continue;
        const CordRun run = reach.from(exit);
        if (belongs) {
          EXPECT_TRUE(run.reached() && run.length <= cord) << x << ' ' << y;
          ++in;
        } else if (run.reached()) {
          EXPECT_GT(run.length, cord - 11_in) << x << ' ' << y;
        }
        had_to_be_in += run.reached() && run.length <= cord - 11_in ? 1 : 0;
      }
  }
  EXPECT_GT(in, 100);
  EXPECT_GT(had_to_be_in, 50);
}

// A three-cornered post right behind the heater, of which the cord comes out at (70, 35); the foot of the
// outlet is (40, 38). Over (72, 36.7) and (71, 36.8), round the post and back through the heater, it is 2.63
// + 1.00 + 31.02 = 34.65 in; straight through the heater 30.15; really, round it, 35.1. With 34.8 in for the
// floor it cannot stand there.
TEST(Cord, PlacesCountNoWayThatComesBackThroughTheHeater) {
  TrailerText text = leaving("rear");
  text.fixtures[0] = outlet("outlet", "39", "36", "rear");
  text.fixtures.push_back(R"({"id": "post", "kind": "cabinet", "top": 36,
                              "outline": [["71", "35.9"], ["72", "36.7"], ["71", "36.8"]]})");
  const Corded made(text);
  const Length round = 15_in + SquaredLength::of(20_in).plus_square_of(2_in).ceiling();
  EXPECT_EQ(made.run().length, 18_in + round);
  const Region places = made.reach().places(Length::inches(528, 10), made.exit);
  EXPECT_EQ(places.side_of(Point{}), Side::outside);
  EXPECT_NE(made.reach().places(60_in, made.exit).side_of(Point{}), Side::outside);
}

// In an empty room the cord of 54 in comes just as far as it does above, and not a tick farther; 0.13 % of 36
// in are lost.
TEST(Cord, PlacesInAnEmptyRoomEndWhereTheCordEnds) {
  const Corded made(cord_trailer("80"));
  const Region places = made.reach().places(54_in, made.exit);
  EXPECT_EQ(places.side_of({one_tick, {}}), Side::outside);
  EXPECT_NE(places.side_of({Length::from_ticks(-60'000), {}}), Side::outside);
  EXPECT_TRUE(made.reach().places(18_in, made.exit).empty());
}

}  // namespace
}  // namespace berthwright

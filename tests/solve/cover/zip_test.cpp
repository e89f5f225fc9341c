#include <berthwright/solve/cover/zip.h>

#include <gtest/gtest.h>

#include <random>

#include <berthwright/solve/open/road.h>

#include "oracle/edge_samples.h"
#include "support/convert_trailers.h"
#include "support/demos.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

using Kind = EdgeSight::Kind;

std::vector<SeenRoom> stood_of(const Plan& plan) {
  std::vector<SeenRoom> all;
  for (const Configuration& configuration : plan->configurations) {
    if (is_on_the_road(configuration)) continue;
    Result<Arrangement> arrangement = arranged(plan, configuration);
    if (!arrangement) return {};
    all.push_back({std::move(arrangement).value(), {}});
    all.back().seats = seats_of(plan, all.back().arrangement);
  }
  return all;
}

// The zip of one cushion of a plan.
struct Zipped {
  Zipped(const Plan& made, const std::string& id)
      : rim(rim_of(made.piece(id)->outline)), zip(zip_edge(made, stood_of(made), *made.piece(id), rim)) {}
  const RimEdge& edge() const { return rim.edges[zip.edge]; }
  int seen() const { return times_seen(zip.sights[zip.edge]); }
  const EdgeSight& sight(std::size_t configuration) const { return zip.sights[zip.edge][configuration]; }
  Rim rim;
  ZipEdge zip;
};

// The left seat of a dinette lies at the left wall and the rear wall by day and by night. Its left edge is 38
// in long, its rear one 22; by night its right edge meets the back, by day people sit there.
TEST(ZipEdge, OfASeatIsAtTheWall) {
  const Plan plan = dinette_with_cushions().plan();
  const Zipped seat(plan, "left seat");
  EXPECT_EQ(seat.edge().looks, Wall::left);
  EXPECT_EQ(seat.seen(), 0);
  EXPECT_EQ(seat.sight(0).by, std::vector<std::string>{"room"});
  EXPECT_FALSE(seat.zip.down);
  const EdgeSight& right_by_day = seat.zip.sights[2][0];
  EXPECT_EQ(seat.rim.edges[2].looks, Wall::right);
  EXPECT_EQ(right_by_day.kind, Kind::front);
  EXPECT_EQ(seat.zip.sights[2][1].kind, Kind::hidden);
  EXPECT_EQ(seat.zip.sights[2][1].by, std::vector<std::string>{"left back"});
}

// A back stands on its length by day and lies between seat and back by night: both long edges are hidden by
// night, and the one with the zip goes down by day.
TEST(ZipEdge, OfABackGoesDownByDay) {
  const Plan plan = dinette_with_cushions().plan();
  const Zipped back(plan, "left back");
  EXPECT_EQ(back.edge().length, 38_in);
  EXPECT_EQ(back.zip.down, back.edge().looks);
  EXPECT_EQ(back.seen(), 0);
  EXPECT_EQ(back.sight(0).by, std::vector<std::string>{"left seat"});
}

// A mat that hangs on edge by day, held by what the plan does not name: nothing hides its lower edge.
TEST(ZipEdge, OfWhatHangsIsNotHiddenByNothing) {
  TrailerText text = dinette_with_cushions();
  text.pieces.emplace_back(R"({"id": "mat", "kind": "cushion", "length": 20, "width": 60, "thickness": 3})");
  text.day.emplace_back(
      R"({"piece": "mat", "at": {"rear": 0, "left": 8}, "base": 50, "stands_on": "width", "faces": "front"})");
  text.night.emplace_back(R"({"piece": "mat", "at": {"front": 30, "left": 8}, "on": "floor"})");
  const Plan plan = text.plan();
  const Zipped mat(plan, "mat");
  for (const std::vector<EdgeSight>& edge : mat.zip.sights)
    for (const EdgeSight& sight : edge) EXPECT_FALSE(sight.kind == Kind::hidden && sight.by.empty());
}

// Dunnock's rear seat: the notch over the wheel well, the rounded corner, and 29 in toward the wardrobe,
// which stands 1 in behind and covers 23 of them (79 %).
TEST(ZipEdge, LiesWhereAWardrobeCoversMostOfIt) {
  const Plan plan = plan_from(demo_text("dunnock"));
  const Zipped seat(plan, "D");
  EXPECT_EQ(seat.edge().looks, Wall::rear);
  EXPECT_EQ(seat.edge().length, 29_in);
  EXPECT_EQ(seat.sight(0).covered, Portion{23'000 / 29});
  EXPECT_EQ(seat.sight(0).by, std::vector<std::string>{"wardrobe"});
}

// A cushion in the middle of the floor: seen all round, so the longest edge.
TEST(ZipEdge, IsTheLongestWhereAllAreSeen) {
  TrailerText text;
  text.pieces = {R"({"id": "c", "kind": "cushion", "length": 20, "width": 30, "thickness": 4})"};
  text.day = text.night = {R"({"piece": "c", "at": {"front": 40, "left": 20}})"};
  const Plan plan = text.plan();
  const Zipped alone(plan, "c");
  EXPECT_EQ(alone.edge().length, 30_in);
  EXPECT_EQ(alone.seen(), 2);
}

// What covers less than half of its height hides nothing; what stands more than 1 in away neither.
TEST(ZipEdge, IsHiddenByWhatIsNearAndHighEnough) {
  const auto seen = [](const std::string& top, const std::string& gap) {
    TrailerText text;
    text.fixtures = {
        R"({"id": "box", "kind": "cabinet", "length": 20, "width": 30, "at": {"front": 20, "left": 20}, "top": ")" +
        top + "\"}"};
    text.pieces = {R"({"id": "c", "kind": "cushion", "length": 20, "width": 30, "thickness": 4})"};
    text.day = text.night = {R"({"piece": "c", "at": {"behind": ["box", ")" + gap + R"("], "left": 20}})"};
    const Plan plan = text.plan();
    return Zipped(plan, "c").seen();
  };
  EXPECT_EQ(seen("2", "0"), 0);
  EXPECT_EQ(seen("1 31/32", "0"), 2);
  EXPECT_EQ(seen("2", "1"), 0);
  EXPECT_EQ(seen("2", "1 1/64"), 2);
}

std::string sized(const char* format, int a, int b, int c, int d, int e) {
  char text[300];
  std::snprintf(text, sizeof text, format, a, b, c, d, e);
  return text;
}

// Boxes and two cushions, one of which lies turned or flipped or stands on edge.
TrailerText random_room(std::mt19937_64& random, int turn) {
  const auto pick = [&](int least, int most) { return std::uniform_int_distribution(least, most)(random); };
  TrailerText text;
  for (int i = 0; i < 5; ++i)
    text.fixtures.push_back(
        R"({"id": "f)" + std::to_string(i) +
        sized(
            R"(", "kind": "cabinet", "length": %d, "width": %d, "at": {"front": %d, "left": %d}, "top": %d})",
            pick(8, 40), pick(8, 30), pick(0, 60), pick(0, 40), pick(1, 8)));
  text.pieces = {
      R"({"id": "c", "kind": "cushion", "length": 24, "width": 16, "thickness": 4, "corners": {"rear left": {"notch": [6, 5]}}})",
      R"({"id": "d", "kind": "cushion", "length": 30, "width": 20, "thickness": 5})"};
  const char* walls[] = {"front", "rear", "left", "right"};
  for (std::vector<std::string>* poses : {&text.day, &text.night}) {
    for (const char* id : {"c", "d"}) {
      std::string pose = R"({"piece": ")" + std::string(id) +
                         sized(R"(", "at": {"front": %d, "left": %d}, "base": %d)", pick(0, 80), pick(0, 45),
                               pick(0, 4), 0, 0);
      switch (pick(0, 3)) {
        case 0:
          pose += R"(, "stands_on": "length", "faces": ")" + std::string(walls[pick(0, 3)]) + "\"";
          break;
        case 1:
          pose += R"(, "flipped": true, "turn": )" + std::to_string(turn * pick(0, 3));
          break;
        default:
          pose += R"(, "turn": )" + std::to_string(turn * pick(0, 3));
      }
      poses->push_back(pose + "}");
    }
  }
  return text;
}

// Whether the floor, or what was laid before it, ends at its lower edge beneath it: tried at the middle of
// every square inch, all sides being whole inches.
bool stands_on_something(const Arrangement& arrangement, const Placed& self) {
  if (self.solid.base() == Length{}) return true;
  const Rect box = self.solid.outline().bounds();
  for (const Placed& thing : arrangement.things) {
    if (&thing == &self) break;
    if (thing.solid.top() != self.solid.base()) continue;
    for (Length x = box.low.x + Length::inches(1, 2); x < box.high.x; x += 1_in)
      for (Length y = box.low.y + Length::inches(1, 2); y < box.high.y; y += 1_in)
        if (thing.solid.outline().side_of({x, y}) == Side::inside) return true;
  }
  return false;
}

// The twin's opinion of an edge in one configuration; nothing where samples cannot tell.
std::optional<Kind> sampled(const Plan& plan, const SeenRoom& stood, const Piece& piece, const RimEdge& edge,
                            Wall down) {
  const Placed* self = stood.arrangement.find(piece.id.text());
  if (self == nullptr) return Kind::stowed;
  const bool flat = self->pose->manner == Pose::Manner::flat;
  if (!flat && !edge.on_box) return Kind::seen;
  const oracle::SampledEdge told = oracle::sampled_edge(plan, stood.arrangement, *self, edge, down);
  if (!told.upright && !told.looks_down) return Kind::front;
  if (!told.upright) return stands_on_something(stood.arrangement, *self) ? Kind::hidden : Kind::seen;
  if (std::abs(told.covered - 0.75) < 0.02) return std::nullopt;
  return told.covered > 0.75 ? Kind::hidden : Kind::seen;
}

TEST(ZipEdge, AgreesWithATwinThatTriesPoints) {
  std::mt19937_64 random(20261128);
  int hidden = 0, edges = 0, on_edge = 0;
  for (int i = 0; i < 60; ++i) {
    const Plan plan = random_room(random, 90).plan();
    std::vector<SeenRoom> stood = stood_of(plan);
    for (SeenRoom& one : stood) one.seats.clear();  // fronts of seats have tests of their own
    for (const Piece& piece : plan->pieces) {
      const Rim rim = rim_of(piece.outline);
      bool stands = false;
      for (const SeenRoom& one : stood) {
        const Placed* self = one.arrangement.find(piece.id.text());
        stands = stands || (self && self->pose->manner != Pose::Manner::flat);
      }
      on_edge += stands ? 1 : 0;
      // By hand: the least (front, seen, -length, edge) of both sides down, left first.
      bool sure = true, found = false, best_front = false;
      int best_seen = 0;
      std::size_t best_edge = 0;
      for (const Wall down : {Wall::left, Wall::right}) {
        if (!stands && down == Wall::right) continue;
        const auto sights = edge_sights(plan, stood, piece, rim, down == Wall::left);
        for (std::size_t e = 0; e < rim.edges.size(); ++e) {
          bool front = false;
          int seen = 0;
          for (std::size_t c = 0; c < stood.size(); ++c) {
            const std::optional<Kind> kind = sampled(plan, stood[c], piece, rim.edges[e], down);
            if (!kind) {
              sure = false;
              continue;
            }
            ++edges;
            hidden += *kind == Kind::hidden ? 1 : 0;
            EXPECT_EQ(sights[e][c].kind, *kind) << i << ' ' << piece.id.text() << ' ' << e << ' ' << c;
            front = front || *kind == Kind::front;
            seen += *kind == Kind::front || *kind == Kind::seen ? 1 : 0;
          }
          if (2 * rim.edges[e].length < std::min(piece.length, piece.width)) continue;
          const bool better =
              !found || (front != best_front ? best_front
                         : seen != best_seen ? seen < best_seen
                                             : rim.edges[e].length > rim.edges[best_edge].length);
          if (!better) continue;
          found = true;
          best_front = front;
          best_seen = seen;
          best_edge = e;
        }
      }
      if (!sure) continue;
      const ZipEdge zip = zip_edge(plan, stood, piece, rim);
      EXPECT_EQ(times_seen(zip.sights[zip.edge]), best_seen) << i;
      EXPECT_EQ(is_front(zip.sights[zip.edge]), best_front) << i;
      EXPECT_EQ(rim.edges[zip.edge].length, rim.edges[best_edge].length) << i;
      if (stands) {
        EXPECT_TRUE(zip.down == Wall::left || zip.down == Wall::right);
      } else {
        EXPECT_FALSE(zip.down);
      }
    }
  }
  EXPECT_GT(edges, 500);
  EXPECT_GT(hidden, 60);
  EXPECT_GT(on_edge, 20);
}

// The plan may ask for a side, though people look at it or though it is short; a side that is nowhere
// straight is no side.
TEST(ZipEdge, IsWhereThePlanAsksForIt) {
  const Plan plan = dinette_with_cushions().plan();
  const Piece& seat = *plan.piece("left seat");
  const Rim rim = rim_of(seat.outline);
  for (const Wall side : {Wall::front, Wall::rear, Wall::left, Wall::right})
    EXPECT_EQ(rim.edges[zip_edge(plan, {}, seat, rim, side).edge].looks, side);
  Piece tip = seat;
  tip.outline = Outline::free({{0_in, 0_in}, {38_in, 11_in}, {0_in, 22_in}}).value();
  const Rim of_tip = rim_of(tip.outline);
  EXPECT_EQ(zip_edge(plan, {}, tip, of_tip, Wall::rear).edge, zip_edge(plan, {}, tip, of_tip).edge);
}

// Left and right exchanged, or the order of what is listed: the same edges, seen as often.
TEST(ZipEdge, IsTheSameInTheMirrorAndReordered) {
  std::mt19937_64 random(3);
  for (int i = 0; i < 40; ++i) {
    const TrailerText text = random_room(random, 180);  // a quarter turn is another one in the mirror
    const Plan plan = text.plan();
    const Plan mirrored = text.mirrored().plan();
    TrailerText reordered = text;
    std::ranges::reverse(reordered.fixtures);
    std::ranges::reverse(reordered.pieces);
    const Plan other = reordered.plan();
    for (const char* id : {"c", "d"}) {
      const Zipped as_drawn(plan, id), in_mirror(mirrored, id), turned_round(other, id);
      EXPECT_EQ(as_drawn.seen(), in_mirror.seen()) << i << id;
      EXPECT_EQ(as_drawn.edge().length, in_mirror.edge().length) << i << id;
      EXPECT_EQ(as_drawn.zip.edge, turned_round.zip.edge) << i << id;
      EXPECT_EQ(as_drawn.seen(), turned_round.seen()) << i << id;
    }
  }
}

}  // namespace
}  // namespace berthwright

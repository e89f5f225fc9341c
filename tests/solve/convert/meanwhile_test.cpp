#include "solve/convert/meanwhile.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

#include "oracle/grid_way.h"
#include "support/convert_trailers.h"
#include "support/demos.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

constexpr double inch = ticks_per_inch;

std::vector<Conversion> ways_of(const Plan& plan) {
  Result<std::vector<Conversion>> found = conversions(plan);
  return std::move(found).value();
}

std::vector<Meanwhile> told_of(const Conversion& conversion, std::string_view rule) {
  std::vector<Meanwhile> told;
  for (const Meanwhile& one : conversion.meanwhile)
    if (one.finding.rule.text() == rule) told.push_back(one);
  return told;
}

// The dinette with a counter before the left bench, 40 x 24 in from 40 in on, and before that a heater that
// is built in: 10 x 10 in, 20 high, looking to the rear.
TrailerText heated_dinette(const std::string& plate = R"("front": 34, "back": 0, "sides": 4, "top": 12)") {
  TrailerText text = dinette_with_cushions();
  text.fixtures.push_back(
      R"({"id": "counter", "kind": "counter", "length": 40, "width": 24, "at": {"rear": 40, "left": 0},
          "top": 30})");
  text.fixtures.push_back(
      R"({"id": "heater", "kind": "heater", "length": 10, "width": 10, "at": {"rear": 90, "left": 0},
          "base": 0, "top": 20, "faces": "rear")" +
      (plate.empty() ? "" : R"(, "data_plate": {)" + plate + "}") + "}");
  return text;
}

// The left seat is put aside on the floor beside the counter, from 60 in along and 24 in across; the heater
// ends at 30 and at 10: sqrt(30 x 30 + 14 x 14) = sqrt(1096) = 33.11 in, while on its bench, from 82 in, it
// is 52 in away at both ends. Asked are 36, and over the edge of front and side the larger of 34 and 4.
TEST(Meanwhile, ACushionIsPutAsideBeforeTheHeater) {
  const Plan plan = heated_dinette().plan();
  for (const Conversion& way : ways_of(plan)) {
    ASSERT_EQ(way.verdict, Conversion::Verdict::order);
    const auto laid = std::ranges::find_if(way.steps, [](const Step& s) {
      return s.piece.text() == "left seat" && s.to.kind == PiecePlace::Kind::parked;
    });
    ASSERT_NE(laid, way.steps.end());
    ASSERT_EQ(laid->to.carried_by, std::vector<std::string>{"floor"});
    ASSERT_EQ(laid->to.solid().outline().bounds().low, (Point{60_in, 24_in}));
    const auto taken =
        std::find_if(laid + 1, way.steps.end(), [](const Step& s) { return s.piece.text() == "left seat"; });
    const std::vector<Meanwhile> near = told_of(way, "heat.three-feet");
    ASSERT_EQ(near.size(), 1U);
    EXPECT_EQ(near[0].from, static_cast<std::size_t>(laid - way.steps.begin()) + 1);
    EXPECT_EQ(near[0].until, static_cast<std::size_t>(taken - way.steps.begin()) + 1);
    EXPECT_EQ(near[0].finding.subjects, (std::vector<std::string>{"heater", "left seat"}));
    EXPECT_EQ(std::get<Length>(*near[0].finding.measured),
              SquaredLength::of(30_in).plus_square_of(14_in).floor());
    EXPECT_EQ(near[0].finding.compared, Quantity(36_in));
    EXPECT_EQ(near[0].at_start, Quantity(52_in));
    EXPECT_EQ(near[0].at_end, Quantity(52_in));
    const std::vector<Meanwhile> plate = told_of(way, "heat.data-plate");
    ASSERT_EQ(plate.size(), 1U);
    EXPECT_EQ(plate[0].finding.compared, Quantity(34_in));
    EXPECT_EQ(plate[0].finding.status, Status::not_met);
  }
}

// Of the plan's own figures 33 in are kept, 34 are not.
TEST(Meanwhile, TheLimitIsTheRulesOrThePlansOwn) {
  for (const auto& [own, count] : {std::pair("33", 0U), std::pair("34", 1U)}) {
    TrailerText text = heated_dinette();
    text.rules = {R"("heat.three-feet": {"limit": )" + std::string(own) + R"(, "reason": "a test"})"};
    const Plan plan = text.plan();
    EXPECT_EQ(told_of(ways_of(plan)[0], "heat.three-feet").size(), count) << own;
  }
}

// A cooktop has no published figure: with a plate that is kept nothing is told, without one it is unknown.
TEST(Meanwhile, WhatIsNoHeaterIsMeasuredByItsPlateAlone) {
  for (const auto& [plate, count] :
       {std::pair(R"("front": 10, "back": 0, "sides": 4, "top": 12)", 0U), std::pair("", 1U)}) {
    TrailerText text = heated_dinette(plate);
    std::string& cooktop = text.fixtures.back();
    cooktop.replace(cooktop.find(R"("kind": "heater")"), 16, R"("kind": "cooktop")");
    const Plan plan = text.plan();
    const Conversion way = ways_of(plan)[0];
    EXPECT_TRUE(told_of(way, "heat.three-feet").empty());
    const std::vector<Meanwhile> told = told_of(way, "heat.data-plate");
    ASSERT_EQ(told.size(), count);
    for (const Meanwhile& one : told) EXPECT_EQ(one.finding.status, Status::unknown);
  }
}

// What is as near at one of the ends is told by `check`, and not again here.
TEST(Meanwhile, WhatIsNoWorseThanAtAnEndIsNotTold) {
  TrailerText text = heated_dinette();
  text.fixtures.back().replace(text.fixtures.back().find(R"("rear": 90)"), 10, R"("rear": 38)");
  text.fixtures.back().replace(text.fixtures.back().find(R"("left": 0)"), 9, R"("left": 24)");
  const Plan plan = text.plan();
  for (const Conversion& way : ways_of(plan))
    for (const Meanwhile& one : told_of(way, "heat.three-feet"))
      EXPECT_TRUE(one.finding.measured != one.at_start && one.finding.measured != one.at_end);
}

/// The dinette in three steps (table aside, leg into the bench, table down), its aisle narrow: between a
/// galley (to y = 14 in) and a wardrobe (from y = 40) 26 in are left, as wide as the door ahead of them.
TrailerText with_an_aisle() {
  TrailerText text = dinette();
  text.openings[0].replace(text.openings[0].find(R"("from_front": 40)"), 16, R"("from_front": 10)");
  text.fixtures.push_back(
      R"({"id": "galley", "kind": "cabinet", "length": 30, "width": 14, "at": {"front": 30, "left": 0},
          "top": 36})");
  text.fixtures.push_back(
      R"({"id": "wardrobe", "kind": "cabinet", "length": 10, "width": 36, "at": {"front": 40, "right": 0},
          "top": 70})");
  return text;
}

/// The first step of the conversion, and what stands there instead of where its piece was put aside.
Conversion put_aside_at(const Plan& plan, const Rect& place, Length base, Length height) {
  Conversion way = ways_of(plan)[0];
  PiecePlace& aside = way.steps[0].to;
  aside.kind = PiecePlace::Kind::parked;
  aside.pose.outline = Region(place);
  aside.pose.arcs.clear();
  aside.pose.height = height;
  aside.base = base;
  way.steps[1].from = way.steps[0].to;
  const Rect standing{{60_in, 28_in}, {80_in, 48_in}};
  for (Step& step : way.steps) {
    step.taking = StandingPlace{standing, Length{}};
    step.letting_go = step.taking;
  }
  way.meanwhile = found_meanwhile(plan, way);
  return way;
}

Rect box_in(std::array<int, 4> inches) {
  const auto at = [](int x, int y) { return Point{Length::inches(x), Length::inches(y)}; };
  return {at(inches[0], inches[1]), at(inches[2], inches[3])};
}

// What is put aside takes the middle of the aisle from 26 to 28 in, 27 high: 26 - 14 = 12 in are left on one
// side and 40 - 28 = 12 on the other, of 18 asked; it goes until the table is taken up again in step 3.
TEST(Meanwhile, AWayOutIsNarrowed) {
  const Plan plan = with_an_aisle().plan();
  const Conversion way = put_aside_at(plan, box_in({44, 26, 46, 28}), Length{}, 27_in);
  ASSERT_EQ(way.steps.size(), 3U);
  const std::vector<Meanwhile> told = told_of(way, "way.aisle");
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0].from, 1U);
  EXPECT_EQ(told[0].until, 3U);
  EXPECT_EQ(told[0].finding.measured, Quantity(12_in));
  EXPECT_EQ(told[0].finding.compared, Quantity(18_in));
  EXPECT_EQ(told[0].at_start, Quantity(26_in));
  EXPECT_EQ(told[0].at_end, Quantity(26_in));
  // 19 in beside it are enough: 14 + 19 = 33.
  EXPECT_TRUE(told_of(put_aside_at(plan, box_in({44, 33, 46, 40}), Length{}, 27_in), "way.aisle").empty());
  // So is what one steps over, at most 4 in high.
  EXPECT_TRUE(told_of(put_aside_at(plan, box_in({44, 26, 46, 28}), Length{}, 4_in), "way.aisle").empty());
}

TEST(Meanwhile, AWayOutIsClosed) {
  const Plan plan = with_an_aisle().plan();
  const Conversion way = put_aside_at(plan, box_in({44, 14, 46, 40}), Length{}, 27_in);
  const std::vector<Meanwhile> told = told_of(way, "way.aisle");
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0].finding.variant, "no way");
  EXPECT_EQ(told[0].finding.measured, Quantity(0_in));
  EXPECT_EQ(told[0].finding.subjects, std::vector<std::string>{"door"});
}

// A window of 30 x 20 in over the galley from 35 in on, its sill at 40: what stands before it up to 45 in
// along and 70 high leaves 65 - 45 = 20 in of the 24 asked, at the full 20 of height.
TEST(Meanwhile, AnOpeningIsCovered) {
  TrailerText text = with_an_aisle();
  text.openings.push_back(
      R"({"id": "window", "kind": "window", "wall": "left", "from_front": 35, "width": 30, "height": 20,
          "sill": 40, "opens": "out", "escape": true})");
  const Plan plan = text.plan();
  const std::vector<Meanwhile> told =
      told_of(put_aside_at(plan, box_in({35, 0, 45, 10}), 36_in, 34_in), "way.opening");
  ASSERT_EQ(told.size(), 1U);
  EXPECT_EQ(told[0].finding.measured, Quantity(Sides{20_in, 20_in}));
  EXPECT_EQ(told[0].at_start, Quantity(Sides{30_in, 20_in}));
  EXPECT_EQ(told[0].finding.margin, -4_in);
  EXPECT_EQ(told[0].finding.subjects, (std::vector<std::string>{"window", "table"}));
  // 6 in less at one side leave 24.
  EXPECT_TRUE(told_of(put_aside_at(plan, box_in({35, 0, 41, 10}), 36_in, 34_in), "way.opening").empty());
}

// A door that opens inward sweeps 26 in about one of its posts.
TEST(Meanwhile, WhatOpensInwardMeetsSomething) {
  TrailerText text = with_an_aisle();
  text.openings[0].replace(text.openings[0].find(R"("opens": "out")"), 14,
                           R"("opens": "in", "hinge": "front")");
  const Plan plan = text.plan();
  const auto count = [&](int y) {
    return told_of(put_aside_at(plan, box_in({12, y - 2, 14, y}), Length{}, 27_in), "way.swing").size();
  };
  EXPECT_EQ(count(76), 1U);
  EXPECT_EQ(count(50), 0U);  // 76 - 26
}

struct PlainBox {
  std::array<double, 3> low, high;
};
PlainBox plain_box(const Placed& thing) {
  const Rect plan = thing.solid.outline().bounds();
  const auto in = [](Length length) { return static_cast<double>(length.ticks()) / inch; };
  return {{in(plan.low.x), in(plan.low.y), in(thing.solid.base())},
          {in(plan.high.x), in(plan.high.y), in(thing.solid.top())}};
}

// Every point of a grid of 1/4 in on the faces of one box, and the point of the other box nearest to it.
double sampled_distance(const PlainBox& a, const PlainBox& b) {
  double least = 1e9;
  constexpr int parts = 40;
  for (std::size_t axis = 0; axis < 3; ++axis)
    for (const auto* side : {&a.low, &a.high})
      for (int i = 0; i <= parts; ++i)
        for (int k = 0; k <= parts; ++k) {
          std::array<double, 3> p{};
          const std::size_t u = (axis + 1) % 3, v = (axis + 2) % 3;
          p[axis] = (*side)[axis];
          p[u] = a.low[u] + (a.high[u] - a.low[u]) * i / parts;
          p[v] = a.low[v] + (a.high[v] - a.low[v]) * k / parts;
          double squared = 0;
          for (std::size_t n = 0; n < 3; ++n) {
            const double gap = std::max({0.0, b.low[n] - p[n], p[n] - b.high[n]});
            squared += gap * gap;
          }
          least = std::min(least, std::sqrt(squared));
        }
  return least;
}

// Slow twin: stage by stage, thing by thing, boxes sampled. Every rectangular thing within 3 ft of a heater
// at a stage, and more than 1/8 in nearer than at each end, is told of just those steps; nothing else is.
void expect_heat_of_twin(const Plan& plan, const Conversion& way, int& told) {
  const std::size_t last = way.steps.size();
  for (const Fixture& fixture : plan->fixtures) {
    if (fixture.kind != Fixture::Kind::heater) continue;
    std::set<std::size_t> expected;
    std::set<std::string> near;
    const auto distance_of = [&](const std::string& id, std::size_t stage) {
      const Arrangement stood = stage_after(plan, way, stage);
      const Placed* thing = stood.find(id);
      return thing ? sampled_distance(plain_box(*stood.find(fixture.id.text())), plain_box(*thing)) : 1e9;
    };
    for (const Piece& piece : plan->pieces) {
      if (!piece.is_soft()) continue;
      const double ends = std::min(distance_of(piece.id.text(), 0), distance_of(piece.id.text(), last));
      for (std::size_t stage = 1; stage < last; ++stage) {
        const double now = distance_of(piece.id.text(), stage);
        if (now >= 36 || now >= ends - 0.125) continue;
        expected.insert(stage);
        near.insert(piece.id.text());
      }
    }
    std::set<std::size_t> found;
    std::set<std::string> named;
    for (const Meanwhile& one : told_of(way, "heat.three-feet")) {
      if (one.finding.subjects[0] != fixture.id.text()) continue;
      ++told;
      for (std::size_t stage = one.from; stage < one.until; ++stage) found.insert(stage);
      named.insert(one.finding.subjects.begin() + 1, one.finding.subjects.end());
      EXPECT_NEAR(static_cast<double>(std::get<Length>(*one.finding.measured).ticks()) / inch,
                  distance_of(one.finding.subjects[1], one.worst), 0.25);
    }
    EXPECT_EQ(found, expected);
    EXPECT_EQ(named, near);
  }
}

TEST(Meanwhile, AgreesWithTheSampledTwinOnHeat) {
  int told = 0;
  std::vector<Plan> plans{heated_dinette().plan(), plan_from(demo_text("dunnock"))};
  for (const std::string rear : {"60", "81", "105"}) {
    TrailerText text = heated_dinette();
    std::string& heater = text.fixtures.back();
    heater.replace(heater.find(R"("rear": 90, "left": 0)"), 21, R"("rear": )" + rear + R"(, "left": 34)");
    plans.push_back(text.plan());
  }
  for (const Plan& plan : plans)
    for (const Conversion& way : ways_of(plan)) expect_heat_of_twin(plan, way, told);
  EXPECT_GE(told, 6);
}

// Slow twin: a grid of 1/2 in flooded from its widest places down, each cell knowing how far the nearest box,
// wall or the person's middle is.
TEST(Meanwhile, AgreesWithTheFloodedTwinOnWays) {
  const Plan plan = with_an_aisle().plan();
  int narrowed = 0;
  for (const auto& [x, y, size] : {std::array{44, 26, 2},
                                   {41, 20, 9},
                                   {30, 24, 6},
                                   {47, 18, 12},
                                   {20, 60, 14},
                                   {12, 64, 10},
                                   {42, 30, 10},
                                   {36, 15, 8}}) {
    SCOPED_TRACE(std::to_string(x) + ", " + std::to_string(y) + ", " + std::to_string(size));
    const Conversion way = put_aside_at(plan, box_in({x, y, x + size, y + size}), Length{}, 27_in);
    std::vector<PlainBox> boxes;
    for (const Placed& thing : stage_after(plan, way, 1).things)
      if (thing.solid.base() < 72_in && thing.solid.top() > 4_in) boxes.push_back(plain_box(thing));
    constexpr double step = 0.5;
    constexpr std::size_t columns = 240, rows = 160;  // of 120 x 80 in: 4 in beyond the door
    std::vector<oracle::FloodCell> cells(columns * rows);
    for (std::size_t i = 0; i < columns; ++i)
      for (std::size_t k = 0; k < rows; ++k) {
        const double px = (static_cast<double>(i) + 0.5) * step, py = (static_cast<double>(k) + 0.5) * step;
        const auto from_box = [&](double x0, double y0, double x1, double y1) {
          return std::hypot(std::max({0.0, x0 - px, px - x1}), std::max({0.0, y0 - py, py - y1}));
        };
        double clear = std::min({px, py, 120 - px});
        clear = std::min({clear, from_box(0, 76, 10, 300), from_box(36, 76, 120, 300)});
        for (const PlainBox& box : boxes)
          clear = std::min(clear, from_box(box.low[0], box.low[1], box.high[0], box.high[1]));
        const double middle = from_box(70, 38, 70, 38);
        cells[i * rows + k] = {std::min(clear, middle), middle <= clear + 0.71 * step,
                               py > 76 && px > 10 && px < 36};
      }
    const double twin = 2 * oracle::flooded(cells, rows);
    const std::vector<Meanwhile> told = told_of(way, "way.aisle");
    if (twin < 18 - 3 * step) {
      ASSERT_EQ(told.size(), 1U) << twin;
      ++narrowed;
      EXPECT_NEAR(static_cast<double>(std::get<Length>(*told[0].finding.measured).ticks()) / inch,
                  std::max(twin, 0.0), 3 * step);
    } else if (twin > 18 + 3 * step) {
      EXPECT_TRUE(told.empty()) << twin;
    }
  }
  EXPECT_GE(narrowed, 3);
}

// The same rules and figures of the mirrored, the shifted and the reordered trailer; which of equally short
// orders is found, and so how long they hold, may differ.
TEST(Meanwhile, DoesNotDependOnMirrorShiftOrOrder) {
  const auto figures = [](const TrailerText& text) {
    std::multiset<std::pair<std::string, std::int64_t>> all;
    const Plan plan = text.plan();
    for (const Conversion& way : ways_of(plan))
      for (const Meanwhile& one : way.meanwhile)
        all.emplace(one.finding.rule.text(), std::get<Length>(*one.finding.measured).ticks());
    return all;
  };
  const TrailerText text = heated_dinette();
  const auto expected = figures(text);
  EXPECT_GE(expected.size(), 4U);
  EXPECT_EQ(figures(text.mirrored()), expected);
  TrailerText shifted = text;
  shifted.interior = R"({"length": 127, "width": 76, "height": 76})";
  shifted.openings[0].replace(shifted.openings[0].find(R"("from_front": 40)"), 16, R"("from_front": 47)");
  EXPECT_EQ(figures(shifted), expected);
  TrailerText reordered = text;
  std::ranges::reverse(reordered.pieces);
  std::ranges::reverse(reordered.fixtures);
  EXPECT_EQ(figures(reordered), expected);
}

// The way back passes the same stages in the other order.
TEST(Meanwhile, OfTheWayBackIsTheSameTurnedRound) {
  const Plan plan = plan_from(demo_text("dunnock"));
  const std::vector<Conversion> ways = ways_of(plan);
  ASSERT_FALSE(ways[0].meanwhile.empty());
  const std::vector<Meanwhile> back = found_meanwhile(plan, ways[1]);
  ASSERT_EQ(back.size(), ways[1].meanwhile.size());
  for (const Meanwhile& one : ways[1].meanwhile) {
    const auto same = std::ranges::find_if(back, [&](const Meanwhile& other) {
      return other.finding.rule == one.finding.rule && other.from == one.from && other.until == one.until;
    });
    ASSERT_NE(same, back.end());
    EXPECT_EQ(same->finding.measured, one.finding.measured);
    EXPECT_EQ(same->at_start, one.at_start);
  }
}

}  // namespace
}  // namespace berthwright

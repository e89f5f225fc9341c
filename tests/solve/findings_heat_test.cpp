#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include <berthwright/view/words.h>

#include "oracle/geos.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

std::string standing(const std::string& id, const std::string& kind, int front, int left, int base, int top,
                     const std::string& more = "", int length = 10, int width = 10) {
  const auto number = [](int n) { return std::to_string(n); };
  return R"({"id": ")" + id + R"(", "kind": ")" + kind + R"(", "length": )" + number(length) +
         R"(, "width": )" + number(width) + R"(, "at": {"front": )" + number(front) + R"(, "left": )" +
         number(left) + R"(}, "base": )" + number(base) + R"(, "top": )" + number(top) + more + "}";
}

// A heater of 10 in each way in the middle of a large room, looking to the rear, with a whole plate but for
// what is left out; a cushion 4 in thick, of 20 x 20 in or of the size given.
TrailerText plated(const std::string& plate, const std::string& x, const std::string& y,
                   const std::string& base, const std::string& size = "20") {
  TrailerText text;
  text.interior = R"({"length": 200, "width": 140, "height": 90})";
  text.pieces = {
      R"({"id": "H", "name": "Heater", "kind": "heater", "length": 10, "width": 10, "height": 10,
                     "faces": "rear", "data_plate": {)" +
          plate + "}}",
      R"({"id": "C", "name": "Cushion", "kind": "cushion", "length": )" + size + R"(, "width": )" + size +
          R"(, "thickness": 4})"};
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 60}, "base": 30})",
              R"({"piece": "C", "at": {"front": ")" + x + R"(", "left": ")" + y + R"("}, "base": ")" + base +
                  R"("})"};
  return text;
}
const std::string whole = R"("front": 36, "back": 5, "sides": 12, "top": 24)";

std::string told(const Answered& made, const std::string& rule) {
  return sentence(made.plan, made.one(rule));
}
void expect_part(const std::string& text, const std::string& part) {
  EXPECT_NE(text.find(part), std::string::npos) << '"' << part << "\" is not in: " << text;
}

TEST(HeatFindings, ThePlateNamesTheFaceTheEdgeOrTheCorner) {
  // A cushion of 6 x 6 in, less than a face: the heater fills 60 to 70 in both ways, 30 to 40 in up.
  const auto at = [](const char* x, const char* y, const char* base) {
    return told(Answered(plated(whole, x, y, base, "6")), "heat.data-plate");
  };
  expect_part(at("75", "62", "33"),
              "5\" (127 mm) from Heater, before its front, where its maker asks at least 3' 0\"");
  expect_part(at("50", "62", "33"),
              "4\" (101.6 mm) from Heater, before its back, where its maker asks at least 5\"");
  expect_part(at("62", "75", "33"),
              "before its side toward the right wall, where its maker asks at least 1' 0\"");
  expect_part(at("62", "50", "33"), "before its side toward the left wall, ");
  expect_part(at("62", "62", "45"), "before its top, where its maker asks at least 2' 0\"");
  expect_part(at("62", "62", "20"), "before its underside, ");
  expect_part(at("75", "75", "33"), "before the edge of its front and its side toward the right wall, ");
  expect_part(at("75", "75", "44"),
              "before the corner of its front, its side toward the right wall and its top, ");
  expect_part(at("62", "62", "33"), "within it, ");
  // One of 20 in reaches beyond the back, 5 in behind: its edge asks the 12 in of the side, and so rules.
  expect_part(told(Answered(plated(whole, "36", "63", "33")), "heat.data-plate"),
              "before the edge of its back and its side toward the right wall, ");
}

TEST(HeatFindings, ThePlateNamesTheFacesItDoesNotGive) {
  const Answered made(plated(R"("front": 36, "back": 5)", "62", "75", "44", "6"));
  expect_part(told(made, "heat.data-plate"),
              "before its side toward the right wall and its top, and the plan does not");
  expect_part(told(made, "heat.data-plate-missing"),
              "(not those of its side toward the right wall and its top)");
  EXPECT_EQ(made.one("heat.data-plate").status, Status::unknown);
}

// Five sources: each has a finding of its own, heaters the published 3 ft as an alert, all others as a
// yardstick.
TEST(HeatFindings, EverySourceOfAConfigurationIsTold) {
  TrailerText text = plated(whole, "150", "100", "0");
  const std::string plate = R"(, "data_plate": {"front": 6, "back": 6, "sides": 6, "top": 6})";
  text.fixtures = {standing("furnace", "furnace outlet", 0, 0, 0, 8, R"(, "faces": "rear")" + plate),
                   standing("oven", "oven", 0, 40, 10, 30, R"(, "faces": "rear")"),
                   standing("hob", "cooktop", 0, 60, 30, 34, R"(, "faces": "rear")" + plate),
                   standing("lamp", "light", 100, 100, 60, 70, R"(, "faces": "rear")" + plate),
                   standing("dark", "light", 120, 100, 60, 70)};
  const Answered made(text);
  const auto sources = [&](const std::string& rule) {
    std::vector<std::string> ids;
    for (const Finding& finding : made.of(rule)) ids.push_back(finding.subjects.front());
    std::ranges::sort(ids);
    return ids;
  };
  using Names = std::vector<std::string>;
  EXPECT_EQ(sources("heat.three-feet"), Names{"H"});
  EXPECT_EQ(sources("heat.also-three-feet"), (Names{"furnace", "hob", "lamp", "oven"}));
  EXPECT_EQ(sources("heat.data-plate"), (Names{"H", "furnace", "hob", "lamp", "oven"}));
  for (const Finding& finding : made.of("heat.data-plate"))
    EXPECT_EQ(finding.status == Status::unknown, finding.subjects.front() == "oven");
  EXPECT_EQ(sources("heat.data-plate-missing"), Names{"oven"});
  // The lamp hangs from (100, 100) to 110, 60 in up; the cushion begins 40 in behind it and ends 56 in below:
  // sqrt(1600 + 3136) = 68.8 in.
  for (const Finding& finding : made.of("heat.also-three-feet"))
    if (finding.subjects.front() == "lamp") {
      EXPECT_EQ(finding.status, Status::met);
      EXPECT_EQ(finding.measured, Quantity(SquaredLength::of(40_in).plus_square_of(56_in).floor()));
    }
  EXPECT_EQ(exit_code(made.answer), 2);  // for the oven
}

TEST(HeatFindings, TheYardstickOfOthersIsNoAlert) {
  TrailerText text = plated(whole, "150", "100", "0");
  text.fixtures = {
      standing("hob", "cooktop", 130, 100, 0, 4,
               R"(, "faces": "rear", "data_plate": {"front": 6, "back": 6, "sides": 6, "top": 6})")};
  const Answered made(text);
  const Finding beside = made.one("heat.also-three-feet");
  EXPECT_EQ(beside.status, Status::not_met);                    // 10 in
  EXPECT_EQ(beside.cure, (Cure{Cure::Kind::none, "hob", {}}));  // its plate counts
  EXPECT_EQ(exit_code(made.answer), 0);
}

TEST(HeatFindings, AShieldIsToldAndShortensNothing) {
  TrailerText text = plated(whole, "100", "55", "30");
  text.fixtures = {standing("screen", "cabinet", 80, 40, 0, 80, "", 4, 60)};
  const Answered made(text);
  EXPECT_EQ(made.one("heat.three-feet").measured, Quantity(30_in));
  EXPECT_EQ(made.one("heat.three-feet").status, Status::not_met);
  const Finding shield = made.one("heat.shield");
  EXPECT_EQ(shield.subjects, (std::vector<std::string>{"H", "C", "screen"}));
  expect_part(sentence(made.plan, shield),
              "screen stands between Heater and Cushion on every straight line of least distance; that "
              "shortens nothing.");
  text.fixtures = {standing("screen", "cabinet", 80, 61, 0, 80, "", 4, 60)};
  EXPECT_TRUE(Answered(text).of("heat.shield").empty());
  text.fixtures = {standing("screen", "cabinet", 80, 40, 0, 80, R"(, "burns": true)", 4, 60)};
  const Answered burning(text);
  EXPECT_TRUE(burning.of("heat.shield").empty());
  EXPECT_EQ(burning.one("heat.three-feet", "other").measured, Quantity(10_in));
}

// Distances of zero, a plate of zeros, no plate, a heater outside the room, inside a cabinet, under the bed.
TEST(HeatFindings, OddPlacesGiveNumbersOrUnknown) {
  const Answered touching(plated(R"("front": 0, "back": 0, "sides": 0, "top": 0)", "70", "55", "33"));
  EXPECT_EQ(touching.one("heat.three-feet").measured, Quantity(Length{}));
  EXPECT_EQ(touching.one("heat.three-feet").margin, -36_in);
  EXPECT_EQ(touching.one("heat.data-plate").margin, Length{});
  const Answered within(plated(whole, "55", "55", "33"));
  EXPECT_EQ(within.one("heat.three-feet").measured, Quantity(Length{}));
  EXPECT_EQ(within.one("heat.data-plate").margin, -36_in);
  TrailerText outside = plated(whole, "100", "55", "0");
  outside.day[0] = R"({"piece": "H", "at": {"front": 230, "left": 60}, "on": "floor"})";
  const Answered far(outside);
  EXPECT_EQ(far.one("heat.three-feet").measured, Quantity(110_in));
  EXPECT_TRUE(std::ranges::any_of(far.of("room.inside"), [](const Finding& f) {
    return f.status == Status::not_met && f.subjects.front() == "H";
  }));
  TrailerText shut = plated(whole, "100", "55", "0");
  shut.fixtures = {standing("box", "cabinet", 50, 50, 0, 60, "", 30, 30)};
  shut.day[0] = R"({"piece": "H", "at": {"front": 60, "left": 60}, "base": 0})";
  const Answered inside(shut);
  EXPECT_EQ(inside.one("heat.three-feet").measured, Quantity(30_in));
  EXPECT_EQ(inside.one("heat.shield").subjects.back(), "box");
  EXPECT_FALSE(inside.of("room.overlap").empty());
  TrailerText bare = plated(whole, "55", "55", "45");
  bare.pieces[0] =
      R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 10, "faces": "rear"})";
  const Answered under(bare);  // 5 in under a bed, and nothing is known of its plate
  EXPECT_EQ(under.one("heat.three-feet").measured, Quantity(5_in));
  EXPECT_EQ(under.one("heat.data-plate-missing").status, Status::unknown);
}

// Oracle: GEOS measures in plan; the gap in height is the third side of the triangle.
TEST(HeatFindings, DistancesAgreeWithGeos) {
  int compared = 0;
  for (unsigned seed = 0; seed < 12; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto draw = [&](int low, int high) {
      return std::uniform_int_distribution<int>(low, high)(random);
    };
    TrailerText text = plated(whole, std::to_string(draw(90, 120)), std::to_string(draw(0, 110)), "0");
    text.fixtures = {standing("bench", "bench", 130, draw(20, 60), 0, 14, "", 60, 40),
                     standing("hob", "cooktop", draw(0, 40), draw(0, 100), 30, 34, R"(, "faces": "rear")"),
                     standing("drape", "curtain", draw(0, 40), draw(0, 100), draw(0, 40), 60, "", 1, 20)};
    text.pieces.push_back(R"({"id": "M", "kind": "cushion", "length": 60, "width": 40, "thickness": 4,
                              "corners": {"front left": {"round": 6}, "front right": {"clip": [8, 5]}}})");
    text.night = {R"({"piece": "M", "at": {"front": 130, "left": 30}, "base": 14})", text.day[0],
                  text.day[1]};
    text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"]})"};
    const Answered made(text);
    const ConfigurationAnswer& night = made.answer.configurations[1];
    for (const HeatDistance& entry : night.heat) {
      const Solid& source = night.arrangement.find(entry.source)->solid;
      std::vector<Solid> solids;
      if (entry.kind == HeatDistance::Kind::bed)
        solids = entry.made_up ? night.beds[0].bedding.made_up : night.beds[0].bedding.bare;
      else
        solids = {night.arrangement.find(entry.nearest_to)->solid};
      double least = 1e18;
      for (const Solid& solid : solids) {
        const double up = static_cast<double>(
            std::max({solid.base() - source.top(), source.base() - solid.top(), Length{}}).ticks());
        least = std::min(least, std::hypot(oracle::geos_distance(source.outline(), solid.outline()), up));
      }
      const double arcs = entry.kind == HeatDistance::Kind::bed ? ticks_per_mm / 20.0 : 0;
      EXPECT_NEAR(static_cast<double>(entry.distance.ticks()), std::max(least - arcs, 0.0), 2);
      ++compared;
    }
  }
  EXPECT_GT(compared, 80);
}

}  // namespace
}  // namespace berthwright

#include <berthwright/solve/site/siting.h>

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>

#include "oracle/heater_place.h"
#include "support/plan_builder.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

std::vector<HeaterPlaces> places_in(const Plan& plan, const std::vector<ConfigurationId>& chosen = {}) {
  Result<std::vector<HeaterPlaces>> found = heater_places(plan, chosen);
  if (!found) throw std::invalid_argument(listed(found.problems()));
  return std::move(found).value();
}

const SiteRegions& looking(const SiteScope& scope, Wall way) {
  return *std::ranges::find(scope.ways, way, &SiteRegions::faces);
}

Rect in_inches(std::int64_t x0, std::int64_t y0, std::int64_t x1, std::int64_t y1) {
  return {{Length::inches(x0), Length::inches(y0)}, {Length::inches(x1), Length::inches(y1)}};
}

// A room of 120 x 76 in; a heater of 10 x 10 x 14 in, on the floor by day; a cushion of 20 in along all of
// the front wall, on the floor. The plate asks 36 in before, 6 behind, 12 beside and 24 above.
TrailerText cushion_in_front() {
  TrailerText text;
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear",
                     "data_plate": {"front": 36, "back": 6, "sides": 12, "top": 24}})",
                 R"({"id": "C", "kind": "cushion", "length": 20, "width": 76, "thickness": 4})"};
  text.day = {R"({"piece": "C", "at": {"front": 0, "left": 0}})",
              R"({"piece": "H", "at": {"front": 90, "left": 30}})"};
  return text;
}

// The corner may be from 0 to 110 along and from 0 to 66 across. The cushion takes 0 to 20 along. Published
// distance: 20 + 36 = 56. By the plate, looking to the rear: the back asks 6, but the cushion also lies
// before the edges of the back with the sides and the underside, which ask the larger: 12, so 20 + 12 = 32.
// Looking to the front, it lies before the front: 20 + 36 = 56; looking left, before the edge of front and
// side: 56.
TEST(Siting, TheRegionsOfOneCushionByHand) {
  const Plan plan = cushion_in_front().plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  ASSERT_EQ(heaters.size(), 1U);
  ASSERT_EQ(heaters[0].sitings.size(), 1U);
  EXPECT_EQ(heaters[0].sitings[0].stands_on, "floor");
  const SiteScope& day = heaters[0].sitings[0].scopes[0];
  for (const Wall way : {Wall::front, Wall::rear, Wall::left, Wall::right}) {
    const SiteRegions& regions = looking(day, way);
    EXPECT_EQ(regions.three_feet, Region(in_inches(56, 0, 110, 66)));
    EXPECT_EQ(regions.data_plate, Region(in_inches(way == Wall::rear ? 32 : 56, 0, 110, 66)));
    EXPECT_EQ(regions.free, Region(in_inches(56, 0, 110, 66)));
    // In the cushion's space up to 20 in.
    EXPECT_EQ(regions.standing, Region(in_inches(20, 0, 110, 66)));
  }
  // At the rear wall: 110 - 20 = 90 in off, 54 more than 36; looking to the rear the plate has 78 to spare.
  ASSERT_TRUE(day.best.has_value());
  EXPECT_GE(*day.best->least_margin(), 54_in - Length::inches(3, 16));
  EXPECT_LE(*day.best->least_margin(), 54_in);
  EXPECT_EQ(heaters[0].not_compared, std::vector{SiteRule::cord});
  EXPECT_EQ(exit_code(heaters), 2);
}

// The same room with the cushion 14 in up: 14 to 18 in. It meets the plane of the heater's top, so it lies
// before the edges of the top as well, which ask 24: looking to the rear 20 + 24 = 44. And 25 in up nothing
// but the edges of the top is near: 25 - 14 = 11 in above; sqrt(24 x 24 - 11 x 11) = sqrt(455) = 21.33 in,
// the published sqrt(36 x 36 - 11 x 11) = sqrt(1175) = 34.28 in.
TEST(Siting, HeightCountsForBothYardsticks) {
  TrailerText text = cushion_in_front();
  text.day[0] = R"({"piece": "C", "at": {"front": 0, "left": 0}, "base": 14})";
  const Plan low = text.plan();
  const std::vector<HeaterPlaces> low_places = places_in(low);
  EXPECT_EQ(looking(low_places[0].sitings[0].scopes[0], Wall::rear).data_plate,
            Region(in_inches(44, 0, 110, 66)));
  text.day[0] = R"({"piece": "C", "at": {"front": 0, "left": 0}, "base": 25})";
  const Plan high = text.plan();
  const std::vector<HeaterPlaces> high_places = places_in(high);
  const SiteRegions& regions = looking(high_places[0].sitings[0].scopes[0], Wall::rear);
  const auto squared = [](Length length) { return SquaredLength::of(length); };
  const Length plate = regions.data_plate.bounds().low.x - 20_in;
  EXPECT_TRUE(squared(plate).plus_square_of(11_in) >= 24_in);
  EXPECT_TRUE(squared(plate - one_tick).plus_square_of(11_in) < 24_in);
  const Length published = regions.three_feet.bounds().low.x - 20_in;
  EXPECT_TRUE(squared(published).plus_square_of(11_in) >= 36_in);
  EXPECT_TRUE(squared(published - one_tick).plus_square_of(11_in) < 36_in);
  EXPECT_EQ(regions.standing, Region(in_inches(0, 0, 110, 66)));
}

// A cushion of 20 x 6 in, from 30 to 36 across, 2 in up, behind the heater, which is 10 in wide: with the
// corner between 26 and 30 across, the cushion lies before the back alone, which asks 6. At 26 and at 30 it
// is flush with a side, and on a shared plane the larger distance rules: 12. So 8 in off both of these places
// are forbidden.
TEST(Siting, OnASharedPlaneTheLargerDistanceRules) {
  TrailerText text = cushion_in_front();
  text.pieces[1] = R"({"id": "C", "kind": "cushion", "length": 20, "width": 6, "thickness": 4})";
  text.day[0] = R"({"piece": "C", "at": {"front": 0, "left": 30}, "base": 2})";
  const Plan plan = text.plan();
  const Region kept = looking(places_in(plan)[0].sitings[0].scopes[0], Wall::rear).data_plate;
  const auto side_at = [&](Length across) { return kept.side_of({28_in, across}); };
  EXPECT_EQ(side_at(28_in), Side::inside);
  for (const Length plane : {26_in, 30_in}) EXPECT_EQ(side_at(plane), Side::outside);
  EXPECT_EQ(side_at(26_in + 5 * one_tick), Side::inside);
  EXPECT_EQ(side_at(30_in - 5 * one_tick), Side::inside);
}

// A room of 60 x 60 in: the corner may be up to 50, the published distance asks 56. At the rear wall the
// heater is 30 in from the cushion: 6 in short.
TEST(Siting, NamesTheRuleThatEmptiesTheRegionAndTheBestThatCanBeHad) {
  TrailerText text = cushion_in_front();
  text.interior = R"({"length": 60, "width": 60, "height": 76})";
  text.pieces[1] = R"({"id": "C", "kind": "cushion", "length": 20, "width": 60, "thickness": 4})";
  text.day[1] = R"({"piece": "H", "at": {"front": 45, "left": 30}})";
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  const SiteScope& day = heaters[0].sitings[0].scopes[0];
  EXPECT_FALSE(day.best.has_value());
  ASSERT_EQ(day.reliefs.size(), 1U);
  EXPECT_EQ(day.reliefs[0].rules, std::vector{SiteRule::three_feet});
  const SitePlace& best = day.reliefs[0].best.value();
  const SiteMargin& margin = best.margins.front();
  EXPECT_EQ(margin.yardstick, SiteRule::three_feet);
  EXPECT_LE(margin.margin, -6_in);
  EXPECT_GE(margin.margin, -6_in - Length::inches(3, 16));
  EXPECT_EQ(margin.distance.nearest_to, "C");
  // The plate is kept there, so it looks to the rear.
  EXPECT_EQ(best.faces, Wall::rear);
  EXPECT_GE(best.margins.back().margin, Length{});
  EXPECT_EQ(exit_code(heaters), 1);
}

// As before, with 30 in at the sides asked too: in a room of 50 in both must be set aside.
TEST(Siting, NamesTheLeastSetWhereNoRuleAloneIsToBlame) {
  TrailerText text = cushion_in_front();
  text.interior = R"({"length": 50, "width": 60, "height": 76})";
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear",
                     "data_plate": {"front": 30, "back": 30, "sides": 30, "top": 30}})",
                 R"({"id": "C", "kind": "cushion", "length": 20, "width": 60, "thickness": 4})"};
  text.day[1] = R"({"piece": "H", "at": {"front": 40, "left": 30}})";
  const Plan plan = text.plan();
  const SiteScope day = places_in(plan)[0].sitings[0].scopes[0];
  ASSERT_EQ(day.reliefs.size(), 1U);
  EXPECT_EQ(day.reliefs[0].rules, (std::vector{SiteRule::three_feet, SiteRule::data_plate}));
  // 40 - 20 = 20 in off: 16 and 10 short; the lesser of both is what was made as large as can be.
  ASSERT_TRUE(day.reliefs[0].best.has_value());
  EXPECT_LE(*day.reliefs[0].best->least_margin(), -16_in);
  EXPECT_GE(*day.reliefs[0].best->least_margin(), -16_in - Length::inches(3, 16));
}

// A cabinet fills the room but for 8 in: the heater finds no floor.
TEST(Siting, SaysWhenSolidsLeaveNoFloor) {
  TrailerText text = cushion_in_front();
  text.day.erase(text.day.begin());
  text.fixtures = {
      R"({"id": "chest", "kind": "cabinet", "length": 112, "width": 76, "at": {"front": 0, "left": 0},
                       "top": 30})"};
  const Plan plan = text.plan();
  const SiteScope day = places_in(plan)[0].sitings[0].scopes[0];
  ASSERT_EQ(day.reliefs.size(), 1U);
  EXPECT_EQ(day.reliefs[0].rules, std::vector{SiteRule::solids});
}

TEST(Siting, SaysWhenTheHeaterIsLongerThanTheRoom) {
  TrailerText text = cushion_in_front();
  text.pieces[0] =
      R"({"id": "H", "kind": "heater", "length": 130, "width": 130, "height": 14, "faces": "rear"})";
  text.day[1] = R"({"piece": "H", "at": {"front": 0, "left": 0}})";
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  const SiteScope& day = heaters[0].sitings[0].scopes[0];
  ASSERT_EQ(day.reliefs.size(), 1U);
  EXPECT_EQ(day.reliefs[0].rules, std::vector{SiteRule::room});
  EXPECT_FALSE(day.reliefs[0].best.has_value());
  EXPECT_EQ(exit_code(heaters), 1);
}

// A heater of 80 in under a roof of 76.
TEST(Siting, SaysWhenTheHeaterIsTallerThanTheRoom) {
  TrailerText text = cushion_in_front();
  text.pieces[0] =
      R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 80, "faces": "rear"})";
  const Plan plan = text.plan();
  EXPECT_EQ(places_in(plan)[0].sitings[0].scopes[0].reliefs.at(0).rules, std::vector{SiteRule::room});
}

// A door of 24 in, hinged at its front end at 40, opens inward from the right wall; a heater of 10 in whose
// corner is nearer than the quarter circle is in its way.
TEST(Siting, KeepsOutOfTheSwingOfDoorsAndDrawers) {
  TrailerText text = cushion_in_front();
  text.day.erase(text.day.begin());
  text.openings = {
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 40, "width": 24, "height": 66,
                       "opens": "in", "hinge": "front"})"};
  text.fixtures = {
      R"({"id": "galley", "kind": "counter", "length": 30, "width": 20, "at": {"front": 0, "left": 0},
                       "top": 36, "opens": [{"id": "drawer", "kind": "drawer", "face": "right", "from": 5,
                       "width": 12, "base": 4, "top": 12, "pull": 15}]})"};
  const Plan plan = text.plan();
  const SiteScope day = places_in(plan)[0].sitings[0].scopes[0];
  const SiteRegions& regions = looking(day, Wall::rear);
  const Region& swings = std::ranges::find(regions.forbidden, SiteRule::swings, [](const auto& entry) {
                           return entry.first;
                         })->second;
  const auto forbids = [&](std::int64_t x, std::int64_t y) {
    return swings.side_of({Length::inches(x), Length::inches(y)}) == Side::inside;
  };
  // The drawer, shut, takes 5 to 17 along; open it reaches 35 across: corners from -5 to 17 and 10 to 35.
  EXPECT_TRUE(forbids(16, 34));
  EXPECT_FALSE(forbids(18, 34));
  EXPECT_FALSE(forbids(16, 36));
  // The door swings about (40, 76): a box whose nearest corner is 17 along and 17 across off is 24.04 in
  // away, of 16 and 17 in 23.3.
  EXPECT_FALSE(forbids(57, 49));
  EXPECT_TRUE(forbids(56, 49));
  EXPECT_TRUE(forbids(40, 43));
  EXPECT_FALSE(forbids(40, 41));
  EXPECT_FALSE(forbids(29, 60));
}

// By night a cushion at the rear too: what is free by day at the rear is not by night, and all at once leaves
// the middle only: 56 to 120 - 20 - 36 - 10 = 54: nothing. With cushions of 10 in: 46 to 64.
TEST(Siting, AllAtOnceIsWhatEveryConfigurationLeaves) {
  TrailerText text = cushion_in_front();
  text.pieces[1] = R"({"id": "C", "kind": "cushion", "length": 10, "width": 76, "thickness": 4})";
  text.night = {R"({"piece": "C", "at": {"rear": 0, "left": 0}})",
                R"({"piece": "H", "at": {"front": 20, "left": 30}})"};
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  const Siting& siting = heaters[0].sitings[0];
  ASSERT_EQ(siting.scopes.size(), 2U);
  EXPECT_EQ(looking(siting.scopes[0], Wall::rear).three_feet, Region(in_inches(46, 0, 110, 66)));
  EXPECT_EQ(looking(siting.scopes[1], Wall::rear).three_feet, Region(in_inches(0, 0, 64, 66)));
  EXPECT_EQ(siting.together.configurations.size(), 2U);
  EXPECT_EQ(looking(siting.together, Wall::rear).three_feet, Region(in_inches(46, 0, 64, 66)));
  // In the middle, 55: 45 in off both, 9 to spare.
  EXPECT_GE(*siting.together.best->least_margin(), 9_in - Length::inches(3, 16));
  EXPECT_LE(*siting.together.best->least_margin(), 9_in);
}

// By night another cushion lies along the rear wall: from 56 on and up to 120 - 20 - 36 - 10 = 54: nothing.
TEST(Siting, WhereThePlanStowsItAConfigurationIsAnsweredApart) {
  TrailerText text = cushion_in_front();
  text.pieces.push_back(R"({"id": "D", "kind": "cushion", "length": 20, "width": 76, "thickness": 4})");
  text.night = {R"({"piece": "C", "at": {"front": 0, "left": 0}})",
                R"({"piece": "D", "at": {"rear": 0, "left": 0}})"};
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  const Siting& siting = heaters[0].sitings[0];
  EXPECT_FALSE(siting.scopes[0].stowed);
  EXPECT_TRUE(siting.scopes[1].stowed);
  EXPECT_FALSE(siting.scopes[1].has_place());
  ASSERT_EQ(siting.together.configurations.size(), 1U);
  EXPECT_EQ(siting.together.configurations[0]->id.text(), "day");
  EXPECT_EQ(heaters[0].not_compared, std::vector{SiteRule::cord});
  EXPECT_EQ(exit_code(heaters), 2);
  // Asked for by name it counts.
  const std::vector<HeaterPlaces> night = places_in(plan, {ConfigurationId("night")});
  EXPECT_EQ(exit_code(night), 1);
}

TEST(Siting, NobodyRunsAHeaterOnTheRoadUnlessAsked) {
  TrailerText text = cushion_in_front();
  text.road = {R"({"piece": "C", "at": {"front": 0, "left": 0}})"};
  const Plan plan = text.plan();
  EXPECT_EQ(places_in(plan)[0].sitings[0].scopes.size(), 2U);
  const std::vector<HeaterPlaces> road = places_in(plan, {ConfigurationId("road")});
  ASSERT_EQ(road[0].sitings[0].scopes.size(), 1U);
  EXPECT_EQ(road[0].sitings[0].together.configurations[0]->id.text(), "road");
}

TEST(Siting, WithoutADataPlateTheAnswerIsUnknownNotMet) {
  TrailerText text = cushion_in_front();
  text.pieces[0] =
      R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear"})";
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  EXPECT_EQ(heaters[0].not_compared, (std::vector{SiteRule::cord, SiteRule::data_plate}));
  EXPECT_TRUE(heaters[0].has_place());
  EXPECT_EQ(exit_code(heaters), 2);
}

TEST(Siting, APlanWithoutAHeaterHasNoAnswer) {
  TrailerText text = cushion_in_front();
  text.pieces.erase(text.pieces.begin());
  text.day.pop_back();
  const Plan plan = text.plan();
  EXPECT_TRUE(places_in(plan).empty());
  EXPECT_EQ(exit_code(places_in(plan)), 2);
}

// What stands on a counter is sought there as well: 36 in up, wholly over it.
TEST(Siting, OnASurfaceThatAPoseNames) {
  TrailerText text = cushion_in_front();
  text.fixtures = {
      R"({"id": "counter", "kind": "counter", "length": 40, "width": 20, "at": {"rear": 0, "left": 0},
                       "top": 36})"};
  text.day[1] = R"({"piece": "H", "at": {"rear": 5, "left": 5}, "on": "counter"})";
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  ASSERT_EQ(heaters[0].sitings.size(), 2U);
  EXPECT_EQ(heaters[0].sitings[1].stands_on, "counter");
  EXPECT_EQ(looking(heaters[0].sitings[1].scopes[0], Wall::left).standing, Region(in_inches(80, 0, 110, 10)));
  // On the floor the counter takes its own place.
  EXPECT_EQ(looking(heaters[0].sitings[0].scopes[0], Wall::left).standing,
            without(in_inches(20, 0, 110, 66), Region(in_inches(70, 0, 110, 20))));
}

TEST(Siting, ABuiltInHeaterIsSoughtAsHighAsItIs) {
  TrailerText text = cushion_in_front();
  text.pieces.erase(text.pieces.begin());
  text.day = {R"({"piece": "C", "at": {"front": 0, "left": 0}, "base": 20})"};
  text.fixtures = {
      R"({"id": "F", "kind": "heater", "length": 4, "width": 12, "at": {"rear": 0, "left": 30}, "base": 3,
                       "top": 19, "faces": "front"})"};
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  ASSERT_EQ(heaters.size(), 1U);
  EXPECT_EQ(heaters[0].heater, "F");
  EXPECT_EQ(heaters[0].sitings[0].stands_on, "");
  // As built in 4 along and 12 across; turned 12 and 4.
  EXPECT_EQ(looking(heaters[0].sitings[0].scopes[0], Wall::rear).standing, Region(in_inches(0, 0, 116, 64)));
  EXPECT_EQ(looking(heaters[0].sitings[0].scopes[0], Wall::left).standing, Region(in_inches(0, 0, 108, 72)));
  EXPECT_TRUE(heaters[0].stowing.empty());
}

TEST(Siting, EveryHeaterIsAnsweredPortableOnesFirst) {
  TrailerText text = cushion_in_front();
  text.fixtures = {
      R"({"id": "F", "kind": "heater", "length": 4, "width": 12, "at": {"rear": 0, "left": 30},
                       "top": 16, "faces": "front"})",
      R"({"id": "hob", "kind": "cooktop", "length": 10, "width": 10, "at": {"rear": 0, "left": 0},
                       "base": 34, "top": 36, "faces": "front"})"};
  const Plan plan = text.plan();
  const std::vector<HeaterPlaces> heaters = places_in(plan);
  ASSERT_EQ(heaters.size(), 2U);
  EXPECT_EQ(heaters[0].heater, "H");
  EXPECT_EQ(heaters[1].heater, "F");
  // Each finds the other in its way.
  const auto stands = [&](std::size_t index, Wall way, Point corner) {
    return looking(heaters[index].sitings[0].scopes[0], way).standing.side_of(corner) != Side::outside;
  };
  EXPECT_FALSE(stands(0, Wall::rear, {108_in, 35_in}));
  EXPECT_TRUE(stands(0, Wall::rear, {104_in, 35_in}));
  EXPECT_FALSE(stands(1, Wall::front, {92_in, 35_in}));
}

// Words, not a crash: outside of the room, inside a cabinet, a plate that asks nothing and one that asks the
// moon.
TEST(Siting, OddPlansAreAnswered) {
  TrailerText outside = cushion_in_front();
  outside.day[1] = R"({"piece": "H", "at": {"front": 116, "left": 70}})";
  const Plan out = outside.plan();
  const SiteScope left_out = places_in(out)[0].sitings[0].scopes[0];
  EXPECT_EQ(left_out.now->breaks, std::vector{SiteRule::room});

  TrailerText within = cushion_in_front();
  within.day[1] = R"({"piece": "H", "at": {"front": 90, "left": 30}, "on": "floor"})";
  within.fixtures = {
      R"({"id": "chest", "kind": "cabinet", "length": 30, "width": 30, "at": {"front": 80, "left": 20},
                         "top": 30})"};
  const Plan in = within.plan();
  EXPECT_EQ(places_in(in)[0].sitings[0].scopes[0].now->breaks, std::vector{SiteRule::solids});

  for (const auto& [asked, kept] : {std::pair{"0", true}, {"24 m", false}}) {
    TrailerText text = cushion_in_front();
    const std::string all = std::string(R"({"front": ")") + asked + R"(", "back": ")" + asked +
                            R"(", "sides": ")" + asked + R"(", "top": ")" + asked + R"("})";
    text.pieces[0] =
        R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear",
                        "data_plate": )" +
        all + "}";
    const Plan plan = text.plan();
    const SiteScope day = places_in(plan)[0].sitings[0].scopes[0];
    EXPECT_EQ(day.has_place(), kept) << asked;
    if (!kept) {
      EXPECT_EQ(day.reliefs.at(0).rules, std::vector{SiteRule::data_plate});
      EXPECT_TRUE(day.reliefs.at(0).best.has_value());
    }
  }
}

TEST(Siting, ARoomTooLargeForTheLatticeIsAProblemNotACrash) {
  TrailerText text = cushion_in_front();
  text.interior = R"({"length": "12 m", "width": "8 m", "height": 76})";
  const Plan plan = text.plan();
  const Result<std::vector<HeaterPlaces>> found = heater_places(plan, {});
  ASSERT_FALSE(found);
  EXPECT_EQ(found.problems().front().id, "site.too-large");
}

}  // namespace
}  // namespace berthwright

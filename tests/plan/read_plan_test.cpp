#include <berthwright/plan/plan.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include <berthwright/plan/panel.h>

#include "support/plan_builder.h"
#include "support/rects.h"

namespace berthwright {
namespace {

using support::rect;

const Pose& pose_of(const Plan& plan, std::string_view configuration, std::string_view piece) {
  const auto& poses = plan.configuration(configuration)->poses;
  return *std::ranges::find_if(poses, [&](const Pose& pose) { return pose.piece.text() == piece; });
}

std::string fault_of(std::string text) {
  const Result<Plan> plan = read_plan(text);
  return plan ? "none" : listed(plan.problems());
}

std::string with(std::string text, std::string_view from, std::string_view to) {
  const std::size_t at = text.find(from);
  if (at == std::string::npos) throw std::invalid_argument("not in the text: " + std::string(from));
  return text.replace(at, from.size(), to);
}

TEST(ReadPlan, ReadsTheExampleWholly) {
  const Plan& plan = example();
  EXPECT_EQ(plan->title.title, "Wren, rear cross dinette and front settee");
  EXPECT_EQ(plan->unit, Unit::inch);
  EXPECT_EQ(plan->openings.size(), 3U);
  EXPECT_EQ(plan->fixtures.size(), 13U);
  EXPECT_EQ(plan->pieces.size(), 12U);
  EXPECT_EQ(plan->configurations.size(), 2U);
  EXPECT_EQ(plan->beds.size(), 2U);
  EXPECT_EQ(plan->notes.size(), 1U);
  EXPECT_EQ(plan->interior.height, 76_in);
  EXPECT_EQ(plan->interior.side_profile.arcs().size(), 2U);
  EXPECT_TRUE(plan->interior.cross_profile);
}

TEST(ReadPlan, TheSideOfTheRoadNamesTheWalls) {
  const std::string text = repository_text("tests/plan/example.json");
  EXPECT_EQ(example()->openings[0].wall, Wall::right);
  const Plan left = plan_from(with(text, R"("drives_on": "right")", R"("drives_on": "left")"));
  EXPECT_EQ(left->openings[0].wall, Wall::left);
}

// The room is 120 x 76 in. The left bench, 40 x 24, ends at the rear wall: x from 80. The galley, 36 x 20,
// ends 3 in ahead of it: x from 120 - 40 - 3 - 36 = 41. The right bench begins at 76 - 24 = 52, the ledge on
// it 1 in before. The cooktop begins 19 in behind the settee, which is 24 deep: 43.
TEST(ReadPlan, PlacesFixturesAsATapeDoes) {
  const auto bounds = [](const char* id) { return example().fixture(id)->solid.outline().bounds(); };
  EXPECT_EQ(bounds("left bench"), rect(80_in, 0_in, 120_in, 24_in));
  EXPECT_EQ(bounds("galley"), rect(41_in, 0_in, 77_in, 20_in));
  EXPECT_EQ(bounds("right ledge"), rect(80_in, 51_in, 120_in, 52_in));
  EXPECT_EQ(bounds("cooktop"), rect(43_in, 2_in, 61_in, 18_in));
  EXPECT_EQ(bounds("wheel arch"), rect(58_in, 66_in, 78_in, 76_in));
  EXPECT_EQ(example().fixture("galley")->arcs.size(), 1U);
  EXPECT_EQ(example().fixture("cooktop")->solid.base(), 36_in);
}

TEST(ReadPlan, WeightsAndWhatOnePersonLifts) {
  EXPECT_EQ(example().piece("A")->weight, Mass::grams(3200));
  EXPECT_FALSE(example().piece("B")->weight);
  EXPECT_EQ(example()->lifting.weight, Mass::pounds(50));
  EXPECT_EQ(example()->lifting.reach, 33_in);
  EXPECT_EQ(example()->lifting.reason, "two of us, long arms");
  const CushionWishes& wishes = example()->split;
  EXPECT_EQ(wishes.most_back, 21_in);
  EXPECT_EQ(wishes.gap, Length::inches(1, 4));
  EXPECT_EQ(wishes.lift, Mass::pounds(9));
  EXPECT_EQ(wishes.foam_density, 25);
  ASSERT_EQ(wishes.foam_stock.size(), 1U);
  EXPECT_EQ(wishes.foam_stock[0].price, 8'950);
}

TEST(ReadPlan, TheOrderOfFixturesInTheFileDoesNotMatter) {
  const std::string a =
      R"({"id": "a", "kind": "cabinet", "length": 10, "width": 5, "top": 9, "at": {"front": 2, "left": 1}})";
  const std::string b =
      R"({"id": "b", "kind": "cabinet", "length": 10, "width": 5, "top": 9, "at": {"behind": ["a", 3], "right_of": ["a", "1/2"]}})";
  const std::string c =
      R"({"id": "c", "kind": "cabinet", "length": 10, "width": 5, "top": 9, "at": {"behind": ["b", 0], "left_of": ["b", 0]}})";
  const std::string night = R"("configurations": {"night": []})";
  const Plan forward = small_plan("\"fixtures\": [" + a + "," + b + "," + c + "]," + night);
  const Plan backward = small_plan("\"fixtures\": [" + c + "," + b + "," + a + "]," + night);
  for (const char* id : {"a", "b", "c"}) EXPECT_EQ(forward.fixture(id)->solid, backward.fixture(id)->solid);
  EXPECT_EQ(forward.fixture("b")->solid.outline().bounds().low, (Point{15_in, Length::inches(13, 2)}));
  EXPECT_EQ(forward.fixture("c")->solid.outline().bounds().low, (Point{25_in, Length::inches(3, 2)}));
}

// C stands on its length edge, 40 in, with its face to the right: 40 along, 4 (its thickness) across, 14
// high. G, 14 x 76, stands on its width edge facing the rear: 4 along, 76 across, 14 high.
TEST(ReadPlan, APieceOnEdgeTakesItsThicknessInPlan) {
  const Pose& left = pose_of(example(), "day", "C");
  EXPECT_EQ(left.manner, Pose::Manner::on_length);
  EXPECT_EQ(left.outline, Region(rect(80_in, 0_in, 120_in, 4_in)));
  EXPECT_EQ(left.height, 14_in);
  EXPECT_EQ(left.faces, Wall::right);
  EXPECT_EQ(left.on, std::vector<std::string>{"A"});
  const Pose& settee = pose_of(example(), "day", "G");
  EXPECT_EQ(settee.manner, Pose::Manner::on_width);
  EXPECT_EQ(settee.outline, Region(rect(0_in, 0_in, 4_in, 76_in)));
  EXPECT_EQ(settee.height, 14_in);
}

TEST(ReadPlan, AFlatPieceKeepsItsArcsAndItsPlacement) {
  const Pose& table = pose_of(example(), "night", "T");
  EXPECT_EQ(table.outline.bounds(),
            rect(Length::inches(80), Length::inches(193, 8), Length::inches(479, 4), Length::inches(415, 8)));
  EXPECT_EQ(table.arcs.size(), 2U);
  EXPECT_EQ(table.on, (std::vector<std::string>{"left ledge", "right ledge"}));
  EXPECT_EQ(Region(table.placement(example().piece("T")->outline.polygon())), table.outline);
  EXPECT_EQ(pose_of(example(), "day", "T").base, 28_in);
  EXPECT_EQ(pose_of(example(), "day", "P").base, 0_in);  // "on": "floor"
}

// Counter-clockwise seen from above, a quarter turn takes the rear to the right. The heater is 8 x 10
// unturned.
TEST(ReadPlan, ATurnedHeaterLooksTheTurnedWay) {
  const Pose& heater = pose_of(example(), "day", "H");
  EXPECT_EQ(heater.faces, Wall::right);
  EXPECT_EQ(heater.state, Pose::State::off);
  EXPECT_EQ(heater.outline, Region(rect(60_in, 22_in, 70_in, 30_in)));
  EXPECT_EQ(pose_of(example(), "night", "H").state, Pose::State::stowed);
  EXPECT_EQ(pose_of(example(), "night", "H").stowed_in, "right bench");
  EXPECT_TRUE(pose_of(example(), "night", "H").outline.empty());
  for (const auto& [turn, wall] :
       {std::pair{"0", Wall::rear}, {"180", Wall::front}, {"270", Wall::left}, {"-90", Wall::left}}) {
    const Plan plan = plan_from(with(repository_text("tests/plan/example.json"), R"("turn": "90")",
                                     std::string(R"("turn": ")") + turn + '"'));
    EXPECT_EQ(pose_of(plan, "day", "H").faces, wall) << turn;
  }
}

// A right triangle, legs 6 along x and 4 along y, flipped (y to -y) and turned by 90 degrees (x to y, y to
// -x): (0,0), (6,0), (0,4) become (0,0), (0,6), (4,0); then moved so that its box begins at 10, 20.
TEST(ReadPlan, AFlippedAndTurnedOutlineIsPlacedByItsBox) {
  const Plan plan = small_plan(R"(
    "pieces": [{"id": "p", "kind": "board", "outline": [[1, 2], [7, 2], [1, 6]], "thickness": "3/4"}],
    "configurations": {"day": [{"piece": "p", "at": {"front": 10, "left": 20}, "flipped": true, "turn": 90}]})");
  EXPECT_EQ(plan.piece("p")->length, 6_in);
  EXPECT_EQ(plan.piece("p")->outline.polygon().bounds().low, Point{});
  EXPECT_EQ(pose_of(plan, "day", "p").outline,
            Region(Polygon::checked({{10_in, 20_in}, {14_in, 20_in}, {10_in, 26_in}}).value()));
}

TEST(ReadPlan, ReadsWhatBoardsAndPeopleNeed) {
  const Piece& table = *example().piece("T");
  EXPECT_EQ(table.panel, "birch 18 mm");
  EXPECT_EQ(table.plies, 13);
  EXPECT_EQ(table.grain, Piece::Grain::along_width);
  EXPECT_EQ(table.held_by, Hold::hook);
  EXPECT_EQ(example().piece("F")->panel, "");
  EXPECT_FALSE(example().piece("F")->grain);
  EXPECT_EQ(example()->title.built, 1962);
  EXPECT_EQ(example().bed("dinette bed")->people[0].weight, Mass::pounds(150));
  EXPECT_FALSE(example().bed("front bed")->people[0].weight);
}

TEST(ReadPlan, ReadsWhatHeatNeeds) {
  EXPECT_EQ(example().piece("H")->cord, (Cord{72_in, Wall::front}));
  EXPECT_EQ(pose_of(example(), "day", "H").plugged_into, "outlet");
  EXPECT_EQ(pose_of(example(), "night", "H").plugged_into, "");
  EXPECT_EQ(example().fixture("outlet")->faces, Wall::left);
  EXPECT_FALSE(example().fixture("outlet")->heat);
  const Fixture& lamp = *example().fixture("lamp");
  EXPECT_EQ(lamp.faces, Wall::rear);
  ASSERT_TRUE(lamp.heat);
  EXPECT_EQ(lamp.heat->faces, Wall::rear);
  EXPECT_EQ(lamp.heat->plate->sides, 2_in);
  EXPECT_TRUE(example().fixture("towels")->burns);
  EXPECT_FALSE(example().fixture("galley")->burns);
  EXPECT_EQ(example().fixture("right bench")->inside, (InsideBox{38_in, 22_in, 12_in}));
}

// A lamp whose plate is not known is no heat source, a curtain burns, and a cord leaves at the back.
TEST(ReadPlan, WhatIsNotSaidOfHeatHasItsDefault) {
  const Plan plan = small_plan(R"(
    "fixtures": [{"id": "lamp", "kind": "light", "length": 6, "width": 6, "at": {"front": 20, "left": 20}, "base": 70, "top": 74, "faces": "left"},
      {"id": "cloth", "kind": "curtain", "length": 6, "width": 1, "at": {"front": 20, "left": 0}, "base": 30, "top": 60},
      {"id": "net", "kind": "curtain", "length": 6, "width": 1, "at": {"front": 40, "left": 0}, "base": 30, "top": 60, "burns": false}],
    "pieces": [{"id": "h", "kind": "heater", "length": 10, "width": 8, "height": 15, "faces": "left", "cord": {"length": "1.8 m"}}],
    "configurations": {"day": [{"piece": "h", "stowed": "a box under the bench"}]})");
  EXPECT_FALSE(plan.fixture("lamp")->heat);
  EXPECT_EQ(plan.fixture("lamp")->faces, Wall::left);
  EXPECT_TRUE(plan.fixture("cloth")->burns);
  EXPECT_FALSE(plan.fixture("net")->burns);
  EXPECT_EQ(plan.piece("h")->cord, (Cord{1800_mm, Wall::right}));
  EXPECT_EQ(pose_of(plan, "day", "h").stowed_in, "a box under the bench");
}

// The word that was typed is refused, and the cure names ours; what is nearer to a synonym is taken for it.
TEST(ReadPlan, KnowsWhatPeopleCallFixtures) {
  const std::string text = repository_text("tests/plan/example.json");
  for (const auto& [typed, ours] : {std::pair{"worktop", "counter"},
                                    {"hob", "cooktop"},
                                    {"wheel well", "wheel arch"},
                                    {"Fridge", "refrigerator"},
                                    {"socket", "outlet"},
                                    {"sockets", "outlet"},
                                    {"smoke-detector", "smoke alarm"},
                                    {"guardrail", "guard rail"},
                                    {"benhc", "bench"}}) {
    const Result<Plan> plan =
        read_plan(with(text, R"("kind": "bench")", std::string(R"("kind": ")") + typed + '"'));
    ASSERT_FALSE(plan) << typed;
    EXPECT_EQ(plan.problems()[0].id, "value.choice");
    EXPECT_EQ(plan.problems()[0].cure, std::string("write \"") + ours + '"') << typed;
    EXPECT_EQ(plan.problems()[0].allowed.find("socket"), std::string::npos);
  }
}

TEST(ReadPlan, TheSchemaOffersEveryPanel) {
  const std::string schema = repository_text("plans/berthwright.schema.json");
  for (const Panel& panel : all_panels())
    EXPECT_NE(schema.find('"' + panel.name + '"'), std::string::npos) << panel.name;
  const std::string fault = fault_of(
      with(repository_text("tests/plan/example.json"), "birch 18 mm\", \"plies", "birch 18mm\", \"plies"));
  EXPECT_NE(fault.find("reference.unknown /pieces/6/panel"), std::string::npos) << fault;
}

TEST(ReadPlan, ListsTheDefaultsItApplied) {
  const Plan plan = small_plan(R"(
    "openings": [{"id": "door", "kind": "door", "wall": "right", "from_front": 40, "width": 24, "height": 70}],
    "pieces": [{"id": "h", "kind": "heater", "length": 10, "width": 8, "height": 15, "faces": "rear"}],
    "configurations": {"day": [{"piece": "h", "at": {"front": 10, "left": 20}}]},
    "beds": [])");
  const auto value = [&](std::string_view pointer) {
    for (const AppliedDefault& d : plan->defaults)
      if (d.pointer == pointer) return d.value;
    return std::string("not listed");
  };
  EXPECT_EQ(value("/english"), "american");
  EXPECT_EQ(value("/drives_on"), "right");
  EXPECT_EQ(value("/paper"), "letter");
  EXPECT_EQ(value("/interior/side_profile"), "square corners");
  EXPECT_EQ(value("/openings/0/sill"), "0");
  EXPECT_EQ(value("/openings/0/opens"), "out");
  EXPECT_EQ(value("/openings/0/escape"), "false");
  EXPECT_EQ(value("/pieces/0/name"), "h");
  EXPECT_EQ(value("/configurations/day/0/state"), "running");  // the cautious reading
  EXPECT_EQ(value("/configurations/day/0/turn"), "0");
  EXPECT_EQ(value("/interior/length"), "not listed");
  EXPECT_EQ(pose_of(plan, "day", "h").state, Pose::State::running);
}

TEST(ReadPlan, MetricAndBritishPlansHaveTheirOwnDefaults) {
  const Plan plan = plan_from(R"({"berthwright": 1, "title": "Van", "unit": "mm", "english": "british",
    "interior": {"length": 3200.5, "width": "1.72 m", "height": "6 ft"}, "configurations": {"day": []}})");
  EXPECT_EQ(plan->paper, Paper::a4);
  EXPECT_FALSE(plan->drives_on_right);
  EXPECT_EQ(plan->interior.length, Length::millimetres(6401, 2));
  EXPECT_EQ(plan->interior.height, 72_in);
}

// 609.60 mm is 24 in to the tick; a reading through a double would have to round.
TEST(ReadPlan, ANumberGoesFromItsSpellingStraightToALength) {
  const Plan plan = plan_from(R"({"berthwright": 1, "title": "Van", "unit": "mm",
    "interior": {"length": 3048.000000, "width": 1930.4, "height": 2000.000025}, "configurations": {"day": []}})");
  EXPECT_EQ(plan->interior.length, 120_in);
  EXPECT_EQ(plan->interior.height, 2000_mm + one_tick);
}

TEST(ReadPlan, APersonHasTwentyFourInchesUnlessThePlanSaysElse) {
  EXPECT_EQ(example().bed("dinette bed")->people[0].width, 22_in);
  EXPECT_EQ(example().bed("front bed")->people[0].width, 24_in);
  EXPECT_EQ(example().bed("front bed")->people[0].stature, 1800_mm);
}

TEST(ReadPlan, APlansOwnNumberTakesTheRulesPlace) {
  const Rule& gap = *find_rule("bed.gap");
  EXPECT_EQ(example().limit(gap), Length::inches(3, 4));
  EXPECT_EQ(example().override_of(gap)->reason, "the buyer asked for close joints");
  EXPECT_EQ(example().limit(*find_rule("bed.ridge")), Length::inches(1, 2));
  EXPECT_EQ(example().override_of(*find_rule("bed.ridge")), nullptr);
  EXPECT_THROW(static_cast<void>(example().limit(*find_rule("bed.area"))), std::logic_error);
}

TEST(ReadPlan, PointsIntoTheLengthItCannotRead) {
  const std::string fault = fault_of(
      "{\"berthwright\": 1, \"title\": \"T\", \"unit\": \"in\",\n"
      " \"interior\": {\"length\": \"ten feet\", \"width\": \"76 in, or so\", \"height\": 70},\n"
      " \"configurations\": {\"day\": []}}");
  EXPECT_NE(fault.find("2:26 length."), std::string::npos) << fault;
  EXPECT_NE(fault.find("2:52 length.comma /interior/width"), std::string::npos) << fault;
}

TEST(ReadPlan, LimitsAreKept) {
  std::string many =
      R"({"berthwright": 1, "title": "T", "unit": "in", "interior": {"length": 120, "width": 76, "height": 76},
    "configurations": {"day": []}, "notes": ["a")";
  for (int i = 1; i < 2000; ++i) many += R"(,"a")";
  EXPECT_EQ(fault_of(many + "]}"), "none");
  EXPECT_NE(fault_of(many + R"(,"a"]})").find("plan.too-many /notes"), std::string::npos);
  const auto titled = [](const std::string& title) {
    return fault_of(R"({"berthwright": 1, "title": ")" + title + R"(", "unit": "in",
      "interior": {"length": 120, "width": 76, "height": 76}, "configurations": {"day": []}})");
  };
  std::string half;
  for (int i = 0; i < 200; ++i) half += "½";  // 200 characters, 400 bytes
  EXPECT_EQ(titled(half), "none");
  EXPECT_NE(titled(half + "x").find("text.too-long /title"), std::string::npos);
}

TEST(ReadPlan, ThousandsOfFaultsAreCutShortAndSaidToBe) {
  std::string text =
      R"({"berthwright": 1, "title": "T", "unit": "in", "interior": {"length": 120, "width": 76, "height": 76},
    "configurations": {"day": [)";
  for (int i = 0; i < 2000; ++i)
    text += (i > 0 ? "," : "") + std::string("\n{\"piece\": \"no such piece ") + std::to_string(i) + "\"}";
  const Result<Plan> plan = read_plan(text + "]}}");
  ASSERT_EQ(plan.problems().size(), 1000U);
  EXPECT_EQ(plan.problems().back().id, "plan.many-faults");
}

TEST(ReadPlan, IsTheSameEachTime) {
  const std::string text = repository_text("plans/broken/places.json");
  EXPECT_EQ(read_plan(text).problems(), read_plan(text).problems());
}

}  // namespace
}  // namespace berthwright

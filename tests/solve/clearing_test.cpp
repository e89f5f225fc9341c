#include "solve/clearing.h"

#include "solve/gives_way.h"

#include <gtest/gtest.h>

#include "support/seat_trailers.h"
#include "support/trailer_text.h"

namespace berthwright {
namespace {

constexpr Rect place{{30_in, 20_in}, {50_in, 40_in}};

// A room of 120 x 76 in; the chest stands at 40 to 46 in from the front and 30 to 38 in from the left.
TrailerText with_chest(const std::vector<std::string>& more) {
  TrailerText text;
  text.fixtures = {box("chest", "cabinet", {"40", "30", "6", "8", "0", "30"})};
  text.fixtures.insert(text.fixtures.end(), more.begin(), more.end());
  return text;
}

std::optional<Cure> cure_of(const TrailerText& text, const std::string& thing, const Rect& from = place) {
  const Answered made(text);
  const Arrangement& standing = made.answer.configurations.front().arrangement;
  return clearing(made.plan, standing, *standing.find(thing), from);
}

Cure moved_by(Length by, Wall toward) {
  return {.kind = Cure::Kind::shift, .subject = "chest", .by = by, .side = toward};
}

// Toward the front 46 - 30 = 16 in, the rear 50 - 40 = 10, the left 38 - 20 = 18, the right 40 - 30 = 10: of
// equal ways the rear.
TEST(Clearing, GoesTheShortestWay) {
  EXPECT_EQ(cure_of(with_chest({}), "chest"), moved_by(10_in, Wall::rear));
  EXPECT_EQ(cure_of(with_chest({}), "chest", {{30_in, 20_in}, {49_in + one_tick, 90_in}}),
            moved_by(Length::inches(73, 8), Wall::rear));  // marked out at the next 1/8 in
}

TEST(Clearing, IsTheSameInAMirror) {
  // 76 - 38 = 38 to 46 in from the left; the place from 36 to 56: 56 - 38 = 18 to the right, 46 - 36 = 10
  // left.
  const Rect mirrored{{30_in, 36_in}, {50_in, 56_in}};
  const std::string behind = box("closet", "cabinet", {"55", "0", "10", "76", "0", "60"});
  EXPECT_EQ(cure_of(with_chest({behind}), "chest"), moved_by(10_in, Wall::right));
  EXPECT_EQ(cure_of(with_chest({behind}).mirrored(), "chest", mirrored), moved_by(10_in, Wall::left));
}

TEST(Clearing, TakesAnotherWayWhereSomethingStands) {
  const std::string behind = box("closet", "cabinet", {"55", "0", "10", "76", "0", "60"});
  const std::string beside = box("bench", "bench", {"36", "47", "14", "29", "0", "14"});
  EXPECT_EQ(cure_of(with_chest({behind}), "chest"), moved_by(10_in, Wall::right));
  EXPECT_EQ(cure_of(with_chest({behind, beside}), "chest"), moved_by(16_in, Wall::front));
  // What hangs above it, or is only touched, bars nothing.
  const std::string above = box("locker", "locker", {"50", "30", "10", "8", "30", "60"});
  EXPECT_EQ(cure_of(with_chest({above}), "chest"), moved_by(10_in, Wall::rear));
}

// Shut in on all sides it is cut back, by 10 of its 30 in; if less than 2 in were left, it stays.
TEST(Clearing, CutsBackWhatIsBuiltInAndCannotMove) {
  TrailerText text;
  text.interior = R"({"length": 40, "width": 40, "height": 76})";
  text.fixtures = {box("galley", "counter", {"10", "0", "30", "40", "0", "36"})};
  EXPECT_EQ(cure_of(text, "galley", {{0_in, 0_in}, {20_in, 40_in}}),
            (Cure{.kind = Cure::Kind::shorten, .subject = "galley", .by = 10_in, .side = Wall::front}));
  EXPECT_EQ(cure_of(text, "galley", {{0_in, 0_in}, {39_in, 40_in}}), std::nullopt);
  // Not where a sink is let into the part that would be cut off, from 10 to 20 in.
  text.fixtures.push_back(box("sink", "sink", {"15", "10", "12", "12", "30", "36"}));
  EXPECT_EQ(cure_of(text, "galley", {{0_in, 0_in}, {20_in, 40_in}}), std::nullopt);
}

TEST(Clearing, SetsCushionsAside) {
  TrailerText text;
  text.pieces = {R"({"id": "M", "kind": "cushion", "length": 10, "width": 10, "thickness": 4})"};
  text.day = {R"({"piece": "M", "at": {"front": 35, "left": 25}})"};
  EXPECT_EQ(cure_of(text, "M"), (Cure{Cure::Kind::set_aside, "M", {}}));
}

// What gives heat, bears or guards people, or belongs to the trailer stays, whatever it is in the way of.
TEST(Clearing, LeavesWhatMustStay) {
  for (const char* kind :
       {"guard rail", "wheel arch", "refrigerator", "wall", "ledge", "leg", "tank", "bench"}) {
    TrailerText text;
    text.fixtures = {box("chest", kind, {"40", "30", "6", "8", "0", "30"})};
    EXPECT_EQ(cure_of(text, "chest"), std::nullopt) << kind;
  }
  TrailerText stove;
  stove.fixtures = {
      R"({"id": "chest", "kind": "heater", "length": 6, "width": 8, "at": {"front": 40, "left": 30},
                        "base": 0, "top": 30, "faces": "rear"})"};
  EXPECT_EQ(cure_of(stove, "chest"), std::nullopt);
}

TEST(Clearing, StowsAHeaterThatIsInTheWay) {
  TrailerText text;
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 6, "width": 8, "height": 10, "faces": "front"})"};
  text.day = {R"({"piece": "H", "at": {"front": 40, "left": 30}})"};
  EXPECT_EQ(cure_of(text, "H"), (Cure{Cure::Kind::set_aside, "H", {}}));
}

// The shortest way, 10 in to the rear, would bring the chest from 74 to 64 in of the heater, which is far
// enough; from 24 to 14 in is not, and 10 in to the right lies 38 - 30 = 8 in aside as before.
TEST(Clearing, BringsNothingNearerToHeat) {
  const auto with_heater = [](const char* from_front) {
    return with_chest({R"({"id": "stove", "kind": "heater", "length": 6, "width": 8, "base": 0, "top": 20,
                           "faces": "front", "at": {"left": 30, "front": )" +
                       std::string(from_front) + "}}"});
  };
  EXPECT_EQ(cure_of(with_heater("110"), "chest"), moved_by(10_in, Wall::rear));
  EXPECT_EQ(cure_of(with_heater("70"), "chest"), moved_by(10_in, Wall::right));
}

// In the night a mattress lies on the chest: by day, too, it stays.
TEST(Clearing, LeavesWhatBearsABedInAnotherConfiguration) {
  TrailerText text = with_chest({});
  text.pieces = {R"({"id": "M", "kind": "cushion", "length": 6, "width": 8, "thickness": 4})"};
  text.night = {R"({"piece": "M", "at": {"front": 40, "left": 30}, "on": "chest"})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"]})"};
  EXPECT_EQ(cure_of(text, "chest"), std::nullopt);
  text.night.clear();
  text.beds.clear();
  EXPECT_EQ(cure_of(text, "chest"), moved_by(10_in, Wall::rear));
}

// A chest 44 in high beside a bunk 36 in up keeps people in it; one of 38 in, lower than the mattress, does
// not.
TEST(Clearing, LeavesWhatGuardsABunk) {
  const auto beside = [](const char* top) {
    TrailerText text;
    text.fixtures = {box("chest", "cabinet", {"40", "30", "6", "8", "0", top}),
                     box("bunk", "shelf", {"0", "0", "75", "29", "34", "36"})};
    text.pieces = {R"({"id": "M", "kind": "cushion", "length": 75, "width": 29, "thickness": 4})"};
    text.night = {R"({"piece": "M", "at": {"front": 0, "left": 0}, "on": "bunk"})"};
    text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"]})"};
    return text;
  };
  EXPECT_EQ(cure_of(beside("44"), "chest", {{30_in, 31_in}, {50_in, 40_in}}), std::nullopt);
  EXPECT_TRUE(cure_of(beside("38"), "chest", {{30_in, 31_in}, {50_in, 40_in}}).has_value());
}

TEST(Clearing, TellsOfSeveralWhichStay) {
  const TrailerText text = with_chest({box("rail", "guard rail", {"35", "30", "2", "8", "0", "30"})});
  const Answered made(text);
  const std::vector<std::string> both{"chest", "rail"};
  const Clearance clearance =
      clearing(made.plan, made.answer.configurations.front().arrangement, both, place);
  EXPECT_EQ(clearance.cure, moved_by(10_in, Wall::rear));
  EXPECT_EQ(clearance.staying, std::vector<std::string>{"rail"});
}

TEST(Clearing, LeavesWhatCarriesSomethingWhereItIs) {
  TrailerText text = with_chest({});
  text.pieces = {R"({"id": "M", "kind": "cushion", "length": 6, "width": 8, "thickness": 4})"};
  text.day = {R"({"piece": "M", "at": {"front": 40, "left": 30}, "on": "chest"})"};
  const Answered made(text);
  const Arrangement& standing = made.answer.configurations.front().arrangement;
  EXPECT_FALSE(has_room_to_move(made.plan, standing, *standing.find("chest"), Wall::rear, 1_in));
  EXPECT_TRUE(has_room_to_move(made.plan, standing, *standing.find("M"), Wall::rear, 1_in));
}

}  // namespace
}  // namespace berthwright

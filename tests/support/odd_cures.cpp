#include "support/odd_cures.h"

#include "support/seat_trailers.h"
#include "support/small_trailers.h"
#include "support/way_trailers.h"

namespace berthwright {
namespace {

// A plank on a plank on a bench, reaching far beyond it; a cushion half on a low board and half on the floor.
TrailerText on_loose_boards() {
  TrailerText text;
  text.fixtures = {box("bench", "bench", {"0", "0", "30", "20", "0", "14"})};
  text.pieces = {
      R"({"id": "U", "kind": "board", "length": 30, "width": 20, "thickness": 1})",
      R"({"id": "T", "kind": "board", "length": 30, "width": 30, "thickness": 1, "material": "plywood"})",
      R"({"id": "low", "kind": "board", "length": 30, "width": 20, "thickness": 1})",
      R"({"id": "M", "kind": "cushion", "length": 30, "width": 30, "thickness": 4})"};
  text.day = {R"({"piece": "U", "at": {"front": 0, "left": 0}})",
              R"({"piece": "T", "at": {"front": 0, "left": 0}})",
              R"({"piece": "low", "at": {"front": 60, "left": 0}})",
              R"({"piece": "M", "at": {"front": 60, "left": 0}})"};
  return text;
}

// A cushion on the floor in the sweep of a door, and a door that a wall of the room stops.
TrailerText leaves_stopped_by_what_stays() {
  TrailerText text = what_opens("20");
  text.night = {R"({"piece": "M", "at": {"front": 30, "left": 22}, "on": "floor"})"};
  text.fixtures.push_back(R"({"id": "closet", "kind": "cabinet", "length": 20, "width": 20, "top": 60,
      "at": {"front": 0, "right": 4}, "opens": [{"id": "hatch", "kind": "door", "face": "right", "hinge": "front"}]})");
  text.pieces.push_back(R"({"id": "pouf", "kind": "cushion", "length": 10, "width": 10, "thickness": 10})");
  text.day = {text.day.front(), R"({"piece": "pouf", "at": {"front": 53, "left": 21}, "on": "floor"})"};
  return text;
}

TrailerText inward(const std::string& more_fixture) {
  TrailerText text = way_trailer();
  text.openings[0] =
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 80, "width": 26, "height": 68,
                         "sill": 2, "opens": "in", "hinge": "front"})";
  if (!more_fixture.empty()) text.fixtures.push_back(more_fixture);
  return text;
}

// A stool that only the hinge on the other side clears; a cushion on the floor behind the door.
std::vector<TrailerText> doors_that_swing_in() {
  TrailerText hung = inward(box("stool", "cabinet", {"80", "50", "6", "6", "0", "18"}));
  TrailerText soft = inward("");
  soft.pieces.push_back(R"({"id": "pouf", "kind": "cushion", "length": 10, "width": 10, "thickness": 10})");
  soft.night.push_back(R"({"piece": "pouf", "at": {"front": 85, "left": 56}, "on": "floor"})");
  return {hung, soft};
}

// Bedding that only another bench holds.
TrailerText bedding_for_the_other_bench() {
  TrailerText text = two_benches("0", "14");
  text.fixtures[0].insert(1, R"("inside": {"length": 22, "width": 18, "height": 12}, )");
  text.fixtures[1].insert(1, R"("inside": {"length": 60, "width": 20, "height": 13}, )");
  text.beds[0].insert(1,
                      R"("bedding": {"kept_in": "left bench", "length": 20, "width": 16, "height": 13}, )");
  return text;
}

TrailerText unmarked_window() {
  TrailerText text = way_trailer();
  const std::string marked = R"(, "escape": true)";
  text.openings[1].erase(text.openings[1].find(marked), marked.size());
  return text;
}

// Two who are longer than the room; a waist between the walls; a door too narrow; a stove that no corner is
// far from.
std::vector<TrailerText> rooms_too_small() {
  TrailerText two = bunk("50", "30", "10", "11");
  two.interior = R"({"length": 60, "width": 45, "height": 76})";
  two.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"], "people": [
                  {"name": "Gog", "stature": "7 ft"}, {"name": "Ann", "stature": "5 ft"}]})"};
  TrailerText waist = way_trailer();
  waist.interior =
      R"({"height": 80, "outline": [[0, 0], [50, 0], [50, 30], [60, 30], [60, 0], [120, 0], [120, 76],
                       [60, 76], [60, 46], [50, 46], [50, 76], [0, 76]]})";
  TrailerText narrow = way_trailer();
  narrow.openings[0] = R"({"id": "door", "kind": "door", "wall": "right", "from_front": 80, "width": 16,
                           "height": 68, "sill": 2})";
  TrailerText galley = way_trailer();
  galley.interior = R"({"length": 107, "width": 76, "height": 80})";
  galley.fixtures.push_back(R"({"id": "stove", "kind": "cooktop", "length": 12, "width": 12, "faces": "left",
                                "at": {"rear": 0, "right": 0}, "base": 36, "top": 38})");
  galley.fixtures.push_back(smoke_alarm("70", "74"));
  return {two, waist, narrow, galley};
}

// Two chests before the bed, of which neither alone shuts the way; a bunk higher than the sill of its window
// may be; a cooktop near a cushion and farther off than its plate asks.
std::vector<TrailerText> what_stays_as_it_is() {
  TrailerText shut = way_trailer();
  for (const auto& [id, front] : {std::pair{"near chest", "38"}, {"far chest", "40"}})
    shut.fixtures.push_back(box(id, "cabinet", {front, "0", "2", "76", "0", "50"}));
  TrailerText high = bunk("75", "24", "45", "46");
  high.openings = {
      R"({"id": "hatch", "kind": "window", "wall": "left", "from_front": 10, "width": 30, "height": 20,
                       "sill": 52, "opens": "out", "escape": true})"};
  TrailerText plated = two_benches("0", "14");
  plated.fixtures.push_back(
      R"({"id": "hob", "kind": "cooktop", "length": 10, "width": 10, "base": 14, "top": 18,
      "faces": "rear", "at": {"left": 6, "front": 105},
      "data_plate": {"front": 2, "back": 2, "sides": 2, "top": 20}})");
  plated.day = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "left bench"})"};
  return {shut, high, plated};
}

// A refrigerator in the swing of a door and one before the window; a board longer than the room.
std::vector<TrailerText> what_must_stay_on_the_way() {
  TrailerText icebox = inward(box("icebox", "refrigerator", {"85", "50", "16", "10", "0", "60"}));
  TrailerText window = way_trailer();
  window.fixtures.push_back(box("icebox", "refrigerator", {"40", "0", "15", "12", "0", "60"}));
  TrailerText plank = way_trailer();
  plank.pieces.push_back(R"({"id": "plank", "kind": "board", "length": 130, "width": 5, "thickness": 1})");
  plank.day = {R"({"piece": "plank", "at": {"front": 0, "right": 0}})"};
  return {icebox, window, plank};
}

// A refrigerator over a seat and one over a bed on the floor; seats on wheel arches under a low roof; a room
// too short for any berth.
std::vector<TrailerText> what_must_stay_overhead() {
  TrailerText seat =
      booth({.bench_top = "13", .more = {box("icebox", "refrigerator", {"0", "0", "23", "42", "45", "70"})}});
  TrailerText arches = booth({.room_height = "55"});
  for (std::string& fixture : arches.fixtures)
    fixture.replace(fixture.find(R"("bench",)"), 8, R"("wheel arch",)");
  TrailerText low = bunk("75", "24", "0", "1");
  low.fixtures.push_back(box("icebox", "refrigerator", {"0", "0", "75", "24", "15", "60"}));
  TrailerText tiny = bunk("50", "30", "10", "11");
  tiny.interior = R"({"length": 52, "width": 40, "height": 76})";
  return {seat, arches, low, tiny};
}

// A heater that is off on the road and held by nothing; a bunk with a rail and thin foam.
std::vector<TrailerText> what_must_be_held() {
  TrailerText off = what_opens("20");
  off.road = {R"({"piece": "H", "at": {"front": 53, "left": 40}, "state": "off"})"};
  TrailerText railed = bunk("75", "24", "45", "46");
  railed.pieces = {R"({"id": "M", "kind": "cushion", "length": 75, "width": 24, "thickness": 3})"};
  railed.fixtures.push_back(box("rail", "guard rail", {"0", "24", "75", "1", "45", "56"}));
  return {off, railed};
}

}  // namespace

std::vector<TrailerText> plans_with_odd_cures() {
  std::vector<TrailerText> plans{
      on_loose_boards(),
      two_benches("20", "14"),
      leaves_stopped_by_what_stays(),
      bedding_for_the_other_bench(),
      unmarked_window(),
      booth({.more = {box("chest", "cabinet", {"27", "0", "22", "42", "0", "22"})}})};
  TrailerText outside;
  outside.fixtures = {box("stool", "bench", {"150", "30", "20", "20", "0", "14"})};
  outside.pieces = {R"({"id": "A", "kind": "cushion", "length": 20, "width": 20, "thickness": 4})"};
  outside.day = {R"({"piece": "A", "at": {"front": 150, "left": 30}})"};
  plans.push_back(outside);
  for (TrailerText& text : doors_that_swing_in()) plans.push_back(std::move(text));
  for (TrailerText& text : rooms_too_small()) plans.push_back(std::move(text));
  for (TrailerText& text : what_stays_as_it_is()) plans.push_back(std::move(text));
  for (TrailerText& text : what_must_stay_on_the_way()) plans.push_back(std::move(text));
  for (TrailerText& text : what_must_be_held()) plans.push_back(std::move(text));
  for (TrailerText& text : what_must_stay_overhead()) plans.push_back(std::move(text));
  return plans;
}

}  // namespace berthwright

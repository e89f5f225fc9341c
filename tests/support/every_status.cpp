#include "support/every_status.h"

#include "support/board_trailers.h"
#include "support/cord_trailers.h"
#include "support/seat_trailers.h"
#include "support/small_bunks.h"
#include "support/small_trailers.h"
#include "support/way_trailers.h"

namespace berthwright {
namespace {

TrailerText with_fixture(TrailerText text, const std::string& fixture) {
  text.fixtures.push_back(fixture);
  return text;
}

// On the road: a back on edge and a heater about without a hold; the same stowed behind a lid that is
// latched.
std::vector<TrailerText> travelling() {
  TrailerText loose = what_opens("20");
  loose.road = {
      R"({"piece": "M", "at": {"rear": 0, "left": 0}, "stands_on": "length", "faces": "right", "on": "bench"})",
      loose.day[1]};
  TrailerText held = what_opens("20");
  for (std::string& fixture : held.fixtures)
    fixture.insert(fixture.find(R"("hinge")"), R"("held_by": "latch", )");
  held.road = {R"({"piece": "M", "stowed": "bench"})", R"({"piece": "H", "stowed": "lid"})"};
  return {loose, held};
}

}  // namespace

std::vector<TrailerText> plans_of_every_status() {
  std::vector<TrailerText> plans{
      bunk("80", "30", "10", "11"), bunk("75", "24", "30", "31"), bunk("74", "24", "55", "56"),
      bunk("70", "20", "56", "57"), two_benches("0", "14 1/4"),   two_benches("1", "14 1/2"),
      two_benches("2", "14"),       two_benches("0", "17"),       three_heights()};
  const BoardBetweenBenches low{.left_ledge = "12.797", .right_ledge = "12.797", .back = "3"};
  for (const TrailerText& text :
       {board_between_benches(), board_between_benches({.right_ledge = "12.797"}),
        board_between_benches({.left_ledge = "13.5", .right_ledge = "13.5", .ledge_length = "36"}),
        board_between_benches(low), cushion_on_two_benches("13 1/2"), cushion_on_two_benches("13 3/4"),
        board_between_benches({.ledge_width = "3/4"}), table_on_the_bed()})
    plans.push_back(text);
  for (TrailerText& text : plans_of_sleepers()) plans.push_back(std::move(text));
  for (const char* base : {"37", "39"})
    plans.push_back(with_fixture(bunk("75", "24", "10", "11"),
                                 std::string(R"({"id": "locker", "kind": "locker", "length": 75, "width": 24,
                                     "at": {"front": 0, "left": 0}, "top": 50, "base": )") +
                                     base + "}"));
  for (const char* gap : {"0.5", "1", "2"})
    plans.push_back(with_fixture(two_benches("0", "14"),
                                 std::string(R"({"id": "wall", "kind": "wall", "length": 75, "width": 2,
                                     "at": {"front": 0, "right_of": ["right bench", )") +
                                     gap + R"(]}, "top": 76})"));
  for (const char* width : {"24", "30"}) {
    TrailerText text = bunk("75", width, "10", "11");
    text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"],
                     "people": [{"name": "Dot", "stature": "70 3/4"}]})"};
    plans.push_back(text);
  }
  for (const char* front : {"45", "45 1/4", "60"}) {
    TrailerText text = bunk("75", "24", "10", "11");
    text.night = {std::string(R"({"piece": "M", "at": {"front": ")") + front +
                  R"(", "left": 0}, "base": 11})"};
    plans.push_back(text);
  }
  // A heater 29, 30, 36 or 59 in before a bench cushion, whose plate asks for 30 at the front or does not
  // say.
  for (const char* plate :
       {R"("front": 30, "back": 3, "sides": 3, "top": 3)", R"("back": 3, "sides": 3, "top": 3)"})
    for (const char* front : {"66", "67", "73", "96"}) {
      TrailerText text = two_benches("0", "14");
      text.interior = R"({"length": 160, "width": 76, "height": 76})";
      text.pieces.back() =
          std::string(R"({"id": "H", "kind": "heater", "length": 8, "width": 10, "height": 15,
                               "faces": "front", "data_plate": {)") +
          plate + "}}";
      text.day = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "left bench"})",
                  std::string(R"({"piece": "H", "on": "floor", "at": {"left": 6, "front": )") +
                      std::to_string(std::stoi(front) + 38) + "}}"};
      plans.push_back(text);
    }
  // A cooktop 30, 36 or 40 in behind a cushion of 75 in, a screen between the two.
  for (const char* front : {"105", "111", "115"}) {
    TrailerText text = two_benches("0", "14");
    text.interior = R"({"length": 160, "width": 76, "height": 76})";
    text.fixtures.push_back(std::string(R"({"id": "hob", "kind": "cooktop", "length": 10, "width": 10,
        "base": 14, "top": 18, "faces": "rear", "at": {"left": 6, "front": )") +
                            front + "}}");
    text.fixtures.push_back(R"({"id": "screen", "kind": "cabinet", "length": 2, "width": 30, "top": 40,
        "at": {"left": 0, "front": 90}})");
    text.day = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "left bench"})"};
    plans.push_back(text);
  }
  // Foam too thin, just thick enough, too soft, firm enough, unknown, in newtons.
  for (const char* foam :
       {R"("thickness": 2)", R"("thickness": "3 1/2", "foam": "1824")", R"("thickness": 4, "foam": "2535")",
        R"("thickness": 5, "foam": "40 kg/m3, 170 N")"}) {
    TrailerText text = bunk("75", "24", "10", "11");
    text.pieces = {std::string(R"({"id": "M", "kind": "cushion", "length": 75, "width": 24, )") + foam + "}"};
    plans.push_back(text);
  }
  // A heater before a door, far enough off or not; a lid too large for its top.
  for (const char* before : {"6", "12 1/2", "20"}) plans.push_back(what_opens(before));
  TrailerText odd = what_opens("20");
  odd.fixtures[1].insert(1, R"("corners": {"rear left": {"notch": [18, 7]}}, )");
  plans.push_back(odd);
  for (TrailerText text : travelling()) plans.push_back(text);
  // Boards of an unknown panel, a weak one, a strong one and one that is strong both ways, the grain each
  // way.
  for (const char* panel :
       {"", R"("panel": "24/0", )", R"("panel": "48/24", )", R"("panel": "birch 24 mm", )"})
    for (const char* grain : {"", R"("grain": "length", )", R"("grain": "width", )"}) {
      TrailerText text = board_between_benches();
      text.pieces.front().insert(1, std::string(panel) + grain);
      plans.push_back(text);
    }
  TrailerText overlapping = two_benches("0", "14");
  overlapping.night[1] =
      R"({"piece": "B", "at": {"front": 0, "left": "23 3/4"}, "on": ["left bench", "right bench"]})";
  plans.push_back(overlapping);
  overlapping.night[1] =
      R"({"piece": "B", "at": {"front": 0, "left": "20"}, "on": ["left bench", "right bench"]})";
  plans.push_back(overlapping);
  for (const char* height : {"10", "13"}) {
    TrailerText text = two_benches("0", "14");
    text.fixtures[0].insert(1, R"("inside": {"length": 22, "width": 18, "height": 12}, )");
    text.beds[0].insert(1, R"("bedding": {"kept_in": "left bench", "length": 20, "width": 16, "height": )" +
                               std::string(height) + "}, ");
    plans.push_back(text);
  }
  for (TrailerText& text : seats_of_every_status()) plans.push_back(std::move(text));
  for (TrailerText& text : ways_of_every_status()) plans.push_back(std::move(text));
  for (TrailerText& text : cords_of_every_status()) plans.push_back(std::move(text));
  return plans;
}

const std::vector<std::unique_ptr<const Answered>>& answers_of_every_status() {
  static const auto answers = [] {
    std::vector<std::unique_ptr<const Answered>> made;
    for (const TrailerText& text : plans_of_every_status())
      made.push_back(std::make_unique<const Answered>(text));
    return made;
  }();
  return answers;
}

}  // namespace berthwright

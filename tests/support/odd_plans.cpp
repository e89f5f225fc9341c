#include "support/odd_plans.h"

#include <array>
#include <functional>

#include <berthwright/exact/measure.h>
#include <berthwright/geometry/four_walls.h>
#include <berthwright/geometry/outline.h>
#include <berthwright/plan/plan.h>
#include <berthwright/write/interview.h>

#include "solve/room/laying_order.h"
#include "support/odd_cures.h"
#include "support/plan_builder.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

std::string repeated(std::string_view one, std::size_t times) {
  std::string all;
  for (std::size_t i = 0; i < times; ++i) all += (i > 0 ? ", " : "") + std::string(one);
  return all;
}

std::string headed(const std::string& rest) {
  return R"({"berthwright": 1, "title": "Odd", "unit": "in",
             "interior": {"length": 120, "width": 76, "height": 76}, )" +
         rest + "}";
}

void keep_all(Problems& all, const Problems& more) { all.insert(all.end(), more.begin(), more.end()); }

using Change = std::function<void(PlanParts&)>;

// Fixture 6 of the example is the galley: a drawer, a door and a flap. Pose 11 of the day is the heater's.
std::vector<Change> promises_broken_in_the_room() {
  return {[](PlanParts& p) { p.interior.height += one_tick; },
          [](PlanParts& p) { p.openings[0].height = Length{}; },
          [](PlanParts& p) { p.openings[1].id = OpeningId(""); },
          [](PlanParts& p) { p.fixtures[6].leaves[0].fixture = FixtureId("sink"); },
          [](PlanParts& p) { p.fixtures[6].leaves[0].pull = Length{}; },
          [](PlanParts& p) { p.fixtures[6].leaves[0].hinge = Leaf::Edge::front; },
          [](PlanParts& p) { p.fixtures[6].leaves[1].hinge.reset(); },
          [](PlanParts& p) { p.fixtures[6].leaves[1].stop = Turn{}; },
          [](PlanParts& p) { p.fixtures[2].leaves[0].outline.high.y += one_tick; },
          [](PlanParts& p) {
            p.fixtures[2].solid = Solid(Rect{{0_in, 0_in}, {1_in, 1_in}}, 0_in, 1_in);
          }};
}

std::vector<Change> promises_broken_by_pieces() {
  return {[](PlanParts& p) { p.pieces[0].thickness = Length{}; },
          [](PlanParts& p) { p.pieces[11].cord->length = Length{}; },
          [](PlanParts& p) { p.pieces[6].sewing = Sewing{}; },
          [](PlanParts& p) { p.sewing.fabric.roll = Length{}; },
          [](PlanParts& p) { p.lifting.reach = Length{}; },
          [](PlanParts& p) { p.lifting = {.weight = Mass::pounds(50), .reach = {}, .reason = ""}; },
          [](PlanParts& p) { p.beds[0].people[0].width = Length{}; },
          [](PlanParts& p) { p.configurations[0].poses[0].outline = Region(); },
          [](PlanParts& p) { p.configurations[0].poses[0].plugged_into = "outlet"; },
          [](PlanParts& p) { p.overrides[0].reason = ""; },
          [](PlanParts& p) {
            p.configurations.clear();
            p.beds.clear();
          },
          [](PlanParts& p) {
            p.chassis = Chassis{};
            p.chassis->weighed = Weighed{};
            p.chassis->weighed->with_everything = true;
          }};
}

// Two pieces that carry each other: in a file the second of them is refused as laid later.
Problems circle_of_poses() {
  Configuration configuration = example()->configurations[0];
  configuration.poses.resize(2);
  for (std::size_t i = 0; i < 2; ++i) {
    configuration.poses[i].on = {configuration.poses[1 - i].piece.text()};
    configuration.poses[i].manner = Pose::Manner::flat;
  }
  return laying_order(configuration).problems();
}

Problems wrong_answers_to(const std::string& before, const std::vector<std::string>& answers) {
  Problems all;
  const Interview asked = interview_from(before, true).value();
  for (const std::string& answer : answers) keep_all(all, asked.answered(answer).problems());
  return all;
}

}  // namespace

std::vector<std::string> texts_that_are_no_plan() {
  const std::string cushion = R"({"id": "A", "kind": "cushion", "length": 40, "width": 22, "thickness": 4})";
  return {"",
          R"({"title": 'Wren'})",
          R"({"width": "74 1/2" in})",
          "{\"width\": \"74 1/2 in\n\"}",
          R"({"width": 74 1/2})",
          R"({"width": seventy})",
          R"({"width": +5})",
          R"({"title": "5 \q"})",
          "{\"title\": \"\xff\"}",
          R"({"width": 5.})",
          "{\"width\": 5 / 8}",
          R"({"title": "Wren)",
          R"({"width" 5})",
          R"({"width": })",
          R"({width: 5})",
          R"({"a": 5]})",
          R"({"title": "Wren")",
          R"({"width": 1e999})",
          "{\"title\": \"a\tb\"}",
          "{\"a\": 1, # remark\n}",
          R"({"a": 1} {)",
          "[" + repeated("0", 200'001) + "]",
          std::string(4U * 1024 * 1024 + 1, ' '),
          headed(R"("notes": [)" + repeated("\"n\"", 2001) + R"(], "configurations": {"day": []})"),
          headed(R"("pieces": [)" + repeated(cushion, 1200) + R"(], "configurations": {"day": []})")};
}

std::vector<std::string> plans_that_do_not_stand() {
  const std::string two =
      R"("fixtures": [{"id": "bench", "kind": "bench", "length": 40, "width": 22, "top": 14,
                                           "at": {"front": 0, "left": 0}}],
    "pieces": [{"id": "A", "kind": "cushion", "length": 40, "width": 22, "thickness": 4},
               {"id": "B", "kind": "cushion", "length": 40, "width": 22, "thickness": 4}], )";
  const auto posed = [&](const std::string& a, const std::string& b) {
    return headed(two + R"("configurations": {"day": [{"piece": "A", )" + a + R"(}, {"piece": "B", )" + b +
                  "}]}");
  };
  return {posed(R"("at": {"rear": 0, "right": 0}, "on": "bench")", R"("at": {"front": 0, "left": 0})"),
          posed(R"("at": {"front": 50, "left": 0})", R"("at": {"front": 60, "left": 0}, "on": "floor")")};
}

TrailerText plan_that_is_too_large_to_site() {
  TrailerText text = two_benches("0", "14");
  text.interior = R"({"length": "12 m", "width": "8 m", "height": 76})";
  return text;
}

std::vector<TrailerText> plans_that_say_more() {
  std::vector<TrailerText> all;
  // Bedding of no size, and a place of no size.
  for (const char* linen : {R"({"kept_in": "left bench"})",
                            R"({"kept_in": "left bench", "length": 20, "width": 16, "height": 10})"}) {
    TrailerText text = two_benches("0", "14");
    text.beds[0].insert(1, "\"bedding\": " + std::string(linen) + ", ");
    all.push_back(text);
  }
  // Two round corners that meet leave an opening in the bed.
  TrailerText rounded = two_benches("0", "14");
  rounded.pieces[0].insert(1, R"("corners": {"rear right": {"round": 2}, "front right": {"round": 2}}, )");
  all.push_back(rounded);
  // A board in the air, and one of unknown wood that reaches far beyond its bench.
  TrailerText boards;
  boards.fixtures = {
      R"({"id": "bench", "kind": "bench", "length": 30, "width": 20, "top": 14, "at": {"front": 0, "left": 0}})"};
  boards.pieces = {
      R"({"id": "T", "kind": "board", "length": 30, "width": 30, "thickness": 1, "material": "pine"})",
      R"({"id": "U", "kind": "board", "length": 30, "width": 30, "thickness": 1})"};
  boards.day = {R"({"piece": "T", "at": {"front": 0, "left": 0}})",
                R"({"piece": "U", "at": {"front": 60, "left": 20}, "base": 30})"};
  all.push_back(boards);
  // A lid that lifts out under a cushion and a shelf, and a door that a cabinet stands against.
  TrailerText shut;
  shut.fixtures = {R"({"id": "bench", "kind": "bench", "length": 40, "width": 20, "top": 14,
                       "at": {"front": 0, "left": 0}, "opens": [{"id": "lid", "kind": "lid", "hinge": "lifts out"}]})",
                   R"({"id": "shelf", "kind": "shelf", "length": 40, "width": 20, "base": 20, "top": 21,
                       "at": {"front": 0, "left": 0}})",
                   R"({"id": "galley", "kind": "cabinet", "length": 20, "width": 20, "top": 36,
                       "at": {"front": 60, "left": 0}, "opens": [
                         {"id": "door", "kind": "door", "face": "right", "hinge": "front"}]})",
                   R"({"id": "chest", "kind": "cabinet", "length": 20, "width": 20, "top": 36,
                       "at": {"front": 60, "right_of": ["galley", 0]}})"};
  shut.pieces = {R"({"id": "A", "kind": "cushion", "length": 40, "width": 20, "thickness": 4})"};
  shut.day = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "bench"})"};
  all.push_back(shut);
  for (TrailerText& text : plans_with_odd_cures()) all.push_back(std::move(text));
  return all;
}

const std::vector<std::unique_ptr<const Answered>>& answers_that_say_more() {
  static const auto answers = [] {
    std::vector<std::unique_ptr<const Answered>> made;
    for (const TrailerText& text : plans_that_say_more())
      made.push_back(std::make_unique<const Answered>(text));
    return made;
  }();
  return answers;
}

Problems told_to_programs() {
  Problems all;
  for (std::vector<Change> changes : {promises_broken_in_the_room(), promises_broken_by_pieces()})
    for (const Change& change : changes) {
      PlanParts parts = *example().operator->();
      change(parts);
      keep_all(all, Plan::checked(std::move(parts)).problems());
    }
  keep_all(all, read_length("\xff", Unit::inch).problems());
  keep_all(all, read_mass("\xff", Unit::inch).problems());
  keep_all(all, read_turn("\xff").problems());
  keep_all(all, Outline::worked({.length = 0_in, .width = 5_in, .corners = {}}).problems());
  keep_all(all, Outline::worked({.length = 9_in, .width = 5_in, .corners = {Round{0_in}}}).problems());
  keep_all(all, circle_of_poses());
  keep_all(all, fitted({.front = 76_in, .rear = 76_in, .left = 120_in, .right = 120_in}).problems());
  return all;
}

Problems told_to_answers() {
  Problems all = wrong_answers_to("unit: in\n", {"", "long", "0"});
  const std::string room = "unit: in\nlength: 120\nwidth: 76\nheight: 76\n";
  keep_all(all, wrong_answers_to(room, {"110"}));
  keep_all(all, interview_from("title: Wren\n", false).value().answered("feet").problems());
  for (const char* text : {"title: a\tb\n", "title\n"}) keep_all(all, interview_from(text, false).problems());
  keep_all(all, interview_from(room + "door-from: 20\nhammock: yes\n", true).problems());
  keep_all(all, interview_from(room + "door-from: 20\nlayout: side dinette\nfrom-front: 30\nbed-length: 20\n",
                               true)
                    .problems());
  const Result<Interview> askew = interview_from(
      "unit: in\nsquare: no\nfront: 76\nrear: 76\nleft: 120\nright: 120\nfront-left-to-rear-right: 300\n"
      "front-right-to-rear-left: 142\nheight: 76\ndoor-from: 20\n",
      true);
  keep_all(all, started_plan(askew.value()).problems());
  return all;
}

}  // namespace berthwright

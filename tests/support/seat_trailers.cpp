#include "support/seat_trailers.h"

namespace berthwright {
namespace {

std::string member(const std::string& name, const std::string& value) {
  return '"' + name + R"(": ")" + value + '"';
}

}  // namespace

std::string box(const std::string& id, const std::string& kind, const std::array<std::string, 6>& sides) {
  const auto& [front, left, length, width, base, top] = sides;
  return "{" + member("id", id) + ", " + member("kind", kind) + ", " + member("length", length) + ", " +
         member("width", width) + R"(, "at": {)" + member("front", front) + ", " + member("left", left) +
         "}, " + member("base", base) + ", " + member("top", top) + "}";
}

TrailerText booth(const Booth& b) {
  TrailerText text;
  text.interior = R"({"length": 76, "width": 76, "height": ")" + b.room_height + R"("})";
  const auto piece = [](const std::string& id, const std::string& kind, const std::string& length,
                        const std::string& width, const std::string& thickness) {
    return "{" + member("id", id) + ", " + member("kind", kind) + ", " + member("length", length) + ", " +
           member("width", width) + ", " + member("thickness", thickness) + "}";
  };
  const std::string bench = ", " + member("length", b.bench_depth) + ", " + member("width", b.bench_width) +
                            R"(, "kind": "bench", )" + member("top", b.bench_top);
  text.fixtures = {R"({"id": "front bench")" + bench + R"(, "at": {"front": 0, "left": 0}})",
                   R"({"id": "rear bench")" + bench + R"(, "at": {"rear": 0, "left": 0}})"};
  text.fixtures.insert(text.fixtures.end(), b.more.begin(), b.more.end());
  text.pieces = {piece("A", "cushion", b.bench_depth, b.bench_width, "4"),
                 piece("D", "cushion", b.bench_depth, b.bench_width, "4")};
  text.day = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "front bench"})",
              R"({"piece": "D", "at": {"rear": 0, "left": 0}, "on": "rear bench"})"};
  if (!b.back.empty()) {
    text.pieces.push_back(piece("B", "cushion", b.back, b.bench_width, "4"));
    text.pieces.push_back(piece("C", "cushion", b.back, b.bench_width, "4"));
    text.day.push_back(
        R"({"piece": "B", "at": {"front": 0, "left": 0}, "stands_on": "width", "faces": "rear", "on": "A"})");
    text.day.push_back(
        R"({"piece": "C", "at": {"rear": 0, "left": 0}, "stands_on": "width", "faces": "front", "on": "D"})");
  }
  if (!b.table_base.empty()) {
    text.pieces.push_back(piece("table", "table", b.table_length, b.bench_width, "0.703"));
    text.day.push_back(R"({"piece": "table", "at": {)" + member("front", b.table_front) +
                       R"(, "left": 0}, )" + member("base", b.table_base) + "}");
  }
  return text;
}

std::vector<TrailerText> seats_of_every_status() {
  std::vector<TrailerText> plans{
      booth({}),
      booth({.bench_top = "12", .back = "11", .table_base = "23"}),  // low, low back, low for knees
      booth({.bench_top = "18", .back = "24", .table_base = "28"}),  // high, high back, no room for thighs
      booth({.bench_top = "13", .table_base = "24"}),                // a low table
      booth({.bench_top = "14", .table_base = "30"}),                // a high one
      booth({.bench_depth = "21", .back = "21"}),                    // nearly shallow, nearly a high back
      booth({.bench_depth = "18", .table_front = "20", .table_length = "36"}),  // shallow, table away
      booth({.bench_depth = "26", .table_front = "20", .table_length = "36"}),  // deep, table over
      booth({.bench_width = "22", .table_front = "23", .table_length = "20"}),  // for one, tightly
      booth({.bench_width = "20", .table_base = "", .room_height = "50"})};     // too short, a low roof
  plans.push_back(
      booth({.more = {box("wardrobe", "cabinet", {"0", "42", "76", "10", "0", "60"})}}));  // no way in
  plans.push_back(booth({.more = {box("crank", "protrusion", {"8", "0", "4", "3", "40", "44"}),
                                  box("latch", "protrusion", {"6", "0", "2", "3", "26", "28"}),
                                  box("shelf", "shelf", {"0", "0", "6", "42", "50", "51"})}}));
  plans.push_back(booth({.more = {box("locker", "locker", {"0", "0", "14", "42", "48", "64"})}}));
  TrailerText bed = booth({.more = {box("crank", "protrusion", {"1", "20", "3", "3", "22", "25"})}});
  bed.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "front bench"})"};
  bed.beds = {R"({"id": "bed", "name": "Cot", "configuration": "night", "pieces": ["A"]})"};
  plans.push_back(bed);
  TrailerText alone;  // in the middle of the room: no back, no wall
  alone.fixtures = {box("stool", "bench", {"50", "30", "20", "20", "0", "14"})};
  alone.pieces = {R"({"id": "A", "kind": "cushion", "length": 20, "width": 20, "thickness": 4})"};
  alone.day = {R"({"piece": "A", "at": {"front": 50, "left": 30}})"};
  plans.push_back(alone);
  return plans;
}

}  // namespace berthwright

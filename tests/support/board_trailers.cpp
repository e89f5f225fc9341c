#include "support/board_trailers.h"

namespace berthwright {
namespace {

std::string solid(const std::string& id, const std::string& kind, const std::string& across,
                  const std::string& length, const std::string& width, const std::string& base,
                  const std::string& top) {
  return R"({"id": ")" + id + R"(", "kind": ")" + kind + R"(", "length": ")" + length + R"(", "width": ")" +
         width + R"(", "at": {"front": 0, )" + across + R"(}, "base": ")" + base + R"(", "top": ")" + top +
         R"("})";
}

std::string cushion(const std::string& id, const std::string& width, const std::string& thickness) {
  return R"({"id": ")" + id + R"(", "kind": "cushion", "length": 40, "width": ")" + width +
         R"(", "thickness": ")" + thickness + R"("})";
}

std::string laid(const std::string& id, const std::string& across) {
  return R"({"piece": ")" + id + R"(", "at": {"front": 0, )" + across + "}}";
}

}  // namespace

TrailerText board_between_benches(const BoardBetweenBenches& heights) {
  TrailerText text;
  text.interior = R"({"length": 120, "width": 70, "height": 76})";
  text.fixtures = {solid("left bench", "bench", R"("left": 0)", "40", "20", "0", "14"),
                   solid("right bench", "bench", R"("right": 0)", "40", "20", "0", "14"),
                   solid("left ledge", "ledge", R"("left": 20)", heights.ledge_length, heights.ledge_width,
                         "11", heights.left_ledge),
                   solid("right ledge", "ledge", R"("right": 20)", heights.ledge_length, heights.ledge_width,
                         "11", heights.right_ledge)};
  text.pieces = {R"({"id": "board", "kind": "board", "length": 40, "width": "29 3/4", "thickness": "0.703",
                     "material": "23/32 plywood"})",
                 cushion("left seat", "20", heights.seat), cushion("left back", "15", heights.back),
                 cushion("right back", "15", heights.back), cushion("right seat", "20", heights.seat)};
  text.night = {laid("board", R"("left": "20 1/8")"), laid("left seat", R"("left": 0)"),
                laid("left back", R"("left": 20)"), laid("right back", R"("right": 20)"),
                laid("right seat", R"("right": 0)")};
  text.beds = {R"({"id": "bed", "configuration": "night",
                   "pieces": ["left seat", "left back", "right back", "right seat"]})"};
  return text;
}

TrailerText cushion_on_two_benches(const std::string& low) {
  TrailerText text;
  text.fixtures = {solid("high", "bench", R"("left": 0)", "25", "30", "0", "14"),
                   R"({"id": "low", "kind": "bench", "length": 15, "width": 30,
                       "at": {"behind": ["high", 0], "left": 0}, "top": ")" +
                       low + R"("})"};
  text.pieces = {cushion("cushion", "30", "4")};
  text.night = {laid("cushion", R"("left": 0)")};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["cushion"]})"};
  return text;
}

TrailerText table_on_the_bed() {
  TrailerText text;
  text.fixtures = {solid("bench", "bench", R"("left": 0)", "40", "30", "0", "14")};
  text.pieces = {cushion("cushion", "30", "4"),
                 R"({"id": "plank", "kind": "board", "length": 40, "width": 20, "thickness": 1})",
                 R"({"id": "leg", "kind": "leg", "length": 2, "width": 2, "thickness": 27})",
                 R"({"id": "table", "kind": "table", "length": 30, "width": 20, "thickness": "0.703"})"};
  text.day = {laid("leg", R"("left": 60)"), laid("table", R"("left": 45)")};
  text.night = {laid("cushion", R"("left": 0)"), laid("table", R"("left": 0)"),
                laid("plank", R"("left": 50)")};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["cushion"]})",
               R"({"id": "cot", "configuration": "night", "pieces": ["plank"]})"};
  return text;
}

}  // namespace berthwright

#include "support/convert_trailers.h"

namespace berthwright {

TrailerText dinette() {
  TrailerText text;
  text.openings = {
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 40, "width": 26, "height": 68, "sill": 2,
          "opens": "out"})"};
  text.fixtures = {
      R"({"id": "left bench", "kind": "bench", "length": 38, "width": 22, "at": {"rear": 0, "left": 0}, "top": 14,
          "opens": [{"id": "left lid", "kind": "lid", "length": 30, "width": 16, "at": {"rear": 4, "left": 5},
                     "hinge": "left"}]})",
      R"({"id": "right bench", "kind": "bench", "length": 38, "width": 22, "at": {"rear": 0, "right": 0},
          "top": 14})",
      R"({"id": "left ledge", "kind": "ledge", "length": 38, "width": 1, "at": {"rear": 0, "left": 22},
          "base": 12, "top": "13 1/4"})",
      R"({"id": "right ledge", "kind": "ledge", "length": 38, "width": 1, "at": {"rear": 0, "right": 22},
          "base": 12, "top": "13 1/4"})"};
  text.pieces = {
      R"({"id": "table", "kind": "table", "length": "37 3/4", "width": "31 3/4", "thickness": "3/4"})",
      R"({"id": "leg", "kind": "leg", "length": 2, "width": 2, "thickness": 27})"};
  text.day = {R"({"piece": "leg", "at": {"rear": 18, "left": 37}})",
              R"({"piece": "table", "at": {"rear": "1/8", "left": "22 1/8"}, "on": "leg"})"};
  text.night = {R"({"piece": "leg", "stowed": "left bench"})",
                R"({"piece": "table", "at": {"rear": "1/8", "left": "22 1/8"}})"};
  return text;
}

TrailerText dinette_with_cushions() {
  TrailerText text = dinette();
  for (const char* id : {"left seat", "right seat"})
    text.pieces.push_back(R"({"id": ")" + std::string(id) +
                          R"(", "kind": "cushion", "length": 38, "width": 22, "thickness": 4})");
  for (const char* id : {"left back", "right back"})
    text.pieces.push_back(R"({"id": ")" + std::string(id) +
                          R"(", "kind": "cushion", "length": 38, "width": 16, "thickness": 4})");
  text.day.insert(
      text.day.end(),
      {R"({"piece": "left seat", "at": {"rear": 0, "left": 0}})",
       R"({"piece": "right seat", "at": {"rear": 0, "right": 0}})",
       R"({"piece": "left back", "at": {"rear": 0, "left": 0}, "stands_on": "length", "faces": "right"})",
       R"({"piece": "right back", "at": {"rear": 0, "right": 0}, "stands_on": "length", "faces": "left"})"});
  text.night.insert(text.night.end(), {R"({"piece": "left seat", "at": {"rear": 0, "left": 0}})",
                                       R"({"piece": "right seat", "at": {"rear": 0, "right": 0}})",
                                       R"({"piece": "left back", "at": {"rear": 0, "left": 22}})",
                                       R"({"piece": "right back", "at": {"rear": 0, "right": 22}})"});
  return text;
}

}  // namespace berthwright

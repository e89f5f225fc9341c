#include "support/small_trailers.h"

namespace berthwright {

TrailerText bunk(const std::string& length, const std::string& width, const std::string& underside,
                 const std::string& top) {
  TrailerText text;
  text.interior = R"({"length": 120, "width": 76, "height": 96})";
  text.fixtures = {R"({"id": "bunk", "kind": "shelf", "length": ")" + length + R"(", "width": ")" + width +
                   R"(", "at": {"front": 0, "left": 0}, "base": ")" + underside + R"(", "top": ")" + top +
                   R"("})"};
  text.pieces = {R"({"id": "M", "kind": "cushion", "length": ")" + length + R"(", "width": ")" + width +
                 R"(", "thickness": 4})"};
  text.night = {R"({"piece": "M", "at": {"front": 0, "left": 0}, "on": "bunk"})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"]})"};
  return text;
}

TrailerText two_benches(const std::string& gap, const std::string& right_top) {
  TrailerText text;
  const auto bench = [](const char* id, const std::string& across, const std::string& top) {
    return std::string(R"({"id": ")") + id +
           R"(", "kind": "bench", "length": 75, "width": 24, "at": {"front": 0, )" + across +
           R"(}, "top": ")" + top + R"("})";
  };
  text.fixtures = {bench("left bench", R"("left": 0)", "14"),
                   bench("right bench", R"("right_of": ["left bench", )" + gap + "]", right_top)};
  text.pieces = {R"({"id": "A", "kind": "cushion", "length": 75, "width": 24, "thickness": 4})",
                 R"({"id": "B", "kind": "cushion", "length": 75, "width": 24, "thickness": 4})",
                 R"({"id": "H", "kind": "heater", "length": 8, "width": 10, "height": 15, "faces": "rear"})"};
  text.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "left bench"})",
                R"({"piece": "B", "at": {"front": 0, "right_of": ["left bench", )" + gap +
                    R"(]}, "on": "right bench"})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A", "B"], "people": [
                  {"name": "Ada", "stature": "5 ft 7"}, {"name": "Ben", "stature": "6 ft 2"}, {"name": "Cy"}]})"};
  return text;
}

TrailerText three_heights() {
  TrailerText text;
  const auto bench = [](const char* id, const char* at, const char* size, const char* top) {
    return std::string(R"({"id": ")") + id + R"(", "kind": "bench", )" + size + R"(, "at": {)" + at +
           R"(}, "top": ")" + top + R"("})";
  };
  text.fixtures = {bench("low", R"("front": 0, "left": 0)", R"("length": 20, "width": 24)", "14"),
                   bench("high", R"("front": 0, "left": 24)", R"("length": 20, "width": 24)", "15"),
                   bench("level", R"("front": 20, "left": 0)", R"("length": 55, "width": 48)", "14 1/2")};
  const std::string small = R"(", "kind": "cushion", "length": 20, "width": 24, "thickness": 4})";
  text.pieces = {R"({"id": "A)" + small, R"({"id": "B)" + small,
                 R"({"id": "C", "kind": "cushion", "length": 55, "width": 48, "thickness": 4})"};
  text.night = {R"({"piece": "A", "at": {"front": 0, "left": 0}, "on": "low"})",
                R"({"piece": "B", "at": {"front": 0, "left": 24}, "on": "high"})",
                R"({"piece": "C", "at": {"front": 20, "left": 0}, "on": "level"})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["A", "B", "C"]})"};
  return text;
}

TrailerText what_opens(const std::string& before) {
  TrailerText text;
  text.interior = R"({"length": 160, "width": 76, "height": 76})";
  text.fixtures = {
      R"({"id": "galley", "kind": "counter", "length": 34, "width": 20, "at": {"front": 38, "left": 0},
                       "top": 36, "opens": [{"id": "door", "kind": "door", "face": "right", "from": 14,
                       "width": 13, "hinge": "rear"}]})",
      R"({"id": "bench", "kind": "bench", "length": 76, "width": 24, "at": {"rear": 0, "left": 0},
                       "top": 14, "opens": [{"id": "lid", "kind": "lid", "hinge": "left"}]})"};
  text.pieces = {
      R"({"id": "M", "kind": "cushion", "length": 76, "width": 24, "thickness": 4})",
      R"({"id": "H", "kind": "heater", "length": 10, "width": 7, "height": 14, "faces": "front"})"};
  text.day = {
      R"({"piece": "M", "at": {"rear": 0, "left": 0}, "on": "bench"})",
      R"({"piece": "H", "on": "floor", "at": {"front": 53, "right_of": ["galley", ")" + before + R"("]}})"};
  text.night = text.day;
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"]})"};
  return text;
}

}  // namespace berthwright

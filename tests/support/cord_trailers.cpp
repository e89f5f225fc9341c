#include "support/cord_trailers.h"

namespace berthwright {

std::string cabinet(const std::string& id, const std::string& front, const std::string& left,
                    const std::string& length, const std::string& width, const std::string& base,
                    const std::string& top) {
  return R"({"id": ")" + id + R"(", "kind": "cabinet", "length": ")" + length + R"(", "width": ")" + width +
         R"(", "at": {"front": ")" + front + R"(", "left": ")" + left + R"("}, "base": ")" + base +
         R"(", "top": ")" + top + R"("})";
}

std::string outlet(const std::string& id, const std::string& front, const std::string& left,
                   const std::string& faces) {
  return R"({"id": ")" + id + R"(", "kind": "outlet", "length": 1, "width": 4, "at": {"front": ")" + front +
         R"(", "left": ")" + left + R"("}, "base": 14, "top": 18)" +
         (faces.empty() ? "" : R"(, "faces": ")" + faces + '"') + "}";
}

TrailerText cord_trailer(const std::string& cord) {
  TrailerText text;
  text.fixtures = {outlet("outlet", "23", "33", "rear")};
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 10, "faces": "rear")" +
                 (cord.empty() ? "" : R"(, "cord": {"length": ")" + cord + R"("})") + "}"};
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 30}, "on": "floor", "plugged_into": "outlet"})"};
  return text;
}

TrailerText cord_and_bed(const std::string& cord) {
  TrailerText text = cord_trailer(cord);
  text.openings = {
      R"({"id": "door", "kind": "door", "wall": "right", "from_front": 60, "width": 26, "height": 66})"};
  text.fixtures.push_back(
      R"({"id": "bench", "kind": "bench", "length": 30, "width": 76, "at": {"rear": 0, "left": 0}, "top": 14})");
  text.pieces.push_back(R"({"id": "M", "kind": "cushion", "length": 30, "width": 76, "thickness": 4})");
  text.night = {R"({"piece": "M", "at": {"rear": 0, "left": 0}, "on": "bench"})", text.day[0]};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"]})"};
  return text;
}

TrailerText across_the_walkway(const std::string& cord, const std::string& door_from) {
  TrailerText text = cord_and_bed(cord);
  text.openings = {R"({"id": "door", "kind": "door", "wall": "right", "from_front": ")" + door_from +
                   R"(", "width": 26, "height": 66})"};
  text.fixtures[0] =
      R"({"id": "outlet", "kind": "outlet", "length": 4, "width": 1, "at": {"front": 58, "right": 0},
                         "base": 14, "top": 18, "faces": "left"})";
  text.night[1] =
      R"({"piece": "H", "at": {"front": 60, "left": 0}, "on": "floor", "plugged_into": "outlet"})";
  return text;
}

std::vector<TrailerText> cords_of_every_status() {
  std::vector<TrailerText> plans;
  for (const char* cord : {"", "40", "57", "80"}) plans.push_back(cord_trailer(cord));
  plans.push_back(across_the_walkway("200", "2"));
  for (const char* at : {"23", "51", "85", "88", "96"}) {
    for (const char* faces : {"rear", "front", ""}) {
      TrailerText text = cord_and_bed("90");
      text.fixtures[0] = outlet("outlet", at, "33", faces);
      plans.push_back(text);
    }
  }
  TrailerText unnamed = cord_trailer("80");
  unnamed.day = {R"({"piece": "H", "at": {"front": 60, "left": 30}, "on": "floor"})"};
  plans.push_back(unnamed);
  unnamed.fixtures.clear();
  plans.push_back(unnamed);
  unnamed.pieces = {cord_trailer("").pieces};
  plans.push_back(unnamed);
  for (const char* front : {"59", "55", "25"}) {  // at the back of the heater; in between; before the outlet
    TrailerText text = cord_trailer("80");
    text.fixtures.push_back(cabinet("box", front, "0", "1", "76"));
    plans.push_back(text);
  }
  TrailerText inside = cord_trailer("80");
  inside.fixtures.push_back(cabinet("box", "15", "30", "20", "10"));
  plans.push_back(inside);
  return plans;
}

}  // namespace berthwright

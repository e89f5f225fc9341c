#include "support/yard_plans.h"

#include "support/small_trailers.h"

namespace berthwright {

std::string plan_that_meets() { return two_benches("0", "14").json(); }

std::string plan_that_does_not() { return bunk("75", "24", "31", "32").json(); }

std::string plan_with_an_unknown() {
  TrailerText text = two_benches("0", "14");
  text.fixtures.push_back(R"({"id": "hob", "kind": "cooktop", "length": 18, "width": 16, "faces": "rear",
                              "at": {"front": 100, "left": 0}, "base": 34, "top": 36})");
  return text.json();
}

std::string plan_with_room_for_a_heater() {
  TrailerText text = two_benches("0", "14");
  text.pieces.back() =
      R"({"id": "H", "name": "Heater", "kind": "heater", "length": 8, "width": 10, "height": 15,
                           "faces": "rear", "data_plate": {"front": 36, "back": 6, "sides": 12, "top": 24},
                           "cord": {"length": "6 ft"}})";
  text.fixtures.push_back(R"({"id": "outlet", "kind": "outlet", "length": 4, "width": 1,
                              "at": {"rear": 16, "right": 0}, "base": 14, "top": 18, "faces": "left"})");
  return text.json();
}

std::string plan_without_room_for_a_heater() {
  std::string text = plan_with_room_for_a_heater();
  const std::string long_room = R"("length": 120)";
  return text.replace(text.find(long_room), long_room.size(), R"("length": 90)");
}

std::string plan_with_a_heater_without_plate() { return two_benches("0", "14").json(); }

std::string plan_that_is_broken() {
  return "{\"berthwright\": 1, \"title\": \"Broken\", \"unit\": \"in\",\n"
         "\"interior\": {\"length\": \"1,905\", \"width\": 76, \"height\": 76},\n"
         "\"configurations\": {\"day\": []}}\n";
}

std::string plan_that_falls() {
  TrailerText text = two_benches("0", "14");
  text.day = {R"({"piece": "H", "at": {"front": 100, "left": 60}, "on": "left bench"})"};
  return text.json();
}

}  // namespace berthwright

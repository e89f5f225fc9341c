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

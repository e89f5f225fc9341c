#include "support/small_bunks.h"

#include "support/small_trailers.h"

namespace berthwright {

TrailerText railed(const std::string& underside, const Rail& rail) {
  const double under = std::stod(underside);
  TrailerText text = bunk("75", "24", underside, std::to_string(under + 1));
  const std::string top = std::to_string(under + 5 + std::stod(rail.above));
  text.fixtures.push_back(R"({"id": "rail", "kind": "guard rail", "length": ")" + rail.length +
                          R"(", "width": 1, "at": {"front": ")" + rail.from + R"(", "left": ")" + rail.left +
                          R"("}, "base": )" + std::to_string(under) + R"(, "top": )" + top + "}");
  return text;
}

TrailerText bed_for_two(const std::string& width, const std::string& first, const std::string& second) {
  TrailerText text = bunk("75", width, "10", "11");
  const auto person = [](const std::string& name, const std::string& stature) {
    return R"({"name": ")" + name + '"' + (stature.empty() ? "" : R"(, "stature": ")" + stature + '"') + "}";
  };
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"], "people": [)" +
               person("Ada", first) + ", " + person("Ben", second) + "]}"};
  return text;
}

TrailerText bare_board() {
  TrailerText text;
  text.fixtures = {R"({"id": "bench", "kind": "bench", "length": 75, "width": 24,
                       "at": {"front": 0, "left": 0}, "top": 13})"};
  text.pieces = {R"({"id": "P", "kind": "board", "length": 75, "width": 24, "thickness": 1})"};
  text.night = {R"({"piece": "P", "at": {"front": 0, "left": 0}})"};
  text.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["P"],
                   "people": [{"name": "Ada", "stature": "5 ft 7"}]})"};
  return text;
}

TrailerText under_a_slope(const std::string& front_height) {
  TrailerText text = bunk("75", "38", "10", "14");
  const std::string cut = std::to_string(76 - std::stoi(front_height));
  text.interior = R"({"length": 120, "width": 76, "height": 76, "side_profile":
                      {"corners": {"roof front": {"clip": [)" +
                  cut + ", " + cut + "]}}}}";
  return text;
}

std::vector<TrailerText> plans_of_sleepers() {
  std::vector<TrailerText> plans{railed("40"),
                                 railed("40", {.length = "50", .above = "4.9"}),
                                 railed("40", {.from = "0", .length = "75"}),
                                 bed_for_two("50", "5 ft", "5 ft 1"),
                                 bed_for_two("44", "5 ft", "6 ft 1"),
                                 bed_for_two("50", "5 ft", ""),
                                 bed_for_two("50", "", ""),
                                 bed_for_two("30", "", ""),
                                 bare_board(),
                                 under_a_slope("30"),
                                 under_a_slope("10")};
  TrailerText free_standing = railed("40", {.left = "44"});
  for (std::string* entry : {&free_standing.fixtures[0], &free_standing.night[0]})
    entry->replace(entry->find(R"("left": 0)"), 9, R"("left": 20)");
  plans.push_back(free_standing);
  TrailerText posted = bunk("75", "24", "10", "11");
  posted.fixtures.push_back(R"({"id": "post", "kind": "leg", "length": 2, "width": 2,
                                "at": {"front": 70, "left": 20}, "top": 70})");
  plans.push_back(posted);
  TrailerText giant = bunk("50", "24", "10", "11");
  giant.interior = R"({"length": 60, "width": 45, "height": 76})";
  giant.beds = {R"({"id": "bed", "configuration": "night", "pieces": ["M"],
                    "people": [{"name": "Gog", "stature": "7 ft"}]})"};
  plans.push_back(giant);
  TrailerText buried = bunk("75", "24", "10", "11");
  buried.fixtures.push_back(R"({"id": "ceiling", "kind": "locker", "length": 75, "width": 24,
                                "at": {"front": 0, "left": 0}, "base": 14, "top": 70})");
  plans.push_back(buried);
  return plans;
}

}  // namespace berthwright

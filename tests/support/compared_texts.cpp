#include "support/compared_texts.h"

#include <stdexcept>

namespace berthwright::support {

const ComparedFigure& ComparedTexts::figure(std::string_view rule) const {
  for (const ComparedFigure& one_figure : of.pairs.at(0).figures)
    if (one_figure.either().finding != nullptr && one_figure.either().finding->rule.text() == rule)
      return one_figure;
  throw std::invalid_argument("alike: " + std::string(rule));
}

const ComparedFigure& ComparedTexts::figure(LoadFigure::Kind kind) const {
  for (const ComparedFigure& one_figure : of.pairs.at(0).figures)
    if (one_figure.either().load && one_figure.either().load->kind == kind) return one_figure;
  throw std::invalid_argument("such loads are alike");
}

TrailerText heater_before_cushion(int front, const std::vector<std::string>& own_rules) {
  TrailerText text;
  text.pieces = {
      R"({"id": "C", "kind": "cushion", "length": 20, "width": 20, "thickness": 4})",
      R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear"})"};
  text.day = {R"({"piece": "C", "at": {"front": 0, "left": 20}})",
              R"({"piece": "H", "at": {"front": )" + std::to_string(front) + R"(, "left": 25}})"};
  text.rules = own_rules;
  return text;
}

TrailerText weighed_cabinet(const std::string& weight, const std::string& coupling, const std::string& axle,
                            const std::string& more) {
  TrailerText text;
  text.fixtures = {
      R"({"id": "K", "kind": "cabinet", "length": 20, "width": 20, "at": {"front": 60, "left": 0}, "top": 30)" +
      (weight.empty() ? std::string{} : R"(, "weight": )" + weight) + "}"};
  text.more = R"("chassis": {"coupling": 40, "axle": 70, "weighed": {"coupling": ")" + coupling +
              R"(", "axle": ")" + axle + R"("})" + more + "}, ";
  return text;
}

TrailerText warming_heater(const std::string& watts) {
  TrailerText text;
  text.more = R"("supply": {"circuits": [{"id": "one", "breaker": 15, "feeds": ["O"]}]}, "warming":
                 {"from": "40 F", "to": "68 F", "outside": "10 F", "insulation": "R-3"}, )";
  text.fixtures = {
      R"({"id": "O", "kind": "outlet", "length": 1, "width": 3, "at": {"front": 0, "left": 24}, "base": 14, "top": 18})"};
  text.pieces = {R"({"id": "H", "kind": "heater", "length": 10, "width": 10, "height": 14, "faces": "rear")" +
                 (watts.empty() ? std::string{} : R"(, "watts": )" + watts) + "}"};
  text.day = {R"({"piece": "H", "at": {"front": 60, "left": 25}, "state": "running", "plugged_into": "O"})"};
  return text;
}

}  // namespace berthwright::support

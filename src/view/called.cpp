#include "view/called.h"

#include <berthwright/solve/open/road.h>
#include <berthwright/view/words.h>

namespace berthwright {

std::string name_of(const Plan& plan, const std::string& id) {
  const Fixture* fixture = plan.fixture(id);
  const Piece* piece = plan.piece(id);
  const Bed* bed = plan.bed(id);
  const Leaf* leaf = plan.leaf(id);
  const Opening* opening = plan.opening(id);
  const std::string name = fixture   ? fixture->name
                           : piece   ? piece->name
                           : bed     ? bed->name
                           : leaf    ? leaf->name
                           : opening ? opening->name
                                     : id;
  return name.empty() ? id : name;
}

std::string listed_with_and(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i)
    text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
  return text;
}

std::string names_with_and(const Plan& plan, const std::vector<std::string>& ids) {
  std::vector<std::string> names;
  for (const std::string& id : ids) names.push_back(name_of(plan, id));
  return listed_with_and(names);
}

std::string capital_first(std::string_view words) {
  std::string text(words);
  if (!text.empty() && 'a' <= text[0] && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string small_first(std::string_view words) {
  std::string text(words);
  if (!text.empty() && 'A' <= text[0] && text[0] <= 'Z') text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

std::string when_of(const Configuration& configuration) {
  if (is_on_the_road(configuration)) return "On the road";
  const std::string& id = configuration.id.text();
  return (id == "day" || id == "night" ? "By " : "In ") + configuration.name;
}

std::string vehicle(const Plan& plan) {
  return plan->chassis && !plan->chassis->towed ? "van" : std::string(word(Term::trailer, plan->english));
}

}  // namespace berthwright

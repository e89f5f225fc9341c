#include "view/called.h"

#include <berthwright/solve/open/road.h>

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

std::string when_of(const Configuration& configuration) {
  if (is_on_the_road(configuration)) return "On the road";
  const std::string& id = configuration.id.text();
  return (id == "day" || id == "night" ? "By " : "In ") + configuration.name;
}

}  // namespace berthwright

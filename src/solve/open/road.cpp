#include <berthwright/solve/open/road.h>

namespace berthwright {
namespace {

// The leaf of its locker is asked in its place.
bool is_behind_a_leaf(const Plan& plan, const std::string& place) {
  const Fixture* fixture = plan.fixture(place);
  return plan.leaf(place) != nullptr || (fixture != nullptr && !fixture->leaves.empty());
}

}  // namespace

bool is_on_the_road(const Configuration& configuration) { return configuration.id.text() == "road"; }

RoadHolds holds_on_the_road(const Plan& plan) {
  RoadHolds holds;
  for (const Configuration& configuration : plan->configurations)
    if (is_on_the_road(configuration)) holds.configuration = &configuration;
  if (holds.configuration == nullptr) return holds;
  for (const Piece& piece : plan->pieces)
    for (const Pose& pose : holds.configuration->poses) {
      if (pose.piece != piece.id) continue;
      if (pose.state == Pose::State::running) holds.running.push_back(piece.id.text());
      if (piece.held_by || pose.state == Pose::State::running) continue;
      const bool stowed = pose.manner == Pose::Manner::stowed;
      if (stowed && is_behind_a_leaf(plan, pose.stowed_in)) continue;
      std::vector<std::string>& list = stowed                              ? holds.loose
                                       : piece.kind == Piece::Kind::heater ? holds.heaters
                                       : pose.manner != Pose::Manner::flat ? holds.on_edge
                                                                           : holds.loose;
      list.push_back(piece.id.text());
    }
  for (const Fixture& fixture : plan->fixtures)
    for (const Leaf& leaf : fixture.leaves)
      if (!leaf.held_by) holds.loose.push_back(leaf.id.text());
  return holds;
}

}  // namespace berthwright

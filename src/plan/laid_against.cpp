#include "plan/laid_against.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include <berthwright/exact/measure.h>

namespace berthwright {
namespace {

constexpr Length overhead = 48_in;

Length low_of(const Rect& box, bool along) { return along ? box.low.x : box.low.y; }
Length high_of(const Rect& box, bool along) { return along ? box.high.x : box.high.y; }

bool beside(const Rect& a, const Rect& b, bool along) {
  return low_of(a, !along) < high_of(b, !along) && low_of(b, !along) < high_of(a, !along);
}

/// The side that a place is measured from, where the distance is not zero; nothing: it touches there anyhow.
std::optional<bool> measured_from_low(const Node& place, bool along, Unit unit) {
  const std::array<std::string_view, 2> low = along ? std::array<std::string_view, 2>{"front", "behind"}
                                                    : std::array<std::string_view, 2>{"left", "right_of"};
  const std::array<std::string_view, 2> high = along ? std::array<std::string_view, 2>{"rear", "ahead_of"}
                                                     : std::array<std::string_view, 2>{"right", "left_of"};
  for (const bool from_low : {true, false})
    for (const std::string_view word : from_low ? low : high) {
      const Node* distance = place.find(word);
      if (distance == nullptr) continue;
      if (distance->kind == Node::Kind::list) distance = &distance->children.at(1);
      if (read_length(distance->text, unit).value() != Length{}) return from_low;
    }
  return std::nullopt;
}

class PoseTouch {
 public:
  PoseTouch(const Plan& plan, const Configuration& configuration, std::size_t pose)
      : plan_(plan), configuration_(configuration), pose_(pose), box_(own().outline.bounds()) {}

  std::optional<Touched> touched(bool along, bool at_low) const {
    const Length face = at_low ? low_of(box_, along) : high_of(box_, along);
    const auto meets = [&](const Rect& other) {
      return (at_low ? high_of(other, along) : low_of(other, along)) == face && beside(box_, other, along);
    };
    const bool soft = is_soft(pose_);
    for (const bool other_is_soft : {true, false})
      for (std::size_t i = 0; i < configuration_.poses.size(); ++i)
        if (i != pose_ && !configuration_.poses[i].outline.empty() && is_soft(i) == other_is_soft &&
            (soft || !other_is_soft) && meets(configuration_.poses[i].outline.bounds()))
          return Touched{Touched::Thing::pose, i, at_low};
    for (std::size_t i = 0; i < plan_->fixtures.size(); ++i)
      if (plan_->fixtures[i].solid.base() < overhead && meets(plan_->fixtures[i].solid.outline().bounds()))
        return Touched{Touched::Thing::fixture, i, at_low};
    const Length end = along ? plan_->interior.length : plan_->interior.width;
    if (at_low && face == Length{}) return Touched{Touched::Thing::low_wall, 0, at_low};
    if (!at_low && face == end) return Touched{Touched::Thing::high_wall, 0, at_low};
    return std::nullopt;
  }

  std::optional<std::size_t> level_with() const {
    if (!own().base || *own().base == Length{}) return std::nullopt;
    for (std::size_t i = 0; i < plan_->fixtures.size(); ++i)
      if (plan_->fixtures[i].solid.top() == *own().base &&
          beside(box_, plan_->fixtures[i].solid.outline().bounds(), true) &&
          beside(box_, plan_->fixtures[i].solid.outline().bounds(), false))
        return i;
    return std::nullopt;
  }

 private:
  const Pose& own() const { return configuration_.poses[pose_]; }
  bool is_soft(std::size_t pose) const {
    const Piece* piece = plan_.piece(configuration_.poses[pose].piece.text());
    return piece != nullptr && piece->is_soft();
  }

  const Plan& plan_;
  const Configuration& configuration_;
  std::size_t pose_;
  Rect box_;
};

void move_pose(Pose& pose, bool along, Length by) {
  if (by == Length{}) return;
  const Vector vector = along ? Vector{by, {}} : Vector{{}, by};
  const Placement shifted{false, Turn{}, vector};
  pose.outline = moved(pose.outline, vector);
  for (Arc& arc : pose.arcs) arc = shifted(arc);
  pose.placement.shift = {pose.placement.shift.x + vector.x, pose.placement.shift.y + vector.y};
}

/// Moves the poses of one configuration along one axis, each after what it is laid against.
class PoseLayer {
 public:
  PoseLayer(PlanParts& parts, Configuration& configuration, bool along)
      : parts_(parts),
        configuration_(configuration),
        along_(along),
        against_(configuration.poses.size()),
        done_(configuration.poses.size()) {}

  void against(std::size_t pose, const Touched& touched) { against_[pose] = touched; }

  void lay() {
    for (std::size_t i = 0; i < against_.size(); ++i) lay(i);
  }

 private:
  void lay(std::size_t i) {
    if (done_[i] || !against_[i]) return;
    done_[i] = true;
    const Touched& touched = *against_[i];
    if (touched.thing == Touched::Thing::pose) lay(touched.index);
    Pose& pose = configuration_.poses[i];
    const Rect box = pose.outline.bounds();
    move_pose(pose, along_, face_of(touched) - (touched.at_low ? low_of(box, along_) : high_of(box, along_)));
  }

  Length face_of(const Touched& touched) const {
    if (touched.thing == Touched::Thing::low_wall) return {};
    if (touched.thing == Touched::Thing::high_wall)
      return along_ ? parts_.interior.length : parts_.interior.width;
    const Rect box = touched.thing == Touched::Thing::pose
                         ? configuration_.poses[touched.index].outline.bounds()
                         : parts_.fixtures[touched.index].solid.outline().bounds();
    return touched.at_low ? high_of(box, along_) : low_of(box, along_);
  }

  PlanParts& parts_;
  Configuration& configuration_;
  bool along_;
  std::vector<std::optional<Touched>> against_;
  std::vector<bool> done_;
};

}  // namespace

std::vector<LaidAgainst> laid_against(const Plan& plan, const Node& root) {
  std::vector<LaidAgainst> result;
  for (std::size_t c = 0; c < plan->configurations.size(); ++c) {
    const Configuration& configuration = plan->configurations[c];
    for (std::size_t i = 0; i < configuration.poses.size(); ++i) {
      const Pose& pose = configuration.poses[i];
      const Node* place = innermost(root, pose.origin.pointer).find("at");
      if (pose.outline.empty() || place == nullptr) continue;
      const PoseTouch toucher(plan, configuration, i);
      LaidAgainst laid{c, i, std::nullopt, std::nullopt, toucher.level_with()};
      for (const bool along : {true, false})
        if (const std::optional<bool> low = measured_from_low(*place, along, plan->unit))
          (along ? laid.along : laid.across) = toucher.touched(along, *low);
      if (laid.along || laid.across || laid.held_level_with) result.push_back(laid);
    }
  }
  return result;
}

PlanParts laid_again(PlanParts parts, const std::vector<LaidAgainst>& poses) {
  for (std::size_t c = 0; c < parts.configurations.size(); ++c) {
    Configuration& configuration = parts.configurations[c];
    for (const LaidAgainst& laid : poses)
      if (laid.configuration == c && laid.held_level_with)
        configuration.poses[laid.pose].base = parts.fixtures[*laid.held_level_with].solid.top();
    for (const bool along : {true, false}) {
      PoseLayer layer(parts, configuration, along);
      for (const LaidAgainst& laid : poses)
        if (laid.configuration == c && (along ? laid.along : laid.across))
          layer.against(laid.pose, along ? *laid.along : *laid.across);
      layer.lay();
    }
  }
  return parts;
}

}  // namespace berthwright

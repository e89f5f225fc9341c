#include <berthwright/solve/heat/plugged.h>

#include <algorithm>
#include <tuple>

namespace berthwright {
namespace {

// Our own choice: what lies higher than this over a cord neither covers nor heats up with it.
constexpr Length well_over = 36_in;

/// One appliance that stands in the room.
class Plugging {
 public:
  Plugging(const Plan& plan, const Arrangement& arrangement, const Placed& appliance,
           const std::vector<std::pair<const Bed*, Bedding>>& beds, const std::vector<Walkway>& walkways)
      : plan_(plan),
        arrangement_(arrangement),
        appliance_(appliance),
        level_(level_under(appliance)),
        beds_(beds),
        walkways_(walkways),
        under_bedding_(under_bedding(beds, level_)) {}

  PluggedIn told() const {
    PluggedIn plugged;
    plugged.appliance = appliance_.id;
    if (appliance_.piece->cord) plugged.cord = appliance_.piece->cord->length;
    plugged.named = !appliance_.pose->plugged_into.empty();
    run_to_outlet(plugged);
    for (const Walkway& walkway : walkways_) plugged.walkways.push_back(walkway.bed);
    if (plugged.run && plugged.run->reached()) {
      plugged.under_bedding = cord_on(plugged.run->path, under_bedding_);
      for (const Walkway& walkway : walkways_)
        if (const std::optional<CordOn> on = cord_on(plugged.run->path, walkway.floor))
          plugged.crossings.emplace_back(walkway.bed, on->first);
    }
    if (plugged.outlet != nullptr) plugged.front = outlet_front(plan_, arrangement_, beds_, *plugged.outlet);
    return plugged;
  }

 private:
  std::vector<const Fixture*> outlets() const {
    std::vector<const Fixture*> found;
    for (const Fixture& fixture : plan_->fixtures)
      if (fixture.kind == Fixture::Kind::outlet &&
          (appliance_.pose->plugged_into.empty() || fixture.id.text() == appliance_.pose->plugged_into))
        found.push_back(&fixture);
    return found;
  }

  CordRun run_to(const Fixture& outlet, const CordExit& exit, const Region& floor) const {
    return CordReach(plan_, arrangement_, appliance_.id, {level_, floor}, outlet).from(exit);
  }

  void run_to_outlet(PluggedIn& plugged) const {
    const std::vector<const Fixture*> all = outlets();
    if (plugged.named && !all.empty()) plugged.outlet = all.front();
    const std::optional<CordExit> exit = cord_exit(appliance_);
    if (!exit) return;
    const Region floor = cord_floor(plan_, arrangement_, appliance_.id, level_);
    const auto rank = [](const CordRun& run, const Fixture& outlet) {
      return std::tuple(!run.reached(), run.length, outlet.id);
    };
    for (const Fixture* outlet : all) {
      CordRun run = run_to(*outlet, *exit, floor);
      if (plugged.run && rank(*plugged.run, *plugged.outlet) <= rank(run, *outlet)) continue;
      plugged.run = std::move(run);
      plugged.outlet = outlet;
    }
    if (plugged.run && plugged.run->reached()) keep_clear(plugged, *exit);
  }

  void keep_clear(PluggedIn& plugged, const CordExit& exit) const {
    std::vector<Region> shunned{under_bedding_};
    for (const Walkway& walkway : walkways_) shunned.push_back(walkway.floor);
    const Region all = united(shunned);
    if (!cord_on(plugged.run->path, all)) return;
    CordRun clear =
        run_to(*plugged.outlet, exit, cord_floor(plan_, arrangement_, appliance_.id, level_, all));
    if (clear.reached() && clear.length <= *plugged.cord) plugged.run = std::move(clear);
  }

  const Plan& plan_;
  const Arrangement& arrangement_;
  const Placed& appliance_;
  CordLevel level_;
  const std::vector<std::pair<const Bed*, Bedding>>& beds_;
  const std::vector<Walkway>& walkways_;
  Region under_bedding_;
};

bool is_stowed(const Pose& pose) {
  return pose.manner == Pose::Manner::stowed || pose.state == Pose::State::stowed;
}

}  // namespace

Region under_bedding(const std::vector<std::pair<const Bed*, Bedding>>& beds, const CordLevel& level) {
  std::vector<Region> low;
  for (const auto& [bed, bedding] : beds)
    for (const Solid& solid : bedding.made_up)
      if (solid.base() < level.height + well_over) low.push_back(solid.outline());
  if (low.empty()) return {};
  // A cord is no line: it lies under what hangs beside it along a cabinet.
  const Rect cord{{-half(cord_room), -half(cord_room)}, {half(cord_room), half(cord_room)}};
  return swept(united(low), Polygon::rectangle(cord));
}

std::vector<PluggedIn> plugged_in(const Plan& plan, const Arrangement& arrangement,
                                  const std::vector<std::pair<const Bed*, Bedding>>& beds,
                                  const std::vector<Walkway>& walkways) {
  std::vector<PluggedIn> all;
  for (const Placed& thing : arrangement.things)
    if (thing.piece != nullptr && thing.piece->heat && !is_stowed(*thing.pose))
      all.push_back(Plugging(plan, arrangement, thing, beds, walkways).told());
  return all;
}

}  // namespace berthwright

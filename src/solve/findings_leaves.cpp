#include "solve/clearing.h"
#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

// How a leaf moves, and whether something was lifted off it first: what the sentence must know.
std::string variant_of(const LeafReach& reach) {
  const std::string way = reach.leaf->hinge                        ? "turn"
                          : reach.leaf->kind == Leaf::Kind::drawer ? "pull"
                                                                   : "lift";
  return reach.lifted.empty() ? way : way + " once cleared";
}

Quantity quantity_of(const LeafReach& reach, const Reach& at) {
  if (reach.leaf->hinge) return Degrees{at.degrees};
  return at.travel;
}

// Three quarters of its way are enough to reach in: our own choice, told in the rule.
bool is_nearly_full(const LeafReach& reach) {
  return reach.leaf->hinge ? reach.free.degrees * 4 >= reach.whole.degrees * 3
                           : reach.free.travel * 4 >= reach.whole.travel * 3;
}

// Everything that stops the leaf leaves its sweep. Against the room, and what must stay, nothing but the leaf
// can give.
Cure cure_of_stops(const Plan& plan, const Arrangement& arrangement, const LeafReach& reach) {
  const Leaf& leaf = *reach.leaf;
  Cure by_the_room{Cure::Kind::as_told, leaf.id.text(), {}};
  std::optional<Cure> cure;
  for (const LeafStop& stop : reach.stops) {
    const Placed* thing = arrangement.find(stop.thing);
    if (thing == nullptr) return by_the_room;
    const Region sweep =
        leaf_sweep(*plan.fixture(leaf.fixture.text()), leaf, thing->solid.base(), thing->solid.top());
    if (sweep.empty()) continue;
    std::optional<Cure> step = clearing(plan, arrangement, *thing, sweep.bounds());
    if (!step) return by_the_room;
    add_step(cure, std::move(*step));
  }
  return cure.value_or(by_the_room);
}

Finding of_leaf(const Plan& plan, const Arrangement& arrangement, std::string_view rule,
                const LeafReach& reach) {
  Finding finding = finding_of(plan, rule);
  finding.subjects = {reach.leaf->id.text()};
  finding.variant = variant_of(reach);
  if (!reach.known) {
    finding.cure = Cure{Cure::Kind::state_measure, reach.leaf->id.text(), {}};
    return finding;
  }
  finding.measured = quantity_of(reach, reach.free);
  finding.compared = quantity_of(reach, reach.whole);
  if (!reach.leaf->hinge) finding.margin = reach.free.travel - reach.whole.travel;
  finding.status = reach.is_full() ? Status::met : is_nearly_full(reach) ? Status::close : Status::not_met;
  if (reach.is_full()) return finding;
  if (finding.status == Status::not_met) finding.cure = cure_of_stops(plan, arrangement, reach);
  if (!reach.stops.front().thing.empty()) finding.subjects.push_back(reach.stops.front().thing);
  finding.where = {reach.stops.front().where};
  return finding;
}

// The fixtures are asked once for the trailer; `built_in` tells what they leave.
void add_in_configuration(const Plan& plan, const ConfigurationAnswer& answer, const LeafReach& reach,
                          const LeafReach& built_in, std::vector<Finding>& findings) {
  if (!reach.known || (!built_in.is_full() && reach.free >= built_in.free)) return;
  const bool by_a_bed = !answer.beds.empty() && !reach.is_full();
  Finding finding = of_leaf(plan, answer.arrangement, by_a_bed ? "leaf.opens-by-bed" : "leaf.opens", reach);
  finding.configuration = answer.configuration->id;
  findings.push_back(std::move(finding));
}

// Each lid, followed by what comes off it.
void add_under_pieces(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  Finding finding = finding_of(plan, "leaf.under-pieces");
  finding.configuration = answer.configuration->id;
  finding.status = Status::met;
  for (const LeafReach& reach : answer.leaves) {
    if (reach.lifted.empty()) continue;
    finding.subjects.push_back(reach.leaf->id.text());
    finding.subjects.insert(finding.subjects.end(), reach.lifted.begin(), reach.lifted.end());
  }
  if (!finding.subjects.empty()) findings.push_back(std::move(finding));
}

}  // namespace

void add_leaf_findings(const Plan& plan, const Answer& answer, std::vector<Finding>& findings) {
  for (const LeafReach& reach : answer.leaves)
    if (!reach.is_full())
      findings.push_back(of_leaf(plan, answer.configurations.front().arrangement, "leaf.opens", reach));
  for (const ConfigurationAnswer& one : answer.configurations) {
    if (is_on_the_road(*one.configuration)) continue;
    add_under_pieces(plan, one, findings);
    for (std::size_t i = 0; i < one.leaves.size(); ++i)
      add_in_configuration(plan, one, one.leaves[i], answer.leaves[i], findings);
  }
}

void add_road_findings(const Plan& plan, std::vector<Finding>& findings) {
  const RoadHolds holds = holds_on_the_road(plan);
  const auto add = [&](std::string_view rule, const std::vector<std::string>& subjects, Status status) {
    Finding finding = finding_of(plan, rule);
    finding.subjects = subjects;
    finding.status = status;
    if (status == Status::unknown) finding.cure = Cure{Cure::Kind::state_measure, {}, {}};
    if (!subjects.empty() && finding.cure) {
      finding.cure->subject = subjects.front();
      finding.cure->alike.assign(subjects.begin() + 1, subjects.end());
    }
    if (holds.configuration != nullptr) finding.configuration = holds.configuration->id;
    findings.push_back(std::move(finding));
  };
  if (holds.configuration == nullptr) return add("road.unchecked", {}, Status::unknown);
  if (!holds.heaters.empty()) add("road.heater", holds.heaters, Status::unknown);
  if (!holds.running.empty()) {
    add("road.heater", holds.running, Status::unknown);
    findings.back().variant = "running";
  }
  if (!holds.on_edge.empty()) add("road.on-edge", holds.on_edge, Status::unknown);
  if (!holds.loose.empty()) add("road.hold", holds.loose, Status::unknown);
  if (holds.all_named()) add("road.hold", {}, Status::met);
}

}  // namespace berthwright

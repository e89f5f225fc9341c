#include <algorithm>

#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

/// All that findings about one configuration share.
struct WayScene {
  const Plan& plan;
  const ConfigurationAnswer& answer;

  Finding begin(std::string_view rule, const Bed* bed = nullptr) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    if (bed != nullptr) finding.bed = bed->id;
    return finding;
  }
};

bool has_door(const WayScene& scene) {
  return std::ranges::any_of(scene.answer.exit_openings, &ExitOpening::is_door);
}

// Of what pinches a way: a piece can be moved, what is built in made smaller; a wall and the door stay.
std::optional<Cure> cure_of_pinch(const WayScene& scene, const WayOut& way, Length shortfall) {
  const Length by = marked_out(shortfall, scene.plan->unit);
  for (const std::string& id : {way.left, way.right})
    if (scene.plan.piece(id) != nullptr) return Cure{Cure::Kind::move_apart, id, by};
  for (const std::string& id : {way.left, way.right})
    if (const Fixture* fixture = scene.plan.fixture(id)) {
      Cure cure{Cure::Kind::shorten, id, by};
      const Point across = id == way.left ? way.way.right : way.way.left;
      cure.side = side_at(fixture->solid.outline().bounds(), across);
      return cure;
    }
  return std::nullopt;
}

Point3 on_the_floor(Point place) { return {place, Length{}}; }

// The widest way of several; of none the reason, which is the bed's own or the same for every door.
Finding aisle(const WayScene& scene, const BedAnswer& bed) {
  Finding finding = scene.begin("way.aisle", bed.bed);
  const WayOut* way = widest(bed.exits.ways);
  if (way == nullptr) {
    const bool no_edge = std::ranges::all_of(
        bed.exits.ways, [](const WayOut& w) { return w.end == WayOut::End::no_free_edge; });
    finding.variant = no_edge ? "no free edge" : "no way";
    finding.status = Status::not_met;
    for (const WayOut& each : bed.exits.ways) finding.subjects.push_back(each.door);
    std::ranges::sort(finding.subjects);
    return finding;
  }
  finding.subjects = {way->door, way->left, way->right};
  finding.where = {on_the_floor(way->way.left), on_the_floor(way->way.right)};
  compare(scene.plan, finding, way->width);
  if (finding.status == Status::not_met) finding.cure = cure_of_pinch(scene, *way, shortfall(finding));
  return finding;
}

Finding count_of_exits(const WayScene& scene, std::string_view rule, const BedAnswer& bed,
                       const std::vector<std::string>& ids, std::int64_t asked) {
  Finding finding = scene.begin(rule, bed.bed);
  finding.subjects = ids;
  const auto number = static_cast<std::int64_t>(ids.size());
  finding.measured = Count{number};
  finding.compared = Count{asked};
  finding.status = number >= asked ? Status::met : Status::not_met;
  return finding;
}

Finding vehicle_opening_finding(const WayScene& scene, const ExitOpening& one) {
  Finding finding = scene.begin("way.opening");
  const ClearOpening& clear = one.clear;
  finding.subjects = {clear.opening->id.text()};
  finding.subjects.insert(finding.subjects.end(), clear.blocked_by.begin(), clear.blocked_by.end());
  if (clear.opening->swing == Opening::Swing::fixed) {
    finding.variant = "not known to open";
    finding.cure = Cure{Cure::Kind::state_measure, clear.opening->id.text(), {}};
    return finding;
  }
  const Sides& sides = clear.for_vehicle;
  finding.measured = sides;
  finding.compared = vehicle_opening;
  finding.margin = std::min(sides.length - vehicle_opening.length, sides.width - vehicle_opening.width);
  finding.status = clear.holds_vehicle_opening() ? Status::met : Status::not_met;
  return finding;
}

Finding dwelling_opening_finding(const WayScene& scene, const ExitOpening& one) {
  Finding finding = scene.begin("way.dwelling-window");
  const Sides& sides = one.clear.for_dwelling;
  finding.subjects = {one.clear.opening->id.text()};
  compare(scene.plan, finding, std::min(sides.length, sides.width));
  const Area area = Area::rectangle(sides.length, sides.width);
  if (finding.status == Status::not_met || area >= dwelling_area) return finding;
  finding.variant = "area";
  finding.measured = area;
  finding.compared = dwelling_area;
  finding.margin.reset();
  finding.override_reason.clear();  // the plan's own number is one for the side
  finding.status = Status::not_met;
  return finding;
}

Finding swing_finding(const WayScene& scene, const InwardSwing& swing) {
  Finding finding = scene.begin("way.swing");
  finding.subjects = {swing.opening->id.text()};
  if (!swing.known) {
    finding.cure = Cure{Cure::Kind::state_measure, swing.opening->id.text(), {}};
    return finding;
  }
  finding.subjects.insert(finding.subjects.end(), swing.blocked_by.begin(), swing.blocked_by.end());
  finding.status = swing.blocked_by.empty() ? Status::met : Status::not_met;
  return finding;
}

void add_of_bed(const WayScene& scene, const BedAnswer& bed, std::vector<Finding>& findings) {
  if (has_door(scene)) findings.push_back(aisle(scene, bed));
  findings.push_back(count_of_exits(scene, "way.none", bed, bed.exits.passable, 1));
  findings.push_back(count_of_exits(scene, "way.second", bed, bed.exits.counted, 2));
}

}  // namespace

void add_way_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  const WayScene scene{plan, answer};
  for (const InwardSwing& swing : answer.inward_swings) findings.push_back(swing_finding(scene, swing));
  if (answer.beds.empty() || answer.exit_openings.empty()) return;
  for (const ExitOpening& one : answer.exit_openings) {
    if (one.is_door()) continue;
    findings.push_back(vehicle_opening_finding(scene, one));
    if (one.clear.opening->swing != Opening::Swing::fixed)
      findings.push_back(dwelling_opening_finding(scene, one));
  }
  for (const BedAnswer& bed : answer.beds) add_of_bed(scene, bed, findings);
}

void add_way_findings_of_trailer(const Plan& plan, std::vector<Finding>& findings) {
  bool stated = false;
  for (const Opening& opening : plan->openings) {
    const bool door = opening.kind == Opening::Kind::door && opening.swing != Opening::Swing::fixed;
    stated = stated || door || opening.escape;
    if (!opening.escape || opening.kind == Opening::Kind::door) continue;
    Finding finding = finding_of(plan, "way.sill");
    finding.subjects = {opening.id.text()};
    compare(plan, finding, opening.sill);
    findings.push_back(std::move(finding));
  }
  if (stated || plan->beds.empty()) return;
  findings.push_back(finding_of(plan, "way.not-stated"));
}

}  // namespace berthwright

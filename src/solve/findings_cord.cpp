#include <algorithm>

#include "plan/box_sides.h"
#include "solve/comparing.h"
#include "solve/findings.h"
#include "solve/gives_way.h"

namespace berthwright {
namespace {

/// All that findings about one cord share.
struct CordScene {
  const Plan& plan;
  const ConfigurationAnswer& answer;
  const PluggedIn& plugged;

  Finding begin(std::string_view rule) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    finding.subjects = {plugged.appliance};
    return finding;
  }
  bool has_outlets() const {
    return std::ranges::any_of(plan->fixtures,
                               [](const Fixture& f) { return f.kind == Fixture::Kind::outlet; });
  }
  Point3 on_level(Point place) const { return {place, level_under(*source()).height}; }
  const Placed* source() const { return answer.arrangement.find(plugged.appliance); }
  /// With a bed made up the heater is put away, and its cord with it.
  Cure stowing() const { return {Cure::Kind::stow_heater, plugged.appliance, {}}; }
};

Finding unknown_reach(const CordScene& scene) {
  Finding finding = scene.begin("cord.reach");
  if (scene.plugged.outlet != nullptr) finding.subjects.push_back(scene.plugged.outlet->id.text());
  if (!scene.plugged.cord) {
    finding.variant = "no length";
    finding.cure = Cure{Cure::Kind::state_cord, scene.plugged.appliance, {}};
  } else {
    finding.variant = scene.has_outlets() ? "not upright" : "no outlet";
    finding.cure = Cure{
        scene.has_outlets() ? Cure::Kind::as_told : Cure::Kind::state_measure, scene.plugged.appliance, {}};
  }
  return finding;
}

Finding reach(const CordScene& scene) {
  const PluggedIn& plugged = scene.plugged;
  if (!plugged.run) return unknown_reach(scene);
  Finding finding = scene.begin("cord.reach");
  finding.subjects.push_back(plugged.outlet->id.text());
  if (!plugged.run->reached()) {
    finding.variant = why_not(plugged.run->end);
    finding.status = Status::not_met;
    if (!plugged.run->blocked_by.empty()) finding.subjects.push_back(plugged.run->blocked_by);
    finding.cure = Cure{Cure::Kind::as_told, plugged.appliance, cord_room};
    return finding;
  }
  if (!plugged.named) finding.variant = "nearest";
  finding.where = {plugged.run->route.front(), plugged.run->route.back()};
  compare(finding, plugged.run->length, *plugged.cord);
  if (finding.status == Status::not_met)
    finding.cure =
        Cure{Cure::Kind::bring_nearer, plugged.appliance, marked_out(shortfall(finding), scene.plan->unit)};
  return finding;
}

Finding under_bedding(const CordScene& scene) {
  Finding finding = scene.begin("cord.under-bedding");
  const std::optional<CordOn>& under = scene.plugged.under_bedding;
  if (under) {
    finding.where = {scene.on_level(under->first)};
    compare(scene.plan, finding, under->length);
    if (finding.status == Status::not_met) finding.cure = scene.stowing();
  } else {
    finding.compared = scene.plan.limit(*find_rule("cord.under-bedding"));
    finding.status = Status::met;
  }
  return finding;
}

void add_walkways(const CordScene& scene, std::vector<Finding>& findings) {
  for (const std::string& bed : scene.plugged.walkways) {
    Finding finding = scene.begin("cord.walkway");
    finding.bed = BedId(bed);
    finding.status = Status::met;
    for (const auto& [crossed, place] : scene.plugged.crossings)
      if (crossed == bed) {
        finding.status = Status::not_met;
        finding.cure = scene.stowing();
        finding.where = {scene.on_level(place)};
      }
    findings.push_back(std::move(finding));
  }
}

// What reaches over the face has that to go as well.
Length out_of_the_face(const CordScene& scene, const Finding& finding) {
  const Fixture& outlet = *scene.plugged.outlet;
  const Placed* thing = scene.answer.arrangement.find(scene.plugged.front.met);
  if (thing == nullptr || !outlet.faces) return shortfall(finding);
  const Length asked = scene.plan.limit(*find_rule("cord.plug-room"));
  const Rect free = beyond_side(outlet.solid.outline().bounds(), *outlet.faces, asked);
  const Rect box = thing->solid.outline().bounds();
  switch (*outlet.faces) {
    case Wall::front:
      return box.high.x - free.low.x;
    case Wall::rear:
      return free.high.x - box.low.x;
    case Wall::left:
      return box.high.y - free.low.y;
    default:
      return free.high.y - box.low.y;
  }
}

Finding plug_room(const CordScene& scene) {
  Finding finding = scene.begin("cord.plug-room");
  const OutletFront& front = scene.plugged.front;
  const std::string& outlet = scene.plugged.outlet->id.text();
  finding.subjects = {outlet};
  if (!front.depth) {
    finding.cure = Cure{Cure::Kind::state_faces, outlet, {}};
    return finding;
  }
  finding.subjects.push_back(front.met);
  compare(scene.plan, finding, *front.depth);
  if (finding.status != Status::not_met) return finding;
  if (scene.plan.bed(front.met) != nullptr) {
    finding.cure = scene.stowing();
    return finding;
  }
  const Placed* thing = scene.answer.arrangement.find(front.met);
  if (thing != nullptr && !gives_way(scene.plan, scene.answer.arrangement, *thing)) {
    finding.cure = Cure{Cure::Kind::as_told, outlet, {}};
    return finding;
  }
  const Length by = thing != nullptr ? out_of_the_face(scene, finding) : shortfall(finding);
  finding.cure =
      Cure{Cure::Kind::move_apart, thing != nullptr ? front.met : outlet, marked_out(by, scene.plan->unit)};
  return finding;
}

Finding outlet_faces(const CordScene& scene) {
  Finding finding = scene.begin("cord.outlet-faces");
  const OutletFront& front = scene.plugged.front;
  const std::string& outlet = scene.plugged.outlet->id.text();
  finding.subjects = {outlet};
  if (!front.depth) {
    finding.cure = Cure{Cure::Kind::state_faces, outlet, {}};
  } else if (front.bedding) {
    finding.bed = BedId(front.bed);
    finding.where = {front.bedding->from, front.bedding->to};
    compare(scene.plan, finding, front.bedding->squared.floor());
    if (finding.status == Status::not_met) finding.cure = scene.stowing();
  } else {
    finding.compared = scene.plan.limit(*find_rule("cord.outlet-faces"));
    finding.status = Status::met;
  }
  return finding;
}

bool is_told_of(const PluggedIn& plugged) { return plugged.cord || plugged.named; }

}  // namespace

void add_cord_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const PluggedIn& plugged : answer.plugged) {
    if (!is_told_of(plugged)) continue;
    const CordScene scene{plan, answer, plugged};
    findings.push_back(reach(scene));
    const bool runs = plugged.run && plugged.run->reached();
    if (runs && !answer.beds.empty()) findings.push_back(under_bedding(scene));
    if (runs) add_walkways(scene, findings);
    if (plugged.outlet == nullptr) continue;
    findings.push_back(plug_room(scene));
    if (!answer.beds.empty()) findings.push_back(outlet_faces(scene));
  }
}

void add_missing_cords(const Plan& plan, std::vector<Finding>& findings) {
  for (const Piece& piece : plan->pieces) {
    if (!piece.heat || piece.cord) continue;
    const bool plugged = std::ranges::any_of(plan->configurations, [&](const Configuration& configuration) {
      return std::ranges::any_of(configuration.poses, [&](const Pose& pose) {
        return pose.piece == piece.id && !pose.plugged_into.empty();
      });
    });
    if (plugged) continue;
    Finding finding = finding_of(plan, "cord.not-given");
    finding.subjects = {piece.id.text()};
    finding.cure = Cure{Cure::Kind::state_cord, piece.id.text(), {}};
    findings.push_back(std::move(finding));
  }
}

}  // namespace berthwright

#include <algorithm>

#include <berthwright/solve/bed/guard_rails.h>

#include "plan/wall_names.h"
#include "solve/bed_scene.h"

namespace berthwright {
namespace {

// 16 CFR 1213.3(a): the rail's top stands at least this far above the mattress.
Length rail_above_mattress(const BedScene& scene) { return scene.plan.limit(*find_rule("bed.rail-height")); }

const std::string* rail_among(const BedScene& scene, const GuardedSide& side) {
  for (const std::string& id : side.guards)
    if (const Fixture* fixture = scene.plan.fixture(id))
      if (fixture->kind == Fixture::Kind::guard_rail) return &id;
  return nullptr;
}

// How far the side is open, against what the rule allows there.
bool add_opening(const BedScene& scene, const GuardedSide& side, std::string_view rule) {
  Finding finding = scene.begin(rule);
  finding.variant = std::string(wall_word(side.side));
  finding.subjects = {scene.bed.bed->id.text()};
  compare(scene.plan, finding, side.open);
  if (side.open > Length{}) finding.where = {scene.at_level(side.open_from), scene.at_level(side.open_to)};
  if (finding.status == Status::not_met) {
    const std::string* rail = rail_among(scene, side);
    finding.cure = rail != nullptr ? scene.cure(Cure::Kind::lengthen, *rail, shortfall(finding))
                                   : Cure{Cure::Kind::add_guard_rail, scene.bed.bed->id.text(),
                                          rail_above_mattress(scene)};
  }
  const bool met = finding.status != Status::not_met;
  scene.findings.push_back(std::move(finding));
  return met;
}

bool add_height(const BedScene& scene, const GuardedSide& side) {
  if (!side.height || scene.plan.fixture(side.lowest) == nullptr) return true;
  Finding finding = scene.begin("bed.rail-height");
  finding.variant = std::string(wall_word(side.side));
  finding.subjects = {side.lowest};
  compare(scene.plan, finding, *side.height);
  const bool rail = scene.plan.fixture(side.lowest)->kind == Fixture::Kind::guard_rail;
  if (finding.status == Status::not_met)
    finding.cure =
        rail ? scene.cure(Cure::Kind::raise, side.lowest, shortfall(finding))
             : Cure{Cure::Kind::add_guard_rail, scene.bed.bed->id.text(), rail_above_mattress(scene)};
  const bool met = finding.status != Status::not_met;
  scene.findings.push_back(std::move(finding));
  return met;
}

// Of the two long sides the better closed one counts as the wall's (16 CFR 1213.3(a)).
bool add_sides(const BedScene& scene) {
  const auto sides = guarded_sides(scene.plan, scene.answer.arrangement, scene.mattress());
  if (!sides) return false;
  bool met = add_opening(scene, sides->front(), "bed.rail-closed-side");
  met = add_opening(scene, sides->back(), "bed.rail-opening") && met;
  for (const GuardedSide& side : *sides) met = add_height(scene, side) && met;
  return met;
}

void add_guard_rails(const BedScene& scene) {
  Finding rail = scene.begin("bed.guard-rail");
  compare(scene.plan, rail, underside_of(scene.answer.arrangement, scene.mattress()));
  if (rail.status == Status::not_met) {
    if (add_sides(scene)) {
      rail.status = Status::met;
      rail.variant = "railed";
      rail.margin.reset();
    } else {
      rail.cure = Cure{Cure::Kind::add_guard_rail, scene.bed.bed->id.text(), rail_above_mattress(scene)};
    }
  }
  scene.findings.push_back(std::move(rail));
}

}  // namespace

void add_bed_heights(const BedScene& scene) {
  Finding aid = scene.begin("bed.access-aid");
  compare(scene.plan, aid, scene.mattress().level);
  if (aid.status == Status::not_met)
    aid.cure = scene.cure(Cure::Kind::lower, scene.bed.bed->id.text(), shortfall(aid));
  scene.findings.push_back(std::move(aid));
  add_guard_rails(scene);
}

}  // namespace berthwright

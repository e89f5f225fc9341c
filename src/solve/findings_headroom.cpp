#include <algorithm>

#include <berthwright/solve/bed/guard_rails.h>

#include "solve/bed_scene.h"
#include "solve/gives_way.h"

namespace berthwright {
namespace {

Point place_in(const Region& region) {
  const std::optional<Disc> widest = largest_disc(region);
  return widest ? widest->centre : region.bounds().low;
}

const ClearHeight* lowest_part(const BedScene& scene) {
  const std::vector<ClearHeight>& parts = scene.room().overhead;
  const auto lowest = std::ranges::min_element(parts, {}, &ClearHeight::height);
  return lowest == parts.end() ? nullptr : &*lowest;
}

// Of a bed on which nobody can lie at all, the least height over any of it.
Length clear_height_of(const BedScene& scene) {
  const ClearHeight* lowest = lowest_part(scene);
  return scene.room().lying.empty() && lowest != nullptr ? lowest->height : scene.room().least_clear_height;
}

void add_clear_height(const BedScene& scene) {
  Finding finding = scene.begin("bed.clear-height");
  const Length clear = clear_height_of(scene);
  const ClearHeight* lowest = lowest_part(scene);
  if (scene.room().lying.empty() && lowest != nullptr) {
    finding.subjects = {lowest->what};
    finding.where = {scene.at_level(place_in(lowest->region))};
  }
  compare(scene.plan, finding, clear);
  if (finding.status == Status::not_met) finding.cure = more_clear_height(scene);
  scene.findings.push_back(std::move(finding));
}

// Once for each thing, where it hangs lowest.
void add_overhead(const BedScene& scene) {
  std::vector<std::string> told{"wall"};
  for (const ClearHeight& part : scene.room().overhead) {
    if (part.height >= clear_height_bands.back()) continue;
    if (std::ranges::find(told, part.what) != told.end()) continue;
    told.push_back(part.what);
    Finding finding = scene.begin("bed.overhead");
    finding.subjects = {part.what};
    finding.measured = part.height;
    finding.status = Status::met;
    finding.where = {scene.at_level(place_in(part.region))};
    scene.findings.push_back(std::move(finding));
  }
}

void add_sitting_up(const BedScene& scene) {
  Finding finding = scene.begin("bed.sitting-up");
  finding.measured = Length{};
  finding.status = Status::met;
  if (const std::optional<SittingUp>& sitting = scene.room().sitting) {
    finding.measured = sitting->head_room;
    finding.where = {scene.at_level(sitting->place.centre)};
  }
  scene.findings.push_back(std::move(finding));
}

}  // namespace

Cure more_clear_height(const BedScene& scene) {
  const Length asked = scene.plan.limit(*find_rule("bed.clear-height"));
  const Length by = asked - clear_height_of(scene);
  const ClearHeight* lowest = lowest_part(scene);
  const bool too_low_already = underside_of(scene.answer.arrangement, scene.mattress()) < by;
  const Fixture* above = lowest != nullptr ? scene.plan.fixture(lowest->what) : nullptr;
  const Placed* placed = above != nullptr ? scene.answer.arrangement.find(lowest->what) : nullptr;
  if (too_low_already && placed != nullptr && !gives_way(scene.plan, scene.answer.arrangement, *placed))
    return {Cure::Kind::none, scene.bed.bed->id.text(), {}, {}, {lowest->what}};
  if (too_low_already && above != nullptr)
    return scene.cure(Cure::Kind::raise_underside, lowest->what,
                      scene.mattress().level + asked - above->solid.base());
  return scene.cure(Cure::Kind::lower, scene.bed.bed->id.text(), by);
}

void add_headroom(const BedScene& scene) {
  add_clear_height(scene);
  add_overhead(scene);
  add_sitting_up(scene);
}

}  // namespace berthwright

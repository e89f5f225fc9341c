#include "solve/site/site_scene.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/solve/open/leaves.h>
#include <berthwright/solve/way/clear_opening.h>
#include <berthwright/solve/way/walkways.h>

#include "exact/required.h"
#include "plan/box_sides.h"
#include "plan/wall_names.h"

namespace berthwright {
namespace {

// As the arrangement of a configuration would hold it. The pose and the fixture live as long as this does.
class PutDown {
 public:
  PutDown(const Appliance& appliance, const SitePlace& place, Length base)
      : appliance_(appliance), base_(base) {
    Placement placement{false, appliance.turn(place.faces), {}};
    if (appliance.piece != nullptr) {
      const Polygon& outline = appliance.piece->outline.polygon();
      placement.shift = place.box.low - placement(outline).bounds().low;
      pose_.piece = appliance.piece->id;
      pose_.outline = Region(placement(outline));
      for (const Arc& arc : appliance.piece->outline.arcs()) pose_.arcs.push_back(placement(arc));
      pose_.placement = placement;
      pose_.height = appliance.height;
      pose_.faces = place.faces;
      pose_.base = base;
      pose_.state = Pose::State::running;
    } else {
      Fixture& fixture = fixture_.emplace(*appliance.fixture);
      const Region outline = placement(fixture.solid.outline());
      fixture.solid =
          Solid(moved(outline, place.box.low - outline.bounds().low), base, base + appliance.height);
      required(fixture.heat).faces = place.faces;
    }
  }
  PutDown(const PutDown&) = delete;
  PutDown& operator=(const PutDown&) = delete;

  Placed placed() const {
    if (fixture_) return {appliance_.id, &*fixture_, nullptr, nullptr, fixture_->solid, {}, {}};
    return {appliance_.id,
            nullptr,
            appliance_.piece,
            &pose_,
            Solid(pose_.outline, base_, base_ + appliance_.height),
            {},
            {}};
  }

 private:
  const Appliance& appliance_;
  Length base_;
  Pose pose_;
  std::optional<Fixture> fixture_;
};

std::vector<Region> swings_at(const Plan& plan, const SiteScene& scene, Length height) {
  const Length low = scene.base;
  const Length high = scene.base + height;
  std::vector<Region> swings;
  for (const Fixture& fixture : plan->fixtures)
    for (const Leaf& leaf : fixture.leaves) swings.push_back(leaf_sweep(fixture, leaf, low, high));
  for (const Opening& opening : plan->openings) {
    if (opening.swing != Opening::Swing::in) continue;
    for (const Solid& sweep : inward_sweeps(plan->interior, opening))
      if (sweep.base() < high && low < sweep.top()) swings.push_back(sweep.outline());
  }
  std::erase_if(swings, &Region::empty);
  return swings;
}

void set_stand(SiteScene& scene, const Appliance& appliance, const std::string& stands_on) {
  if (appliance.fixture != nullptr) scene.base = appliance.fixture->solid.base();
  if (stands_on.empty() || stands_on == "floor") return;
  const Placed* carrier = scene.arrangement.find(stands_on);
  scene.surface = carrier != nullptr ? carrier->solid.outline() : Region{};
  if (carrier != nullptr) scene.base = carrier->solid.top();
  scene.level = {scene.base, {stands_on}};
}

// What the beds of the configuration bring: bedding, and ways out that are kept clear.
void add_beds(const Plan& plan, SiteScene& scene) {
  std::vector<Region> walkways;
  for (const Bed& bed : plan->beds) {
    if (bed.configuration != scene.configuration->id) continue;
    const Mattress mattress = mattress_of(plan, scene.arrangement, bed);
    scene.beddings.emplace_back(&bed, bedding_of(plan, scene.arrangement, bed, mattress));
    const std::vector<WayOut> ways = ways_out(plan, scene.arrangement, bed, mattress);
    if (std::optional<Walkway> walkway = walkway_of(bed, ways)) walkways.push_back(walkway->floor);
  }
  scene.walkways = united(walkways);
}

SiteMargin margin_of(SiteRule yardstick, const SiteScene& scene, const HeatDistance& distance, Length asked,
                     Length margin) {
  return {yardstick, scene.configuration->id, distance, asked, margin};
}

}  // namespace

Stance Appliance::stance(Wall way) const {
  const bool turned = is_end_wall(way) != is_end_wall(faces);
  return {turned ? width : length, turned ? length : width, way};
}

Turn Appliance::turn(Wall way) const {
  int quarters = 0;
  while (turned(faces, Turn::quarters(quarters)) != way) ++quarters;
  return Turn::quarters(quarters);
}

Appliance appliance_of(const Piece& piece) {
  const HeatSource& heat = required(piece.heat);
  return {piece.id.text(),
          &piece,
          nullptr,
          piece.length,
          piece.width,
          piece.thickness,
          heat.faces,
          heat.plate ? &*heat.plate : nullptr,
          !piece.outline.arcs().empty()};
}

Appliance appliance_of(const Fixture& fixture) {
  const HeatSource& heat = required(fixture.heat);
  const Rect bounds = fixture.solid.outline().bounds();
  return {fixture.id.text(),
          nullptr,
          &fixture,
          bounds.width(),
          bounds.height(),
          fixture.solid.height(),
          heat.faces,
          heat.plate ? &*heat.plate : nullptr,
          !fixture.arcs.empty()};
}

SiteScene scene_without(const Plan& plan, Arrangement arrangement, const Appliance& appliance,
                        const std::string& stands_on) {
  SiteScene scene;
  scene.configuration = arrangement.configuration;
  scene.arrangement = std::move(arrangement);
  if (const Placed* now = scene.arrangement.find(appliance.id)) scene.now = *now;
  std::erase_if(scene.arrangement.things, [&](const Placed& thing) { return thing.id == appliance.id; });
  add_beds(plan, scene);
  scene.burnables = burnables_in(scene.arrangement, scene.beddings);
  set_stand(scene, appliance, stands_on);
  scene.swings = swings_at(plan, scene, appliance.height);
  return scene;
}

std::vector<SiteMargin> margins_at(const Plan& plan, const SiteScene& scene, const Appliance& appliance,
                                   const SitePlace& place) {
  const PutDown down(appliance, place, scene.base);
  const Placed heater = down.placed();
  const Length three_feet = plan.limit(*find_rule("heat.three-feet"));
  const Length more = plan.limit(*find_rule("heat.data-plate"));
  std::vector<SiteMargin> margins;
  const auto keep_least = [&](SiteMargin next) {
    const auto found = std::ranges::find(margins, next.yardstick, &SiteMargin::yardstick);
    if (found == margins.end())
      margins.push_back(std::move(next));
    else if (next.margin < found->margin)
      *found = std::move(next);
  };
  for (const Burnable& burnable : scene.burnables) {
    if (burnable.solids.empty()) continue;
    const HeatDistance entry = heat_distance(heater, burnable);
    keep_least(margin_of(SiteRule::three_feet, scene, entry, three_feet, entry.distance - three_feet));
    if (entry.plate_margin && entry.plate_required)
      keep_least(margin_of(SiteRule::data_plate, scene, entry, *entry.plate_required + more,
                           *entry.plate_margin - more));
  }
  std::ranges::sort(margins, {}, &SiteMargin::yardstick);
  return margins;
}

}  // namespace berthwright

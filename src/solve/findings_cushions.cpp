#include <algorithm>

#include "solve/bed/levelling.h"
#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

struct Cushions {
  const Plan& plan;
  const ConfigurationAnswer& answer;
  std::vector<Finding>& findings;

  Finding begin(std::string_view rule) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    return finding;
  }
  const Placed& placed(const std::string& id) const { return *answer.arrangement.find(id); }
};

// All that are hollow; where none is, the one that comes nearest to it.
void add_unsupported(const Cushions& scene) {
  const std::vector<CushionSupport>& cushions = scene.answer.support.cushions;
  if (cushions.empty()) return;
  const Length limit = scene.plan.limit(*find_rule("support.unsupported"));
  const auto widest = std::ranges::max_element(cushions, {}, &CushionSupport::widest);
  for (auto cushion = cushions.begin(); cushion != cushions.end(); ++cushion) {
    if (cushion->widest <= limit && cushion != widest) continue;
    Finding finding = scene.begin("support.unsupported");
    if (cushion->widest > Length{}) {
      finding.subjects = {cushion->piece};
      finding.where = {{cushion->where, cushion->underside}};
    }
    compare(scene.plan, finding, cushion->widest);
    if (finding.status == Status::not_met) finding.cure = Cure{Cure::Kind::bridge, cushion->piece, limit};
    scene.findings.push_back(std::move(finding));
  }
}

Portion share_of(Area part, Area whole) {
  return {static_cast<std::int64_t>(1000 * part.doubled() / whole.doubled())};
}

// The other height that carries most.
const CarryingHeight* other_height(const CushionSupport& cushion) {
  for (const CarryingHeight& height : cushion.heights)
    if (height.top != cushion.underside) return &height;
  return nullptr;
}

const CarryingHeight* own_height(const CushionSupport& cushion) {
  const auto own = std::ranges::find(cushion.heights, cushion.underside, &CarryingHeight::top);
  return own == cushion.heights.end() ? nullptr : &*own;
}

// What stands too low comes up; what stands too high, down.
Cure levelled(const Cushions& scene, const std::string& cushion, const CarryingHeight& other,
              Length underside) {
  const Placed* thing = scene.answer.arrangement.find(other.things.front());
  if (thing == nullptr) return {Cure::Kind::carry_at, cushion, {}, underside, {}};
  const Length by = underside - other.top;
  if (!can_change_height(scene.answer.arrangement, thing->id))
    return by > Length{} ? Cure{Cure::Kind::carry_at, cushion, {}, underside, {}}
                         : Cure{Cure::Kind::pad, cushion, -by};
  if (thing->fixture == nullptr) return cure_of_height(scene.answer.arrangement, *thing, by);
  return Cure{by > Length{} ? Cure::Kind::raise : Cure::Kind::lower, thing->id, abs(by), underside, {}};
}

void add_two_heights(const Cushions& scene) {
  for (const CushionSupport& cushion : scene.answer.support.cushions) {
    const CarryingHeight* other = other_height(cushion);
    const CarryingHeight* own = own_height(cushion);
    if (other == nullptr || own == nullptr) continue;
    Finding finding = scene.begin("support.two-heights");
    finding.subjects = {cushion.piece, own->things.front(), other->things.front()};
    finding.variant = other->top < own->top ? "lower" : "higher";
    const Region& outline = scene.placed(cushion.piece).solid.outline();
    finding.besides = {share_of(own->area, outline.area()), share_of(other->area, outline.area())};
    const Rect bounds = outline.bounds();
    finding.where = {
        {{half(bounds.low.x + bounds.high.x), half(bounds.low.y + bounds.high.y)}, cushion.underside}};
    compare(scene.plan, finding, abs(own->top - other->top));
    if (finding.status == Status::not_met)
      finding.cure = levelled(scene, cushion.piece, *other, cushion.underside);
    scene.findings.push_back(std::move(finding));
  }
}

void add_things_laid_upon(const Cushions& scene, const BedAnswer& bed) {
  std::size_t found = 0;
  for (const Placed& thing : scene.answer.arrangement.things) {
    if (thing.piece == nullptr || thing.is_soft()) continue;
    std::vector<std::string> under;
    std::vector<Region> covered;
    for (const std::string& id : thing.carried_by) {
      if (std::ranges::find(bed.bed->pieces, id, &PieceId::text) == bed.bed->pieces.end()) continue;
      if (!scene.placed(id).is_soft()) continue;
      under.push_back(id);
      covered.push_back(common(thing.solid.outline(), scene.placed(id).solid.outline()));
    }
    if (under.empty()) continue;
    Finding finding = scene.begin("bed.laid-upon");
    finding.bed = bed.bed->id;
    finding.subjects = {thing.id};
    const Region region = united(covered);
    finding.measured = region.area();
    finding.where = {{region.bounds().low, thing.solid.base()}, {region.bounds().high, thing.solid.base()}};
    finding.status = Status::not_met;
    finding.cure = Cure{Cure::Kind::set_aside, thing.id, {}};
    scene.findings.push_back(std::move(finding));
    ++found;
  }
  if (found > 0) return;
  Finding met = scene.begin("bed.laid-upon");
  met.bed = bed.bed->id;
  met.status = Status::met;
  scene.findings.push_back(std::move(met));
}

}  // namespace

void add_cushion_findings(const Plan& plan, const ConfigurationAnswer& answer,
                          std::vector<Finding>& findings) {
  const Cushions scene{plan, answer, findings};
  add_unsupported(scene);
  add_two_heights(scene);
  for (const BedAnswer& bed : answer.beds) {
    add_things_laid_upon(scene, bed);
  }
}

}  // namespace berthwright

#include <algorithm>
#include <optional>

#include "solve/bed/levelling.h"
#include "solve/comparing.h"
#include "solve/findings.h"
#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

// 16 CFR 1213.3(a): the rail's top stands at least this far above the mattress.
constexpr Length rail_above_mattress = 5_in;
// `SleepingRoom::longest` is this wide.
constexpr Length berth_width = 24_in;
// A named size that misses by no more than this is reported as missed; one that misses by more is no
// question.
constexpr Length nearly = 2_in;

/// All that findings about one bed share.
struct Scene {
  const Plan& plan;
  const ConfigurationAnswer& answer;
  const BedAnswer& bed;
  std::vector<Finding>& findings;

  const Mattress& mattress() const { return bed.mattress; }
  const SleepingRoom& room() const { return bed.room; }
  Point3 at_level(Point plan_point) const { return {plan_point, mattress().level}; }
  std::vector<Point3> corners_of(const TurnedRectangle& rectangle) const {
    std::vector<Point3> corners;
    corners.reserve(rectangle.corners.size());
    for (const Point corner : rectangle.corners) corners.push_back(at_level(corner));
    return corners;
  }

  Finding begin(std::string_view rule) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    finding.bed = bed.bed->id;
    return finding;
  }
  /// Nothing of the kind was found: the rule is met with nothing measured.
  void none_of(std::string_view rule) const {
    Finding finding = begin(rule);
    finding.compared = plan.limit(*find_rule(rule));
    finding.status = Status::met;
    findings.push_back(std::move(finding));
  }
  Cure cure(Cure::Kind kind, std::string subject, Length by) const {
    return {kind, std::move(subject), marked_out(by, plan->unit)};
  }
};

// The two pieces of the surface nearest to the widest place of a gap.
std::vector<std::string> around(const Scene& scene, const Gap& gap) {
  std::vector<std::pair<SquaredLength, std::string>> pieces;
  const Region place(Rect{gap.where, gap.where + Vector{one_tick, one_tick}});
  for (const PieceId& id : scene.mattress().in_surface)
    if (const Placed* placed = scene.answer.arrangement.find(id.text()))
      pieces.emplace_back(nearest(place, placed->solid.outline()).squared, id.text());
  std::ranges::sort(pieces);
  pieces.resize(std::min<std::size_t>(pieces.size(), 2));
  std::vector<std::string> names;
  for (const PieceId& id : scene.mattress().in_surface)
    if (std::ranges::find(pieces, id.text(), &std::pair<SquaredLength, std::string>::second) != pieces.end())
      names.push_back(id.text());
  if (names.empty()) names.push_back(scene.bed.bed->id.text());
  return names;
}

// A hole wider than any gap leaves the bed in parts: how far apart the loneliest of them lies from the
// others.
std::optional<Nearest> farthest_part(const Region& surface) {
  const std::vector<Region> parts = surface.parts();
  std::optional<Nearest> farthest;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    std::optional<Nearest> next;
    for (std::size_t k = 0; k < parts.size(); ++k) {
      if (k == i) continue;
      const Nearest found = nearest(parts[i], parts[k]);
      if (!next || found.squared < next->squared) next = found;
    }
    if (next && (!farthest || farthest->squared < next->squared)) farthest = next;
  }
  return farthest;
}

bool add_parts(const Scene& scene) {
  const std::optional<Nearest> apart = farthest_part(scene.mattress().closed);
  const Length reported = scene.mattress().gaps.empty() ? Length{} : scene.mattress().gaps.front().width;
  if (!apart || apart->squared.ceiling() <= reported) return false;
  Finding finding = scene.begin("bed.gap");
  finding.variant = "parts";
  finding.subjects = {scene.bed.bed->id.text()};
  finding.where = {scene.at_level(apart->from.plan), scene.at_level(apart->to.plan)};
  compare(scene.plan, finding, apart->squared.ceiling());
  scene.findings.push_back(std::move(finding));
  return true;
}

void add_gaps(const Scene& scene) {
  bool any = false;
  for (const Gap& gap : scene.mattress().gaps) {
    Finding finding = scene.begin(gap.at_wall ? "bed.wall-gap" : "bed.gap");
    finding.subjects = around(scene, gap);
    finding.where = {scene.at_level(gap.where)};
    compare(scene.plan, finding, gap.width);
    if (gap.at_corner) {  // design 4.16: reported, closed for lying
      finding.variant = "rounded corners";
      finding.compared.reset();
      finding.margin.reset();
      finding.status = Status::met;
    }
    if (finding.status == Status::not_met)
      finding.cure = scene.cure(Cure::Kind::widen, finding.subjects.front(), shortfall(finding));
    any = any || !gap.at_wall;
    scene.findings.push_back(std::move(finding));
  }
  any = add_parts(scene) || any;
  if (!any) scene.none_of("bed.gap");
}

void add_ridges(const Scene& scene) {
  for (const Ridge& ridge : scene.mattress().ridges) {
    Finding finding = scene.begin("bed.ridge");
    finding.subjects = {ridge.lower.text(), ridge.higher.text()};
    finding.where = {scene.at_level(ridge.where)};
    compare(scene.plan, finding, ridge.step);
    if (finding.status != Status::met)
      finding.cure =
          cure_of_ridge(scene.answer.arrangement, *scene.answer.arrangement.find(ridge.lower.text()),
                        *scene.answer.arrangement.find(ridge.higher.text()));
    scene.findings.push_back(std::move(finding));
  }
  if (scene.mattress().ridges.empty()) scene.none_of("bed.ridge");
}

// What would bring a piece that dropped out of the surface back into it.
Cure levelling(const Scene& scene, const Placed& dropped) {
  const Arrangement& arrangement = scene.answer.arrangement;
  const Length off = scene.mattress().level - dropped.solid.top();
  for (const PieceId& id : scene.mattress().in_surface)
    if (const Placed* level = arrangement.find(id.text());
        level->solid.top() == scene.mattress().level && off > Length{})
      return cure_of_ridge(arrangement, dropped, *level);
  return cure_of_height(arrangement, dropped, off);
}

// A bed that is too small because a piece dropped out of it is levelled first.
Cure larger_bed(const Scene& scene, Length by) {
  for (const PieceId& id : scene.mattress().dropped_out)
    if (const Placed* placed = scene.answer.arrangement.find(id.text())) return levelling(scene, *placed);
  return scene.cure(Cure::Kind::widen, scene.bed.bed->id.text(), by);
}

void add_dropped_pieces(const Scene& scene) {
  for (const PieceId& id : scene.mattress().dropped_out) {
    const Placed* placed = scene.answer.arrangement.find(id.text());
    if (placed == nullptr) continue;
    Finding finding = scene.begin("bed.dropped-piece");
    const Rect bounds = placed->solid.outline().bounds();
    finding.subjects = {id.text()};
    finding.where = {
        {{half(bounds.low.x + bounds.high.x), half(bounds.low.y + bounds.high.y)}, placed->solid.top()}};
    compare(scene.plan, finding, abs(scene.mattress().level - placed->solid.top()));
    finding.cure = levelling(scene, *placed);
    scene.findings.push_back(std::move(finding));
  }
  if (scene.mattress().dropped_out.empty()) scene.none_of("bed.dropped-piece");
}

void add_sizes(const Scene& scene) {
  Finding area = scene.begin("bed.area");
  area.measured = scene.room().area;
  area.status = Status::met;
  scene.findings.push_back(std::move(area));

  const auto& largest = scene.room().largest;
  Finding size = scene.begin("bed.size");
  Finding width = scene.begin("bed.berth-width");
  size.measured = largest ? Sides{largest->length, largest->width} : Sides{};
  size.status = Status::met;
  if (largest) size.where = width.where = scene.corners_of(*largest);

  Finding length = scene.begin("bed.berth-length");
  Finding vessel = scene.begin("bed.vessel-length");
  const auto& longest = scene.room().longest;
  compare(scene.plan, length, longest ? side_beside(*longest, berth_width) : Length{});
  compare(scene.plan, vessel, longest ? side_beside(*longest, berth_width) : Length{});
  if (longest) length.where = vessel.where = scene.corners_of(*longest);
  // The largest rectangle may be long and narrow where one of a berth's width is there as well.
  const Length widest = std::max(largest ? largest->width : Length{}, longest ? longest->width : Length{});
  compare(scene.plan, width, widest);
  for (Finding* finding : {&width, &length, &vessel})
    if (finding->status == Status::not_met) finding->cure = larger_bed(scene, shortfall(*finding));
  for (Finding* finding : {&size, &width, &length, &vessel}) scene.findings.push_back(std::move(*finding));
}

// Underside of what carries the mattress: the lowest of what the cushions of the surface stand on. What
// stands on the floor itself has its underside there.
Length underside_of(const Scene& scene) {
  Length lowest = scene.mattress().level;
  for (const PieceId& id : scene.mattress().in_surface) {
    const Placed* cushion = scene.answer.arrangement.find(id.text());
    if (cushion == nullptr) continue;
    if (cushion->carried_by.empty()) lowest = std::min(lowest, cushion->solid.base());
    for (const std::string& carrier : cushion->carried_by) {
      const Placed* below = scene.answer.arrangement.find(carrier);
      lowest = std::min(lowest, below == nullptr ? Length{} : below->solid.base());
    }
  }
  return lowest;
}

void add_heights(const Scene& scene) {
  Finding aid = scene.begin("bed.access-aid");
  compare(scene.plan, aid, scene.mattress().level);
  if (aid.status == Status::not_met)
    aid.cure = scene.cure(Cure::Kind::lower, scene.bed.bed->id.text(), shortfall(aid));
  Finding rail = scene.begin("bed.guard-rail");
  compare(scene.plan, rail, underside_of(scene));
  if (rail.status == Status::not_met)
    rail.cure = Cure{Cure::Kind::add_guard_rail, scene.bed.bed->id.text(), rail_above_mattress};
  scene.findings.push_back(std::move(aid));
  scene.findings.push_back(std::move(rail));
}

// Least height over the whole surface, for a bed on which nobody can lie at all.
Length height_over_surface(const Scene& scene) {
  const Length level = scene.mattress().level;
  const Region below = common(scene.mattress().surface, room_at(scene.plan->interior, level));
  if (below.empty()) return {};
  Length lowest = roof_over(scene.plan->interior, below, level);
  for (const Placed& thing : scene.answer.arrangement.things)
    if (thing.solid.base() >= level && overlaps(thing.solid.outline(), below))
      lowest = std::min(lowest, thing.solid.base());
  return lowest - level;
}

void add_clear_height(const Scene& scene) {
  Finding finding = scene.begin("bed.clear-height");
  compare(scene.plan, finding,
          scene.room().lying.empty() ? height_over_surface(scene) : scene.room().least_clear_height);
  scene.findings.push_back(std::move(finding));
}

// A width that the plan states for a person is the plan's own number; a number for the rule goes before it.
void compare_width(const Scene& scene, Finding& finding, const Person& person, Length measured) {
  const Rule& rule = *find_rule("bed.person-width");
  const bool stated = scene.plan.override_of(rule) == nullptr && person.width != rule.limit;
  compare(finding, measured, stated ? person.width : scene.plan.limit(rule));
  if (stated) finding.override_reason = "width of " + person.name;
}

// Lengthwise the longest place of the person's own width; across, an equal share of the widest rectangle,
// in the proportion of the widths people take.
void add_people(const Scene& scene) {
  Length taken;
  Length widest = scene.room().largest ? scene.room().largest->width : Length{};
  if (scene.room().abreast) widest = std::max(widest, scene.room().abreast->width);
  for (const PersonRoom& room : scene.room().people) taken += room.person->width;

  for (const PersonRoom& room : scene.room().people) {
    const Person& person = *room.person;
    Finding length = scene.begin("bed.person-length");
    Finding width = scene.begin("bed.person-width");
    length.subjects = width.subjects = {person.name};
    if (room.place) length.where = scene.corners_of(*room.place);
    if (person.stature) {
      compare(scene.plan, length,
              (room.place ? side_beside(*room.place, person.width) : Length{}) - *person.stature);
    } else {
      length.compared = scene.plan.limit(*find_rule("bed.person-length"));
      length.cure = Cure{Cure::Kind::state_measure, person.name, {}};
    }
    const Length alone = room.place ? std::max(widest, room.place->width) : widest;
    const Length total = scene.room().people.size() == 1 ? alone : widest;
    const Int128 share = Int128{total.ticks()} * person.width.ticks() / taken.ticks();
    compare_width(scene, width, person, Length::from_ticks(static_cast<std::int64_t>(share)));
    for (Finding* finding : {&length, &width}) {
      if (finding->status == Status::not_met) finding->cure = larger_bed(scene, shortfall(*finding));
      scene.findings.push_back(std::move(*finding));
    }
  }
}

// What is spare at the tighter side of a size that is held; of one that is not, the least that is short at
// one side with the other side full.
Length spare_of(const SizeHeld& held) {
  const Length along = held.spare_length.value_or(-held.size->length);
  const Length across = held.spare_width.value_or(-held.size->width);
  return held.held ? std::max(std::min(along, across), Length{}) : std::max(along, across);
}

// The sides the bed has for the size: each with the other one full, so both only where the size is held.
Sides sides_for(const SizeHeld& held) {
  const Length along = held.size->length + held.spare_length.value_or(-held.size->length);
  const Length across = held.size->width + held.spare_width.value_or(-held.size->width);
  if (held.held) return {along, across};
  return spare_of(held) == held.spare_width ? Sides{held.size->length, across}
                                            : Sides{along, held.size->width};
}

// Sizes that are held, and those missed by a little; where there is none, the one missed by least.
void add_named_sizes(const Scene& scene) {
  const auto& sizes = scene.room().sizes;
  const auto is_worth_saying = [](const SizeHeld& held) { return held.held || spare_of(held) >= -nearly; };
  const bool any = std::ranges::any_of(sizes, is_worth_saying);
  const auto closest = std::ranges::max_element(sizes, {}, spare_of);
  for (auto held = sizes.begin(); held != sizes.end(); ++held) {
    if (any ? !is_worth_saying(*held) : held != closest) continue;
    Finding finding = scene.begin("bed.named-size");
    finding.variant = held->size->name;
    finding.source = held->size->source;
    finding.compared = Sides{held->size->length, held->size->width};
    finding.measured = sides_for(*held);
    finding.margin = spare_of(*held);
    finding.status = held->held ? Status::met : Status::not_met;
    scene.findings.push_back(std::move(finding));
  }
}

void add_shares(const Scene& scene) {
  Finding finding = scene.begin("bed.fits-people");
  finding.measured = scene.room().fits;
  finding.status = Status::met;
  scene.findings.push_back(std::move(finding));
}

}  // namespace

void add_bed_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const BedAnswer& bed : answer.beds) {
    const Scene scene{plan, answer, bed, findings};
    add_sizes(scene);
    add_people(scene);
    add_shares(scene);
    if (bed.mattress.surface.empty()) continue;
    add_gaps(scene);
    add_ridges(scene);
    add_dropped_pieces(scene);
    add_heights(scene);
    add_clear_height(scene);
    add_named_sizes(scene);
  }
}

}  // namespace berthwright

#include <algorithm>
#include <optional>

#include "solve/bed/levelling.h"
#include "solve/bed_scene.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

// `SleepingRoom::longest` is this wide.
constexpr Length berth_width = 24_in;
// A named size that misses by no more than this is reported as missed; one that misses by more is no
// question.
constexpr Length nearly = 2_in;

// The two pieces of the surface nearest to the widest place of a gap.
std::vector<std::string> around(const BedScene& scene, const Gap& gap) {
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

// A piece that dropped out comes back; where none did, a cushion is wanting.
Cure joining(const BedScene& scene, Length apart) {
  for (const PieceId& id : scene.mattress().dropped_out)
    if (const Placed* placed = scene.answer.arrangement.find(id.text())) return levelling(scene, *placed);
  return scene.cure(Cure::Kind::lay_cushion, scene.bed.bed->id.text(), apart);
}

bool add_parts(const BedScene& scene) {
  const std::optional<Nearest> apart = farthest_part(scene.mattress().closed);
  const Length reported = scene.mattress().gaps.empty() ? Length{} : scene.mattress().gaps.front().width;
  if (!apart || apart->squared.ceiling() <= reported) return false;
  Finding finding = scene.begin("bed.gap");
  finding.variant = "parts";
  finding.subjects = {scene.bed.bed->id.text()};
  finding.where = {scene.at_level(apart->from.plan), scene.at_level(apart->to.plan)};
  compare(scene.plan, finding, apart->squared.ceiling());
  if (finding.status == Status::not_met) finding.cure = joining(scene, apart->squared.ceiling());
  scene.findings.push_back(std::move(finding));
  return true;
}

// Of the pieces around the gap the nearest reaches over it.
Cure closing(const BedScene& scene, const Gap& gap, const Finding& finding) {
  const Vector around_it{one_tick, one_tick};
  const Region place(Rect{gap.where - around_it, gap.where + around_it});
  const std::string& reaching = *std::ranges::min_element(finding.subjects, {}, [&](const std::string& id) {
    const Placed* piece = scene.answer.arrangement.find(id);
    return piece == nullptr ? SquaredLength::of(farthest) : nearest(place, piece->solid.outline()).squared;
  });
  Cure cure = scene.cure(Cure::Kind::widen, reaching, shortfall(finding));
  if (const Placed* placed = scene.answer.arrangement.find(cure.subject))
    cure.side = side_at(placed->solid.outline().bounds(), gap.where);
  return cure;
}

void add_gaps(const BedScene& scene) {
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
    if (finding.status == Status::not_met) finding.cure = closing(scene, gap, finding);
    any = any || !gap.at_wall;
    scene.findings.push_back(std::move(finding));
  }
  any = add_parts(scene) || any;
  if (!any) scene.none_of("bed.gap");
}

void add_ridges(const BedScene& scene) {
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

void add_dropped_pieces(const BedScene& scene) {
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

void add_sizes(const BedScene& scene) {
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
  if (width.status == Status::not_met) width.cure = larger_bed(scene, Cure::Kind::broaden, shortfall(width));
  for (Finding* finding : {&length, &vessel})
    if (finding->status == Status::not_met)
      finding->cure = larger_bed(scene, {std::get<Length>(*finding->compared), berth_width},
                                 {std::get<Length>(*finding->measured), longest ? berth_width : Length{}});
  for (Finding* finding : {&size, &width, &length, &vessel}) scene.findings.push_back(std::move(*finding));
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
void add_named_sizes(const BedScene& scene) {
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
    if (!held->held)
      finding.cure =
          larger_bed(scene, std::get<Sides>(*finding.compared), std::get<Sides>(*finding.measured));
    scene.findings.push_back(std::move(finding));
  }
}

// Nobody lies on bare boards: where they are, and how high.
void add_no_cushion(const BedScene& scene) {
  Finding finding = scene.begin("bed.no-cushion");
  finding.subjects = {scene.bed.bed->id.text()};
  finding.status = Status::not_met;
  std::optional<Length> highest;
  for (const PieceId& id : scene.bed.bed->pieces) {
    const Placed* placed = scene.answer.arrangement.find(id.text());
    if (placed == nullptr || (highest && *highest >= placed->solid.top())) continue;
    highest = placed->solid.top();
    const Rect bounds = placed->solid.outline().bounds();
    finding.subjects = {scene.bed.bed->id.text(), id.text()};
    finding.measured = *highest;
    finding.where = {
        {{half(bounds.low.x + bounds.high.x), half(bounds.low.y + bounds.high.y)}, placed->solid.top()}};
  }
  finding.cure = scene.cure(Cure::Kind::lay_cushion, finding.subjects.back(),
                            scene.plan.limit(*find_rule("foam.thickness")));
  scene.findings.push_back(std::move(finding));
}

}  // namespace

void add_bed_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const BedAnswer& bed : answer.beds) {
    const BedScene scene{plan, answer, bed, findings};
    add_sizes(scene);
    add_sleepers(scene);
    if (bed.mattress.surface.empty()) {
      add_no_cushion(scene);
      continue;
    }
    add_gaps(scene);
    add_ridges(scene);
    add_dropped_pieces(scene);
    add_bed_heights(scene);
    add_headroom(scene);
    add_named_sizes(scene);
  }
}

}  // namespace berthwright

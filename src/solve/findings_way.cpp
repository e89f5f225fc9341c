#include <algorithm>
#include <tuple>

#include "plan/wall_names.h"
#include "solve/clearing.h"
#include "solve/comparing.h"
#include "solve/findings.h"
#include "solve/gives_way.h"
#include "solve/way/wall_frame.h"

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

// Of a bed of this configuration, or what carries a piece of one.
bool belongs_to_a_bed(const WayScene& scene, const std::string& id) {
  return std::ranges::any_of(scene.answer.beds, [&](const BedAnswer& bed) {
    return std::ranges::any_of(bed.bed->pieces, [&](const PieceId& piece) {
      const Placed* placed = scene.answer.arrangement.find(piece.text());
      return piece.text() == id ||
             (placed != nullptr && std::ranges::find(placed->carried_by, id) != placed->carried_by.end());
    });
  });
}

bool has_door(const WayScene& scene) {
  return std::ranges::any_of(scene.answer.exit_openings, &ExitOpening::is_door);
}

// Of what pinches a way a heater is stowed, a piece moved, what is built in made smaller, if they give way;
// a door is made wider where it is too narrow by itself.
Cure cure_of_pinch(const WayScene& scene, const WayOut& way, Length shortfall) {
  const Length by = marked_out(shortfall, scene.plan->unit);
  const Arrangement& arrangement = scene.answer.arrangement;
  for (const std::string& id : {way.left, way.right}) {
    const Placed* thing = arrangement.find(id);
    if (thing == nullptr || thing->piece == nullptr) continue;
    if (is_portable_heater(*thing)) return {Cure::Kind::set_aside, id, {}};
    if (gives_way(scene.plan, arrangement, *thing)) return {Cure::Kind::move_apart, id, by};
  }
  for (const std::string& id : {way.left, way.right}) {
    const Placed* thing = arrangement.find(id);
    if (thing == nullptr || thing->fixture == nullptr || !gives_way(scene.plan, arrangement, *thing))
      continue;
    const Point across = id == way.left ? way.way.right : way.way.left;
    const Wall side = side_at(thing->solid.outline().bounds(), across);
    if (may_be_cut_back(scene.plan, *thing->fixture, side, by))
      return {.kind = Cure::Kind::shorten, .subject = id, .by = by, .side = side};
  }
  if (way.left == way.right && scene.plan.opening(way.left) != nullptr)
    return {Cure::Kind::broaden, way.left, by};
  return {Cure::Kind::none, way.door, {}};
}

// Of what stands in the way the one thing without which there would be one: a heater sooner than a piece, a
// piece than what is built in, then the smallest. Nothing: no one thing that gives way does it.
const Placed* what_shuts(const WayScene& scene, const BedAnswer& bed, Length asked) {
  std::vector<std::tuple<bool, bool, Area, std::string>> single;
  const std::vector<Placed>& things = scene.answer.arrangement.things;
  for (std::size_t i = 0; i < things.size(); ++i) {
    const Placed& thing = things[i];
    if (thing.is_curtain() || !stands_in_the_way(thing.solid)) continue;
    if (!is_portable_heater(thing) && !gives_way(scene.plan, scene.answer.arrangement, thing)) continue;
    Arrangement without_it = scene.answer.arrangement;
    without_it.things.erase(without_it.things.begin() + static_cast<std::ptrdiff_t>(i));
    const std::vector<WayOut> ways = ways_out(scene.plan, without_it, *bed.bed, bed.mattress);
    const WayOut* way = widest(ways);
    if (way != nullptr && way->width >= asked)
      single.emplace_back(!is_portable_heater(thing), thing.fixture != nullptr, thing.solid.outline().area(),
                          thing.id);
  }
  return single.empty()
             ? nullptr
             : scene.answer.arrangement.find(std::get<std::string>(*std::ranges::min_element(single)));
}

Cure opening_a_way(const WayScene& scene, const BedAnswer& bed) {
  const Length asked = scene.plan.limit(*find_rule("way.aisle"));
  Cure cure{Cure::Kind::keep_clear, bed.bed->id.text(), asked};
  const Placed* shut_by = what_shuts(scene, bed, asked);
  if (shut_by != nullptr && is_portable_heater(*shut_by)) return {Cure::Kind::set_aside, shut_by->id, {}};
  if (shut_by != nullptr) cure.alike = {shut_by->id};
  return cure;
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
    finding.cure = opening_a_way(scene, bed);
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

// What wants of an opening itself, and what stands before it, but for the bed under it. What stays there
// leaves nothing to be done with it.
std::optional<Cure> cure_of_opening(const WayScene& scene, const ClearOpening& clear, Sides asked,
                                    Sides has) {
  const Opening& opening = *clear.opening;
  std::vector<std::string> movable;
  for (const std::string& id : clear.blocked_by)
    if (!belongs_to_a_bed(scene, id)) movable.push_back(id);
  const Sides hole{opening.width, opening.height};
  const Sides from = movable.empty() ? has : hole;
  Clearance aside = clearing(scene.plan, scene.answer.arrangement, movable,
                             before_opening(scene.plan->interior, opening, Length{}, before_an_opening));
  if (!aside.staying.empty())
    return Cure{Cure::Kind::none, opening.id.text(), {}, {}, std::move(aside.staying)};
  std::optional<Cure> cure = std::move(aside.cure);
  const auto larger = [&](Cure::Kind kind, Length by) {
    if (by > Length{}) add_step(cure, {kind, opening.id.text(), marked_out(by, scene.plan->unit)});
  };
  larger(Cure::Kind::broaden, asked.length - from.length);
  larger(Cure::Kind::heighten, asked.width - from.width);
  return cure;
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
  if (finding.status == Status::not_met) finding.cure = cure_of_opening(scene, clear, vehicle_opening, sides);
  return finding;
}

Finding dwelling_opening_finding(const WayScene& scene, const ExitOpening& one) {
  Finding finding = scene.begin("way.dwelling-window");
  const Sides& sides = one.clear.for_dwelling;
  finding.subjects = {one.clear.opening->id.text()};
  compare(scene.plan, finding, std::min(sides.length, sides.width));
  const Area area = Area::rectangle(sides.length, sides.width);
  if (finding.status == Status::not_met) {
    const Length side = std::get<Length>(*finding.compared);
    finding.cure = cure_of_opening(scene, one.clear, {side, side}, sides);
    return finding;
  }
  if (area >= dwelling_area) return finding;
  finding.variant = "area";
  finding.measured = area;
  finding.compared = dwelling_area;
  finding.margin.reset();
  finding.override_reason.clear();  // the plan's own number is one for the side
  finding.status = Status::not_met;
  const auto across = static_cast<std::int64_t>(dwelling_area.doubled() / 2 / sides.width.ticks()) + 1;
  finding.cure = cure_of_opening(scene, one.clear, {Length::from_ticks(across), sides.width}, sides);
  return finding;
}

// A door is hung on its other side sooner than what is built in is moved for it; where neither helps it must
// swing elsewhere.
Cure cure_of_swing(const WayScene& scene, const InwardSwing& swing) {
  const bool built_in = std::ranges::any_of(
      swing.blocked_by, [&](const std::string& id) { return scene.plan.fixture(id) != nullptr; });
  Opening other = *swing.opening;
  if (other.hinge) other.hinge = opposite(*other.hinge);
  if (built_in && inward_swing(scene.plan, scene.answer.arrangement, other).is_free())
    return {.kind = Cure::Kind::rehang, .subject = other.id.text(), .by = {}, .side = other.hinge};
  const Solid sweep = inward_sweeps(scene.plan->interior, *swing.opening).front();
  Clearance aside =
      clearing(scene.plan, scene.answer.arrangement, swing.blocked_by, sweep.outline().bounds());
  if (aside.cure && aside.staying.empty()) return *std::move(aside.cure);
  return {Cure::Kind::as_told, other.id.text(), {}};
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
  if (finding.status == Status::not_met) finding.cure = cure_of_swing(scene, swing);
  return finding;
}

// Near the bed, large enough and made to open, but not marked as a way out.
bool may_be_marked(const WayScene& scene, const BedAnswer& bed, const Opening& opening) {
  return opening.kind != Opening::Kind::door && !opening.escape && opening.swing != Opening::Swing::fixed &&
         is_reached_from(scene.plan, scene.answer.arrangement, {*bed.bed, bed.mattress}, opening) &&
         clear_opening(scene.plan, scene.answer.arrangement, opening).holds_vehicle_opening();
}

// Floor to be kept free of nobody knows what opens no way.
bool does_something(const std::optional<Cure>& cure) {
  return cure && cure->kind != Cure::Kind::none && cure->kind != Cure::Kind::as_told &&
         (cure->kind != Cure::Kind::keep_clear || !cure->alike.empty());
}

// What takes a thing away moves it as well.
void add_step_once(std::optional<Cure>& cure, Cure next) {
  const bool the_same = cure && cure->subject == next.subject && cure->then.empty();
  if (the_same && cure->kind == next.kind) return;
  if (the_same && next.kind == Cure::Kind::set_aside)
    cure = std::move(next);
  else
    add_step(cure, std::move(next));
}

// All that keeps an opening that is there from counting: the way to it, its size, its swing. None where
// something of it cannot be mended.
std::optional<Cure> making_it_count(const WayScene& scene, const BedAnswer& bed, std::size_t index) {
  const ExitOpening& one = scene.answer.exit_openings[index];
  std::optional<Cure> cure;
  if (one.is_door())
    cure = aisle(scene, bed).cure;
  else if (is_reached_from(scene.plan, scene.answer.arrangement, {*bed.bed, bed.mattress},
                           *one.clear.opening))
    cure = vehicle_opening_finding(scene, one).cure;
  else
    return std::nullopt;
  if (cure && !does_something(cure)) return std::nullopt;
  if (!one.swing.known || one.swing.blocked_by.empty()) return cure;
  Cure swing = cure_of_swing(scene, one.swing);
  if (!does_something(swing)) return std::nullopt;
  add_step_once(cure, std::move(swing));
  return cure;
}

// What may become a way out: one that only has to be marked, the door, an opening beside the bed; and for
// each that is wanting then a new one.
Cure more_exits(const WayScene& scene, const BedAnswer& bed, const std::vector<std::string>& counted,
                std::int64_t wanting) {
  std::vector<Cure> cures;
  for (const Opening& opening : scene.plan->openings)
    if (may_be_marked(scene, bed, opening))
      cures.push_back({Cure::Kind::state_measure, opening.id.text(), {}});
  for (std::size_t i = 0; i < scene.answer.exit_openings.size(); ++i)
    if (std::ranges::find(counted, scene.answer.exit_openings[i].clear.opening->id.text()) == counted.end())
      if (std::optional<Cure> cure = making_it_count(scene, bed, i)) cures.push_back(std::move(*cure));
  cures.resize(static_cast<std::size_t>(wanting), Cure{Cure::Kind::as_told, bed.bed->id.text(), in_reach});
  std::optional<Cure> all;
  for (Cure& cure : cures) add_step(all, std::move(cure));
  return *all;
}

void add_of_bed(const WayScene& scene, const BedAnswer& bed, std::vector<Finding>& findings) {
  if (has_door(scene)) findings.push_back(aisle(scene, bed));
  const auto add = [&](std::string_view rule, const std::vector<std::string>& ids, std::int64_t asked) {
    Finding finding = count_of_exits(scene, rule, bed, ids, asked);
    if (finding.status == Status::not_met)
      finding.cure = more_exits(scene, bed, ids, asked - static_cast<std::int64_t>(ids.size()));
    findings.push_back(std::move(finding));
  };
  add("way.none", bed.exits.passable, 1);
  add("way.second", bed.exits.counted, 2);
}

// Beside a bed that itself lies higher than a sill should, a lower one serves nobody.
Cure cure_of_sill(const Plan& plan, const Answer& answer, const Opening& opening, const Finding& finding) {
  Cure none{Cure::Kind::none, opening.id.text(), {}};
  for (const ConfigurationAnswer& one : answer.configurations)
    for (const BedAnswer& bed : one.beds)
      if (bed.mattress.level > std::get<Length>(*finding.compared) &&
          distance_from_bed(plan, one.arrangement, *bed.bed, opening) <= in_reach)
        none.alike.push_back(bed.bed->id.text());
  if (!none.alike.empty()) return none;
  return {Cure::Kind::lower, opening.id.text(), marked_out(shortfall(finding), plan->unit)};
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

void add_way_findings_of_trailer(const Plan& plan, const Answer& answer, std::vector<Finding>& findings) {
  bool stated = false;
  for (const Opening& opening : plan->openings) {
    const bool door = opening.kind == Opening::Kind::door && opening.swing != Opening::Swing::fixed;
    stated = stated || door || opening.escape;
    if (!opening.escape || opening.kind == Opening::Kind::door) continue;
    Finding finding = finding_of(plan, "way.sill");
    finding.subjects = {opening.id.text()};
    compare(plan, finding, opening.sill);
    if (finding.status == Status::not_met) finding.cure = cure_of_sill(plan, answer, opening, finding);
    findings.push_back(std::move(finding));
  }
  if (stated || plan->beds.empty()) return;
  findings.push_back(finding_of(plan, "way.not-stated"));
  findings.back().cure = Cure{Cure::Kind::state_measure, {}, {}};
}

}  // namespace berthwright

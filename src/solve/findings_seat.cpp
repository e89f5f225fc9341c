#include <algorithm>
#include <array>
#include <span>
#include <stdexcept>

#include "plan/box_sides.h"
#include "plan/wall_names.h"
#include "solve/bed/levelling.h"
#include "solve/comparing.h"
#include "solve/findings.h"
#include "solve/gives_way.h"

namespace berthwright {
namespace {

constexpr Length step_before_seat = 12_in;  // as far as the way onto a seat is looked for

Rect rect_of(Point a, Point b) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

/// All that findings about one seat share.
struct SeatScene {
  const Plan& plan;
  const ConfigurationAnswer& answer;
  const Seat& seat;
  std::vector<Finding>& findings;

  /// The seat's cushions, then `thing`, are what the finding is about.
  Finding begin(std::string_view rule, const std::string& thing = {}) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    finding.subjects = seat.cushions;
    if (!thing.empty()) finding.subjects.push_back(thing);
    if (seat.faces) finding.where = {{seat.front_from, seat.sits_at}, {seat.front_to, seat.sits_at}};
    return finding;
  }
  Finding compared(std::string_view rule, Length measured, const std::string& thing = {}) const {
    Finding finding = begin(rule, thing);
    compare(plan, finding, measured);
    return finding;
  }
  /// Of several limits of one measure the one that is missed by most, or nearest to be.
  Finding tightest(std::span<const std::string_view> rules, Length measured,
                   const std::string& thing = {}) const {
    std::vector<Finding> of_each;
    for (const std::string_view rule : rules) of_each.push_back(compared(rule, measured, thing));
    return *std::ranges::min_element(of_each, {}, [](const Finding& f) { return *f.margin; });
  }
  Cure cure(Cure::Kind kind, const std::string& subject, const Finding& finding) const {
    return {kind, subject, marked_out(shortfall(finding), plan->unit)};
  }
};

// What a seat's height hangs on: what carries its first cushion.
std::string carrier_of(const SeatScene& scene) {
  const std::string& first = scene.seat.cushions.front();
  const Placed* cushion = scene.answer.arrangement.find(first);
  if (cushion == nullptr || cushion->carried_by.empty() || cushion->carried_by.front() == "floor")
    return first;
  return cushion->carried_by.front();
}

// Where what carries the seat must stay as it is, its cushion is made thicker or thinner.
Cure cure_of_seat_height(const SeatScene& scene, const Finding& finding) {
  const bool low = finding.rule.text() == "seat.low";
  const std::string carrier = carrier_of(scene);
  const std::string& cushion = scene.seat.cushions.front();
  if (can_change_height(scene.answer.arrangement, carrier))
    return scene.cure(low ? Cure::Kind::raise : Cure::Kind::lower, carrier, finding);
  return scene.cure(low ? Cure::Kind::pad : Cure::Kind::cut_down, cushion, finding);
}

void add_height(const SeatScene& scene) {
  constexpr std::array<std::string_view, 2> rules{"seat.low", "seat.high"};
  Finding finding = scene.tightest(rules, scene.seat.height);
  if (finding.status == Status::not_met) finding.cure = cure_of_seat_height(scene, finding);
  scene.findings.push_back(std::move(finding));
}

// The same of all of these.
Cure of_all(Cure cure, const std::vector<std::string>& ids) {
  cure.subject = ids.front();
  cure.alike.assign(ids.begin() + 1, ids.end());
  return cure;
}

bool is_slept_on(const Plan& plan, const std::string& cushion) {
  return std::ranges::any_of(plan->beds, [&](const Bed& bed) {
    return std::ranges::find(bed.pieces, cushion, &PieceId::text) != bed.pieces.end();
  });
}

// Too shallow: the cushions come forward; too deep: the backs do, or where there are none the cushions go
// back, but for those of a bed.
Cure cure_of_depth(const SeatScene& scene, const Finding& finding) {
  const bool deep = finding.rule.text() == "seat.deep";
  if (deep && !scene.seat.backs.empty())
    return of_all(scene.cure(Cure::Kind::thicken, {}, finding), scene.seat.backs);
  if (deep && std::ranges::any_of(scene.seat.cushions,
                                  [&](const std::string& id) { return is_slept_on(scene.plan, id); }))
    return of_all(scene.cure(Cure::Kind::as_told, {}, finding), scene.seat.cushions);
  Cure cure =
      of_all(scene.cure(deep ? Cure::Kind::shorten : Cure::Kind::widen, {}, finding), scene.seat.cushions);
  cure.side = scene.seat.faces;
  return cure;
}

void add_depth(const SeatScene& scene) {
  constexpr std::array<std::string_view, 2> rules{"seat.shallow", "seat.deep"};
  if (scene.seat.faces) {
    Finding finding = scene.tightest(rules, scene.seat.depth);
    if (finding.status == Status::not_met) finding.cure = cure_of_depth(scene, finding);
    scene.findings.push_back(std::move(finding));
    return;
  }
  Finding unknown = scene.begin("seat.shallow");
  unknown.compared = scene.plan.limit(*find_rule("seat.shallow"));
  unknown.cure = of_all({Cure::Kind::state_measure, {}, {}}, scene.seat.cushions);
  scene.findings.push_back(std::move(unknown));
}

void add_back(const SeatScene& scene) {
  if (!scene.seat.back_height) return;
  constexpr std::array<std::string_view, 2> rules{"seat.low-back", "seat.high-back"};
  Finding finding = scene.tightest(rules, *scene.seat.back_height, scene.seat.backs.front());
  if (finding.status == Status::not_met)
    finding.cure = of_all(
        scene.cure(finding.rule.text() == "seat.low-back" ? Cure::Kind::heighten : Cure::Kind::cut_down, {},
                   finding),
        scene.seat.backs);
  scene.findings.push_back(std::move(finding));
}

// At the least a person may be had with less than the comfortable length: close, not missed.
void add_people(const SeatScene& scene) {
  if (!scene.seat.faces) return;
  Finding finding = scene.compared("seat.people", scene.seat.length);
  if (finding.status == Status::not_met && scene.seat.length >= least_seat_for_one)
    finding.status = Status::close;
  if (finding.status == Status::not_met)
    finding.cure = scene.cure(Cure::Kind::lengthen, scene.seat.cushions.front(), finding);
  scene.findings.push_back(std::move(finding));
}

// Furniture over the heads goes up; else the seat comes down, if it may still be sat on then.
Cure cure_of_head_room(const SeatScene& scene, const Finding& finding) {
  const std::string& under = scene.seat.head_room->under;
  const Placed* above = scene.answer.arrangement.find(under);
  const bool lamp = above != nullptr && above->fixture != nullptr &&
                    above->fixture->kind == Fixture::Kind::light && !above->fixture->heat;
  if (lamp || (above != nullptr && gives_way(scene.plan, scene.answer.arrangement, *above)))
    return scene.cure(Cure::Kind::raise_underside, under, finding);
  const std::string carrier = carrier_of(scene);
  const Cure lowered = scene.cure(Cure::Kind::lower, carrier, finding);
  const bool still_a_seat = scene.seat.height - lowered.by >= scene.plan.limit(*find_rule("seat.low"));
  Cure none{Cure::Kind::none, scene.seat.cushions.front(), {}};
  if (!can_change_height(scene.answer.arrangement, carrier)) none.alike = {carrier};
  return still_a_seat && none.alike.empty() ? lowered : none;
}

void add_head_room(const SeatScene& scene) {
  Finding finding = scene.begin("seat.head-room");
  if (const std::optional<HeadRoom>& room = scene.seat.head_room) {
    finding = scene.compared("seat.head-room", room->height, room->under);
    finding.variant = room->under.empty() ? "roof" : "";
    finding.where = {{room->where, scene.seat.sits_at + room->height}};
    if (finding.status == Status::not_met) finding.cure = cure_of_head_room(scene, finding);
  } else {
    finding.compared = scene.plan.limit(*find_rule("seat.head-room"));
    finding.cure = Cure{Cure::Kind::as_told, scene.seat.cushions.front(), {}};
  }
  scene.findings.push_back(std::move(finding));
}

// What stands before the front, as far as one needs to step in.
Cure clearing_the_way_in(const SeatScene& scene) {
  Cure cure{Cure::Kind::keep_clear, scene.seat.cushions.front(), scene.plan.limit(*find_rule("seat.way-in"))};
  const Rect front = rect_of(scene.seat.front_from, scene.seat.front_to);
  const Rect strip = beyond_side(front, *scene.seat.faces, step_before_seat);
  for (const Placed& thing : scene.answer.arrangement.things) {
    const bool stands_there = !thing.is_soft() && !thing.is_curtain() &&
                              thing.solid.top() > scene.seat.sits_at &&
                              overlaps(thing.solid.outline(), Region(strip));
    if (!stands_there) continue;
    if (is_portable_heater(thing)) return {Cure::Kind::set_aside, thing.id, {}};
    if (gives_way(scene.plan, scene.answer.arrangement, thing)) cure.alike.push_back(thing.id);
  }
  return cure;
}

void add_way_in(const SeatScene& scene) {
  if (!scene.seat.faces) return;
  Finding finding = scene.compared("seat.way-in", scene.seat.way_in);
  if (finding.status == Status::not_met) finding.cure = clearing_the_way_in(scene);
  scene.findings.push_back(std::move(finding));
}

// Thighs come first; then the height a table is at ease with.
Finding over_thighs(const SeatScene& scene, const SeatTable& table) {
  Finding thighs = scene.compared("seat.thigh-room", table.thigh_room, table.table);
  if (thighs.status != Status::met) return thighs;
  for (const std::string_view rule : {"seat.low-table", "seat.high-table"}) {
    Finding height = scene.compared(rule, table.thigh_room, table.table);
    if (height.status == Status::not_met) return height;
  }
  return thighs;
}

Finding under_table(const SeatScene& scene, const SeatTable& table) {
  Finding height = scene.compared("seat.knee-height", table.knee_height, table.table);
  Finding depth = scene.compared("seat.knee-depth", table.knee_depth, table.table);
  return *depth.margin < *height.margin ? depth : height;
}

bool faces_another(const SeatScene& scene, const std::string& table) {
  return std::ranges::any_of(scene.answer.seats, [&](const Seat& other) {
    return &other != &scene.seat && other.table && other.table->table == table && other.faces &&
           scene.seat.faces && *other.faces == opposite(*scene.seat.faces);
  });
}

// What is wanting of knee depth the table is longer on its far side, twice that where two share it. Where
// something else ends it no table helps.
Cure cure_of_knee_depth(const SeatScene& scene, const Finding& finding) {
  const SeatTable& table = *scene.seat.table;
  const bool shared = faces_another(scene, table.table);
  if (!scene.seat.faces || table.knee_depth < (shared ? half(table.reach) : table.reach))
    return {Cure::Kind::as_told, table.table, marked_out(shortfall(finding), scene.plan->unit)};
  Cure cure{Cure::Kind::widen, table.table,
            marked_out(shortfall(finding) * (shared ? 2 : 1), scene.plan->unit)};
  cure.side = scene.seat.faces;
  return cure;
}

// A table that serves one side alone comes nearer; one between two is made as much longer.
Cure cure_of_distance(const SeatScene& scene, const Finding& finding) {
  const std::string& table = scene.seat.table->table;
  Cure cure = scene.cure(faces_another(scene, table) ? Cure::Kind::widen : Cure::Kind::shift, table, finding);
  if (scene.seat.faces) cure.side = opposite(*scene.seat.faces);
  return cure;
}

Finding reach_of_table(const SeatScene& scene, const SeatTable& table) {
  return table.overlap >= Length{} ? scene.compared("seat.table-over", table.overlap, table.table)
                                   : scene.compared("seat.table-away", -table.overlap, table.table);
}

// On the side that looks at the people.
Cure cut_back(const SeatScene& scene, const std::string& table, const Finding& reach) {
  Cure cure = scene.cure(Cure::Kind::shorten, table, reach);
  if (scene.seat.faces) cure.side = opposite(*scene.seat.faces);
  return cure;
}

void add_table(const SeatScene& scene) {
  if (!scene.seat.table) return;
  const SeatTable& table = *scene.seat.table;
  Finding thighs = over_thighs(scene, table);
  Finding knees = under_table(scene, table);
  Finding reach = reach_of_table(scene, table);
  const std::string& rule = thighs.rule.text();
  if (thighs.status == Status::not_met)
    thighs.cure =
        scene.cure(rule == "seat.high-table" ? Cure::Kind::lower : Cure::Kind::raise, table.table, thighs);
  if (knees.status == Status::not_met && knees.rule.text() == "seat.knee-height")
    knees.cure = scene.cure(Cure::Kind::raise, table.table, knees);
  if (knees.status == Status::not_met && knees.rule.text() == "seat.knee-depth")
    knees.cure = cure_of_knee_depth(scene, knees);
  if (reach.status == Status::not_met && reach.rule.text() == "seat.table-over")
    reach.cure = cut_back(scene, table.table, reach);
  if (reach.status == Status::not_met && reach.rule.text() == "seat.table-away")
    reach.cure = cure_of_distance(scene, reach);
  for (Finding* finding : {&thighs, &knees, &reach}) scene.findings.push_back(std::move(*finding));
}

std::string_view rule_of(Knock::Of of) {
  switch (of) {
    case Knock::Of::sitting_head:
      return "knock.sitting";
    case Knock::Of::elbow:
      return "knock.elbow";
    case Knock::Of::lying_head:
      return "knock.lying";
  }
  throw std::logic_error("Knock::Of out of range");
}

void add_knocks(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  const auto begin = [&](Knock::Of of) {
    Finding finding = finding_of(plan, rule_of(of));
    finding.configuration = answer.configuration->id;
    return finding;
  };
  for (const Knock& knock : answer.knocks) {
    Finding finding = begin(knock.of);
    finding.bed = knock.bed;
    finding.subjects = knock.cushions;
    finding.subjects.push_back(knock.thing);
    finding.where = {knock.nearest.to, knock.nearest.from};
    compare(plan, finding, knock.by);
    if (finding.status == Status::not_met)
      finding.cure = Cure{Cure::Kind::move_apart, knock.thing, marked_out(shortfall(finding), plan->unit)};
    findings.push_back(std::move(finding));
  }
  const auto none_of = [&](Knock::Of of, const BedId& bed) {
    const auto told = [&](const Knock& knock) { return knock.of == of && knock.bed == bed; };
    if (std::ranges::any_of(answer.knocks, told)) return;
    Finding finding = begin(of);
    finding.bed = bed;
    finding.compared = plan.limit(*find_rule(rule_of(of)));
    finding.status = Status::met;
    findings.push_back(std::move(finding));
  };
  if (!answer.seats.empty()) {
    none_of(Knock::Of::sitting_head, {});
    none_of(Knock::Of::elbow, {});
  }
  for (const BedAnswer& bed : answer.beds) none_of(Knock::Of::lying_head, bed.bed->id);
}

}  // namespace

void add_seat_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const Seat& seat : answer.seats) {
    const SeatScene scene{plan, answer, seat, findings};
    add_height(scene);
    add_depth(scene);
    add_back(scene);
    add_people(scene);
    add_head_room(scene);
    add_way_in(scene);
    add_table(scene);
  }
  add_knocks(plan, answer, findings);
}

}  // namespace berthwright

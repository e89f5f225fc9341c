#include <algorithm>
#include <array>
#include <span>
#include <stdexcept>

#include "plan/wall_names.h"
#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

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

void add_height(const SeatScene& scene) {
  constexpr std::array<std::string_view, 2> rules{"seat.low", "seat.high"};
  Finding finding = scene.tightest(rules, scene.seat.height);
  if (finding.status == Status::not_met)
    finding.cure = scene.cure(finding.rule.text() == "seat.low" ? Cure::Kind::raise : Cure::Kind::lower,
                              carrier_of(scene), finding);
  scene.findings.push_back(std::move(finding));
}

void add_depth(const SeatScene& scene) {
  constexpr std::array<std::string_view, 2> rules{"seat.shallow", "seat.deep"};
  if (scene.seat.faces) {
    scene.findings.push_back(scene.tightest(rules, scene.seat.depth));
    return;
  }
  Finding unknown = scene.begin("seat.shallow");
  unknown.compared = scene.plan.limit(*find_rule("seat.shallow"));
  scene.findings.push_back(std::move(unknown));
}

void add_back(const SeatScene& scene) {
  if (!scene.seat.back_height) return;
  constexpr std::array<std::string_view, 2> rules{"seat.low-back", "seat.high-back"};
  scene.findings.push_back(scene.tightest(rules, *scene.seat.back_height, scene.seat.backs.front()));
}

// At the least a person may be had with less than the comfortable length: close, not missed.
void add_people(const SeatScene& scene) {
  if (!scene.seat.faces) return;
  Finding finding = scene.compared("seat.people", scene.seat.length);
  if (finding.status == Status::not_met && scene.seat.length >= least_seat_for_one)
    finding.status = Status::close;
  scene.findings.push_back(std::move(finding));
}

void add_head_room(const SeatScene& scene) {
  Finding finding = scene.begin("seat.head-room");
  if (const std::optional<HeadRoom>& room = scene.seat.head_room) {
    finding = scene.compared("seat.head-room", room->height, room->under);
    finding.variant = room->under.empty() ? "roof" : "";
    finding.where = {{room->where, scene.seat.sits_at + room->height}};
  } else {
    finding.compared = scene.plan.limit(*find_rule("seat.head-room"));
  }
  scene.findings.push_back(std::move(finding));
}

void add_way_in(const SeatScene& scene) {
  if (scene.seat.faces) scene.findings.push_back(scene.compared("seat.way-in", scene.seat.way_in));
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
  if (reach.status == Status::not_met && reach.rule.text() == "seat.table-over")
    reach.cure = cut_back(scene, table.table, reach);
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

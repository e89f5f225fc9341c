#include <algorithm>
#include <array>

#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

constexpr Length gas_not_below = 4_in;  // as many instructions ask, from memory
constexpr int insulated_since = 1978;

using Mount = AlarmPlace::Mount;

bool may_burn_gas(const Fixture& fixture) {
  return fixture.kind == Fixture::Kind::cooktop || fixture.kind == Fixture::Kind::oven ||
         fixture.kind == Fixture::Kind::furnace_outlet;
}

// Whether the plan shows such an alarm. What it does not show may still hang in the trailer.
Finding presence(const Plan& plan, const Answer& answer, std::string_view rule, Fixture::Kind kind) {
  Finding finding = finding_of(plan, rule);
  for (const AlarmPlace& place : answer.alarms)
    if (place.alarm->kind == kind) finding.subjects.push_back(place.alarm->id.text());
  std::ranges::sort(finding.subjects);
  if (finding.subjects.empty()) {
    finding.cure = Cure{Cure::Kind::as_told, {}, {}};
    return finding;
  }
  finding.measured = Count{static_cast<std::int64_t>(finding.subjects.size())};
  finding.compared = Count{1};
  finding.status = Status::met;
  return finding;
}

void add_presence(const Plan& plan, const Answer& answer, std::vector<Finding>& findings) {
  findings.push_back(presence(plan, answer, "alarm.smoke", Fixture::Kind::smoke_alarm));
  findings.push_back(presence(plan, answer, "alarm.co", Fixture::Kind::co_alarm));
  Finding gas = presence(plan, answer, "alarm.gas", Fixture::Kind::gas_alarm);
  const auto burner = std::ranges::min_element(plan->fixtures, {}, [](const Fixture& fixture) {
    return std::pair(!may_burn_gas(fixture), fixture.id);
  });
  if (gas.subjects.empty()) {
    if (burner == plan->fixtures.end() || !may_burn_gas(*burner)) return;
    gas.subjects = {burner->id.text()};
    gas.cure = Cure{Cure::Kind::as_told, burner->id.text(), {}};
  }
  findings.push_back(std::move(gas));
}

Finding of_alarm(const Plan& plan, std::string_view rule, const AlarmPlace& place) {
  Finding finding = finding_of(plan, rule);
  finding.subjects = {place.alarm->id.text()};
  const Rect box = place.alarm->solid.outline().bounds();
  finding.where = {{{half(box.low.x + box.high.x), half(box.low.y + box.high.y)}, place.alarm->solid.top()}};
  return finding;
}

void add_heights(const Plan& plan, const AlarmPlace& place, std::vector<Finding>& findings) {
  if (place.mount == Mount::ceiling) return;
  for (const std::string_view rule : {"alarm.below-ceiling", "alarm.dead-air"}) {
    Finding finding = of_alarm(plan, rule, place);
    compare(plan, finding, place.below_ceiling);
    if (finding.status == Status::not_met)
      finding.cure = Cure{rule == "alarm.dead-air" ? Cure::Kind::lower : Cure::Kind::raise,
                          place.alarm->id.text(), marked_out(shortfall(finding), plan->unit)};
    findings.push_back(std::move(finding));
  }
}

// What hangs on an inside wall is met whenever the trailer was built.
void add_inside_wall(const Plan& plan, const AlarmPlace& place, std::vector<Finding>& findings) {
  const std::optional<int> built = plan->title.built;
  if (built && *built >= insulated_since) return;
  Finding finding = of_alarm(plan, "alarm.inside-wall", place);
  if (place.mount == Mount::ceiling) finding.variant = "ceiling";
  if (place.mount == Mount::outside_wall) finding.variant = "outside";
  if (place.mount == Mount::inside) finding.status = Status::met;
  if (built && (place.mount == Mount::ceiling || place.mount == Mount::outside_wall))
    finding.status = Status::not_met;
  if (finding.status == Status::not_met) finding.cure = Cure{Cure::Kind::as_told, place.alarm->id.text(), {}};
  if (finding.status == Status::unknown)
    finding.cure = Cure{Cure::Kind::state_measure, place.alarm->id.text(), {}};
  findings.push_back(std::move(finding));
}

void add_covered(const Plan& plan, const Answer& answer, const AlarmPlace& place,
                 std::vector<Finding>& findings) {
  bool covered = false;
  for (const ConfigurationAnswer& one : answer.configurations) {
    const std::vector<std::string> ids = covering(one.arrangement, place);
    if (ids.empty()) continue;
    covered = true;
    Finding finding = of_alarm(plan, "alarm.covered", place);
    finding.configuration = one.configuration->id;
    finding.subjects.insert(finding.subjects.end(), ids.begin(), ids.end());
    finding.status = Status::not_met;
    finding.cure = Cure{Cure::Kind::keep_clear, place.alarm->id.text(), before_an_alarm, {}, ids};
    findings.push_back(std::move(finding));
  }
  if (covered) return;
  Finding clear = of_alarm(plan, "alarm.covered", place);
  clear.status = Status::met;
  findings.push_back(std::move(clear));
}

// No point of the room is farther from the thing in plan than its corners are.
SquaredLength farthest_from(const Interior& room, const Solid& thing) {
  const Rect inside = room.outline.polygon().bounds();
  const Rect box = thing.outline().bounds();
  const Length x = std::max({box.low.x - inside.low.x, inside.high.x - box.high.x, Length{}});
  const Length y = std::max({box.low.y - inside.low.y, inside.high.y - box.high.y, Length{}});
  return SquaredLength::of(x).plus_square_of(y);
}

// Where the room has a place so far off, it is hung there: which place that is, no single direction tells.
// The alarm keeps its height; so much of the distance asked as this does not give must lie in plan.
Cure cure_of_cooking(const Plan& plan, const AlarmPlace& place, const Finding& finding) {
  const Solid& cooking = plan.fixture(place.nearest_cooking)->solid;
  const Solid& alarm = place.alarm->solid;
  const Int128 asked = std::get<Length>(*finding.compared).ticks();
  const Int128 up = std::max({alarm.base() - cooking.top(), cooking.base() - alarm.top(), Length{}}).ticks();
  const SquaredLength in_plan(asked * asked - up * up, 1);
  if (farthest_from(plan->interior, cooking) < in_plan) return {Cure::Kind::none, place.alarm->id.text(), {}};
  return {Cure::Kind::as_told, place.alarm->id.text(), marked_out(in_plan.ceiling(), plan->unit)};
}

void add_of_smoke_alarm(const Plan& plan, const Answer& answer, const AlarmPlace& place,
                        std::vector<Finding>& findings) {
  add_heights(plan, place, findings);
  add_inside_wall(plan, place, findings);
  add_covered(plan, answer, place, findings);
  if (place.nearest_cooking.empty()) return;
  Finding finding = of_alarm(plan, "alarm.cooking", place);
  finding.subjects.push_back(place.nearest_cooking);
  compare(plan, finding, place.to_cooking);
  if (finding.status == Status::not_met) finding.cure = cure_of_cooking(plan, place, finding);
  findings.push_back(std::move(finding));
}

void add_gas_height(const Plan& plan, const AlarmPlace& place, std::vector<Finding>& findings) {
  Finding finding = of_alarm(plan, "alarm.gas-height", place);
  compare(plan, finding, place.alarm->solid.top());
  if (finding.status == Status::not_met)
    finding.cure =
        Cure{Cure::Kind::lower, place.alarm->id.text(), marked_out(shortfall(finding), plan->unit)};
  if (finding.status != Status::not_met && place.alarm->solid.base() < gas_not_below) {
    finding.variant = "low";
    finding.measured = place.alarm->solid.base();
    finding.compared.reset();
    finding.margin.reset();
    finding.override_reason.clear();
    finding.status = Status::not_met;
    finding.cure = Cure{Cure::Kind::raise, place.alarm->id.text(),
                        marked_out(gas_not_below - place.alarm->solid.base(), plan->unit)};
  }
  findings.push_back(std::move(finding));
}

}  // namespace

void add_alarm_findings(const Plan& plan, const Answer& answer, std::vector<Finding>& findings) {
  if (plan->beds.empty()) return;
  add_presence(plan, answer, findings);
  for (const AlarmPlace& place : answer.alarms) {
    if (place.alarm->kind == Fixture::Kind::smoke_alarm)
      add_of_smoke_alarm(plan, answer, place, findings);
    else
      add_covered(plan, answer, place, findings);
    if (place.alarm->kind == Fixture::Kind::gas_alarm) add_gas_height(plan, place, findings);
  }
}

}  // namespace berthwright

#include <berthwright/solve/answer.h>

#include <algorithm>
#include <stdexcept>
#include <utility>

#include <berthwright/solve/way/walkways.h>

#include "solve/findings.h"

namespace berthwright {
namespace {

// The bed as it would be with every piece raised or lowered to its level (design 4.16).
std::optional<SleepingRoom> levelled(const Plan& plan, const Arrangement& arrangement,
                                     const BedAnswer& answer) {
  if (answer.mattress.dropped_out.empty()) return std::nullopt;
  Mattress level = answer.mattress;
  level.closed = level.levelled;
  return sleeping_room(plan, arrangement, *answer.bed, level);
}

// Of each bed from which a way leads to a door, the widest.
std::vector<Walkway> walkways_of(const std::vector<BedAnswer>& beds) {
  std::vector<Walkway> walkways;
  for (const BedAnswer& one : beds)
    if (std::optional<Walkway> walkway = walkway_of(*one.bed, one.exits.ways))
      walkways.push_back(*std::move(walkway));
  return walkways;
}

ConfigurationAnswer answered(const Plan& plan, Arrangement arrangement) {
  ConfigurationAnswer answer;
  answer.configuration = arrangement.configuration;
  answer.arrangement = std::move(arrangement);
  answer.collisions = find_collisions(answer.arrangement);
  answer.overreach = find_overreach(plan, answer.arrangement);
  answer.support = support_of(plan, answer.arrangement);
  answer.leaves = leaves_in(plan, answer.arrangement);
  answer.exit_openings = exit_openings(plan, answer.arrangement);
  for (const Opening& opening : plan->openings)
    if (opening.swing == Opening::Swing::in)
      answer.inward_swings.push_back(inward_swing(plan, answer.arrangement, opening));
  std::vector<std::pair<const Bed*, Bedding>> beddings;
  for (const Bed& bed : plan->beds) {
    if (bed.configuration != answer.configuration->id) continue;
    BedAnswer one;
    one.bed = &bed;
    one.mattress = mattress_of(plan, answer.arrangement, bed);
    one.room = sleeping_room(plan, answer.arrangement, bed, one.mattress);
    one.levelled = levelled(plan, answer.arrangement, one);
    one.bedding = bedding_of(plan, answer.arrangement, bed, one.mattress);
    one.exits = exits_of(plan, answer.arrangement, bed, one.mattress, answer.exit_openings);
    beddings.emplace_back(&bed, one.bedding);
    answer.beds.push_back(std::move(one));
  }
  if (!is_on_the_road(*answer.configuration)) answer.seats = seats_of(plan, answer.arrangement);
  answer.knocks = knocks_of(plan, answer.arrangement, answer.seats);
  for (const BedAnswer& one : answer.beds)
    for (Knock& knock : knocks_of(plan, answer.arrangement, *one.bed, one.mattress, one.room))
      answer.knocks.push_back(std::move(knock));
  answer.heat = heat_distances(plan, answer.arrangement, beddings);
  answer.plugged = plugged_in(plan, answer.arrangement, beddings, walkways_of(answer.beds));
  return answer;
}

Weight weight_of(const Finding& finding) {
  const Rule* rule = find_rule(finding.rule.text());
  if (rule == nullptr) throw std::logic_error("a finding names no rule: " + finding.rule.text());
  return rule->weight;
}

}  // namespace

Result<Answer> answered(const Plan& plan) {
  Answer answer;
  Problems problems;
  for (const Configuration& configuration : plan->configurations) {
    Result<Arrangement> arrangement = arranged(plan, configuration);
    if (arrangement)
      answer.configurations.push_back(answered(plan, std::move(arrangement).value()));
    else
      problems.insert(problems.end(), arrangement.problems().begin(), arrangement.problems().end());
  }
  if (!problems.empty()) return problems;
  answer.leaves = leaves_of_fixtures(plan);
  answer.alarms = alarm_places(plan);
  for (const ConfigurationAnswer& one : answer.configurations) {
    add_room_findings(plan, one, answer.findings);
    add_support_findings(plan, one, answer.findings);
    add_cushion_findings(plan, one, answer.findings);
    add_bed_findings(plan, one, answer.findings);
    add_foam_findings(plan, one, answer.findings);
    add_seat_findings(plan, one, answer.findings);
    add_strength_findings(plan, one, answer.findings);
    add_heat_findings(plan, one, answer.findings);
    add_cord_findings(plan, one, answer.findings);
    add_way_findings(plan, one, answer.findings);
  }
  add_panel_thicknesses(plan, answer.findings);
  add_missing_plates(plan, answer.findings);
  add_missing_cords(plan, answer.findings);
  add_leaf_findings(plan, answer, answer.findings);
  add_road_findings(plan, answer.findings);
  add_bedding_findings(plan, answer.findings);
  add_way_findings_of_trailer(plan, answer, answer.findings);
  add_alarm_findings(plan, answer, answer.findings);
  sort_findings(answer.findings);
  return answer;
}

int exit_code(const Answer& answer) {
  const auto any = [&](Status status) {
    return std::ranges::any_of(answer.findings, [&](const Finding& finding) {
      return finding.status == status && weight_of(finding) == Weight::alert;
    });
  };
  return any(Status::not_met) ? 1 : any(Status::unknown) ? 2 : 0;
}

}  // namespace berthwright

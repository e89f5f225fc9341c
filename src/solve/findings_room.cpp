#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

Finding of_configuration(const Plan& plan, std::string_view rule, const ConfigurationAnswer& answer) {
  Finding finding = finding_of(plan, rule);
  finding.configuration = answer.configuration->id;
  return finding;
}

// What foam gives is measured and shown, and weighs as close.
void weigh(const Plan& plan, Finding& finding, Length depth, bool tolerated, const std::string& mover) {
  compare(plan, finding, depth);
  if (finding.status == Status::not_met && tolerated) finding.status = Status::close;
  if (finding.status == Status::not_met)
    finding.cure = Cure{Cure::Kind::move_apart, mover, marked_out(shortfall(finding), plan->unit)};
}

Point3 middle_of(const Collision& collision) {
  const auto disc = largest_disc(collision.shared);
  const Rect bounds = collision.shared.bounds();
  const Point plan =
      disc ? disc->centre : Point{half(bounds.low.x + bounds.high.x), half(bounds.low.y + bounds.high.y)};
  return {plan, half(collision.base + collision.top)};
}

}  // namespace

void add_room_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const Overreach& reach : answer.overreach) {
    Finding finding = of_configuration(plan, "room.inside", answer);
    finding.subjects = {reach.thing};
    finding.where = {reach.where};
    weigh(plan, finding, reach.by, reach.tolerated, reach.thing);
    findings.push_back(std::move(finding));
  }
  for (const Collision& collision : answer.collisions) {
    Finding finding = of_configuration(plan, "room.overlap", answer);
    finding.subjects = {collision.first, collision.second};
    finding.where = {middle_of(collision)};
    weigh(plan, finding, collision.depth, collision.tolerated, collision.second);
    findings.push_back(std::move(finding));
  }
  const auto all_clear = [&](std::string_view rule) {
    Finding finding = of_configuration(plan, rule, answer);
    compare(plan, finding, Length{});
    findings.push_back(std::move(finding));
  };
  if (answer.overreach.empty()) all_clear("room.inside");
  if (answer.collisions.empty()) all_clear("room.overlap");
}

}  // namespace berthwright

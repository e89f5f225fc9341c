#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/answer.h>

#include "solve/comparing.h"

namespace berthwright {

/// All that the findings about one bed share.
struct BedScene {
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

/// No straight line in the room is longer: a bed that would have to be has no cure.
Length longest_in_room(const Plan& plan);

/// What would bring a piece that dropped out of the surface back into it.
Cure levelling(const BedScene& scene, const Placed& dropped);
/// What would make the bed larger the way that `kind` says; where a piece dropped out of it, levelling that;
/// where it has no cushion, one of that size; where nobody can lie under what hangs above, more height.
Cure larger_bed(const BedScene& scene, Cure::Kind kind, Length by);
/// The same for a bed that should have sides at least as long as `asked`; no cure where the room is shorter.
Cure larger_bed(const BedScene& scene, Sides asked, Sides has);
/// What would leave the clear height asked for over a bed that has less.
Cure more_clear_height(const BedScene& scene);

/// Length and width for each person, two people abreast, the share of all people the bed fits.
void add_sleepers(const BedScene& scene);
/// Heights of the bed itself and what guards its sides.
void add_bed_heights(const BedScene& scene);
/// What hangs above the bed, and who can sit up under it.
void add_headroom(const BedScene& scene);

}  // namespace berthwright

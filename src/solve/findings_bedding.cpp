#include <algorithm>

#include <berthwright/solve/site/stowing.h>

#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

// The same bundle in another place of the plan, or a smaller one where it is.
Cure repacked(const Plan& plan, const Bed& bed, const Finding& finding) {
  Cure cure{Cure::Kind::repack, bed.id.text(), marked_out(shortfall(finding), plan->unit)};
  const auto try_place = [&](const std::string& place) {
    if (place != bed.linen->kept_in && stow_fit(plan, place, *bed.linen->sides).fits())
      cure.alike.push_back(place);
  };
  for (const Fixture& fixture : plan->fixtures) {
    try_place(fixture.id.text());
    for (const Leaf& leaf : fixture.leaves)
      if (leaf.kind == Leaf::Kind::drawer) try_place(leaf.id.text());
  }
  return cure;
}

}  // namespace

void add_bedding_findings(const Plan& plan, std::vector<Finding>& findings) {
  Finding unsaid = finding_of(plan, "bed.bedding-locker");
  unsaid.variant = "unsaid";
  for (const Bed& bed : plan->beds) {
    if (!bed.linen) {
      unsaid.subjects.push_back(bed.id.text());
      continue;
    }
    Finding finding = finding_of(plan, "bed.bedding-locker");
    finding.subjects = {bed.id.text(), bed.linen->kept_in};
    const StowFit fit =
        stow_fit(plan, bed.linen->kept_in, bed.linen->sides.value_or(std::array<Length, 3>{}));
    if (!bed.linen->sides)
      finding.variant = "size of the bundle";
    else if (!fit.inside)
      finding.variant = "inside of the place";
    else
      compare(plan, finding, std::ranges::min(fit.clearance));
    if (finding.status == Status::not_met) finding.cure = repacked(plan, bed, finding);
    if (finding.status == Status::unknown)
      finding.cure = Cure{Cure::Kind::state_measure, finding.subjects[bed.linen->sides ? 1 : 0], {}};
    findings.push_back(std::move(finding));
  }
  if (unsaid.subjects.empty()) return;
  unsaid.cure = Cure{Cure::Kind::state_measure, unsaid.subjects.front(), {}};
  unsaid.cure->alike.assign(unsaid.subjects.begin() + 1, unsaid.subjects.end());
  findings.push_back(std::move(unsaid));
}

}  // namespace berthwright

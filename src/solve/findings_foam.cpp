#include <algorithm>

#include "solve/bed/foam.h"
#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

// Pounds at 25 %: common practice for what is slept on over a bare board.
constexpr int least_firmness = 28;
// Under this the board is felt at once.
constexpr Length felt_at_once = 3_in;

struct FoamScene {
  const Plan& plan;
  const BedAnswer& bed;
  std::vector<BareFoam> pieces;
  std::vector<Finding>& findings;

  Finding begin(std::string_view rule) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = bed.bed->configuration;
    finding.bed = bed.bed->id;
    return finding;
  }
};

// Every piece that falls short is named; the figure is that of the thinnest.
void add_thickness(const FoamScene& scene) {
  Finding finding = scene.begin("foam.thickness");
  const Length asked = scene.plan.limit(*find_rule("foam.thickness"));
  Length thinnest = scene.pieces.front().thickness;
  for (const BareFoam& foam : scene.pieces) {
    thinnest = std::min(thinnest, foam.thickness);
    if (foam.thickness < asked) finding.subjects.push_back(foam.piece->id.text());
  }
  compare(scene.plan, finding, thinnest);
  if (thinnest < felt_at_once) finding.variant = "felt at once";
  if (finding.status == Status::not_met) {
    finding.cure =
        Cure{Cure::Kind::pad, finding.subjects.front(), marked_out(shortfall(finding), scene.plan->unit)};
    finding.cure->alike.assign(finding.subjects.begin() + 1, finding.subjects.end());
  }
  scene.findings.push_back(std::move(finding));
}

// Where no grade is known nothing is compared: `add_unknown` says so.
void add_firmness(const FoamScene& scene) {
  Finding finding = scene.begin("foam.firmness");
  std::optional<int> softest;
  for (const BareFoam& foam : scene.pieces) {
    if (!foam.grade) continue;
    softest = std::min(softest.value_or(foam.grade->firmness), foam.grade->firmness);
    if (foam.grade->firmness < least_firmness) finding.subjects.push_back(foam.piece->id.text());
  }
  if (!softest) return;
  finding.measured = Count{*softest};
  finding.compared = Count{least_firmness};
  finding.status = *softest < least_firmness ? Status::not_met : Status::met;
  if (finding.status == Status::not_met)
    finding.cure = Cure{Cure::Kind::as_told, finding.subjects.front(), {}};
  scene.findings.push_back(std::move(finding));
}

void add_unknown(const FoamScene& scene) {
  Finding finding = scene.begin("foam.grade");
  for (const BareFoam& foam : scene.pieces)
    if (!foam.grade) finding.subjects.push_back(foam.piece->id.text());
  if (finding.subjects.empty()) return;
  finding.cure = Cure{Cure::Kind::state_foam, scene.bed.bed->id.text(), {}};
  scene.findings.push_back(std::move(finding));
}

}  // namespace

void add_foam_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const BedAnswer& bed : answer.beds) {
    const FoamScene scene{plan, bed, foam_on_boards(answer.arrangement, *bed.bed, bed.mattress), findings};
    if (scene.pieces.empty()) continue;
    add_thickness(scene);
    add_firmness(scene);
    add_unknown(scene);
  }
}

}  // namespace berthwright

#include <algorithm>
#include <array>
#include <span>
#include <stdexcept>
#include <tuple>

#include "solve/comparing.h"
#include "solve/findings.h"

namespace berthwright {
namespace {

// The kinds of thing that can burn, each with a finding of its own.
constexpr std::array<std::string_view, 5> variants{"bare", "made up", "cushion", "curtain", "other"};

std::string_view variant_of(const HeatDistance& entry) {
  switch (entry.kind) {
    case HeatDistance::Kind::bed:
      return entry.made_up ? "made up" : "bare";
    case HeatDistance::Kind::cushion:
      return "cushion";
    case HeatDistance::Kind::curtain:
      return "curtain";
    case HeatDistance::Kind::other:
      return "other";
  }
  throw std::logic_error("HeatDistance::Kind out of range");
}

/// All that findings about one source in one configuration share.
struct Scene {
  const Plan& plan;
  const ConfigurationAnswer& answer;
  const Placed& source;

  Finding begin(std::string_view rule, const HeatDistance& entry) const {
    Finding finding = finding_of(plan, rule);
    finding.configuration = answer.configuration->id;
    finding.subjects = {source.id, entry.nearest_to};
    finding.variant = variant_of(entry);
    if (entry.kind == HeatDistance::Kind::bed) finding.bed = BedId(entry.nearest_to);
    return finding;
  }

  // By night a portable heater is put away; by day, and where it is built in, the two must be moved apart.
  Cure cure_of(Length shortfall) const {
    if (source.piece != nullptr && !answer.beds.empty()) return {Cure::Kind::stow_heater, source.id, {}};
    return {Cure::Kind::move_apart, source.id, marked_out(shortfall, plan->unit)};
  }

  Finding three_feet(const HeatDistance& entry) const {
    Finding finding = begin("heat.three-feet", entry);
    finding.where = {entry.nearest.from, entry.nearest.to};
    compare(plan, finding, entry.distance);
    if (finding.status == Status::not_met) finding.cure = cure_of(shortfall(finding));
    return finding;
  }

  // Of what is no heater the published figure is a yardstick, no more.
  Finding also_three_feet(const HeatDistance& entry) const {
    Finding finding = begin("heat.also-three-feet", entry);
    finding.where = {entry.nearest.from, entry.nearest.to};
    compare(plan, finding, entry.distance);
    if (finding.status == Status::not_met)
      finding.cure =
          Cure{plate_of(source) == nullptr ? Cure::Kind::state_plate : Cure::Kind::none, source.id, {}};
    return finding;
  }

  Finding shield(const HeatDistance& entry) const {
    Finding finding = begin("heat.shield", entry);
    finding.subjects.insert(finding.subjects.end(), entry.shielded_by.begin(), entry.shielded_by.end());
    finding.where = {entry.nearest.from, entry.nearest.to};
    finding.status = Status::met;
    return finding;
  }

  Finding data_plate(const HeatDistance& entry) const {
    Finding finding = begin("heat.data-plate", entry);
    if (entry.plate_margin) {
      // The distance before the face in question, against what the maker asks there, as a person would tell
      // it.
      const Length asked = *entry.plate_required + plan.limit(*find_rule("heat.data-plate"));
      finding.where = {entry.plate_nearest.from, entry.plate_nearest.to};
      compare(finding, *entry.plate_required + *entry.plate_margin, asked);
      finding.before = entry.plate_faces;
    } else {
      finding.where = {entry.nearest.from, entry.nearest.to};
    }
    if (finding.status == Status::not_met) {
      finding.cure = cure_of(shortfall(finding));
    } else if (entry.plate_incomplete || plate_of(source) == nullptr) {
      finding.status = Status::unknown;
      finding.before = entry.missing_faces;
      finding.cure = Cure{Cure::Kind::state_plate, source.id, {}};
    }
    return finding;
  }

  Finding missing_faces(const HeatDistance& entry) const {
    Finding finding = begin("heat.data-plate-missing", entry);
    finding.before = entry.missing_faces;
    finding.where = {entry.nearest.from, entry.nearest.to};
    finding.cure = Cure{Cure::Kind::state_plate, source.id, {}};
    return finding;
  }
};

// Of the entries of one kind: the nearest, and the one with the least margin by the plate.
void add_worst(const Scene& scene, std::span<const HeatDistance* const> entries,
               std::vector<Finding>& findings) {
  const auto nearest = std::ranges::min_element(entries, {}, &HeatDistance::distance);
  findings.push_back(is_heater(scene.source) ? scene.three_feet(**nearest)
                                             : scene.also_three_feet(**nearest));
  if (!(*nearest)->shielded_by.empty()) findings.push_back(scene.shield(**nearest));
  if (plate_of(scene.source) == nullptr) {
    if (!is_heater(scene.source)) findings.push_back(scene.data_plate(**nearest));
    return;
  }
  const auto rank = [](const HeatDistance* entry) {
    const bool broken = entry->plate_margin && *entry->plate_margin < Length{};
    return std::tuple(broken ? 0 : entry->plate_incomplete ? 1 : 2, entry->plate_margin.value_or(farthest));
  };
  const auto worst = std::ranges::min_element(entries, {}, rank);
  findings.push_back(scene.data_plate(**worst));
}

void add_of_source(const Scene& scene, std::vector<Finding>& findings) {
  const HeatDistance* unknown = nullptr;
  for (const std::string_view variant : variants) {
    std::vector<const HeatDistance*> entries;
    for (const HeatDistance& entry : scene.answer.heat)
      if (entry.source == scene.source.id && variant_of(entry) == variant) entries.push_back(&entry);
    if (!entries.empty()) add_worst(scene, entries, findings);
    for (const HeatDistance* entry : entries)
      if (entry->plate_incomplete && unknown == nullptr) unknown = entry;
  }
  if (unknown != nullptr) findings.push_back(scene.missing_faces(*unknown));
}

void add_stowed(const Plan& plan, const Configuration& configuration, std::vector<Finding>& findings) {
  for (const Pose& pose : configuration.poses) {
    const Piece* piece = plan.piece(pose.piece.text());
    const bool stowed = pose.manner == Pose::Manner::stowed || pose.state == Pose::State::stowed;
    if (piece == nullptr || !piece->heat || !stowed) continue;
    Finding finding = finding_of(plan, "heat.stowed");
    finding.configuration = configuration.id;
    finding.subjects = {piece->id.text()};
    finding.status = pose.stowed_in.empty() ? Status::unknown : Status::met;
    if (finding.status == Status::unknown)
      finding.cure = Cure{Cure::Kind::state_measure, piece->id.text(), {}};
    findings.push_back(std::move(finding));
  }
}

}  // namespace

void add_heat_findings(const Plan& plan, const ConfigurationAnswer& answer, std::vector<Finding>& findings) {
  for (const Placed& source : answer.arrangement.things) add_of_source({plan, answer, source}, findings);
  add_stowed(plan, *answer.configuration, findings);
}

void add_missing_plates(const Plan& plan, std::vector<Finding>& findings) {
  const auto add = [&](const std::string& id, const std::optional<HeatSource>& heat) {
    if (!heat || heat->plate) return;
    Finding finding = finding_of(plan, "heat.data-plate-missing");
    finding.subjects = {id};
    finding.cure = Cure{Cure::Kind::state_plate, id, {}};
    findings.push_back(std::move(finding));
  };
  for (const Fixture& fixture : plan->fixtures) add(fixture.id.text(), fixture.heat);
  for (const Piece& piece : plan->pieces) add(piece.id.text(), piece.heat);
}

}  // namespace berthwright

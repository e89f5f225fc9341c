#include <berthwright/solve/site/stowing.h>

#include <algorithm>
#include <tuple>

namespace berthwright {
namespace {

using BoxSides = std::array<Length, 3>;

// Upright first, so that of ways with equal room it is the one that is told.
std::array<LaidBox, 6> ways_to_lay(const BoxSides& sides) {
  const auto [a, b, c] = sides;
  return {LaidBox{a, b, c}, {b, a, c}, {a, c, b}, {c, a, b}, {b, c, a}, {c, b, a}};
}

std::array<Length, 3> clearances(const InsideBox& inside, const LaidBox& laid) {
  return {inside.length - laid.along, inside.width - laid.across, inside.height - laid.up};
}

// The least first: what is tight decides, then what is next.
std::array<Length, 3> ascending(std::array<Length, 3> lengths) {
  std::ranges::sort(lengths);
  return lengths;
}

void lay(StowFit& fit, const BoxSides& sides) {
  if (!fit.inside) return;
  bool first = true;
  for (const LaidBox& laid : ways_to_lay(sides)) {
    const std::array<Length, 3> clearance = clearances(*fit.inside, laid);
    if (!first && ascending(clearance) <= ascending(fit.clearance)) continue;
    fit.laid = laid;
    fit.clearance = clearance;
    first = false;
  }
}

bool passes(const BoxSides& sides, const Rect& opening) {
  return std::ranges::any_of(ways_to_lay(sides), [&](const LaidBox& laid) {
    return laid.along <= opening.width() && laid.across <= opening.height();
  });
}

void try_openings(StowFit& fit, const Fixture& fixture, const BoxSides& sides) {
  for (const Leaf& leaf : fixture.leaves)
    if (leaf.kind != Leaf::Kind::drawer)
      (passes(sides, leaf.outline) ? fit.through : fit.too_small).push_back(leaf.id.text());
}

// A door or a lid leads into its fixture; a drawer is a place of its own.
std::string place_of(const Plan& plan, const std::string& written) {
  const Leaf* leaf = plan.leaf(written);
  return leaf != nullptr && leaf->kind != Leaf::Kind::drawer ? leaf->fixture.text() : written;
}

class Places {
 public:
  Places(const Plan& plan, const Piece& heater) : sides_{heater.length, heater.width, heater.thickness} {
    for (const Configuration& configuration : plan->configurations)
      for (const Pose& pose : configuration.poses)
        if (pose.piece == heater.id && pose.manner == Pose::Manner::stowed)
          stowed_.emplace_back(place_of(plan, pose.stowed_in), configuration.id.text());
  }

  std::vector<StowFit> in(const Plan& plan) {
    for (const Fixture& fixture : plan->fixtures) {
      // Nobody is sent to the refrigerator or the oven with a heater; what the plan stows there is told.
      offered_ = fixture.kind != Fixture::Kind::refrigerator && !fixture.heat;
      add(fixture.id.text(), fixture.inside, &fixture);
      for (const Leaf& leaf : fixture.leaves)
        if (leaf.kind == Leaf::Kind::drawer) add(leaf.id.text(), leaf.inside, nullptr);
    }
    while (!stowed_.empty()) add(std::string(stowed_.front().first), std::nullopt, nullptr);
    return std::move(fits_);
  }

 private:
  void add(const std::string& place, const std::optional<InsideBox>& inside, const Fixture* openings_of) {
    StowFit fit;
    fit.place = place;
    fit.inside = inside;
    std::erase_if(stowed_, [&](const auto& entry) {
      if (entry.first != place) return false;
      fit.stowed_in.push_back(entry.second);
      return true;
    });
    if ((!inside || !offered_) && fit.stowed_in.empty()) return;
    lay(fit, sides_);
    if (openings_of != nullptr) try_openings(fit, *openings_of, sides_);
    fits_.push_back(std::move(fit));
  }

  BoxSides sides_;
  bool offered_ = true;
  std::vector<std::pair<std::string, std::string>> stowed_;  // place and configuration, not yet told
  std::vector<StowFit> fits_;
};

}  // namespace

bool StowFit::fits() const { return inside && std::ranges::min(clearance) >= Length{}; }

std::vector<StowFit> stow_fits(const Plan& plan, const Piece& heater) {
  return Places(plan, heater).in(plan);
}

StowFit stow_fit(const Plan& plan, const std::string& place, const std::array<Length, 3>& sides) {
  StowFit fit;
  fit.place = place_of(plan, place);
  if (const Leaf* drawer = plan.leaf(fit.place)) {
    fit.inside = drawer->inside;
  } else if (const Fixture* fixture = plan.fixture(fit.place)) {
    fit.inside = fixture->inside;
    try_openings(fit, *fixture, sides);
  }
  lay(fit, sides);
  return fit;
}

}  // namespace berthwright

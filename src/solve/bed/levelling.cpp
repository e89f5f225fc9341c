#include "solve/bed/levelling.h"

#include <algorithm>
#include <array>

namespace berthwright {

namespace {

constexpr std::array built_to_carry{Fixture::Kind::bench,  Fixture::Kind::ledge, Fixture::Kind::cabinet,
                                    Fixture::Kind::locker, Fixture::Kind::shelf, Fixture::Kind::counter};

bool is_ledge(const Placed& thing) {
  return thing.fixture != nullptr && thing.fixture->kind == Fixture::Kind::ledge;
}

Cure moved_ledges(const std::vector<const Placed*>& ledges, Length by) {
  Cure cure{by > Length{} ? Cure::Kind::raise : Cure::Kind::lower, ledges.front()->id, abs(by)};
  cure.to = ledges.front()->solid.top() + by;
  for (std::size_t i = 1; i < ledges.size(); ++i) cure.alike.push_back(ledges[i]->id);
  return cure;
}

}  // namespace

std::vector<const Placed*> ledges_beneath(const Arrangement& arrangement, const Placed& thing) {
  std::vector<const Placed*> ledges;
  for (const std::string& id : thing.carried_by) {
    const Placed* carrier = arrangement.find(id);
    if (carrier == nullptr) return {};
    std::vector<const Placed*> found;
    if (is_ledge(*carrier))
      found = {carrier};
    else if (carrier->piece != nullptr && !carrier->is_soft())
      found = ledges_beneath(arrangement, *carrier);
    if (found.empty()) return {};
    for (const Placed* ledge : found)
      if (std::ranges::find(ledges, ledge) == ledges.end()) ledges.push_back(ledge);
  }
  return ledges;
}

bool can_change_height(const Arrangement& arrangement, const std::string& carrier) {
  const Placed* thing = arrangement.find(carrier);
  if (thing == nullptr || thing->fixture == nullptr) return true;
  const Fixture& fixture = *thing->fixture;
  return !fixture.heat && std::ranges::find(built_to_carry, fixture.kind) != built_to_carry.end();
}

Cure cure_of_height(const Arrangement& arrangement, const Placed& thing, Length by) {
  const std::vector<const Placed*> ledges = ledges_beneath(arrangement, thing);
  if (!ledges.empty()) return moved_ledges(ledges, by);
  if (by > Length{}) return {Cure::Kind::pad, thing.id, by};
  const bool on_floor = thing.carried_by.empty() || thing.carried_by.front() == "floor";
  if (!on_floor && thing.is_soft() && !can_change_height(arrangement, thing.carried_by.front()))
    return {Cure::Kind::cut_down, thing.id, -by};
  return {Cure::Kind::lower, on_floor ? thing.id : thing.carried_by.front(), -by};
}

Cure cure_of_ridge(const Arrangement& arrangement, const Placed& lower, const Placed& higher) {
  const Length step = higher.solid.top() - lower.solid.top();
  const Length by_ledges = std::min(step, higher.solid.base() - lower.solid.base());
  const std::vector<const Placed*> under_lower = ledges_beneath(arrangement, lower);
  const std::vector<const Placed*> under_higher = ledges_beneath(arrangement, higher);
  if (by_ledges <= Length{} || (under_lower.empty() && under_higher.empty()))
    return {Cure::Kind::pad, lower.id, step};
  Cure cure =
      under_lower.empty() ? moved_ledges(under_higher, -by_ledges) : moved_ledges(under_lower, by_ledges);
  if (by_ledges < step) cure.then.push_back({Cure::Kind::pad, lower.id, step - by_ledges});
  return cure;
}

}  // namespace berthwright

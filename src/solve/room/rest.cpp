#include "solve/room/rest.h"

#include <algorithm>
#include <functional>
#include <stdexcept>

#include "solve/room/outlines_met.h"
#include "solve/room/rows.h"
#include "solve/room/thickness.h"

namespace berthwright {

namespace {

// Our own choice: what is wider than a lip, a hinge or a catch carries a cushion instead of pressing into it.
constexpr Length widest_high_spot = 2_in;

struct Beneath {
  std::string id;
  Region shared;
  Length top;
};

bool named(const Pose& pose, std::string_view id) { return std::ranges::find(pose.on, id) != pose.on.end(); }

bool may_carry(const Pose& pose, const Placed& thing) {
  if (!pose.on.empty()) return named(pose, thing.id);
  return thing.solid.base() < drop_height && !hangs_on_a_wall(thing);
}

// Foam pressed against what stands beside it does not lie upon it.
bool is_squeezed_joint(const Placed& thing, const Region& shared) {
  return (thing.is_soft() || is_upright(thing)) && thickness_of(shared).width <= give_in_row;
}

std::vector<Beneath> supports(const Piece& piece, const Pose& pose, std::span<const Placed* const> standing) {
  std::vector<Beneath> found;
  for (const Placed* thing : standing) {
    if (!may_carry(pose, *thing)) continue;
    Region shared = shared_outline({pose.outline, pose.arcs}, drawn(*thing));
    if (shared.empty() || (piece.is_soft() && is_squeezed_joint(*thing, shared))) continue;
    found.push_back({thing->id, std::move(shared), thing->solid.top()});
  }
  std::ranges::stable_sort(found, std::ranges::greater{}, &Beneath::top);
  return found;
}

// The height whose tops, seen from above, carry most of the area; of equal ones the higher.
Length height_of_most_area(const std::vector<Beneath>& highest_first) {
  Length best;
  Area best_area;
  Region seen;
  for (auto support = highest_first.begin(); support != highest_first.end();) {
    const Length top = support->top;
    const Area before = seen.area();
    for (; support != highest_first.end() && support->top == top; ++support)
      seen = united(seen, support->shared);
    const Area area = seen.area() - before;
    if (area > best_area) best = top, best_area = area;
  }
  return best;
}

std::vector<std::string> carriers(std::vector<Beneath> supports, Length base) {
  std::erase_if(supports, [&](const Beneath& support) { return support.top != base; });
  std::ranges::stable_sort(supports, std::ranges::greater{},
                           [](const Beneath& s) { return s.shared.area(); });
  std::vector<std::string> ids;
  ids.reserve(supports.size());
  for (const Beneath& support : supports) ids.push_back(support.id);
  if (ids.empty() && base == Length{}) ids.emplace_back("floor");
  return ids;
}

std::vector<std::string> high_spots(const Pose& pose, Length base, std::span<const Placed* const> standing) {
  std::vector<std::string> ids;
  for (const Placed* thing : standing) {
    const bool rises_into_it = thing->solid.base() <= base && base < thing->solid.top() &&
                               2 * (thing->solid.top() - base) <= pose.height;
    if (!rises_into_it) continue;
    const Region shared = shared_outline({pose.outline, pose.arcs}, drawn(*thing));
    if (!shared.empty() && thickness_of(shared).width <= widest_high_spot) ids.push_back(thing->id);
  }
  return ids;
}

}  // namespace

bool hangs_on_a_wall(const Placed& thing) {
  if (thing.fixture == nullptr) return false;
  switch (thing.fixture->kind) {
    case Fixture::Kind::outlet:
    case Fixture::Kind::smoke_alarm:
    case Fixture::Kind::co_alarm:
    case Fixture::Kind::gas_alarm:
    case Fixture::Kind::light:
    case Fixture::Kind::curtain:
    case Fixture::Kind::protrusion:
    case Fixture::Kind::guard_rail:
      return true;
    case Fixture::Kind::bench:
    case Fixture::Kind::cabinet:
    case Fixture::Kind::locker:
    case Fixture::Kind::shelf:
    case Fixture::Kind::counter:
    case Fixture::Kind::sink:
    case Fixture::Kind::refrigerator:
    case Fixture::Kind::heater:
    case Fixture::Kind::furnace_outlet:
    case Fixture::Kind::oven:
    case Fixture::Kind::cooktop:
    case Fixture::Kind::tank:
    case Fixture::Kind::battery:
    case Fixture::Kind::leg:
    case Fixture::Kind::ledge:
    case Fixture::Kind::wheel_arch:
    case Fixture::Kind::wall:
      return false;
  }
  throw std::logic_error("fixture kind out of range");
}

std::optional<Rest> rest_of(const Piece& piece, const Pose& pose, std::span<const Placed* const> standing) {
  const std::vector<Beneath> found = supports(piece, pose, standing);
  if (found.empty() && !pose.on.empty() && !pose.base) return std::nullopt;
  Rest rest;
  if (pose.base)
    rest.base = *pose.base;
  else if (!found.empty())
    rest.base = piece.is_soft() ? height_of_most_area(found) : found.front().top;
  rest.carried_by = carriers(found, rest.base);
  if (piece.is_soft()) rest.pressed_by = high_spots(pose, rest.base, standing);
  return rest;
}

}  // namespace berthwright

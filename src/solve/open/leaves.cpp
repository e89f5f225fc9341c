#include <berthwright/solve/open/leaves.h>

#include <algorithm>
#include <optional>

#include "solve/open/leaf_plane.h"
#include "solve/open/sector.h"

namespace berthwright {
namespace {

constexpr std::int64_t degree = 1'000'000;  // microdegrees

/// How far a leaf comes before it meets something, and where, in the plane of the leaf.
struct Meeting {
  Reach at;
  Point where;
};

Point middle(const Rect& box) { return {half(box.low.x + box.high.x), half(box.low.y + box.high.y)}; }

Reach whole_way(const Leaf& leaf) {
  if (leaf.hinge) return {static_cast<int>((leaf.stop.microdegrees() + degree / 2) / degree), {}};
  return {0, leaf.kind == Leaf::Kind::drawer ? leaf.pull : lift_out};
}

std::optional<Meeting> met_turning(const LeafPlane& plane, std::int64_t stop, const Region& taken) {
  const auto shared = [&](std::int64_t degrees) {
    return Region(sector_swept(plane.width(), std::min(degrees * degree, stop)));
  };
  std::int64_t met = (stop + degree - 1) / degree;
  if (!overlaps(shared(met), taken)) return std::nullopt;
  std::int64_t free = 0;
  while (met - free > 1) {
    const std::int64_t between = (free + met) / 2;
    (overlaps(shared(between), taken) ? met : free) = between;
  }
  const Region both = common(shared(met), taken);
  // What the two share may be thinner than the lattice.
  return Meeting{{static_cast<int>(free), {}}, middle((both.empty() ? taken : both).bounds())};
}

std::optional<Meeting> met_sliding(const LeafPlane& plane, const Region& taken) {
  const Region way(plane.frame());
  if (!overlaps(way, taken)) return std::nullopt;
  const Region both = common(way, taken);
  const Rect bounds = (both.empty() ? taken : both).bounds();
  const Length free = std::max(bounds.low.y, Length{});
  return Meeting{{0, free}, {half(bounds.low.x + bounds.high.x), free}};
}

std::optional<Meeting> met(const LeafPlane& plane, const Leaf& leaf, const Region& taken) {
  if (taken.empty()) return std::nullopt;
  return plane.turns() ? met_turning(plane, leaf.stop.microdegrees(), taken) : met_sliding(plane, taken);
}

bool lies_within(const Solid& inner, const Solid& outer) {
  return inner.base() >= outer.base() && inner.top() <= outer.top() &&
         contains(outer.outline(), inner.outline());
}

// What is built into a fixture, or it into that, moves with neither: a sink in its counter, an oven in a
// galley.
bool is_in_the_way(const Placed& thing, const Fixture& own) {
  if (thing.fixture == nullptr) return true;
  if (thing.fixture == &own || thing.fixture->kind == Fixture::Kind::curtain) return false;
  return !lies_within(thing.solid, own.solid) && !lies_within(own.solid, thing.solid);
}

bool lies_on(const Placed& thing, const Leaf& lid, Length top) {
  return thing.piece != nullptr && thing.solid.base() <= top && top < thing.solid.top() &&
         overlaps(thing.solid.outline(), Region(lid.outline));
}

// The pieces on a lid and all that they carry; what was laid last comes off first.
std::vector<std::string> lifted_off(const Leaf& lid, Length top, const Arrangement& arrangement) {
  std::vector<std::string> lifted;
  for (const Placed& thing : arrangement.things) {
    const bool on_lifted =
        thing.piece != nullptr && std::ranges::any_of(thing.carried_by, [&](const auto& id) {
          return std::ranges::find(lifted, id) != lifted.end();
        });
    if (on_lifted || lies_on(thing, lid, top)) lifted.push_back(thing.id);
  }
  std::ranges::reverse(lifted);
  return lifted;
}

LeafReach reach_of(const Plan& plan, const Arrangement& arrangement, const Fixture& fixture,
                   const Leaf& leaf) {
  LeafReach reach;
  reach.leaf = &leaf;
  reach.whole = whole_way(leaf);
  const bool lid = leaf.kind == Leaf::Kind::lid;
  if (lid) reach.lifted = lifted_off(leaf, fixture.solid.top(), arrangement);
  if (lid && !contains(fixture.solid.outline(), Region(leaf.outline))) {
    reach.known = false;
    return reach;
  }
  const LeafPlane plane(fixture, leaf);
  const auto add = [&](const std::string& thing, const Region& taken) {
    if (const auto meeting = met(plane, leaf, taken))
      reach.stops.push_back({thing, meeting->at, plane.in_room(meeting->where)});
  };
  for (const Placed& thing : arrangement.things)
    if (is_in_the_way(thing, fixture) && std::ranges::find(reach.lifted, thing.id) == reach.lifted.end())
      add(thing.id, plane.taken_by(thing.solid));
  add("", plane.outside(plan->interior));
  std::ranges::stable_sort(reach.stops, {}, &LeafStop::at);
  reach.free = reach.stops.empty() ? reach.whole : reach.stops.front().at;
  return reach;
}

}  // namespace

std::vector<LeafReach> leaves_in(const Plan& plan, const Arrangement& arrangement) {
  std::vector<LeafReach> reaches;
  for (const Fixture& fixture : plan->fixtures)
    for (const Leaf& leaf : fixture.leaves) reaches.push_back(reach_of(plan, arrangement, fixture, leaf));
  return reaches;
}

Region leaf_sweep(const Fixture& fixture, const Leaf& leaf, Length low, Length high) {
  const LeafPlane plane(fixture, leaf);
  const Region whole =
      plane.turns() ? Region(sector_swept(plane.width(), leaf.stop.microdegrees())) : Region(plane.frame());
  return plane.shadow(whole, low, high);
}

std::vector<LeafReach> leaves_of_fixtures(const Plan& plan) {
  Arrangement built_in;
  for (const Fixture& fixture : plan->fixtures)
    built_in.things.push_back({fixture.id.text(), &fixture, nullptr, nullptr, fixture.solid, {}, {}});
  return leaves_in(plan, built_in);
}

}  // namespace berthwright

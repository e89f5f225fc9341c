#include <berthwright/solve/room/collisions.h>

#include <algorithm>
#include <optional>

#include "solve/room/outlines_met.h"
#include "solve/room/squeezes.h"
#include "solve/room/thickness.h"

namespace berthwright {

namespace {

std::optional<Collision> collision_of(const Placed& a, const Placed& b) {
  const Length base = std::max(a.solid.base(), b.solid.base());
  const Length top = std::min(a.solid.top(), b.solid.top());
  if (base >= top) return std::nullopt;
  Region shared = shared_outline(drawn(a), drawn(b));
  if (shared.empty()) return std::nullopt;
  const Length depth = std::min(thickness_of(shared).width, top - base);
  return Collision{a.id, b.id, std::move(shared), base, top, depth, false};
}

bool presses(const Placed& upper, std::string_view lower) {
  return std::ranges::find(upper.pressed_by, lower) != upper.pressed_by.end();
}

bool gives_way(const Placed& a, const Placed& b) {
  return (a.is_soft() && b.is_soft()) || (a.is_soft() && is_upright(b)) || (b.is_soft() && is_upright(a));
}

}  // namespace

std::vector<Squeeze> side_squeezes(const Arrangement& arrangement, const std::vector<Collision>& collisions) {
  std::vector<Squeeze> squeezes;
  for (std::size_t i = 0; i < collisions.size(); ++i) {
    const Placed* first = arrangement.find(collisions[i].first);
    const Placed* second = arrangement.find(collisions[i].second);
    if (presses(*first, second->id) || presses(*second, first->id) || !gives_way(*first, *second)) continue;
    squeezes.push_back({i, first, second, collisions[i].shared.bounds(), collisions[i].depth});
  }
  return squeezes;
}

std::vector<Collision> find_collisions(const Arrangement& arrangement) {
  std::vector<Collision> collisions;
  const std::vector<Placed>& things = arrangement.things;
  for (std::size_t i = 0; i < things.size(); ++i)
    for (std::size_t j = i + 1; j < things.size(); ++j) {
      if (things[i].fixture != nullptr && things[j].fixture != nullptr) continue;
      std::optional<Collision> collision = collision_of(things[i], things[j]);
      if (!collision) continue;
      collision->tolerated = presses(things[i], things[j].id) || presses(things[j], things[i].id);
      collisions.push_back(std::move(*collision));
    }
  for (const std::size_t i : tolerated_squeezes(side_squeezes(arrangement, collisions)))
    collisions[i].tolerated = true;
  return collisions;
}

}  // namespace berthwright

#include "solve/room/flush.h"

#include <algorithm>

namespace berthwright {

namespace {

constexpr Length beside_within = Length::inches(1, 2);
constexpr Length compared_within = 2_in;

bool is_ledge(const Placed* thing) {
  return thing != nullptr && thing->fixture != nullptr && thing->fixture->kind == Fixture::Kind::ledge;
}

bool is_fixed_top(const Placed& thing) {
  if (thing.fixture == nullptr) return false;
  const Fixture::Kind kind = thing.fixture->kind;
  return kind == Fixture::Kind::bench || kind == Fixture::Kind::locker || kind == Fixture::Kind::cabinet ||
         kind == Fixture::Kind::shelf;
}

bool carries(const Placed& cushion, std::string_view id) {
  return std::ranges::find(cushion.carried_by, id) != cushion.carried_by.end();
}

// Whether every cushion on either of the two is as thick as the others.
bool equally_padded(const Arrangement& arrangement, std::string_view board, std::string_view fixed) {
  std::optional<Length> thickness;
  for (const Placed& thing : arrangement.things) {
    if (!thing.is_soft() || thing.pose->manner != Pose::Manner::flat) continue;
    if (!carries(thing, board) && !carries(thing, fixed)) continue;
    if (thickness && thing.solid.height() != *thickness) return false;
    thickness = thing.solid.height();
  }
  return true;
}

}  // namespace

std::vector<FlushTop> flush_tops(const Arrangement& arrangement, const Support& support) {
  std::vector<FlushTop> found;
  for (const BoardSupport& one : support.boards) {
    const Placed& board = *arrangement.find(one.piece);
    if (board.carried_by.empty() || !std::ranges::all_of(board.carried_by, [&](const std::string& id) {
          return is_ledge(arrangement.find(id));
        }))
      continue;
    const std::size_t first = found.size();
    for (const Placed& fixed : arrangement.things) {
      const Length step = board.solid.top() - fixed.solid.top();
      if (!is_fixed_top(fixed) || abs(step) > compared_within) continue;
      const Nearest near = nearest(board.solid.outline(), fixed.solid.outline());
      if (near.squared > beside_within || !equally_padded(arrangement, board.id, fixed.id)) continue;
      const auto same = std::find_if(found.begin() + static_cast<std::ptrdiff_t>(first), found.end(),
                                     [&](const FlushTop& top) { return top.step == step; });
      if (same != found.end())
        same->beside.push_back(fixed.id);
      else
        found.push_back({board.id,
                         {fixed.id},
                         board.carried_by,
                         step,
                         board.solid.base(),
                         fixed.solid.top() - board.solid.height(),
                         near.from.plan});
    }
  }
  return found;
}

}  // namespace berthwright

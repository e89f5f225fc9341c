#include <berthwright/solve/split/night_bay.h>

#include <algorithm>
#include <numeric>
#include <stdexcept>

#include <berthwright/solve/room/arrangement.h>

#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

constexpr Length flush = Length::inches(1, 2);
constexpr Length play = Length::inches(1, 2);
constexpr Length overhang = 2_in;
// Our own choice: cushions that begin higher above a bay lie in a bunk over it, and boards farther from a
// bench were not meant to be flush with it.
constexpr Length highest_cushion = 12_in;
constexpr Length far_off_level = 24_in;

struct BayTop {
  const Placed* placed = nullptr;
  Rect at;
  bool bench() const { return placed->fixture != nullptr; }
};

bool is_board(const Placed& placed) {
  return placed.piece != nullptr && placed.pose->manner == Pose::Manner::flat &&
         (placed.piece->kind == Piece::Kind::board || placed.piece->kind == Piece::Kind::table);
}

std::vector<BayTop> tops_of(const Arrangement& night) {
  std::vector<BayTop> result;
  for (const Placed& placed : night.things)
    if ((placed.fixture != nullptr && placed.fixture->kind == Fixture::Kind::bench) || is_board(placed))
      result.push_back({&placed, placed.solid.outline().bounds()});
  return result;
}

bool are_joined(const BayTop& a, const BayTop& b) {
  if (abs(a.placed->solid.top() - b.placed->solid.top()) > flush) return false;
  // Side by side along a stretch, not only corner to corner.
  const auto shared = [](Length low_a, Length high_a, Length low_b, Length high_b) {
    return std::min(high_a, high_b) - std::max(low_a, low_b);
  };
  const Length along = shared(a.at.low.x, a.at.high.x, b.at.low.x, b.at.high.x);
  const Length across = shared(a.at.low.y, a.at.high.y, b.at.low.y, b.at.high.y);
  return std::min(along, across) >= -play && std::max(along, across) > play;
}

std::vector<std::vector<BayTop>> groups_of(const std::vector<BayTop>& tops) {
  std::vector<std::size_t> group(tops.size());
  std::iota(group.begin(), group.end(), std::size_t{0});
  for (std::size_t i = 0; i < tops.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (are_joined(tops[i], tops[j])) {
        const std::size_t from = group[i];
        const std::size_t to = group[j];
        std::ranges::replace(group, std::max(from, to), std::min(from, to));
      }
  std::vector<std::vector<BayTop>> result;
  for (std::size_t first = 0; first < tops.size(); ++first) {
    std::vector<BayTop> members;
    for (std::size_t i = 0; i < tops.size(); ++i)
      if (group[i] == first) members.push_back(tops[i]);
    const bool bench = std::ranges::any_of(members, &BayTop::bench);
    if (bench && !std::ranges::all_of(members, &BayTop::bench)) result.push_back(std::move(members));
  }
  return result;
}

// A side that ends a little short of one of these lines is drawn out to it.
Length drawn_out(Length side, const std::vector<Length>& lines, bool outward_is_up) {
  for (const Length line : lines) {
    const Length by = outward_is_up ? line - side : side - line;
    if (by > Length{} && by <= overhang) return line;
  }
  return side;
}

// Cushions lie over the play of boards at their ledges, and a little over a board's free edge.
std::vector<Rect> parts_of(const std::vector<BayTop>& tops) {
  Rect all = tops.front().at;
  std::vector<Length> xs;
  std::vector<Length> ys;
  for (const BayTop& top : tops) {
    all = hull(all, top.at);
    if (!top.bench()) continue;
    xs.insert(xs.end(), {top.at.low.x, top.at.high.x});
    ys.insert(ys.end(), {top.at.low.y, top.at.high.y});
  }
  xs.insert(xs.end(), {all.low.x, all.high.x});
  ys.insert(ys.end(), {all.low.y, all.high.y});
  std::vector<Rect> result;
  for (const BayTop& top : tops) {
    const Rect at = top.at;
    result.push_back(top.bench() ? at
                                 : Rect{{drawn_out(at.low.x, xs, false), drawn_out(at.low.y, ys, false)},
                                        {drawn_out(at.high.x, xs, true), drawn_out(at.high.y, ys, true)}});
  }
  return result;
}

// The side along which most of a board lies.
Wall front_of(const Rect& lid, const std::vector<Rect>& boards) {
  const auto along = [&](Wall side) {
    Length sum;
    for (const Rect& board : boards) {
      const bool touches = side == Wall::front  ? board.high.x == lid.low.x
                           : side == Wall::rear ? board.low.x == lid.high.x
                           : side == Wall::left ? board.high.y == lid.low.y
                                                : board.low.y == lid.high.y;
      if (!touches) continue;
      const bool upright = side == Wall::front || side == Wall::rear;
      const Length shared = upright ? std::min(board.high.y, lid.high.y) - std::max(board.low.y, lid.low.y)
                                    : std::min(board.high.x, lid.high.x) - std::max(board.low.x, lid.low.x);
      sum += std::max(shared, Length{});
    }
    return sum;
  };
  return std::ranges::max({Wall::front, Wall::rear, Wall::left, Wall::right}, {}, along);
}

// The part of the lid behind the boards before its front.
Rect behind_boards(const Rect& lid, Wall faces, const std::vector<Rect>& boards) {
  const bool along = faces == Wall::front || faces == Wall::rear;
  Rect result = lid;
  (along ? result.low.y : result.low.x) = along ? lid.high.y : lid.high.x;
  (along ? result.high.y : result.high.x) = along ? lid.low.y : lid.low.x;
  for (const Rect& board : boards) {
    if (!meets(lid, board)) continue;
    if (along) {
      result.low.y = std::min(result.low.y, std::max(board.low.y, lid.low.y));
      result.high.y = std::max(result.high.y, std::min(board.high.y, lid.high.y));
    } else {
      result.low.x = std::min(result.low.x, std::max(board.low.x, lid.low.x));
      result.high.x = std::max(result.high.x, std::min(board.high.x, lid.high.x));
    }
  }
  return along ? (result.low.y < result.high.y ? result : lid)
               : (result.low.x < result.high.x ? result : lid);
}

bool meets_heights(const Solid& solid, Length low, Length high) {
  return solid.base() < high && solid.top() > low;
}

void keep_out(NightBay& bay, const Plan& plan, const Arrangement& night, Length thickness) {
  std::vector<Region> parts(bay.parts.begin(), bay.parts.end());
  const Region all = united(parts);
  const Length top = bay.level + thickness;
  std::vector<Region> out{without(all, room_between(plan->interior, bay.level, top))};
  for (const Placed& placed : night.things) {
    if (placed.fixture == nullptr || placed.is_curtain()) continue;
    if (!meets_heights(placed.solid, bay.level, top) || !overlaps(placed.solid.outline(), all)) continue;
    bay.risen.push_back(placed.id);
    out.push_back(common(all, placed.solid.outline()));
  }
  bay.kept_out = united(out);
}

// What lies this far beyond a side of the bay.
Rect beyond(const Rect& bay, Wall side) {
  switch (side) {
    case Wall::front:
      return {{bay.low.x - overhang, bay.low.y}, {bay.low.x, bay.high.y}};
    case Wall::rear:
      return {{bay.high.x, bay.low.y}, {bay.high.x + overhang, bay.high.y}};
    case Wall::left:
      return {{bay.low.x, bay.low.y - overhang}, {bay.high.x, bay.low.y}};
    case Wall::right:
      return {{bay.low.x, bay.high.y}, {bay.high.x, bay.high.y + overhang}};
  }
  throw std::logic_error("Wall out of range");
}

void find_free_sides(NightBay& bay, const Plan& plan, const Arrangement& night, Length thickness) {
  const Length top = bay.level + thickness;
  const Region room = room_between(plan->interior, bay.level, top);
  for (const Wall side : {Wall::front, Wall::rear, Wall::left, Wall::right}) {
    const Region strip(beyond(bay.bounds(), side));
    const bool stopped = std::ranges::any_of(night.things, [&](const Placed& placed) {
      return !placed.is_soft() && !placed.is_curtain() && meets_heights(placed.solid, bay.level, top) &&
             overlaps(placed.solid.outline(), strip);
    });
    if (!stopped && contains(room, strip)) bay.free_sides.push_back(side);
  }
}

void find_cushions(NightBay& bay, const Plan& plan, const Arrangement& arrangement) {
  for (const Piece& piece : plan->pieces) {
    const Placed* placed = arrangement.find(piece.id.text());
    if (placed == nullptr || !piece.is_soft() ||
        std::ranges::find(bay.cushions, piece.id) != bay.cushions.end())
      continue;
    if (placed->solid.top() <= bay.level || placed->solid.base() > bay.level + highest_cushion) continue;
    if (std::ranges::any_of(
            bay.parts, [&](const Rect& part) { return overlaps(placed->solid.outline(), Region(part)); }))
      bay.cushions.push_back(piece.id);
  }
}

std::vector<OffLevel> off_level(const std::vector<BayTop>& tops, const std::vector<NightBay>& bays) {
  std::vector<OffLevel> result;
  for (const BayTop& board : tops) {
    const bool laid = std::ranges::any_of(bays, [&](const NightBay& bay) {
      return std::ranges::find(bay.boards, board.placed->id) != bay.boards.end();
    });
    if (board.bench() || laid) continue;
    for (const BayTop& bench : tops)
      if (bench.bench() && abs(board.placed->solid.top() - bench.placed->solid.top()) <= far_off_level &&
          meets(grown(bench.at, play), board.at)) {
        result.push_back(
            {board.placed->id, bench.placed->id, board.placed->solid.top() - bench.placed->solid.top()});
        break;
      }
  }
  return result;
}

}  // namespace

Rect NightBay::bounds() const {
  Rect all = parts.front();
  for (const Rect& part : parts) all = hull(all, part);
  return all;
}

Result<NightBays> night_bays(const Plan& plan, const Configuration& day, const Configuration& night,
                             Length thickness) {
  const Result<Arrangement> by_day = arranged(plan, day);
  const Result<Arrangement> by_night = arranged(plan, night);
  if (!by_day) return by_day.problems();
  if (!by_night) return by_night.problems();
  const std::vector<BayTop> tops = tops_of(*by_night);
  NightBays result;
  for (const std::vector<BayTop>& group : groups_of(tops)) {
    NightBay bay;
    bay.day = &day;
    bay.night = &night;
    bay.parts = parts_of(group);
    std::vector<Rect> boards;
    for (std::size_t i = 0; i < group.size(); ++i)
      if (!group[i].bench()) {
        boards.push_back(bay.parts[i]);
        bay.boards.push_back(group[i].placed->id);
      }
    for (const BayTop& top : group) {
      if (!top.bench()) continue;
      bay.level = std::max(bay.level, top.placed->solid.top());
      const Wall faces = front_of(top.at, boards);
      bay.lids.push_back({top.placed->fixture->id, top.at, faces, behind_boards(top.at, faces, boards)});
    }
    keep_out(bay, plan, *by_night, thickness);
    find_free_sides(bay, plan, *by_night, thickness);
    find_cushions(bay, plan, *by_day);
    find_cushions(bay, plan, *by_night);
    result.bays.push_back(std::move(bay));
  }
  result.off_level = off_level(tops, result.bays);
  return result;
}

}  // namespace berthwright

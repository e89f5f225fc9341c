#include "solve/convert/room_aside.h"

#include <algorithm>
#include <numeric>

namespace berthwright {
namespace {

std::size_t leader_of(std::vector<std::size_t>& leader, std::size_t piece) {
  while (leader[piece] != piece) piece = leader[piece] = leader[leader[piece]];
  return piece;
}

}  // namespace

RoomAside::RoomAside(const TableRules& rules, std::size_t most) : rules_(rules) {
  const MoveTable& table = rules.table();
  std::vector<std::size_t> leader(table.pieces);
  std::iota(leader.begin(), leader.end(), 0);
  const auto meets = [&](std::size_t spot, std::size_t other) {
    const SpotRow& row = table.spots[spot];
    return row.needs[other] ||
           std::ranges::any_of(row.ways, [&](const OpenWay& way) { return way.barred_by[other]; });
  };
  for (std::size_t a = 0; a < table.pieces; ++a)
    for (std::size_t b = 0; b < table.pieces; ++b)
      for (const std::size_t spot : {table.start[a], table.goal[a]})
        for (const std::size_t other : {table.start[b], table.goal[b]})
          if (a != b && meets(spot, other)) leader[leader_of(leader, a)] = leader_of(leader, b);
  for (std::size_t piece = 0; piece < table.pieces; ++piece) leader[piece] = leader_of(leader, piece);
  group(leader);
  for (Group& one : groups_) {
    std::size_t stages = 1;
    for (const std::size_t piece : one.pieces) {
      one.weight.push_back(stages);
      if (stages <= most) stages *= states_of(piece);
    }
    if (stages > most) continue;
    one.moves.assign(stages, never);
    count_out(one);
  }
}

void RoomAside::group(const std::vector<std::size_t>& leader) {
  for (std::size_t first = 0; first < leader.size(); ++first) {
    if (std::ranges::find(leader, leader[first]) - leader.begin() != static_cast<std::ptrdiff_t>(first))
      continue;
    Group one;
    for (std::size_t piece = first; piece < leader.size(); ++piece)
      if (leader[piece] == leader[first]) one.pieces.push_back(piece);
    groups_.push_back(std::move(one));
  }
}

std::size_t RoomAside::states_of(std::size_t piece) const {
  return rules_.table().start[piece] == rules_.table().goal[piece] ? 2 : 3;
}

// Whatever can be done can be undone, so the stages are counted out from the goal.
void RoomAside::count_out(Group& group) const {
  const MoveTable& table = rules_.table();
  const auto spot_of = [&](std::size_t piece, std::size_t state) {
    return state == at_start ? table.start[piece] : table.goal[piece];
  };
  std::vector<std::size_t> open{0};
  group.moves[0] = 0;
  std::vector<std::size_t> state(group.pieces.size());
  for (std::size_t next = 0; next < open.size(); ++next) {
    const std::size_t stage = open[next];
    SpotSet taken;
    for (std::size_t i = 0; i < group.pieces.size(); ++i) {
      state[i] = stage / group.weight[i] % states_of(group.pieces[i]);
      if (state[i] != aside) taken.set(spot_of(group.pieces[i], state[i]));
    }
    for (std::size_t i = 0; i < group.pieces.size(); ++i) {
      const std::size_t piece = group.pieces[i];
      const auto free_at = [&](std::size_t to) {
        if (to == aside) return true;
        const std::size_t spot = spot_of(piece, to);
        return rules_.is_open(spot, taken) && (rules_.needed_by(spot) & taken).none() &&
               (table.spots[spot].needs & ~taken).none();
      };
      if (!free_at(state[i])) continue;
      for (std::size_t to = 0; to < states_of(piece); ++to) {
        const std::size_t other = stage + to * group.weight[i] - state[i] * group.weight[i];
        if (to == state[i] || group.moves[other] != never || !free_at(to)) continue;
        group.moves[other] = static_cast<std::uint16_t>(group.moves[stage] + 1);
        open.push_back(other);
      }
    }
  }
}

std::size_t RoomAside::stage_of(const Group& group, const std::vector<std::size_t>& at) const {
  const MoveTable& table = rules_.table();
  std::size_t stage = 0;
  for (std::size_t i = 0; i < group.pieces.size(); ++i) {
    const std::size_t piece = group.pieces[i];
    const std::size_t state = at[piece] == table.goal[piece]    ? at_goal
                              : at[piece] == table.start[piece] ? at_start
                                                                : aside;
    stage += state * group.weight[i];
  }
  return stage;
}

std::size_t RoomAside::at_least(const std::vector<std::size_t>& at) const {
  std::size_t sum = 0;
  for (const Group& one : groups_) {
    if (one.moves.empty()) {
      for (const std::size_t piece : one.pieces) sum += at[piece] != rules_.table().goal[piece] ? 1U : 0U;
      continue;
    }
    const std::uint16_t moves = one.moves[stage_of(one, at)];
    if (moves == never) return never;
    sum += moves;
  }
  return sum;
}

bool RoomAside::counted_out() const {
  return std::ranges::none_of(groups_, [](const Group& one) { return one.moves.empty(); });
}

std::vector<std::size_t> RoomAside::delayed() const {
  const MoveTable& table = rules_.table();
  std::vector<std::size_t> pieces;
  for (const Group& one : groups_) {
    const auto away = static_cast<std::size_t>(std::ranges::count_if(
        one.pieces, [&](std::size_t piece) { return table.start[piece] != table.goal[piece]; }));
    if (one.moves.empty() || one.moves[stage_of(one, table.start)] > away)
      pieces.insert(pieces.end(), one.pieces.begin(), one.pieces.end());
  }
  std::ranges::sort(pieces);
  return pieces;
}

std::vector<std::size_t> RoomAside::stuck() const {
  std::vector<std::size_t> pieces;
  for (const Group& one : groups_)
    if (!one.moves.empty() && one.moves[stage_of(one, rules_.table().start)] == never)
      pieces.insert(pieces.end(), one.pieces.begin(), one.pieces.end());
  std::ranges::sort(pieces);
  return pieces;
}

}  // namespace berthwright

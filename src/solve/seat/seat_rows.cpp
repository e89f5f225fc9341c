#include "solve/seat/seat_rows.h"

#include <algorithm>

#include "solve/seat/seat_frame.h"

namespace berthwright {

namespace {

constexpr Length in_one_row = Length::inches(1, 2);
constexpr Length in_one_line = 1_in;

bool belongs_to_a_bed(const Plan& plan, const Arrangement& arrangement, const PieceId& piece) {
  return std::ranges::any_of(plan->beds, [&](const Bed& bed) {
    return bed.configuration == arrangement.configuration->id &&
           std::ranges::find(bed.pieces, piece) != bed.pieces.end();
  });
}

// Other pieces lie flat on more than half of it.
bool is_covered(const Arrangement& arrangement, const Placed& cushion) {
  Area covered;
  for (const Placed& thing : arrangement.things)
    if (thing.piece != nullptr && thing.pose->manner == Pose::Manner::flat &&
        std::ranges::find(thing.carried_by, cushion.id) != thing.carried_by.end())
      covered += common(thing.solid.outline(), cushion.solid.outline()).area();
  return covered + covered > cushion.solid.outline().area();
}

std::vector<Sitting> cushions_to_sit_on(const Plan& plan, const Arrangement& arrangement) {
  std::vector<Sitting> found;
  for (const Placed& thing : arrangement.things) {
    if (thing.piece == nullptr || thing.piece->kind != Piece::Kind::cushion) continue;
    if (thing.pose->manner != Pose::Manner::flat || thing.solid.top() < lowest_seat) continue;
    if (belongs_to_a_bed(plan, arrangement, thing.piece->id) || is_covered(arrangement, thing)) continue;
    found.push_back({&thing, facing_of(plan, arrangement, thing)});
  }
  return found;
}

bool side_by_side(const Sitting& a, const Sitting& b) {
  if (!a.facing.faces || a.facing.faces != b.facing.faces) return false;
  if (abs(a.cushion->solid.top() - b.cushion->solid.top()) > in_one_row) return false;
  const SeatFrame frame(*a.facing.faces);
  const Rect one = frame.in(a.cushion->solid.outline()).bounds();
  const Rect other = frame.in(b.cushion->solid.outline()).bounds();
  const Length apart = std::max(one.low.y, other.low.y) - std::min(one.high.y, other.high.y);
  return abs(one.high.x - other.high.x) <= in_one_line && abs(apart) <= in_one_line;
}

}  // namespace

std::vector<SeatRow> seat_rows(const Plan& plan, const Arrangement& arrangement) {
  std::vector<Sitting> cushions = cushions_to_sit_on(plan, arrangement);
  std::vector<SeatRow> rows;
  while (!cushions.empty()) {
    SeatRow row{cushions.front()};
    cushions.erase(cushions.begin());
    for (std::size_t next = 0; next < row.size(); ++next) {
      const Sitting beside = row[next];  // by value: the row grows
      const auto joins = [&](const Sitting& other) { return side_by_side(beside, other); };
      std::ranges::copy_if(cushions, std::back_inserter(row), joins);
      std::erase_if(cushions, joins);
    }
    std::ranges::sort(row, {}, &Sitting::cushion);  // things stand in one list, in the order they are laid
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace berthwright

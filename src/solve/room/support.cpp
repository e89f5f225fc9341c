#include <berthwright/solve/room/support.h>

#include <algorithm>

#include "solve/room/balance.h"
#include "solve/room/bearing.h"
#include "solve/room/free_span.h"
#include "solve/room/unsupported.h"

namespace berthwright {

namespace {

bool lies_flat(const Placed& thing) {
  return thing.piece != nullptr && thing.pose->manner == Pose::Manner::flat;
}
bool is_board(const Placed& thing) {
  return thing.piece->kind == Piece::Kind::board || thing.piece->kind == Piece::Kind::table;
}

BoardSupport::Held held(const std::vector<Bearer>& bearers) {
  if (bearers.empty()) return BoardSupport::Held::at_height;
  const bool legs_alone = std::ranges::all_of(bearers, &Bearer::is_leg);
  return legs_alone && bearers.size() < 3 ? BoardSupport::Held::on_legs : BoardSupport::Held::lies;
}

BoardSupport support_of_board(const Plan& plan, const Arrangement& arrangement, const Placed& piece) {
  const std::vector<Bearer> bearers = bearers_of(arrangement, piece);
  const Region& outline = piece.solid.outline();
  BoardSupport support;
  support.piece = piece.id;
  support.held = held(bearers);
  support.underside = piece.solid.base();
  support.bearing = common(outline, united_tops(bearers));
  support.weight = piece.piece->weight;
  if (!support.weight) support.weight = plywood_weight(*piece.piece);
  add_balance(outline, support);
  support.sides = sides_of(plan, arrangement, piece, bearers);
  support.over_length = free_span(piece, support.bearing, Piece::Grain::along_length);
  support.over_width = free_span(piece, support.bearing, Piece::Grain::along_width);
  return support;
}

}  // namespace

const BoardSupport* Support::board(std::string_view piece) const {
  const auto found = std::ranges::find(boards, piece, &BoardSupport::piece);
  return found == boards.end() ? nullptr : &*found;
}

Support support_of(const Plan& plan, const Arrangement& arrangement) {
  Support support;
  for (const Placed& thing : arrangement.things) {
    if (!lies_flat(thing)) continue;
    if (thing.is_soft())
      support.cushions.push_back(support_of_cushion(arrangement, thing));
    else if (is_board(thing))
      support.boards.push_back(support_of_board(plan, arrangement, thing));
  }
  return support;
}

}  // namespace berthwright

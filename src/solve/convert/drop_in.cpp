#include <berthwright/solve/convert/drop_in.h>

#include <algorithm>
#include <stdexcept>

#include "exact/required.h"
#include "solve/convert/sliding_plane.h"

namespace berthwright {
namespace {

/// What is nearest to one side of a board.
struct NearestThing {
  std::optional<Length> away;
  std::string id;
  void take(Length distance, const std::string& thing) {
    if (!away || distance < *away) away = distance, id = thing;
  }
};

/// Along one direction.
struct BoardNeighbours {
  NearestThing before;
  NearestThing behind;
};

bool bears(const DropIn& board, const Placed& thing) {
  return std::ranges::find(board.ledges, thing.id) != board.ledges.end();
}

// Beyond a line in the middle of the board, so that what it reaches into counts as well.
void look(const Placed& board, const DropIn& found, const Placed& thing, bool along,
          BoardNeighbours& beside) {
  const Rect own = board.solid.outline().bounds();
  const bool same_height = thing.solid.base() < board.solid.top() && board.solid.base() < thing.solid.top();
  if (thing.fixture == nullptr || thing.is_curtain() || !same_height || bears(found, thing)) return;
  for (const Rect& rect : rectangles_over(thing.solid.outline())) {
    const bool in_line = along ? rect.low.y < own.high.y && own.low.y < rect.high.y
                               : rect.low.x < own.high.x && own.low.x < rect.high.x;
    if (!in_line) continue;
    const Length low = along ? rect.low.x : rect.low.y, high = along ? rect.high.x : rect.high.y;
    const Length own_low = along ? own.low.x : own.low.y, own_high = along ? own.high.x : own.high.y;
    const Length here = std::min(own_high - low, high - own_low);
    const Length other = along ? std::min(own.high.y - rect.low.y, rect.high.y - own.low.y)
                               : std::min(own.high.x - rect.low.x, rect.high.x - own.low.x);
    // What the board reaches into counts on the side by which it does so least.
    if (here > Length{} && (here > other || (here == other && !along))) continue;
    if (low + high < own_low + own_high)
      beside.before.take(own_low - high, thing.id);
    else
      beside.behind.take(low - own_high, thing.id);
  }
}

DropIn::Direction direction_of(const Plan& plan, const Arrangement& arrangement, const Placed& board,
                               const DropIn& found, bool along) {
  const Rect own = board.solid.outline().bounds();
  const Rect room = plan->interior.outline.polygon().bounds();
  BoardNeighbours beside;
  beside.before.take(along ? own.low.x - room.low.x : own.low.y - room.low.y, "room");
  beside.behind.take(along ? room.high.x - own.high.x : room.high.y - own.high.y, "room");
  for (const Placed& thing : arrangement.things) look(board, found, thing, along, beside);
  DropIn::Direction direction;
  direction.along = along;
  direction.size = along ? own.width() : own.height();
  direction.before = beside.before.away;
  direction.behind = beside.behind.away;
  direction.thing_before = beside.before.id;
  direction.thing_behind = beside.behind.id;
  direction.diagonal = SquaredLength::of(direction.size).plus_square_of(board.solid.height()).ceiling();
  const Length gap = required(direction.gap());
  if (gap < direction.size) direction.tilt = least_tilt(direction.size, board.solid.height(), gap);
  return direction;
}

}  // namespace

std::optional<Length> DropIn::Direction::gap() const {
  return before && behind ? std::optional(size + *before + *behind) : std::nullopt;
}

std::optional<Hold> fastened_at(const Plan& plan, const PiecePlace& place) {
  if (place.kind != PiecePlace::Kind::posed) return std::nullopt;
  const Piece& piece = *plan.piece(place.pose.piece.text());
  const bool on_ledges = std::ranges::any_of(place.carried_by, [&](const std::string& carrier) {
    const Fixture* fixture = plan.fixture(carrier);
    return fixture != nullptr && fixture->kind == Fixture::Kind::ledge;
  });
  const bool is_board = piece.kind == Piece::Kind::table || piece.kind == Piece::Kind::board;
  const bool is_leg = piece.kind == Piece::Kind::leg;
  if (!piece.held_by || !((is_board && on_ledges) || is_leg)) return std::nullopt;
  switch (*piece.held_by) {
    case Hold::lip:
    case Hold::block:
      return std::nullopt;
    case Hold::strap:
      return is_leg ? std::nullopt : piece.held_by;
    case Hold::snap:
    case Hold::hook_and_loop:
    case Hold::latch:
    case Hold::hook:
    case Hold::screws:
      return piece.held_by;
  }
  throw std::logic_error("Hold out of range");
}

std::optional<int> least_tilt(Length length, Length thickness, Length gap) {
  for (int degrees = 0; degrees <= 90; ++degrees) {
    const Turn turn = Turn::degrees(degrees * std::int64_t{1'000'000});
    const Int128 wide = Int128{length.ticks()} * turn.cosine() + Int128{thickness.ticks()} * turn.sine();
    if (wide <= Int128{gap.ticks()} * turn.unit()) return degrees;
  }
  return std::nullopt;
}

std::vector<DropIn> drop_ins(const Plan& plan, const Arrangement& arrangement) {
  std::vector<DropIn> found;
  for (const Placed& thing : arrangement.things) {
    const bool is_board = thing.piece != nullptr && (thing.piece->kind == Piece::Kind::table ||
                                                     thing.piece->kind == Piece::Kind::board);
    if (!is_board || thing.pose->manner != Pose::Manner::flat) continue;
    DropIn one;
    one.board = thing.id;
    one.configuration = arrangement.configuration->id;
    one.held_by = thing.piece->held_by;
    for (const std::string& carrier : thing.carried_by) {
      const Fixture* fixture = plan.fixture(carrier);
      if (fixture != nullptr && fixture->kind == Fixture::Kind::ledge) one.ledges.push_back(carrier);
    }
    if (one.ledges.empty()) continue;
    one.directions = {direction_of(plan, arrangement, thing, one, true),
                      direction_of(plan, arrangement, thing, one, false)};
    found.push_back(std::move(one));
  }
  return found;
}

}  // namespace berthwright

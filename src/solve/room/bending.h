#pragma once

#include <optional>
#include <string>

#include <berthwright/plan/panel.h>
#include <berthwright/solve/finding.h>
#include <berthwright/solve/room/support.h>

namespace berthwright {

/// A board over one opening, as a strip that is borne at its two ends and free to turn there.
struct SpannedBoard {
  Length clear;            ///< free span between the bearings
  Length carried;          ///< how much of the board, square to the span, bears at both ends
  Length open;             ///< how much of it has the opening beneath; the part that bears carries it all
  bool free_edge = false;  ///< a side that runs along the span bears on nothing
};

/// What a load does to a board: both rounded up.
struct Bending {
  Length sag;    ///< how far it bends down in the middle of the span
  Portion used;  ///< the moment, as a part of what the panel may carry
};

/// The board as it bridges `span`, one of its own. A side along the span is free where as much of it as half
/// the span bears on nothing.
SpannedBoard spanned(const BoardSupport& support, const FreeSpan& span);
/// The area whose load leans on what bears `side`: half the span at an end of it, as wide as the board is
/// there; at a side along the span a triangle half a span deep.
Area leaning_on(const BearingSide& side, const SpannedBoard& board, const FreeSpan& span);

/// A bed may bend under its sleepers by no more than the span divided by this.
inline constexpr int sag_divisor = 240;

/// 30 lb per sq ft all over. `carried`, `clear` and the panel's values are positive; no failure.
Bending under_sleepers(const SpannedBoard& board, const StripValues& strip);
/// 250 lb in the middle of the span, shared by 24 in of the board, by 12 in at a free edge, and by no more
/// than what is carried.
Bending under_knee(const SpannedBoard& board, const StripValues& strip);

/// How much of the board shares the load of a knee.
Length width_under_knee(const SpannedBoard& board);

/// The questions asked of a board.
enum class Bent { too_far_by_sleepers, too_hard_by_sleepers, too_hard_by_knee };

bool is_met(Bent question, const SpannedBoard& board, const StripValues& strip);
/// The longest span, up to the board's own, over which the question is met; rounded down to the tick.
Length longest_span(Bent question, const SpannedBoard& board, const StripValues& strip);
/// Name of the first panel of the same make, in the order of the tables, that is stronger and meets the
/// question with its grain the same way. Empty: there is none.
std::string next_stronger(Bent question, const SpannedBoard& board, const Panel& panel, bool along);

}  // namespace berthwright

#include "solve/room/bending.h"

#include <algorithm>
#include <stdexcept>

#include "exact/required.h"

namespace berthwright {
namespace {

// IRC Table R301.5: sleeping rooms, lb per sq ft.
constexpr double sleepers_psf = 30;
// Common practice: a grown person on one knee, shared by 2 ft of the board's width.
constexpr double knee_pounds = 250;
constexpr Length knee_width = 24_in;
constexpr double inches_per_foot = 12;

double in_inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

/// The longer of an edge's two extents: the edges of boards are square to the room or nearly so.
Length extent(const Edge& edge) {
  return std::max(abs(edge.to.x - edge.from.x), abs(edge.to.y - edge.from.y));
}

bool runs_along(const BearingSide& side, const FreeSpan& span) {
  const Vector edge = side.edge.to - side.edge.from;
  const Vector way = span.to - span.from;
  const Int128 along = Int128{edge.x.ticks()} * way.x.ticks() + Int128{edge.y.ticks()} * way.y.ticks();
  const Int128 square = Int128{edge.x.ticks()} * way.y.ticks() - Int128{edge.y.ticks()} * way.x.ticks();
  return (along < 0 ? -along : along) > (square < 0 ? -square : square);
}

std::int64_t up(double value) {
  const auto whole = static_cast<std::int64_t>(value);
  return static_cast<double>(whole) < value ? whole + 1 : whole;
}

Bending bending(double sag_inches, double moment, const StripValues& strip) {
  return {Length::from_ticks(up(sag_inches * ticks_per_inch)),
          Portion{up(moment * 1000 / static_cast<double>(strip.strength))}};
}

}  // namespace

Length width_under_knee(const SpannedBoard& board) {
  return std::min(board.free_edge ? half(knee_width) : knee_width, board.carried);
}

SpannedBoard spanned(const BoardSupport& support, const FreeSpan& span) {
  SpannedBoard board{span.clear, span.carried, span.open, false};
  for (const Wall wall : {Wall::front, Wall::rear, Wall::left, Wall::right}) {
    Length free;
    for (const BearingSide& side : support.sides)
      if (side.toward == wall && runs_along(side, span)) free += extent(side.edge) - side.borne;
    if (2 * free >= span.clear) board.free_edge = true;
  }
  return board;
}

Area leaning_on(const BearingSide& side, const SpannedBoard& board, const FreeSpan& span) {
  const Length width = std::max(board.carried, board.open);
  const Length deep = half(board.clear + one_tick);
  return Area::rectangle(deep, runs_along(side, span) ? std::min(deep, width) : width);
}

Bending under_sleepers(const SpannedBoard& board, const StripValues& strip) {
  const double span = in_inches(board.clear);
  const double crowding = std::max(1.0, in_inches(board.open) / in_inches(board.carried));
  const double load = sleepers_psf * crowding / inches_per_foot;  // lb per inch of a strip 1 ft wide
  const double sag = 5 * load * span * span * span * span / (384 * static_cast<double>(strip.stiffness));
  return bending(sag, load * span * span / 8, strip);
}

Bending under_knee(const SpannedBoard& board, const StripValues& strip) {
  const double span = in_inches(board.clear);
  const double load =
      knee_pounds * inches_per_foot / in_inches(width_under_knee(board));  // lb on a strip 1 ft wide
  const double sag = load * span * span * span / (48 * static_cast<double>(strip.stiffness));
  return bending(sag, load * span / 4, strip);
}

bool is_met(Bent question, const SpannedBoard& board, const StripValues& strip) {
  constexpr Portion whole{1000};
  switch (question) {
    case Bent::too_far_by_sleepers:
      return under_sleepers(board, strip).sag * sag_divisor <= board.clear;
    case Bent::too_hard_by_sleepers:
      return under_sleepers(board, strip).used.thousandths <= whole.thousandths;
    case Bent::too_hard_by_knee:
      return under_knee(board, strip).used.thousandths <= whole.thousandths;
  }
  throw std::logic_error("Bent out of range");
}

Length longest_span(Bent question, const SpannedBoard& board, const StripValues& strip) {
  if (is_met(question, board, strip)) return board.clear;
  Length met;
  Length not_met = board.clear;
  while (not_met - met > one_tick) {
    SpannedBoard shorter = board;
    shorter.clear = half(met + not_met);
    (is_met(question, shorter, strip) ? met : not_met) = shorter.clear;
  }
  return met;
}

std::string next_stronger(Bent question, const SpannedBoard& board, const Panel& panel, bool along) {
  const StripValues own = along ? panel.along : panel.across;
  for (const Panel& listed : all_panels()) {
    // Of a name without its plies nothing but the least may be expected.
    const Panel other = required(panel_named(listed.name, std::nullopt));
    const StripValues values = along ? other.along : other.across;
    if (other.source != panel.source) continue;
    if (values.strength > own.strength && is_met(question, board, values)) return other.name;
  }
  return {};
}

}  // namespace berthwright

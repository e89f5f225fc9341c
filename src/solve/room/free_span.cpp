#include "solve/room/free_span.h"

#include <algorithm>

#include <berthwright/geometry/placement.h>

#include "solve/room/columns.h"

namespace berthwright {

namespace {

constexpr Length narrowest_opening = 1_in;

/// The opening between two bearings on one line.
struct Hollow {
  Length along;
  Length low;
  Length high;
  Length width() const { return high - low; }
};

Hollow wider(const Hollow& a, const Hollow& b) { return b.width() > a.width() ? b : a; }

/// What one column of the piece says of the span.
struct Crossing {
  bool open = false;
  std::optional<Hollow> widest;  ///< between two bearings; none: not carried at both ends
};

// The wider of the two ends of a column; the middle of one that is as wide all along.
Hollow hollow_between(const Column& piece, const Trapezoid& below, const Trapezoid& above) {
  const Hollow from{piece.from, below.high_from, above.low_from};
  const Hollow to{piece.to, below.high_to, above.low_to};
  if (from.low == to.low && from.high == to.high) return {half(piece.from + piece.to), from.low, from.high};
  return wider(from, to);
}

bool lies_in(const Trapezoid& inner, const Trapezoid& outer) {
  return inner.low_from + inner.low_to >= outer.low_from + outer.low_to - 2 * one_tick &&
         inner.high_from + inner.high_to <= outer.high_from + outer.high_to + 2 * one_tick;
}

// Half the sum of the lengths at both ends.
Length mean_length(const Trapezoid& s) { return half(s.high_from - s.low_from + s.high_to - s.low_to); }

Crossing crossing_of(const Column& piece, const Column& bearing) {
  Crossing crossing;
  for (const Trapezoid& across : piece.stretches) {
    Length uncovered = mean_length(across);
    const Trapezoid* before = nullptr;
    for (const Trapezoid& borne : bearing.stretches) {
      if (!lies_in(borne, across)) continue;
      uncovered -= mean_length(borne);
      if (before != nullptr) {
        const Hollow opening = hollow_between(piece, *before, borne);
        if (opening.width() >= narrowest_opening)
          crossing.widest = crossing.widest ? wider(*crossing.widest, opening) : opening;
      }
      before = &borne;
    }
    crossing.open = crossing.open || crossing.widest || uncovered >= narrowest_opening;
  }
  return crossing;
}

}  // namespace

std::optional<FreeSpan> free_span(const Placed& piece, const Region& bearing, Piece::Grain across) {
  if (bearing.empty()) return std::nullopt;
  // Turned so that the direction looked along is upright.
  const Turn turn = piece.pose->placement.turn;
  const Turn upright = Turn::quarters(across == Piece::Grain::along_length ? 1 : 0);
  const Vector origin = bearing.bounds().low - Point{};
  const auto seen = [&](const Region& region) {
    return Placement{
        false, upright, {}}(Placement{false, turn.reversed(), {}}(moved(region, {-origin.x, -origin.y})));
  };
  const auto unseen = [&](Point point) {
    return Placement{false, turn, origin}(Placement{false, upright.reversed(), {}}(point));
  };
  const Region outline = seen(piece.solid.outline());
  const Region borne = seen(bearing);
  const std::vector<Length> cuts = cuts_through({&outline, &borne});
  const std::vector<Column> of_piece = columns_of(outline, cuts);
  const std::vector<Column> of_bearing = columns_of(borne, cuts);
  std::optional<Hollow> widest;
  FreeSpan span{across, {}, {}, {}, {}, {}};
  for (std::size_t i = 0; i < of_piece.size(); ++i) {
    const Crossing crossing = crossing_of(of_piece[i], of_bearing[i]);
    const Length width = of_piece[i].to - of_piece[i].from;
    if (crossing.open) span.open += width;
    if (!crossing.widest) continue;
    span.carried += width;
    widest = widest ? wider(*widest, *crossing.widest) : *crossing.widest;
  }
  if (!widest) return std::nullopt;
  span.clear = widest->width();
  span.from = unseen({widest->along, widest->low});
  span.to = unseen({widest->along, widest->high});
  return span;
}

const FreeSpan* BoardSupport::span() const {
  const auto bears_all_along = [](const FreeSpan& s) { return 10 * s.carried >= 9 * s.open; };
  if (!over_length || !over_width) return over_length ? &*over_length : over_width ? &*over_width : nullptr;
  const FreeSpan& shorter = over_width->clear < over_length->clear ? *over_width : *over_length;
  const FreeSpan& longer = &shorter == &*over_width ? *over_length : *over_width;
  if (bears_all_along(longer) == bears_all_along(shorter))
    return bears_all_along(longer) ? &shorter : &longer;
  return bears_all_along(longer) ? &longer : &shorter;
}

}  // namespace berthwright

#include "oracle/nest_apart.h"

#include <algorithm>

namespace berthwright::oracle {
namespace {

__extension__ typedef __int128 Wide;

struct BorderPiece {
  NestCorner from;
  NestCorner to;
};

Wide side_of_line(const BorderPiece& e, NestCorner p) {
  return Wide{e.to.x - e.from.x} * (p.y - e.from.y) - Wide{e.to.y - e.from.y} * (p.x - e.from.x);
}

bool is_in_box(const BorderPiece& e, NestCorner p) {
  return std::min(e.from.x, e.to.x) <= p.x && p.x <= std::max(e.from.x, e.to.x) &&
         std::min(e.from.y, e.to.y) <= p.y && p.y <= std::max(e.from.y, e.to.y);
}

bool is_on(const BorderPiece& e, NestCorner p) { return side_of_line(e, p) == 0 && is_in_box(e, p); }

std::vector<BorderPiece> pieces_of(const NestRings& rings) {
  std::vector<BorderPiece> result;
  for (const auto& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i) result.push_back({ring[i], ring[(i + 1) % ring.size()]});
  return result;
}

bool they_cross(const BorderPiece& e, const BorderPiece& f) {
  const auto opposite = [](Wide a, Wide b) { return (a < 0 && b > 0) || (a > 0 && b < 0); };
  return opposite(side_of_line(e, f.from), side_of_line(e, f.to)) &&
         opposite(side_of_line(f, e.from), side_of_line(f, e.to));
}

// All in twice the ticks, so that middles of pieces are whole.
NestRings doubled(NestRings rings) {
  for (auto& ring : rings)
    for (NestCorner& p : ring) p = {2 * p.x, 2 * p.y};
  return rings;
}

std::vector<BorderPiece> cut_at(const std::vector<BorderPiece>& pieces, const NestRings& corners) {
  std::vector<BorderPiece> result;
  for (const BorderPiece& e : pieces) {
    std::vector<NestCorner> on{e.from, e.to};
    for (const auto& ring : corners)
      for (const NestCorner& p : ring)
        if (is_on(e, p)) on.push_back(p);
    std::ranges::sort(on);
    on.erase(std::unique(on.begin(), on.end()), on.end());
    if (e.to < e.from) std::ranges::reverse(on);
    for (std::size_t i = 0; i + 1 < on.size(); ++i) result.push_back({on[i], on[i + 1]});
  }
  return result;
}

enum class Lies { within, without, along, against };

// Of a piece that meets the border of `others` at its ends only, or all along it.
Lies how_lies(const BorderPiece& piece, const std::vector<BorderPiece>& others) {
  const NestCorner p{(piece.from.x + piece.to.x) / 2, (piece.from.y + piece.to.y) / 2};
  bool within = false;
  for (const BorderPiece& e : others) {
    if (is_on(e, p)) {
      const Wide same = Wide{e.to.x - e.from.x} * (piece.to.x - piece.from.x) +
                        Wide{e.to.y - e.from.y} * (piece.to.y - piece.from.y);
      return same > 0 ? Lies::along : Lies::against;
    }
    if ((e.from.y <= p.y) == (e.to.y <= p.y)) continue;
    const bool rises = e.from.y < e.to.y;
    if ((side_of_line(e, p) > 0) == rises) within = !within;
  }
  return within ? Lies::within : Lies::without;
}

bool enters(const std::vector<BorderPiece>& pieces, const std::vector<BorderPiece>& others) {
  return std::ranges::any_of(pieces, [&](const BorderPiece& piece) {
    const Lies lies = how_lies(piece, others);
    return lies == Lies::within || lies == Lies::along;
  });
}

// Squared distance from `p` to the piece at least `gap` squared.
bool is_off(const BorderPiece& e, NestCorner p, std::int64_t gap) {
  const Wide ux = e.to.x - e.from.x;
  const Wide uy = e.to.y - e.from.y;
  const Wide along = ux * (p.x - e.from.x) + uy * (p.y - e.from.y);
  const Wide length = ux * ux + uy * uy;
  const Wide needed = Wide{gap} * gap;
  if (along > 0 && along < length) {
    // side^2 / length >= gap^2, without leaving 128 bits: side / gap >= gap length / side would round.
    const Wide side = side_of_line(e, p);
    return side * side >= needed * length;
  }
  const NestCorner end = along <= 0 ? e.from : e.to;
  return Wide{p.x - end.x} * (p.x - end.x) + Wide{p.y - end.y} * (p.y - end.y) >= needed;
}

}  // namespace

bool nest_interiors_meet(const NestRings& a, const NestRings& b) {
  const NestRings first = doubled(a);
  const NestRings second = doubled(b);
  const std::vector<BorderPiece> ours = cut_at(pieces_of(first), second);
  const std::vector<BorderPiece> theirs = cut_at(pieces_of(second), first);
  for (const BorderPiece& e : ours)
    for (const BorderPiece& f : theirs)
      if (they_cross(e, f)) return true;
  return enters(ours, theirs) || enters(theirs, ours);
}

bool nest_borders_apart(const NestRings& a, const NestRings& b, std::int64_t gap) {
  for (const BorderPiece& e : pieces_of(a))
    for (const BorderPiece& f : pieces_of(b))
      if (they_cross(e, f) || !is_off(e, f.from, gap) || !is_off(e, f.to, gap) || !is_off(f, e.from, gap) ||
          !is_off(f, e.to, gap))
        return false;
  return true;
}

bool nest_lies_in(const NestRings& part, NestCorner low, NestCorner high) {
  for (const auto& ring : part)
    for (const NestCorner& p : ring)
      if (p.x < low.x || p.y < low.y || p.x > high.x || p.y > high.y) return false;
  return true;
}

}  // namespace berthwright::oracle

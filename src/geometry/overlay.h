#pragma once

#include <span>
#include <vector>

#include "geometry/strands.h"

namespace berthwright {

/// The windings on the two banks of a strand.
struct Banks {
  Winding left;
  Winding right;
};

/// The windings beside each strand, in the order given. The strands are noded. O(n log n + n x components).
std::vector<Banks> windings(std::span<const Strand> noded);

/// The region bounded by edges that meet in common ends only, its interior on their left and its exterior on
/// their right. Rings are split where they touch themselves, so each is simple; canonical.
/// std::logic_error when the edges bound nothing.
Region bounded_by(std::span<const Edge> edges);

/// The region of all places whose winding satisfies `inside`.
template <class Inside>
Region overlaid(std::vector<Strand> strands, Inside inside) {
  const std::vector<Strand> pieces = noded(std::move(strands));
  const std::vector<Banks> banks = windings(pieces);
  std::vector<Edge> border;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const bool left = inside(banks[i].left);
    const bool right = inside(banks[i].right);
    if (left && !right) border.push_back({pieces[i].low, pieces[i].high});
    if (right && !left) border.push_back({pieces[i].high, pieces[i].low});
  }
  return bounded_by(border);
}

/// The places that the edges wind round counter-clockwise more often than clockwise.
Region wound_round(std::span<const Edge> edges);

}  // namespace berthwright

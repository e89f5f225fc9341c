#pragma once

#include <berthwright/solve/bed/lying_place.h>

#include "geometry/inscribed.h"

namespace berthwright {

/// Looks for places under the feet rule in one direction and its opposite.
class FootSearch {
 public:
  /// The spaces are turned so that the direction becomes the x axis, corners rounded once to the lattice.
  FootSearch(const LyingSpace& space, std::span<const Length> shoulders, Turn turn);

  /// The longest place of more than `floor`, without its region; none where there is none or where rounding
  /// leaves it not certainly inside. O(edges^2 log edges) typical.
  std::optional<LyingPlace> longer_than(Length floor) const;

 private:
  struct Spot;
  void try_strip(Length low, Spot& best) const;
  std::optional<Length> reach(Length slot, Length width, Length end, bool ahead, Length& foot_low) const;
  std::vector<Length> strips() const;
  std::optional<LyingPlace> settled(const Spot& spot) const;

  Turn turn_;
  std::vector<Length> shoulders_;
  Length width_;
  std::vector<Edge> head_;  ///< border as it is
  std::vector<Edge> foot_;
  std::vector<Edge> turned_head_;
  std::vector<Edge> turned_foot_;
  FreeStretch farthest_{};  ///< ends of the foot space
  bool slanted_ = false;
};

}  // namespace berthwright

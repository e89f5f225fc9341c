#pragma once

#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// An outline with the arcs that some of its edges stand for.
struct Drawn {
  const Region& outline;
  const std::vector<Arc>& arcs;
};
Drawn drawn(const Placed& thing);

/// Chord error that two arcs together may make: what is thinner is no overlap where both edges are arcs.
inline constexpr Length two_arcs_error = Length::millimetres(1, 10);

/// The region without those of its parts that are thinner than `two_arcs_error` and run along arcs of both
/// outlines.
Region without_arc_slivers(const Region& region, const Drawn& a, const Drawn& b);

/// What two outlines share in plan; empty where they only touch.
Region shared_outline(const Drawn& a, const Drawn& b);

}  // namespace berthwright

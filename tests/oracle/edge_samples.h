#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/cover/rim.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright::oracle {

/// What samples see of one stretch of a cushion's edge as it stands in space.
struct SampledEdge {
  bool upright = true;          ///< its face stands upright; else it looks up or down
  bool looks_down = false;      ///< of one that does not stand upright
  double covered = 0;           ///< share of its length, at points a hundredth of it apart
  double out_x = 0, out_y = 0;  ///< the way it looks in plan, of one that stands upright
};

/// Maps the cushion into space by a rotation, as its pose says, with its top panel where it faces when on
/// edge, and tries points up to an inch before the face of the edge. `down`: the side that is down when on
/// edge.
SampledEdge sampled_edge(const Plan& plan, const Arrangement& arrangement, const Placed& self,
                         const RimEdge& edge, Wall down);

}  // namespace berthwright::oracle

#pragma once

#include "solve/place/nest_layout.h"

namespace berthwright {

/// A first layout without overlap: the largest part first, each as far left as it goes at a corner of what
/// lies already. At most so many full bays as `bays` has; each part must fit one, else std::logic_error.
struct NestBuilt {
  NestGround ground;
  NestSpots spots;
};
NestBuilt nest_built(NestPairs& pairs, const NestGround& bays);

/// Spots of a layout without overlap, each part in turn moved to the left as far as it lies free, a few
/// times.
NestSpots pushed_left(NestPairs& pairs, const NestGround& ground, NestSpots spots);

/// The shortest ground of these bays that holds the spots.
NestGround closed_up(const NestTask& task, NestGround ground, const NestSpots& spots);

/// Indices of parts, the largest area first.
std::vector<std::size_t> largest_first(const NestTask& task);

}  // namespace berthwright

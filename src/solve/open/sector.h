#pragma once

#include <cstdint>

#include <berthwright/geometry/polygon.h>

namespace berthwright {

/// What a leaf of length `radius` sweeps that lies along x and turns about the origin toward y, by at most
/// half a turn: the sector with its arc covered from outside, by at most one part in 100,000 of the radius;
/// reaches exactly `radius` along the axes. `radius` and `microdegrees` are positive. The edge in which it
/// ends is rounded to the nearest tick; but for that a wider sector contains a narrower one.
Polygon sector_swept(Length radius, std::int64_t microdegrees);

}  // namespace berthwright

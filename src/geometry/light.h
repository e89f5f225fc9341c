#pragma once

#include <optional>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// Everything to the left of a directed line, within a frame that holds the line's point.
Region left_of(Point through, Vector along, const Rect& frame);

/// The part of `lit`, a part of `free`, that a lamp at `eye` in the closed region `free` shines on; the
/// border of `free` stops no light along itself. Rounded as Booleans are.
Region seen_from(Point eye, const Region& lit, const Region& free);

}  // namespace berthwright

#pragma once

#include <span>

#include <berthwright/geometry/solid.h>

#include "view/scale.h"

namespace berthwright {

/// A view from above and from the left wall: lengths along the trailer stay level and true to scale, depths
/// lean to the right by three tenths, depths and heights rise by six tenths of themselves.
struct RaisedView {
  std::int64_t ratio = 20;
  PaperPoint origin;  ///< where x = 0, y = 0 stands on the floor

  PaperPoint operator()(Point plan, Length z) const;
};
/// Its own words for those who want to measure in it.
inline constexpr std::string_view raised_view_words =
    "Raised views look down from the left wall. Along the room they are to scale; what runs across it or "
    "upward is drawn at six tenths.";

/// One upright prism of such a view and its inks.
struct RaisedThing {
  Region outline;
  Length base;
  Length top;
  Ink side;                    ///< fill of its faces
  Ink lid;                     ///< fill of its top, and lines
  std::vector<Path> on_lid{};  ///< drawn on its top
};

/// What is seen of them, in the order it is painted: in layers between all heights at which something begins
/// or ends, from the floor up; in each layer the faces from the farthest to the nearest, then the tops. Right
/// wherever no two of them share space. Holes of outlines are covered.
std::vector<Path> raised_paths(const RaisedView& view, std::span<const RaisedThing> things);
/// The same, and of each thing where among the paths its first top stands: what comes after it may hide it.
struct RaisedPicture {
  std::vector<Path> paths;
  std::vector<std::size_t> tops;
};
RaisedPicture raised_picture(const RaisedView& view, std::span<const RaisedThing> things);
/// The top of a thing as it is seen from above, nothing being in the way.
PaperRing raised_ring(const RaisedView& view, const Polygon& polygon, Length z);

/// The floor and the edges of the walls behind it, up to `height`.
std::vector<Path> raised_room(const RaisedView& view, const Polygon& room, Length height, Ink ink);

/// The edges of a prism that nothing hides but itself.
std::vector<Path> raised_outline(const RaisedView& view, const Solid& solid, Ink ink);

}  // namespace berthwright

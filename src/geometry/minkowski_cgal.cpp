#include "geometry/minkowski.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/minkowski_sum_2.h>

#include "geometry/guest_rings.h"

namespace berthwright {
namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using GuestRing = CGAL::Polygon_2<Kernel>;
using GuestFace = CGAL::Polygon_with_holes_2<Kernel>;

// Whether a box of the size of `small` fits into `large`.
bool fits(const Rect& small, const Rect& large) {
  return small.width() <= large.width() && small.height() <= large.height();
}

// A hole too small for the tool leaves no trace. CGAL 5.5 would drop such holes too, but it erases them from
// a deque through iterators that the first erasure has made void.
GuestFace guest_face(const Face& face, const Rect& tool) {
  GuestFace result(guest_ring<GuestRing>(face.outer.vertices()));
  for (const Polygon& hole : face.holes) {
    if (!fits(tool, hole.bounds())) continue;
    GuestRing ring = guest_ring<GuestRing>(hole.vertices());
    ring.reverse_orientation();
    result.add_hole(ring);
  }
  return result;
}

}  // namespace

// Without a strategy CGAL takes the reduced convolution; it treats holes.
std::vector<Edge> guest_border_of_swept(const Region& region, const Polygon& polygon) {
  const GuestRing tool = guest_ring<GuestRing>(polygon.vertices());
  std::vector<Edge> border;
  for (const Face& face : region.faces())
    add_rounded_face(border, CGAL::minkowski_sum_2(guest_face(face, polygon.bounds()), tool));
  return border;
}

}  // namespace berthwright

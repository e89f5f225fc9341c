#include "oracle/booleans.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_set_2.h>
#include <iterator>

#include "geometry/guest_rings.h"
#include "oracle/touched_corners.h"

namespace berthwright {
namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using GuestRing = CGAL::Polygon_2<Kernel>;
using GuestFace = CGAL::Polygon_with_holes_2<Kernel>;
using GuestSet = CGAL::Polygon_set_2<Kernel>;

// CGAL lets holes touch other rings at common corners only.
GuestFace guest_face(const Face& face) {
  if (face.holes.empty()) return GuestFace(guest_ring<GuestRing>(face.outer.vertices()));
  const std::vector<Point> corners = corners_of(face);
  GuestFace result(guest_ring<GuestRing>(with_corners_on_edges(face.outer, corners)));
  for (const Polygon& hole : face.holes) {
    GuestRing ring = guest_ring<GuestRing>(with_corners_on_edges(hole, corners));
    ring.reverse_orientation();
    result.add_hole(std::move(ring));
  }
  return result;
}

// Joined as a range: one by one is many times slower. Faces of a region may share edges.
GuestSet guest_set(std::span<const Region> regions) {
  std::vector<GuestFace> faces;
  for (const Region& region : regions)
    for (const Face& face : region.faces()) faces.push_back(guest_face(face));
  GuestSet result;
  result.join(faces.begin(), faces.end());
  return result;
}

std::vector<Edge> rounded_border(const GuestSet& set) {
  std::vector<GuestFace> faces;
  set.polygons_with_holes(std::back_inserter(faces));
  std::vector<Edge> border;
  for (const GuestFace& face : faces) add_rounded_face(border, face);
  return border;
}

}  // namespace

std::vector<Edge> border_of_united(std::span<const Region> regions) {
  return rounded_border(guest_set(regions));
}

std::vector<Edge> border_of_common(const Region& a, const Region& b) {
  GuestSet result = guest_set({&a, 1});
  result.intersection(guest_set({&b, 1}));
  return rounded_border(result);
}

std::vector<Edge> border_of_without(const Region& a, const Region& b) {
  GuestSet result = guest_set({&a, 1});
  result.difference(guest_set({&b, 1}));
  return rounded_border(result);
}

}  // namespace berthwright

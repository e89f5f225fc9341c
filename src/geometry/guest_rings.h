#pragma once

#include <span>
#include <stdexcept>
#include <vector>

#include <berthwright/geometry/region.h>

// Our rings to a guest with exact numbers and back, for any guest whose types are spelled as CGAL's.
namespace berthwright {

/// The nearest tick of a fraction of GMP's, half toward plus infinity. Whole numbers only, no doubles.
template <class Fraction>
Length nearest_tick(const Fraction& value) {
  const auto& below = value.get_den();
  auto doubled = value.get_num();
  doubled = 2 * doubled + below;
  auto ticks = doubled;
  ticks = doubled / (2 * below);
  if (ticks * 2 * below > doubled) --ticks;
  if (!ticks.fits_slong_p()) throw std::logic_error("a corner beyond all lengths");
  return Length::from_ticks(ticks.get_si());
}

/// Ticks fit the 53 bits of a double, so the guest starts from exact corners.
template <class GuestRing>
GuestRing guest_ring(std::span<const Point> corners) {
  GuestRing result;
  for (const Point& p : corners)
    result.push_back({static_cast<double>(p.x.ticks()), static_cast<double>(p.y.ticks())});
  return result;
}

/// Adds the ring's edges, in the guest's direction, each corner rounded once.
template <class GuestRing>
void add_rounded_ring(std::vector<Edge>& border, const GuestRing& ring) {
  std::vector<Point> corners;
  for (auto p = ring.vertices_begin(); p != ring.vertices_end(); ++p)
    corners.push_back({nearest_tick(exact(p->x())), nearest_tick(exact(p->y()))});
  for (std::size_t i = 0; i < corners.size(); ++i)
    border.push_back({corners[i], corners[(i + 1) % corners.size()]});
}

/// Adds all rings of a face; a guest keeps the interior on the left, as we do.
template <class GuestFace>
void add_rounded_face(std::vector<Edge>& border, const GuestFace& face) {
  add_rounded_ring(border, face.outer_boundary());
  for (auto hole = face.holes_begin(); hole != face.holes_end(); ++hole) add_rounded_ring(border, *hole);
}

}  // namespace berthwright

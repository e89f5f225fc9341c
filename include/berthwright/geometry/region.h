#pragma once

#include <span>
#include <vector>

#include <berthwright/geometry/polygon.h>

namespace berthwright {

/// One part of a region whose interior is connected: an outer polygon less its holes. All polygons are simple
/// and counter-clockwise. They may touch: a hole its outer polygon or another hole, a face another face, each
/// at single points only (also in the middle of an edge).
struct Face {
  Polygon outer;
  std::vector<Polygon> holes;
  friend bool operator==(const Face&, const Face&) = default;
};

/// A set of points in plan: the union of faces whose interiors are disjoint, in a canonical order. Closed
/// unless a function says otherwise. Rectilinear regions stay exact. Else results are made on exact
/// fractions, then corners are rounded once to the nearest tick and slanted edges led through corners within
/// half a tick: a border moves by a tick in each axis at most, and faces thinner than that may vanish.
class Region {
 public:
  Region() = default;
  Region(Polygon polygon);  // NOLINT(google-explicit-constructor): a polygon is a region
  Region(const Rect& rect) : Region(Polygon::rectangle(rect)) {}
  /// The caller promises disjoint interiors and holes inside their outer polygons. Faces that share an edge
  /// stay apart (`united` of the region alone joins them), so two such regions may be equal sets but differ.
  static Region from_faces(std::vector<Face> faces);

  std::span<const Face> faces() const& { return faces_; }
  std::span<const Face> faces() const&& =
      delete;  ///< the faces of a temporary would be walked after its death
  bool empty() const { return faces_.empty(); }
  Area area() const;
  /// std::logic_error when empty.
  Rect bounds() const;
  Side side_of(Point point) const;
  /// Each connected part as a region of its own, in canonical order.
  std::vector<Region> parts() const;

  friend bool operator==(const Region&, const Region&) = default;

 private:
  std::vector<Face> faces_;
};

/// A directed boundary edge; the region's interior lies on its left.
struct Edge {
  Point from;
  Point to;
  friend constexpr auto operator<=>(const Edge&, const Edge&) = default;
};
/// All boundary edges, outer polygons counter-clockwise, holes clockwise.
std::vector<Edge> edges(const Region& region);

Region united(std::span<const Region> regions);
Region united(const Region& a, const Region& b);
Region common(const Region& a, const Region& b);
Region without(const Region& a, const Region& b);

/// Interiors meet: touching borders do not count. Decided before any rounding.
bool overlaps(const Region& a, const Region& b);
/// No point of `inner` lies outside `outer`; shared borders are fine. Decided before any rounding.
bool contains(const Region& outer, const Region& inner);

/// Minkowski sum with `polygon` (any simple one) taken relative to the origin; rounded as Booleans are.
Region swept(const Region& region, const Polygon& polygon);
/// The polygon of 64 sides around the circle of `radius` about the origin, corners rounded outward: it covers
/// the disc, by at most 0.13 % of `radius` and two ticks; reaches exactly `radius` along the axes; looks the
/// same after mirrors and quarter turns. `radius` must be positive, else std::invalid_argument.
Polygon disc_around(Length radius);
/// Everything within `radius` of the region: swept with `disc_around`, so never too small but for the
/// rounding of inside corners to the tick. std::invalid_argument when `radius` is negative; also below.
Region grown(const Region& region, Length radius);
/// What a disc of `radius` about it stays inside of: complement of the grown complement; never too large but
/// for the rounding of corners.
Region shrunk(const Region& region, Length radius);
/// `grown` then `shrunk`, and the region itself: fills gaps and inside corners that a disc of `radius` cannot
/// enter.
Region closed(const Region& region, Length radius);

Region moved(const Region& region, Vector by);
/// Mirror image in the line y = 0.
Region mirrored(const Region& region);

}  // namespace berthwright

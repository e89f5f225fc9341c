#pragma once

#include <berthwright/geometry/region.h>

namespace berthwright {

/// The region with each corner moved by `change`, which keeps shapes: a shift, a mirror, a quarter turn.
template <class Change>
Region mapped(const Region& region, Change change) {
  const auto polygon = [&](const Polygon& given) {
    std::vector<Point> corners;
    for (const Point& corner : given.vertices()) corners.push_back(change(corner));
    return Polygon::promised(std::move(corners));
  };
  std::vector<Face> faces;
  for (const Face& face : region.faces()) {
    faces.push_back({polygon(face.outer), {}});
    for (const Polygon& hole : face.holes) faces.back().holes.push_back(polygon(hole));
  }
  return Region::from_faces(std::move(faces));
}

}  // namespace berthwright

#include "oracle/geos.h"

#include <geos_c.h>

#include <cmath>
#include <memory>
#include <stdexcept>

namespace berthwright::oracle {
namespace {

GEOSContextHandle_t context() {
  static const std::unique_ptr<GEOSContextHandle_HS, decltype(&GEOS_finish_r)> held(GEOS_init_r(),
                                                                                    &GEOS_finish_r);
  return held.get();
}

struct Destroy {
  void operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(context(), geometry); }
};
using Shape = std::unique_ptr<GEOSGeometry, Destroy>;

Shape kept(GEOSGeometry* geometry) {
  if (geometry == nullptr) throw std::runtime_error("GEOS gave no answer");
  return Shape(geometry);
}

GEOSGeometry* ring(std::span<const Point> corners) {
  GEOSCoordSequence* sequence =
      GEOSCoordSeq_create_r(context(), static_cast<unsigned>(corners.size() + 1), 2);
  for (std::size_t i = 0; i <= corners.size(); ++i) {
    const Point& p = corners[i % corners.size()];
    GEOSCoordSeq_setXY_r(context(), sequence, static_cast<unsigned>(i), static_cast<double>(p.x.ticks()),
                         static_cast<double>(p.y.ticks()));
  }
  return GEOSGeom_createLinearRing_r(context(), sequence);
}

GEOSGeometry* line(Point a, Point b) {
  GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(context(), 2, 2);
  for (unsigned i = 0; i < 2; ++i) {
    const Point& p = i == 0 ? a : b;
    GEOSCoordSeq_setXY_r(context(), sequence, i, static_cast<double>(p.x.ticks()),
                         static_cast<double>(p.y.ticks()));
  }
  return GEOSGeom_createLineString_r(context(), sequence);
}

Shape shape(const Region& region) {
  std::vector<GEOSGeometry*> polygons;
  for (const Face& face : region.faces()) {
    std::vector<GEOSGeometry*> holes;
    for (const Polygon& hole : face.holes) holes.push_back(ring(hole.vertices()));
    polygons.push_back(GEOSGeom_createPolygon_r(context(), ring(face.outer.vertices()), holes.data(),
                                                static_cast<unsigned>(holes.size())));
  }
  return kept(GEOSGeom_createCollection_r(context(), GEOS_MULTIPOLYGON, polygons.data(),
                                          static_cast<unsigned>(polygons.size())));
}

double area(const Shape& given) {
  double result = 0;
  if (GEOSArea_r(context(), given.get(), &result) != 1) throw std::runtime_error("GEOS gave no area");
  return result;
}

bool truth(char answer) {
  if (answer != 0 && answer != 1) throw std::runtime_error("GEOS gave no answer");
  return answer == 1;
}

}  // namespace

bool geos_is_simple(const std::vector<Point>& corners) {
  return truth(GEOSisSimple_r(context(), kept(ring(corners)).get()));
}

double geos_area(const Region& region) { return area(shape(region)); }

double geos_area(Operation operation, const Region& a, const Region& b) {
  const Shape first = shape(a);
  const Shape second = shape(b);
  switch (operation) {
    case Operation::unite:
      return area(kept(GEOSUnion_r(context(), first.get(), second.get())));
    case Operation::intersect:
      return area(kept(GEOSIntersection_r(context(), first.get(), second.get())));
    case Operation::subtract:
      return area(kept(GEOSDifference_r(context(), first.get(), second.get())));
  }
  throw std::logic_error("Operation out of range");
}

double geos_difference(const Region& a, const Region& b) {
  return area(kept(GEOSSymDifference_r(context(), shape(a).get(), shape(b).get())));
}

double geos_distance(const Region& a, const Region& b) {
  double result = 0;
  if (GEOSDistance_r(context(), shape(a).get(), shape(b).get(), &result) != 1)
    throw std::runtime_error("GEOS gave no distance");
  return result;
}

bool geos_interiors_meet(const Region& a, const Region& b) {
  return truth(GEOSRelatePattern_r(context(), shape(a).get(), shape(b).get(), "T********"));
}

bool geos_covers(const Region& outer, const Region& inner) {
  return truth(GEOSCovers_r(context(), shape(outer).get(), shape(inner).get()));
}

bool geos_is_valid(const Region& region) {
  return region.empty() || truth(GEOSisValid_r(context(), shape(region).get()));
}

double geos_mitred_area(const Region& region, double by) {
  return area(kept(GEOSBufferWithStyle_r(context(), shape(region).get(), by, 8, GEOSBUF_CAP_FLAT,
                                         GEOSBUF_JOIN_MITRE, 10)));
}

double geos_swept_area(const Region& region, const Polygon& convex) {
  std::vector<GEOSGeometry*> parts{shape(moved(region, convex.vertices().front() - Point{})).release()};
  for (const Edge& edge : edges(region)) {
    std::vector<Point> corners;
    for (const Point& p : convex.vertices()) {
      corners.push_back(edge.from + (p - Point{}));
      corners.push_back(edge.to + (p - Point{}));
    }
    parts.push_back(kept(GEOSConvexHull_r(context(), kept(ring(corners)).get())).release());
  }
  const Shape all = kept(GEOSGeom_createCollection_r(context(), GEOS_GEOMETRYCOLLECTION, parts.data(),
                                                     static_cast<unsigned>(parts.size())));
  return area(kept(GEOSUnaryUnion_r(context(), all.get())));
}

double geos_round_area(const Region& region, double by) {
  return area(kept(GEOSBuffer_r(context(), shape(region).get(), by, 64)));
}

double geos_way(const Region& region, Point from, Point to) {
  std::vector<Point> stops{from, to};
  for (const Edge& edge : edges(region)) stops.push_back(edge.from);
  const Shape whole = shape(region);
  const std::unique_ptr<const GEOSPreparedGeometry, void (*)(const GEOSPreparedGeometry*)> ready(
      GEOSPrepare_r(context(), whole.get()),
      [](const GEOSPreparedGeometry* g) { GEOSPreparedGeom_destroy_r(context(), g); });
  const auto covers = [&](Point a, Point b) {
    return truth(GEOSPreparedCovers_r(context(), ready.get(), kept(line(a, b)).get()));
  };
  const auto straight = [](Point a, Point b) {
    return std::hypot(static_cast<double>((b.x - a.x).ticks()), static_cast<double>((b.y - a.y).ticks()));
  };
  std::vector<double> best(stops.size(), -1);
  std::vector<bool> done(stops.size());
  best[0] = 0;
  for (;;) {
    std::size_t here = stops.size();
    for (std::size_t i = 0; i < stops.size(); ++i)
      if (!done[i] && best[i] >= 0 && (here == stops.size() || best[i] < best[here])) here = i;
    if (here == stops.size() || here == 1) return best[1];
    done[here] = true;
    for (std::size_t i = 0; i < stops.size(); ++i) {
      const double length = best[here] + straight(stops[here], stops[i]);
      if (done[i] || (best[i] >= 0 && best[i] <= length)) continue;
      if (stops[here] == stops[i] || covers(stops[here], stops[i])) best[i] = length;
    }
  }
}

double geos_inscribed_radius(const Region& region, double tolerance) {
  const Shape line = kept(GEOSMaximumInscribedCircle_r(context(), shape(region).get(), tolerance));
  double result = 0;
  if (GEOSLength_r(context(), line.get(), &result) != 1) throw std::runtime_error("GEOS gave no length");
  return result;
}

}  // namespace berthwright::oracle

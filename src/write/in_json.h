#pragma once

#include <string>
#include <string_view>

#include <berthwright/geometry/region.h>
#include <berthwright/plan/rules.h>

namespace berthwright {

inline constexpr int schema_version = 1;

/// Whole ticks divided once: the shortest decimal that prints it is the exact one, on every machine.
inline double millimetres(Length length) { return static_cast<double>(length.ticks()) / ticks_per_mm; }

/// "published", "maker"…
std::string_view kind_word(Source::Kind kind);

// The guest itself comes in with the caller: `Json` is its ordered object.
template <class Json>
Json place_in(const Point& p) {
  return {{"x_mm", millimetres(p.x)}, {"y_mm", millimetres(p.y)}};
}
template <class Json>
Json place_in(const Point3& p) {
  return {{"x_mm", millimetres(p.plan.x)}, {"y_mm", millimetres(p.plan.y)}, {"z_mm", millimetres(p.z)}};
}
/// Polygons less their holes, as rings of corners.
template <class Json>
Json region_in(const Region& region) {
  const auto ring = [](const Polygon& polygon) {
    Json corners = Json::array();
    for (const Point& corner : polygon.vertices()) corners.push_back(place_in<Json>(corner));
    return corners;
  };
  Json faces = Json::array();
  for (const Face& face : region.faces()) {
    Json holes = Json::array();
    for (const Polygon& hole : face.holes) holes.push_back(ring(hole));
    faces.push_back({{"outer", ring(face.outer)}, {"holes", holes}});
  }
  return faces;
}
template <class Json>
Json source_in(const Source& source) {
  return {{"kind", kind_word(source.kind)},
          {"text", source.text},
          {"edition", source.edition},
          {"address", source.address}};
}
/// Bytes that are not UTF-8 can only come from a file name; they are replaced, never printed.
template <class Json>
std::string text_of(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace berthwright

#pragma once

#include <string>
#include <string_view>

#include <berthwright/geometry/point.h>
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

#include "solve/room/room_shape.h"

#include <algorithm>

#include "geometry/ring.h"

namespace berthwright {

namespace {

struct Span {
  Length from;
  Length to;
};

std::vector<Span> spans_at(const Polygon& profile, Length height) {
  std::vector<Length> crossings;
  for (const Edge& edge : edges(Region(profile))) {
    if ((edge.from.y <= height) == (edge.to.y <= height)) continue;
    crossings.push_back(edge.from.x + rounded_part(edge.to.x - edge.from.x, (height - edge.from.y).ticks(),
                                                   (edge.to.y - edge.from.y).ticks()));
  }
  std::ranges::sort(crossings);
  std::vector<Span> spans;
  for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
    if (crossings[i] < crossings[i + 1]) spans.push_back({crossings[i], crossings[i + 1]});
  return spans;
}

// The stretches of a profile where something between the two heights lies outside it.
std::vector<Span> spans_outside(const Polygon& profile, Length low, Length high) {
  const Rect bounds = profile.bounds();
  const Rect band{{bounds.low.x, low}, {bounds.high.x, high}};
  std::vector<Span> spans;
  const Region outside = without(Region(band), Region(profile));  // named: the loop only borrows its faces
  for (const Face& face : outside.faces())
    spans.push_back({face.outer.bounds().low.x, face.outer.bounds().high.x});
  return spans;
}

Region strips(const std::vector<Span>& spans, const Rect& across, bool along_y) {
  std::vector<Region> parts;
  parts.reserve(spans.size());
  for (const Span& span : spans)
    parts.emplace_back(along_y ? Rect{{across.low.x, span.from}, {across.high.x, span.to}}
                               : Rect{{span.from, across.low.y}, {span.to, across.high.y}});
  return united(parts);
}

Length roof_over_span(const Polygon& profile, Span span, Length from) {
  const Length above = profile.bounds().high.y + 1_in;
  const Region beyond = without(Region(Rect{{span.from, from}, {span.to, above}}), Region(profile));
  return beyond.bounds().low.y;
}

}  // namespace

Region room_at(const Interior& interior, Length height) {
  const Polygon& outline = interior.outline.polygon();
  const Rect& bounds = outline.bounds();
  Region room =
      common(Region(outline), strips(spans_at(interior.side_profile.polygon(), height), bounds, false));
  if (interior.cross_profile)
    room = common(room, strips(spans_at(interior.cross_profile->polygon(), height), bounds, true));
  return room;
}

Region room_between(const Interior& interior, Length low, Length high) {
  const Polygon& outline = interior.outline.polygon();
  const Rect& bounds = outline.bounds();
  Region room = without(Region(outline),
                        strips(spans_outside(interior.side_profile.polygon(), low, high), bounds, false));
  if (interior.cross_profile)
    room = without(room, strips(spans_outside(interior.cross_profile->polygon(), low, high), bounds, true));
  return room;
}

Length roof_over(const Interior& interior, const Region& region, Length from) {
  Length lowest = interior.side_profile.polygon().bounds().high.y;
  for (const Face& face : region.faces()) {
    const Rect& bounds = face.outer.bounds();
    lowest = std::min(lowest,
                      roof_over_span(interior.side_profile.polygon(), {bounds.low.x, bounds.high.x}, from));
    if (interior.cross_profile)
      lowest = std::min(
          lowest, roof_over_span(interior.cross_profile->polygon(), {bounds.low.y, bounds.high.y}, from));
  }
  return lowest;
}

Region outside_profile(const Solid& solid, const Polygon& profile, bool across) {
  std::vector<Region> boxes;
  for (const Face& face : solid.outline().faces()) {
    const Rect& bounds = face.outer.bounds();
    const Length from = across ? bounds.low.y : bounds.low.x;
    const Length to = across ? bounds.high.y : bounds.high.x;
    boxes.emplace_back(Rect{{from, solid.base()}, {to, solid.top()}});
  }
  return without(united(boxes), Region(profile));
}

}  // namespace berthwright

#include <berthwright/geometry/region.h>

#include <algorithm>
#include <array>
#include <stdexcept>

#include "geometry/minkowski.h"
#include "geometry/overlay.h"
#include "geometry/remembered.h"

namespace berthwright {
namespace {

bool is_nothing(Length radius) {
  if (radius < Length{}) throw std::invalid_argument("a radius is not negative");
  return radius == Length{};
}

// The frame less a region whose edges cross none of the frame's: nothing to construct, integers do.
Region rest_of(const Rect& frame, const Region& region) {
  return overlaid(strands(edges(Region(frame)), edges(region)),
                  [](Winding w) { return w.first > 0 && w.second <= 0; });
}

}  // namespace

Region swept(const Region& region, const Polygon& polygon) {
  return remembered<Region>([&] { return Construction(Construction::Kind::swept).of(region).of(polygon); },
                            [&] { return wound_round(border_of_swept(region, polygon)); });
}

Polygon disc_around(Length radius) {
  if (is_nothing(radius)) throw std::invalid_argument("a disc needs a radius");
  // cos and sin of (k + 1/2) pi / 32 over cos(pi / 64), times 2^31, rounded up.
  constexpr std::array<std::array<std::int64_t, 2>, 8> corners{{{2147483648, 105499107},
                                                                {2126802207, 315481306},
                                                                {2085638498, 522425248},
                                                                {2024388949, 724337949},
                                                                {1943643429, 919274879},
                                                                {1844179560, 1105358690},
                                                                {1726955234, 1280797292},
                                                                {1593099384, 1443901117}}};
  const auto scaled = [&](std::int64_t factor) {
    constexpr Int128 unit = Int128{1} << 31;
    return Length::from_ticks(static_cast<std::int64_t>((Int128{radius.ticks()} * factor + unit - 1) / unit));
  };
  std::vector<Point> ring;
  for (int quarter = 0; quarter < 4; ++quarter) {
    for (std::size_t k = 0; k < 16; ++k) {
      const bool low = k < 8;
      const auto& [along, across] = corners[low ? k : 15 - k];
      Point p{scaled(low ? along : across), scaled(low ? across : along)};
      for (int turns = 0; turns < quarter; ++turns) p = {-p.y, p.x};
      ring.push_back(p);
    }
  }
  // For radii of a few ticks rounding leaves corners that are none.
  std::vector<Point> convex;
  std::ranges::rotate(ring, std::ranges::min_element(ring));
  ring.push_back(ring.front());
  for (const Point& p : ring) {
    while (convex.size() > 1 && cross(convex[convex.size() - 2], convex.back(), p) <= 0) convex.pop_back();
    if (convex.empty() || convex.back() != p) convex.push_back(p);
  }
  convex.pop_back();
  return Polygon::promised(std::move(convex));
}

Region grown(const Region& region, Length radius) {
  return is_nothing(radius) ? region : swept(region, disc_around(radius));
}

// The disc is convex: where it about a place inside the bounds reaches beyond them, it also meets a frame of
// one tick around them.
Region shrunk(const Region& region, Length radius) {
  if (is_nothing(radius) || region.empty()) return region;
  const Region outside = rest_of(grown(region.bounds(), one_tick), region);
  return rest_of(region.bounds(), swept(outside, disc_around(radius)));
}

Region closed(const Region& region, Length radius) {
  return united(shrunk(grown(region, radius), radius), region);
}

}  // namespace berthwright

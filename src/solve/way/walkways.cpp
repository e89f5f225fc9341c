#include <berthwright/solve/way/walkways.h>

namespace berthwright {

std::optional<Walkway> walkway_of(const Bed& bed, std::span<const WayOut> ways) {
  const WayOut* way = widest(ways);
  if (way == nullptr) return std::nullopt;
  return Walkway{bed.id.text(), walkway_along(way->way.path, way->width)};
}

}  // namespace berthwright

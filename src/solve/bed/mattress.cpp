#include <berthwright/solve/bed/mattress.h>

#include <algorithm>
#include <map>

#include "solve/bed/openings.h"
#include "solve/bed/ridges.h"
#include "solve/bed/straight_across.h"
#include "solve/room/room_shape.h"

namespace berthwright {

namespace {

using Pieces = std::vector<const Placed*>;

constexpr Length level_within = Length::inches(1, 2);
constexpr Length reported_above = Length::inches(1, 16);

Pieces cushions_of(const Arrangement& arrangement, const Bed& bed) {
  Pieces cushions;
  for (const PieceId& id : bed.pieces) {
    const Placed* piece = arrangement.find(id.text());
    if (piece != nullptr && piece->is_soft()) cushions.push_back(piece);
  }
  return cushions;
}

Region united_outlines(const Pieces& pieces) {
  std::vector<Region> outlines;
  for (const Placed* piece : pieces) outlines.push_back(piece->solid.outline());
  return united(outlines);
}

// The top height with the largest area; of equal areas the higher.
Length level_of(const Pieces& cushions) {
  std::map<Length, Pieces> by_top;
  for (const Placed* cushion : cushions) by_top[cushion->solid.top()].push_back(cushion);
  Length level;
  Area largest;
  for (const auto& [top, pieces] : by_top) {
    const Area area = united_outlines(pieces).area();
    if (area >= largest) level = top, largest = area;
  }
  return level;
}

bool is_one_of(const Placed& thing, const Pieces& pieces) {
  return std::ranges::find(pieces, &thing) != pieces.end();
}

// Walls and solids that rise to the surface, near it.
Region stops_around(const Plan& plan, const Arrangement& arrangement, const Region& surface, Length level,
                    const Pieces& not_counted) {
  const Region frame(grown(surface.bounds(), 4 * opening_radius));
  std::vector<Region> stops{without(frame, room_at(plan->interior, level))};
  for (const Placed& thing : arrangement.things)
    if (!is_one_of(thing, not_counted) && thing.solid.base() < level &&
        thing.solid.top() >= level - level_within)
      stops.push_back(common(thing.solid.outline(), frame));
  return united(stops);
}

Closing closed_over(const Plan& plan, const Arrangement& arrangement, Length level, const Pieces& pieces) {
  LyingSurface lying{united_outlines(pieces), {}, {}};
  lying.stops = stops_around(plan, arrangement, lying.surface, level, pieces);
  for (const Placed* piece : pieces)
    for (const CornerTip& tip : corner_tips(piece->pose->arcs)) lying.corners.push_back(tip);
  return closing_of(lying);
}

}  // namespace

Mattress mattress_of(const Plan& plan, const Arrangement& arrangement, const Bed& bed) {
  Mattress mattress;
  const Pieces cushions = cushions_of(arrangement, bed);
  if (cushions.empty()) return mattress;
  mattress.level = level_of(cushions);
  Pieces level;
  for (const Placed* cushion : cushions) {
    const bool in_surface = abs(cushion->solid.top() - mattress.level) <= level_within;
    (in_surface ? mattress.in_surface : mattress.dropped_out).push_back(cushion->piece->id);
    if (in_surface) level.push_back(cushion);
  }
  Closing closing = closed_over(plan, arrangement, mattress.level, level);
  mattress.surface = united_outlines(level);
  mattress.closed = closing.closed;
  mattress.levelled = mattress.dropped_out.empty()
                          ? closing.closed
                          : closed_over(plan, arrangement, mattress.level, cushions).closed;
  mattress.gaps = std::move(closing.gaps);
  std::erase_if(mattress.gaps, [](const Gap& gap) { return gap.width <= reported_above; });
  mattress.ridges = ridges_between(cushions);
  return mattress;
}

}  // namespace berthwright

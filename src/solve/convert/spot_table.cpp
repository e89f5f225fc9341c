#include <algorithm>
#include <stdexcept>

#include "solve/convert/overlaps.h"
#include "solve/convert/spot_ways.h"
#include "solve/convert/spots.h"

namespace berthwright {
namespace {

// Overhead, nobody carries a thing from one low place to another.
constexpr Length overhead = 48_in;
constexpr Length as_high_as_a_counter = 42_in;

// Of a piece: level with each of its own places, over all that the plan stands there, over counters too, and
// over all that is put aside.
std::vector<Length> heights_for(const RoomAround& surroundings, const std::vector<SpotEntry>& entries,
                                std::size_t piece) {
  std::vector<Length> heights;
  Length over_posed, over_counters, over_all;
  for (const SpotEntry& entry : entries) {
    if (!entry.spot.stands_in_room()) continue;
    if (entry.piece == piece) {
      heights.push_back(entry.spot.base);
    } else if (entry.spot.base < overhead) {
      const Length top = entry.spot.base + entry.spot.pose.height;
      over_all = std::max(over_all, top);
      if (entry.spot.kind == PiecePlace::Kind::posed) over_posed = std::max(over_posed, top);
    }
  }
  for (const Hindrance& fixture : surroundings.built_in())
    if (fixture.top <= as_high_as_a_counter) over_counters = std::max(over_counters, fixture.top);
  heights.insert(heights.end(),
                 {over_posed, std::max(over_posed, over_counters), std::max(over_all, over_counters)});
  std::ranges::sort(heights);
  heights.erase(std::ranges::unique(heights).begin(), heights.end());
  return heights;
}

}  // namespace

std::vector<std::unique_ptr<Carrying>> carryings(const RoomAround& surroundings,
                                                 const std::vector<SpotEntry>& posed) {
  std::vector<std::unique_ptr<Carrying>> made;
  for (std::size_t number = 0; number < surroundings.plan()->pieces.size(); ++number) {
    const Piece& piece = surroundings.plan()->pieces[number];
    std::vector<Hindrance> others;
    for (const SpotEntry& entry : posed)
      if (entry.piece != number && entry.spot.stands_in_room())
        others.push_back({rectangles_over(entry.spot.pose.outline), entry.spot.base,
                          entry.spot.base + entry.spot.pose.height});
    made.push_back(std::make_unique<Carrying>(surroundings, std::move(others),
                                              std::array{piece.length, piece.width, piece.thickness},
                                              piece.heat.has_value()));
  }
  return made;
}

SpotTable spot_table(const RoomAround& surroundings, const std::vector<SpotEntry>& entries,
                     const std::vector<std::unique_ptr<Carrying>>& carrying, bool bend_all) {
  if (entries.size() > most_spots) throw std::logic_error("more spots than a search can hold");
  const Plan& plan = surroundings.plan();
  SpotTable made;
  made.table.pieces = plan->pieces.size();
  for (std::size_t piece = 0; piece < plan->pieces.size(); ++piece)
    carrying[piece]->set_heights(heights_for(surroundings, entries, piece));
  const SpotOverlaps overlaps(surroundings.plan(), entries);
  for (std::size_t at = 0; at < entries.size(); ++at) {
    const SpotEntry& entry = entries[at];
    SpotRow row;
    row.piece = entry.piece;
    row.burden = entry.burden;
    for (const std::size_t need : entry.needs) row.needs.set(need);
    SpotWays ways = ways_of(surroundings, entries, at, overlaps, *carrying[entry.piece]);
    if (plan->pieces[entry.piece].is_soft() && (bend_all || ways.ways.empty()))
      add_bent_way(ways, overlaps.at_rest(at));
    row.ways = std::move(ways.ways);
    made.table.spots.push_back(std::move(row));
    made.anchors.push_back(std::move(ways.anchors));
    made.shut.push_back(std::move(ways.shut));
  }
  // Where one spot of a piece has bent ways only, all others must join them.
  for (std::size_t at = 0; at < entries.size(); ++at) {
    SpotRow& row = made.table.spots[at];
    const auto bends = [](const SpotRow& other) { return std::ranges::any_of(other.ways, &OpenWay::bent); };
    const bool wanted = !bends(row) && std::ranges::any_of(made.table.spots, [&](const SpotRow& other) {
      return other.piece == row.piece && bends(other);
    });
    if (!wanted) continue;
    SpotWays more;
    add_bent_way(more, overlaps.at_rest(at));
    row.ways.push_back(more.ways.front());
    made.anchors[at].push_back(more.anchors.front());
  }
  return made;
}

}  // namespace berthwright

#include "solve/cover/boxing.h"

#include <algorithm>

#include "solve/cover/joins.h"

namespace berthwright {
namespace {

// From the edge on, one way round, as far as no front face begins.
Length free_beyond(const Rim& rim, const ZipEdge& place, bool onward) {
  const std::size_t count = rim.edges.size();
  Length free;
  for (std::size_t step = 1; step < count && free < zip_round_corner; ++step) {
    const std::size_t e = (place.edge + (onward ? step : count - step)) % count;
    if (is_front(place.sights[e])) break;
    free += rim.edges[e].length;
  }
  return std::min(free, zip_round_corner);
}

// Along the boxing, of what lies so far along the rim; `turns` of the whole rim are added first.
struct AlongBoxing {
  Length zip_end;
  Length perimeter;
  Length operator()(Length along_rim, std::int64_t turns) const {
    return along_rim - zip_end + perimeter * turns;
  }
};

std::vector<JoinStretch> stretches(const Rim& rim, const ZipEdge& place, const AlongBoxing& along,
                                   Length total) {
  std::vector<JoinStretch> found;
  for (const std::int64_t turns : {-1, 0, 1, 2}) {
    for (std::size_t e = 0; e < rim.edges.size(); ++e) {
      const RimEdge& edge = rim.edges[e];
      const Length from = std::max(Length{}, along(edge.start + join_from_corner, turns));
      const Length to = std::min(total, along(edge.end() - join_from_corner, turns));
      if (from <= to)
        found.push_back({from, to, is_front(place.sights[e]),
                         times_seen(place.sights[e]) + (edge.is_straight() ? 0 : 1), e});
    }
  }
  std::ranges::sort(found, {}, &JoinStretch::from);
  return found;
}

std::size_t edge_at(const Rim& rim, const AlongBoxing& along, Length at) {
  for (const std::int64_t turns : {-1, 0, 1, 2})
    for (std::size_t e = 0; e < rim.edges.size(); ++e)
      if (along(rim.edges[e].start, turns) <= at && at < along(rim.edges[e].end(), turns)) return e;
  return 0;
}

std::vector<BoxingJoin> even_joins(const Rim& rim, const ZipEdge& place, const AlongBoxing& along,
                                   Length total, Length longest) {
  const std::int64_t count = (total.ticks() + longest.ticks() - 1) / longest.ticks();
  std::vector<BoxingJoin> joins;
  for (std::int64_t i = 1; i < count; ++i) {
    const Length at = Length::from_ticks(total.ticks() * i / count);
    const std::size_t e = edge_at(rim, along, at);
    joins.push_back({at, e, is_front(place.sights[e]), times_seen(place.sights[e])});
  }
  return joins;
}

}  // namespace

ZipStrips zip_strips(const Rim& rim, const ZipEdge& place, Length boxing_cut, Length seam_allowance) {
  const RimEdge& edge = rim.edges.at(place.edge);
  ZipStrips zip;
  zip.place = place;
  // Half of what is left at the most, so that a small cushion keeps a border.
  const Length most = Length::from_ticks((rim.perimeter - edge.length).ticks() / 4);
  zip.before = std::min(free_beyond(rim, place, false), most);
  zip.after = std::min(free_beyond(rim, place, true), most);
  Length length = edge.length;
  // An outline without corners: the zip takes half of it.
  if (rim.edges.size() == 1) length = half(rim.perimeter);
  zip.finished = zip.before + length + zip.after;
  zip.cut_length = zip.finished + seam_allowance * 2;
  zip.cut_width = zip_strip_width(boxing_cut);
  if (rim.edges.size() > 1) zip.marks = {zip.before, zip.before + length};
  return zip;
}

Boxing boxing_beside(const Rim& rim, const ZipStrips& zip, Length width, const Sewing& sewing) {
  const ZipEdge& place = zip.place;
  const Length begin = rim.edges.at(place.edge).start - zip.before + zip.finished;
  const AlongBoxing along{begin, rim.perimeter};
  Boxing boxing;
  boxing.width = width;
  boxing.finished = rim.perimeter - zip.finished;
  const Length total = boxing.finished;
  const Length longest = sewing.fabric.width - sewing.seam_allowance * 2;
  const auto joins = best_joins(stretches(rim, place, along, total), total, shortest_strip, longest);
  const Fabric& fabric = sewing.fabric;
  boxing.along_roll = fabric.up_across || (joins && fabric.may_turn() &&
                                           std::ranges::find(*joins, true, &Join::front) != joins->end());
  boxing.joins_anywhere = !joins && !boxing.along_roll;
  if (boxing.joins_anywhere) {
    boxing.joins = even_joins(rim, place, along, total, longest);
  } else if (!boxing.along_roll) {
    for (const Join& join : *joins)
      boxing.joins.push_back({join.at, join.edge, join.front, times_seen(place.sights[join.edge])});
  }
  Length last;
  for (const BoxingJoin& join : boxing.joins) {
    boxing.strips.push_back({join.at - last, join.at - last + sewing.seam_allowance * 2});
    last = join.at;
  }
  boxing.strips.push_back({total - last, total - last + sewing.seam_allowance * 2});
  for (const std::int64_t turns : {-1, 0, 1, 2})
    for (const RimEdge& edge : rim.edges)
      if (const Length at = along(edge.start, turns); rim.edges.size() > 1 && Length{} < at && at < total)
        boxing.marks.push_back(at);
  std::ranges::sort(boxing.marks);
  return boxing;
}

}  // namespace berthwright

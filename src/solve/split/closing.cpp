#include "solve/split/closing.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "solve/split/back_heights.h"
#include "solve/split/foam_cost.h"
#include "solve/split/seams.h"
#include "solve/split/skyline.h"

namespace berthwright {
namespace {

using Size = std::pair<Length, Length>;
Size size_of(Length a, Length b) { return std::minmax(a, b); }

// With at most one filler a search is short: no state is gone into twice.
constexpr TilingBounds bounds_of_few{1'000'000, 50'000};
constexpr TilingBounds bounds_of_many{200'000, 2'000};

auto closing_rank(const Split& s) {
  return std::tuple(gap_width(s), s.hip_seams, s.shoulder_seams, s.seam_lines, s.seams);
}

void keep_if_best(std::vector<Split>& best, Split split) {
  const auto same = std::ranges::find(best, split.moved, &Split::moved);
  if (same == best.end())
    best.push_back(std::move(split));
  else if (closing_rank(split) < closing_rank(*same))
    *same = std::move(split);
}

// Which pieces are laid by the search; the others stay where they are.
std::vector<bool> laid_by_search(const NightBay& bay, const DaySeats& day) {
  std::vector<bool> result;
  for (const SplitPiece& piece : day.pieces) {
    const auto lid = std::ranges::find(bay.lids, piece.bench, &Lid::bench) - bay.lids.begin();
    const bool stays =
        piece.use == SplitPiece::Use::back && day.manners[static_cast<std::size_t>(lid)] == BackManner::stays;
    result.push_back(piece.kept_out.empty() && !stays);
  }
  return result;
}

// Pieces of one size change places freely: each tile takes one that is there by day, if any.
Split with_places(const DaySeats& day, const std::vector<bool>& searched, const std::vector<LaidTile>& laid,
                  bool with_gap) {
  Split split{day.manners, day.heights, day.short_backs, day.pieces};
  std::vector<bool> done = searched;
  done.flip();
  const auto take = [&](const Rect& at, bool only_in_place) {
    for (std::size_t i = 0; i < split.pieces.size(); ++i) {
      SplitPiece& piece = split.pieces[i];
      if (done[i] || size_of(piece.length, piece.width) != size_of(at.width(), at.height())) continue;
      if (only_in_place && (piece.use != SplitPiece::Use::seat || piece.by_day != at)) continue;
      piece.by_night = at;
      done[i] = true;
      return true;
    }
    return false;
  };
  std::vector<Rect> rest;
  for (const LaidTile& tile : laid)
    if (!take(tile.at, true)) rest.push_back(tile.at);
  for (const Rect& at : rest) {
    if (take(at, false)) continue;
    if (with_gap)
      split.gap = at;
    else
      split.pieces.push_back({SplitPiece::Use::filler,
                              FixtureId{},
                              split.fillers++,
                              std::nullopt,
                              at,
                              at.width(),
                              at.height(),
                              Length{},
                              {}});
  }
  return split;
}

void give_reasons(const NightBay& bay, const SplitLimits& limits, Split& split) {
  std::set<Size> sizes;
  std::vector<Rect> lying;
  for (const SplitPiece& piece : split.pieces) {
    sizes.insert(size_of(piece.length, piece.width));
    split.heaviest = std::max(split.heaviest, weight_of_foam(piece.length, piece.width, limits));
    split.foam_area += Area::rectangle(piece.length, piece.width);
    if (piece.use == SplitPiece::Use::seat && !piece.stays()) ++split.moved;
    if (piece.use != SplitPiece::Use::back || !piece.stays()) lying.push_back(piece.by_night);
  }
  split.sizes = sizes.size();
  split.beyond_ease = static_cast<std::size_t>(
      std::ranges::count_if(split.heights, [](Length height) { return !is_at_ease(height); }));
  const Seams seams = seams_of(lying, bay.bounds());
  split.hip_seams = seams.under_hips;
  split.shoulder_seams = seams.under_shoulders;
  split.seam_lines = seams.lines;
  split.seams = seams.all;
  split.foam = foam_cost(split.pieces, limits);
}

TilingTask task_of(const NightBay& bay, const SplitLimits& limits, const DaySeats& day,
                   const std::vector<bool>& searched) {
  TilingTask task;
  task.parts = bay.parts;
  task.least_side = limits.least_side;
  task.longest_side = limits.longest_side;
  std::map<Size, std::size_t> tiles;
  for (std::size_t i = 0; i < searched.size(); ++i) {
    const SplitPiece& piece = day.pieces[i];
    if (searched[i])
      ++tiles[size_of(piece.length, piece.width)];
    else
      task.taken.push_back(*piece.by_day);
  }
  for (const auto& [size, count] : tiles) task.tiles.push_back({size.first, size.second, count});
  return task;
}

// All of a task of this bay that changes from one to the next.
std::vector<std::int64_t> key_of(const TilingTask& task) {
  std::vector<std::int64_t> key{static_cast<std::int64_t>(task.fillers), task.narrower_side.ticks()};
  for (const Tile& tile : task.tiles)
    key.insert(key.end(), {tile.length.ticks(), tile.width.ticks(), static_cast<std::int64_t>(tile.count)});
  for (const Rect& taken : task.taken)
    key.insert(key.end(),
               {-1, taken.low.x.ticks(), taken.low.y.ticks(), taken.high.x.ticks(), taken.high.y.ticks()});
  return key;
}

BayClosing closing_by(const TilingTask& task, const NightBay& bay, const SplitLimits& limits,
                      const DaySeats& day, KnownTilings& known) {
  BayClosing result;
  const auto [kept, is_new] = known.try_emplace(key_of(task));
  if (is_new) {
    kept->second = tilings(task, task.fillers < 2 ? bounds_of_few : bounds_of_many);
    result.stages = kept->second.stages;
    result.pruned = kept->second.pruned;
  }
  result.complete = kept->second.complete;
  const bool with_gap = task.narrower_side < farthest;
  for (const std::vector<LaidTile>& laid : kept->second.found) {
    Split split = with_places(day, laid_by_search(bay, day), laid, with_gap);
    give_reasons(bay, limits, split);
    if (limits.most_weight && split.heaviest > *limits.most_weight) continue;
    keep_if_best(result.splits, std::move(split));
  }
  return result;
}

}  // namespace

BayClosing best_closing(const NightBay& bay, const SplitLimits& limits, const DaySeats& day,
                        std::size_t fillers, KnownTilings& known) {
  if (!day.possible) return {};
  const std::vector<bool> searched = laid_by_search(bay, day);
  TilingTask task = task_of(bay, limits, day, searched);
  task.fillers = fillers;
  task.least_fillers = fillers;
  return closing_by(task, bay, limits, day, known);
}

BayClosing nearest_closing(const NightBay& bay, const SplitLimits& limits, const DaySeats& day,
                           KnownTilings& known) {
  if (!day.possible) return {};
  const std::vector<bool> searched = laid_by_search(bay, day);
  TilingTask task = task_of(bay, limits, day, searched);
  task.fillers = 1;
  task.least_fillers = 1;
  task.least_side = one_tick;
  task.longest_side = farthest;
  task.narrower_side = limits.most_gap;
  return closing_by(task, bay, limits, day, known);
}

Int128 RoomForBacks::left_by(const std::vector<Length>& heights) const {
  Int128 left = area;
  for (std::size_t lid = 0; lid < lengths.size(); ++lid)
    left -= Int128{lengths[lid].ticks()} * heights[lid].ticks();
  return left;
}

RoomForBacks room_for_backs(const NightBay& bay, const SplitLimits& limits,
                            const std::vector<BackManner>& manners, bool short_backs) {
  const std::vector<Length> any(bay.lids.size(), limits.least_back);
  const DaySeats day = day_seats(bay, limits, manners, any, short_backs);
  const std::vector<bool> searched = laid_by_search(bay, day);
  RoomForBacks result;
  for (const Lid& lid : bay.lids) {
    Length along;
    for (std::size_t i = 0; i < day.pieces.size(); ++i) {
      const SplitPiece& piece = day.pieces[i];
      if (!searched[i] || piece.bench != lid.bench) continue;
      if (piece.use == SplitPiece::Use::back)
        along += lid.looks_along() ? piece.width : piece.length;
      else
        result.area -= Int128{piece.length.ticks()} * piece.width.ticks();
    }
    result.lengths.push_back(along);
  }
  result.area += Skyline(bay.parts, task_of(bay, limits, day, searched).taken).free_area();
  return result;
}

}  // namespace berthwright

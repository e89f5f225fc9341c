#include "solve/split/closing.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include <berthwright/solve/split/tiling.h>

#include "solve/split/back_heights.h"
#include "solve/split/seams.h"

namespace berthwright {
namespace {

using Size = std::pair<Length, Length>;
Size size_of(Length a, Length b) { return std::minmax(a, b); }

auto closing_rank(const Split& s) { return std::tuple(s.hip_seams, s.shoulder_seams, s.seams); }

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
Split with_places(const DaySeats& day, const std::vector<bool>& searched, const std::vector<LaidTile>& laid) {
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
  for (const Rect& at : rest)
    if (!take(at, false))
      split.pieces.push_back({SplitPiece::Use::filler,
                              FixtureId{},
                              split.fillers++,
                              std::nullopt,
                              at,
                              at.width(),
                              at.height(),
                              Length{},
                              {}});
  return split;
}

void give_reasons(const NightBay& bay, Split& split) {
  std::set<Size> sizes;
  std::vector<Rect> lying;
  for (const SplitPiece& piece : split.pieces) {
    sizes.insert(size_of(piece.length, piece.width));
    if (piece.use == SplitPiece::Use::seat && !piece.stays()) ++split.moved;
    if (piece.use != SplitPiece::Use::back || !piece.stays()) lying.push_back(piece.by_night);
  }
  split.sizes = sizes.size();
  split.beyond_ease = static_cast<std::size_t>(
      std::ranges::count_if(split.heights, [](Length height) { return !is_at_ease(height); }));
  const Seams seams = seams_of(lying, bay.bounds());
  split.hip_seams = seams.under_hips;
  split.shoulder_seams = seams.under_shoulders;
  split.seams = seams.all;
}

}  // namespace

BayClosing best_closing(const NightBay& bay, const SplitLimits& limits, const DaySeats& day,
                        std::size_t fillers) {
  BayClosing result;
  if (!day.possible) return result;
  TilingTask task;
  task.parts = bay.parts;
  task.fillers = fillers;
  task.least_side = limits.least_side;
  task.longest_side = limits.longest_side;
  std::map<Size, std::size_t> tiles;
  const std::vector<bool> searched = laid_by_search(bay, day);
  for (std::size_t i = 0; i < searched.size(); ++i) {
    const SplitPiece& piece = day.pieces[i];
    if (searched[i])
      ++tiles[size_of(piece.length, piece.width)];
    else
      task.taken.push_back(*piece.by_day);
  }
  for (const auto& [size, count] : tiles) task.tiles.push_back({size.first, size.second, count});
  const Tilings found = tilings(task);
  result.stages = found.stages;
  result.pruned = found.pruned;
  result.complete = found.complete;
  for (const std::vector<LaidTile>& laid : found.found) {
    Split split = with_places(day, searched, laid);
    if (split.fillers != fillers) break;  // fewer do: those are looked at by themselves
    give_reasons(bay, split);
    keep_if_best(result.splits, std::move(split));
  }
  return result;
}

}  // namespace berthwright

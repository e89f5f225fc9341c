#include <berthwright/solve/split/split.h>

#include <algorithm>
#include <tuple>

#include "solve/split/back_heights.h"
#include "solve/split/closing.h"
#include "solve/split/cures.h"
#include "solve/split/day_pieces.h"
#include "solve/split/searched.h"

namespace berthwright {
namespace {

auto rank(const Split& s) {
  return std::tuple(gap_width(s), s.fillers, s.sizes, s.beyond_ease, s.hip_seams, s.shoulder_seams, s.moved,
                    s.foam, s.foam_area, s.pieces.size(), s.seam_lines, s.seams, s.short_backs, s.manners,
                    s.heights);
}

// Whatever the bench: two benches that change roles make no other proposal.
std::vector<std::pair<BackManner, Length>> backs_of(const Split& split) {
  std::vector<std::pair<BackManner, Length>> result;
  for (std::size_t i = 0; i < split.manners.size(); ++i)
    result.emplace_back(split.manners[i], split.heights[i]);
  std::ranges::sort(result);
  return result;
}

struct SplitSearch {
  const NightBay& bay;
  const SplitLimits& limits;
  BaySplits result{bay, limits};
  std::vector<Split> found{};

  KnownTilings known{};

  // What does not come out by area alone is not even made up.
  void look_at(const RoomForBacks& room, const std::vector<BackManner>& manners,
               const std::vector<Length>& heights, bool short_backs, std::size_t fillers) {
    ++result.candidates;
    const Int128 left = room.left_by(heights);
    const Int128 least = Int128{limits.least_side.ticks()} * limits.least_side.ticks();
    if (fillers == 0 ? left != 0 : left < least * static_cast<std::int64_t>(fillers)) {
      ++result.by_area;
      return;
    }
    if (keep(
            best_closing(bay, limits, day_seats(bay, limits, manners, heights, short_backs), fillers, known)))
      ++result.closed;
  }

  // Nothing closes: what leaves one narrow gap.
  void look_near(const RoomForBacks& room, const std::vector<BackManner>& manners,
                 const std::vector<Length>& heights, bool short_backs) {
    const Rect all = bay.bounds();
    const Int128 left = room.left_by(heights);
    if (left > 0 && left <= Int128{limits.most_gap.ticks()} * std::max(all.width(), all.height()).ticks())
      keep(nearest_closing(bay, limits, day_seats(bay, limits, manners, heights, short_backs), known));
  }

  bool keep(BayClosing closing) {
    result.stages += closing.stages;
    result.pruned += closing.pruned;
    result.complete = result.complete && closing.complete;
    std::ranges::move(closing.splits, std::back_inserter(found));
    return !closing.splits.empty();
  }

  void run() {
    go_through([&](const RoomForBacks& room, const std::vector<BackManner>& manners,
                   const std::vector<Length>& heights, bool short_backs,
                   std::size_t fillers) { look_at(room, manners, heights, short_backs, fillers); });
    if (found.empty() && limits.most_gap > Length{})
      go_through([&](const RoomForBacks& room, const std::vector<BackManner>& manners,
                     const std::vector<Length>& heights, bool short_backs, std::size_t fillers) {
        if (fillers == 0) look_near(room, manners, heights, short_backs);
      });
    keep_best();
  }

  template <class Look>
  void go_through(Look look) {
    const std::vector<Length> heights = back_heights(bay, limits);
    const bool corners =
        std::ranges::any_of(bay.lids, [](const Lid& lid) { return lid.before_board != lid.top; });
    for (const std::vector<BackManner>& manners : all_manners(bay)) {
      const auto slept_on = static_cast<std::size_t>(
          std::ranges::count_if(manners, [](BackManner manner) { return manner != BackManner::stays; }));
      for (const bool short_backs : {false, true}) {
        if (short_backs && !corners) continue;
        const RoomForBacks room = room_for_backs(bay, limits, manners, short_backs);
        for (std::size_t fillers = 0; fillers <= limits.fillers; ++fillers)
          for (const std::vector<Length>& of_backs :
               fillers == 0 ? one_or_two_of(heights, slept_on) : one_of(heights, slept_on))
            look(room, manners, with_staying(manners, of_backs), short_backs, fillers);
      }
    }
  }

  // Backs that stay have a height of ease: it is free.
  std::vector<Length> with_staying(const std::vector<BackManner>& manners,
                                   const std::vector<Length>& of_backs) const {
    std::vector<Length> of_lids;
    std::size_t next = 0;
    for (const BackManner manner : manners)
      of_lids.push_back(manner == BackManner::stays ? height_of_ease(limits) : of_backs[next++]);
    return of_lids;
  }

  // A second tiling of the same backs must be better in something.
  void keep_best() {
    std::ranges::sort(found, {}, rank);
    for (Split& split : found) {
      if (result.best.size() == most_splits) return;
      const bool beaten = std::ranges::any_of(result.best, [&](const Split& kept) {
        return backs_of(kept) == backs_of(split) && gap_width(kept) <= gap_width(split) &&
               kept.fillers <= split.fillers && kept.moved <= split.moved &&
               kept.hip_seams <= split.hip_seams && kept.shoulder_seams <= split.shoulder_seams;
      });
      if (!beaten) result.best.push_back(std::move(split));
    }
  }
};

}  // namespace

Length gap_width(const Split& split) {
  return split.gap ? std::min(split.gap->width(), split.gap->height()) : Length{};
}

bool SplitPiece::turned() const { return by_night.width() != length || by_night.height() != width; }

BaySplits searched(const NightBay& bay, const SplitLimits& limits) {
  SplitSearch search{bay, limits};
  search.run();
  return std::move(search.result);
}

BaySplits splits_of(const NightBay& bay, const SplitLimits& limits) {
  BaySplits result = searched(bay, limits);
  if (result.best.empty() || result.best.front().gap) result.cures = cures_of(bay, limits);
  return result;
}

}  // namespace berthwright

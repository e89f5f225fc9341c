#include "solve/split/cures.h"

#include <algorithm>
#include <optional>

#include "solve/split/searched.h"

namespace berthwright {
namespace {

// The best of what a changed bay or limits give.
std::optional<Split> first_of(const NightBay& bay, const SplitLimits& limits) {
  BaySplits changed = searched(bay, limits);
  if (changed.best.empty()) return std::nullopt;
  return std::move(changed.best.front());
}

NightBay deepened(NightBay bay, Length by) {
  for (Lid& lid : bay.lids) {
    if (lid.faces == Wall::rear) lid.top.high.x += by;
    if (lid.faces == Wall::front) lid.top.low.x -= by;
    if (lid.faces == Wall::right) lid.top.high.y += by;
    if (lid.faces == Wall::left) lid.top.low.y -= by;
  }
  return bay;
}

void add_filler(std::vector<SplitCure>& cures, const NightBay& bay, SplitLimits limits) {
  ++limits.fillers;
  if (std::optional<Split> split = first_of(bay, limits)) {
    Length width = farthest;
    for (const SplitPiece& piece : split->pieces)
      if (piece.use == SplitPiece::Use::filler) width = std::min({width, piece.length, piece.width});
    cures.push_back({SplitCure::Kind::filler, width, std::move(*split)});
  }
}

void add_higher_back(std::vector<SplitCure>& cures, const NightBay& bay, SplitLimits limits) {
  const Length most = limits.most_back + 12_in;
  for (Length back = limits.most_back + limits.step; back <= most; back += limits.step) {
    limits.least_back = back - limits.step + one_tick;
    limits.most_back = back;
    if (std::optional<Split> split = first_of(bay, limits)) {
      const Length height = *std::ranges::max_element(split->heights);
      cures.push_back({SplitCure::Kind::higher_back, height, std::move(*split)});
      return;
    }
  }
}

void add_narrower_piece(std::vector<SplitCure>& cures, const NightBay& bay, SplitLimits limits) {
  while (limits.least_side > limits.step) {
    limits.least_side -= limits.step;
    if (std::optional<Split> split = first_of(bay, limits)) {
      cures.push_back({SplitCure::Kind::narrower_piece, limits.least_side, std::move(*split)});
      return;
    }
  }
}

void add_deeper_benches(std::vector<SplitCure>& cures, const NightBay& bay, const SplitLimits& limits) {
  for (Length by = limits.step; by <= 6_in; by += limits.step)
    if (std::optional<Split> split = first_of(deepened(bay, by), limits)) {
      cures.push_back({SplitCure::Kind::deeper_benches, by, std::move(*split)});
      return;
    }
}

}  // namespace

std::vector<SplitCure> cures_of(const NightBay& bay, const SplitLimits& limits) {
  std::vector<SplitCure> cures;
  add_filler(cures, bay, limits);
  add_higher_back(cures, bay, limits);
  add_narrower_piece(cures, bay, limits);
  add_deeper_benches(cures, bay, limits);
  return cures;
}

}  // namespace berthwright

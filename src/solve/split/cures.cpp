#include "solve/split/cures.h"

#include <algorithm>
#include <optional>
#include <stdexcept>

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

// All that lies beyond this line moves, all across it grows.
NightBay stretched(NightBay bay, bool along, Length line, Length by) {
  const auto stretch = [&](Rect& rect) {
    Length& low = along ? rect.low.x : rect.low.y;
    Length& high = along ? rect.high.x : rect.high.y;
    if (low > line) low += by;
    if (high > line) high += by;
  };
  for (Rect& part : bay.parts) stretch(part);
  for (Lid& lid : bay.lids) {
    stretch(lid.top);
    stretch(lid.before_board);
  }
  std::vector<Region> risen;
  for (const Region& one : bay.kept_out.parts()) {
    const Length low = along ? one.bounds().low.x : one.bounds().low.y;
    const Vector aside = low <= line ? Vector{} : along ? Vector{by, Length{}} : Vector{Length{}, by};
    risen.push_back(moved(one, aside));
  }
  bay.kept_out = united(risen);
  return bay;
}

// Where a lid's front meets the board.
Length front_line(const Lid& lid) {
  switch (lid.faces) {
    case Wall::rear:
      return lid.top.high.x;
    case Wall::front:
      return lid.top.low.x - one_tick;
    case Wall::right:
      return lid.top.high.y;
    case Wall::left:
      return lid.top.low.y - one_tick;
  }
  throw std::logic_error("Wall out of range");
}

// Cushions that are a little too much for the bay close a bay that is a little larger.
void add_pressed(std::vector<SplitCure>& cures, const NightBay& bay, const SplitLimits& limits) {
  for (Length by = Length::inches(1, 8); by <= 1_in; by += Length::inches(1, 8))
    for (const Lid& lid : bay.lids)
      if (std::optional<Split> split =
              first_of(stretched(bay, lid.looks_along(), front_line(lid), by), limits)) {
        cures.push_back({SplitCure::Kind::pressed_together, by, std::move(*split)});
        return;
      }
}

}  // namespace

std::vector<SplitCure> cures_of(const NightBay& bay, const SplitLimits& asked) {
  SplitLimits limits = asked;
  limits.most_gap = {};  // each cure closes exactly
  std::vector<SplitCure> cures;
  add_pressed(cures, bay, limits);
  add_filler(cures, bay, limits);
  add_higher_back(cures, bay, limits);
  add_narrower_piece(cures, bay, limits);
  add_deeper_benches(cures, bay, limits);
  return cures;
}

}  // namespace berthwright

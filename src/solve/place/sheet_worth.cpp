#include <berthwright/solve/place/sheet_worth.h>

#include <algorithm>
#include <map>
#include <queue>
#include <stdexcept>
#include <tuple>

#include "solve/place/worth_grid.h"

namespace berthwright {
namespace {

using PartCounts = std::vector<std::uint16_t>;

/// A part, or two blocks side by side or one behind the other.
struct WorthyBlock {
  std::int64_t length = 0;
  std::int64_t width = 0;
  std::int64_t worth = 0;
  PartCounts counts;
  std::size_t box = 0;
  std::optional<std::pair<std::size_t, std::size_t>> joined{};
  bool behind = false;
};

class BlockSearch {
 public:
  BlockSearch(const WorthGrid& grid, std::int64_t length, std::int64_t width, PartCounts most)
      : grid_(grid), length_(length), width_(width), most_(std::move(most)) {}

  SheetWorth run(std::size_t most_blocks) {
    for (std::size_t b = 0; b < grid_.boxes().size(); ++b) {
      const WorthyBox& box = grid_.boxes()[b];
      WorthyBlock block{box.length, box.width, box.worth, PartCounts(most_.size()), b};
      if (most_[box.part] == 0) continue;
      block.counts[box.part] = 1;
      offer(std::move(block));
    }
    SheetWorth result;
    while (!open_.empty()) {
      const auto [bound, later] = open_.top();
      if (bound <= best_worth_ || result.blocks == most_blocks) break;
      open_.pop();
      const std::size_t block = ~later;
      if (stale_[block]) continue;
      ++result.blocks;
      join_with_closed(block);
    }
    result.worth = best_worth_;
    result.bound = open_.empty() ? best_worth_ : std::max(best_worth_, open_.top().first);
    if (best_worth_ > 0) lay(best_, {}, result.laid);
    return result;
  }

 private:
  void join_with_closed(std::size_t block) {
    closed_.push_back(block);
    for (const std::size_t closed : closed_) {
      const WorthyBlock& a = blocks_[block];
      const WorthyBlock& b = blocks_[closed];
      const bool beside = a.length + b.length <= length_;
      const bool behind = a.width + b.width <= width_;
      if (stale_[closed] || (!beside && !behind)) continue;
      PartCounts counts = a.counts;
      bool enough = true;
      for (std::size_t i = 0; i < counts.size() && enough; ++i) {
        counts[i] = static_cast<std::uint16_t>(counts[i] + b.counts[i]);
        enough = counts[i] <= most_[i];
      }
      if (!enough) continue;
      const std::pair pair(closed, block);
      const std::int64_t worth = a.worth + b.worth;
      const WorthyBlock along{a.length + b.length, std::max(a.width, b.width), worth, counts, 0, pair, false};
      const WorthyBlock across{std::max(a.length, b.length), a.width + b.width, worth, counts, 0, pair, true};
      if (beside) offer(along);
      if (behind) offer(across);
    }
  }

  void offer(WorthyBlock block) {
    const std::int64_t bound = block.worth + grid_.beside(block.length, block.width);
    if (bound <= best_worth_) return;
    std::vector<std::size_t>& alike = by_counts_[block.counts];
    for (const std::size_t other : alike)
      if (blocks_[other].length <= block.length && blocks_[other].width <= block.width) return;
    std::erase_if(alike, [&](std::size_t other) {
      const bool worse = blocks_[other].length >= block.length && blocks_[other].width >= block.width;
      if (worse) stale_[other] = true;
      return worse;
    });
    alike.push_back(blocks_.size());
    if (block.worth > best_worth_) {
      best_worth_ = block.worth;
      best_ = blocks_.size();
    }
    open_.push({bound, ~blocks_.size()});
    blocks_.push_back(std::move(block));
    stale_.push_back(false);
  }

  void lay(std::size_t index, Point low, std::vector<WorthyPlace>& laid) const {
    const WorthyBlock& block = blocks_[index];
    if (!block.joined) {
      const Vector size{Length::from_ticks(block.length), Length::from_ticks(block.width)};
      laid.push_back({grid_.boxes()[block.box].part, {low, low + size}});
      return;
    }
    const WorthyBlock& first = blocks_[block.joined->first];
    lay(block.joined->first, low, laid);
    const Vector step{Length::from_ticks(block.behind ? 0 : first.length),
                      Length::from_ticks(block.behind ? first.width : 0)};
    lay(block.joined->second, low + step, laid);
  }

  const WorthGrid& grid_;
  std::int64_t length_;
  std::int64_t width_;
  PartCounts most_;
  std::vector<WorthyBlock> blocks_{};
  std::vector<bool> stale_{};
  std::vector<std::size_t> closed_{};
  std::map<PartCounts, std::vector<std::size_t>> by_counts_{};
  // Of equal bounds the block that was there first.
  std::priority_queue<std::pair<std::int64_t, std::size_t>> open_{};
  std::int64_t best_worth_ = 0;
  std::size_t best_ = 0;
};

std::vector<WorthyBox> boxes_of(const std::vector<WorthyPart>& parts) {
  std::vector<WorthyBox> boxes;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const WorthyPart& part = parts[i];
    if (part.length <= Length{} || part.width <= Length{} || part.worth < 0)
      throw std::invalid_argument("a part without size or of negative worth");
    boxes.push_back({part.length.ticks(), part.width.ticks(), part.worth, i});
    if (part.turns && part.length != part.width)
      boxes.push_back({part.width.ticks(), part.length.ticks(), part.worth, i});
  }
  return boxes;
}

}  // namespace

SheetWorth most_worth(Length length, Length width, const std::vector<WorthyPart>& parts,
                      std::size_t most_blocks) {
  if (length <= Length{} || width <= Length{}) throw std::invalid_argument("a sheet without size");
  WorthGrid grid(length.ticks(), width.ticks(), boxes_of(parts));
  if (std::ranges::none_of(parts, [](const WorthyPart& part) { return part.most.has_value(); })) {
    SheetWorth result{.worth = grid.most(), .bound = grid.most()};
    for (const WorthGrid::Spot& spot : grid.best()) {
      const WorthyBox& box = grid.boxes()[spot.box];
      const Point low{Length::from_ticks(spot.x), Length::from_ticks(spot.y)};
      result.laid.push_back(
          {box.part, {low, low + Vector{Length::from_ticks(box.length), Length::from_ticks(box.width)}}});
    }
    return result;
  }
  PartCounts most;
  for (const WorthyPart& part : parts)
    most.push_back(static_cast<std::uint16_t>(std::min<std::size_t>(part.most.value_or(30'000), 30'000)));
  grid.with_beside();
  return BlockSearch(grid, length.ticks(), width.ticks(), std::move(most)).run(most_blocks);
}

}  // namespace berthwright

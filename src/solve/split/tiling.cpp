#include <berthwright/solve/split/tiling.h>

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <stdexcept>

#include "solve/split/disjoint_rects.h"

namespace berthwright {
namespace {

/// One count of fillers, searched through.
class Tiler {
 public:
  Tiler(const TilingTask& task, std::size_t fillers, const TilingBounds& bounds, Tilings& result)
      : task_(task), parts_(disjoint_rects(task.parts)), bounds_(bounds), result_(result), fillers_(fillers) {
    for (const Rect& part : parts_) {
      free_area_ += area(part);
      for (const Length x : {part.low.x, part.high.x}) corners_x_.insert(x);
      for (const Length y : {part.low.y, part.high.y}) corners_y_.insert(y);
    }
    for (const Rect& taken : task.taken) {
      laid_.push_back({task.tiles.size() + 1, taken});
      free_area_ -= area(taken);
    }
    for (const Tile& tile : task.tiles) {
      left_.push_back(tile.count);
      tile_area_ += static_cast<std::int64_t>(tile.count) * area(tile);
    }
  }

  void run() {
    if (!fits_by_area()) return;
    if (fillers_ > 0) normal_x_ = normal(corners_x_);
    if (fillers_ > 1) normal_y_ = normal(corners_y_);
    lay();
  }

 private:
  static Int128 area(const Rect& r) { return Int128{r.width().ticks()} * r.height().ticks(); }
  static Int128 area(const Tile& t) { return Int128{t.length.ticks()} * t.width.ticks(); }

  bool fits_by_area() const {
    const Int128 rest = free_area_ - tile_area_;
    if (fillers_ == 0) return rest == 0;
    const Int128 least = Int128{task_.least_side.ticks()} * task_.least_side.ticks();
    const Int128 most = Int128{task_.longest_side.ticks()} * task_.longest_side.ticks();
    return rest >= least * static_cast<std::int64_t>(fillers_) &&
           rest <= most * static_cast<std::int64_t>(fillers_);
  }

  // Sums of sides of tiles from each corner inward, both ways.
  std::vector<Length> normal(const std::set<Length>& corners) const {
    const Length low = *corners.begin();
    const Length high = *corners.rbegin();
    std::set<Length> sums{Length{}};
    for (const Tile& tile : task_.tiles)
      for (std::size_t n = 0; n < tile.count; ++n) {
        const std::set<Length> before = sums;
        for (const Length sum : before)
          for (const Length side : {tile.length, tile.width})
            if (sum + side <= high - low) sums.insert(sum + side);
      }
    std::set<Length> result;
    for (const Length corner : corners)
      for (const Length sum : sums)
        for (const Length at : {corner - sum, corner + sum})
          if (at >= low && at <= high) result.insert(at);
    return {result.begin(), result.end()};
  }

  bool is_free(Point p) const {
    const auto holds = [p](const Rect& r) {
      return r.low.x <= p.x && p.x < r.high.x && r.low.y <= p.y && p.y < r.high.y;
    };
    return std::ranges::any_of(parts_, holds) &&
           std::ranges::none_of(laid_, [&](const LaidTile& tile) { return holds(tile.at); });
  }

  // Lines at which something begins or ends.
  struct Lines {
    std::set<Length> xs;
    std::set<Length> ys;
  };
  Lines lines() const {
    Lines result{corners_x_, corners_y_};
    for (const LaidTile& tile : laid_)
      for (const Point& p : {tile.at.low, tile.at.high}) {
        result.xs.insert(p.x);
        result.ys.insert(p.y);
      }
    return result;
  }

  // Without fillers the tiles to come must make up the free stretch from the corner along, and that across.
  bool stretches_can_be_made(Point corner, const Lines& at) {
    if (fillers_ > 0) return true;
    const std::vector<Length>& sums = sums_of_left();
    const auto made = [&](Length stretch) { return std::ranges::binary_search(sums, stretch); };
    const auto blocked_x = std::find_if(at.xs.upper_bound(corner.x), at.xs.end(), [&](Length x) {
      return !is_free({x, corner.y});
    });
    if (blocked_x != at.xs.end() && !made(*blocked_x - corner.x)) return false;
    const auto blocked_y = std::find_if(at.ys.upper_bound(corner.y), at.ys.end(), [&](Length y) {
      return !is_free({corner.x, y});
    });
    return blocked_y == at.ys.end() || made(*blocked_y - corner.y);
  }

  // All sums of sides of tiles not laid yet, each counted once; kept for each rest, as the same come again.
  const std::vector<Length>& sums_of_left() {
    const auto [kept, is_new] = sums_.try_emplace(left_);
    if (is_new) {
      std::set<Length> sums{Length{}};
      for (std::size_t kind = 0; kind < left_.size(); ++kind)
        for (std::size_t n = 0; n < left_[kind]; ++n) {
          const std::set<Length> before = sums;
          for (const Length sum : before)
            for (const Length side : {task_.tiles[kind].length, task_.tiles[kind].width})
              sums.insert(sum + side);
        }
      kept->second.assign(sums.begin(), sums.end());
    }
    return kept->second;
  }

  // The lowest free corner in y, then in x. It lies at a side of a part or of a tile laid.
  std::optional<Point> next_corner(const Lines& at) const {
    const auto& [xs, ys] = at;
    for (const Length y : ys)
      for (const Length x : xs)
        if (is_free({x, y})) return Point{x, y};
    return std::nullopt;
  }

  bool can_lie(const Rect& at) const {
    if (std::ranges::any_of(laid_, [&](const LaidTile& tile) { return overlaps(tile.at, at); })) return false;
    Int128 covered = 0;
    for (const Rect& part : parts_)
      if (overlaps(part, at))
        covered += area(Rect{{std::max(part.low.x, at.low.x), std::max(part.low.y, at.low.y)},
                             {std::min(part.high.x, at.high.x), std::min(part.high.y, at.high.y)}});
    return covered == area(at);
  }

  void lay() {
    const Lines at = lines();
    const std::optional<Point> corner = next_corner(at);
    if (!corner) {
      result_.found.emplace_back(laid_.begin() + std::ssize(task_.taken), laid_.end());
      if (result_.found.size() >= bounds_.found) result_.complete = false;
      return;
    }
    if (!stretches_can_be_made(*corner, at)) {
      ++result_.pruned;
      return;
    }
    for (std::size_t kind = 0; kind < left_.size(); ++kind) {
      if (left_[kind] == 0) continue;
      const Tile& tile = task_.tiles[kind];
      --left_[kind];
      try_at(*corner, kind, {tile.length, tile.width});
      if (tile.length != tile.width) try_at(*corner, kind, {tile.width, tile.length});
      ++left_[kind];
    }
    if (fillers_ > 0) lay_filler(*corner);
  }

  void try_at(Point corner, std::size_t kind, Vector size) {
    if (!result_.complete) return;
    const Rect at{corner, corner + size};
    if (!can_lie(at)) return;
    if (++result_.stages > bounds_.stages) {
      result_.complete = false;
      return;
    }
    const bool filler = kind == left_.size();
    free_area_ -= area(at);
    if (!filler) tile_area_ -= area(at);
    laid_.push_back({kind, at});
    if (fits_by_area())
      lay();
    else
      ++result_.pruned;
    laid_.pop_back();
    if (!filler) tile_area_ += area(at);
    free_area_ += area(at);
  }

  void lay_filler(Point corner) {
    const auto sides = [&](const std::vector<Length>& normal, bool along) {
      std::set<Length> far(normal.begin(), normal.end());
      for (const LaidTile& tile : laid_)
        for (const Point& p : {tile.at.low, tile.at.high}) far.insert(along ? p.x : p.y);
      std::vector<Length> result;
      const Length from = along ? corner.x : corner.y;
      for (const Length side : far)
        if (side - from >= task_.least_side && side - from <= task_.longest_side)
          result.push_back(side - from);
      return result;
    };
    --fillers_;
    const std::vector<Length> widths = fillers_ > 0 ? sides(normal_y_, false) : std::vector<Length>{};
    for (const Length length : sides(normal_x_, true)) {
      if (!can_lie({corner, corner + Vector{length, one_tick}})) break;
      if (fillers_ == 0) lay_last(corner, length);
      for (const Length width : widths) {
        const Rect at{corner, corner + Vector{length, width}};
        if (!can_lie(at)) break;
        try_at(corner, left_.size(), {length, width});
      }
    }
    ++fillers_;
  }

  // The last filler takes all that the tiles leave.
  void lay_last(Point corner, Length length) {
    const Int128 rest = free_area_ - tile_area_;
    if (rest <= 0 || rest % length.ticks() != 0) return;
    const auto width = Length::from_ticks(static_cast<std::int64_t>(rest / length.ticks()));
    if (width >= task_.least_side && width <= task_.longest_side)
      try_at(corner, left_.size(), {length, width});
  }

  const TilingTask& task_;
  std::vector<Rect> parts_;
  TilingBounds bounds_;
  Tilings& result_;
  std::size_t fillers_;
  std::set<Length> corners_x_;
  std::set<Length> corners_y_;
  std::vector<Length> normal_x_;
  std::vector<Length> normal_y_;
  std::vector<std::size_t> left_;
  std::map<std::vector<std::size_t>, std::vector<Length>> sums_;
  std::vector<LaidTile> laid_;
  Int128 free_area_ = 0;
  Int128 tile_area_ = 0;
};

}  // namespace

Tilings tilings(const TilingTask& task, const TilingBounds& bounds) {
  if (task.parts.empty()) throw std::invalid_argument("nothing to cover");
  for (const Tile& tile : task.tiles)
    if (tile.length <= Length{} || tile.width <= Length{}) throw std::invalid_argument("a tile without size");
  Tilings result;
  for (std::size_t fillers = 0; fillers <= task.fillers && result.found.empty() && result.complete; ++fillers)
    Tiler(task, fillers, bounds, result).run();
  return result;
}

}  // namespace berthwright

#include <berthwright/solve/split/tiling.h>

#include <algorithm>
#include <map>
#include <ranges>
#include <set>
#include <stdexcept>
#include <unordered_set>

#include "solve/split/skyline.h"

namespace berthwright {
namespace {

Int128 area(Vector size) { return Int128{size.x.ticks()} * size.y.ticks(); }

struct StateHash {
  std::size_t operator()(const std::vector<std::int64_t>& key) const {
    std::uint64_t hash = 14695981039346656037U;
    for (const std::int64_t part : key) {
      hash = (hash ^ static_cast<std::uint64_t>(part)) * 1099511628211U;
      hash ^= hash >> 29U;
    }
    return hash;
  }
};

/// One count of fillers, searched through.
///
/// Why nothing is lost: what lies on the base of a valley lies between its walls, and what crosses a stretch
/// upward lies between its ends. So sides of tiles, each tile taken once, make up either, but where a filler
/// takes part. A last filler's side is what sides of tiles leave of the valley in whose corner it begins: no
/// other filler is left to lie beside it. And with at most one filler left, only the skyline, the tiles left
/// and the area decide whether the rest comes out: of states that did not, none is gone into again.
class Tiler {
 public:
  Tiler(const TilingTask& task, std::size_t fillers, const TilingBounds& bounds, Tilings& result)
      : task_(task), bounds_(bounds), result_(result), fillers_(fillers) {
    for (const Rect& part : task.parts) {
      corners_x_.insert({part.low.x, part.high.x});
      corners_y_.insert({part.low.y, part.high.y});
    }
    for (const Tile& tile : task.tiles) {
      left_.push_back(tile.count);
      tile_area_ += area({tile.length, tile.width}) * static_cast<std::int64_t>(tile.count);
    }
  }

  void run() {
    const Skyline bay(task_.parts, task_.taken);
    free_area_ = bay.free_area();
    if (!fits_by_area()) return;
    if (fillers_ > 1) {
      normal_x_ = normal(corners_x_);
      normal_y_ = normal(corners_y_);
    }
    lay(bay);
  }

 private:
  Int128 for_fillers() const { return free_area_ - tile_area_; }

  bool fits_by_area() const {
    if (fillers_ == 0) return for_fillers() == 0;
    const auto count = static_cast<std::int64_t>(fillers_);
    const Length widest = std::min(task_.longest_side, task_.narrower_side);
    return for_fillers() >= area({task_.least_side, task_.least_side}) * count &&
           for_fillers() <= area({task_.longest_side, widest}) * count;
  }

  bool can_be_filler(Vector size) const {
    const auto [less, more] = std::minmax(size.x, size.y);
    return less >= task_.least_side && less <= task_.narrower_side && more <= task_.longest_side;
  }

  // Sums of sides of tiles from each corner inward, both ways.
  std::vector<Length> normal(const std::set<Length>& corners) const {
    const Length low = *corners.begin();
    const Length high = *corners.rbegin();
    const std::vector<Length> sums = sums_of(left_, high - low);
    std::set<Length> result;
    for (const Length corner : corners)
      for (const Length sum : sums)
        for (const Length at : {corner - sum, corner + sum})
          if (at >= low && at <= high) result.insert(at);
    return {result.begin(), result.end()};
  }

  // All sums of sides of so many tiles, each counted once, rising.
  std::vector<Length> sums_of(const std::vector<std::size_t>& counts, Length most) const {
    std::set<Length> sums{Length{}};
    for (std::size_t kind = 0; kind < counts.size(); ++kind)
      for (std::size_t n = 0; n < counts[kind]; ++n) {
        const std::set<Length> before = sums;
        for (const Length sum : before)
          for (const Length side : {task_.tiles[kind].length, task_.tiles[kind].width})
            if (sum + side <= most) sums.insert(sum + side);
      }
    return {sums.begin(), sums.end()};
  }

  // Of the tiles not laid yet; kept for each rest, as the same come again.
  const std::vector<Length>& sums_of_left() {
    const auto [kept, is_new] = sums_.try_emplace(left_);
    if (is_new)
      kept->second = sums_of(left_, std::max(*corners_x_.rbegin() - *corners_x_.begin(),
                                             *corners_y_.rbegin() - *corners_y_.begin()));
    return kept->second;
  }

  // Whether valleys and stretches are made up by tiles left, or by them and the fillers left.
  bool can_come_out(const Skyline& skyline) {
    const std::vector<Length>& sums = sums_of_left();
    const auto made = [&](Length stretch) { return std::ranges::binary_search(sums, stretch); };
    std::vector<Skyline::Valley> valleys = skyline.valleys();
    std::erase_if(valleys, [&](const Skyline::Valley& valley) { return made(valley.width()); });
    if (valleys.size() > fillers_) return false;
    if (fillers_ > 1) return true;
    std::vector<Skyline::Stretch> stretches;
    std::ranges::copy_if(skyline.stretches(), std::back_inserter(stretches),
                         [&](const Skyline::Stretch& stretch) { return !made(stretch.free()); });
    if (valleys.empty() && stretches.empty()) return true;
    if (fillers_ == 0) return false;
    // The one filler must mend them all.
    const auto mends = [&](Vector size) {
      if (!can_be_filler(size)) return false;
      for (const Skyline::Valley& valley : valleys)
        if (size.x > valley.width() || !made(valley.width() - size.x)) return false;
      for (const Skyline::Stretch& stretch : stretches)
        if (size.y > stretch.free() || !made(stretch.free() - size.y)) return false;
      return stretches.empty() || stretches.back().high - stretches.front().low <= size.x;
    };
    return std::ranges::any_of(sums, [&](Length sum) {
      const Length side = (valleys.empty() ? stretches.front().free() : valleys.front().width()) - sum;
      const Length other = rest_of_area(side);
      if (other <= Length{}) return false;
      return mends(valleys.empty() ? Vector{other, side} : Vector{side, other});
    });
  }

  // The other side of the last filler; zero: it does not divide.
  Length rest_of_area(Length side) const {
    if (side <= Length{} || for_fillers() <= 0 || for_fillers() % side.ticks() != 0) return {};
    return Length::from_ticks(static_cast<std::int64_t>(for_fillers() / side.ticks()));
  }

  void lay(const Skyline& skyline) {
    if (skyline.covered()) {
      result_.found.push_back(laid_);
      if (result_.found.size() >= bounds_.found) result_.complete = false;
      return;
    }
    if (!can_come_out(skyline)) {
      ++result_.pruned;
      return;
    }
    std::vector<std::int64_t> state;
    if (fillers_ < 2) {
      state.assign(left_.begin(), left_.end());
      state.push_back(static_cast<std::int64_t>(fillers_));
      skyline.append_key(state);
      if (dead_.contains(state)) {
        ++result_.pruned;
        return;
      }
    }
    const std::size_t found_before = result_.found.size();
    for (std::size_t kind = 0; kind < left_.size(); ++kind) {
      if (left_[kind] == 0) continue;
      const Tile& tile = task_.tiles[kind];
      --left_[kind];
      try_with(skyline, kind, {tile.length, tile.width});
      if (tile.length != tile.width) try_with(skyline, kind, {tile.width, tile.length});
      ++left_[kind];
    }
    if (fillers_ == 1) lay_last(skyline);
    if (fillers_ > 1) lay_filler(skyline);
    if (fillers_ < 2 && result_.complete && result_.found.size() == found_before)
      dead_.insert(std::move(state));
  }

  void try_with(const Skyline& skyline, std::size_t kind, Vector size) {
    if (!result_.complete) return;
    const std::optional<Skyline> next = skyline.with(size);
    if (!next) return;
    if (++result_.stages > bounds_.stages) {
      result_.complete = false;
      return;
    }
    const bool filler = kind == left_.size();
    free_area_ -= area(size);
    if (!filler) tile_area_ -= area(size);
    const Point corner = skyline.corner();
    laid_.push_back({kind, {corner, corner + size}});
    if (fits_by_area())
      lay(*next);
    else
      ++result_.pruned;
    laid_.pop_back();
    if (!filler) tile_area_ += area(size);
    free_area_ += area(size);
  }

  void lay_last(const Skyline& skyline) {
    const Length whole = skyline.lowest().width();
    const std::vector<Length>& sums = sums_of_left();
    for (const Length sum : std::views::reverse(sums)) {
      const Vector size{whole - sum, rest_of_area(whole - sum)};
      if (!can_be_filler(size)) continue;
      --fillers_;
      try_with(skyline, left_.size(), size);
      ++fillers_;
    }
  }

  void lay_filler(const Skyline& skyline) {
    const Point corner = skyline.corner();
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
    const std::vector<Length> widths = sides(normal_y_, false);
    for (const Length length : sides(normal_x_, true)) {
      if (!skyline.with({length, one_tick})) break;
      for (const Length width : widths) {
        if (!skyline.with({length, width})) break;
        if (can_be_filler({length, width})) try_with(skyline, left_.size(), {length, width});
      }
    }
    ++fillers_;
  }

  const TilingTask& task_;
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
  std::unordered_set<std::vector<std::int64_t>, StateHash> dead_;
  Int128 free_area_ = 0;
  Int128 tile_area_ = 0;
};

}  // namespace

Tilings tilings(const TilingTask& task, const TilingBounds& bounds) {
  if (task.parts.empty()) throw std::invalid_argument("nothing to cover");
  for (const Tile& tile : task.tiles)
    if (tile.length <= Length{} || tile.width <= Length{}) throw std::invalid_argument("a tile without size");
  Tilings result;
  for (std::size_t fillers = task.least_fillers;
       fillers <= task.fillers && result.found.empty() && result.complete; ++fillers)
    Tiler(task, fillers, bounds, result).run();
  return result;
}

}  // namespace berthwright

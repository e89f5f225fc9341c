#include <berthwright/solve/place/strip.h>

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>
#include <stdexcept>

namespace berthwright {
namespace {

constexpr std::int64_t endless = std::numeric_limits<std::int64_t>::max() / 4;

/// A stretch of the front: so far along the strip it is filled.
struct StripStep {
  std::int64_t across = 0;
  std::int64_t wide = 0;
  std::int64_t along = 0;
};

struct StripSize {
  std::int64_t length = 0;
  std::int64_t width = 0;
};

/// How a part fits a gap between two walls; the greatest is best.
enum class GapFit { loose, flush_right, flush_left, fills_high, fills, flush_fills, levels };

struct GapChoice {
  std::size_t place = 0;  ///< in the row
  StripSize size;
  GapFit fit = GapFit::loose;
};

/// Walls beside the lowest gap, from its front on.
struct GapWalls {
  std::int64_t left = endless;
  std::int64_t right = endless;
};

GapFit fit_of(const StripSize& size, std::int64_t wide, const GapWalls& walls) {
  const bool left = size.length == walls.left;
  const bool right = size.length == walls.right;
  if (size.width == wide) {
    if (left && right) return GapFit::levels;
    if (left || right)
      return size.length > std::min(walls.left, walls.right) ? GapFit::fills_high : GapFit::flush_fills;
    return size.length > std::min(walls.left, walls.right) ? GapFit::fills_high : GapFit::fills;
  }
  return left ? GapFit::flush_left : right ? GapFit::flush_right : GapFit::loose;
}

/// SplitMix64 (Steele, Lea & Flood 2014).
class StripDice {
 public:
  explicit StripDice(std::uint64_t seed) : state_(seed) {}
  std::size_t below(std::size_t count) {
    std::uint64_t z = (state_ += 0x9E3779B97F4A7C15U);
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return static_cast<std::size_t>((z ^ (z >> 31U)) % count);
  }

 private:
  std::uint64_t state_;
};

/// What a row of parts comes to.
struct LaidStrip {
  std::int64_t length = 0;
  Int128 waste = 0;  ///< closed gaps
  friend auto operator<=>(const LaidStrip&, const LaidStrip&) = default;
};

class StripLayer {
 public:
  StripLayer(std::int64_t width, const std::vector<StripPart>& parts) : width_(width) {
    for (const StripPart& part : parts) {
      sizes_.push_back({part.length.ticks(), part.width.ticks()});
      turns_.push_back(part.turns && part.length != part.width);
    }
  }

  const std::vector<StripSize>& sizes() const { return sizes_; }

  /// Lays the row; gives up beyond `limit`. Where `places` is given, they are told.
  LaidStrip lay(std::vector<std::size_t> row, std::int64_t limit, std::vector<StripPlace>* places = nullptr) {
    front_ = {{0, width_, 0}};
    LaidStrip laid;
    while (!row.empty() && laid.length <= limit) {
      const std::size_t at = lowest();
      const GapWalls walls = walls_of(at);
      const std::optional<GapChoice> choice = best_for(row, front_[at].wide, walls);
      if (!choice) {
        const std::int64_t rise = std::min(walls.left, walls.right);
        laid.waste += Int128{front_[at].wide} * rise;
        front_[at].along += rise;
      } else {
        const Rect rect = put(at, *choice, walls);
        if (places != nullptr) places->push_back({row[choice->place], rect});
        laid.length = std::max(laid.length, rect.high.x.ticks());
        row.erase(row.begin() + static_cast<std::ptrdiff_t>(choice->place));
      }
      join_level_steps();
    }
    return laid;
  }

 private:
  std::size_t lowest() const {
    return static_cast<std::size_t>(std::ranges::min_element(front_, {}, &StripStep::along) - front_.begin());
  }
  GapWalls walls_of(std::size_t at) const {
    GapWalls walls;
    if (at > 0) walls.left = front_[at - 1].along - front_[at].along;
    if (at + 1 < front_.size()) walls.right = front_[at + 1].along - front_[at].along;
    return walls;
  }

  std::optional<GapChoice> best_for(const std::vector<std::size_t>& row, std::int64_t wide,
                                    const GapWalls& walls) const {
    std::optional<GapChoice> best;
    for (std::size_t i = 0; i < row.size(); ++i)
      for (const bool turned : {false, true}) {
        if (turned && !turns_[row[i]]) continue;
        StripSize size = sizes_[row[i]];
        if (turned) std::swap(size.length, size.width);
        if (size.width > wide) continue;
        const GapFit fit = fit_of(size, wide, walls);
        if (!best || fit > best->fit) best = {i, size, fit};
        if (fit == GapFit::levels) return best;
      }
    return best;
  }

  // At the wall it is flush with, else at the higher one.
  Rect put(std::size_t at, const GapChoice& choice, const GapWalls& walls) {
    StripStep& gap = front_[at];
    const bool right =
        choice.fit == GapFit::flush_right || (choice.fit == GapFit::loose && walls.right > walls.left);
    const StripStep step{right ? gap.across + gap.wide - choice.size.width : gap.across, choice.size.width,
                         gap.along + choice.size.length};
    const Point low{Length::from_ticks(gap.along), Length::from_ticks(step.across)};
    const Vector size{Length::from_ticks(choice.size.length), Length::from_ticks(choice.size.width)};
    if (step.wide == gap.wide) {
      gap.along = step.along;
    } else {
      gap.wide -= step.wide;
      if (!right) gap.across += step.wide;
      front_.insert(front_.begin() + static_cast<std::ptrdiff_t>(right ? at + 1 : at), step);
    }
    return {low, low + size};
  }

  void join_level_steps() {
    for (std::size_t i = 0; i + 1 < front_.size();)
      if (front_[i].along == front_[i + 1].along) {
        front_[i].wide += front_[i + 1].wide;
        front_.erase(front_.begin() + static_cast<std::ptrdiff_t>(i) + 1);
      } else {
        ++i;
      }
  }

  std::int64_t width_;
  std::vector<StripSize> sizes_{};
  std::vector<bool> turns_{};
  std::vector<StripStep> front_{};
};

/// Rows to begin with, the largest first in one sense or another.
std::vector<std::vector<std::size_t>> first_rows(const std::vector<StripSize>& sizes) {
  std::vector<std::vector<std::size_t>> rows;
  const auto add = [&](const auto& key) {
    std::vector<std::size_t> row(sizes.size());
    std::iota(row.begin(), row.end(), std::size_t{});
    std::ranges::stable_sort(row, std::greater{}, [&](std::size_t i) { return key(sizes[i]); });
    rows.push_back(std::move(row));
  };
  add([](const StripSize& s) { return Int128{s.length} * s.width; });
  add([](const StripSize& s) { return std::pair(s.length, s.width); });
  add([](const StripSize& s) { return std::pair(s.width, s.length); });
  add([](const StripSize& s) { return s.length + s.width; });
  add([](const StripSize& s) { return std::max(s.length, s.width); });
  return rows;
}

Length strip_bound(Length width, const std::vector<StripPart>& parts) {
  Int128 area = 0;
  std::int64_t longest = 0;
  for (const StripPart& part : parts) {
    area += Int128{part.length.ticks()} * part.width.ticks();
    const bool lies = part.width <= width;
    const bool turned = part.turns && part.length <= width;
    if (part.length <= Length{} || part.width <= Length{} || (!lies && !turned))
      throw std::invalid_argument("a part without size, or wider than the strip");
    const std::int64_t straight = lies ? part.length.ticks() : endless;
    longest = std::max(longest, std::min(straight, turned ? part.width.ticks() : endless));
  }
  if (width <= Length{}) throw std::invalid_argument("a strip without width");
  const Int128 by_area = (area + width.ticks() - 1) / width.ticks();
  return Length::from_ticks(std::max(longest, static_cast<std::int64_t>(by_area)));
}

}  // namespace

StripPlacing placed_on_strip(Length width, const std::vector<StripPart>& parts, std::size_t rounds,
                             std::uint64_t seed) {
  StripPlacing result{{}, strip_bound(width, parts)};
  if (parts.empty()) return result;
  StripLayer layer(width.ticks(), parts);
  StripDice dice(seed);
  const std::vector<std::vector<std::size_t>> starts = first_rows(layer.sizes());
  std::optional<std::pair<LaidStrip, std::vector<std::size_t>>> best;
  const std::size_t walk = std::max<std::size_t>(1, rounds / 8);
  const auto ended = [&] { return result.rounds >= rounds || best->first.length <= result.bound.ticks(); };
  for (std::size_t start = 0; start == 0 || !ended(); ++start) {
    std::vector<std::size_t> row = starts[start % starts.size()];
    if (start >= starts.size())
      for (std::size_t i = 0; i < 1 + row.size() / 8; ++i)
        std::swap(row[dice.below(row.size())], row[dice.below(row.size())]);
    LaidStrip now = layer.lay(row, endless);
    ++result.rounds;
    if (!best || now < best->first) best = {now, row};
    for (std::size_t round = 0; round < walk && !ended(); ++round, ++result.rounds) {
      const std::size_t a = dice.below(row.size());
      const std::size_t b = dice.below(row.size());
      std::swap(row[a], row[b]);
      const LaidStrip next = layer.lay(row, now.length);
      if (next > now) {
        std::swap(row[a], row[b]);
        continue;
      }
      now = next;
      if (now < best->first) best = {now, row};
    }
  }
  result.length = Length::from_ticks(layer.lay(best->second, endless, &result.places).length);
  return result;
}

}  // namespace berthwright

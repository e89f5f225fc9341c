#include <berthwright/solve/split/reuse.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include <berthwright/geometry/disc.h>
#include <berthwright/geometry/placement.h>
#include <berthwright/solve/split/tiling.h>

namespace berthwright {
namespace {

using BoxSize = std::pair<Length, Length>;
constexpr TilingBounds bounds_of_one{50'000, 200};
constexpr std::size_t most_choices = 4'000;
constexpr std::size_t most_stages = 2'000'000;

BoxSize box_size(const Rect& box) { return std::minmax(box.width(), box.height()); }
bool is_box(const Region& outline) {
  return outline.area() == Area::rectangle(outline.bounds().width(), outline.bounds().height());
}
bool within(const Rect& inner, const Rect& outer) { return hull(inner, outer) == outer; }

/// A place for a cushion that is no rectangle.
struct RelayPin {
  RelaidCushion laid;
  Region outline;  // there
};

/// Which cushions are laid, and where those that are no rectangles lie.
struct RelayChoice {
  std::vector<std::size_t> free;  // laid by the search
  std::vector<const RelayPin*> pins;
  Area open;  // at least, less than nothing where they hang over
};

/// How good a laying is; the least is best.
struct RelayMerit {
  Area open;
  Length widest;
  std::size_t openings = 0;
  Area over;
  std::size_t moved = 0;
  std::size_t turned = 0;
  friend auto operator<=>(const RelayMerit&, const RelayMerit&) = default;
};

class Relayer {
 public:
  Relayer(const NightBay& bay, const std::vector<OwnCushion>& cushions, const ReuseLimits& limits)
      : bay_(bay), limits_(limits), result_{cushions} {
    const std::vector<Region> parts(bay.parts.begin(), bay.parts.end());
    whole_ = united(parts);
    to_cover_ = without(whole_, bay.kept_out);
    risen_ = bay.kept_out.parts();
    Area all;
    for (const OwnCushion& cushion : cushions) all += cushion.outline.area();
    result_.least_open = std::max(Area{}, to_cover_.area() - all);
    for (std::size_t i = 0; i < cushions.size(); ++i)
      if (!is_box(cushions[i].outline)) pins_[i] = pins_of(i);
  }

  Reuse run() {
    const std::vector<RelayChoice> choices = all_choices();
    result_.choices = choices.size();
    for (const RelayChoice& choice : choices) {
      if (best_ && choice.open > best_->open) {
        ++result_.skipped;
        continue;
      }
      look_at(choice);
    }
    tell();
    return std::move(result_);
  }

 private:
  const OwnCushion& cushion(std::size_t i) const { return result_.cushions[i]; }

  // Every way to lay the box of a cushion against lines of the bay, or where it is, clear of what rises.
  std::vector<RelayPin> pins_of(std::size_t index) const {
    std::vector<RelayPin> result;
    std::vector<Region> seen;
    for (const bool flipped : {false, true})
      for (int quarters = 0; quarters < 4; ++quarters) {
        const Region turned = Placement{flipped, Turn::quarters(quarters), {}}(cushion(index).outline);
        const Region shape = moved(turned, Point{} - turned.bounds().low);
        if (std::ranges::find(seen, shape) != seen.end()) continue;
        seen.push_back(shape);
        for (const Point& corner : corners_for(index, shape.bounds())) {
          Region outline = moved(shape, corner - Point{});
          const Rect at = outline.bounds();
          if (!within(at, bay_.bounds()) || !contains(whole_, Region(at)) || overlaps(outline, bay_.kept_out))
            continue;
          const bool stays = cushion(index).now == outline;
          result.push_back({{index, at, quarters, flipped, stays}, std::move(outline)});
        }
      }
    return result;
  }

  std::set<Point> corners_for(std::size_t index, const Rect& box) const {
    std::set<Length> xs;
    std::set<Length> ys;
    for (const Rect& part : bay_.parts) {
      xs.insert({part.low.x, part.high.x, part.low.x - box.width(), part.high.x - box.width()});
      ys.insert({part.low.y, part.high.y, part.low.y - box.height(), part.high.y - box.height()});
    }
    std::set<Point> result;
    for (const Length x : xs)
      for (const Length y : ys) result.insert({x, y});
    if (cushion(index).now) result.insert(cushion(index).now->bounds().low);
    return result;
  }

  // Sets of cushions, those of one size by their number, with each way to pin those that are no rectangles;
  // those that may leave least open first.
  std::vector<RelayChoice> all_choices() {
    std::map<BoxSize, std::vector<std::size_t>> by_size;
    for (std::size_t i = 0; i < result_.cushions.size(); ++i)
      if (!pins_.contains(i)) by_size[box_size(cushion(i).outline.bounds())].push_back(i);
    std::vector<RelayChoice> choices{{{}, {}, to_cover_.area()}};
    for (const auto& [size, alike] : by_size) {
      const std::size_t before = choices.size();
      for (std::size_t c = 0; c < before; ++c)
        for (std::size_t count = 1; count <= alike.size(); ++count) {
          RelayChoice choice = choices[c];
          for (std::size_t n = 0; n < count; ++n) take(choice, alike[n]);
          choices.push_back(std::move(choice));
        }
    }
    for (const auto& [index, pins] : pins_) {
      const std::size_t before = choices.size();
      for (std::size_t c = 0; c < before; ++c) {
        RelayChoice boxed = choices[c];
        take(boxed, index);
        choices.push_back(std::move(boxed));
        for (const RelayPin& pin : pins) {
          const bool clear = std::ranges::none_of(
              choices[c].pins, [&](const RelayPin* other) { return overlaps(other->laid.at, pin.laid.at); });
          if (!clear) continue;
          if (choices.size() == most_choices) {
            result_.complete = false;
            break;
          }
          RelayChoice pinned = choices[c];
          pinned.pins.push_back(&pin);
          pinned.open = pinned.open - pin.outline.area();
          choices.push_back(std::move(pinned));
        }
      }
    }
    std::ranges::stable_sort(choices, {}, [](const RelayChoice& choice) {
      const auto moved =
          std::ranges::count_if(choice.pins, [](const RelayPin* pin) { return !pin->laid.stays; });
      return std::pair(choice.open, moved);
    });
    return choices;
  }

  void take(RelayChoice& choice, std::size_t index) const {
    choice.free.push_back(index);
    choice.open = choice.open - cushion(index).outline.area();
  }

  void look_at(const RelayChoice& choice) {
    std::vector<Rect> taken;
    for (const RelayPin* pin : choice.pins) taken.push_back(pin->laid.at);
    for (const Region& risen : risen_) {
      const Rect box = risen.bounds();
      if (std::ranges::any_of(choice.pins, [&](const RelayPin* pin) { return within(box, pin->laid.at); }))
        continue;
      taken.push_back(box);
    }
    std::map<BoxSize, std::size_t> counts;
    for (const std::size_t index : choice.free) ++counts[box_size(cushion(index).outline.bounds())];
    TilingTask task;
    task.taken = std::move(taken);
    task.fillers = limits_.openings;
    for (const auto& [size, count] : counts) task.tiles.push_back({size.first, size.second, count});
    for (const std::vector<Rect>& parts : with_overhang()) {
      if (result_.stages > most_stages) {
        result_.complete = false;
        return;
      }
      task.parts = parts;
      const Tilings found = tilings(task, bounds_of_one);
      result_.stages += found.stages;
      result_.pruned += found.pruned;
      // That there are more layings than are kept loses no laying that leaves less open.
      if (found.stages > bounds_of_one.stages) result_.complete = false;
      for (const std::vector<LaidTile>& way : found.found) judge(choice, task, way);
      // Nothing hangs over, so nothing of this choice leaves less open.
      if (!found.found.empty() && parts == bay_.parts) return;
    }
  }

  // The parts, and the parts with a free side along and one across drawn out by what sums of sides exceed the
  // bay.
  const std::vector<std::vector<Rect>>& with_overhang() {
    if (!drawn_out_.empty()) return drawn_out_;
    const Rect all = bay_.bounds();
    std::set<Length> sums{Length{}};
    for (const OwnCushion& own : result_.cushions) {
      const Rect box = own.outline.bounds();
      const std::set<Length> before = sums;
      for (const Length sum : before)
        for (const Length side : {box.width(), box.height()})
          if (sum + side <= std::max(all.width(), all.height()) + limits_.overhang) sums.insert(sum + side);
    }
    const auto beyond = [&](Length extent, Wall low, Wall high) {
      std::vector<Length> result{Length{}};
      if (is_free(low) || is_free(high))
        for (const Length sum : sums)
          if (sum > extent && sum - extent <= limits_.overhang) result.push_back(sum - extent);
      return result;
    };
    for (const Length along : beyond(all.width(), Wall::front, Wall::rear))
      for (const Length across : beyond(all.height(), Wall::left, Wall::right)) {
        std::vector<Rect> parts = bay_.parts;
        for (Rect& part : parts) {
          if (is_free(Wall::rear) && part.high.x == all.high.x) part.high.x += along;
          if (!is_free(Wall::rear) && part.low.x == all.low.x) part.low.x -= along;
          if (is_free(Wall::right) && part.high.y == all.high.y) part.high.y += across;
          if (!is_free(Wall::right) && part.low.y == all.low.y) part.low.y -= across;
        }
        drawn_out_.push_back(std::move(parts));
      }
    return drawn_out_;
  }

  bool is_free(Wall side) const { return std::ranges::find(bay_.free_sides, side) != bay_.free_sides.end(); }

  void judge(const RelayChoice& choice, const TilingTask& task, const std::vector<LaidTile>& way) {
    RelayMerit merit{choice.open, {}, 0, {}, 0, 0};
    std::vector<RelaidCushion> laid;
    for (const RelayPin* pin : choice.pins) laid.push_back(pin->laid);
    std::vector<std::size_t> rest = choice.free;
    for (const bool in_place : {true, false})
      for (const LaidTile& tile : way) {
        if (tile.kind == task.tiles.size()) continue;
        const auto fits = std::ranges::find_if(rest, [&](std::size_t index) {
          return box_size(cushion(index).outline.bounds()) == box_size(tile.at) &&
                 (!in_place || (cushion(index).now && cushion(index).now->bounds() == tile.at));
        });
        const bool done = std::ranges::any_of(
            laid, [&](const RelaidCushion& other) { return overlaps(other.at, tile.at); });
        if (fits == rest.end() || done) continue;
        const Rect box = cushion(*fits).outline.bounds();
        const int quarters = box.width() == tile.at.width() && box.height() == tile.at.height() ? 0 : 1;
        laid.push_back({*fits, tile.at, quarters, false, in_place});
        rest.erase(fits);
      }
    for (const LaidTile& tile : way)
      if (tile.kind == task.tiles.size()) {
        ++merit.openings;
        merit.widest = std::max(merit.widest, std::min(tile.at.width(), tile.at.height()));
      }
    for (const RelaidCushion& one : laid) {
      merit.over += without(Region(one.at), whole_).area();
      merit.moved += one.stays ? 0 : 1;
      merit.turned += one.quarters == 0 ? 0 : 1;
    }
    merit.open += merit.over;
    if (best_ && !(merit < *best_)) return;
    best_ = merit;
    result_.laid = std::move(laid);
    result_.only_corners = merit.openings == 0;
  }

  void tell() {
    std::ranges::sort(result_.laid, {}, &RelaidCushion::cushion);
    std::vector<Region> lying_there;
    std::vector<Length> thick;
    for (const RelaidCushion& one : result_.laid) {
      lying_there.push_back(region_of(result_, one));
      thick.push_back(cushion(one.cushion).thickness);
    }
    for (std::size_t i = 0; i < result_.cushions.size(); ++i)
      if (std::ranges::find(result_.laid, i, &RelaidCushion::cushion) == result_.laid.end())
        result_.left_over.push_back(i);
    const Region covered = united(lying_there);
    result_.open = without(to_cover_, covered);
    result_.overhang = without(covered, whole_);
    if (const std::optional<Disc> disc = largest_disc(result_.open)) result_.widest_gap = disc->radius * 2;
    if (!thick.empty()) result_.ridge = *std::ranges::max_element(thick) - *std::ranges::min_element(thick);
  }

  const NightBay& bay_;
  ReuseLimits limits_;
  Reuse result_;
  Region whole_;
  Region to_cover_;
  std::vector<Region> risen_;
  std::map<std::size_t, std::vector<RelayPin>> pins_;
  std::vector<std::vector<Rect>> drawn_out_;
  std::optional<RelayMerit> best_;
};

}  // namespace

Region region_of(const Reuse& reuse, const RelaidCushion& laid) {
  const Placement placement{laid.flipped, Turn::quarters(laid.quarters), {}};
  const Region turned = placement(reuse.cushions[laid.cushion].outline);
  return moved(turned, laid.at.low - turned.bounds().low);
}

Reuse reused(const NightBay& bay, const std::vector<OwnCushion>& cushions, const ReuseLimits& limits) {
  return Relayer(bay, cushions, limits).run();
}

}  // namespace berthwright

#include <berthwright/solve/bed/clear_height.h>

#include <algorithm>
#include <tuple>

#include "solve/room/room_shape.h"

namespace berthwright {

namespace {

/// A thing that is not part of the surface and rises above its level.
struct Overhang {
  Length height;
  const Placed* thing;
};

bool is_in_surface(const Placed& thing, const Mattress& mattress) {
  return thing.piece != nullptr &&
         std::ranges::find(mattress.in_surface, thing.piece->id) != mattress.in_surface.end();
}

std::vector<Overhang> overhangs(const Arrangement& arrangement, const Mattress& mattress) {
  std::vector<Overhang> found;
  for (const Placed& thing : arrangement.things)
    if (thing.solid.top() > mattress.level && !is_in_surface(thing, mattress) &&
        overlaps(thing.solid.outline(), mattress.closed))
      found.push_back({std::max(Length{}, thing.solid.base() - mattress.level), &thing});
  std::ranges::sort(found, [](const Overhang& a, const Overhang& b) {
    return std::tie(a.height, a.thing->id) < std::tie(b.height, b.thing->id);
  });
  return found;
}

std::size_t band_of(Length height) {
  return static_cast<std::size_t>(
      std::ranges::count_if(clear_height_bands, [&](Length limit) { return height >= limit; }));
}

// How far the roof comes down below the level over a stretch of a profile; zero where the room goes on above.
Length sunk(const Polygon& profile, Length from, Length to, Length level) {
  const Rect bounds = profile.bounds();
  const Length top = std::max(level, bounds.high.y) + 1_in;
  if (overlaps(Region(Rect{{from, level}, {to, top}}), Region(profile))) return {};
  const Length bottom = std::min(level, bounds.low.y) - 1_in;
  const Region under = common(Region(Rect{{from, bottom}, {to, level}}), Region(profile));
  const Region above = without(Region(Rect{{from, bottom}, {to, level}}), under);
  Length lowest = level;
  for (const Face& face : above.faces())
    if (face.outer.bounds().high.y == level) lowest = std::min(lowest, face.outer.bounds().low.y);
  return under.empty() ? level - bounds.low.y : level - std::max(lowest, bounds.low.y);
}

/// Divides the surface, lowest things first.
class Division {
 public:
  Division(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress)
      : interior_(plan->interior),
        level_(mattress.level),
        overhangs_(overhangs(arrangement, mattress)),
        left_(mattress.closed) {}

  std::vector<ClearHeight> made() {
    take_outside();
    for (const Overhang& overhang : overhangs_) take_under(overhang);
    for (const Length limit : clear_height_bands) {
      const Region higher = common(left_, room_between(interior_, level_, level_ + limit));
      take_roof(without(left_, higher));
      left_ = higher;
    }
    take_roof(left_);
    std::ranges::sort(parts_, [](const ClearHeight& a, const ClearHeight& b) {
      return std::tie(a.band, a.height, a.what) < std::tie(b.band, b.height, b.what);
    });
    return std::move(parts_);
  }

 private:
  // The room ends before the surface does, at its wall or under a roof below the level.
  void take_outside() {
    const Region outside = without(left_, room_at(interior_, level_));
    left_ = common(left_, room_at(interior_, level_));
    const Region beyond_wall = without(outside, Region(interior_.outline.polygon()));
    Region walls = beyond_wall;
    for (const Region& part : without(outside, beyond_wall).parts()) {
      const Rect bounds = part.bounds();
      Length down = sunk(interior_.side_profile.polygon(), bounds.low.x, bounds.high.x, level_);
      if (interior_.cross_profile)
        down = std::max(down, sunk(interior_.cross_profile->polygon(), bounds.low.y, bounds.high.y, level_));
      if (down > Length{})
        add(part, -down, "roof");
      else
        walls = united(walls, part);
    }
    add(walls, {}, "wall");
  }

  void take_under(const Overhang& overhang) {
    Region under = common(left_, overhang.thing->solid.outline());
    if (overhang.height > Length{})
      under = common(under, room_between(interior_, level_, level_ + overhang.height));
    left_ = without(left_, under);
    add(under, overhang.height, overhang.thing->id);
  }

  void take_roof(const Region& under) {
    if (!under.empty()) add(under, roof_over(interior_, under, level_) - level_, "roof");
  }

  void add(const Region& region, Length height, const std::string& what) {
    if (!region.empty()) parts_.push_back({region, height, what, band_of(height)});
  }

  const Interior& interior_;
  Length level_;
  std::vector<Overhang> overhangs_;
  Region left_;
  std::vector<ClearHeight> parts_;
};

}  // namespace

std::vector<ClearHeight> clear_heights(const Plan& plan, const Arrangement& arrangement,
                                       const Mattress& mattress) {
  if (mattress.closed.empty()) return {};
  return Division(plan, arrangement, mattress).made();
}

Region clear_over(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress, Length clear) {
  if (mattress.closed.empty()) return {};
  const Region high = room_between(plan->interior, mattress.level, mattress.level + clear);
  std::vector<Region> low;
  for (const Overhang& overhang : overhangs(arrangement, mattress))
    if (overhang.height < clear) low.push_back(overhang.thing->solid.outline());
  const Region under_roof = common(mattress.closed, high);
  return low.empty() ? under_roof : without(under_roof, united(low));
}

}  // namespace berthwright

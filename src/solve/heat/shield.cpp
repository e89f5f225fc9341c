#include "solve/heat/shield.h"

#include <algorithm>
#include <optional>
#include <set>

#include "geometry/parts_inside.h"
#include "geometry/ring.h"
#include "geometry/segment.h"

namespace berthwright {
namespace {

/// Heights of the straight lines from a source to a solid: level ones at every height from `from` to `to`,
/// or, where one of the two lies higher than the other, slanting ones from height `from` to height `to`.
struct Rise {
  bool level = true;
  Length from;
  Length to;
};

Rise rise_between(const Solid& source, const Solid& solid) {
  if (source.top() < solid.base()) return {false, source.top(), solid.base()};
  if (solid.top() < source.base()) return {false, source.base(), solid.top()};
  return {true, std::max(source.base(), solid.base()), std::min(source.top(), solid.top())};
}

/// Lines of least distance in plan: all those across a box, from one side of it to the opposite one, or one
/// line.
struct Lane {
  Edge line;                ///< from the source; of a box along one of its borders
  std::optional<Rect> box;  ///< square to the room
};

// What is seen along the lines: across them in plan, and height. Where all lines lie in one, a tick stands
// for it.
constexpr Rect no_size{{}, {one_tick, one_tick}};

bool runs_along_x(const Lane& lane) { return lane.line.from.y == lane.line.to.y; }

Rect screen_of(const Lane& lane, const Rise& rise) {
  Rect screen = no_size;
  if (lane.box) {
    screen.low.x = runs_along_x(lane) ? lane.box->low.y : lane.box->low.x;
    screen.high.x = runs_along_x(lane) ? lane.box->high.y : lane.box->high.x;
  }
  if (rise.level && rise.from < rise.to) screen.low.y = rise.from, screen.high.y = rise.to;
  return screen;
}

Point part_way(const Edge& line, Length height, const Rise& rise) {
  const Int128 along = (height - rise.from).ticks();
  const Int128 whole = (rise.to - rise.from).ticks();
  return line.from + Vector{rounded_part(line.to.x - line.from.x, along, whole),
                            rounded_part(line.to.y - line.from.y, along, whole)};
}

// The part of the lane's lines that runs at the heights of the solid; none where they touch at most.
std::optional<Lane> at_heights_of(const Solid& solid, const Lane& lane, const Rise& rise) {
  if (rise.level) {
    const bool meets_it = rise.from < rise.to ? solid.base() < rise.to && rise.from < solid.top()
                                              : solid.base() < rise.from && rise.from < solid.top();
    return meets_it ? std::optional(lane) : std::nullopt;
  }
  const auto [low, high] = std::minmax(rise.from, rise.to);
  if (solid.top() <= low || high <= solid.base()) return std::nullopt;
  const Point a = part_way(lane.line, std::clamp(solid.base(), low, high), rise);
  const Point b = part_way(lane.line, std::clamp(solid.top(), low, high), rise);
  if (a == b) return std::nullopt;
  Lane part{{a, b}, lane.box};
  if (part.box && runs_along_x(lane))
    part.box->low.x = std::min(a.x, b.x), part.box->high.x = std::max(a.x, b.x);
  else if (part.box)
    part.box->low.y = std::min(a.y, b.y), part.box->high.y = std::max(a.y, b.y);
  return part;
}

// What of the screen the solid hides.
std::vector<Region> hidden_by(const Solid& solid, const Lane& lane, const Rise& rise) {
  const std::optional<Lane> part = at_heights_of(solid, lane, rise);
  if (!part) return {};
  Rect hidden = screen_of(lane, rise);
  if (rise.level && rise.from < rise.to) {
    hidden.low.y = std::max(hidden.low.y, solid.base());
    hidden.high.y = std::min(hidden.high.y, solid.top());
  }
  if (!lane.box)
    return parts_inside(part->line, solid.outline()).empty() ? std::vector<Region>{}
                                                             : std::vector{Region(hidden)};
  std::vector<Region> all;
  const Region between =
      common(solid.outline(), Region(*part->box));  // named: the loop only borrows its faces
  for (const Face& face : between.faces()) {
    const Rect bounds = face.outer.bounds();
    hidden.low.x = runs_along_x(lane) ? bounds.low.y : bounds.low.x;
    hidden.high.x = runs_along_x(lane) ? bounds.high.y : bounds.high.x;
    all.emplace_back(hidden);
  }
  return all;
}

bool is_upright(const Edge& edge) { return edge.from.x == edge.to.x; }
bool is_flat(const Edge& edge) { return edge.from.y == edge.to.y; }

// The box between two edges that look at each other square to the room.
std::optional<Lane> box_between(const Edge& a, const Edge& b) {
  const auto shared = [](Length a0, Length a1, Length b0, Length b1) {
    return std::pair(std::max(std::min(a0, a1), std::min(b0, b1)),
                     std::min(std::max(a0, a1), std::max(b0, b1)));
  };
  if (is_upright(a) && is_upright(b)) {
    const auto [low, high] = shared(a.from.y, a.to.y, b.from.y, b.to.y);
    if (low >= high) return std::nullopt;
    const Length x0 = std::min(a.from.x, b.from.x), x1 = std::max(a.from.x, b.from.x);
    return Lane{{{a.from.x, low}, {b.from.x, low}}, Rect{{x0, low}, {x1, high}}};
  }
  if (is_flat(a) && is_flat(b)) {
    const auto [low, high] = shared(a.from.x, a.to.x, b.from.x, b.to.x);
    if (low >= high) return std::nullopt;
    const Length y0 = std::min(a.from.y, b.from.y), y1 = std::max(a.from.y, b.from.y);
    return Lane{{{low, a.from.y}, {low, b.from.y}}, Rect{{low, y0}, {high, y1}}};
  }
  return std::nullopt;
}

bool holds(const Rect& box, Point p) {
  return box.low.x <= p.x && p.x <= box.high.x && box.low.y <= p.y && p.y <= box.high.y;
}

/// The lines of least distance in plan between two regions that lie apart.
class Lanes {
 public:
  Lanes(const Region& source, const Region& other) : least_(nearest(source, other).squared) {
    for (const Edge& a : edges(source))
      for (const Edge& b : edges(other)) add(a, b);
    for (const Edge& line : lines_)
      if (std::ranges::none_of(lanes_, [&](const Lane& lane) {
            return lane.box && holds(*lane.box, line.from) && holds(*lane.box, line.to);
          }))
        lanes_.push_back({line, std::nullopt});
  }

  const std::vector<Lane>& all() const { return lanes_; }
  bool known() const { return known_; }  ///< false: there are slanting boxes among them

 private:
  void add(const Edge& a, const Edge& b) {
    std::set<Edge> found;
    for (const Point p : {a.from, a.to})
      if (squared_distance(p, b) == least_) found.insert({p, nearest_point(p, b)});
    for (const Point p : {b.from, b.to})
      if (squared_distance(p, a) == least_) found.insert({nearest_point(p, a), p});
    if (found.empty()) return;
    if (const std::optional<Lane> box = box_between(a, b))
      lanes_.push_back(*box);
    else if (found.size() > 1)
      known_ = false;
    else
      lines_.insert(found.begin(), found.end());
  }

  SquaredLength least_;
  std::set<Edge> lines_;
  std::vector<Lane> lanes_;
  bool known_ = true;
};

/// Asks one pair of solids after the other.
class Shields {
 public:
  explicit Shields(const std::vector<const Placed*>& shields) : shields_(shields) {}

  bool hide(const Solid& source, const Solid& solid) {
    const Rise rise = rise_between(source, solid);
    if (nearest(source.outline(), solid.outline()).squared == Length{})
      return !rise.level && hide_upright(common(source.outline(), solid.outline()), rise);
    const Lanes lanes(source.outline(), solid.outline());
    return lanes.known() &&
           std::ranges::all_of(lanes.all(), [&](const Lane& lane) { return hide(lane, rise); });
  }

  std::vector<std::string> used() const { return {used_.begin(), used_.end()}; }

 private:
  bool hide(const Lane& lane, const Rise& rise) {
    std::vector<Region> hidden;
    for (const Placed* shield : shields_)
      for (Region& part : hidden_by(shield->solid, lane, rise)) {
        hidden.push_back(std::move(part));
        used_.insert(shield->id);
      }
    return contains(united(hidden), Region(screen_of(lane, rise)));
  }

  bool hide_upright(const Region& lines, const Rise& rise) {
    const auto [low, high] = std::minmax(rise.from, rise.to);
    std::vector<Region> hidden;
    for (const Placed* shield : shields_)
      if (shield->solid.base() < high && low < shield->solid.top() &&
          overlaps(shield->solid.outline(), lines)) {
        hidden.push_back(shield->solid.outline());
        used_.insert(shield->id);
      }
    return !lines.empty() && contains(united(hidden), lines);
  }

  const std::vector<const Placed*>& shields_;
  std::set<std::string> used_;
};

}  // namespace

std::vector<std::string> shielding(const std::vector<const Placed*>& shields, const Solid& source,
                                   const std::vector<Solid>& solids) {
  if (shields.empty() || solids.empty()) return {};
  std::vector<Nearest> distances;
  for (const Solid& solid : solids) distances.push_back(nearest(source, solid));
  const SquaredLength least = std::ranges::min_element(distances, {}, &Nearest::squared)->squared;
  if (least == Length{}) return {};
  Shields asked(shields);
  for (std::size_t i = 0; i < solids.size(); ++i)
    if (distances[i].squared == least && !asked.hide(source, solids[i])) return {};
  return asked.used();
}

}  // namespace berthwright

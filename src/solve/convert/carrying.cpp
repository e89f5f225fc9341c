#include "solve/convert/carrying.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "solve/convert/motion_room.h"

namespace berthwright {
namespace {

constexpr std::array<std::array<std::size_t, 3>, holds> laid{
    {{0, 1, 2}, {1, 0, 2}, {0, 2, 1}, {2, 0, 1}, {1, 2, 0}, {2, 1, 0}}};

std::size_t hold_in_order(const std::array<std::size_t, 3>& order) {
  return static_cast<std::size_t>(std::ranges::find(laid, order) - laid.begin());
}
std::size_t turned_hold(std::size_t hold) {
  const auto& order = laid[hold];
  return hold_in_order({order[1], order[0], order[2]});
}
std::size_t tipped_hold(std::size_t hold, Wall over) {
  const auto& order = laid[hold];
  const bool along_x = over == Wall::front || over == Wall::rear;
  return along_x ? hold_in_order({order[2], order[1], order[0]})
                 : hold_in_order({order[0], order[2], order[1]});
}

bool is_clear(const std::vector<Rect>& standing, const Rect& box) {
  return std::ranges::none_of(standing, [&](const Rect& rect) { return overlaps(rect, box); });
}

std::int64_t steps_between(Point a, Point b) { return abs(a.x - b.x).ticks() + abs(a.y - b.y).ticks(); }

}  // namespace

Carrying::Carrying(const RoomAround& surroundings, std::vector<Hindrance> others, std::array<Length, 3> sides,
                   bool upright)
    : surroundings_(surroundings), others_(std::move(others)), sides_(sides), upright_(upright) {}

std::array<Length, 3> Carrying::sides(std::size_t hold) const {
  const auto& order = laid[hold];
  return {sides_[order[0]], sides_[order[1]], sides_[order[2]]};
}

Rect Carrying::box(const HeldAt& at) const {
  const auto side = sides(at.hold);
  return {at.low, at.low + Vector{side[0], side[1]}};
}

std::vector<Rect> Carrying::standing(Length low, Length high) const {
  std::vector<Rect> rects = surroundings_.beyond(low, high);
  const auto add = [&](const std::vector<Hindrance>& things) {
    for (const Hindrance& thing : things)
      if (thing.base < high && low < thing.top)
        rects.insert(rects.end(), thing.over.begin(), thing.over.end());
  };
  add(surroundings_.built_in());
  add(others_);
  return rects;
}

std::optional<SlidingPlane> Carrying::sliding(Length base, std::size_t hold,
                                              std::span<const Point> marks) const {
  const auto side = sides(hold);
  Rect range = surroundings_.range();
  range.high = range.high - Vector{side[0], side[1]};
  if (range.high.x < range.low.x || range.high.y < range.low.y) return std::nullopt;
  std::vector<Rect> forbidden = standing(base, base + side[2]);
  for (Rect& rect : forbidden) rect.low = rect.low - Vector{side[0], side[1]};
  return SlidingPlane(range, forbidden, marks);
}

const Carrying::Plane& Carrying::plane(std::size_t level) const {
  const auto [known, fresh] = planes_.try_emplace(heights_[level]);
  Plane& plane = known->second;
  if (!fresh) return plane;
  std::size_t parts = 0;
  for (std::size_t hold = 0; hold < (upright_ ? 2 : holds); ++hold) {
    plane.planes[hold] = sliding(heights_[level], hold, {});
    plane.first[hold] = parts;
    if (plane.planes[hold]) parts += plane.planes[hold]->parts();
  }
  plane.realm.resize(parts);
  std::iota(plane.realm.begin(), plane.realm.end(), 0);
  link(plane, heights_[level]);
  return plane;
}

std::optional<std::size_t> Carrying::part(const Plane& plane, const HeldAt& at) const {
  const auto& sliding = plane.planes[at.hold];
  if (!sliding) return std::nullopt;
  const std::optional<std::size_t> part = sliding->part_at(at.low);
  return part ? std::optional(plane.first[at.hold] + *part) : std::nullopt;
}

/// The turns and tips of one plane.
class Carrying::Linking {
 public:
  Linking(const Carrying& carrying, Plane& plane, Length base)
      : carrying_(carrying), plane_(plane), base_(base) {
    // What a turn or a tip needs is the same everywhere.
    for (std::size_t hold = 0; hold < holds; ++hold) {
      const Rect here = carrying.box({hold, {}});
      turns_[hold] = turning_room(here);
      for (std::size_t edge = 0; edge < 4; ++edge)
        tips_[hold][edge] = tipping_room(here, carrying.sides(hold)[2], edges[edge]);
    }
  }

  void turn(const HeldAt& from) {
    const TurningRoom& room = turns_[from.hold];
    const Vector by = from.low - Point{};
    if (!is_clear_above(shifted(room.needed, by), carrying_.sides(from.hold)[2])) return;
    const HeldAt to{turned_hold(from.hold), room.after.low + by};
    if (from.hold < to.hold) add({from, to, std::nullopt});
    const HeldAt back{from.hold, turns_[to.hold].after.low + (to.low - Point{})};
    if (from.hold < 2 && is_part(to) && is_part(back))
      plane_.spins.push_back({Link{from, to, std::nullopt}, Link{to, back, std::nullopt}});
  }

  void tip(const HeldAt& from) {
    for (std::size_t edge = 0; edge < 4; ++edge) {
      const std::optional<HeldAt> on_edge = tipped_over(from, edge);
      if (!on_edge) continue;
      if (from.hold < on_edge->hold) add({from, *on_edge, edges[edge]});
      if (from.hold > 1 || !is_part(*on_edge)) continue;
      const std::optional<HeldAt> over_again = tipped_over(*on_edge, edge);
      if (over_again && is_part(*over_again))
        plane_.flips.push_back({Link{from, *on_edge, edges[edge]}, Link{*on_edge, *over_again, edges[edge]}});
    }
  }

 private:
  static constexpr std::array edges{Wall::front, Wall::rear, Wall::left, Wall::right};

  static Rect shifted(const Rect& rect, Vector by) { return {rect.low + by, rect.high + by}; }

  bool is_part(const HeldAt& at) const { return carrying_.part(plane_, at).has_value(); }

  bool is_clear_above(const Rect& box, Length height) {
    const auto [known, fresh] = standing_to_.try_emplace(base_ + height);
    if (fresh) known->second = carrying_.standing(base_, base_ + height);
    return is_clear(known->second, box);
  }

  std::optional<HeldAt> tipped_over(const HeldAt& from, std::size_t edge) {
    const TippingRoom& room = tips_[from.hold][edge];
    const Vector by = from.low - Point{};
    if (!is_clear_above(shifted(room.needed, by), room.height_needed)) return std::nullopt;
    return HeldAt{tipped_hold(from.hold, edges[edge]), room.after.low + by};
  }

  void add(const Link& link) {
    const auto a = carrying_.part(plane_, link.from), b = carrying_.part(plane_, link.to);
    if (!a || !b) return;
    plane_.links.push_back(link);
    const std::size_t old = std::max(plane_.realm[*a], plane_.realm[*b]);
    const std::size_t now = std::min(plane_.realm[*a], plane_.realm[*b]);
    if (old != now) std::ranges::replace(plane_.realm, old, now);
  }

  const Carrying& carrying_;
  Plane& plane_;
  Length base_;
  std::map<Length, std::vector<Rect>> standing_to_;
  std::array<TurningRoom, holds> turns_;
  std::array<std::array<TippingRoom, 4>, holds> tips_;
};

void Carrying::link(Plane& plane, Length base) const {
  Linking linking(*this, plane, base);
  const Rect room = surroundings_.plan()->interior.outline.polygon().bounds();
  for (Length x = room.low.x + half(grid); x < room.high.x; x += grid)
    for (Length y = room.low.y + half(grid); y < room.high.y; y += grid)
      for (std::size_t hold = 0; hold < (upright_ ? 2 : holds); ++hold) {
        const auto side = sides(hold);
        const HeldAt from{hold, {x - half(side[0]), y - half(side[1])}};
        if (!part(plane, from)) continue;
        linking.turn(from);
        if (!upright_) linking.tip(from);
      }
}

std::optional<std::size_t> Carrying::realm(std::size_t level, const HeldAt& at) const {
  const Plane& here = plane(level);
  const std::optional<std::size_t> number = part(here, at);
  return number ? std::optional(here.realm[*number]) : std::nullopt;
}

std::size_t Carrying::hold_of(const Pose& pose) {
  const bool along_y = pose.faces == Wall::front || pose.faces == Wall::rear;
  switch (pose.manner) {
    case Pose::Manner::on_length:
      return along_y ? 3 : 2;
    case Pose::Manner::on_width:
      return along_y ? 5 : 4;
    case Pose::Manner::flat:
    case Pose::Manner::stowed:
      break;
  }
  const Turn turn = pose.placement.turn;
  return turn.is_quarter() && turn.cosine() == 0 ? 1 : 0;
}

bool Carrying::is_clear_at(std::size_t level, const Rect& box, Length height) const {
  return is_clear(standing(heights_[level], heights_[level] + height), box);
}

bool Carrying::can_flip(std::size_t level, std::size_t realm) const {
  const Plane& here = plane(level);
  return std::ranges::any_of(here.flips, [&](const auto& flip) { return joins(here, flip, realm); });
}

bool Carrying::can_spin(std::size_t level, std::size_t realm) const {
  const Plane& here = plane(level);
  return std::ranges::any_of(here.spins, [&](const auto& spin) { return joins(here, spin, realm); });
}

bool Carrying::joins(const Plane& plane, const std::array<Link, 2>& detour, std::size_t realm) const {
  return plane.realm[*part(plane, detour[0].from)] == realm &&
         plane.realm[*part(plane, detour[1].to)] == realm;
}

// A link is the same movement backwards.
Motion Carrying::motion(const Link& link, Length base) const {
  const Solid here(Region(box(link.from)), base, base + sides(link.from.hold)[2]);
  const Solid there(Region(box(link.to)), base, base + sides(link.to.hold)[2]);
  Motion motion = link.over ? tipped(here, *link.over) : quarter_turned(here);
  if (motion.after == there) return motion;
  motion = link.over ? tipped(there, *link.over) : quarter_turned(there);
  std::swap(motion.before, motion.after);
  return motion;
}

void Carrying::slide(std::vector<Motion>& motions, Length base, const HeldAt& from, Point to) const {
  if (from.low == to) return;
  const std::array marks{from.low, to};
  const std::vector<Point> way = sliding(base, from.hold, marks)->way(from.low, to);
  for (std::size_t i = 1; i < way.size(); ++i) {
    const Solid here(Region(box({from.hold, way[i - 1]})), base, base + sides(from.hold)[2]);
    motions.push_back(slid(here, way[i] - way[i - 1]));
  }
}

// Breadth first over the parts of the planes; each step takes the link that is nearest on the way.
std::vector<Carrying::Link> Carrying::fewest_links(const Plane& plane, const HeldAt& from,
                                                   const HeldAt& to) const {
  constexpr auto unknown = static_cast<std::size_t>(-1);
  const std::size_t start = *part(plane, from), goal = *part(plane, to);
  std::vector<std::size_t> links_left(plane.realm.size(), unknown);  // to the goal
  links_left[goal] = 0;
  std::vector<std::size_t> open{goal};
  for (std::size_t next = 0; next < open.size() && links_left[start] == unknown; ++next)
    for (const Link& link : plane.links) {
      const std::size_t a = *part(plane, link.from), b = *part(plane, link.to);
      const std::size_t other = a == open[next] ? b : b == open[next] ? a : unknown;
      if (other == unknown || links_left[other] != unknown) continue;
      links_left[other] = links_left[open[next]] + 1;
      open.push_back(other);
    }
  std::vector<Link> links;
  HeldAt at = from;
  for (std::size_t here = start; here != goal; here = *part(plane, at)) {
    std::optional<Link> best;
    std::int64_t best_way = 0;
    for (const Link& link : plane.links)
      for (const Link& way : {link, Link{link.to, link.from, link.over}}) {
        if (*part(plane, way.from) != here) continue;
        const std::size_t then = links_left[*part(plane, way.to)];
        if (then == unknown || then + 1 != links_left[here]) continue;
        const std::int64_t length = steps_between(at.low, way.from.low) + steps_between(way.to.low, to.low);
        if (best && best_way <= length) continue;
        best = way, best_way = length;
      }
    links.push_back(*best);
    at = best->to;
  }
  return links;
}

void Carrying::follow(std::vector<Motion>& motions, const Plane& plane, Length base, HeldAt from,
                      const HeldAt& to) const {
  for (const Link& link : fewest_links(plane, from, to)) {
    slide(motions, base, from, link.from.low);
    motions.push_back(motion(link, base));
    from = link.to;
  }
  slide(motions, base, from, to.low);
}

std::vector<Motion> Carrying::route(std::size_t level, const HeldAt& from, const HeldAt& to,
                                    Detour detour) const {
  const Plane& here = plane(level);
  const Length base = heights_[level];
  std::vector<Motion> motions;
  if (detour == Detour::none) {
    follow(motions, here, base, from, to);
    return motions;
  }
  const std::size_t wanted = *realm(level, from);
  const std::array<Link, 2>* best = nullptr;
  std::pair<bool, std::int64_t> best_way;
  for (const std::array<Link, 2>& one : detour == Detour::flip ? here.flips : here.spins) {
    if (!joins(here, one, wanted)) continue;
    const std::pair way{one[0].from.hold != from.hold,
                        steps_between(from.low, one[0].from.low) + steps_between(one[1].to.low, to.low)};
    if (best == nullptr || way < best_way) best = &one, best_way = way;
  }
  follow(motions, here, base, from, (*best)[0].from);
  for (const Link& link : *best) motions.push_back(motion(link, base));
  follow(motions, here, base, (*best)[1].to, to);
  return motions;
}

}  // namespace berthwright

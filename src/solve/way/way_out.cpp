#include <berthwright/solve/way/way_out.h>

#include <algorithm>
#include <stdexcept>
#include <tuple>

#include "geometry/segment.h"
#include "solve/room/nearest_wall.h"
#include "solve/room/room_shape.h"
#include "solve/way/doorway.h"
#include "solve/way/wall_frame.h"

namespace berthwright {
namespace {

// Design 4.15.
constexpr Length lowest = 4_in;
constexpr Length highest = 72_in;
// Our own choices: how high the walls must stand apart, and how far a bench may stick out from under a bed.
constexpr Length stooping = 36_in;
constexpr Length sticks_out = 4_in;
// Design 2: chords stray at most this far from their arc. 0.05 mm.
constexpr Length arc_error = Length::from_ticks(ticks_per_mm / 20);
// Places of a pinch are rounded, and so is the border on which they lie.
constexpr Length beside = Length::from_ticks(4);
// Half the side of the mark in the middle of a place to stand, on whose border a disc begins. 1/32 in.
constexpr Length mark = Length::inches(1, 32);

Region square(Length half_side) { return Region(Rect{{-half_side, -half_side}, {half_side, half_side}}); }

Region grown_squarely(const Region& region, Length by) {
  const Region tool = square(by);
  return swept(region, tool.faces().front().outer);
}

bool lies_on_border(const Region& region, Point place) {
  return std::ranges::any_of(edges(region),
                             [&](const Edge& edge) { return squared_distance(place, edge) <= beside; });
}

bool opens(const Opening& door) {
  return door.kind == Opening::Kind::door && door.swing != Opening::Swing::fixed;
}

bool is_in_the_way(const Placed& thing) { return stands_in_the_way(thing.solid) && !thing.is_curtain(); }

/// What stands round a bed, or a person, at one time, and where a person may walk.
class Floor {
 public:
  Floor(const Plan& plan, const Arrangement& arrangement, const Bed& bed, const Mattress& mattress)
      : room_(plan->interior), walls_(room_between(room_, lowest, stooping)) {
    std::vector<Region> pieces;
    std::vector<Region> low;
    std::vector<Region> solids;
    for (const Placed& thing : arrangement.things) {
      const bool of_bed = std::ranges::find(bed.pieces, PieceId(thing.id)) != bed.pieces.end();
      if (of_bed && thing.piece != nullptr) pieces.push_back(thing.solid.outline());
      if (!is_in_the_way(thing) && !(of_bed && thing.piece != nullptr)) continue;
      obstacles_.push_back(&thing);
      solids.push_back(thing.solid.outline());
      if (thing.solid.top() <= mattress.level) low.push_back(thing.solid.outline());
    }
    taken_ = united(solids);
    const Region bed_itself = united(pieces);
    if (bed_itself.empty()) return;
    edge_ = united(bed_itself, common(united(low), grown_squarely(bed_itself, sticks_out)));
  }

  Floor(const Plan& plan, const Arrangement& arrangement, const Rect& standing)
      : room_(plan->interior), walls_(room_between(room_, lowest, stooping)) {
    std::vector<Region> solids;
    for (const Placed& thing : arrangement.things) {
      if (!is_in_the_way(thing)) continue;
      obstacles_.push_back(&thing);
      solids.push_back(thing.solid.outline());
    }
    taken_ = united(solids);
    if (overlaps(taken_, Region(standing)) || !without(Region(standing), walls_).empty()) return;
    const Point middle{half(standing.low.x + standing.high.x), half(standing.low.y + standing.high.y)};
    edge_ = Region(Rect{middle - Vector{mark, mark}, middle + Vector{mark, mark}});
    taken_ = united(taken_, edge_);
  }

  std::vector<WayOut> to_all_doors(const Plan& plan) const {
    std::vector<WayOut> ways;
    for (const Opening& opening : plan->openings)
      if (opens(opening)) ways.push_back(to(opening));
    return ways;
  }

 private:
  WayOut to(const Opening& door) const {
    WayOut way;
    way.door = door.id.text();
    const Doorway doorway = doorway_of(room_, walls_, door);
    const Region floor = without(united(walls_, doorway.inner), taken_);
    const std::optional<WidestWay> widest =
        widest_way(united(floor, doorway.before), edges_inside(door), doorway.before);
    if (!widest) {
      way.end = has_free_edge(floor) ? WayOut::End::no_way : WayOut::End::no_free_edge;
      return way;
    }
    way.end = WayOut::End::reached;
    way.way = *widest;
    if (way.way.width > door.width) {  // begun half in the doorway
      const Edge line = threshold(room_, door);
      way.way = {door.width, line.from, line.to, std::move(way.way.path)};
    }
    const Pinch left = pinch_at(way.way.left, door);
    const Pinch right = pinch_at(way.way.right, door);
    way.left = left.name;
    way.right = right.name;
    const int arcs = (left.has_arcs ? 1 : 0) + (right.has_arcs ? 1 : 0);
    way.width = std::max(way.way.width - arcs * arc_error, Length{});
    return way;
  }

  struct Pinch {
    std::string name;
    bool has_arcs = false;
  };

  // Where the bed stands across the door its edge borders on what lies outside, and nobody steps off there.
  std::vector<Edge> edges_inside(const Opening& door) const {
    const Edge line = threshold(room_, door);
    std::vector<Edge> inside = edges(edge_);
    std::erase_if(inside, [&](const Edge& edge) {
      return cross(line.from, line.to, edge.from) == 0 && cross(line.from, line.to, edge.to) == 0;
    });
    return inside;
  }

  bool has_free_edge(const Region& floor) const {
    return !edge_.empty() && overlaps(grown_squarely(edge_, beside), floor);
  }

  // The thing that stands there, of several the highest, of equal ones that of the least id; else the door,
  // where it is one of its posts; else the wall.
  Pinch pinch_at(Point place, const Opening& door) const {
    const Placed* there = nullptr;
    for (const Placed* thing : obstacles_) {
      if (!lies_on_border(thing->solid.outline(), place)) continue;
      const auto rank = [](const Placed& t) { return std::tuple(-t.solid.top(), t.id); };
      if (there == nullptr || rank(*thing) < rank(*there)) there = thing;
    }
    if (there != nullptr) {
      const bool arcs =
          there->fixture != nullptr ? !there->fixture->arcs.empty() : !there->pose->arcs.empty();
      return {there->id, arcs};
    }
    const Edge posts = threshold(room_, door);
    for (const Point post : {posts.from, posts.to})
      if (squared_distance(place, {post, post}) <= beside) return {door.id.text(), false};
    return {nearest_wall(room_, place),
            !room_.outline.arcs().empty() && lies_on_border(room_.outline.polygon(), place)};
  }

  const Interior& room_;
  Region walls_;
  std::vector<const Placed*> obstacles_;
  Region taken_;
  Region edge_;
};

}  // namespace

bool stands_in_the_way(const Solid& solid) { return solid.base() < highest && solid.top() > lowest; }

std::vector<WayOut> ways_out(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                             const Mattress& mattress) {
  if (std::ranges::none_of(plan->openings, opens)) return {};
  return Floor(plan, arrangement, bed, mattress).to_all_doors(plan);
}

std::vector<WayOut> ways_out(const Plan& plan, const Arrangement& arrangement, const Rect& standing) {
  if (std::ranges::none_of(plan->openings, opens)) return {};
  return Floor(plan, arrangement, standing).to_all_doors(plan);
}

const WayOut* widest(std::span<const WayOut> ways) {
  const WayOut* best = nullptr;
  for (const WayOut& way : ways) {
    if (!way.reached()) continue;
    if (best == nullptr || way.width > best->width || (way.width == best->width && way.door < best->door))
      best = &way;
  }
  return best;
}

}  // namespace berthwright

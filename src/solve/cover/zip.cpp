#include <berthwright/solve/cover/zip.h>

#include <algorithm>
#include <set>
#include <tuple>

#include <berthwright/geometry/region.h>

#include "geometry/root.h"
#include "plan/box_sides.h"

namespace berthwright {
namespace {

using Kind = EdgeSight::Kind;
using Sights = std::vector<std::vector<EdgeSight>>;

constexpr const char* the_room = "room";

// The strip in plan that lies before one straight piece of an edge, and the heights that it has to cover half
// of. The cushion lies to the left of the way from `from` to `to`.
struct Facing {
  Point from;
  Point to;
  Length base;
  Length top;
};

Polygon strip_before(const Facing& face) {
  const Vector way = face.to - face.from;
  const auto x = static_cast<double>(way.x.ticks());
  const auto y = static_cast<double>(way.y.ticks());
  const double length = length_of(x, y);
  // What is just that far away shares an area with a strip that is a tick deeper.
  const auto reach = static_cast<double>((hiding_reach + one_tick).ticks());
  const auto tick = [](double value) {
    return Length::from_ticks(static_cast<std::int64_t>(value < 0 ? value - 0.5 : value + 0.5));
  };
  const Vector out{tick(reach * y / length), tick(-reach * x / length)};
  return Polygon::promised({face.from, face.from + out, face.to + out, face.to});
}

// Stretches along the edge from `from`, as dot products with it: whole numbers, all of the same scale.
struct Shadow {
  Int128 from;
  Int128 to;
};

Int128 along(const Facing& face, Point p) {
  const Vector way = face.to - face.from;
  const Vector there = p - face.from;
  return Int128{way.x.ticks()} * there.x.ticks() + Int128{way.y.ticks()} * there.y.ticks();
}

void add_shadows(const Region& covered, const Facing& face, std::vector<Shadow>& shadows) {
  const Int128 whole = along(face, face.to);
  for (const Face& part : covered.faces()) {
    Shadow shadow{whole, 0};
    for (const Point& p : part.outer.vertices()) {
      shadow.from = std::min(shadow.from, std::max(Int128{0}, along(face, p)));
      shadow.to = std::max(shadow.to, std::min(whole, along(face, p)));
    }
    if (shadow.from < shadow.to) shadows.push_back(shadow);
  }
}

Int128 joined(std::vector<Shadow> shadows) {
  std::ranges::sort(shadows, {}, &Shadow::from);
  Int128 sum = 0;
  Int128 reached = 0;
  for (const Shadow& one : shadows) {
    if (one.to <= reached) continue;
    sum += one.to - std::max(one.from, reached);
    reached = one.to;
  }
  return sum;
}

bool covers_half(const Solid& solid, const Facing& face) {
  return 2 * (std::min(solid.top(), face.top) - std::max(solid.base(), face.base)) >= face.top - face.base;
}

// How much of it something covers, in thousandths of its length, rounded down.
std::int64_t covered_share(const Plan& plan, const Arrangement& arrangement, const Placed& self,
                           const Facing& face, std::set<std::string>& by) {
  const Polygon strip = strip_before(face);
  const Region before(strip);
  std::vector<Shadow> shadows;
  const auto add = [&](const Region& covered, const std::string& id) {
    const std::size_t old = shadows.size();
    add_shadows(covered, face, shadows);
    if (shadows.size() > old) by.insert(id);
  };
  add(without(before, Region(plan->interior.outline.polygon())), the_room);
  for (const Placed& thing : arrangement.things) {
    if (&thing == &self || thing.is_curtain() || !covers_half(thing.solid, face)) continue;
    if (!overlaps(thing.solid.outline().bounds(), strip.bounds())) continue;
    add(common(before, thing.solid.outline()), thing.id);
  }
  return static_cast<std::int64_t>(joined(std::move(shadows)) * 1000 / along(face, face.to));
}

EdgeSight sight_of(const Plan& plan, const Arrangement& arrangement, const Placed& self,
                   const std::vector<Facing>& faces) {
  EdgeSight sight{.configuration = arrangement.configuration};
  std::set<std::string> by;
  Int128 whole = 0;
  Int128 sum = 0;
  for (const Facing& face : faces) {
    const Vector way = face.to - face.from;
    const Int128 length = SquaredLength::of(way.x).plus_square_of(way.y).ceiling().ticks();
    whole += length;
    sum += length * covered_share(plan, arrangement, self, face, by);
  }
  sight.covered = {static_cast<std::int64_t>(sum / whole)};
  sight.kind = sight.covered.thousandths >= hiding_share.thousandths ? Kind::hidden : Kind::seen;
  if (by.contains(the_room)) sight.by.emplace_back(the_room);
  for (const Placed& thing : arrangement.things)
    if (by.contains(thing.id)) sight.by.push_back(thing.id);
  return sight;
}

// Whether the edge looks more that way than to either side, lying flat.
bool looks_that_way(const std::vector<Facing>& faces, Wall way) {
  const Vector edge = faces.back().to - faces.front().from;
  const Vector out{edge.y, -edge.x};
  const Vector want = outward(way);
  const Int128 toward = Int128{out.x.ticks()} * want.x.ticks() + Int128{out.y.ticks()} * want.y.ticks();
  const Int128 aside = Int128{out.x.ticks()} * want.y.ticks() - Int128{out.y.ticks()} * want.x.ticks();
  return toward > (aside < 0 ? -aside : aside);
}

std::optional<Wall> seat_looks(const std::vector<Seat>& seats, const Piece& piece) {
  for (const Seat& seat : seats)
    if (std::ranges::find(seat.cushions, piece.id.text()) != seat.cushions.end()) return seat.faces;
  return std::nullopt;
}

EdgeSight lying(const Plan& plan, const SeenRoom& stood, const Placed& self, const RimEdge& edge) {
  const Placement& placement = self.pose->placement;
  std::vector<Facing> faces;
  for (std::size_t i = 0; i + 1 < edge.path.size(); ++i) {
    Facing face{placement(edge.path[i]), placement(edge.path[i + 1]), self.solid.base(), self.solid.top()};
    if (placement.flipped) std::swap(face.from, face.to);
    faces.push_back(face);
  }
  if (placement.flipped) std::ranges::reverse(faces);
  EdgeSight sight = sight_of(plan, stood.arrangement, self, faces);
  const std::optional<Wall> way = seat_looks(stood.seats, *self.piece);
  if (sight.kind == Kind::seen && way && looks_that_way(faces, *way)) sight.kind = Kind::front;
  return sight;
}

// Where a side of the unturned piece looks while it stands on edge.
enum class Upright { down, up, one_end, other_end };

Upright upright(const Pose& pose, Wall side, bool low_side_down) {
  const bool on_length = pose.manner == Pose::Manner::on_length;
  const bool is_long = side == Wall::left || side == Wall::right;  // the sides along x
  const bool is_low = side == Wall::front || side == Wall::left;
  if (on_length == is_long) return is_low == low_side_down ? Upright::down : Upright::up;
  return is_low ? Upright::one_end : Upright::other_end;
}

// The way the end looks: x, y and the top panel are a right-handed frame, and the panel looks to `faces`.
Vector way_of_end(const Pose& pose, Upright end, bool low_side_down) {
  const Vector f = outward(*pose.faces);
  const bool on_length = pose.manner == Pose::Manner::on_length;
  // On its length, low side down: x = up x f = (-fy, fx). On its width, low side down: y = f x up = (fy,
  // -fx).
  Vector high{-f.y, f.x};
  if (on_length != low_side_down) high = {-high.x, -high.y};
  return end == Upright::other_end ? high : Vector{-high.x, -high.y};
}

EdgeSight standing(const Plan& plan, const SeenRoom& stood, const Placed& self, const RimEdge& edge,
                   bool low_side_down) {
  EdgeSight seen{.configuration = stood.arrangement.configuration};
  const Pose& pose = *self.pose;
  if (!edge.on_box || !pose.faces) return seen;
  const Upright place = upright(pose, *edge.looks, low_side_down);
  if (place == Upright::down) {
    const bool on_floor = self.solid.base() == Length{};
    // Held up by what the plan does not name, it is seen from beneath.
    if (self.carried_by.empty() && !on_floor) return {seen.configuration, Kind::seen, Portion{}, {}};
    return {seen.configuration, Kind::hidden, Portion{1000},
            self.carried_by.empty() ? std::vector<std::string>{"floor"} : self.carried_by};
  }
  if (place == Upright::up) return {seen.configuration, Kind::front, Portion{}, {}};
  const Vector way = way_of_end(pose, place, low_side_down);
  const Rect box = pose.outline.bounds();
  const Point corners[] = {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
  // Sides counter-clockwise from the left one, by the way they look.
  const std::size_t side = way.y < Length{} ? 0 : way.x > Length{} ? 1 : way.y > Length{} ? 2 : 3;
  return sight_of(plan, stood.arrangement, self,
                  {{corners[side], corners[(side + 1) % 4], self.solid.base(), self.solid.top()}});
}

bool stands_on_edge(const Pose& pose) {
  return pose.manner == Pose::Manner::on_length || pose.manner == Pose::Manner::on_width;
}

}  // namespace

int times_seen(const std::vector<EdgeSight>& sights) {
  return static_cast<int>(std::ranges::count_if(
      sights, [](const EdgeSight& one) { return one.kind == Kind::seen || one.kind == Kind::front; }));
}

bool is_front(const std::vector<EdgeSight>& sights) {
  return std::ranges::find(sights, Kind::front, &EdgeSight::kind) != sights.end();
}

Sights edge_sights(const Plan& plan, const std::vector<SeenRoom>& stood, const Piece& piece, const Rim& rim,
                   bool low_side_down) {
  Sights sights(rim.edges.size());
  for (const SeenRoom& one : stood) {
    const Placed* self = one.arrangement.find(piece.id.text());
    for (std::size_t e = 0; e < rim.edges.size(); ++e) {
      if (self == nullptr)
        sights[e].push_back({one.arrangement.configuration, Kind::stowed, Portion{}, {}});
      else if (stands_on_edge(*self->pose))
        sights[e].push_back(standing(plan, one, *self, rim.edges[e], low_side_down));
      else
        sights[e].push_back(lying(plan, one, *self, rim.edges[e]));
    }
  }
  return sights;
}

ZipEdge zip_edge(const Plan& plan, const std::vector<SeenRoom>& stood, const Piece& piece, const Rim& rim,
                 std::optional<Wall> side) {
  std::optional<bool> on_length;
  for (const SeenRoom& one : stood)
    if (const Placed* self = one.arrangement.find(piece.id.text()); self && stands_on_edge(*self->pose))
      on_length = self->pose->manner == Pose::Manner::on_length;
  const Length least = half(std::min(piece.length, piece.width));
  const auto on_side = [&](const RimEdge& edge) { return edge.on_box && edge.looks == side; };
  const bool asked = side && std::ranges::any_of(rim.edges, on_side);
  const bool some_long =
      std::ranges::any_of(rim.edges, [&](const RimEdge& edge) { return edge.length >= least; });
  using Rank = std::tuple<bool, int, bool, Length, std::size_t>;
  std::optional<Rank> best;
  ZipEdge chosen;
  for (const bool low_side_down : {true, false}) {
    if (!on_length && !low_side_down) continue;
    const Sights sights = edge_sights(plan, stood, piece, rim, low_side_down);
    for (std::size_t e = 0; e < rim.edges.size(); ++e) {
      const RimEdge& edge = rim.edges[e];
      if (asked ? !on_side(edge) : some_long && edge.length < least) continue;
      const Rank rank{is_front(sights[e]), times_seen(sights[e]), !edge.is_straight(), -edge.length, e};
      if (best && *best <= rank) continue;
      best = rank;
      chosen = {e, std::nullopt, sights};
      if (on_length)
        chosen.down = *on_length ? (low_side_down ? Wall::left : Wall::right)
                                 : (low_side_down ? Wall::front : Wall::rear);
    }
  }
  return chosen;
}

}  // namespace berthwright

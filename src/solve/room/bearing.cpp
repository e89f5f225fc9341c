#include "solve/room/bearing.h"

#include <algorithm>
#include <span>

#include <berthwright/geometry/placement.h>

#include "geometry/ring.h"
#include "solve/room/columns.h"
#include "solve/room/rest.h"
#include "solve/room/shove.h"

namespace berthwright {

namespace {

constexpr Length shortest_side = 1_in;
// Ledges and benches are eased and rounded at their ends: an inch there is no measure of the rest.
constexpr Length eased_end = 1_in;
constexpr Length shortest_to_ease = 4 * eased_end;
// A rail set back by so little still bears the side; what reaches over it is the tipping's affair.
constexpr Length farthest_set_back = 2_in;
// What turning an edge to the axis may leave of rounding.
constexpr Length bearing_trace = 4 * one_tick;

bool is_leg(const Placed& thing) {
  return thing.fixture != nullptr ? thing.fixture->kind == Fixture::Kind::leg
                                  : thing.piece->kind == Piece::Kind::leg;
}

bool is_carrier(const Placed& piece, std::string_view id) {
  return std::ranges::find(piece.carried_by, id) != piece.carried_by.end();
}

/// The plan turned so that one edge of the piece lies on the x axis from the origin, the piece above it.
class EdgeView {
 public:
  explicit EdgeView(const Edge& edge)
      : origin_{edge.from.x, edge.from.y},
        turn_(Turn::toward((edge.to.x - edge.from.x).ticks(), (edge.to.y - edge.from.y).ticks())),
        length_(seen(edge.to).x) {}

  Length length() const { return length_; }
  Point seen(Point point) const { return Placement{false, turn_.reversed(), {}}(point - origin_); }
  Region seen(const Region& region) const {
    return Placement{false, turn_.reversed(), {}}(moved(region, {-origin_.x, -origin_.y}));
  }
  Point unseen(Length along) const { return Placement{false, turn_, origin_}(Point{along, Length{}}); }

 private:
  Vector origin_;
  Turn turn_;
  Length length_;
};

/// A part of the edge that bears, and how deep at its two ends.
struct Borne {
  Length from;
  Length to;
  Length depth_from;
  Length depth_to;

  Length depth_at(Length along) const {
    return depth_from + rounded_part(depth_to - depth_from, (along - from).ticks(), (to - from).ticks());
  }
};
/// Parts that follow each other without a break.
using Run = std::vector<Borne>;

std::vector<Run> runs_on_edge(const EdgeView& view, const Region& bearing) {
  if (bearing.empty()) return {};
  const Region seen = view.seen(bearing);
  std::vector<Run> runs;
  for (const Column& column : columns_of(seen, cuts_through({&seen}, {Length{}, view.length()}))) {
    const bool beside_the_edge = column.from >= Length{} && column.to <= view.length();
    if (!beside_the_edge || column.stretches.empty()) continue;
    const Trapezoid& nearest = column.stretches.front();
    if (nearest.low_from > farthest_set_back || nearest.low_to > farthest_set_back) continue;
    if (runs.empty() || runs.back().back().to != column.from) runs.emplace_back();
    runs.back().push_back(
        {column.from, column.to, nearest.high_from - nearest.low_from, nearest.high_to - nearest.low_to});
  }
  return runs;
}

struct Least {
  Length depth;
  Length along;
};

// None where the edge does not bear all the way.
std::optional<Least> least_between(std::span<const Run> runs, Length from, Length to) {
  std::optional<Least> least;
  Length reached = from;
  for (const Run& run : runs)
    for (const Borne& part : run) {
      if (part.to <= reached || part.from > reached || reached >= to) continue;
      const Length low = reached;
      const Length high = std::min(part.to, to);
      const Length at_low = part.depth_at(low);
      const Length at_high = part.depth_at(high);
      const Length along = at_low == at_high ? half(low + high) : at_low < at_high ? low : high;
      if (!least || std::min(at_low, at_high) < least->depth) least = Least{std::min(at_low, at_high), along};
      reached = high;
    }
  if (reached < to) return std::nullopt;
  return least;
}

struct Extent {
  Length from;
  Length to;
};
Extent measured_part(const Run& run) {
  const Extent whole{run.front().from, run.back().to};
  if (whole.to - whole.from <= shortest_to_ease) return whole;
  return {whole.from + eased_end, whole.to - eased_end};
}

// What crosses the edge rather than runs along it bears another side.
bool runs_along(const EdgeView& view, const Run& run) {
  const Length extent = run.back().to - run.front().from;
  if (run.front().from <= bearing_trace && run.back().to >= view.length() - bearing_trace) return true;
  const Extent part = measured_part(run);
  const std::optional<Least> least = least_between(std::span(&run, 1), part.from, part.to);
  return least && least->depth <= extent;
}

Wall looks_toward(const Edge& edge) {
  const Length x = edge.to.y - edge.from.y;
  const Length y = edge.from.x - edge.to.x;
  if (abs(x) >= abs(y)) return x < Length{} ? Wall::front : Wall::rear;
  return y < Length{} ? Wall::left : Wall::right;
}

bool is_long(const Edge& edge) {
  const auto x = Int128{(edge.to.x - edge.from.x).ticks()};
  const auto y = Int128{(edge.to.y - edge.from.y).ticks()};
  return SquaredLength(x * x + y * y, 1) >= shortest_side;
}

/// Measures the sides of one piece.
class StoppedSides {
 public:
  StoppedSides(const Region& outline, const std::vector<Bearer>& bearers, const Shove& shove)
      : outline_(outline), bearers_(bearers), tops_(united_tops(bearers)), shove_(shove) {}

  BearingSide side(const Edge& edge) const {
    const EdgeView view(edge);
    BearingSide side{edge, looks_toward(edge), {}, {}, {}, {}, view.unseen(half(view.length())), {}};
    std::vector<Run> runs = runs_on_edge(view, common(outline_, tops_));
    std::erase_if(runs, [&](const Run& run) { return !runs_along(view, run); });
    if (runs.empty()) return side;
    side.play = shove_.play(edge);
    const Vector by = Shove::inward(edge, side.play);
    const std::vector<Run> shoved = runs_on_edge(view, common(outline_, moved(tops_, {-by.x, -by.y})));
    measure(view, runs, shoved, side);
    for (const Bearer& bearer : bearers_)
      for (const Run& run : runs_on_edge(view, common(outline_, bearer.top)))
        if (runs_along(view, run) && (side.on.empty() || side.on.back() != bearer.id))
          side.on.push_back(bearer.id);
    return side;
  }

 private:
  static void measure(const EdgeView& view, const std::vector<Run>& runs, const std::vector<Run>& shoved,
                      BearingSide& side) {
    std::optional<Least> least;
    std::optional<Length> at_play;
    for (const Run& run : runs) {
      side.borne += run.back().to - run.front().from;
      const Extent part = measured_part(run);
      const std::optional<Least> here = least_between(std::span(&run, 1), part.from, part.to);
      if (here && (!least || here->depth < least->depth)) least = here;
      const std::optional<Least> then = least_between(shoved, part.from, part.to);
      const Length depth = then ? std::max(then->depth, Length{}) : Length{};
      if (!at_play || depth < *at_play) at_play = depth;
    }
    side.depth = least->depth;
    side.at_play = std::min(side.depth, *at_play);
    side.where = view.unseen(least->along);
  }

  const Region& outline_;
  const std::vector<Bearer>& bearers_;
  Region tops_;
  const Shove& shove_;
};

}  // namespace

std::vector<Bearer> bearers_of(const Arrangement& arrangement, const Placed& piece) {
  std::vector<Bearer> bearers;
  const Region& outline = piece.solid.outline();
  for (const Placed& thing : arrangement.things) {
    if (thing.solid.top() != piece.solid.base() || !overlaps(thing.solid.outline(), outline)) continue;
    if (hangs_on_a_wall(thing) && !is_carrier(piece, thing.id)) continue;
    bearers.push_back({thing.id, thing.solid.outline(), is_leg(thing)});
  }
  if (piece.solid.base() == Length{})
    bearers.push_back({"floor", Region(grown(outline.bounds(), 1_in)), false});
  return bearers;
}

Region united_tops(const std::vector<Bearer>& bearers) {
  std::vector<Region> tops;
  tops.reserve(bearers.size());
  for (const Bearer& bearer : bearers) tops.push_back(bearer.top);
  return united(tops);
}

std::vector<BearingSide> sides_of(const Plan& plan, const Arrangement& arrangement, const Placed& piece,
                                  const std::vector<Bearer>& bearers) {
  const Shove shove(plan, arrangement, piece);
  const StoppedSides sides(piece.solid.outline(), bearers, shove);
  std::vector<BearingSide> found;
  for (const Edge& edge : edges(piece.solid.outline()))
    if (is_long(edge)) found.push_back(sides.side(edge));
  return found;
}

}  // namespace berthwright

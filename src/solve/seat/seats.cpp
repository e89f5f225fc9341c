#include <berthwright/solve/seat/seats.h>

#include <algorithm>

#include <berthwright/solve/body.h>

#include "solve/seat/before_seat.h"
#include "solve/seat/over_seat.h"
#include "solve/seat/seat_rows.h"

namespace berthwright {

namespace {

constexpr Length highest_seat = 24_in;
constexpr Length joint = 1_in;  // between cushions of a row
constexpr Length back_sinks = Length::inches(1, 2);
// Our own choice: where the head of a person is who leans back.
constexpr Length eyes_before_back = 8_in;
constexpr Length head_around_eyes = 4_in;
constexpr Length elbows_before_back = 12_in;
// Common practice: one person's share of a seat.
constexpr Length per_person = 24_in;

// What stands on the cushions or rises through their outlines, a table over them apart.
Region standing_on(const Arrangement& arrangement, const SeatRow& row, Length top) {
  std::vector<Region> outlines;
  for (const Placed& thing : arrangement.things) {
    const bool own = std::ranges::find(row, &thing, &Sitting::cushion) != row.end();
    const bool table = thing.piece != nullptr && thing.piece->kind == Piece::Kind::table;
    if (!own && !table && thing.solid.base() <= top + stands_on_it && thing.solid.top() >= top + stands_on_it)
      outlines.push_back(thing.solid.outline());
  }
  return outlines.empty() ? Region{} : united(outlines);
}

std::vector<const Placed*> backs_of(const Arrangement& arrangement, const SeatRow& row) {
  std::vector<const Placed*> backs;
  for (const Placed& thing : arrangement.things)
    if (std::ranges::any_of(row, [&](const Sitting& sitting) {
          return std::ranges::find(sitting.facing.backs, &thing) != sitting.facing.backs.end();
        }))
      backs.push_back(&thing);
  return backs;
}

Length height_of_back(const Arrangement& arrangement, const Placed& back, Length seat_top) {
  const bool on_cushion = std::ranges::any_of(back.carried_by, [&](const std::string& carrier) {
    const Placed* below = arrangement.find(carrier);
    return below != nullptr && below->is_soft();
  });
  return back.solid.top() - (on_cushion ? back_sinks : Length{}) - seat_top;
}

// Half the shoulders of a small woman: nobody's head is nearer to the end of a seat.
SeatSpan where_heads_are(SeatSpan across) {
  const Length inset = half(body_figures(BodyMeasure::shoulder_breadth, Sex::women).p5);
  if (inset * 2 < across.length()) return {across.from + inset, across.to - inset};
  const Length middle = half(across.from + across.to);
  return {middle, middle};
}

// Where eyes may be, in the frame: a line, at most a point.
Rect eyes_in(const SeatScene& scene) {
  const Length x = std::min(scene.back + eyes_before_back, scene.front);
  const SeatSpan heads = where_heads_are(scene.across);
  return {{x, heads.from}, {x, heads.to}};
}

// The back cushions' faces and the ends. False where no line across the seat is free.
bool placed_in_frame(SeatScene& scene, const Region& cushions, const Region& standing,
                     const std::vector<const Placed*>& backs) {
  const Region turned = scene.frame.in(cushions);
  scene.front = turned.bounds().high.x;
  scene.back = turned.bounds().low.x;
  for (std::size_t i = 0; i < backs.size(); ++i) {
    const Length face = scene.frame.in(backs[i]->solid.outline()).bounds().high.x;
    scene.back = i == 0 ? face : std::max(scene.back, face);
  }
  const Length middle = half(scene.back + scene.front);
  std::vector<SeatSpan> free;
  const std::vector<SeatSpan> taken = stretches_across(scene.frame.in(standing), middle);
  for (const SeatSpan& stretch : joined(stretches_across(turned, middle), joint))
    for (const SeatSpan& left : left_of(stretch, taken)) free.push_back(left);
  scene.across = longest(free);
  return scene.across.length() > Length{};
}

void measure(Seat& seat, const SeatScene& scene, const std::vector<const Placed*>& backs) {
  const auto [from, to] = scene.across;
  seat.depth = scene.front - scene.back;
  seat.length = scene.across.length();
  seat.front_from = scene.frame.out(Point{scene.front, from});
  seat.front_to = scene.frame.out(Point{scene.front, to});
  for (const Placed* back : backs) {
    const Length height = height_of_back(scene.arrangement, *back, seat.top);
    seat.back_height = std::min(height, seat.back_height.value_or(height));
  }
  seat.way_in = way_onto(scene);
  seat.table = table_before(scene);
  const Rect eyes = eyes_in(scene);
  seat.eyes = scene.frame.out(Region(Rect{eyes.low, eyes.high + Vector{one_tick, one_tick}}));
  const Length beyond = half(body_figures(BodyMeasure::forearm_breadth, Sex::men).p95 - per_person);
  seat.elbows = scene.frame.out(
      Region(Rect{{scene.back, from - beyond}, {scene.back + elbows_before_back, to + beyond}}));
}

// Where heads are over a seat; all of it where the eyes have no place on it.
Region under_heads(const Seat& seat, const SeatScene& scene) {
  const Region place = common(seat.sitting, scene.frame.out(Region(grown(eyes_in(scene), head_around_eyes))));
  return place.empty() ? seat.sitting : place;
}

std::optional<Seat> seat_of(const Plan& plan, const Arrangement& arrangement, const SeatRow& row) {
  Seat seat;
  std::vector<Region> outlines;
  for (const Sitting& sitting : row) {
    seat.cushions.push_back(sitting.cushion->id);
    seat.top = std::max(seat.top, sitting.cushion->solid.top());
    outlines.push_back(sitting.cushion->solid.outline());
  }
  seat.sits_at = seat.top - seat_compression;
  const Region cushions = united(outlines);
  const Region standing = standing_on(arrangement, row, seat.top);
  seat.sitting = standing.empty() ? cushions : without(cushions, standing);
  Length footing;
  Region heads = seat.sitting;
  if (const std::optional<Wall> faces = row.front().facing.faces) {
    SeatScene scene{plan, arrangement, SeatFrame(*faces), {}, {}, {}, {}, seat.top, seat.sits_at, {}};
    for (const Sitting& sitting : row) scene.cushions.push_back(sitting.cushion);
    const std::vector<const Placed*> backs = backs_of(arrangement, row);
    if (placed_in_frame(scene, cushions, standing, backs) && scene.back < scene.front) {
      footing = scene.footing = footing_before(scene);
      seat.faces = faces;
      for (const Placed* back : backs) seat.backs.push_back(back->id);
      measure(seat, scene, backs);
      heads = under_heads(seat, scene);
    }
  }
  if (seat.top - footing < lowest_seat || seat.top - footing > highest_seat) return std::nullopt;
  seat.height = seat.sits_at - footing;
  if (!seat.faces) seat.eyes = seat.elbows = seat.sitting;
  seat.head_room = head_room_over(plan, arrangement, seat, heads);
  return seat;
}

bool face_each_other(const Seat& a, const Seat& b) {
  const auto pair = [&](Wall one, Wall other) { return a.faces == one && b.faces == other; };
  return pair(Wall::front, Wall::rear) || pair(Wall::rear, Wall::front) || pair(Wall::left, Wall::right) ||
         pair(Wall::right, Wall::left);
}

// Two who face each other under one table have half of it each, and neither more than stands free.
void share_knee_room(std::vector<Seat>& seats) {
  for (Seat& seat : seats)
    for (const Seat& other : seats)
      if (seat.table && other.table && seat.table->table == other.table->table &&
          face_each_other(seat, other))
        seat.table->knee_depth = std::min(seat.table->knee_depth, half(seat.table->reach));
}

}  // namespace

std::vector<Seat> seats_of(const Plan& plan, const Arrangement& arrangement) {
  std::vector<Seat> seats;
  for (const SeatRow& row : seat_rows(plan, arrangement))
    if (std::optional<Seat> seat = seat_of(plan, arrangement, row)) seats.push_back(std::move(*seat));
  share_knee_room(seats);
  return seats;
}

}  // namespace berthwright

#include "solve/convert/parking.h"

#include <algorithm>
#include <array>
#include <optional>
#include <tuple>

#include "plan/wall_names.h"

namespace berthwright {
namespace {

// Our own choices: nobody parks cushions above a counter, and what is put aside must not close the room.
constexpr Length highest_top = 42_in;
constexpr std::size_t most_aside = 4;
constexpr std::size_t most_on_one = 2;
constexpr std::size_t most_stacked = 2;
constexpr int burden_on_top = 1, burden_on_floor = 2, burden_stacked = 2, burden_outside = 6;

struct Carrier {
  std::string id;
  Rect box;
  Length top;
  std::optional<std::size_t> spot;  // of a piece
};

struct Candidate {
  PiecePlace spot;
  std::optional<std::size_t> on;  // spot of the carrier
  std::string carrier;
  int in_the_way = 0;
  std::int64_t away = 0;
};

Point middle_of(const Rect& box) { return {half(box.low.x + box.high.x), half(box.low.y + box.high.y)}; }
// Lies there without falling at a touch: two thirds of it, along and across, have something beneath. Our own
// choice; the middle alone over an edge is balance, not a place.
bool carries_enough(const Rect& carrier, const Rect& box) {
  const auto shared = [](Length from, Length to, Length low, Length high) {
    return std::min(to, high) - std::max(from, low);
  };
  return shared(carrier.low.x, carrier.high.x, box.low.x, box.high.x) * 3 >= box.width() * 2 &&
         shared(carrier.low.y, carrier.high.y, box.low.y, box.high.y) * 3 >= box.height() * 2;
}

/// Finds places for one piece after the other.
class Parking {
 public:
  Parking(const RoomAround& surroundings, std::vector<SpotEntry>& entries)
      : surroundings_(surroundings), plan_(surroundings.plan()), entries_(entries), posed_(entries.size()) {
    for (const Fixture& fixture : plan_->fixtures) {
      if (!is_top(fixture)) continue;
      for (const Rect& box : rectangles_over(fixture.solid.outline()))
        carriers_.push_back({fixture.id.text(), box, fixture.solid.top(), std::nullopt});
    }
    for (std::size_t at = 0; at < posed_; ++at) {
      const SpotEntry& entry = entries_[at];
      const Piece::Kind kind = plan_->pieces[entry.piece].kind;
      const bool carries =
          kind == Piece::Kind::cushion || kind == Piece::Kind::board || kind == Piece::Kind::table;
      if (entry.spot.stands_in_room() && entry.spot.pose.manner == Pose::Manner::flat && carries)
        carriers_.push_back({entry.spot.pose.piece.text(), entry.spot.pose.outline.bounds(),
                             entry.spot.base + entry.spot.pose.height, at});
    }
  }

  void add_outside(std::size_t piece) {
    for (const Opening& door : plan_->openings) {
      if (!is_way_out(door) || full()) continue;
      PiecePlace spot;
      spot.kind = PiecePlace::Kind::outside;
      spot.pose.piece = plan_->pieces[piece].id;
      spot.place = door.id.text();
      spot.reach = outside_door(plan_->interior, door, -1_in, Length{});
      entries_.push_back({piece, std::move(spot), {}, burden_outside});
    }
  }

  void add_inside(std::size_t piece) {
    std::vector<Candidate> found = candidates(piece);
    std::ranges::stable_sort(found, {}, [](const Candidate& one) {
      return std::tuple(one.in_the_way, one.carrier == "floor", one.away);
    });
    std::vector<const Candidate*> kept;
    for (const Candidate& one : found) {
      if (std::ranges::any_of(
              kept, [&](const Candidate* k) { return k->spot.pose.outline == one.spot.pose.outline; }))
        continue;
      const auto on_same =
          std::ranges::count_if(kept, [&](const Candidate* k) { return k->carrier == one.carrier; });
      if (kept.size() < most_aside && static_cast<std::size_t>(on_same) < most_on_one && !full()) {
        kept.push_back(&one);
        const int burden = one.carrier == "floor" ? burden_on_floor : burden_on_top;
        entries_.push_back(
            {piece, one.spot, one.on ? std::vector{*one.on} : std::vector<std::size_t>{}, burden});
        if (kept.size() == 1) first_.emplace_back(piece, entries_.size() - 1);
      }
    }
  }

  void add_stacked(std::size_t piece) {
    std::size_t stacked = 0;
    for (const auto& [other, beneath] : first_) {
      if (other == piece || stacked == most_stacked || full()) continue;
      const Rect box = entries_[beneath].spot.pose.outline.bounds();
      const Length top = entries_[beneath].spot.base + entries_[beneath].spot.pose.height;
      const Carrier carrier{plan_->pieces[other].id.text(), box, top, beneath};
      std::vector<Candidate> found;
      for (const int turn : turns(piece)) lay_in_the_middle(piece, turn, carrier, found);
      if (found.empty()) continue;
      std::vector<std::size_t> needs = entries_[beneath].needs;
      needs.push_back(beneath);
      entries_.push_back({piece, found.front().spot, std::move(needs), burden_stacked});
      ++stacked;
    }
  }

 private:
  bool full() const { return entries_.size() >= most_spots; }

  static bool is_top(const Fixture& fixture) {
    const auto kind = fixture.kind;
    return fixture.solid.top() <= highest_top &&
           (kind == Fixture::Kind::bench || kind == Fixture::Kind::cabinet ||
            kind == Fixture::Kind::counter || kind == Fixture::Kind::locker);
  }

  std::vector<int> turns(std::size_t piece) const {
    return plan_->pieces[piece].length == plan_->pieces[piece].width ? std::vector{0} : std::vector{0, 1};
  }

  PiecePlace lying(std::size_t number, int turn, Point low, const Carrier& carrier) const {
    const Piece& piece = plan_->pieces[number];
    PiecePlace spot;
    spot.kind = PiecePlace::Kind::parked;
    Pose& pose = spot.pose;
    pose.piece = piece.id;
    pose.placement.turn = Turn::quarters(turn);
    pose.placement.shift = low - pose.placement(piece.outline.polygon()).bounds().low;
    pose.outline = Region(pose.placement(piece.outline.polygon()));
    for (const Arc& arc : piece.outline.arcs()) pose.arcs.push_back(pose.placement(arc));
    pose.height = piece.thickness;
    pose.base = carrier.top;
    pose.state = piece.heat ? Pose::State::off : Pose::State::none;
    spot.base = carrier.top;
    spot.carried_by = {carrier.id};
    spot.reach = pose.outline.bounds();
    return spot;
  }

  // Rests there, on nothing but the carrier, with nothing built in above it, and off what gives heat.
  bool is_free(const Rect& box, Length base, Length height) const {
    for (const Rect& rect : surroundings_.beyond(base, base + height))
      if (overlaps(rect, box)) return false;
    for (const Hindrance& fixture : surroundings_.built_in())
      if (fixture.top > base)
        for (const Rect& rect : fixture.over)
          if (overlaps(rect, box)) return false;
    // Nothing is put upon a cooktop, flush with its counter or not, warm or cold.
    return std::ranges::none_of(plan_->fixtures, [&](const Fixture& fixture) {
      return fixture.heat && fixture.solid.base() <= base && base <= fixture.solid.top() &&
             overlaps(fixture.solid.outline().bounds(), box);
    });
  }

  // Spots of others over which, under which or in which it would lie, and lids that it would keep shut.
  int in_the_way(std::size_t piece, const Rect& box, Length base, std::optional<std::size_t> on) const {
    int count = 0;
    for (std::size_t at = 0; at < posed_; ++at) {
      const PiecePlace& spot = entries_[at].spot;
      if (entries_[at].piece == piece || at == on) continue;
      if (spot.stands_in_room()) count += overlaps(spot.pose.outline.bounds(), box) ? 1 : 0;
      if (spot.kind != PiecePlace::Kind::stowed) continue;
      const Fixture* fixture = plan_.fixture(spot.place);
      if (fixture != nullptr && fixture->solid.top() <= base &&
          overlaps(fixture->solid.outline().bounds(), box))
        ++count;
    }
    return count;
  }

  void try_at(std::size_t piece, int turn, Point low, const Carrier& carrier,
              std::vector<Candidate>& found) const {
    const Piece& thing = plan_->pieces[piece];
    const Rect box{low,
                   low + (turn == 0 ? Vector{thing.length, thing.width} : Vector{thing.width, thing.length})};
    if (!carries_enough(carrier.box, box) || !is_free(box, carrier.top, thing.thickness)) return;
    const Point home = middle_of(entries_home(piece));
    const Point there = middle_of(box);
    found.push_back({lying(piece, turn, low, carrier), carrier.spot, carrier.id,
                     in_the_way(piece, box, carrier.top, carrier.spot),
                     abs(home.x - there.x).ticks() + abs(home.y - there.y).ticks()});
  }

  Rect entries_home(std::size_t piece) const {
    return std::ranges::find(entries_, piece, &SpotEntry::piece)->spot.reach;
  }

  void lay_in_the_middle(std::size_t piece, int turn, const Carrier& carrier,
                         std::vector<Candidate>& found) const {
    const Piece& thing = plan_->pieces[piece];
    const Vector size = turn == 0 ? Vector{thing.length, thing.width} : Vector{thing.width, thing.length};
    try_at(piece, turn, middle_of(carrier.box) - Vector{half(size.x), half(size.y)}, carrier, found);
  }

  std::vector<Candidate> candidates(std::size_t piece) const {
    std::vector<Candidate> found;
    const Piece& thing = plan_->pieces[piece];
    for (const int turn : turns(piece)) {
      const Vector size = turn == 0 ? Vector{thing.length, thing.width} : Vector{thing.width, thing.length};
      for (const Carrier& carrier : carriers_) {
        if (carrier.spot && entries_[*carrier.spot].piece == piece) continue;
        lay_in_the_middle(piece, turn, carrier, found);
        const Rect& box = carrier.box;
        for (const Length x : {box.low.x, box.high.x - size.x})
          for (const Length y : {box.low.y, box.high.y - size.y}) try_at(piece, turn, {x, y}, carrier, found);
      }
      on_the_floor(piece, turn, size, found);
    }
    return found;
  }

  void on_the_floor(std::size_t piece, int turn, Vector size, std::vector<Candidate>& found) const {
    const Length height = plan_->pieces[piece].thickness;
    Rect range = plan_->interior.outline.polygon().bounds();
    const Carrier floor{"floor", range, Length{}, std::nullopt};
    range.high = range.high - size;
    if (range.high.x < range.low.x || range.high.y < range.low.y) return;
    std::vector<Rect> standing = surroundings_.beyond(Length{}, height);
    for (const Hindrance& fixture : surroundings_.built_in())
      standing.insert(standing.end(), fixture.over.begin(), fixture.over.end());
    for (Rect& rect : standing) rect.low = rect.low - size;
    for (const Point low : SlidingPlane(range, standing).free_crossings())
      try_at(piece, turn, low, floor, found);
  }

  const RoomAround& surroundings_;
  const Plan& plan_;
  std::vector<SpotEntry>& entries_;
  std::size_t posed_;
  std::vector<Carrier> carriers_;
  std::vector<std::pair<std::size_t, std::size_t>> first_;  // piece, and its first spot aside
};

}  // namespace

void add_parking(const RoomAround& surroundings, const std::vector<std::size_t>& wanted,
                 std::vector<SpotEntry>& entries) {
  Parking parking(surroundings, entries);
  for (const std::size_t piece : wanted) parking.add_inside(piece);
  for (const std::size_t piece : wanted) parking.add_stacked(piece);
  for (const std::size_t piece : wanted) parking.add_outside(piece);
}

}  // namespace berthwright

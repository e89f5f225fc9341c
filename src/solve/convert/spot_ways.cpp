#include "solve/convert/spot_ways.h"

#include <algorithm>
#include <map>
#include <set>

#include "plan/box_sides.h"
#include "solve/convert/motion_room.h"
#include "solve/convert/spot_swings.h"
#include "solve/room/outlines_met.h"
#include "solve/room/rest.h"
#include "solve/room/rows.h"

namespace berthwright {
namespace {

// How far before its face one stands a thing that comes out of a cupboard, and beyond a door what leaves.
constexpr Length before_face = 12_in;
constexpr Length beyond_door = 1_in;
// Realms of one level; no plane has as many parts.
constexpr std::size_t realms = 1U << 20U;

bool lies_flat(const PiecePlace& spot) {
  return spot.stands_in_room() && spot.pose.manner == Pose::Manner::flat;
}

/// Gathers the ways of one spot.
class WaysOfSpot {
 public:
  WaysOfSpot(const RoomAround& surroundings, const std::vector<SpotEntry>& entries, std::size_t at,
             const SpotOverlaps& overlaps, const Carrying& carrying)
      : surroundings_(surroundings),
        plan_(surroundings.plan()),
        entries_(entries),
        at_(at),
        spot_(entries[at].spot),
        piece_(plan_->pieces[entries[at].piece]),
        overlaps_(overlaps),
        carrying_(carrying) {
    for (const SpotEntry& entry : entries) {
      if (entry.piece != entries[at].piece || !lies_flat(entry.spot) || !lies_flat(spot_)) continue;
      flips_matter_ = flips_matter_ || entry.spot.pose.placement.flipped != spot_.pose.placement.flipped;
      ends_matter_ = ends_matter_ || (entry.spot.kind == PiecePlace::Kind::posed &&
                                      half_turns(entry.spot) != half_turns(spot_));
    }
  }

  SpotWays gathered() {
    if (!piece_.hinged_to.empty()) {
      fold();
      return std::move(ways_);
    }
    switch (spot_.kind) {
      case PiecePlace::Kind::posed:
      case PiecePlace::Kind::parked:
        lift();
        break;
      case PiecePlace::Kind::outside:
        leave();
        break;
      case PiecePlace::Kind::stowed:
        take_out();
        break;
    }
    return std::move(ways_);
  }

 private:
  void add(const WayAnchor& anchor, std::size_t realm, const SpotSet& barred_by) {
    const std::size_t level = anchor.level;
    // What can be turned over, or end for end, on its way may come to lie any way; else each is apart.
    const std::size_t joins = 4 * (level * realms + realm);
    std::vector<std::size_t> faces{0};
    if (flips_matter_ && !carrying_.can_flip(level, realm)) {
      faces = lies_flat(spot_) ? std::vector{spot_.pose.placement.flipped ? std::size_t{1} : std::size_t{0}}
                               : std::vector<std::size_t>{0, 1};
    } else if (!flips_matter_ && ends_matter_ && !carrying_.can_spin(level, realm)) {
      faces = spot_.kind == PiecePlace::Kind::posed && lies_flat(spot_)
                  ? std::vector{half_turns(spot_) ? std::size_t{2} : std::size_t{3}}
                  : std::vector<std::size_t>{2, 3};
    }
    for (const std::size_t face : faces) {
      const OpenWay way{joins + face, barred_by | put_aside_above(carrying_.heights()[level]), false};
      if (std::ranges::find(ways_.ways, way) != ways_.ways.end()) continue;
      ways_.ways.push_back(way);
      ways_.anchors.push_back(anchor);
    }
  }

  // What is put aside may stand in the way on a level that it rises above.
  SpotSet put_aside_above(Length height) const {
    SpotSet found;
    for (std::size_t other = 0; other < entries_.size(); ++other)
      if (entries_[other].spot.kind == PiecePlace::Kind::parked &&
          entries_[other].piece != entries_[at_].piece && height < overlaps_.standing(other).top)
        found.set(other);
    return found;
  }

  // Pressed from beneath into the cushion that lies on it: it comes off that by being lifted.
  bool presses(const Fixture& fixture) const {
    return piece_.is_soft() && fixture.solid.base() <= spot_.base && spot_.base < fixture.solid.top() &&
           2 * (fixture.solid.top() - spot_.base) <= spot_.pose.height;
  }

  bool is_within_room(Length low, Length high) const {
    const Rect bounds = spot_.pose.outline.bounds();
    if (std::ranges::none_of(surroundings_.beyond(low, high),
                             [&](const Rect& rect) { return overlaps(rect, bounds); }))
      return true;
    const Region outside = without(spot_.pose.outline, surroundings_.room(low, high));
    if (outside.empty()) return true;
    const Length gives = piece_.is_soft() ? give_in_row : spot_.pose.arcs.empty() ? Length{} : two_arcs_error;
    return gives > Length{} && !is_thicker(outside, gives);
  }

  void shut(const std::string& thing, Length depth) {
    const auto known = std::ranges::find(ways_.shut, thing, &ShutBy::thing);
    if (known == ways_.shut.end()) ways_.shut.push_back({thing, depth});
  }

  // Whether nothing built in bars the way straight up to the level; what may stand there is added.
  bool opens_upward(Length height, SpotSet& barred_by) {
    const Length top = height + spot_.pose.height;
    bool open = true;
    for (const SpotOverlaps::With& with : overlaps_.with_fixtures(at_)) {
      const Fixture& fixture = plan_->fixtures[with.other];
      if (fixture.solid.top() <= spot_.base || top <= fixture.solid.base() || presses(fixture)) continue;
      const bool stands_in_it = fixture.solid.base() < spot_.base + spot_.pose.height;
      shut(fixture.id.text(), stands_in_it ? with.depth : Length{});
      open = false;
    }
    for (const SpotOverlaps::With& with : overlaps_.with_spots(at_)) {
      const StandingThing& other = overlaps_.standing(with.other);
      if (spot_.base < other.top && other.base < top) barred_by.set(with.other);
    }
    if (is_within_room(spot_.base, top)) return open;
    shut("room", {});
    return false;
  }

  void lift() {
    const Rect bounds = spot_.pose.outline.bounds();
    const bool quarter = spot_.pose.placement.turn.is_quarter();
    std::vector<std::set<std::size_t>> taken;  // at each height where it cannot be carried off
    for (std::size_t level = 0; level < carrying_.heights().size(); ++level) {
      const Length height = carrying_.heights()[level];
      if (height < spot_.base) continue;
      SpotSet barred_by;
      if (!opens_upward(height, barred_by)) return tilt_upward(level);
      HeldAt held{Carrying::hold_of(spot_.pose), bounds.low};
      if (!quarter) {
        const auto side = carrying_.sides(held.hold);
        held.low = bounds.low + Vector{half(bounds.width() - side[0]), half(bounds.height() - side[1])};
        const Rect needed = hull(turning_room(carrying_.box(held)).needed, bounds);
        if (!carrying_.is_clear_at(level, needed, spot_.pose.height)) {
          taken.push_back(places_met(needed, height));
          continue;
        }
      }
      if (const auto realm = carrying_.realm(level, held))
        add({level, held, {}, {}}, *realm, barred_by);
      else
        taken.push_back(places_met(carrying_.box(held), height));
    }
    if (ways_.ways.empty() && ways_.shut.empty()) shut_by_places(taken);
  }

  // Pieces of which some place takes a part of the box at that height.
  std::set<std::size_t> places_met(const Rect& box, Length height) const {
    std::set<std::size_t> met;
    for (std::size_t other = 0; other < entries_.size(); ++other) {
      const StandingThing& thing = overlaps_.standing(other);
      if (entries_[other].piece == entries_[at_].piece ||
          entries_[other].spot.kind != PiecePlace::Kind::posed || thing.outline == nullptr)
        continue;
      if (thing.base < height + spot_.pose.height && height < thing.top &&
          berthwright::overlaps(Region(box), *thing.outline))
        met.insert(entries_[other].piece);
    }
    return met;
  }

  // The way up is open, and at no height is there room to be carried off: of the pieces whose places take it
  // those that take it at most heights, boards rather than cushions, till every height is told. Else the
  // room.
  void shut_by_places(std::vector<std::set<std::size_t>> taken) {
    if (taken.empty() || std::ranges::any_of(taken, &std::set<std::size_t>::empty)) return shut("room", {});
    while (!taken.empty()) {
      std::map<std::size_t, std::size_t> times;
      for (const std::set<std::size_t>& at_height : taken)
        for (const std::size_t piece : at_height) ++times[piece];
      const auto most = std::ranges::max_element(times, {}, [&](const auto& entry) {
        return std::pair(entry.second, !plan_->pieces[entry.first].is_soft());
      });
      shut(plan_->pieces[most->first].id.text(), {});
      std::erase_if(taken,
                    [&](const std::set<std::size_t>& at_height) { return at_height.contains(most->first); });
    }
  }

  // Past what bars the way straight up, a board that lies square goes to the next level where it can be.
  void tilt_upward(std::size_t level) {
    const bool is_board = piece_.kind == Piece::Kind::board || piece_.kind == Piece::Kind::table;
    if (!is_board || !lies_flat(spot_) || !spot_.pose.placement.turn.is_quarter()) return;
    for (; level < carrying_.heights().size(); ++level) {
      const Length height = carrying_.heights()[level];
      const std::optional<Tilt> tilt = tilt_out(surroundings_, spot_, height);
      if (!tilt) continue;
      const Motion motion = tilted(spot_.solid(), height, *tilt);
      const HeldAt held{Carrying::hold_of(spot_.pose), motion.after.outline().bounds().low};
      const auto realm = carrying_.realm(level, held);
      if (!realm) continue;
      return add({level, held, {}, tilt}, *realm, spots_met(entries_, at_, overlaps_, motion.sweep));
    }
  }

  // What is hinged goes from one of its places to another by its hinge, or not at all.
  void fold() {
    for (std::size_t other = 0; other < entries_.size(); ++other) {
      if (other == at_ || entries_[other].piece != entries_[at_].piece) continue;
      const PiecePlace& there = entries_[other].spot;
      // It is put aside nowhere.
      if (spot_.kind == PiecePlace::Kind::parked || there.kind == PiecePlace::Kind::parked) continue;
      const std::optional<Motion> motion = spot_.stands_in_room() && there.stands_in_room()
                                               ? folded(spot_.solid(), there.solid())
                                               : std::nullopt;
      std::string met = piece_.hinged_to;
      if (!motion || !is_clear_of_fixtures(surroundings_, motion->sweep, &met)) {
        shut(met, {});
        continue;
      }
      const std::size_t pair = std::min(at_, other) * entries_.size() + std::max(at_, other);
      ways_.ways.push_back({fold_ways + pair, spots_met(entries_, at_, overlaps_, motion->sweep), false});
      ways_.anchors.push_back({});
    }
  }

  void leave() {
    const Opening& door = *plan_.opening(spot_.place);
    for (std::size_t level = 0; level < carrying_.heights().size(); ++level)
      for (std::size_t hold = 0; hold < (piece_.heat ? 2 : holds); ++hold) {
        const auto side = carrying_.sides(hold);
        const Length depth = is_end_wall(door.wall) ? side[0] : side[1];
        const Rect before = outside_door(plan_->interior, door, beyond_door, beyond_door + depth);
        const HeldAt held{
            hold,
            {before.low.x + (is_end_wall(door.wall) ? Length{} : half(before.width() - side[0])),
             before.low.y + (is_end_wall(door.wall) ? half(before.height() - side[1]) : Length{})}};
        if (const auto realm = carrying_.realm(level, held))
          add({level, held, door.id.text(), {}}, *realm, {});
      }
    if (ways_.ways.empty()) shut(door.id.text(), {});
  }

  // What comes out of a locker is turned there as it needs to be: it joins whatever is free before it.
  void join_near(Point place, const SpotSet& barred_by, const std::string& leaf) {
    const Rect room = plan_->interior.outline.polygon().bounds();
    const Point middle{half(room.low.x + room.high.x), half(room.low.y + room.high.y)};
    for (std::size_t level = 0; level < carrying_.heights().size(); ++level)
      for (std::size_t hold = 0; hold < (piece_.heat ? 2 : holds); ++hold)
        for (const int quarter : {0, 1, 2, 3, 4}) {
          const auto side = carrying_.sides(hold);
          const auto between = [&](Length a, Length b) { return a + half(half((b - a) * quarter)); };
          const HeldAt held{
              hold, {between(place.x, middle.x) - half(side[0]), between(place.y, middle.y) - half(side[1])}};
          const auto realm = carrying_.realm(level, held);
          if (!realm) continue;
          add({level, held, leaf, {}}, *realm, barred_by);
          break;
        }
  }

  bool passes(const Leaf& leaf) const {
    if (piece_.is_soft() || leaf.kind == Leaf::Kind::drawer) return true;
    std::array sides{piece_.length, piece_.width, piece_.thickness};
    std::ranges::sort(sides);
    const Length less = std::min(leaf.outline.width(), leaf.outline.height());
    const Length more = std::max(leaf.outline.width(), leaf.outline.height());
    return sides[0] <= less && sides[1] <= more;
  }

  SpotSet in_sweep(const Fixture& fixture, const Leaf& leaf) const {
    SpotSet barred_by;
    const std::vector<Arc> none;
    for (std::size_t other = 0; other < entries_.size(); ++other) {
      const StandingThing& thing = overlaps_.standing(other);
      if (entries_[other].piece == entries_[at_].piece || thing.outline == nullptr) continue;
      const Region& sweep = surroundings_.sweep(fixture, leaf, thing.base, thing.top);
      if (!sweep.empty() && overlap_in_plan(thing, {&sweep, &none, thing.base, thing.top, false}) > Length{})
        barred_by.set(other);
    }
    return barred_by;
  }

  void take_out_of(const Fixture& fixture, const Leaf& leaf) {
    if (!passes(leaf)) return shut(leaf.id.text(), {});
    const Rect box = fixture.solid.outline().bounds();
    const Point place = leaf.kind == Leaf::Kind::lid
                            ? Point{half(leaf.outline.low.x + leaf.outline.high.x),
                                    half(leaf.outline.low.y + leaf.outline.high.y)}
                            : middle_of_side(beyond_side(box, leaf.face, 2 * before_face), leaf.face);
    join_near(place, in_sweep(fixture, leaf), leaf.id.text());
  }

  void take_out() {
    const Leaf* drawer = plan_.leaf(spot_.place);
    const Fixture* fixture = plan_.fixture(drawer != nullptr ? drawer->fixture.text() : spot_.place);
    const Rect reach = spot_.reach;
    if (fixture == nullptr || fixture->leaves.empty())
      return join_near({half(reach.low.x + reach.high.x), half(reach.low.y + reach.high.y)}, {}, {});
    for (const Leaf& leaf : fixture->leaves)
      if (drawer == nullptr ? leaf.kind != Leaf::Kind::drawer : &leaf == drawer) take_out_of(*fixture, leaf);
  }

  const RoomAround& surroundings_;
  const Plan& plan_;
  const std::vector<SpotEntry>& entries_;
  std::size_t at_;
  const PiecePlace& spot_;
  const Piece& piece_;
  const SpotOverlaps& overlaps_;
  const Carrying& carrying_;
  bool flips_matter_ = false;
  bool ends_matter_ = false;
  SpotWays ways_;
};

}  // namespace

SpotOverlaps::SpotOverlaps(const Plan& plan, const std::vector<SpotEntry>& entries)
    : spots_(entries.size()), fixtures_(entries.size()) {
  for (const SpotEntry& entry : entries) {
    StandingThing standing;
    if (entry.spot.stands_in_room())
      standing = {&entry.spot.pose.outline, &entry.spot.pose.arcs, entry.spot.base,
                  entry.spot.base + entry.spot.pose.height, plan->pieces[entry.piece].is_soft()};
    standing_.push_back(standing);
  }
  for (std::size_t a = 0; a < entries.size(); ++a) {
    if (standing_[a].outline == nullptr) continue;
    for (std::size_t b = a + 1; b < entries.size(); ++b) {
      if (standing_[b].outline == nullptr || entries[a].piece == entries[b].piece) continue;
      const Length depth = overlap_in_plan(standing_[a], standing_[b]);
      if (depth == Length{}) continue;
      spots_[a].push_back({b, depth});
      spots_[b].push_back({a, depth});
    }
    for (std::size_t f = 0; f < plan->fixtures.size(); ++f) {
      const Fixture& fixture = plan->fixtures[f];
      if (fixture.kind == Fixture::Kind::curtain) continue;
      const Length depth = overlap_in_plan(standing_[a], {&fixture.solid.outline(), &fixture.arcs,
                                                          fixture.solid.base(), fixture.solid.top(), false});
      if (depth > Length{}) fixtures_[a].push_back({f, depth});
    }
  }
}

SpotSet SpotOverlaps::at_rest(std::size_t spot) const {
  SpotSet found;
  for (const With& with : spots_[spot])
    if (standing_[with.other].base < standing_[spot].top && standing_[spot].base < standing_[with.other].top)
      found.set(with.other);
  return found;
}

SpotWays ways_of(const RoomAround& surroundings, const std::vector<SpotEntry>& entries, std::size_t at,
                 const SpotOverlaps& overlaps, const Carrying& carrying) {
  return WaysOfSpot(surroundings, entries, at, overlaps, carrying).gathered();
}

void add_bent_way(SpotWays& ways, const SpotSet& barred_by) {
  ways.ways.push_back({bent_ways, barred_by, true});
  ways.anchors.push_back({});
}

}  // namespace berthwright

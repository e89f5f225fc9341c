#pragma once

#include <map>
#include <tuple>
#include <utility>
#include <vector>

#include <berthwright/geometry/solid.h>
#include <berthwright/plan/plan.h>

namespace berthwright {

/// Something that stands in the way, as rectangles that cover it.
struct Hindrance {
  std::vector<Rect> over;
  Length base;
  Length top;
};

/// The walls and the roof, and what is built in. Through a door that opens one comes out as far as `outside`.
class RoomAround {
 public:
  explicit RoomAround(const Plan& plan);

  /// Rectangles over all that is not room anywhere between the two heights, as far as `range`.
  const std::vector<Rect>& beyond(Length low, Length high) const;
  /// Where the room is clear from `low` to `high`.
  const Region& room(Length low, Length high) const;
  /// What the leaf sweeps between the two heights.
  const Region& sweep(const Fixture& fixture, const Leaf& leaf, Length low, Length high) const;
  const Rect& range() const { return range_; }
  const std::vector<Hindrance>& built_in() const { return built_in_; }
  const Plan& plan() const { return plan_; }

  /// How far beyond a door the way is followed.
  static constexpr Length outside = Length::inches(110);

 private:
  const Plan& plan_;
  Rect range_;
  std::vector<Hindrance> built_in_;
  mutable std::map<std::pair<Length, Length>, Region> rooms_;
  mutable std::map<std::pair<Length, Length>, std::vector<Rect>> beyond_;
  mutable std::map<std::tuple<const Leaf*, Length, Length>, Region> sweeps_;
};

/// Doors that open.
bool is_way_out(const Opening& opening);
/// The space of a door outside, as wide as its clear opening, `from` to `to` beyond the line of its wall.
Rect outside_door(const Interior& room, const Opening& door, Length from, Length to);

}  // namespace berthwright

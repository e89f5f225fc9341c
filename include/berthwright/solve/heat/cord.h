#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/geometry/shortest_way.h>
#include <berthwright/solve/room/arrangement.h>

namespace berthwright {

/// A cord lies on a floor where a square of this side finds room (our own choice: cord and plug).
inline constexpr Length cord_room = Length::inches(1, 2);
/// It is not led under what begins lower than this above the floor (our own choice).
inline constexpr Length over_a_cord = 4_in;

/// What an appliance stands on.
struct CordLevel {
  Length height;                        ///< above the finished floor
  std::vector<std::string> carriers{};  ///< ids of fixtures and pieces with this top; empty: the floor
};
/// The top that carries the appliance; the floor where it stands there or hangs with nothing under it.
CordLevel level_under(const Placed& appliance);

/// Where a cord may lie on a level, the appliance itself left out: the room, or the tops of the carriers,
/// less everything that stands there or begins less than `over_a_cord` above it but for curtains, less
/// `shunned`, and less cracks that are narrower than `cord_room`.
Region cord_floor(const Plan& plan, const Arrangement& arrangement, std::string_view appliance,
                  const CordLevel& level, const Region& shunned = {});

/// How an appliance stands: its box in plan, its underside, and the side in whose middle the cord comes out,
/// at the underside.
struct CordExit {
  Rect body;
  Length base;
  Wall side = Wall::front;
  Point at() const;
};
/// None: it has no cord, or does not stand upright and square.
std::optional<CordExit> cord_exit(const Placed& appliance);

/// A cord led from an appliance to an outlet: down to the level, the shortest way over it, straight up to the
/// top of the outlet, whose foot is the middle of the side that it faces.
struct CordRun {
  enum class End {
    reached,
    shut_in,   ///< something stands close before the side where the cord comes out, or over it
    shut_out,  ///< the outlet has no free floor below its face
    no_way     ///< there is floor at both ends, and no way between them
  };
  End end = End::no_way;
  std::string blocked_by{};   ///< what takes the floor: id of a thing, "the front wall"…; may be empty
  Length length;              ///< rounded up, and 0.1 mm more for each arc on the level; zero unless reached
  std::vector<Point> path{};  ///< over the level, from the exit to the foot of the outlet
  std::vector<Point3> route{};  ///< the whole cord, for drawing
  bool reached() const { return end == End::reached; }
};
/// "shut in", "shut out", "no way", as findings and JSON name it; empty where the outlet is reached.
std::string_view why_not(CordRun::End end);

/// One level, and its floor as `cord_floor` makes it.
struct CordGround {
  CordLevel level;
  Region floor;
};

/// Cords to one outlet from anywhere on one level of one configuration. Copies what it needs but for `plan`
/// and `arrangement`, which must outlive it.
class CordReach {
 public:
  CordReach(const Plan& plan, const Arrangement& arrangement, std::string_view appliance, CordGround ground,
            const Fixture& outlet);

  /// Round the appliance itself too, unless it hangs at least `over_a_cord` above the level. Where the plan
  /// does not say which way the outlet faces, the longest run of all its free sides.
  CordRun from(const CordExit& exit) const;

  /// Shifts of `exit` for which a run of at most `cord` is free, its body standing on free floor. Never too
  /// large, so a little too small: a cord that must go round the appliance is charged the whole side where it
  /// comes out, and there the appliance must stand `cord_room` clear of everything, and always of the
  /// outlet's foot.
  Region places(Length cord, const CordExit& exit) const;

 private:
  struct Foot {
    ShortestWays ways;
    Wall faces;
    Length sideways;  ///< from the outlet's face to the floor, where the wall curves in below it
  };

  CordRun run(const Foot& foot, const CordExit& exit) const;
  Region exits_round(const Foot& foot, Length enough, const Rect& body, Wall side) const;
  std::string over_of(Point place) const;
  std::string taking(Point place) const;

  const Plan* plan_;
  const Arrangement* arrangement_;
  std::string appliance_;
  CordLevel level_;
  Region floor_;
  const Fixture* outlet_;
  Length arcs_;
  std::vector<Foot> feet_;
  std::string shut_out_by_;
};

}  // namespace berthwright

#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/exact/mass.h>
#include <berthwright/geometry/outline.h>
#include <berthwright/geometry/placement.h>
#include <berthwright/geometry/solid.h>
#include <berthwright/plan/leaf.h>
#include <berthwright/plan/load.h>
#include <berthwright/plan/names.h>
#include <berthwright/plan/sewing.h>

namespace berthwright {

/// Least distances to what can burn, by face, from an appliance's data plate or manual. A face the maker does
/// not give is unknown, not zero. The underside counts as side.
struct DataPlate {
  std::optional<Length> front;
  std::optional<Length> back;
  std::optional<Length> sides;
  std::optional<Length> top;
  friend bool operator==(const DataPlate&, const DataPlate&) = default;
};

/// What gives heat: the way its front looks, and its plate where the plan has it.
struct HeatSource {
  Wall faces = Wall::rear;
  std::optional<DataPlate> plate;
};

/// A solid that stays where it is.
struct Fixture {
  enum class Kind {
    bench,
    cabinet,
    locker,
    shelf,
    counter,
    sink,
    refrigerator,
    heater,
    furnace_outlet,
    oven,
    cooktop,
    outlet,
    smoke_alarm,
    co_alarm,
    gas_alarm,
    light,
    tank,
    battery,
    leg,
    ledge,
    wheel_arch,
    protrusion,
    curtain,
    wall,
    guard_rail
  };
  FixtureId id;
  std::string name;  ///< what to print; the id where the plan gives none
  Kind kind = Kind::cabinet;
  Solid solid;
  std::vector<Arc> arcs;           ///< of the placed outline, for drawing
  std::optional<HeatSource> heat;  ///< heaters, furnace outlets, ovens, cooktops; lights with a data plate
  std::optional<Wall> faces{};     ///< outlets: the way the plug is pulled out; lights: the way they shine
  bool burns = false;              ///< curtains, and whatever the plan says can burn
  std::vector<Leaf> leaves{};
  std::optional<InsideBox> inside{};
  std::optional<MassSpan> weight{};  ///< of a tank: empty; none: unknown
  std::optional<TankFill> fill{};    ///< tanks
  std::optional<Draw> draw{};        ///< none: the plan does not say
  Origin origin;
};

/// The cord of an electric appliance, its own and no other: a heater is never run on an extension.
struct Cord {
  Length length;
  Wall leaves_at = Wall::front;  ///< the side of the unturned piece where it comes out
  friend bool operator==(const Cord&, const Cord&) = default;
};

/// A solid that is moved. Its own frame: lying unturned, length along x, width along y, from the origin.
struct Piece {
  enum class Kind { cushion, board, table, leg, bolster, heater };
  enum class Grain { along_length, along_width };
  PieceId id;
  std::string name;
  Kind kind = Kind::cushion;
  Outline outline;       ///< finished size, in the piece's own frame, bounds from (0, 0)
  Length length;         ///< x extent of `outline`
  Length width;          ///< y extent
  Length thickness;      ///< height when it lies flat
  std::string material;  ///< foam grade or board, as the shop wrote it; empty: unknown
  std::string panel{};   ///< boards and tables: a name among `all_panels`; empty: unknown
  std::optional<int> plies{};
  std::optional<Grain> grain{};  ///< of the panel's face; along its strong direction
  std::optional<Hold> held_by{};
  std::string hinged_to{};       ///< boards and tables: id of the fixture that bears the hinge; empty: loose
  std::optional<Mass> weight{};  ///< of all that is moved with it; none: unknown
  std::optional<Cord> cord{};    ///< heaters
  std::optional<Draw> draw{};    ///< heaters; none: the plan does not say
  std::optional<Sewing> sewing{};  ///< of a cushion's own cover, whole; none: as the plan's
  std::optional<HeatSource> heat;  ///< portable heaters; `faces` is the way the front looks unturned
  Origin origin;

  bool is_soft() const { return kind == Kind::cushion || kind == Kind::bolster; }
};

/// How a piece lies in one configuration; the height it comes to rest at is found by `arranged`.
struct Pose {
  enum class Manner { flat, on_length, on_width, stowed };  ///< on_length: its length edge is down
  enum class State { none, running, off, stowed };          ///< of an appliance
  PieceId piece;
  Manner manner = Manner::flat;
  Region outline;             ///< in plan; empty when stowed
  std::vector<Arc> arcs;      ///< of the outline, for drawing
  Placement placement;        ///< own frame to plan, for flat poses
  Length height;              ///< from its underside to its top in this pose
  std::optional<Wall> faces;  ///< on edge: the way its face looks; heaters: the way the front looks
  std::vector<std::string>
      on;  ///< ids of fixtures or pieces that carry it; empty: whatever is highest beneath
  std::optional<Length> base;  ///< underside above the floor where the plan says so (a table on wall hooks)
  State state = State::none;
  std::string plugged_into{};  ///< id of an outlet; empty: the plan does not say
  std::string stowed_in;       ///< where it is kept, when stowed
  Origin origin;
};

}  // namespace berthwright

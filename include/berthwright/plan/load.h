#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/exact/length.h>
#include <berthwright/exact/mass.h>
#include <berthwright/exact/volume.h>
#include <berthwright/exact/warmth.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// What something weighs, as far as the plan tells. `most` none: no bound is known.
struct MassSpan {
  Mass least;
  std::optional<Mass> most;
  static MassSpan of(Mass mass) { return {mass, mass}; }
  bool is_known() const { return most && *most == least; }
  friend bool operator==(const MassSpan&, const MassSpan&) = default;
};

/// What a tank holds. `percent` none: anything between empty and full.
struct TankFill {
  Volume volume;
  std::optional<int> percent;
  friend bool operator==(const TankFill&, const TankFill&) = default;
};

/// What an electric appliance draws, from its data plate. Continuous: three hours or more at a stretch.
struct Draw {
  int watts = 0;
  bool continuous = false;
  friend bool operator==(const Draw&, const Draw&) = default;
};

/// Something that is carried along and is neither fixture nor piece: pots, gas bottles, a spare wheel.
struct Cargo {
  std::string id;
  std::string name;
  std::optional<MassSpan> weight{};  ///< of a tank: empty
  std::optional<TankFill> fill{};
  std::string kept_in{};           ///< id of a fixture or of a leaf of one; empty: `along` says where
  std::optional<Length> along{};   ///< behind the front wall, inside; negative: ahead of it
  std::optional<Length> across{};  ///< from the left wall; none: anywhere between the side walls
  Origin origin{};
};

/// Which published range the share on the coupling is compared with.
enum class TowingRange { us, uk, australia };

/// What the scales said of the trailer alone: `with` stood in it, tanks empty, and nothing else of the plan.
struct Weighed {
  Mass coupling;
  Mass axle;
  std::optional<Mass> left{};  ///< under the wheels of each side; both or neither, together the axle
  std::optional<Mass> right{};
  std::vector<std::string> with{};  ///< ids of fixtures, pieces and cargo
  bool with_fixtures = false;       ///< every fixture stood in it
  bool with_everything = false;     ///< and every piece and all cargo
  std::string configuration{};      ///< where the pieces among them were then; empty: none of them were
  Origin origin{};
};

/// Where the trailer is carried, and what it may weigh.
struct Chassis {
  bool towed = true;  ///< false: a van that drives itself; it has none of coupling, axle and weighing
  std::optional<Length> coupling{};  ///< the ball, ahead of the front wall inside
  std::optional<Length> axle{};      ///< behind it; of two axles the middle between them
  std::optional<Length> track{};     ///< between the middles of the two wheels of an axle
  TowingRange range = TowingRange::us;
  std::optional<Mass> whole_limit{};  ///< the plate: what the loaded trailer may weigh
  std::optional<Mass> axle_limit{};
  std::optional<Mass> coupling_limit{};
  std::optional<Weighed> weighed{};
  Origin origin{};
};

/// Something on a circuit that the plan does not draw.
struct ExtraLoad {
  std::string name;
  Draw draw;
};

/// One circuit: its breaker, and what hangs on it by id; an outlet passes on whatever is plugged into it.
struct Circuit {
  std::string id;
  std::string name;
  int breaker = 0;  ///< amperes
  std::vector<std::string> feeds{};
  std::vector<ExtraLoad> loads{};
  Origin origin{};
};

/// The supply of the whole trailer.
struct Supply {
  int volts = 120;
  std::optional<int> amps{};  ///< of the hook-up or main breaker
  std::vector<Circuit> circuits{};
  Origin origin{};
};

/// From what to what the room is to be warmed.
struct Warming {
  Temperature from = Temperature::fahrenheit(40);
  Temperature to = Temperature::fahrenheit(70);
  Temperature outside = Temperature::fahrenheit(40);
  std::optional<Insulation> insulation{};  ///< of the whole shell; none: unknown
  Origin origin{};
};

}  // namespace berthwright

#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// A number between two whole ones.
struct CountSpan {
  std::int64_t low = 0;
  std::int64_t high = 0;
  friend bool operator==(const CountSpan&, const CountSpan&) = default;
};

/// What it takes to warm the room and to keep it warm; a lumped model, whose parts are named here.
struct WarmUp {
  int watts = 0;                       ///< of the heaters that run
  std::vector<std::string> heaters;    ///< their names
  std::vector<std::string> no_figure;  ///< heaters that run, and the plan does not say what they draw
  Volume room;                         ///< furniture counted as air
  Area shell;  ///< twice what is seen from above, the side and the end: never too small
  /// Seconds in which all heat warms air alone and none is lost; rounded down. None: no heater has a figure.
  std::optional<std::int64_t> air_alone{};
  /// Seconds. Low: air alone warms, and the shell loses what its insulation lets through; high: the linings
  /// and what stands in the room take twice what the air takes. Where the insulation is unknown nothing is
  /// lost in either. None: no heater has a figure, or the heat that is lost outgrows it first.
  std::optional<CountSpan> seconds{};
  bool is_never_reached = false;
  /// Watts that keep the temperature. Low: through the whole shell as insulated, and half a change of air an
  /// hour; high: as much again through seams, framing and glass, and a whole change. Where the insulation is
  /// unknown: 1.2 and 3.4 W/m²K in place of both.
  CountSpan hold;
};

/// Nothing where the plan says no temperatures.
std::optional<WarmUp> warm_up_in(const Plan& plan, const Configuration& configuration);

/// Air inside the room, and twice the projections of its shell; of any interior.
Volume air_of(const Interior& room);
Area shell_of(const Interior& room);

/// The two times of the model for one room: so much heat for each kelvin in the air (millijoules), such
/// losses for each kelvin (microwatts; zero: none), a heater of `watts`. None: never reached.
std::optional<CountSpan> seconds_to_warm(std::int64_t air, std::int64_t losses, int watts,
                                         const Warming& warming);

/// Millijoules that warm so much air by one kelvin: 1.2 kg/m³ of 1005 J/kgK (from memory).
std::int64_t heat_of_air(Volume air);

}  // namespace berthwright

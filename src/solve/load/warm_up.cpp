#include <berthwright/solve/load/warm_up.h>

#include <algorithm>

#include <berthwright/exact/logarithm.h>

#include "exact/spelling.h"
#include "solve/room/room_shape.h"

namespace berthwright {
namespace {

constexpr std::int64_t watts_to_micro = 1'000'000;
constexpr std::int64_t air_joules = 1206;  // for each m³ and kelvin
constexpr std::int64_t seconds_per_hour = 3600;
// The high end of the time: air, and twice as much in linings and furniture. Our own choice, so that the band
// is three to one; common practice, no source, says 15 to 20 minutes where air alone takes 11 to 12.
constexpr std::int64_t with_linings = 3;
// EN 1646-1 grade 3, from memory; and twice its grade 2, for old shells: our own choice.
constexpr Insulation best_unknown{Insulation::Kind::u_value, 1'200};
constexpr Insulation worst_unknown{Insulation::Kind::u_value, 3'400};

std::vector<Length> bends(const Interior& room) {
  std::vector<Length> heights;
  const auto add = [&](const Polygon& profile) {
    for (const Point& corner : profile.vertices()) heights.push_back(corner.y);
  };
  add(room.side_profile.polygon());
  if (room.cross_profile) add(room.cross_profile->polygon());
  std::ranges::sort(heights);
  heights.erase(std::ranges::unique(heights).begin(), heights.end());
  return heights;
}

std::int64_t units_between(Temperature low, Temperature high) { return high.units() - low.units(); }

/// Microwatts per kelvin of warming half (or a whole) room of air anew every hour.
Int128 air_changes(std::int64_t air, int halves) {
  return Int128{air} * 1000 * halves / (Int128{2} * seconds_per_hour);
}

CountSpan hold_watts(Area shell, std::int64_t air, const Warming& warming) {
  const std::int64_t difference = std::max<std::int64_t>(units_between(warming.outside, warming.to), 0);
  const Int128 low =
      warming.insulation ? conduction(shell, *warming.insulation) : conduction(shell, best_unknown);
  const Int128 high = warming.insulation ? 2 * low : Int128{conduction(shell, worst_unknown)};
  const auto watts = [&](Int128 micro, Rounding rounding) {
    return static_cast<std::int64_t>(
        rounded(micro * difference, Int128{watts_to_micro} * temperature_units_per_kelvin, rounding));
  };
  return {watts(low + air_changes(air, 1), Rounding::down), watts(high + air_changes(air, 2), Rounding::up)};
}

void add_heaters(const Plan& plan, const Configuration& configuration, WarmUp& warm_up) {
  const auto add = [&](const std::string& name, const std::optional<Draw>& draw) {
    (draw ? warm_up.heaters : warm_up.no_figure).push_back(name);
    if (draw) warm_up.watts += draw->watts;
  };
  for (const Pose& pose : configuration.poses) {
    const Piece* piece = plan.piece(pose.piece.text());
    if (piece->kind == Piece::Kind::heater && pose.state == Pose::State::running)
      add(piece->name, piece->draw);
  }
  for (const Fixture& fixture : plan->fixtures)
    if (fixture.kind == Fixture::Kind::heater) add(fixture.name, fixture.draw);
}

}  // namespace

Volume air_of(const Interior& room) {
  // Between two bends the area of a level is a square function of its height, on a round outline nearly: the
  // open rule of three heights is exact for it.
  Int128 sum = 0;
  const std::vector<Length> heights = bends(room);
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const Length step = heights[i + 1] - heights[i];
    const auto area = [&](int quarter) {
      return room_at(room, heights[i] + Length::from_ticks(step.ticks() * quarter / 4)).area().doubled();
    };
    const Int128 weighed = 2 * area(1) - area(2) + 2 * area(3);
    sum += weighed * step.ticks();
  }
  constexpr Int128 cubic_ticks = Int128{ticks_per_mm} * ticks_per_mm * ticks_per_mm / 1000;
  return Volume::from_units(static_cast<std::int64_t>(sum / (6 * cubic_ticks)));
}

Area shell_of(const Interior& room) {
  const Area end =
      room.cross_profile ? room.cross_profile->polygon().area() : Area::rectangle(room.width, room.height);
  const Area seen = room.outline.polygon().area() + room.side_profile.polygon().area() + end;
  return seen + seen;
}

std::int64_t heat_of_air(Volume air) {
  constexpr std::int64_t nanolitres_per_millijoule = 1'000'000'000;
  return static_cast<std::int64_t>(
      rounded(Int128{air.units()} * air_joules, nanolitres_per_millijoule, Rounding::nearest));
}

std::optional<CountSpan> seconds_to_warm(std::int64_t air, std::int64_t losses, int watts,
                                         const Warming& warming) {
  const Int128 power = Int128{watts} * watts_to_micro * temperature_units_per_kelvin;
  const Int128 at_first = power - Int128{losses} * units_between(warming.outside, warming.from);
  const Int128 at_last = power - Int128{losses} * units_between(warming.outside, warming.to);
  if (watts <= 0 || at_last <= 0) return std::nullopt;
  const auto seconds = [&](Int128 numerator, Int128 denominator, Rounding rounding) {
    return static_cast<std::int64_t>(rounded(numerator, denominator, rounding));
  };
  if (losses == 0) {
    const Int128 heat = Int128{air} * units_between(warming.from, warming.to);
    const Int128 each_second = Int128{watts} * 1000 * temperature_units_per_kelvin;
    return CountSpan{seconds(heat, each_second, Rounding::down),
                     seconds(heat * with_linings, each_second, Rounding::up)};
  }
  // heat dT/dt = watts - losses (T - outside): the time is heat/losses ln(what is left at first / at last).
  const PicoSpan logarithm =
      natural_logarithm(static_cast<std::int64_t>(at_first), static_cast<std::int64_t>(at_last));
  const Int128 denominator = Int128{losses} * pico;
  return CountSpan{seconds(Int128{air} * 1000 * logarithm.low, denominator, Rounding::down),
                   seconds(Int128{air} * 1000 * with_linings * logarithm.high, denominator, Rounding::up)};
}

std::optional<WarmUp> warm_up_in(const Plan& plan, const Configuration& configuration) {
  if (!plan->warming) return std::nullopt;
  const Warming& warming = *plan->warming;
  WarmUp warm_up;
  add_heaters(plan, configuration, warm_up);
  warm_up.room = air_of(plan->interior);
  warm_up.shell = shell_of(plan->interior);
  const std::int64_t air = heat_of_air(warm_up.room);
  warm_up.hold = hold_watts(warm_up.shell, air, warming);
  if (warm_up.watts == 0) return warm_up;
  warm_up.air_alone = seconds_to_warm(air, 0, warm_up.watts, warming)->low;
  const std::int64_t losses = warming.insulation ? conduction(warm_up.shell, *warming.insulation) : 0;
  warm_up.seconds = seconds_to_warm(air, losses, warm_up.watts, warming);
  warm_up.is_never_reached = !warm_up.seconds;
  return warm_up;
}

}  // namespace berthwright

#include "solve/room/screws.h"

#include <algorithm>
#include <array>

namespace berthwright {
namespace {

constexpr Length half_inch = Length::inches(1, 2);
constexpr Length three_quarters = Length::inches(3, 4);
constexpr Length inch_and_half = Length::inches(3, 2);
constexpr CleatWood fir = CleatWood::douglas_fir;
constexpr CleatWood spruce = CleatWood::spruce;

constexpr ScrewValue value(std::string_view size, Length cleat, CleatWood wood, int pounds) {
  return {size, cleat, wood, Mass::pounds(pounds)};
}

// Computed from the yield-limit equations of the NDS, not read from its table.
constexpr std::array values{
    value("#6", half_inch, fir, 59),        value("#6", half_inch, spruce, 48),
    value("#6", three_quarters, fir, 72),   value("#6", three_quarters, spruce, 57),
    value("#6", inch_and_half, fir, 72),    value("#6", inch_and_half, spruce, 62),
    value("#8", half_inch, fir, 73),        value("#8", half_inch, spruce, 59),
    value("#8", three_quarters, fir, 88),   value("#8", three_quarters, spruce, 69),
    value("#8", inch_and_half, fir, 92),    value("#8", inch_and_half, spruce, 78),
    value("#10", half_inch, fir, 90),       value("#10", half_inch, spruce, 73),
    value("#10", three_quarters, fir, 106), value("#10", three_quarters, spruce, 84),
    value("#10", inch_and_half, fir, 117),  value("#10", inch_and_half, spruce, 99),
    value("#12", half_inch, fir, 110),      value("#12", half_inch, spruce, 91),
    value("#12", three_quarters, fir, 126), value("#12", three_quarters, spruce, 101),
    value("#12", inch_and_half, fir, 147),  value("#12", inch_and_half, spruce, 125),
};

constexpr Mass knee = Mass::pounds(250);
constexpr std::int64_t fewest = 2;  // one screw alone lets a cleat turn

}  // namespace

std::span<const ScrewValue> screw_values() { return values; }

const ScrewValue& assumed_screw() {
  return *std::ranges::find_if(values, [](const ScrewValue& screw) {
    return screw.size == "#8" && screw.cleat == three_quarters && screw.wood == spruce;
  });
}

Mass load_of_sleepers(Area leaning) {
  constexpr Int128 square_foot = Int128{144} * ticks_per_inch * ticks_per_inch;
  const Int128 load = leaning.doubled() * 30 * mass_units_per_pound;
  return Mass::from_units(static_cast<std::int64_t>((load + 2 * square_foot - 1) / (2 * square_foot)));
}

Mass load_on_ledge(Area leaning) { return load_of_sleepers(leaning) + knee; }

Count screws_for(Mass load, const ScrewValue& screw) {
  return Count{std::max(fewest, (load.units() + screw.load.units() - 1) / screw.load.units())};
}

}  // namespace berthwright

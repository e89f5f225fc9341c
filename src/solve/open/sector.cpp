#include "solve/open/sector.h"

#include <algorithm>

#include <berthwright/exact/angle.h>

namespace berthwright {
namespace {

constexpr std::int64_t step = 500'000;  // microdegrees between the places where the cover touches the arc
constexpr int finer = 20;               // bits behind the point of a radius

// The way out to the crossing of two tangents whose touching points are twice `half_turned` apart.
Int128 stretched(Length radius, Turn half_turned) {
  const Int128 scaled = (Int128{radius.ticks()} << finer) * half_turned.unit();
  return (scaled + half_turned.cosine() - 1) / half_turned.cosine();
}

Length outward(Int128 scaled, std::int64_t part, std::int64_t unit, Length most) {
  const Int128 whole = Int128{unit} << finer;
  const Int128 size = (scaled * (part < 0 ? -part : part) + whole - 1) / whole;
  const Length length = std::min(Length::from_ticks(static_cast<std::int64_t>(size)), most);
  return part < 0 ? -length : length;
}

Point outward(Int128 scaled, Turn turn, Length most) {
  return {outward(scaled, turn.cosine(), turn.unit(), most), outward(scaled, turn.sine(), turn.unit(), most)};
}

// A part of the radius, to the nearest tick.
Length nearest(Length radius, std::int64_t part, std::int64_t unit) {
  const Int128 size = (Int128{radius.ticks()} * (part < 0 ? -part : part) * 2 + unit) / (Int128{2} * unit);
  const Length length = Length::from_ticks(static_cast<std::int64_t>(size));
  return part < 0 ? -length : length;
}

// The directions half-way between the touching points of a half turn.
const std::vector<Turn>& halfway() {
  static const std::vector<Turn> turns = [] {
    std::vector<Turn> made;
    for (std::int64_t from = 0; from < 180'000'000; from += step)
      made.push_back(Turn::degrees(from + step / 2));
    return made;
  }();
  return turns;
}

}  // namespace

Polygon sector_swept(Length radius, std::int64_t microdegrees) {
  // A leaf of less than a millimetre: half the square about it will do.
  if (radius < 1_mm) {
    const Length low = microdegrees > 90'000'000 ? -radius : Length{};
    return Polygon::rectangle({{low, Length{}}, {radius, radius}});
  }
  std::vector<Point> corners{{}, {radius, Length{}}};
  const Int128 far = stretched(radius, Turn::degrees(step / 2));
  const std::int64_t steps = microdegrees / step;
  for (std::int64_t i = 0; i < steps; ++i)
    corners.push_back(outward(far, halfway()[static_cast<std::size_t>(i)], radius));
  if (const std::int64_t rest = microdegrees % step; rest > 0)
    corners.push_back(outward(stretched(radius, Turn::degrees(rest / 2)),
                              Turn::degrees(microdegrees - rest + rest / 2), radius));
  const Turn end = Turn::degrees(microdegrees);
  const Length height = nearest(radius, end.sine(), end.unit());
  // The least of turns still sweeps something.
  // Up to a quarter turn the arc lies beyond its end, so the end is rounded out to it; past it the end is the
  // farthest place, and a leaf made to stop at a wall must not be a tick in it.
  const Length reach = end.cosine() > 0
                           ? outward(Int128{radius.ticks()} << finer, end.cosine(), end.unit(), radius)
                           : nearest(radius, end.cosine(), end.unit());
  corners.push_back({reach, end.sine() > 0 ? std::max(height, one_tick) : height});
  return Polygon::promised(std::move(corners));
}

}  // namespace berthwright

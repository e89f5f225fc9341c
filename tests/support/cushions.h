#pragma once

#include <random>
#include <string>

#include <berthwright/plan/things.h>

namespace berthwright {

inline double in_inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

/// A cushion with the id "c".
Piece worked_cushion(const WorkedRectangle& rectangle, Length thickness, const std::string& foam = {});
Piece cushion(Length length, Length width, Length thickness, const std::string& foam = {});

/// A rectangle of 12 to 84 by 12 to 84 in whose corners are square, notched, clipped or rounded by up to 5
/// in, on the quarter of an inch.
WorkedRectangle random_rectangle(std::mt19937_64& random);

}  // namespace berthwright

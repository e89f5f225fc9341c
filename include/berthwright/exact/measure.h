#pragma once

#include <string>
#include <string_view>

#include <berthwright/exact/length.h>
#include <berthwright/exact/result.h>

namespace berthwright {

/// The two rulers; a plan names one of them as its own.
enum class Unit { inch, millimetre };

/// Which way a printed number may differ from the exact one. A clearance that must be at least something is
/// printed `down`, one that must be at most something `up`.
enum class Rounding { nearest, down, up };

/// Reads a length as people write it in a workshop: "74 1/2", "74-1/2 in", "6' 2 1/2\"", "6 ft 2-1/2 in",
/// "37 ⅝″", "1.905 m", "1905 mm". A bare number is in `bare`. A fraction without a unit is refused when
/// `bare` is the millimetre. Not negative, at most `farthest`, on the lattice, or a Problem whose column
/// points into `text`; off the lattice the cure names the nearest below and above that the unit and spelling
/// can hold.
Result<Length> read_length(std::string_view text, Unit bare);

/// As `read_length`, with an optional leading minus: for distances that may lie on either side of a datum.
Result<Length> read_offset(std::string_view text, Unit bare);

/// How a length is printed. Feet for rooms and clearances; plain inches for the sizes of cushions, boards and
/// beds, which the trade calls by inches ("38 x 75").
struct LengthStyle {
  Rounding rounding = Rounding::nearest;
  bool feet = true;
  int parts = 16;  ///< the finest fraction of an inch: a power of two up to 64 (32 in cut lists)
};

/// "6' 2 1/2\"", "7 1/2\"", "1' 0\""; without feet "74 1/2\"". Nearest takes a half away from zero; other
/// `parts` than a power of two up to 64 throw std::invalid_argument.
std::string imperial(Length length, LengthStyle style = {});
/// "1892.3 mm", in tenths, a trailing zero dropped.
std::string metric(Length length, Rounding rounding = Rounding::nearest);
/// Own unit first, the other in brackets: "6' 2 1/2\" (1892.3 mm)".
std::string both(Length length, Unit own, LengthStyle style = {});
/// Exactly as the length is, with its unit, so that `read_offset` reads it back unchanged: "74 1/2 in",
/// "0.703 in", "1892.3 mm". Where no finite inch decimal exists, millimetres under either unit.
std::string exact_text(Length length, Unit unit);

/// "19.8 sq ft (1.84 m²)", own unit first, both rounded down to these decimals; under a square foot
/// "7.5 sq in (48.3 cm²)".
std::string area_text(Area area, Unit own);

}  // namespace berthwright

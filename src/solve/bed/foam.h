#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include <berthwright/solve/bed/mattress.h>

namespace berthwright {

/// The four-digit grade of the foam trade: 2535 is 2.5 lb per cubic ft, 35 lb at 25 %.
struct FoamGrade {
  int density = 0;   ///< in tenths of a pound per cubic foot
  int firmness = 0;  ///< pounds that press a round foot of 50 sq in by a quarter of the thickness
  friend bool operator==(FoamGrade, FoamGrade) = default;
};

/// The one grade in the text: four digits that stand alone, of 0.8 to 6 lb per cubic ft and 5 lb or more.
/// Everything else (newtons, words, two grades) is none: nothing is guessed or converted.
std::optional<FoamGrade> foam_grade(std::string_view material);

/// Soft pieces that belong to a bed's surface and lie flat on what does not give.
struct BareFoam {
  const Piece* piece = nullptr;
  Length thickness;
  std::optional<FoamGrade> grade;
};

/// In the order of the arrangement. A piece that lies on nothing but foam is left out.
std::vector<BareFoam> foam_on_boards(const Arrangement& arrangement, const Bed& bed,
                                     const Mattress& mattress);

}  // namespace berthwright

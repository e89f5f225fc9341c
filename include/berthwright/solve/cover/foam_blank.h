#pragma once

#include <optional>
#include <string_view>

#include <berthwright/exact/mass.h>
#include <berthwright/plan/rules.h>
#include <berthwright/plan/sewing.h>
#include <berthwright/plan/things.h>

namespace berthwright {

/// One way to size the foam: so much over the finished size.
struct FoamRule {
  FoamCut cut = FoamCut::half_inch_over;
  std::string_view name;  ///< as a plan writes it
  Length sides;           ///< in length and width, both sides together; negative: smaller
  Length thickness;
  bool percent = false;  ///< one hundredth of the longer side where that is more
  Source source;
};
const FoamRule& foam_rule(FoamCut cut);

/// A block of foam as it is cut.
struct FoamBlank {
  Polygon outline;  ///< around the piece's own frame, so that its corners may be negative
  Length length;
  Length width;
  Length thickness;
  std::optional<int> density;  ///< tenths of a pound per cubic foot; none: the grade is not known
  std::optional<Mass> weight;  ///< none where the density is
};

/// As high as it is wide or long, and a rectangle: then a bolster is a cylinder that lies.
bool is_round(const Piece& piece);

/// As the shape of its cover asks: over a board as large as finished (littlevintagetrailer.com, 2012/04); a
/// round bolster as finished too, by the weight of a cylinder; else by the rule. None where the cushion is
/// too small for it.
std::optional<FoamBlank> foam_of(const Piece& piece, const Sewing& sewing);

/// None where the finished cushion is too small for the rule.
std::optional<FoamBlank> foam_blank(const Piece& piece, FoamCut cut);

/// Of a circle, to half a square tick.
Area circle_area(Length diameter);

/// Area x thickness x density, to the nearest unit of mass; `density` in tenths of a pound per cubic foot.
Mass foam_weight(Area area, Length thickness, int density);

}  // namespace berthwright

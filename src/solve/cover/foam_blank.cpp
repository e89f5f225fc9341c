#include <berthwright/solve/cover/foam_blank.h>

#include <algorithm>
#include <array>
#include <stdexcept>

#include <berthwright/geometry/mitred.h>
#include <berthwright/geometry/region.h>

#include "solve/bed/foam.h"

namespace berthwright {
namespace {

const std::array<FoamRule, 4>& foam_rules() {
  static const std::array<FoamRule, 4> rules{
      {{FoamCut::half_inch_over,
        "1/2 in over",
        Length::inches(1, 2),
        Length{},
        false,
        {Source::Kind::published, "Good Old Boat, on cushions: 1/4 in over on each side", "",
         "goodoldboat.com, article 117937"}},
       {FoamCut::as_panel,
        "as the panel",
        Length::inches(1),
        Length::inches(1),
        false,
        {Source::Kind::published, "upholstery reference: foam as large as the panels are cut", "",
         "coxontool.com"}},
       {FoamCut::one_percent_over,
        "1 percent over",
        Length::inches(1, 2),
        Length{},
        true,
        {Source::Kind::common_practice, "", "", ""}},
       {FoamCut::wrapped,
        "wrapped",
        -Length::inches(1),
        -Length::inches(1),
        false,
        {Source::Kind::published, "worked example of a box cushion of 18 x 24 x 6 in", "",
         "yahoo.com/lifestyle, sew box-edge cushions"}}}};
  return rules;
}

Length hundredth_up(Length a) { return Length::from_ticks((a.ticks() + 99) / 100); }

// The parts that stay when an inset cuts an outline in two are not wanted: the largest is no cushion.
std::optional<Polygon> offset(const Polygon& outline, Length by) {
  if (by == Length{}) return outline;
  if (std::optional<Polygon> sharp = mitred(outline, by)) return sharp;
  const Region made = by < Length{} ? shrunk(Region(outline), -by) : grown(Region(outline), by);
  if (made.faces().size() != 1) return std::nullopt;
  return made.faces().front().outer;
}

std::optional<FoamBlank> blank_of(const Piece& piece, Length around, Length thickness) {
  const std::optional<Polygon> outline = offset(piece.outline.polygon(), around);
  if (!outline || thickness <= Length{}) return std::nullopt;
  const Rect box = outline->bounds();
  FoamBlank blank{*outline, box.width(), box.height(), thickness, std::nullopt, std::nullopt};
  if (const std::optional<FoamGrade> grade = foam_grade(piece.material)) {
    blank.density = grade->density;
    blank.weight = foam_weight(outline->area(), thickness, grade->density);
  }
  return blank;
}

}  // namespace

const FoamRule& foam_rule(FoamCut cut) {
  for (const FoamRule& rule : foam_rules())
    if (rule.cut == cut) return rule;
  throw std::logic_error("FoamCut out of range");
}

Mass foam_weight(Area area, Length thickness, int density) {
  // Twice the area in tenths of a pound; within 25 m and 10 lb the product fits 128 bits.
  constexpr Int128 foot = Int128{12} * ticks_per_inch;
  constexpr Int128 whole = 20 * foot * foot * foot;
  const Int128 product = area.doubled() * thickness.ticks() * mass_units_per_pound * density;
  return Mass::from_units(static_cast<std::int64_t>((2 * product + whole) / (2 * whole)));
}

Area circle_area(Length diameter) {
  // Twice the area is the square of the diameter by half of pi.
  constexpr Int128 half_pi = 1'570'796'326'794'897;  // of 10^15
  constexpr Int128 whole = 1'000'000'000'000'000;
  const Int128 square = Int128{diameter.ticks()} * diameter.ticks();
  return Area::from_doubled(square / whole * half_pi + square % whole * half_pi / whole);
}

bool is_round(const Piece& piece) {
  return piece.thickness == std::min(piece.length, piece.width) &&
         piece.outline.polygon() == Polygon::rectangle({{}, {piece.length, piece.width}});
}

std::optional<FoamBlank> foam_of(const Piece& piece, const Sewing& sewing) {
  const bool round = sewing.shape == CoverShape::bolster && is_round(piece);
  if (!round && sewing.shape != CoverShape::board_backed) return foam_blank(piece, sewing.foam_cut);
  std::optional<FoamBlank> foam = blank_of(piece, {}, piece.thickness);
  if (round && foam->density)
    foam->weight =
        foam_weight(circle_area(piece.thickness), std::max(piece.length, piece.width), *foam->density);
  return foam;
}

std::optional<FoamBlank> foam_blank(const Piece& piece, FoamCut cut) {
  const FoamRule& rule = foam_rule(cut);
  const Length longest = std::max(piece.length, piece.width);
  const Length sides = rule.percent ? std::max(rule.sides, hundredth_up(longest)) : rule.sides;
  return blank_of(piece, half(sides), piece.thickness + rule.thickness);
}

}  // namespace berthwright

#pragma once

#include <vector>

#include "view/paper.h"

namespace berthwright {

/// Fill lines of what a plane cuts, broken around `lettering`. None where the box is too thin to show them.
/// A loose zigzag along the longer side: foam.
std::vector<Path> zigzag_in(const PaperBox& box, const std::vector<PaperBox>& lettering);
/// Lines at 45 degrees: timber and board.
std::vector<Path> diagonals_in(const PaperBox& box, const std::vector<PaperBox>& lettering);
enum class Diagonal { rising, falling };
/// The same within rings, `pitch` apart along the level.
std::vector<Path> diagonals_in(const std::vector<PaperRing>& rings, PaperLength pitch, Diagonal way,
                               const std::vector<PaperBox>& lettering);

/// Along the level, of the areas that overlays fill: wide apart for a published distance, close for a data
/// plate and a region.
PaperLength pitch_of(Ink filled);

}  // namespace berthwright

#pragma once

#include "view/cut_marks.h"
#include "view/plan_drawing.h"
#include "view/sitting.h"

namespace berthwright {

/// Where a configuration is cut. A bed wants a cut along the trailer and one across, both through the middle
/// of its largest rectangle; a seat one through its middle, the way the person looks. What another line of
/// the same direction cuts within the middle half needs none of its own, and lines within 3 in are one. Of
/// lines that serve equally many those of `known` come first, as they stand there. A configuration that is
/// cut in one direction only is cut in the other through its first bed or seat. Along the trailer first, then
/// across, each from the datum on; none without a bed or seat.
std::vector<CutLine> section_lines(const DrawnConfiguration& of, const std::vector<SittingPlace>& places,
                                   const std::vector<CutLine>& known = {});

/// The cuts of all configurations, which need no `cuts` yet. Each plane has a letter of its own, in the order
/// in which the configurations cut them; planes of earlier configurations are used again where they serve. By
/// their letters.
std::vector<std::vector<SectionCut>> section_cuts(const std::vector<DrawnConfiguration>& all);

}  // namespace berthwright

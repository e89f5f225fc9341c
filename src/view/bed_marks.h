#pragma once

#include "view/heat_lines.h"
#include "view/label_wishes.h"

namespace berthwright {

/// Where pieces of the bed lie so far off its level that there is no mattress.
Region off_level(const DrawnConfiguration& of, const BedAnswer& answer);
/// The largest rectangle in the bed is the whole of it.
bool is_one_rectangle(const BedAnswer& answer);
/// " over all" behind the size of a bed that is no rectangle, " over all, in 2 parts"; else nothing.
std::string in_parts(const BedAnswer& answer);

/// The edge of the bedding made up, but for what lies along the walls of the room: it ends there because they
/// do.
std::vector<Path> made_up_edges(const DrawnConfiguration& of, const PlanView& view, const BedAnswer& answer);
/// Outlines; within them the largest rectangle, where it is not the whole; around them the bedding made up,
/// where a line to heat ends at it.
Group bed_group(const DrawnConfiguration& of, const PlanView& view);
/// Gaps wide enough to be seen at the scale, and ridges.
Group seam_group(const DrawnConfiguration& of, const PlanView& view);
/// Lines over what lies off the level, broken around `lettering`.
Group off_level_group(const DrawnConfiguration& of, const PlanView& view,
                      const std::vector<PaperBox>& lettering);

/// "no mattress here, 2 5/16\" low" for what lies `off_level`, which is not empty.
LabelWish no_mattress_wish(const DrawnConfiguration& of, const PlanView& view, const BedAnswer& answer,
                           const Region& region);

}  // namespace berthwright

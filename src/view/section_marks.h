#pragma once

#include "view/head_room.h"
#include "view/section_faults.h"

namespace berthwright {

/// The open room: walls, floor and roof, and the openings the plane cuts.
std::vector<Mark> room_marks(const Plan& plan, const Section& section, const PlanView& view);

/// The outline of one thing, in the ink that says how it is cut.
Path outline_of(const SectionShape& shape, const PlanView& view);
/// What fills it, broken around lettering; nothing for what is not cut.
std::vector<Path> filling_of(const SectionShape& shape, const PlanView& view,
                             const std::vector<PaperBox>& lettering);

/// The line of one clear height with its ticks; what hangs there where the plane does not cut it; the height
/// where nothing is cut at its end.
std::vector<Mark> marks_of(const HeadRoomLine& line, const PlanView& view);

/// The height of a ridge, beside it over the lower cushion.
std::vector<Mark> marks_of(const SectionRidge& ridge, const PlanView& view);
/// Where that height is written.
PaperPoint figure_of(const SectionRidge& ridge, const PlanView& view);

/// The shared space, ringed where it is too small to be seen.
Path mark_of(const SectionClash& clash, const PlanView& view);

}  // namespace berthwright

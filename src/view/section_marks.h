#pragma once

#include "view/section_drawing.h"

namespace berthwright {

/// The open room: walls, floor and roof, and the openings the plane cuts.
std::vector<Mark> room_marks(const Plan& plan, const Section& section, const PlanView& view);

/// The outline of one thing, in the ink that says how it is cut.
Path outline_of(const SectionShape& shape, const PlanView& view);
/// What fills it, broken around lettering; nothing for what is not cut.
std::vector<Path> filling_of(const SectionShape& shape, const PlanView& view,
                             const std::vector<PaperBox>& lettering);

/// The line of one clear height, with its ticks.
std::vector<Mark> marks_of(const HeadRoomLine& line, const PlanView& view);

}  // namespace berthwright

#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

#include "view/paper.h"
#include "view/scale.h"

namespace berthwright {

// Marks of sheets that show cushions on a bay.

/// Room that a picture needs on every side for letters beyond it.
inline constexpr PaperLength beside_picture = paper_mm(5);

/// "40\" × 22\"", the longer side first, in the plan's own unit.
std::string short_size(const Plan& plan, Length a, Length b);

/// The letter in its box, with the size where there is room for it. That of a strip too narrow for it stands
/// beyond the bay, at the nearer end of the strip, on a leader from its middle.
void add_letter(std::vector<Mark>& marks, const std::string& letter, const std::string& size,
                const PaperBox& box, const PaperBox& bay);

/// The larger part of a rectangle beside what is cut out of its corner or edge.
Rect beside_cut(const Rect& at, const Region& cut_out);

PaperBox box_in(const PlanView& view, const Rect& rect);

/// Below all lettering; `top` where there is none.
PaperLength bottom_of(const std::vector<Mark>& marks, PaperLength top);

}  // namespace berthwright

#pragma once

#include "view/labels.h"
#include "view/notes.h"
#include "view/section_drawing.h"

namespace berthwright {

/// What the lettering of one section has to say: what is measured or wrong, which finds its place first, and
/// the names of things. `view` is the section's.
struct SectionWishes {
  std::vector<LabelWish> figures;
  std::vector<LabelWish> names;
};
SectionWishes section_wishes(const DrawnSection& drawn, const Plan& plan, const PlanView& view);

/// The section in sentences, for those who hear the drawing.
std::string told(const DrawnSection& drawn, const Plan& plan);

/// Who is drawn, how heights are measured, who does not fit, beds on which nobody lies.
std::vector<Note> section_notes(const Plan& plan, const std::vector<DrawnSection>& sections);

}  // namespace berthwright

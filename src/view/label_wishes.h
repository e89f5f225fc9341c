#pragma once

#include "view/heat_lines.h"
#include "view/plan_things.h"

namespace berthwright {

/// What the lettering of one drawing has to name, and how the key says it.
std::vector<LabelWish> bed_wishes(const DrawnConfiguration& of, const PlanView& view);
std::vector<LabelWish> heat_wishes(const DrawnConfiguration& of, const std::vector<HeatLine>& lines,
                                   const PlanView& view);
std::vector<LabelWish> thing_wishes(const std::vector<PlanThing>& things, const DrawnConfiguration& of,
                                    const PlanView& view);
std::vector<LabelWish> opening_wishes(const DrawnConfiguration& of, const PlanView& view);
std::vector<LabelWish> seam_wishes(const DrawnConfiguration& of, const PlanView& view);

/// A name in one to four lines, lying or reading upward, best first: upward first when `tall`.
std::vector<Wording> name_wordings(const std::string& name, bool tall);

/// Figures of a drawing stand on it before the names of things do.
inline constexpr std::int64_t weight_of_figures = 3;

/// A wish for the words of something at `where`, which stand off it but stay within the room.
LabelWish place_wish(const DrawnConfiguration& of, const PlanView& view, Point where);
/// Adds `words` in one to three lines, no measure torn.
void add_wordings(LabelWish& wish, const std::string& words, PaperLength height);

/// "D1", "W2": doors, windows and hatches are tagged in the order of the plan.
std::string tag_of(const Plan& plan, const Opening& opening);

/// "2 5/16\"", in the plan's own unit alone, rounded up: gaps, steps, clashes.
std::string short_size(const Plan& plan, Length size);

/// "76\" × 48\"", each side rounded as asked.
std::string sides_text(Length length, Length width, Unit unit, Rounding rounding);

}  // namespace berthwright

#pragma once

#include "view/heat_lines.h"
#include "view/plan_things.h"

namespace berthwright {

/// What the lettering of one drawing has to name, and how the key says it.
std::vector<LabelWish> bed_wishes(const DrawnConfiguration& of, const PlanView& view);
std::vector<LabelWish> heat_wishes(const DrawnConfiguration& of, const PlanView& view);
std::vector<LabelWish> thing_wishes(const std::vector<PlanThing>& things, const DrawnConfiguration& of);
std::vector<LabelWish> opening_wishes(const DrawnConfiguration& of, const PlanView& view);
std::vector<LabelWish> seam_wishes(const DrawnConfiguration& of, const PlanView& view);

/// A name in one to four lines, lying or reading upward, best first: upward first when `tall`.
std::vector<Wording> name_wordings(const std::string& name, bool tall);

/// "D1", "W2": doors, windows and hatches are tagged in the order of the plan.
std::string tag_of(const Plan& plan, const Opening& opening);

/// "76\" × 48\"", each side rounded as asked.
std::string sides_text(Length length, Length width, Unit unit, Rounding rounding);

}  // namespace berthwright

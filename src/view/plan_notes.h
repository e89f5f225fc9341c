#pragma once

#include "view/heat_lines.h"
#include "view/plan_things.h"

namespace berthwright {

/// What is not met or not known in this configuration, in sentences with their cures: alerts, then advice.
std::vector<Note> caution_notes(const DrawnConfiguration& of);
std::vector<Note> bed_notes(const DrawnConfiguration& of);
std::vector<Note> opening_notes(const DrawnConfiguration& of);
/// The numbers of the drawing, and the things for which it has no room.
std::vector<Note> key_notes(const std::vector<PlacedLabel>& labels, const std::vector<LabelWish>& wishes);
/// Things that others hide, and pieces that are stowed.
std::vector<Note> absent_notes(const DrawnConfiguration& of, const std::vector<PlanThing>& things);
/// The signs that this drawing uses, no others.
std::vector<Note> legend_notes(const std::vector<Group>& groups);

}  // namespace berthwright

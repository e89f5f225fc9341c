#pragma once

#include "view/heat_lines.h"
#include "view/plan_things.h"

namespace berthwright {

/// The alerts that are not met or not known in this configuration and whose rule begins with one of `rules`,
/// in sentences with their cures.
std::vector<Note> alert_notes(const DrawnConfiguration& of, std::span<const std::string_view> rules);
/// What else was found by such rules, a sentence each, with its status where it is not met outright; all of
/// it or only that.
enum class Told { all, not_met };
std::vector<Note> told_notes(const DrawnConfiguration& of, const std::string& heading,
                             std::span<const std::string_view> rules, Told told);
/// The alerts that are not met or not known in this configuration, in sentences with their cures, and what
/// the plan itself notes.
std::vector<Note> caution_notes(const DrawnConfiguration& of);
/// In the configuration "road": what holds each piece and everything that opens; else nothing.
std::vector<Note> road_notes(const DrawnConfiguration& of);
std::vector<Note> bed_notes(const DrawnConfiguration& of);
std::vector<Note> opening_notes(const DrawnConfiguration& of);
/// The numbers of the drawing, and the things for which it has no room.
std::vector<Note> key_notes(const std::vector<PlacedLabel>& labels, const std::vector<LabelWish>& wishes);
/// `hidden`: things beneath others, pieces that are stowed, and `untold`: measures that no line tells, in
/// sentences.
std::vector<Note> absent_notes(const DrawnConfiguration& of, const std::vector<std::string>& hidden,
                               const std::vector<std::string>& untold);
/// The signs that this drawing uses, no others.
std::vector<Note> legend_notes(const std::vector<Group>& groups);

}  // namespace berthwright

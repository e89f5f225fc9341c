#pragma once

#include "view/labels.h"
#include "view/plan_drawing.h"

namespace berthwright {

/// The distance of one heat source to one thing that can burn, as the drawing shows it.
struct HeatLine {
  std::string source;
  std::string nearest_to;
  bool made_up = false;  ///< it ends at the bedding made up
  Point3 from;
  Point3 to;
  Length measured;
  std::vector<const Finding*> findings;  ///< what compares it, worst first; empty: nothing does
};

/// For each heat source the line to the nearest of all that can burn, beds made up, or one to the nearest bed
/// and one to the nearest other thing; then one for every other alert about a distance.
enum class NearestOf { all, beds_and_others };
std::vector<HeatLine> heat_lines(const DrawnConfiguration& of, NearestOf nearest_of = NearestOf::all);

/// "26 1/4\" (666.7 mm) < 3' 0\": not met", the distance rounded down; one more way to say it a line,
/// shorter.
std::vector<std::string> heat_figures(const DrawnConfiguration& of, const HeatLine& line);

/// The line with its two dots.
std::vector<Mark> marks_of(const HeatLine& line, const PlanView& view);

}  // namespace berthwright

#pragma once

#include "view/labels.h"
#include "view/plan_drawing.h"

namespace berthwright {

/// The distance of one heat source to the nearest thing that can burn, as the drawing shows it.
struct HeatLine {
  const HeatDistance* distance = nullptr;
  const Finding* finding = nullptr;  ///< its comparison with the published figure; nullptr: there is none
};

/// One line for each heat source: to the nearest bedding, made up, or cushion.
std::vector<HeatLine> heat_lines(const DrawnConfiguration& of);

/// "26 1/4\" (666.7 mm) < 3' 0\": not met", the distance rounded down; one more way to say it a line,
/// shorter.
std::vector<std::string> heat_figures(const DrawnConfiguration& of, const HeatLine& line);

/// The line with its two dots.
std::vector<Mark> marks_of(const HeatLine& line, const PlanView& view);

}  // namespace berthwright

#pragma once

#include <string>

#include <berthwright/solve/answer.h>
#include <berthwright/view/scene.h>

namespace berthwright {

/// The sheet as true-scale SVG: width and height in mm, viewBox in tenths of a mm.
std::string svg(const Sheet& sheet);

/// The check as text for people, ending with the caution line. `detailed` adds sources, places and defaults.
std::string check_text(const Plan& plan, const Answer& answer, bool detailed);
/// The same as one JSON object (schema: plans/check.schema.json).
std::string check_json(const Plan& plan, const Answer& answer);

/// Faults of a plan file: "FILE:LINE:COLUMN: …" with what was found, what is allowed and how to mend it.
std::string problems_text(const std::string& file, const Problems& problems);
std::string problems_json(const std::string& file, const Problems& problems);

/// Everything about one rule: what is measured, the number, who says so, the caution.
std::string explain_text(const Rule& rule, Unit own);
std::string explain_json(const Rule& rule);

}  // namespace berthwright

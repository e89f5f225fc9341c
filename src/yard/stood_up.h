#pragma once

#include <berthwright/solve/answer.h>

#include "yard/plan_file.h"

namespace berthwright {

/// A plan stood up, or the exit code after its faults were told. The answer points into the plan, so both
/// stay where they are.
struct StoodUp {
  std::optional<Plan> plan;
  std::optional<Answer> answer;
  int code = 0;
};

/// Fills in the plan; whether there is one.
bool read_plan(StoodUp& stood, const std::string& file, bool json, std::ostream& out, std::ostream& err);
/// Fills in the answer of a plan that was read; whether there is one.
bool work_out(StoodUp& stood, const std::string& file, bool json, std::ostream& out, std::ostream& err);
/// Both.
bool stand_up(StoodUp& stood, const std::string& file, bool json, std::ostream& out, std::ostream& err);

}  // namespace berthwright

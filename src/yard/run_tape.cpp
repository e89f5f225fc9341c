#include <ostream>

#include <berthwright/write/outputs.h>

#include "yard/commands.h"
#include "yard/plan_file.h"

namespace berthwright {

int run_tape(const CheckRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, request.json, out, err, code);
  if (!file) return code;
  const Result<TapedPlan> plan = TapedPlan::read(file->text);
  if (!plan) return told(request.plan, plan.problems(), request.json, out, err);
  const Result<WorstCases> worst = worst_cases(*plan);
  if (!worst) return told(request.plan, worst.problems(), request.json, out, err);
  out << (request.json ? tape_json(*plan, *worst) : tape_text(*plan, *worst));
  return exit_code(*worst);
}

}  // namespace berthwright

#include <algorithm>
#include <ostream>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "yard/commands.h"
#include "yard/drawings.h"
#include "yard/plan_file.h"

namespace berthwright {
namespace {

/// A plan with everything that is compared of it; the answer points into the plan, so it stays where it is.
struct StoodForComparison {
  std::optional<Plan> plan;
  std::optional<Answer> answer;
  ComparedPlan compared;
};

bool stand_up(StoodForComparison& stood, const std::string& file, const CompareRequest& request,
              std::ostream& out, std::ostream& err, int& code) {
  std::optional<PlanFile> read = plan_file_of(file, request.json, out, err, code);
  if (!read) return false;
  stood.plan = std::move(read->plan);
  Result<Answer> answer = answered(*stood.plan);
  if (!answer) {
    code = told(file, answer.problems(), request.json, out, err);
    return false;
  }
  stood.answer = std::move(answer).value();
  stood.compared = {&*stood.plan, &*stood.answer, loads_of(*stood.plan)};
  return true;
}

int tell_comparison(const CompareRequest& request, const Comparison& of, const ComparedNames& names,
                    std::ostream& out, std::ostream& err) {
  if (!request.folder.empty()) {
    std::vector<std::string> written;
    const int drawn = write_drawings(request.folder, svg_files(compare_sheets(of)), written, err);
    if (drawn != exit_fine) return drawn;
  }
  out << (request.json ? compare_json(of, names) : compare_text(of, names));
  return exit_code(of);
}

int two_configurations(const CompareRequest& request, const StoodForComparison& stood, std::ostream& out,
                       std::ostream& err) {
  if (!request.configurations.empty()) {
    err << "berthwright: --configuration chooses among those of two plans; here two are named already\n";
    return exit_usage;
  }
  for (const std::string& id : request.with)
    if (!is_configuration(*stood.plan, id, err)) return exit_usage;
  const Comparison of =
      compared_configurations(stood.compared, *stood.plan->configuration(request.with.front()),
                              *stood.plan->configuration(request.with.back()));
  return tell_comparison(request, of, {request.with.front(), request.with.back()}, out, err);
}

}  // namespace

int run_compare(const CompareRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const bool two_plans = request.with.size() == 1;
  if (two_plans && request.plan == "-" && request.with.front() == "-") {
    err << "berthwright: only one of the plans can come from standard input\n";
    return exit_usage;
  }
  StoodForComparison first;
  if (!stand_up(first, request.plan, request, out, err, code)) return code;
  if (!two_plans) return two_configurations(request, first, out, err);
  StoodForComparison second;
  if (!stand_up(second, request.with.front(), request, out, err, code)) return code;
  std::vector<ConfigurationId> only;
  for (const std::string& id : request.configurations) {
    // One plan has to know it, or it is a slip of the pen.
    if (second.plan->configuration(id) == nullptr && !is_configuration(*first.plan, id, err))
      return exit_usage;
    only.emplace_back(id);
  }
  return tell_comparison(
      request, compared_plans(first.compared, second.compared, only),
      {printable(request.plan, every_character), printable(request.with.front(), every_character)}, out, err);
}

}  // namespace berthwright

#include <algorithm>
#include <ostream>

#include <berthwright/view/sheets.h>
#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "yard/commands.h"
#include "yard/drawings.h"
#include "yard/plan_file.h"
#include "yard/stood_up.h"

namespace berthwright {
namespace {

ComparedPlan compared_of(const StoodUp& stood) {
  return {&*stood.plan, &*stood.answer, loads_of(*stood.plan)};
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

int two_configurations(const CompareRequest& request, const StoodUp& stood, std::ostream& out,
                       std::ostream& err) {
  if (!request.configurations.empty()) {
    err << "berthwright: --configuration chooses among those of two plans; here two are named already\n";
    return exit_usage;
  }
  for (const std::string& id : request.with)
    if (!is_configuration(*stood.plan, id, err)) return exit_usage;
  const ComparedPlan plan = compared_of(stood);
  const Comparison of = compared_configurations(plan, *stood.plan->configuration(request.with.front()),
                                                *stood.plan->configuration(request.with.back()));
  return tell_comparison(request, of, {request.with.front(), request.with.back()}, out, err);
}

}  // namespace

int run_compare(const CompareRequest& request, std::ostream& out, std::ostream& err) {
  const bool two_plans = request.with.size() == 1;
  if (two_plans && request.plan == "-" && request.with.front() == "-") {
    err << "berthwright: only one of the plans can come from standard input\n";
    return exit_usage;
  }
  // Both are read before either is worked out: a slip in the second is told at once.
  StoodUp first;
  if (!read_plan(first, request.plan, request.json, out, err)) return first.code;
  StoodUp second;
  if (two_plans && !read_plan(second, request.with.front(), request.json, out, err)) return second.code;
  if (!work_out(first, request.plan, request.json, out, err)) return first.code;
  if (!two_plans) return two_configurations(request, first, out, err);
  if (!work_out(second, request.with.front(), request.json, out, err)) return second.code;
  std::vector<ConfigurationId> only;
  for (const std::string& id : request.configurations) {
    // One plan has to know it, or it is a slip of the pen.
    if (second.plan->configuration(id) == nullptr && !is_configuration(*first.plan, id, err))
      return exit_usage;
    only.emplace_back(id);
  }
  const ComparedPlan one = compared_of(first);
  const ComparedPlan other = compared_of(second);
  return tell_comparison(
      request, compared_plans(one, other, only),
      {printable(request.plan, every_character), printable(request.with.front(), every_character)}, out, err);
}

}  // namespace berthwright

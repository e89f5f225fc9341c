#include <algorithm>
#include <ostream>

#include <berthwright/write/outputs.h>

#include "yard/commands.h"
#include "yard/plan_file.h"

namespace berthwright {

int run_loads(const LoadsRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, request.json, out, err, code);
  if (!file) return code;
  const Plan& plan = file->plan;
  for (const std::string& id : request.configurations)
    if (!is_configuration(plan, id, err)) return exit_usage;
  std::vector<Loads> shown = loads_of(plan);
  if (!request.configurations.empty())
    std::erase_if(shown, [&](const Loads& loads) {
      return std::ranges::find(request.configurations, loads.configuration->id.text()) ==
             request.configurations.end();
    });
  out << (request.json ? loads_json(plan, shown) : loads_text(plan, shown));
  return exit_code(plan, shown);
}

}  // namespace berthwright

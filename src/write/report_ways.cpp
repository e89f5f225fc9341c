#include "write/report_ways.h"

#include "view/told_figures.h"
#include "write/wrap.h"

namespace berthwright {

std::string ways_part(const Plan& plan, const Answer& answer) {
  std::string text;
  for (const ConfigurationAnswer& configuration : answer.configurations) {
    if (configuration.exit_openings.empty()) continue;
    for (const BedAnswer& bed : configuration.beds)
      text += wrapped(exits_sentence(plan, configuration, bed), {"  ", "    "});
  }
  return text.empty() ? text : "\nWays out\n" + text;
}

}  // namespace berthwright

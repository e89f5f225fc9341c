#include "yard/run_placing.h"

#include <ostream>

#include <berthwright/view/sheets.h>
#include <berthwright/write/placing_list.h>

#include "yard/drawings.h"
#include "yard/files.h"
#include "yard/plan_file.h"

namespace berthwright {

int run_placing(const CutRequest& request, const Plan& plan, const std::vector<Cover>& covers,
                std::ostream& out, std::ostream& err) {
  const Result<std::string> text = read_file(request.stock, most_plan_bytes);
  if (!text) {
    tell(text.problems(), err);
    return exit_input;
  }
  const Result<StockList> stock = read_stock(*text);
  if (!stock) return told(request.stock, stock.problems(), request.json, out, err);
  const StockJobs jobs =
      stock_jobs(plan, covers, *stock, {.rounds = request.effort.value_or(PlacingEffort{}.rounds)});
  if (!request.folder.empty()) {
    std::vector<std::string> names;
    const int drawn =
        write_drawings(request.folder, svg_files(placing_sheets(plan, *stock, jobs)), names, err);
    if (drawn != exit_fine) return drawn;
  }
  out << (request.json ? placing_json(plan, *stock, jobs) : placing_text(plan, *stock, jobs));
  return exit_code(jobs);
}

}  // namespace berthwright

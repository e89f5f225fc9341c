#include <berthwright/write/placing_list.h>

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/placing_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string part_line(const StockJob& job, std::size_t number, Unit own) {
  const StockPart& part = job.task.parts[number];
  const JobPart& what = job.parts[number];
  return std::to_string(number + 1) + ", " + part.id + ": " + std::to_string(part.count) + " of " +
         sawn(part.length, part.width, own) + ", " + std::string(word(part.lay)) +
         (what.by_its_box ? ", the box around its shape" : "") + ".";
}

std::string sheet_lines(const StockJob& job, const StockCut& cut, const std::string& label, Unit own) {
  std::string text = wrapped(label + ": " + stock_piece_words(job, cut, own) + ".", item);
  for (const StockPlace& place : cut.places)
    text += wrapped("Part " + stock_place_sentence(job, place, own), under_item);
  std::size_t number = 0;
  for (const ThroughCut& through : cut.cuts)
    text +=
        wrapped("Cut " + std::to_string(++number) + ": " + through_cut_sentence(through, own), under_item);
  for (const Rect& offcut : cut.offcuts)
    text += wrapped("Keep: " + sawn(offcut.width(), offcut.height(), own) + ".", under_item);
  return text;
}

std::string job_lines(const StockList& stock, const StockJob& job, std::size_t number, Unit own) {
  std::string text = "\n" + wrapped(job_name(job, own) + ". " + job_manner(job, own), {});
  for (std::size_t p = 0; p < job.task.parts.size(); ++p)
    text += wrapped("Part " + part_line(job, p, own), item);
  for (std::size_t c = 0; c < job.placing.cuts.size(); ++c)
    text += sheet_lines(job, job.placing.cuts[c], stock_label(number, c), own);
  for (const UnplacedPart& unplaced : job.placing.unplaced)
    text += wrapped(unplaced_sentence(job, unplaced, own), item);
  text += wrapped(cost_sentence(job, stock.currency), item);
  if (!job.placing.cuts.empty()) text += wrapped(use_sentence(job), item);
  return text;
}

/// What all jobs take together.
struct PurchaseSum {
  std::int64_t cost = 0;
  std::optional<Mass> weight = Mass{};
};

std::string purchase_lines(const StockList& stock, const StockJobs& jobs, Unit own) {
  std::string text;
  PurchaseSum sum;
  for (const StockJob& job : jobs.jobs)
    for (const StockTaken& taken : stock_taken(job)) {
      const StockKind& kind = job.task.stock[taken.kind];
      text += wrapped(std::to_string(taken.count) + " x " + job_name(job, own) + ": " + kind.id + ", " +
                          sawn(taken.length, kind.width, own) + (kind.remnant ? ", from the rack" : "") +
                          ", " + money_text(taken.cost, stock.currency) + ", " +
                          (taken.weight ? mass_text(*taken.weight, own) : "weight unknown") + ".",
                      item);
      sum.cost += taken.cost;
      sum.weight = sum.weight && taken.weight ? std::optional(*sum.weight + *taken.weight) : std::nullopt;
    }
  if (text.empty()) return text;
  return "\nWhat it takes (" + stock.title + ")\n" + text +
         wrapped("Together " + money_text(sum.cost, stock.currency) + ", " +
                     (sum.weight ? mass_text(*sum.weight, own) : "weight unknown") + ".",
                 item);
}

}  // namespace

std::string placing_text(const Plan& plan, const StockList& stock, const StockJobs& jobs) {
  const Unit own = plan->unit;
  std::string text = heading(plan);
  if (jobs.jobs.empty()) text += "\nNothing is cut from what the stock file has.\n";
  for (std::size_t j = 0; j < jobs.jobs.size(); ++j) text += job_lines(stock, jobs.jobs[j], j, own);
  if (!jobs.without.empty()) text += "\nNot placed\n";
  for (const PartWithoutStock& part : jobs.without) text += wrapped(without_stock_sentence(part, own), item);
  text += purchase_lines(stock, jobs, own);
  for (const std::string& note : stock.notes) text += "\n" + wrapped(note, {});
  return text + "\n" + wrapped(placing_notes(), {}) + wrapped(caution_line(plan->english), {});
}

int exit_code(const StockJobs& jobs) {
  if (std::ranges::any_of(jobs.jobs, [](const StockJob& job) { return !job.placing.unplaced.empty(); }))
    return 1;
  return jobs.jobs.empty() || !jobs.without.empty() ? 2 : 0;
}

}  // namespace berthwright

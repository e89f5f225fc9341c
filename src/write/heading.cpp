#include "write/heading.h"

#include "exact/code_points.h"
#include "write/wrap.h"

namespace berthwright {

std::string heading_words(const Plan& plan) {
  std::string text = plan->title.title;
  if (!plan->title.shop.empty()) text += ", " + plan->title.shop;
  if (!plan->title.owner.empty()) text += ", for " + plan->title.owner;
  if (!plan->title.date.empty()) text += ", " + plan->title.date;
  return printable(text, every_character);
}

std::string heading(const Plan& plan) { return wrapped(heading_words(plan), {}); }

std::string alerts_line(const Answer& answer) {
  std::size_t not_met = 0;
  std::size_t unknown = 0;
  for (const Finding& finding : answer.findings) {
    if (find_rule(finding.rule.text())->weight != Weight::alert) continue;
    not_met += finding.status == Status::not_met ? 1 : 0;
    unknown += finding.status == Status::unknown ? 1 : 0;
  }
  return std::to_string(not_met) + (not_met == 1 ? " alert" : " alerts") + " not met, " +
         std::to_string(unknown) + " unknown.";
}

}  // namespace berthwright

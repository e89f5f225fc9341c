#include "solve/comparing.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>

namespace berthwright {
namespace {

const Rule& rule_named(std::string_view id) {
  const Rule* rule = find_rule(id);
  if (rule == nullptr) throw std::logic_error("there is no rule " + std::string(id));
  return *rule;
}

}  // namespace

Finding finding_of(const Plan& plan, std::string_view rule_id) {
  const Rule& rule = rule_named(rule_id);
  Finding finding;
  finding.rule = rule.id;
  finding.source = rule.source;
  if (const Override* own = plan.override_of(rule)) finding.override_reason = own->reason;
  return finding;
}

void compare(const Plan& plan, Finding& finding, Length measured) {
  compare(finding, measured, plan.limit(rule_named(finding.rule.text())));
}

void compare(Finding& finding, Length measured, Length required) {
  const Rule& rule = rule_named(finding.rule.text());
  const Length margin = rule.at_least ? measured - required : required - measured;
  finding.measured = measured;
  finding.compared = required;
  finding.margin = margin;
  finding.status = margin < Length{}            ? Status::not_met
                   : margin < rule.close_within ? Status::close
                                                : Status::met;
}

Length shortfall(const Finding& finding) { return -finding.margin.value_or(Length{}); }

Length marked_out(Length length, Unit unit) {
  const std::int64_t step = unit == Unit::inch ? ticks_per_inch / 8 : ticks_per_mm;
  const std::int64_t steps = length.ticks() / step + (length.ticks() % step > 0 ? 1 : 0);
  return Length::from_ticks(steps * step);
}

void add_step(std::optional<Cure>& cure, Cure next) {
  if (!cure) {
    cure = std::move(next);
    return;
  }
  std::vector<Cure> more = std::move(next.then);
  next.then.clear();
  cure->then.push_back(std::move(next));
  cure->then.insert(cure->then.end(), std::make_move_iterator(more.begin()),
                    std::make_move_iterator(more.end()));
}

Wall side_at(const Rect& box, Point place) {
  const std::array<std::pair<Length, Wall>, 4> beyond{{{box.low.x - place.x, Wall::front},
                                                       {place.x - box.high.x, Wall::rear},
                                                       {box.low.y - place.y, Wall::left},
                                                       {place.y - box.high.y, Wall::right}}};
  return std::ranges::max_element(beyond)->second;
}

}  // namespace berthwright

#include <berthwright/plan/plan.h>

#include <algorithm>
#include <stdexcept>

#include "plan/promises.h"

namespace berthwright {
namespace {

template <class Things>
auto find_by_id(const Things& things, std::string_view id) {
  const auto found = std::ranges::find_if(things, [&](const auto& thing) { return thing.id.text() == id; });
  return found == things.end() ? nullptr : &*found;
}

}  // namespace

Problems broken_promises(const PlanParts& parts, const std::vector<std::string>& unsound) {
  Reading faults;
  check_sizes(parts, faults);
  check_references(parts, unsound, faults);
  sort_problems(faults.problems);
  return std::move(faults.problems);
}

Result<Plan> Plan::checked(PlanParts parts) {
  Problems problems = broken_promises(parts, {});
  if (!problems.empty()) return problems;
  return Plan(std::move(parts));
}

const Fixture* Plan::fixture(std::string_view id) const { return find_by_id(parts_.fixtures, id); }
const Piece* Plan::piece(std::string_view id) const { return find_by_id(parts_.pieces, id); }
const Configuration* Plan::configuration(std::string_view id) const {
  return find_by_id(parts_.configurations, id);
}
const Bed* Plan::bed(std::string_view id) const { return find_by_id(parts_.beds, id); }

const Opening* Plan::opening(std::string_view id) const { return find_by_id(parts_.openings, id); }
const Leaf* Plan::leaf(std::string_view id) const {
  for (const Fixture& fixture : parts_.fixtures)
    if (const Leaf* leaf = find_by_id(fixture.leaves, id)) return leaf;
  return nullptr;
}

const Override* Plan::override_of(const Rule& rule) const {
  const auto found = std::ranges::find(parts_.overrides, rule.id, &Override::rule);
  return found == parts_.overrides.end() ? nullptr : &*found;
}

Length Plan::limit(const Rule& rule) const {
  if (!rule.limit) throw std::logic_error("the rule " + rule.id.text() + " has no limit");
  const Override* own = override_of(rule);
  return own != nullptr ? own->limit : *rule.limit;
}

}  // namespace berthwright

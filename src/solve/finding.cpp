#include <berthwright/solve/finding.h>

#include <algorithm>
#include <stdexcept>
#include <tuple>

namespace berthwright {
namespace {

int rank(Weight weight) {
  switch (weight) {
    case Weight::alert:
      return 0;
    case Weight::advice:
      return 1;
    case Weight::information:
      return 2;
  }
  throw std::logic_error("weight out of range");
}

int rank(Status status) {
  switch (status) {
    case Status::not_met:
      return 0;
    case Status::unknown:
      return 1;
    case Status::close:
      return 2;
    case Status::met:
      return 3;
  }
  throw std::logic_error("status out of range");
}

int rank(const RuleId& id) {
  const Rule* rule = find_rule(id.text());
  if (rule == nullptr) throw std::logic_error("a finding names no rule: " + id.text());
  return rank(rule->weight);
}

// Quantities of one finding's kind in a row of numbers, so that any two can be told apart.
using Row = std::tuple<std::size_t, Int128, Int128>;
Row row(const std::optional<Quantity>& quantity) {
  if (!quantity) return {0, 0, 0};
  const std::size_t kind = quantity->index() + 1;
  if (const auto* length = std::get_if<Length>(&*quantity)) return {kind, length->ticks(), 0};
  if (const auto* area = std::get_if<Area>(&*quantity)) return {kind, area->doubled(), 0};
  if (const auto* sides = std::get_if<Sides>(&*quantity))
    return {kind, sides->length.ticks(), sides->width.ticks()};
  if (const auto* shares = std::get_if<Shares>(&*quantity)) return {kind, shares->men, shares->women};
  if (const auto* mass = std::get_if<Mass>(&*quantity)) return {kind, mass->units(), 0};
  if (const auto* portion = std::get_if<Portion>(&*quantity)) return {kind, portion->thousandths, 0};
  if (const auto* degrees = std::get_if<Degrees>(&*quantity)) return {kind, degrees->number, 0};
  if (const auto* sag = std::get_if<Sag>(&*quantity)) return {kind, sag->depth.ticks(), sag->span.ticks()};
  return {kind, std::get<Count>(*quantity).number, 0};
}

bool before(const Finding& a, const Finding& b) {
  const auto by_rank = [](const Finding& f) { return std::tuple(rank(f.rule), rank(f.status)); };
  if (by_rank(a) != by_rank(b)) return by_rank(a) < by_rank(b);
  const auto by_name = [](const Finding& f) {
    return std::tie(f.configuration, f.bed, f.rule, f.subjects, f.variant);
  };
  if (by_name(a) != by_name(b)) return by_name(a) < by_name(b);
  const auto by_number = [](const Finding& f) {
    return std::tuple(row(f.measured), row(f.compared), f.margin, f.where);
  };
  return by_number(a) < by_number(b);
}

}  // namespace

void sort_findings(std::vector<Finding>& findings) { std::ranges::stable_sort(findings, before); }

}  // namespace berthwright

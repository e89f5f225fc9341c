#include "oracle/plain_comparison.h"

#include <algorithm>
#include <array>
#include <functional>
#include <tuple>

namespace berthwright::oracle {
namespace {

using Rows = std::vector<std::size_t>;

/// Pairs of rules that hold one measure from both sides, and two that ask for an aid above a height.
bool has_a_counterpart(const std::string& rule) {
  constexpr std::array kept_between{"seat.low",         "seat.high",           "seat.shallow",
                                    "seat.deep",        "seat.low-back",       "seat.high-back",
                                    "seat.low-table",   "seat.high-table",     "seat.table-over",
                                    "seat.table-away",  "alarm.below-ceiling", "alarm.dead-air",
                                    "alarm.gas-height", "bed.access-aid",      "bed.guard-rail"};
  return std::ranges::any_of(kept_between, [&](const char* one) { return rule == one; });
}

bool have_one_name(const PlainFinding& a, const PlainFinding& b) {
  return a.rule == b.rule && a.bed == b.bed && a.things == b.things && a.variant == b.variant;
}

bool comes_before(const PlainFinding& a, const PlainFinding& b) {
  if (a.kept != b.kept) return a.kept > b.kept;
  if (a.to_spare != b.to_spare) return a.to_spare && (!b.to_spare || *a.to_spare < *b.to_spare);
  return std::tie(a.bed, a.things) < std::tie(b.bed, b.things);
}

/// Takes the worst of those that are left.
std::size_t worst_taken(const std::vector<PlainFinding>& findings, Rows& left) {
  std::size_t worst = 0;
  for (std::size_t i = 1; i < left.size(); ++i)
    if (comes_before(findings[left[i]], findings[left[worst]])) worst = i;
  const std::size_t taken = left[worst];
  left.erase(left.begin() + static_cast<std::ptrdiff_t>(worst));
  return taken;
}

bool are_of_other_limits(const PlainFinding& a, const PlainFinding& b) {
  return a.asked >= 0 && b.asked >= 0 && a.asked != b.asked;
}

/// Why `a` is better than `b`, both known; empty: it is not.
std::string why_better(const PlainFinding& a, const PlainFinding& b, bool is_numbered) {
  const bool other = are_of_other_limits(a, b);
  if (other && (a.is_own || b.is_own)) return {};
  if (a.kept != b.kept) return a.kept < b.kept ? "keeps" : "";
  if (other || !a.to_spare || !b.to_spare || *a.to_spare <= *b.to_spare) return {};
  if (a.kept == Kept::no) return "less short";
  return is_numbered && !has_a_counterpart(a.rule) ? "more to spare" : "";
}

std::string said_of(const PlainFinding& a, const PlainFinding& b, bool is_numbered) {
  if (a.kept == Kept::unknown || b.kept == Kept::unknown) return "unknown";
  const auto figures = [](const PlainFinding& one) {
    return std::tuple(one.kept, one.measured, one.asked, one.besides);
  };
  if (figures(a) == figures(b)) return "alike";
  if (const std::string why = why_better(a, b, is_numbered); !why.empty()) return "A " + why;
  if (const std::string why = why_better(b, a, is_numbered); !why.empty()) return "B " + why;
  const bool by_limits = are_of_other_limits(a, b) && (a.is_own || b.is_own || a.kept == b.kept);
  return by_limits ? "differs other limits" : "differs";
}

bool is_open(const PlainLoad& load) {
  return !load.has_value || load.kept == Kept::unknown ||
         std::ranges::any_of(load.ends, [](const auto& end) { return !end; });
}

std::string said_of(const PlainLoad& a, const PlainLoad& b) {
  if (is_open(a) || is_open(b)) return "unknown";
  if (a.ends == b.ends && a.kept == b.kept && a.range == b.range) return "alike";
  if (a.range != b.range) return "differs other limits";
  if (!a.kept || !b.kept || *a.kept == *b.kept) return "differs";
  return *a.kept < *b.kept ? "A keeps" : "B keeps";
}

void add_line(PlainComparison& to, const std::string& what, const std::string& said) {
  if (said == "alike")
    ++to.alike;
  else
    to.lines.push_back(what + ' ' + said);
}

std::string number_or_none(const std::optional<std::size_t>& index) {
  return index ? std::to_string(*index) : "-";
}

void compare_findings(const PlainSide& first, const PlainSide& second,
                      const std::vector<std::string>& numbered, PlainComparison& to) {
  const auto tell = [&](std::optional<std::size_t> i, std::optional<std::size_t> k) {
    const std::string& rule = i ? first.findings[*i].rule : second.findings[*k].rule;
    const bool is_numbered = std::ranges::find(numbered, rule) != numbered.end();
    add_line(to, rule + ' ' + number_or_none(i) + ' ' + number_or_none(k),
             !k   ? "only A"
             : !i ? "only B"
                  : said_of(first.findings[*i], second.findings[*k], is_numbered));
  };
  std::vector<bool> is_met(second.findings.size());
  Rows left_of_first;
  for (std::size_t i = 0; i < first.findings.size(); ++i) {
    std::size_t k = 0;
    while (k < second.findings.size() && (is_met[k] || !have_one_name(first.findings[i], second.findings[k])))
      ++k;
    if (k == second.findings.size()) {
      left_of_first.push_back(i);
      continue;
    }
    is_met[k] = true;
    tell(i, k);
  }
  Rows left_of_second;
  for (std::size_t k = 0; k < is_met.size(); ++k)
    if (!is_met[k]) left_of_second.push_back(k);
  // What is left: one rule and variant after the other, the worst of both with each other.
  while (!left_of_first.empty() || !left_of_second.empty()) {
    const PlainFinding& any = left_of_first.empty() ? second.findings[left_of_second.front()]
                                                    : first.findings[left_of_first.front()];
    const auto taken_out = [&](const std::vector<PlainFinding>& findings, Rows& left) {
      Rows some;
      std::erase_if(left, [&](std::size_t i) {
        const bool is_like = findings[i].rule == any.rule && findings[i].variant == any.variant;
        if (is_like) some.push_back(i);
        return is_like;
      });
      return some;
    };
    Rows a = taken_out(first.findings, left_of_first);
    Rows b = taken_out(second.findings, left_of_second);
    while (!a.empty() || !b.empty()) {
      const auto i = a.empty() ? std::nullopt : std::optional(worst_taken(first.findings, a));
      const auto k = b.empty() ? std::nullopt : std::optional(worst_taken(second.findings, b));
      tell(i, k);
    }
  }
}

void compare_loads(const PlainSide& first, const PlainSide& second, PlainComparison& to) {
  for (const PlainLoad& a : first.loads) {
    const auto b = std::ranges::find(second.loads, a.what, &PlainLoad::what);
    add_line(to, a.what, b == second.loads.end() ? "only A" : said_of(a, *b));
  }
  for (const PlainLoad& b : second.loads)
    if (std::ranges::find(first.loads, b.what, &PlainLoad::what) == first.loads.end())
      add_line(to, b.what, "only B");
}

}  // namespace

PlainComparison plain_comparison(const PlainSide& first, const PlainSide& second,
                                 const std::vector<std::string>& numbered) {
  PlainComparison told;
  compare_findings(first, second, numbered, told);
  compare_loads(first, second, told);
  for (std::size_t i = 0; i < first.lengths.size(); ++i)
    add_line(told, "length " + std::to_string(i),
             first.lengths[i] == second.lengths[i] ? "alike" : "differs");
  std::ranges::sort(told.lines);
  return told;
}

}  // namespace berthwright::oracle

#include <berthwright/solve/comparison.h>

#include <algorithm>
#include <array>
#include <iterator>
#include <stdexcept>
#include <tuple>

namespace berthwright {
namespace {

using Verdict = ComparedFigure::Verdict;
using Because = ComparedFigure::Because;
using Found = std::vector<const Finding*>;

// What is neither better high nor low once it is within its limits: another rule bounds it from the other
// side, or the height of a bed is a matter of taste below what asks for a rail or a step.
constexpr std::array one_of_two_limits{std::string_view{"seat.low"},
                                       std::string_view{"seat.high"},
                                       std::string_view{"seat.shallow"},
                                       std::string_view{"seat.deep"},
                                       std::string_view{"seat.low-back"},
                                       std::string_view{"seat.high-back"},
                                       std::string_view{"seat.low-table"},
                                       std::string_view{"seat.high-table"},
                                       std::string_view{"seat.table-over"},
                                       std::string_view{"seat.table-away"},
                                       std::string_view{"alarm.below-ceiling"},
                                       std::string_view{"alarm.dead-air"},
                                       std::string_view{"alarm.gas-height"},
                                       std::string_view{"bed.access-aid"},
                                       std::string_view{"bed.guard-rail"}};

struct Judgement {
  Verdict verdict = Verdict::differs;
  Because because = Because::nothing;
};

Judgement better_if(bool first, Because because) {
  return {first ? Verdict::first_better : Verdict::second_better, because};
}

/// Low is better; of unknown nothing is said here.
int order_of(Status status) {
  switch (status) {
    case Status::met:
      return 0;
    case Status::close:
      return 1;
    case Status::not_met:
      return 2;
    case Status::unknown:
      return 3;
  }
  throw std::logic_error("Status out of range");
}

constexpr Judgement of_other_limits{Verdict::differs, Because::other_limits};

Judgement judged(const Finding& first, const Finding& second) {
  const bool is_own = !first.override_reason.empty() || !second.override_reason.empty();
  const bool limits_differ = first.compared && second.compared && first.compared != second.compared;
  // A plan's own number in the rule's place measures with another rule.
  if (limits_differ && is_own) return of_other_limits;
  if (first.status != second.status)
    return better_if(order_of(first.status) < order_of(second.status), Because::keeps);
  // What each is asked by its own plate, cord or span it keeps or not; by how much says nothing of the other.
  if (limits_differ) return of_other_limits;
  if (!first.margin || !second.margin || *first.margin == *second.margin) return {};
  const bool more = *first.margin > *second.margin;
  if (first.status == Status::not_met) return better_if(more, Because::less_short);
  return has_one_way(*find_rule(first.rule.text())) ? better_if(more, Because::more_to_spare) : Judgement{};
}

Judgement judged(const LoadFigure& first, const LoadFigure& second) {
  if (first.range != second.range) return of_other_limits;
  if (!first.status || !second.status || first.status == second.status) return {};
  return better_if(order_of(*first.status) < order_of(*second.status), Because::keeps);
}

bool are_alike(const Finding& a, const Finding& b) {
  return a.status == b.status && a.measured == b.measured && a.compared == b.compared &&
         a.besides == b.besides;
}
bool are_alike(const LoadFigure& a, const LoadFigure& b) {
  return a.value == b.value && a.status == b.status && a.range == b.range;
}

/// By name, so that figures of one thing meet.
auto name_of_figure(const Finding& finding) {
  return std::tie(finding.variant, finding.bed, finding.subjects);
}

/// Worst first.
bool is_worse(const Finding* a, const Finding* b) {
  const auto row = [](const Finding& one) {
    return std::tuple(-order_of(one.status), one.margin.value_or(farthest), one.bed, one.subjects);
  };
  return row(*a) < row(*b);
}

/// The figures of one pair of configurations.
class PairOf {
 public:
  explicit PairOf(ComparedPair& pair) : pair_(pair) {}

  void add_rule(Found first, Found second) {
    const auto by_name = [](const Finding* a, const Finding* b) {
      return name_of_figure(*a) < name_of_figure(*b);
    };
    std::ranges::stable_sort(first, by_name);
    std::ranges::stable_sort(second, by_name);
    Found first_left;
    Found second_left;
    auto a = first.begin();
    auto b = second.begin();
    while (a != first.end() || b != second.end()) {
      if (b == second.end() || (a != first.end() && by_name(*a, *b))) {
        first_left.push_back(*a++);
      } else if (a == first.end() || by_name(*b, *a)) {
        second_left.push_back(*b++);
      } else {
        add(**a++, **b++);
      }
    }
    add_worst_with_worst(first_left, second_left);
  }

  void add_loads(const std::vector<LoadFigure>& first, const std::vector<LoadFigure>& second) {
    for (const LoadFigure& one : first) {
      const auto like =
          std::ranges::find_if(second, [&](const LoadFigure& other) { return other.is_named_like(one); });
      if (like == second.end())
        add_single({.finding = nullptr, .load = one}, Verdict::only_first);
      else
        add_both({.finding = nullptr, .load = one}, {.finding = nullptr, .load = *like}, one, *like);
    }
    for (const LoadFigure& one : second)
      if (std::ranges::none_of(first, [&](const LoadFigure& other) { return other.is_named_like(one); }))
        add_single({.finding = nullptr, .load = one}, Verdict::only_second);
    // The same order whichever side has more.
    std::ranges::stable_sort(pair_.figures, {}, [](const ComparedFigure& figure) {
      const auto& load = figure.either().load;
      return load ? std::tuple(1, static_cast<int>(load->tanks), static_cast<int>(load->kind), load->circuit)
                  : std::tuple(0, 0, 0, std::string{});
    });
  }

  void add_length(ComparedFigure::Size size, Length first, Length second) {
    if (first == second) {
      ++pair_.alike;
      return;
    }
    add_judged({.finding = nullptr, .load = {}, .length = first},
               {.finding = nullptr, .load = {}, .length = second}, {});
    pair_.figures.back().size = size;
  }

 private:
  void add(const Finding& first, const Finding& second) {
    add_both({.finding = &first}, {.finding = &second}, first, second);
  }

  /// Two of a name. What is unknown of both need not be alike.
  template <class Figure>
  void add_both(FigureSide first, FigureSide second, const Figure& one, const Figure& other) {
    if (!first.is_known() || !second.is_known())
      add_judged(std::move(first), std::move(second), {Verdict::unknown, {}});
    else if (are_alike(one, other))
      ++pair_.alike;
    else
      add_judged(std::move(first), std::move(second), judged(one, other));
  }

  /// What other plans call otherwise: worst with worst among those of one variant.
  void add_worst_with_worst(const Found& first, const Found& second) {
    std::vector<std::string> variants;
    for (const Found* side : {&first, &second})
      for (const Finding* one : *side) variants.push_back(one->variant);
    std::ranges::sort(variants);
    variants.erase(std::unique(variants.begin(), variants.end()), variants.end());
    for (const std::string& variant : variants) {
      const auto worst_first = [&](const Found& side) {
        Found some;
        std::ranges::copy_if(side, std::back_inserter(some),
                             [&](const Finding* one) { return one->variant == variant; });
        std::ranges::stable_sort(some, is_worse);
        return some;
      };
      const Found a = worst_first(first);
      const Found b = worst_first(second);
      for (std::size_t i = 0; i < std::max(a.size(), b.size()); ++i)
        if (i >= b.size())
          add_single({.finding = a[i]}, Verdict::only_first);
        else if (i >= a.size())
          add_single({.finding = b[i]}, Verdict::only_second);
        else
          add(*a[i], *b[i]);
    }
  }

  void add_judged(FigureSide first, FigureSide second, Judgement judgement) {
    ComparedFigure figure;
    figure.first = std::move(first);
    figure.second = std::move(second);
    figure.verdict = judgement.verdict;
    figure.because = judgement.because;
    pair_.figures.push_back(std::move(figure));
  }

  void add_single(FigureSide side, Verdict verdict) {
    ComparedFigure figure;
    (verdict == Verdict::only_first ? figure.first : figure.second) = std::move(side);
    figure.verdict = verdict;
    pair_.figures.push_back(std::move(figure));
  }

  ComparedPair& pair_;
};

Found found_by(const ComparedPlan& plan, const Rule& rule, const Configuration* configuration) {
  Found found;
  for (const Finding& finding : plan.answer->findings)
    if (finding.rule == rule.id && (configuration != nullptr ? finding.configuration == configuration->id
                                                             : finding.configuration.empty()))
      found.push_back(&finding);
  return found;
}

const Loads& loads_in(const ComparedPlan& plan, const Configuration& configuration) {
  const auto found = std::ranges::find(plan.loads, &configuration, &Loads::configuration);
  if (found == plan.loads.end()) throw std::logic_error("a configuration without loads");
  return *found;
}

ComparedPair pair_of(const ComparedPlan& first, const Configuration* in_first, const ComparedPlan& second,
                     const Configuration* in_second) {
  ComparedPair pair{in_first, in_second, {}, 0};
  PairOf of(pair);
  if (in_first == nullptr) {
    using Size = ComparedFigure::Size;
    const Interior& a = (*first.plan)->interior;
    const Interior& b = (*second.plan)->interior;
    of.add_length(Size::length, a.length, b.length);
    of.add_length(Size::width, a.width, b.width);
    of.add_length(Size::height, a.height, b.height);
  }
  for (const Weight weight : {Weight::alert, Weight::advice, Weight::information})
    for (const Rule& rule : all_rules())
      if (rule.weight == weight)
        of.add_rule(found_by(first, rule, in_first), found_by(second, rule, in_second));
  if (in_first != nullptr)
    of.add_loads(load_figures(*first.plan, loads_in(first, *in_first)),
                 load_figures(*second.plan, loads_in(second, *in_second)));
  return pair;
}

}  // namespace

bool FigureSide::is_known() const {
  if (finding != nullptr) return finding->status != Status::unknown;
  return !load || load->is_known();
}

bool has_one_way(const Rule& rule) {
  return rule.limit.has_value() &&
         std::ranges::find(one_of_two_limits, rule.id.text()) == one_of_two_limits.end();
}

Comparison compared_plans(const ComparedPlan& first, const ComparedPlan& second,
                          const std::vector<ConfigurationId>& only) {
  Comparison comparison{&first, &second, {}, {}, {}};
  const auto is_wanted = [&](const Configuration& one) {
    return only.empty() || std::ranges::find(only, one.id) != only.end();
  };
  if (only.empty()) comparison.pairs.push_back(pair_of(first, nullptr, second, nullptr));
  // In an order that does not depend on which plan comes first.
  std::vector<ConfigurationId> both;
  for (const Configuration& one : (*first.plan)->configurations) {
    if (!is_wanted(one)) continue;
    const bool shared = second.plan->configuration(one.id.text()) != nullptr;
    (shared ? both : comparison.only_first).push_back(one.id);
  }
  for (const Configuration& one : (*second.plan)->configurations)
    if (is_wanted(one) && first.plan->configuration(one.id.text()) == nullptr)
      comparison.only_second.push_back(one.id);
  std::ranges::sort(both);
  for (const ConfigurationId& id : both)
    comparison.pairs.push_back(
        pair_of(first, first.plan->configuration(id.text()), second, second.plan->configuration(id.text())));
  return comparison;
}

Comparison compared_configurations(const ComparedPlan& plan, const Configuration& first,
                                   const Configuration& second) {
  return {&plan, &plan, {pair_of(plan, &first, plan, &second)}, {}, {}};
}

int exit_code(const Comparison& comparison) {
  bool differs = !comparison.only_first.empty() || !comparison.only_second.empty();
  bool unknown = false;
  for (const ComparedPair& pair : comparison.pairs)
    for (const ComparedFigure& figure : pair.figures)
      (figure.verdict == Verdict::unknown ? unknown : differs) = true;
  return differs ? 1 : unknown ? 2 : 0;
}

}  // namespace berthwright

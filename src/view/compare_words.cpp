#include "view/compare_words.h"

#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/load_words.h"

namespace berthwright {
namespace {

using Verdict = ComparedFigure::Verdict;
using Because = ComparedFigure::Because;

const Rule& rule_of(const Finding& finding) { return *find_rule(finding.rule.text()); }

std::string size_name(ComparedFigure::Size size) {
  switch (size) {
    case ComparedFigure::Size::length:
      return "length of the room";
    case ComparedFigure::Size::width:
      return "width of the room";
    case ComparedFigure::Size::height:
      return "height of the room";
    case ComparedFigure::Size::no_size:
      break;
  }
  throw std::logic_error("a length of nothing");
}

/// Of what the loads compare the figure with.
std::optional<LoadVerdict::Kind> rule_of(LoadFigure::Kind kind) {
  switch (kind) {
    case LoadFigure::Kind::whole:
      return LoadVerdict::Kind::whole_limit;
    case LoadFigure::Kind::coupling:
      return LoadVerdict::Kind::coupling_limit;
    case LoadFigure::Kind::axle:
      return LoadVerdict::Kind::axle_limit;
    case LoadFigure::Kind::share:
      return LoadVerdict::Kind::share;
    case LoadFigure::Kind::sides:
      return LoadVerdict::Kind::sides;
    case LoadFigure::Kind::circuit:
    case LoadFigure::Kind::supply:
      return LoadVerdict::Kind::supply;
    default:
      return std::nullopt;
  }
}

std::string circuit_name(const Plan& plan, const std::string& id) {
  for (const Circuit& circuit : plan->supply->circuits)
    if (circuit.id == id) return circuit.name.empty() ? id : circuit.name;
  return id;
}

std::string length_span_text(const LengthSpan& span, Unit own) {
  if (span.high - span.low <= one_tick) return both(span.low, own);
  return both(span.low, own, {.rounding = Rounding::down}) + " to " +
         both(span.high, own, {.rounding = Rounding::up});
}

std::string count_text(const LoadFigure& figure, const CountSpan& span, const Plan& plan) {
  constexpr std::int64_t hundred = 100;
  switch (figure.kind) {
    case LoadFigure::Kind::circuit:
      return current_text((span.high + hundred - 1) / hundred, plan->supply->volts) + " as it counts";
    case LoadFigure::Kind::supply:
    case LoadFigure::Kind::together:
      return current_text(span.high, plan->supply->volts);
    case LoadFigure::Kind::warm_up:
      return duration_text(span.low, Rounding::down) + " to " + duration_text(span.high, Rounding::up);
    default:
      return std::to_string(span.low) + " to " + std::to_string(span.high) + " W";
  }
}

bool is_change(LoadFigure::Kind kind) {
  return kind == LoadFigure::Kind::coupling_change || kind == LoadFigure::Kind::sides;
}

std::string load_figure_text(const LoadFigure& figure, const Plan& plan) {
  std::string text = "unknown";
  if (figure.value) {
    if (const auto* load = std::get_if<LoadSpan>(&*figure.value))
      text = is_change(figure.kind) ? change_text(*load, plan->unit) : load_text(*load, plan->unit);
    if (const auto* length = std::get_if<LengthSpan>(&*figure.value))
      text = length_span_text(*length, plan->unit);
    if (const auto* share = std::get_if<ShareSpan>(&*figure.value)) text = share_text(*share);
    if (const auto* count = std::get_if<CountSpan>(&*figure.value)) text = count_text(figure, *count, plan);
  }
  if (figure.status && (figure.value || *figure.status != Status::unknown))
    text += ", " + std::string(word(term_of(*figure.status), plan->english));
  return text;
}

std::string finding_text(const Finding& finding, const Plan& plan) {
  const bool at_least = rule_of(finding).at_least;
  std::string text;
  if (finding.measured)
    text = quantity_text(*finding.measured, plan->unit, at_least ? Rounding::down : Rounding::up) + ", ";
  text += word(term_of(finding.status), plan->english);
  if (finding.status == Status::not_met && finding.compared)
    text += " (asked " +
            quantity_text(*finding.compared, plan->unit, at_least ? Rounding::up : Rounding::down) + ")";
  std::vector<std::string> about;
  if (!finding.bed.text().empty()) about.push_back(name_of(plan, finding.bed.text()));
  for (const std::string& id : finding.subjects) about.push_back(name_of(plan, id));
  std::string names;
  for (const std::string& name : about) names += (names.empty() ? "" : ", ") + name;
  if (!finding.variant.empty()) names += (names.empty() ? "" : "; ") + finding.variant;
  return names.empty() ? text : text + ": " + names;
}

/// Whose number the rule holds, where one is better by it.
std::string source_of(const Comparison& of, const ComparedFigure& figure) {
  const FigureSide& side = figure.either();
  if (side.finding != nullptr) return source_text(side.finding->source);
  const std::optional<LoadVerdict::Kind> kind = rule_of(side.load->kind);
  if (!kind) throw std::logic_error("better by no rule");
  switch (*kind) {
    case LoadVerdict::Kind::share: {
      const Source& first = share_range((*of.first->plan)->chassis->range).source;
      const Source& second = share_range((*of.second->plan)->chassis->range).source;
      return first == second ? source_text(first)
                             : "A: " + source_text(first) + "; B: " + source_text(second);
    }
    case LoadVerdict::Kind::sides:
      return std::to_string(most_aside_percent) + " % of the axle, common practice, no source";
    case LoadVerdict::Kind::supply:
      return source_text(continuous_source());
    case LoadVerdict::Kind::whole_limit:
    case LoadVerdict::Kind::axle_limit:
    case LoadVerdict::Kind::coupling_limit:
      return "as the plans give it";
  }
  throw std::logic_error("LoadVerdict::Kind out of range");
}

std::string better_words(const Comparison& of, const ComparedFigure& figure, const std::string& better) {
  const std::string lead =
      better + " is better by " + compared_rule(figure) + " (" + source_of(of, figure) + "): ";
  switch (figure.because) {
    case Because::keeps:
      return lead + "the other does not keep it, or only closely.";
    case Because::less_short:
      return lead + "neither keeps it, " + better + " falls short by less.";
    case Because::more_to_spare:
      return lead + "both keep it, " + better + " with more to spare.";
    case Because::nothing:
      break;
  }
  throw std::logic_error("better for no reason");
}

}  // namespace

std::string compared_name(const Comparison& of, const ComparedFigure& figure) {
  const FigureSide& side = figure.either();
  if (side.finding != nullptr) return rule_of(*side.finding).title;
  if (side.length) return size_name(figure.size);
  const LoadFigure& load = *side.load;
  std::string name(word(load.kind));
  if (!load.circuit.empty())
    name += " " + circuit_name(*(figure.first ? of.first : of.second)->plan, load.circuit);
  return load.tanks == TankState::as_told ? name : name + ", tanks " + std::string(word(load.tanks));
}

std::string compared_rule(const ComparedFigure& figure) {
  const FigureSide& side = figure.either();
  if (side.finding != nullptr) return side.finding->rule.text();
  const bool is_compared = (figure.first && figure.first->load && figure.first->load->status) ||
                           (figure.second && figure.second->load && figure.second->load->status);
  if (!is_compared) return {};
  const std::optional<LoadVerdict::Kind> kind = rule_of(side.load->kind);
  return kind ? std::string(word(*kind)) : std::string{};
}

std::string compared_side(const ComparedPlan& plan, const std::optional<FigureSide>& side) {
  if (!side) return {};
  if (side->finding != nullptr) return finding_text(*side->finding, *plan.plan);
  if (side->load) return load_figure_text(*side->load, *plan.plan);
  return both(*side->length, (*plan.plan)->unit);
}

std::string compared_verdict(const Comparison& of, const ComparedFigure& figure) {
  switch (figure.verdict) {
    case Verdict::first_better:
      return better_words(of, figure, "A");
    case Verdict::second_better:
      return better_words(of, figure, "B");
    case Verdict::differs:
      return "They differ; no rule says which is better.";
    case Verdict::unknown:
      return "One of them is unknown, so neither is better.";
    case Verdict::only_first:
      return "Only A has it.";
    case Verdict::only_second:
      return "Only B has it.";
  }
  throw std::logic_error("Verdict out of range");
}

std::string pair_heading(const Comparison& of, const ComparedPair& pair) {
  if (pair.first == nullptr)
    return "The " + std::string(word(Term::trailer, (*of.first->plan)->english)) + " as such";
  if (pair.first->id == pair.second->id) return when_of(*pair.first);
  return "A " + small_first(when_of(*pair.first)) + ", B " + small_first(when_of(*pair.second));
}

std::string pair_sum(const ComparedPair& pair) {
  const auto count = [&](Verdict verdict) {
    std::size_t some = 0;
    for (const ComparedFigure& figure : pair.figures) some += figure.verdict == verdict ? 1 : 0;
    return std::to_string(some);
  };
  if (pair.figures.empty()) return "Nothing differs; " + std::to_string(pair.alike) + " figures are alike.";
  return "Of the figures that differ A is better in " + count(Verdict::first_better) + " and B in " +
         count(Verdict::second_better) + ", each by the rule that is named; in " + count(Verdict::differs) +
         " no rule says which, " + count(Verdict::unknown) + " are unknown, " + count(Verdict::only_first) +
         " only A has and " + count(Verdict::only_second) + " only B. Alike are " +
         std::to_string(pair.alike) + ".";
}

std::vector<std::string> lacking_configurations(const Comparison& of) {
  std::vector<std::string> told;
  const auto tell = [&](const ComparedPlan& plan, const std::vector<ConfigurationId>& ids, const char* who) {
    for (const ConfigurationId& id : ids) {
      const Configuration& one = *plan.plan->configuration(id.text());
      told.push_back("Only " + std::string(who) + " shows the " +
                     std::string(word(Term::trailer, (*plan.plan)->english)) + " " +
                     small_first(when_of(one)) + ": not compared.");
    }
  };
  tell(*of.first, of.only_first, "A");
  tell(*of.second, of.only_second, "B");
  return told;
}

std::string_view compared_caution() {
  return "Better is said of one figure by one rule, never of a whole layout. What has no number of its own "
         "in "
         "the rule, or is limited from two sides, only differs.";
}

std::string_view word(Verdict verdict) {
  switch (verdict) {
    case Verdict::first_better:
      return "first better";
    case Verdict::second_better:
      return "second better";
    case Verdict::differs:
      return "differs";
    case Verdict::unknown:
      return "unknown";
    case Verdict::only_first:
      return "only first";
    case Verdict::only_second:
      return "only second";
  }
  throw std::logic_error("Verdict out of range");
}

std::string_view word(Because because) {
  switch (because) {
    case Because::nothing:
      return "";
    case Because::keeps:
      return "keeps";
    case Because::less_short:
      return "less short";
    case Because::more_to_spare:
      return "more to spare";
  }
  throw std::logic_error("Because out of range");
}

// One line for each figure.
// NOLINTNEXTLINE(readability-function-size)
std::string_view word(LoadFigure::Kind kind) {
  switch (kind) {
    case LoadFigure::Kind::added:
      return "weight of what the plan holds";
    case LoadFigure::Kind::along:
      return "its centre of gravity behind the front wall";
    case LoadFigure::Kind::across:
      return "its centre of gravity from the left wall";
    case LoadFigure::Kind::coupling_change:
      return "what it does to the load on the coupling";
    case LoadFigure::Kind::whole:
      return "weight of the whole";
    case LoadFigure::Kind::coupling:
      return "load on the coupling";
    case LoadFigure::Kind::axle:
      return "load on the axle";
    case LoadFigure::Kind::whole_along:
      return "centre of gravity of the whole behind the front wall";
    case LoadFigure::Kind::whole_across:
      return "centre of gravity of the whole from the left wall";
    case LoadFigure::Kind::share:
      return "share on the coupling";
    case LoadFigure::Kind::sides:
      return "right wheels less the left ones";
    case LoadFigure::Kind::cargo_left:
      return "left under the plate of the whole";
    case LoadFigure::Kind::circuit:
      return "circuit";
    case LoadFigure::Kind::supply:
      return "everything that draws";
    case LoadFigure::Kind::together:
      return "most that may run together";
    case LoadFigure::Kind::warm_up:
      return "time to warm the room";
    case LoadFigure::Kind::hold:
      return "power to hold the temperature";
  }
  throw std::logic_error("LoadFigure::Kind out of range");
}

}  // namespace berthwright

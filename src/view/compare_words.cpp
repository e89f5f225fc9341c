#include "view/compare_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/load_words.h"
#include "view/telling.h"

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

std::string load_words(LoadFigure::Kind kind, const LoadSpan& load, Unit own) {
  if (!load.low && !load.high) return "unknown";
  if (kind == LoadFigure::Kind::added) return load_text(MassSpan{*load.low, load.high}, own);
  if (kind == LoadFigure::Kind::cargo_left) return left_text(load, own);
  return is_change(kind) ? change_text(load, own) : load_text(load, own);
}

std::string load_figure_text(const LoadFigure& figure, const Plan& plan) {
  std::string text = "unknown";
  if (figure.value) {
    if (const auto* load = std::get_if<LoadSpan>(&*figure.value))
      text = load_words(figure.kind, *load, plan->unit);
    if (const auto* length = std::get_if<LengthSpan>(&*figure.value)) text = where_text(*length, plan->unit);
    if (const auto* share = std::get_if<ShareSpan>(&*figure.value))
      text = share_text(*share, share_range(*figure.range));
    if (const auto* count = std::get_if<CountSpan>(&*figure.value)) text = count_text(figure, *count, plan);
    if (const auto* least = std::get_if<AtLeast>(&*figure.value))
      text = "at least " + count_text(figure, {least->low, least->low}, plan);
    if (std::holds_alternative<Never>(*figure.value)) text = "never, by these figures";
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
  const bool is_own = !finding.override_reason.empty();
  if (finding.compared && (finding.status == Status::not_met || is_own))
    text += " (asked " +
            quantity_text(*finding.compared, plan->unit, at_least ? Rounding::up : Rounding::down) +
            (is_own ? ", the plan's own figure: " + finding.override_reason : "") + ")";
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
  if (side.finding != nullptr) {
    const std::string first = Telling(*of.first->plan, *figure.first->finding).whose();
    const std::string second = Telling(*of.second->plan, *figure.second->finding).whose();
    return first == second ? first : "A: " + first + "; B: " + second;
  }
  const std::optional<LoadVerdict::Kind> kind = rule_of(side.load->kind);
  if (!kind) throw std::logic_error("better by no rule");
  switch (*kind) {
    case LoadVerdict::Kind::share:
      return source_text(share_range(*side.load->range).source);
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
    case Because::other_limits:
      break;
  }
  throw std::logic_error("better for no reason");
}

/// The number that a side was compared with, where the two were compared with different ones.
std::string limit_words(const ComparedPlan& plan, const FigureSide& side) {
  return side.finding != nullptr ? Telling(*plan.plan, *side.finding).demand()
                                 : share_range_text(*side.load->range);
}

std::string differs_words(const Comparison& of, const ComparedFigure& figure) {
  if (figure.because != Because::other_limits) return "They differ; no rule says which is better.";
  return "They were compared with different numbers, so neither is better: A with " +
         limit_words(*of.first, *figure.first) + "; B with " + limit_words(*of.second, *figure.second) + ".";
}

std::string unknown_words(const ComparedFigure& figure) {
  if (!figure.first->is_known() && !figure.second->is_known())
    return "Neither is fully known, so neither is better.";
  return std::string(figure.first->is_known() ? "B" : "A") + " is not fully known, so neither is better.";
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
      return differs_words(of, figure);
    case Verdict::unknown:
      return unknown_words(figure);
    case Verdict::only_first:
      return "Only A has it.";
    case Verdict::only_second:
      return "Only B has it.";
  }
  throw std::logic_error("Verdict out of range");
}

std::string pair_heading(const Comparison& of, const ComparedPair& pair) {
  if (pair.first == nullptr) return "The " + vehicle(*of.first->plan) + " as such";
  if (pair.first->id == pair.second->id) return when_of(*pair.first);
  return "A " + small_first(when_of(*pair.first)) + ", B " + small_first(when_of(*pair.second));
}

std::string pair_sum(const ComparedPair& pair) {
  const auto count = [&](Verdict verdict) {
    std::size_t some = 0;
    for (const ComparedFigure& figure : pair.figures) some += figure.verdict == verdict ? 1 : 0;
    return std::to_string(some);
  };
  const std::string alike = std::to_string(pair.alike);
  if (pair.figures.empty()) return "Nothing differs; " + alike + " figures are alike.";
  if (std::ranges::all_of(pair.figures,
                          [](const ComparedFigure& figure) { return figure.verdict == Verdict::unknown; }))
    return "Nothing that is known differs; " + alike + " figures are alike, " + count(Verdict::unknown) +
           " unknown.";
  return "Of the figures that differ or are unknown A is better in " + count(Verdict::first_better) +
         " and B in " + count(Verdict::second_better) + ", each by the rule that is named; in " +
         count(Verdict::differs) + " no rule says which, " + count(Verdict::unknown) + " are unknown, " +
         count(Verdict::only_first) + " only A has and " + count(Verdict::only_second) +
         " only B. Alike are " + alike + ".";
}

std::vector<std::string> lacking_configurations(const Comparison& of) {
  std::vector<std::string> told;
  const auto tell = [&](const ComparedPlan& plan, const std::vector<ConfigurationId>& ids, const char* who) {
    for (const ConfigurationId& id : ids) {
      const Configuration& one = *plan.plan->configuration(id.text());
      told.push_back("Only " + std::string(who) + " shows the " + vehicle(*plan.plan) + " " +
                     small_first(when_of(one)) + ": not compared.");
    }
  };
  const Plan& first = *of.first->plan;
  const Plan& second = *of.second->plan;
  // What the scales found of either side needs no track.
  const auto tracked = [](const Plan& plan) {
    const auto& chassis = plan->chassis;
    return chassis && (chassis->track || (chassis->weighed && chassis->weighed->left));
  };
  const auto towed = [](const Plan& plan) { return plan->chassis && plan->chassis->towed; };
  if (towed(first) && towed(second) && (!tracked(first) || !tracked(second)))
    told.push_back(std::string(tracked(first)    ? "B does not say"
                               : tracked(second) ? "A does not say"
                                                 : "Neither plan says") +
                   " how far apart the wheels are, so left and right are not compared.");
  tell(*of.first, of.only_first, "A");
  tell(*of.second, of.only_second, "B");
  return told;
}

std::string_view compared_caution() {
  return "Better is said of one figure by one rule, never of a whole layout: of the one that keeps the rule "
         "where the other does not or only closely, or that falls short of it by less. Of two that keep it "
         "one is better only where the rule has a number and no other rule limits the same from the other "
         "side. Where the plans put different numbers or ranges in a rule's place they only differ, and what "
         "is "
         "not fully known is never better.";
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
    case Because::other_limits:
      return "other limits";
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

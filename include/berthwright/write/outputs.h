#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/answer.h>
#include <berthwright/solve/comparison.h>
#include <berthwright/solve/convert/steps.h>
#include <berthwright/solve/load/loads.h>
#include <berthwright/solve/site/siting.h>
#include <berthwright/solve/split/reuse.h>
#include <berthwright/solve/split/split.h>
#include <berthwright/view/scene.h>

namespace berthwright {

/// The sheet as true-scale SVG: width and height in mm, viewBox in tenths of a mm.
std::string svg(const Sheet& sheet);

/// What a PDF file says of itself.
struct PdfTitle {
  std::string title;
  std::string author;  ///< may be empty
  English english = English::american;
};
/// The sheets as one true-scale PDF file, a page and a bookmark each, tagged, without any date. `font` is the
/// file of DejaVu Sans, which is embedded; letters that it lacks are empty boxes. Problems:
/// "font.unreadable", "font.other" where its letters have other widths than the sheets were laid out with.
/// The same bytes each time, with the same libraries.
Result<std::string> pdf(const std::vector<Sheet>& sheets, const PdfTitle& about, const std::string& font);

/// What a check prints beyond the usual.
struct ReportOptions {
  /// Rule ids, places, shares of the population, and the numbers of advice that is met.
  bool details = false;
  bool defaults = false;  ///< every default the reader applied
};
/// The check as text for people, at most 100 columns wide, ending with the caution line.
std::string check_text(const Plan& plan, const Answer& answer, ReportOptions options = {});
/// The same as one JSON object (schema: plans/check.schema.json).
std::string check_json(const Plan& plan, const Answer& answer);

/// Where each heater may stand, as text for people, at most 100 columns wide, ending with the caution line.
std::string heater_text(const Plan& plan, const std::vector<HeaterPlaces>& heaters);
/// The same as one JSON object (schema: plans/heater.schema.json); regions as rings of corners.
std::string heater_json(const Plan& plan, const std::vector<HeaterPlaces>& heaters);

/// How every configuration becomes every other one, as text for people, at most 100 columns wide, ending with
/// the caution line. Of `shown` conversions of the plan.
std::string steps_text(const Plan& plan, const std::vector<Conversion>& shown);
/// The same as one JSON object (schema: plans/steps.schema.json), with what each movement sweeps.
std::string steps_json(const Plan& plan, const std::vector<Conversion>& shown);

/// Weight, supply and warmth of `shown` configurations, as text for people, at most 100 columns wide, ending
/// with the caution line.
std::string loads_text(const Plan& plan, const std::vector<Loads>& shown);
/// The same as one JSON object (schema: plans/loads.schema.json); weights in grams, times in seconds.
std::string loads_json(const Plan& plan, const std::vector<Loads>& shown);

/// What a person called the two that are compared: files, or configurations of one plan.
struct ComparedNames {
  std::string first;
  std::string second;
};
/// What differs, which is better by which rule, as text for people, at most 100 columns wide, ending with the
/// caution line.
std::string compare_text(const Comparison& of, const ComparedNames& names);
/// The same as one JSON object (schema: plans/compare.schema.json).
std::string compare_json(const Comparison& of, const ComparedNames& names);

/// A bay with its proposals, each written back as a plan and checked.
struct ProposedSplits {
  BaySplits splits;
  /// Of each of `splits.best`: what the check of the plan that it makes does not find met, among beds, seats,
  /// support and room; as sentences.
  std::vector<std::vector<std::string>> unmet;
};
/// 0: each bay closes exactly; 1: one does not; 2: there is no bay.
int exit_code(const std::vector<ProposedSplits>& bays);
/// Cushions that close each bay, as text for people, at most 100 columns wide, ending with the caution line.
std::string split_text(const Plan& plan, const std::vector<ProposedSplits>& bays,
                       const std::vector<OffLevel>& off_level);
/// The same as one JSON object (schema: plans/split.schema.json).
std::string split_json(const Plan& plan, const std::vector<ProposedSplits>& bays,
                       const std::vector<OffLevel>& off_level);

/// 0: each bay is closed; 1: one stays open somewhere; 2: there is no bay.
int exit_code(const std::vector<BayReuse>& bays);
/// As text for people, at most 100 columns wide, ending with the caution line.
std::string reuse_text(const Plan& plan, const std::vector<BayReuse>& bays,
                       const std::vector<OffLevel>& off_level);
/// The same as one JSON object (schema: plans/split.schema.json).
std::string reuse_json(const Plan& plan, const std::vector<BayReuse>& bays,
                       const std::vector<OffLevel>& off_level);

/// One of the proposals for a bay.
struct ChosenSplit {
  const BaySplits* splits = nullptr;
  std::size_t index = 0;              ///< into `splits->best`
  std::vector<std::string> others{};  ///< ids that the proposals for bays before it take, chosen or not
  const Split& split() const { return splits->best[index]; }
};
/// The plan of `text` with the chosen cushions in place of those that lay in their bays: as pieces, in every
/// configuration and in the beds. Comments are lost; a first line says so. `text` must be that of `plan`.
std::string plan_text_with(const Plan& plan, std::string_view text, const std::vector<ChosenSplit>& chosen);

/// Faults of a plan file: "FILE:LINE:COLUMN: …" with what was found, what is allowed and how to mend it.
std::string problems_text(const std::string& file, const Problems& problems);
std::string problems_json(const std::string& file, const Problems& problems);

/// Everything about one rule: what is measured, the number, who says so, the caution.
std::string explain_text(const Rule& rule, Unit own);
std::string explain_json(const Rule& rule);
/// One line for each rule: its id, weight and title.
std::string rules_text();
std::string rules_json();

}  // namespace berthwright

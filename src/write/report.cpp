#include <berthwright/write/outputs.h>

#include <algorithm>
#include <array>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "exact/code_points.h"
#include "view/told_figures.h"
#include "write/heading.h"
#include "write/report_seats.h"
#include "write/report_ways.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string bed_lines(const Plan& plan, const BedAnswer& answer, ReportOptions options) {
  std::vector<std::string> sentences = bed_sentences(plan, answer);
  if (options.details && answer.room.largest) sentences.push_back(fits_sentence(plan, answer.room));
  std::string text;
  for (const std::string& one : sentences) text += wrapped(one, text.empty() ? item : under_item);
  return text;
}

std::string heat_part(const Plan& plan, const Answer& answer) {
  std::string text;
  for (const ConfigurationAnswer& configuration : answer.configurations)
    for (const std::string& one : nearest_to_heat(plan, configuration)) text += wrapped(one, item);
  return text.empty() ? text : "\nHeat: the nearest thing that can burn\n" + text;
}

std::string beds_part(const Plan& plan, const Answer& answer, ReportOptions options) {
  std::string text;
  for (const ConfigurationAnswer& configuration : answer.configurations)
    for (const BedAnswer& bed : configuration.beds) text += bed_lines(plan, bed, options);
  return text.empty() ? "\nBeds\n  The plan names no bed.\n" : "\nBeds\n" + text;
}

std::string places(const Plan& plan, const Finding& finding) {
  std::string text;
  for (const Point3& at : finding.where) {
    text += text.empty() ? "at " : " and ";
    text += both(at.plan.x, plan->unit) + " from the front, " + both(at.plan.y, plan->unit) +
            " from the left, " + both(at.z, plan->unit) + " up";
  }
  return text;
}

struct Part {
  std::string_view heading;
  bool cure_first;
  bool (*holds)(const Finding&);
};

Weight weight_of(const Finding& finding) { return find_rule(finding.rule.text())->weight; }

template <Status status>
bool asked(const Finding& finding) {
  return finding.status == status && weight_of(finding) != Weight::information;
}
bool informs(const Finding& finding) { return weight_of(finding) == Weight::information; }

constexpr std::array parts{Part{"Not met", true, asked<Status::not_met>},
                           Part{"Unknown", true, asked<Status::unknown>},
                           Part{"Close", false, asked<Status::close>}, Part{"Met", false, asked<Status::met>},
                           Part{"For information", false, informs}};

/// What the part on beds has told already, in fewer words.
bool told_with_the_beds(const Finding& finding) {
  constexpr std::array<std::string_view, 5> rules{"bed.size", "bed.area", "bed.named-size", "bed.fits-people",
                                                  "bed.sitting-up"};
  return std::ranges::find(rules, finding.rule.text()) != rules.end();
}

bool is_told_above(const Finding& finding) {
  return told_with_the_beds(finding) || told_with_the_seats(finding);
}

std::string finding_lines(const Plan& plan, const Finding& finding, const Part& part, ReportOptions options) {
  const bool warns = weight_of(finding) == Weight::alert && finding.status != Status::met;
  const std::string mark = warns ? "ALERT " : "";
  const std::string cure = part.cure_first ? cure_sentence(plan, finding) : std::string{};
  std::string text = wrapped(mark + (cure.empty() ? "" : cure + " ") + sentence(plan, finding), item);
  if (!options.details) return text;
  const std::string status(word(term_of(finding.status), plan->english));
  const std::string weight(word(term_of(weight_of(finding)), plan->english));
  text += wrapped("rule " + finding.rule.text() + ", " + weight + ", " + status +
                      (finding.source.edition.empty() ? "" : "; source: " + finding.source.edition),
                  under_item);
  if (!finding.where.empty()) text += wrapped(places(plan, finding), under_item);
  return text;
}

/// "ridge between cushions (2), gap between cushions": what is met and no alert needs no number at first
/// sight.
std::string titles_of(const std::vector<const Finding*>& findings) {
  std::string text;
  for (auto first = findings.begin(); first != findings.end();) {
    const RuleId& rule = (*first)->rule;
    const auto last = std::find_if(first, findings.end(), [&](const Finding* f) { return f->rule != rule; });
    text += (text.empty() ? "" : ", ") + find_rule(rule.text())->title;
    if (last - first > 1) text += " (" + std::to_string(last - first) + ")";
    first = last;
  }
  return text;
}

std::string in_short(std::vector<const Finding*> findings) {
  if (findings.empty()) return {};
  std::ranges::stable_sort(findings, {}, [](const Finding* f) { return find_rule(f->rule.text()); });
  return wrapped("Of advice (" + std::to_string(findings.size()) +
                     "; --details tells each with its numbers): " + titles_of(findings) + ".",
                 item);
}

std::string findings_part(const Plan& plan, const Answer& answer, const Part& part, ReportOptions options) {
  std::string text;
  std::size_t count = 0;
  std::vector<const Finding*> shortened;
  for (const Finding& finding : answer.findings) {
    if (!part.holds(finding) || (is_told_above(finding) && !options.details)) continue;
    ++count;
    if (finding.status == Status::met && weight_of(finding) == Weight::advice && !options.details)
      shortened.push_back(&finding);
    else
      text += finding_lines(plan, finding, part, options);
  }
  text += in_short(std::move(shortened));
  return count == 0 ? std::string{}
                    : "\n" + std::string(part.heading) + " (" + std::to_string(count) + ")\n" + text;
}

std::string defaults_part(const Plan& plan) {
  std::string text = "\nDefaults applied (" + std::to_string(plan->defaults.size()) + ")\n";
  for (const AppliedDefault& applied : plan->defaults)
    text += wrapped(applied.pointer + ": " + applied.value + " (" + applied.why + ")", item);
  return text;
}

std::string notes_part(const Plan& plan) {
  std::string text;
  for (const std::string& note : plan->notes) text += wrapped(note, item);
  return text.empty() ? text : "\nNotes of the plan\n" + text;
}

}  // namespace

std::string check_text(const Plan& plan, const Answer& answer, ReportOptions options) {
  std::string text = heading(plan) + beds_part(plan, answer, options) + seats_part(plan, answer) +
                     heat_part(plan, answer) + ways_part(plan, answer);
  for (const Part& part : parts) text += findings_part(plan, answer, part, options);
  text += notes_part(plan);
  if (options.defaults) text += defaults_part(plan);
  return text + "\n" + alerts_line(answer) + "\n" + wrapped(caution_line(plan->english), {});
}

}  // namespace berthwright

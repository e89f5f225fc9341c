#include <berthwright/write/outputs.h>

#include <array>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "write/wrap.h"

namespace berthwright {
namespace {

constexpr Indent item{"  ", "    "};
constexpr Indent under_item{"    ", "    "};

std::string bed_lines(const Plan& plan, const BedAnswer& answer, ReportOptions options) {
  const Unit own = plan->unit;
  const SleepingRoom& room = answer.room;
  const Configuration* when = plan.configuration(answer.bed->configuration.text());
  const std::string name = answer.bed->name + " (" + (when == nullptr ? "" : when->name) + "): ";
  if (!room.largest) return wrapped(name + "no lying space at all.", item);

  const Sides largest{room.largest->length, room.largest->width};
  std::string text = wrapped(name + quantity_text(largest, own, Rounding::down) +
                                 " is the largest rectangle in it; lying area " +
                                 quantity_text(room.area, own, Rounding::down) + "; its level is " +
                                 both(answer.mattress.level, own) + " above the floor.",
                             item);
  std::string held;
  for (const SizeHeld& size : room.sizes)
    if (size.held) held += (held.empty() ? "" : ", ") + std::string(size.size->name);
  text += wrapped(held.empty() ? "It holds none of the trade's mattress sizes." : "It holds: " + held + ".",
                  under_item);
  if (room.longest)
    text += wrapped(
        "Longest place 24 in wide: " + both(room.longest->length, own, {.rounding = Rounding::down}) + ".",
        under_item);
  for (const PersonRoom& person : room.people) {
    const std::string who = person.person->name.empty() ? "One person" : person.person->name;
    text += wrapped(who + ": a place " + both(person.person->width, own) + " wide suits people up to " +
                        both(person.suits_stature, own, {.rounding = Rounding::down}) + " tall.",
                    under_item);
  }
  if (options.details)
    text += wrapped("Long enough for " + quantity_text(room.fits, own, Rounding::down) +
                        " (stature and 100 mm, ANSUR II, normal model).",
                    under_item);
  return text;
}

std::string heading(const Plan& plan) {
  std::string text = plan->title.title;
  if (!plan->title.shop.empty()) text += ", " + plan->title.shop;
  if (!plan->title.owner.empty()) text += ", for " + plan->title.owner;
  if (!plan->title.date.empty()) text += ", " + plan->title.date;
  return wrapped(printable(text), {});
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
  Status status;
  std::string_view heading;
  bool cure_first;
};
constexpr std::array parts{Part{Status::not_met, "Not met", true}, Part{Status::unknown, "Unknown", true},
                           Part{Status::close, "Close", false}, Part{Status::met, "Met", false}};

std::string finding_lines(const Plan& plan, const Finding& finding, const Part& part, ReportOptions options) {
  const Rule* rule = find_rule(finding.rule.text());
  const std::string mark = rule->weight == Weight::alert ? "ALERT  " : "";
  const std::string cure = part.cure_first ? cure_sentence(plan, finding) : std::string{};
  std::string text = wrapped(mark + (cure.empty() ? "" : cure + " ") + sentence(plan, finding), item);
  if (!options.details) return text;
  text +=
      wrapped("rule " + finding.rule.text() + ", " + std::string(word(term_of(rule->weight), plan->english)),
              under_item);
  if (!finding.where.empty()) text += wrapped(places(plan, finding), under_item);
  return text;
}

std::string findings_part(const Plan& plan, const Answer& answer, const Part& part, ReportOptions options) {
  std::string text;
  std::size_t count = 0;
  for (const Finding& finding : answer.findings) {
    if (finding.status != part.status) continue;
    ++count;
    text += finding_lines(plan, finding, part, options);
  }
  return count == 0 ? std::string{}
                    : "\n" + std::string(part.heading) + " (" + std::to_string(count) + ")\n" + text;
}

std::string defaults_part(const Plan& plan) {
  std::string text = "\nDefaults applied (" + std::to_string(plan->defaults.size()) + ")\n";
  for (const AppliedDefault& applied : plan->defaults)
    text += wrapped(applied.pointer + ": " + applied.value + " (" + applied.why + ")", item);
  return text;
}

std::string verdict(const Answer& answer) {
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

}  // namespace

std::string check_text(const Plan& plan, const Answer& answer, ReportOptions options) {
  std::string text = heading(plan) + beds_part(plan, answer, options);
  for (const Part& part : parts) text += findings_part(plan, answer, part, options);
  if (options.defaults) text += defaults_part(plan);
  return text + "\n" + verdict(answer) + "\n" + wrapped(caution_line(plan->english), {});
}

}  // namespace berthwright

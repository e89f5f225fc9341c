#include <algorithm>
#include <map>
#include <optional>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

#include <berthwright/plan/house_text.h>
#include <berthwright/write/reference.h>

#include "exact/code_points.h"
#include "yard/commands.h"
#include "yard/files.h"
#include "yard/plan_file.h"

namespace berthwright {
namespace {

std::string shown_name(const std::string& file) { return printable(file, every_character); }

std::string count_of(std::size_t count, const std::string& thing) {
  return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

/// One plan put in order; `changes` becomes true where it was not.
int put_in_order(const std::string& plan, bool check, bool& changes, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(plan, false, out, err, code);
  if (!file) return code;
  const Result<std::string> ordered = house_text(file->text);
  if (!ordered) return told(plan, ordered.problems(), false, out, err);
  const bool differs = *ordered != file->text;
  changes = changes || differs;
  if (plan == "-" && !check) {
    out << *ordered;
    return exit_fine;
  }
  if (differs && !check) code = write_named_file(plan, *ordered, err);
  if (code != exit_fine) return code;
  out << shown_name(plan)
      << (!differs ? ": is in house order\n"
          : check  ? ": is not in house order\n"
                   : ": put in house order\n");
  return code;
}

/// "300 mm (lines 23 and 26), 17.6 mm (line 90)": each spelling once.
std::string kept_words(const std::vector<KeptLength>& kept) {
  std::vector<std::string> order;
  std::map<std::string, std::vector<std::size_t>> lines;
  for (const KeptLength& one : kept) {
    std::vector<std::size_t>& of_one = lines[one.spelled];
    if (of_one.empty()) order.push_back(one.spelled);
    if (of_one.empty() || of_one.back() != one.line) of_one.push_back(one.line);
  }
  std::string words;
  for (const std::string& spelled : order) {
    const std::vector<std::size_t>& at = lines[spelled];
    words +=
        (words.empty() ? "  " : ",\n  ") + printable(spelled) + (at.size() == 1 ? " (line " : " (lines ");
    for (std::size_t i = 0; i < at.size(); ++i)
      words += (i == 0 ? "" : i + 1 == at.size() ? " and " : ", ") + std::to_string(at[i]);
    words += ")";
  }
  return words;
}

void tell_units(const UnitText& written, Unit unit, std::ostream& told) {
  const std::string word = unit == Unit::inch ? "inches" : "millimetres";
  told << count_of(written.lengths, "length") << " written in " << word
       << "; every length is the same to the tick.\n";
  if (!written.kept.empty())
    told << count_of(written.kept.size(), "length") << " cannot be said exactly in " << word << " and "
         << (written.kept.size() == 1 ? "carries its" : "carry their") << " own unit:\n"
         << kept_words(written.kept) << ".\n";
  if (written.weights > 0)
    told << count_of(written.weights, "weight") << " without a unit now "
         << (written.weights == 1 ? "says " : "say ") << (written.from == Unit::inch ? "lb" : "kg") << ".\n";
  for (const ChangedDefault& changed : written.defaults)
    told << "The plan does not say " << printable(changed.pointer)
         << ", and what goes without saying changes with the unit: " << printable(changed.now)
         << ", no longer " << printable(changed.before) << ". Write it into the plan to keep it.\n";
}

}  // namespace

int run_fmt(const FmtRequest& request, std::ostream& out, std::ostream& err) {
  bool changes = false;
  int worst = exit_fine;
  for (const std::string& plan : request.plans)
    worst = std::max(worst, put_in_order(plan, request.check, changes, out, err));
  return worst == exit_fine && request.check && changes ? exit_not_in_order : worst;
}

int run_units(const UnitsRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, false, out, err, code);
  if (!file) return code;
  const Unit other = file->plan->unit == Unit::inch ? Unit::millimetre : Unit::inch;
  const Unit unit = request.to.empty() ? other : request.to == "in" ? Unit::inch : Unit::millimetre;
  const Result<UnitText> written = in_unit(file->text, unit);
  if (!written) return told(request.plan, written.problems(), false, out, err);
  if (request.write.empty()) {
    out << written->text;
    tell_units(*written, unit, err);
    return exit_fine;
  }
  if (!may_write(request.write, request.force, err)) return exit_create;
  code = write_named_file(request.write, written->text, err);
  if (code != exit_fine) return code;
  tell_units(*written, unit, out);
  out << "Written: " << shown_name(request.write) << '\n';
  return exit_fine;
}

int run_reference(const ReferenceRequest& request, std::ostream& out, std::ostream& err) {
  std::vector<std::string> texts;
  for (const std::string& plan : request.plans) {
    int code = exit_fine;
    std::optional<PlanFile> file = plan_file_of(plan, false, out, err, code);
    if (!file) return code;
    texts.push_back(std::move(file->text));
  }
  out << reference_text(texts);
  return exit_fine;
}

}  // namespace berthwright

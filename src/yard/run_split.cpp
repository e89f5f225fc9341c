#include <map>
#include <ostream>

#include <berthwright/exact/measure.h>
#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "yard/commands.h"
#include "yard/files.h"
#include "yard/plan_file.h"

namespace berthwright {
namespace {

/// A flag's length, or the exit code after its fault was told.
bool read_limit(const std::string& flag, const std::string& text, Unit unit, Length& limit,
                std::ostream& err) {
  if (text.empty()) return true;
  const Result<Length> read = read_length(text, unit);
  if (read && *read > Length{}) {
    limit = *read;
    return true;
  }
  err << "berthwright: " << flag << " wants a length above zero, as \"16 in\" or \"400 mm\", not "
      << printable(text, every_character) << '\n';
  return false;
}

bool read_limits(const SplitRequest& request, const Plan& plan, SplitLimits& limits, std::ostream& err) {
  const Unit unit = plan->unit;
  if (unit == Unit::millimetre) limits.step = 10_mm;
  limits.least_back = plan.limit(*find_rule("seat.low-back"));
  limits.most_back = plan.limit(*find_rule("seat.high-back"));
  limits.fillers = request.fillers;
  if (!read_limit("--thickness", request.thickness, unit, limits.thickness, err) ||
      !read_limit("--least-back", request.least_back, unit, limits.least_back, err) ||
      !read_limit("--most-back", request.most_back, unit, limits.most_back, err) ||
      !read_limit("--least-side", request.least_side, unit, limits.least_side, err) ||
      !read_limit("--longest-side", request.longest_side, unit, limits.longest_side, err))
    return false;
  if (limits.least_back > limits.most_back || limits.least_side > limits.longest_side) {
    err << "berthwright: the least " << (limits.least_back > limits.most_back ? "back" : "side")
        << " is larger than the most: "
        << exact_text(limits.least_back > limits.most_back ? limits.least_back : limits.least_side, unit)
        << " and "
        << exact_text(limits.least_back > limits.most_back ? limits.most_back : limits.longest_side, unit)
        << '\n';
    return false;
  }
  return true;
}

bool concerns_split(const Finding& finding) {
  const std::string& rule = finding.rule.text();
  const auto begins = [&](std::string_view room) { return rule.starts_with(room); };
  return begins("bed.") || begins("seat.") || begins("support.") || begins("room.");
}

/// What the check of a plan does not find met; or that it is no plan.
std::vector<std::string> unmet_of(const std::string& text) {
  const Result<Plan> plan = read_plan(text);
  if (!plan) return {"It makes no plan: " + plan.problems().front().message + "."};
  const Result<Answer> answer = answered(*plan);
  if (!answer) return {"It does not stand: " + answer.problems().front().message + "."};
  std::vector<std::string> result;
  for (const Finding& finding : answer->findings)
    if (finding.status == Status::not_met && find_rule(finding.rule.text())->weight != Weight::information &&
        concerns_split(finding))
      result.push_back(sentence(*plan, finding));
  return result;
}

int draw_splits(const SplitRequest& request, const Plan& plan, const std::vector<ProposedSplits>& bays,
                std::ostream& err) {
  std::vector<BaySplits> splits;
  for (const ProposedSplits& bay : bays) splits.push_back(bay.splits);
  std::map<std::string, std::string> files;
  for (const Sheet& sheet : split_sheets(plan, splits)) files[sheet.file + ".svg"] = svg(sheet);
  const Result<Written> written = write_files(request.folder, files);
  if (written) return exit_fine;
  tell(written.problems(), err);
  return written.problems().front().id == "output.create" ? exit_create : exit_write;
}

/// The proposal numbers asked for, one for each bay; the first where none is.
bool choose(const SplitRequest& request, const std::vector<ProposedSplits>& bays,
            std::vector<ChosenSplit>& chosen, std::ostream& err) {
  for (std::size_t i = 0; i < bays.size(); ++i) {
    const BaySplits& splits = bays[i].splits;
    const std::size_t number = i < request.choose.size() ? request.choose[i] : 1;
    if (number == 0 || (splits.best.empty() && i >= request.choose.size())) continue;
    if (number > splits.best.size()) {
      err << "berthwright: bay " << i + 1 << " has " << splits.best.size()
          << " proposals, so there is no number " << number << "; 0 leaves the bay as it is\n";
      return false;
    }
    chosen.push_back({&splits, number - 1});
  }
  if (request.choose.size() > bays.size()) {
    err << "berthwright: --choose was given " << request.choose.size() << " times; the plan has "
        << bays.size() << " bays\n";
    return false;
  }
  if (chosen.empty())
    err << "berthwright: no proposal to write: nothing closes, or all bays are left as they are\n";
  return !chosen.empty();
}

int write_plan(const SplitRequest& request, const std::string& text, std::ostream& out, std::ostream& err) {
  if (!may_write(request.write, request.force, err)) return exit_create;
  const int written = write_named_file(request.write, text, err);
  if (written != exit_fine) return written;
  out << "\nWritten: " << printable(request.write, every_character) << '\n';
  return exit_fine;
}

}  // namespace

int run_split(const SplitRequest& request, std::ostream& out, std::ostream& err) {
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, request.json, out, err, code);
  if (!file) return code;
  const Plan& plan = file->plan;
  for (const std::string& id : {request.day, request.night})
    if (!id.empty() && !is_configuration(plan, id, err)) return exit_usage;
  SplitLimits limits;
  if (!read_limits(request, plan, limits, err)) return exit_usage;
  const Configuration* day = plan.configuration(request.day.empty() ? "day" : request.day);
  const Configuration* night = plan.configuration(request.night.empty() ? "night" : request.night);
  const Result<NightBays> found =
      day == nullptr || night == nullptr ? NightBays{} : night_bays(plan, *day, *night, limits.thickness);
  if (!found) return told(request.plan, found.problems(), request.json, out, err);
  std::vector<ProposedSplits> bays;
  for (const NightBay& bay : found->bays) {
    ProposedSplits proposed{splits_of(bay, limits), {}};
    for (std::size_t i = 0; i < proposed.splits.best.size(); ++i)
      proposed.unmet.push_back(unmet_of(plan_text_with(plan, file->text, {{&proposed.splits, i}})));
    bays.push_back(std::move(proposed));
  }
  std::vector<ChosenSplit> chosen;
  if (!request.write.empty() && !choose(request, bays, chosen, err)) return exit_usage;
  out << (request.json ? split_json(plan, bays, found->off_level) : split_text(plan, bays, found->off_level));
  if (!request.folder.empty()) {
    const int drawn = draw_splits(request, plan, bays, err);
    if (drawn != exit_fine) return drawn;
  }
  if (!request.write.empty()) {
    const int written =
        write_plan(request, plan_text_with(plan, file->text, chosen), request.json ? err : out, err);
    if (written != exit_fine) return written;
  }
  return exit_code(bays);
}

}  // namespace berthwright

#include <map>
#include <ostream>

#include <berthwright/exact/measure.h>
#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>
#include <berthwright/write/outputs.h>

#include "exact/code_points.h"
#include "view/split_words.h"
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

/// What the plan asks in place of the usual.
SplitLimits limits_of(const Plan& plan) {
  const CushionWishes& wishes = plan->split;
  SplitLimits limits;
  if (plan->unit == Unit::millimetre) limits.step = 10_mm;
  limits.thickness = wishes.thickness.value_or(limits.thickness);
  limits.least_back = wishes.least_back.value_or(plan.limit(*find_rule("seat.low-back")));
  limits.most_back = wishes.most_back.value_or(plan.limit(*find_rule("seat.high-back")));
  limits.least_side = wishes.least_side.value_or(limits.least_side);
  limits.longest_side = wishes.longest_side.value_or(limits.longest_side);
  if (wishes.fillers) limits.fillers = static_cast<std::size_t>(*wishes.fillers);
  limits.most_gap = wishes.gap.value_or(limits.most_gap);
  limits.most_weight = wishes.lift;
  limits.foam_density = wishes.foam_density.value_or(limits.foam_density);
  limits.foam_stock = wishes.foam_stock;
  return limits;
}

bool read_limits(const SplitRequest& request, const Plan& plan, SplitLimits& limits, std::ostream& err) {
  const Unit unit = plan->unit;
  limits.fillers = request.fillers.value_or(limits.fillers);
  if (!read_limit("--thickness", request.thickness, unit, limits.thickness, err) ||
      !read_limit("--least-back", request.least_back, unit, limits.least_back, err) ||
      !read_limit("--most-back", request.most_back, unit, limits.most_back, err) ||
      !read_limit("--least-side", request.least_side, unit, limits.least_side, err) ||
      !read_limit("--longest-side", request.longest_side, unit, limits.longest_side, err) ||
      !read_limit("--gap", request.gap, unit, limits.most_gap, err))
    return false;
  const auto contradict = [&](const std::string& less, Length low, const std::string& more, Length high) {
    if (low <= high) return false;
    err << "berthwright: " << less << ", " << exact_text(low, unit) << ", is larger than " << more << ", "
        << exact_text(high, unit) << ": no cushion can be made\n";
    return true;
  };
  return !contradict("the least back", limits.least_back, "the highest", limits.most_back) &&
         !contradict("the least side", limits.least_side, "the longest", limits.longest_side) &&
         !contradict("the least side of a cushion", limits.least_side, "the highest back", limits.most_back);
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

int draw_into(const std::string& folder, const std::vector<Sheet>& sheets, std::ostream& err) {
  std::map<std::string, std::string> files;
  for (const Sheet& sheet : sheets) files[sheet.file + ".svg"] = svg(sheet);
  const Result<Written> written = write_files(folder, files);
  if (written) return exit_fine;
  tell(written.problems(), err);
  return written.problems().front().id == "output.create" ? exit_create : exit_write;
}

int draw_splits(const SplitRequest& request, const Plan& plan, const std::vector<ProposedSplits>& bays,
                std::ostream& err) {
  std::vector<BaySplits> splits;
  for (const ProposedSplits& bay : bays) splits.push_back(bay.splits);
  return draw_into(request.folder, split_sheets(plan, splits), err);
}

/// The proposal numbers asked for, one for each bay; the first where none is.
bool choose(const SplitRequest& request, const Plan& plan, const std::vector<ProposedSplits>& bays,
            std::vector<ChosenSplit>& chosen, std::ostream& err) {
  std::vector<std::string> taken;
  for (std::size_t i = 0; i < bays.size(); ++i) {
    const BaySplits& splits = bays[i].splits;
    const std::vector<std::string> others = taken;
    add_ids(taken, plan, splits);
    const std::size_t number = i < request.choose.size() ? request.choose[i] : 1;
    if (number == 0 || (splits.best.empty() && i >= request.choose.size())) continue;
    if (number > splits.best.size()) {
      err << "berthwright: bay " << i + 1 << " has " << splits.best.size()
          << " proposals, so there is no number " << number << "; 0 leaves the bay as it is\n";
      return false;
    }
    chosen.push_back({&splits, number - 1, others});
  }
  if (request.choose.size() > bays.size()) {
    err << "berthwright: give --choose at most once for each bay of the plan, which has " << bays.size()
        << ", not " << request.choose.size() << (request.choose.size() == 1 ? " time\n" : " times\n");
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

/// Lays the plan's own cushions.
int run_reuse(const SplitRequest& request, const Plan& plan, const NightBays& found, std::ostream& out,
              std::ostream& err) {
  std::vector<BayReuse> bays;
  for (const NightBay& bay : found.bays) {
    const Result<std::vector<OwnCushion>> cushions = own_cushions(plan, bay);
    if (!cushions) return told(request.plan, cushions.problems(), request.json, out, err);
    const ReuseLimits limits;
    bays.push_back({bay, limits, reused(bay, *cushions, limits)});
  }
  out << (request.json ? reuse_json(plan, bays, found.off_level) : reuse_text(plan, bays, found.off_level));
  if (!request.folder.empty()) {
    const int drawn = draw_into(request.folder, reuse_sheets(plan, bays), err);
    if (drawn != exit_fine) return drawn;
  }
  return exit_code(bays);
}

/// Whether flags that propose new cushions were given beside --reuse; tells so.
bool contradicts_reuse(const SplitRequest& request, std::ostream& err) {
  if (!request.reuse) return false;
  for (const auto& [flag, value] : {std::pair("--write", request.write),
                                    {"--least-back", request.least_back},
                                    {"--most-back", request.most_back},
                                    {"--least-side", request.least_side},
                                    {"--longest-side", request.longest_side},
                                    {"--gap", request.gap}})
    if (!value.empty()) {
      err << "berthwright: --reuse lays the cushions that are there, so " << flag
          << " has nothing to work on; leave one of the two away\n";
      return true;
    }
  return false;
}

}  // namespace

int run_split(const SplitRequest& request, std::ostream& out, std::ostream& err) {
  if (contradicts_reuse(request, err)) return exit_usage;
  int code = exit_fine;
  const std::optional<PlanFile> file = plan_file_of(request.plan, request.json, out, err, code);
  if (!file) return code;
  const Plan& plan = file->plan;
  for (const std::string& id : {request.day, request.night})
    if (!id.empty() && !is_configuration(plan, id, err)) return exit_usage;
  SplitLimits limits = limits_of(plan);
  if (!read_limits(request, plan, limits, err)) return exit_usage;
  const Configuration* day = plan.configuration(request.day.empty() ? "day" : request.day);
  const Configuration* night = plan.configuration(request.night.empty() ? "night" : request.night);
  const Result<NightBays> found =
      day == nullptr || night == nullptr ? NightBays{} : night_bays(plan, *day, *night, limits.thickness);
  if (!found) return told(request.plan, found.problems(), request.json, out, err);
  if (request.reuse) return run_reuse(request, plan, *found, out, err);
  std::vector<ProposedSplits> bays;
  for (const NightBay& bay : found->bays) {
    ProposedSplits proposed{splits_of(bay, limits), {}};
    for (std::size_t i = 0; i < proposed.splits.best.size(); ++i)
      proposed.unmet.push_back(unmet_of(plan_text_with(plan, file->text, {{&proposed.splits, i, {}}})));
    bays.push_back(std::move(proposed));
  }
  std::vector<ChosenSplit> chosen;
  if (!request.write.empty() && !choose(request, plan, bays, chosen, err)) return exit_usage;
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

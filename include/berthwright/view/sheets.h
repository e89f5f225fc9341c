#pragma once

#include <span>

#include <berthwright/solve/comparison.h>
#include <berthwright/solve/convert/steps.h>
#include <berthwright/solve/cover/cover.h>
#include <berthwright/solve/load/loads.h>
#include <berthwright/solve/place/stock_jobs.h>
#include <berthwright/solve/site/siting.h>
#include <berthwright/solve/split/reuse.h>
#include <berthwright/solve/split/split.h>
#include <berthwright/view/scene.h>

namespace berthwright {

/// What was worked out of a plan beside its answer, to be drawn with it.
struct WorkedOut {
  std::span<const HeaterPlaces> heaters{};
  std::span<const Conversion> conversions{};
  std::span<const Cover> covers{};
  std::span<const Loads> loads{};
};

/// Every sheet of a plan, numbered in order: a plan of each configuration, then the sections of those that
/// have a bed or a seat, then the clear heights over each bed where something hangs within 36 in, then over
/// thin grey plans what gives heat with its distances, where each of `heaters` may stand and what each rule
/// takes, in every configuration and in all at once that a place is sought for, the ways out, and of each of
/// `conversions` what is done step by step; of one without an order a page that says so; then those of
/// `cover_sheets`; of each of `loads` weight, circuits and warming, where the plan states enough of it; last
/// a raised view of each configuration. Each is followed by pages for those of its notes that found no room
/// beside it. All of `worked_out` is of the plan.
std::vector<Sheet> sheets(const Plan& plan, const Answer& answer, const WorkedOut& worked_out = {});

/// The key to the cushions, with every measure and where each lies, and labels to cut out; none where
/// `covers` is empty. Pages are numbered among themselves.
std::vector<Sheet> cover_sheets(const Plan& plan, std::span<const Cover> covers);

/// The proposals for each bay side by side: by day at the left, by night at the right, one row a proposal. A
/// bay without a proposal has none. Of splits of the plan; pages are numbered among themselves.
std::vector<Sheet> split_sheets(const Plan& plan, const std::vector<BaySplits>& bays);
/// A sheet for each bay with the plan's own cushions as they close it best, by night.
std::vector<Sheet> reuse_sheets(const Plan& plan, const std::vector<BayReuse>& bays);

/// A sheet for every piece of stock that parts are cut from, to scale: parts by number and name, the cuts in
/// their order, what is worth keeping, the way of grain or nap. Of jobs of the plan.
std::vector<Sheet> placing_sheets(const Plan& plan, const StockList& stock, const StockJobs& jobs);

/// The plans, the heat, the ways out and the numbers of each pair side by side on pages of double width, A at
/// the left, both at one scale; then every figure that differs as a table. Pages are numbered by their files.
std::vector<Sheet> compare_sheets(const Comparison& comparison);

/// Width of `words` set in the lettering font at `height`, from its advance table without kerning, rounded
/// up.
PaperLength text_width(std::string_view words, PaperLength height);

/// Does some lettering of the sheet have letters that the lettering font lacks?
bool lacks_letters(const Sheet& sheet);

/// Two boxes of lettering that meet, or lettering off the page; empty when the sheet is clean. `sheets`
/// throws std::logic_error rather than return a sheet for which this is not empty.
std::vector<std::string> lettering_faults(const Sheet& sheet);

}  // namespace berthwright

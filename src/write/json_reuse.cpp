#include <berthwright/write/outputs.h>

#include <algorithm>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/reuse_words.h"
#include "write/json_bay.h"

namespace berthwright {
namespace {

using ReuseJson = nlohmann::ordered_json;

ReuseJson laid_in(const OwnCushion& own, const RelaidCushion* laid) {
  const Rect box = own.outline.bounds();
  ReuseJson json{{"id", own.id.text()},
                 {"length_mm", millimetres(std::max(box.width(), box.height()))},
                 {"width_mm", millimetres(std::min(box.width(), box.height()))},
                 {"thickness_mm", millimetres(own.thickness)},
                 {"laid", laid != nullptr}};
  if (laid == nullptr) return json;
  json["by_night"] = rectangle_in<ReuseJson>(laid->at);
  json["quarter_turns"] = laid->quarters;
  json["underside_up"] = laid->flipped;
  json["where_it_lies_now"] = laid->stays;
  return json;
}

double square_millimetres(Area area) {
  return static_cast<double>(area.doubled()) / 2 / ticks_per_mm / ticks_per_mm;
}

ReuseJson reuse_in(const Plan& plan, const BayReuse& of) {
  const Reuse& reuse = of.reuse;
  ReuseJson cushions = ReuseJson::array();
  for (std::size_t i = 0; i < reuse.cushions.size(); ++i) {
    const auto laid = std::ranges::find(reuse.laid, i, &RelaidCushion::cushion);
    cushions.push_back(laid_in(reuse.cushions[i], laid == reuse.laid.end() ? nullptr : &*laid));
  }
  std::string sentence = reuse_heading(plan, reuse);
  for (const std::string& more : shortfall_sentences(plan, reuse)) sentence += " " + more;
  return {{"cushions", cushions},
          {"closes", reuse.closes()},
          {"open", region_in<ReuseJson>(reuse.open)},
          {"open_mm2", square_millimetres(reuse.open.area())},
          {"least_open_mm2", square_millimetres(reuse.least_open)},
          {"widest_gap_mm", millimetres(reuse.widest_gap)},
          {"overhang", region_in<ReuseJson>(reuse.overhang)},
          {"ridge_mm", millimetres(reuse.ridge)},
          {"sets", reuse.choices},
          {"given_up_by_area", reuse.skipped},
          {"laid_on_trial", reuse.stages},
          {"given_up_early", reuse.pruned},
          {"complete", reuse.complete},
          {"sentence", sentence}};
}

}  // namespace

std::string reuse_json(const Plan& plan, const std::vector<BayReuse>& bays,
                       const std::vector<OffLevel>& off_level) {
  ReuseJson all = ReuseJson::array();
  for (const BayReuse& of : bays) {
    ReuseJson bay = bay_in<ReuseJson>(of.bay);
    bay["reuse"] = reuse_in(plan, of);
    all.push_back(std::move(bay));
  }
  return text_of(ReuseJson{{"schema_version", schema_version},
                           {"title", plan->title.title},
                           {"unit", plan->unit == Unit::inch ? "in" : "mm"},
                           {"exit_code", exit_code(bays)},
                           {"bays", all},
                           {"off_level", off_level_in<ReuseJson>(plan, off_level)},
                           {"caution", caution_line(plan->english)}});
}

}  // namespace berthwright

#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "write/json_bay.h"

namespace berthwright {
namespace {

using SplitJson = nlohmann::ordered_json;

std::string_view use_word(SplitPiece::Use use) {
  return use == SplitPiece::Use::seat ? "seat" : use == SplitPiece::Use::back ? "back" : "filler";
}

std::string_view stands_word(BackManner manner) {
  return manner == BackManner::on_seat       ? "on the seat"
         : manner == BackManner::behind_seat ? "behind the seat"
                                             : "behind the seat, by night too";
}

std::string_view change_word(SplitCure::Kind kind) {
  switch (kind) {
    case SplitCure::Kind::filler:
      return "filler";
    case SplitCure::Kind::higher_back:
      return "higher back";
    case SplitCure::Kind::narrower_piece:
      return "narrower cushion";
    case SplitCure::Kind::deeper_benches:
      return "deeper benches";
    case SplitCure::Kind::pressed_together:
      return "pressed together";
  }
  return "";
}

SplitJson split_in(const Plan& plan, const NightBay& bay, const Split& split,
                   const std::vector<std::string>& others) {
  const std::vector<CushionName> names = cushion_names(plan, bay, split, others);
  SplitJson cushions = SplitJson::array();
  for (std::size_t i = 0; i < names.size(); ++i) {
    const SplitPiece& piece = split.pieces[i];
    cushions.push_back(
        {{"id", names[i].id},
         {"name", names[i].name},
         {"use", use_word(piece.use)},
         {"bench", piece.bench.text()},
         {"length_mm", millimetres(std::max(piece.length, piece.width))},
         {"width_mm", millimetres(std::min(piece.length, piece.width))},
         {"by_day", piece.by_day ? rectangle_in<SplitJson>(*piece.by_day) : SplitJson(nullptr)},
         {"by_night", rectangle_in<SplitJson>(piece.by_night)},
         {"cut_out", region_in<SplitJson>(piece.kept_out)}});
  }
  SplitJson backs = SplitJson::array();
  for (std::size_t i = 0; i < bay.lids.size(); ++i)
    backs.push_back({{"bench", bay.lids[i].bench.text()},
                     {"stands", stands_word(split.manners[i])},
                     {"height_mm", millimetres(split.heights[i])}});
  return {{"backs", backs},
          {"backs_end_at_corners", split.short_backs},
          {"cushions", cushions},
          {"fillers", split.fillers},
          {"sizes", split.sizes},
          {"backs_beyond_ease", split.beyond_ease},
          {"seats_moved", split.moved},
          {"seams_under_hips_mm", millimetres(split.hip_seams)},
          {"seams_under_shoulders_mm", millimetres(split.shoulder_seams)},
          {"seams_mm", millimetres(split.seams)},
          {"seam_lines", split.seam_lines},
          {"gap", split.gap ? rectangle_in<SplitJson>(*split.gap) : SplitJson(nullptr)},
          {"heaviest_foam_g", static_cast<double>(split.heaviest.units()) / mass_units_per_gram},
          {"foam_price",
           split.foam ? SplitJson(static_cast<double>(split.foam->hundredths) / 100) : SplitJson(nullptr)},
          {"sentence", split_heading(plan, bay, split) + " " + split_reasons(plan, split)}};
}

}  // namespace

std::string split_json(const Plan& plan, const std::vector<ProposedSplits>& bays,
                       const std::vector<OffLevel>& off_level) {
  SplitJson all = SplitJson::array();
  std::vector<std::string> others;
  for (const ProposedSplits& of : bays) {
    const NightBay& bay = of.splits.bay;
    SplitJson proposals = SplitJson::array();
    for (std::size_t i = 0; i < of.splits.best.size(); ++i) {
      proposals.push_back(split_in(plan, bay, of.splits.best[i], others));
      proposals.back()["unmet"] = i < of.unmet.size() ? of.unmet[i] : std::vector<std::string>{};
    }
    SplitJson changes = SplitJson::array();
    for (const SplitCure& cure : of.splits.cures)
      changes.push_back({{"change", change_word(cure.kind)},
                         {"by_mm", millimetres(cure.by)},
                         {"sentence", split_cure_sentence(plan, bay, cure)}});
    SplitJson one = bay_in<SplitJson>(bay);
    one["proposals"] = std::move(proposals);
    one["changes"] = std::move(changes);
    one["candidates"] = of.splits.candidates;
    one["given_up_by_area"] = of.splits.by_area;
    one["closed"] = of.splits.closed;
    one["laid_on_trial"] = of.splits.stages;
    one["given_up_early"] = of.splits.pruned;
    one["complete"] = of.splits.complete;
    all.push_back(std::move(one));
    add_ids(others, plan, of.splits);
  }
  return text_of(SplitJson{{"schema_version", schema_version},
                           {"title", plan->title.title},
                           {"unit", plan->unit == Unit::inch ? "in" : "mm"},
                           {"exit_code", exit_code(bays)},
                           {"bays", all},
                           {"off_level", off_level_in<SplitJson>(plan, off_level)},
                           {"caution", caution_line(plan->english)}});
}

}  // namespace berthwright

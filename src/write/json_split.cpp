#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/split_words.h"
#include "write/in_json.h"

namespace berthwright {
namespace {

using SplitJson = nlohmann::ordered_json;

SplitJson rect_json(const Rect& rect) {
  return {{"corner", place_in<SplitJson>(rect.low)}, {"opposite", place_in<SplitJson>(rect.high)}};
}

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
  }
  return "";
}

SplitJson split_in(const Plan& plan, const NightBay& bay, const Split& split,
                   const std::vector<std::string>& others) {
  const std::vector<CushionName> names = cushion_names(plan, bay, split, others);
  SplitJson cushions = SplitJson::array();
  for (std::size_t i = 0; i < names.size(); ++i) {
    const SplitPiece& piece = split.pieces[i];
    cushions.push_back({{"id", names[i].id},
                        {"name", names[i].name},
                        {"use", use_word(piece.use)},
                        {"bench", piece.bench.text()},
                        {"length_mm", millimetres(std::max(piece.length, piece.width))},
                        {"width_mm", millimetres(std::min(piece.length, piece.width))},
                        {"by_day", piece.by_day ? rect_json(*piece.by_day) : SplitJson(nullptr)},
                        {"by_night", rect_json(piece.by_night)},
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
    SplitJson benches = SplitJson::array();
    for (const Lid& lid : bay.lids) benches.push_back(lid.bench.text());
    all.push_back({{"benches", benches},
                   {"boards", bay.boards},
                   {"day", bay.day->id.text()},
                   {"night", bay.night->id.text()},
                   {"level_mm", millimetres(bay.level)},
                   {"bounds", rect_json(bay.bounds())},
                   {"proposals", proposals},
                   {"changes", changes},
                   {"candidates", of.splits.candidates},
                   {"closed", of.splits.closed},
                   {"laid_on_trial", of.splits.stages},
                   {"given_up_early", of.splits.pruned},
                   {"complete", of.splits.complete}});
    add_ids(others, plan, of.splits);
  }
  SplitJson off = SplitJson::array();
  for (const OffLevel& one : off_level)
    off.push_back({{"board", one.board},
                   {"bench", one.bench},
                   {"above_mm", millimetres(one.above)},
                   {"sentence", off_level_sentence(plan, one)}});
  return text_of(SplitJson{{"schema_version", schema_version},
                           {"title", plan->title.title},
                           {"unit", plan->unit == Unit::inch ? "in" : "mm"},
                           {"exit_code", exit_code(bays)},
                           {"bays", all},
                           {"off_level", off},
                           {"caution", caution_line(plan->english)}});
}

}  // namespace berthwright

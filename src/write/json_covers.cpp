#include <berthwright/write/cut_list.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/cover_words.h"
#include "view/cushion_words.h"
#include "view/shape_words.h"
#include "write/in_json.h"

namespace berthwright {
namespace {

using CutJson = nlohmann::ordered_json;

CutJson lengths(const std::vector<Length>& all) {
  CutJson list = CutJson::array();
  for (const Length length : all) list.push_back(millimetres(length));
  return list;
}

CutJson length_or_null(const std::optional<Length>& length) {
  return length ? CutJson(millimetres(*length)) : CutJson(nullptr);
}

CutJson side_json(const std::optional<Wall>& side) {
  return side ? CutJson(word(term_of(*side), English::american)) : CutJson(nullptr);
}

CutJson sight_json(const EdgeSight& sight) {
  return {{"configuration", sight.configuration->id.text()},
          {"sight", word(sight.kind)},
          {"covered_thousandths", sight.covered.thousandths},
          {"by", sight.by}};
}

CutJson edge_json(const Cover& cover, std::size_t number) {
  const RimEdge& edge = cover.rim.edges[number];
  CutJson sights = CutJson::array();
  for (const EdgeSight& sight : cover.zip.place.sights[number]) sights.push_back(sight_json(sight));
  return {{"name", edge_name(edge)},
          {"from", place_in<CutJson>(edge.path.front())},
          {"to", place_in<CutJson>(edge.path.back())},
          {"length_mm", millimetres(edge.length)},
          {"straight", edge.is_straight()},
          {"sights", sights}};
}

CutJson foam_json(const Cover& cover) {
  if (!cover.foam) return nullptr;
  const FoamBlank& foam = *cover.foam;
  return {{"grade", cover.piece->material},
          {"outline", region_in<CutJson>(Region(foam.outline))},
          {"length_mm", millimetres(foam.length)},
          {"width_mm", millimetres(foam.width)},
          {"thickness_mm", millimetres(foam.thickness)},
          {"weight_kg", foam.weight
                            ? CutJson(static_cast<double>(foam.weight->units()) / 1000 / mass_units_per_gram)
                            : CutJson(nullptr)}};
}

CutJson lay_json(const PanelLay& lay) {
  CutJson begins = nullptr;
  if (lay.begins)
    begins = {{"along_mm", millimetres(lay.begins->along)}, {"across_mm", millimetres(lay.begins->across)}};
  return {{"turned", lay.turned},
          {"along_mm", millimetres(lay.along)},
          {"across_mm", millimetres(lay.across)},
          {"widths_mm", lengths(lay.widths)},
          {"takes_mm", millimetres(lay.takes)},
          {"begins", begins}};
}

CutJson panel_json(const Cover& cover) {
  return {{"count", cover.shaped && cover.shaped->shape == CoverShape::board_backed ? 1 : 2},
          {"outline", region_in<CutJson>(Region(cover.panel.outline))},
          {"length_mm", millimetres(cover.panel.length)},
          {"width_mm", millimetres(cover.panel.width)},
          {"sharp", cover.panel.sharp},
          {"bottom_is_mirror_image", !cover.panel.symmetric},
          {"fit", word(cover.lay.fit)},
          {"up", side_json(cover.up)},
          {"lay", lay_json(cover.lay)}};
}

CutJson shaped_json(const Plan& plan, const Cover& cover) {
  if (!cover.shaped) return nullptr;
  CutJson parts = CutJson::array();
  for (const ShapedPart& part : cover.shaped->parts)
    parts.push_back({{"what", word(part.what)},
                     {"count", part.count},
                     {"length_mm", millimetres(part.length)},
                     {"width_mm", millimetres(part.width)}});
  return {{"reckoned", cover.shaped->reckoned()},
          {"parts", parts},
          {"zip_mm", millimetres(cover.shaped->zip)},
          {"zip_edge", cover.zip.place.edge},
          {"sentences", shape_sentences(plan, cover)}};
}

CutJson glue_json(const Cover& cover) {
  if (!cover.glued) return nullptr;
  CutJson layers = CutJson::array();
  for (const FoamLayer& layer : cover.glued->layers)
    layers.push_back({{"sheet_length_mm", millimetres(layer.sheet.length)},
                      {"sheet_width_mm", millimetres(layer.sheet.width)},
                      {"thickness_mm", millimetres(layer.sheet.thickness)},
                      {"turned", layer.turned},
                      {"along_mm", lengths(layer.along)},
                      {"across_mm", lengths(layer.across)}});
  return layers;
}

CutJson boxing_json(const Cover& cover) {
  CutJson strips = CutJson::array(), joins = CutJson::array();
  for (const BoxingStrip& strip : cover.boxing.strips)
    strips.push_back({{"finished_mm", millimetres(strip.finished)}, {"cut_mm", millimetres(strip.cut)}});
  for (const BoxingJoin& join : cover.boxing.joins)
    joins.push_back({{"at_mm", millimetres(join.at)},
                     {"edge", join.edge},
                     {"front", join.front},
                     {"seen_in", join.seen}});
  return {{"cut_width_mm", millimetres(cover.boxing.width)},
          {"finished_mm", millimetres(cover.boxing.finished)},
          {"strips", strips},
          {"joins", joins},
          {"along_roll", cover.boxing.along_roll},
          {"joins_anywhere", cover.boxing.joins_anywhere},
          {"marks_mm", lengths(cover.boxing.marks)}};
}

CutJson zip_json(const Plan& plan, const Cover& cover) {
  return {{"edge", cover.zip.place.edge},
          {"down_on_edge", side_json(cover.zip.place.down)},
          {"round_corner_before_mm", millimetres(cover.zip.before)},
          {"round_corner_after_mm", millimetres(cover.zip.after)},
          {"finished_mm", millimetres(cover.zip.finished)},
          {"strip_cut_length_mm", millimetres(cover.zip.cut_length)},
          {"strip_cut_width_mm", millimetres(cover.zip.cut_width)},
          {"marks_mm", lengths(cover.zip.marks)},
          {"sentence", zip_sentence(plan, cover)}};
}

CutJson sewing_json(const Sewing& sewing) {
  const FoamRule& foam = foam_rule(sewing.foam_cut);
  const Fabric& fabric = sewing.fabric;
  CutJson repeat = nullptr;
  if (fabric.repeat)
    repeat = {{"along_mm", millimetres(fabric.repeat->along)},
              {"across_mm", millimetres(fabric.repeat->across)},
              {"half_drop", fabric.repeat->half_drop}};
  return {{"fabric", fabric.name},
          {"fabric_width_mm", millimetres(fabric.width)},
          {"fabric_roll_mm", length_or_null(fabric.roll)},
          {"one_way", fabric.one_way},
          {"up", fabric.up_across ? "across" : "along"},
          {"repeat", repeat},
          {"seam_allowance_mm", millimetres(sewing.seam_allowance)},
          {"welt_mm", length_or_null(sewing.welt)},
          {"batting", sewing.batting},
          {"shape", word(sewing.shape)},
          {"zip_edge", side_json(sewing.zip_edge)},
          {"foam_cut", foam.name},
          {"foam_source", source_in<CutJson>(foam.source)}};
}

CutJson cover_json(const Plan& plan, const Cover& cover, const std::string& letter) {
  CutJson edges = CutJson::array();
  for (std::size_t e = 0; e < cover.rim.edges.size(); ++e) edges.push_back(edge_json(cover, e));
  const Piece& piece = *cover.piece;
  CutJson json{{"piece", piece.id.text()},
               {"letter", letter},
               {"length_mm", millimetres(piece.length)},
               {"width_mm", millimetres(piece.width)},
               {"thickness_mm", millimetres(piece.thickness)},
               {"perimeter_mm", millimetres(cover.rim.perimeter)},
               {"edges", edges},
               {"sewing", sewing_json(cover.sewing)},
               {"foam", foam_json(cover)},
               {"glue_up", glue_json(cover)},
               {"panels", cover.has_panel() ? panel_json(cover) : CutJson(nullptr)},
               {"boxing", cover.shaped ? CutJson(nullptr) : boxing_json(cover)},
               {"zip", cover.shaped ? CutJson(nullptr) : zip_json(plan, cover)},
               {"shaped", shaped_json(plan, cover)},
               {"problems", cut_problems(plan, plan->sewing, cover)}};
  json["welt"] = nullptr;
  if (cover.welt)
    json["welt"] = {{"length_mm", millimetres(cover.welt->length)},
                    {"strips", cover.welt->strips.count},
                    {"strip_width_mm", millimetres(cover.welt->strip_width)},
                    {"of_roll_mm", millimetres(cover.welt->strips.of_roll)}};
  json["batting"] = nullptr;
  if (cover.batting)
    json["batting"] = {{"length_mm", millimetres(cover.batting->length)},
                       {"width_mm", millimetres(cover.batting->width)},
                       {"strip_length_mm", millimetres(cover.batting->strip_length)},
                       {"strip_width_mm", millimetres(cover.batting->strip_width)}};
  return json;
}

}  // namespace

std::string cut_json(const Plan& plan, const Sewing& sewing, const std::vector<Cover>& covers) {
  CutJson json{{"schema_version", schema_version},
               {"title", plan->title.title},
               {"unit", plan->unit == Unit::inch ? "in" : "mm"},
               {"exit_code", exit_code(plan, covers)}};
  json["sewing"] = sewing_json(sewing);
  json["cushions"] = CutJson::array();
  const std::vector<std::string> letters = cover_letters(plan, covers);
  for (std::size_t i = 0; i < covers.size(); ++i)
    json["cushions"].push_back(cover_json(plan, covers[i], letters[i]));
  json["rules"] = cutting_rules(plan, sewing);
  json["notes"] = cutting_notes();
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

}  // namespace berthwright

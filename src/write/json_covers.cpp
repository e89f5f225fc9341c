#include <berthwright/write/cut_list.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/cover_words.h"
#include "write/in_json.h"

namespace berthwright {
namespace {

using CutJson = nlohmann::ordered_json;

CutJson lengths(const std::vector<Length>& all) {
  CutJson list = CutJson::array();
  for (const Length length : all) list.push_back(millimetres(length));
  return list;
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

CutJson panel_json(const Cover& cover) {
  return {{"count", 2},
          {"outline", region_in<CutJson>(Region(cover.panel.outline))},
          {"length_mm", millimetres(cover.panel.length)},
          {"width_mm", millimetres(cover.panel.width)},
          {"sharp", cover.panel.sharp},
          {"bottom_is_mirror_image", !cover.panel.symmetric},
          {"fit", word(cover.fit)},
          {"up", side_json(cover.up)}};
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

CutJson cover_json(const Plan& plan, const Cover& cover) {
  CutJson edges = CutJson::array();
  for (std::size_t e = 0; e < cover.rim.edges.size(); ++e) edges.push_back(edge_json(cover, e));
  const Piece& piece = *cover.piece;
  CutJson json{{"piece", piece.id.text()},
               {"length_mm", millimetres(piece.length)},
               {"width_mm", millimetres(piece.width)},
               {"thickness_mm", millimetres(piece.thickness)},
               {"perimeter_mm", millimetres(cover.rim.perimeter)},
               {"edges", edges},
               {"foam", foam_json(cover)},
               {"panels", panel_json(cover)},
               {"boxing", boxing_json(cover)},
               {"zip", zip_json(plan, cover)}};
  json["welt"] = nullptr;
  if (cover.welt)
    json["welt"] = {{"length_mm", millimetres(cover.welt->length)},
                    {"strips", cover.welt->strips.count},
                    {"strip_width_mm", millimetres(welt_strip_width)},
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
  const FoamRule& foam = foam_rule(sewing.foam_cut);
  json["sewing"] = {{"fabric", sewing.fabric},
                    {"fabric_width_mm", millimetres(sewing.fabric_width)},
                    {"seam_allowance_mm", millimetres(sewing.seam_allowance)},
                    {"one_way", sewing.one_way},
                    {"foam_cut", foam.name},
                    {"foam_source", source_in<CutJson>(foam.source)}};
  json["cushions"] = CutJson::array();
  for (const Cover& cover : covers) json["cushions"].push_back(cover_json(plan, cover));
  json["bolsters_not_reckoned"] = CutJson::array();
  for (const Piece& piece : plan->pieces)
    if (piece.kind == Piece::Kind::bolster) json["bolsters_not_reckoned"].push_back(piece.id.text());
  json["rules"] = cutting_rules(plan, sewing);
  json["notes"] = cutting_notes();
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

}  // namespace berthwright

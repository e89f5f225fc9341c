#include <berthwright/write/outputs.h>

#include <nlohmann/json.hpp>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "write/in_json.h"
#include "write/json_figures.h"

namespace berthwright {
namespace {

using Json = nlohmann::ordered_json;

Json place(const Point& p) { return place_in<Json>(p); }
Json place(const Point3& p) { return place_in<Json>(p); }
Json source_json(const Source& source) { return source_in<Json>(source); }

Json quantity(const Quantity& value, Unit own, Rounding rounding) {
  return quantity_in<Json>(value, own, rounding);
}

Json rectangle_json(const TurnedRectangle& rectangle) {
  Json corners = Json::array();
  for (const Point& corner : rectangle.corners) corners.push_back(place(corner));
  return {{"length_mm", millimetres(rectangle.length)},
          {"width_mm", millimetres(rectangle.width)},
          {"turn_degrees", static_cast<double>(rectangle.turn.microdegrees()) / 1e6},
          {"corners", corners}};
}

Json maybe(const std::optional<TurnedRectangle>& rectangle) {
  return rectangle ? rectangle_json(*rectangle) : Json(nullptr);
}

std::string face_json(const ApplianceFace& face) {
  switch (face.kind) {
    case ApplianceFace::Kind::front:
      return "front";
    case ApplianceFace::Kind::back:
      return "back";
    case ApplianceFace::Kind::top:
      return "top";
    case ApplianceFace::Kind::underside:
      return "underside";
    case ApplianceFace::Kind::side:
      return "side toward " + std::string(word(term_of(face.toward), English::american));
  }
  throw std::logic_error("ApplianceFace::Kind out of range");
}

Json finding_json(const Plan& plan, const Finding& finding) {
  const Rule& rule = *find_rule(finding.rule.text());
  const Rounding measured = rule.at_least ? Rounding::down : Rounding::up;
  const Rounding compared = rule.at_least ? Rounding::up : Rounding::down;
  Json json{{"rule", finding.rule.text()},
            {"weight", word(term_of(rule.weight), English::american)},
            {"status", word(term_of(finding.status), English::american)},
            {"configuration", finding.configuration.text()},
            {"bed", finding.bed.text()},
            {"subjects", finding.subjects},
            {"variant", finding.variant}};
  json["measured"] = finding.measured ? quantity(*finding.measured, plan->unit, measured) : Json(nullptr);
  json["compared"] = finding.compared ? quantity(*finding.compared, plan->unit, compared) : Json(nullptr);
  json["besides"] = Json::array();
  for (const Quantity& figure : finding.besides)
    json["besides"].push_back(quantity(figure, plan->unit, Rounding::nearest));
  json["margin_mm"] = finding.margin ? Json(millimetres(*finding.margin)) : Json(nullptr);
  json["source"] = source_json(finding.source);
  json["override_reason"] = finding.override_reason;
  json["where"] = Json::array();
  for (const Point3& at : finding.where) json["where"].push_back(place(at));
  json["before"] = Json::array();
  for (const ApplianceFace& face : finding.before) json["before"].push_back(face_json(face));
  json["sentence"] = sentence(plan, finding);
  json["cure"] = cure_sentence(plan, finding);
  return json;
}

Json person_json(const PersonRoom& person) {
  return {{"name", person.person->name},
          {"place", maybe(person.place)},
          {"lying_length_mm", millimetres(person.lying ? person.lying->length : Length{})},
          {"width_mm", millimetres(person.width)},
          {"suits_stature_mm", millimetres(person.suits_stature)}};
}

Json clear_height_json(const ClearHeight& part, Unit unit) {
  const Rect bounds = part.region.bounds();
  return {{"what", part.what},
          {"height_mm", millimetres(part.height)},
          {"area", quantity(part.region.area(), unit, Rounding::down)},
          {"from", place(bounds.low)},
          {"to", place(bounds.high)}};
}

Json way_json(const WayOut& way) {
  Json path = Json::array();
  for (const Point& at : way.way.path) path.push_back(place(at));
  Json pinch = Json::array();
  if (way.reached()) pinch = {place(way.way.left), place(way.way.right)};
  return {{"door", way.door},
          {"width_mm", way.reached() ? Json(millimetres(way.width)) : Json(nullptr)},
          {"why_not", way.end == WayOut::End::no_free_edge ? "no free edge"
                      : way.end == WayOut::End::no_way     ? "no way"
                                                           : ""},
          {"between", way.reached() ? Json{way.left, way.right} : Json::array()},
          {"pinch", pinch},
          {"path", path}};
}

Json opening_json(const ExitOpening& one) {
  const Sides& clear = one.clear.for_vehicle;
  return {{"id", one.clear.opening->id.text()},
          {"clear_across_mm", millimetres(clear.length)},
          {"clear_high_mm", millimetres(clear.width)},
          {"behind", one.clear.blocked_by},
          {"swing_meets", one.swing.blocked_by}};
}

Json bed_json(const Plan& plan, const BedAnswer& answer) {
  const SleepingRoom& room = answer.room;
  Json json{
      {"id", answer.bed->id.text()},
      {"name", answer.bed->name},
      {"configuration", answer.bed->configuration.text()},
      {"level_mm", millimetres(answer.mattress.level)},
      {"area", quantity(room.area, plan->unit, Rounding::down)},
      {"largest_rectangle", maybe(room.largest)},
      {"largest_rectangle_turned", maybe(room.largest_turned)},
      {"largest_rectangle_once_levelled", answer.levelled ? maybe(answer.levelled->largest) : Json(nullptr)},
      {"longest_24_in_wide", maybe(room.longest)},
      {"fits", quantity(room.fits, plan->unit, Rounding::down)},
      {"least_clear_height_mm", millimetres(room.least_clear_height)},
      {"sitting_head_room_mm", room.sitting ? Json(millimetres(room.sitting->head_room)) : Json(nullptr)}};
  json["clear_heights"] = Json::array();
  for (const ClearHeight& part : room.overhead)
    json["clear_heights"].push_back(clear_height_json(part, plan->unit));
  json["sizes_held"] = Json::array();
  for (const SizeHeld& size : room.sizes)
    if (size.held) json["sizes_held"].push_back(size.size->name);
  json["people"] = Json::array();
  for (const PersonRoom& person : room.people) json["people"].push_back(person_json(person));
  json["gaps"] = Json::array();
  for (const Gap& gap : answer.mattress.gaps)
    json["gaps"].push_back({{"width_mm", millimetres(gap.width)},
                            {"where", place(gap.where)},
                            {"at_wall", gap.at_wall},
                            {"at_corner", gap.at_corner}});
  json["ridges"] = Json::array();
  for (const Ridge& ridge : answer.mattress.ridges)
    json["ridges"].push_back({{"lower", ridge.lower.text()},
                              {"higher", ridge.higher.text()},
                              {"step_mm", millimetres(ridge.step)},
                              {"where", place(ridge.where)}});
  json["ways_out"] = Json::array();
  for (const WayOut& way : answer.exits.ways) json["ways_out"].push_back(way_json(way));
  json["ways_that_count"] = answer.exits.counted;
  return json;
}

Json seat_json(const Seat& seat) {
  const auto known = [&](Length length) { return seat.faces ? Json(millimetres(length)) : Json(nullptr); };
  const auto part = [](const auto& maybe, auto member) {
    return maybe ? Json(millimetres((*maybe).*member)) : Json(nullptr);
  };
  return {{"cushions", seat.cushions},
          {"faces", seat.faces ? Json(word(term_of(*seat.faces), English::american)) : Json(nullptr)},
          {"backs", seat.backs},
          {"height_mm", millimetres(seat.height)},
          {"depth_mm", known(seat.depth)},
          {"length_mm", known(seat.length)},
          {"way_in_mm", known(seat.way_in)},
          {"back_height_mm", seat.back_height ? Json(millimetres(*seat.back_height)) : Json(nullptr)},
          {"head_room_mm", part(seat.head_room, &HeadRoom::height)},
          {"table", seat.table ? Json(seat.table->table) : Json(nullptr)},
          {"thigh_room_mm", part(seat.table, &SeatTable::thigh_room)},
          {"table_top_over_seat_mm", part(seat.table, &SeatTable::top)}};
}

Json reach_json(const LeafReach& reach, const Reach& at) {
  return reach.leaf->hinge ? Json{{"degrees", at.degrees}} : Json{{"mm", millimetres(at.travel)}};
}

Json leaf_json(const LeafReach& reach) {
  Json json{{"id", reach.leaf->id.text()},
            {"fixture", reach.leaf->fixture.text()},
            {"lifted_first", reach.lifted},
            {"made_to_open", reach_json(reach, reach.whole)},
            {"opens", reach.known ? reach_json(reach, reach.free) : Json(nullptr)}};
  json["met"] = Json::array();
  for (const LeafStop& stop : reach.stops)
    json["met"].push_back(
        {{"thing", stop.thing}, {"at", reach_json(reach, stop.at)}, {"where", place(stop.where)}});
  return json;
}

Json plugged_json(const PluggedIn& plugged) {
  const bool reached = plugged.run && plugged.run->reached();
  Json json{{"appliance", plugged.appliance},
            {"cord_mm", plugged.cord ? Json(millimetres(*plugged.cord)) : Json(nullptr)},
            {"outlet", plugged.outlet != nullptr ? Json(plugged.outlet->id.text()) : Json(nullptr)},
            {"outlet_named", plugged.named},
            {"needs_mm", reached ? Json(millimetres(plugged.run->length)) : Json(nullptr)}};
  json["route"] = Json::array();
  if (reached)
    for (const Point3& at : plugged.run->route) json["route"].push_back(place(at));
  return json;
}

Json configuration_json(const ConfigurationAnswer& answer) {
  Json json{{"id", answer.configuration->id.text()}, {"name", answer.configuration->name}};
  json["pieces"] = Json::array();
  for (const Placed& thing : answer.arrangement.things)
    if (thing.piece != nullptr)
      json["pieces"].push_back({{"id", thing.id},
                                {"base_mm", millimetres(thing.solid.base())},
                                {"top_mm", millimetres(thing.solid.top())},
                                {"carried_by", thing.carried_by}});
  json["seats"] = Json::array();
  for (const Seat& seat : answer.seats) json["seats"].push_back(seat_json(seat));
  json["leaves"] = Json::array();
  for (const LeafReach& reach : answer.leaves) json["leaves"].push_back(leaf_json(reach));
  json["exit_openings"] = Json::array();
  for (const ExitOpening& one : answer.exit_openings) json["exit_openings"].push_back(opening_json(one));
  json["heat"] = Json::array();
  for (const HeatDistance& heat : answer.heat)
    json["heat"].push_back(
        {{"source", heat.source},
         {"nearest_to", heat.nearest_to},
         {"made_up", heat.made_up},
         {"distance_mm", millimetres(heat.nearest.squared.floor())},
         {"from", place(heat.nearest.from)},
         {"to", place(heat.nearest.to)},
         {"plate_margin_mm", heat.plate_margin ? Json(millimetres(*heat.plate_margin)) : Json(nullptr)},
         {"shielded_by", heat.shielded_by}});
  json["cords"] = Json::array();
  for (const PluggedIn& plugged : answer.plugged) json["cords"].push_back(plugged_json(plugged));
  return json;
}

Json rule_json(const Rule& rule) {
  return {{"rule", rule.id.text()},
          {"weight", word(term_of(rule.weight), English::american)},
          {"title", rule.title},
          {"meaning", rule.meaning},
          {"limit_mm", rule.limit ? Json(millimetres(*rule.limit)) : Json(nullptr)},
          {"asked", rule.asked},
          {"at_least", rule.at_least},
          {"close_within_mm", millimetres(rule.close_within)},
          {"source", source_json(rule.source)},
          {"caution", rule.caution}};
}

}  // namespace

std::string check_json(const Plan& plan, const Answer& answer) {
  Json json{{"schema_version", schema_version},
            {"title", plan->title.title},
            {"unit", plan->unit == Unit::inch ? "in" : "mm"},
            {"exit_code", exit_code(answer)}};
  json["beds"] = Json::array();
  json["configurations"] = Json::array();
  json["findings"] = Json::array();
  json["defaults"] = Json::array();
  for (const ConfigurationAnswer& configuration : answer.configurations) {
    json["configurations"].push_back(configuration_json(configuration));
    for (const BedAnswer& bed : configuration.beds) json["beds"].push_back(bed_json(plan, bed));
  }
  for (const Finding& finding : answer.findings) json["findings"].push_back(finding_json(plan, finding));
  for (const AppliedDefault& applied : plan->defaults)
    json["defaults"].push_back(
        {{"pointer", applied.pointer}, {"value", applied.value}, {"why", applied.why}});
  json["notes"] = plan->notes;
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

std::string problems_json(const std::string& file, const Problems& problems) {
  Json json{{"schema_version", schema_version}, {"file", file}};
  json["problems"] = Json::array();
  for (const Problem& problem : problems)
    json["problems"].push_back({{"id", problem.id},
                                {"pointer", problem.pointer},
                                {"line", problem.line},
                                {"column", problem.column},
                                {"message", problem.message},
                                {"found", problem.found},
                                {"allowed", problem.allowed},
                                {"cure", problem.cure}});
  return text_of(json);
}

std::string explain_json(const Rule& rule) { return text_of(rule_json(rule)); }

std::string rules_json() {
  Json json = Json::array();
  for (const Rule& rule : all_rules()) json.push_back(rule_json(rule));
  return text_of(json);
}

}  // namespace berthwright

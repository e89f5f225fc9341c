#include <berthwright/write/placing_list.h>

#include <nlohmann/json.hpp>

#include <berthwright/view/words.h>

#include "view/placing_words.h"
#include "write/in_json.h"

namespace berthwright {
namespace {

using PlacingJson = nlohmann::ordered_json;

PlacingJson rect_json(const Rect& rect) {
  return {{"from_end_mm", millimetres(rect.low.x)},
          {"from_edge_mm", millimetres(rect.low.y)},
          {"along_mm", millimetres(rect.width())},
          {"across_mm", millimetres(rect.height())}};
}

PlacingJson mass_json(const std::optional<Mass>& mass) {
  if (!mass) return nullptr;
  return static_cast<double>(mass->units()) / 1000 / mass_units_per_gram;
}

PlacingJson part_json(const StockJob& job, std::size_t number) {
  const StockPart& part = job.task.parts[number];
  const JobPart& what = job.parts[number];
  return {{"number", number + 1},
          {"name", part.id},
          {"piece", what.piece == nullptr ? PlacingJson(nullptr) : PlacingJson(what.piece->id.text())},
          {"length_mm", millimetres(part.length)},
          {"width_mm", millimetres(part.width)},
          {"count", part.count},
          {"lies", word(part.lay)},
          {"by_its_box", what.by_its_box}};
}

PlacingJson stock_cut_json(const StockJob& job, const StockCut& cut, const std::string& label, Unit own) {
  const StockKind& kind = job.task.stock[cut.kind];
  PlacingJson places = PlacingJson::array(), cuts = PlacingJson::array(), offcuts = PlacingJson::array();
  for (const StockPlace& place : cut.places)
    places.push_back({{"part", place.part + 1},
                      {"at", rect_json(place.at)},
                      {"turned", place.turned},
                      {"sentence", stock_place_sentence(job, place, own)}});
  for (const ThroughCut& through : cut.cuts)
    cuts.push_back({{"piece", rect_json(through.piece)},
                    {"crosswise", through.crosswise},
                    {"at_mm", millimetres(through.at)},
                    {"stage", through.stage},
                    {"sentence", through_cut_sentence(through, own)}});
  for (const Rect& offcut : cut.offcuts) offcuts.push_back(rect_json(offcut));
  return {{"label", label},
          {"stock", kind.id},
          {"remnant", kind.remnant},
          {"length_mm", millimetres(cut.length)},
          {"width_mm", millimetres(kind.width)},
          {"trim_mm", millimetres(kind.trim)},
          {"price_hundredths", cut.price},
          {"places", places},
          {"cuts", cuts},
          {"offcuts", offcuts}};
}

PlacingJson taken_json(const StockJob& job, const StockTaken& taken) {
  const StockKind& kind = job.task.stock[taken.kind];
  return {{"stock", kind.id},
          {"remnant", kind.remnant},
          {"count", taken.count},
          {"length_mm", millimetres(taken.length)},
          {"width_mm", millimetres(kind.width)},
          {"cost_hundredths", taken.cost},
          {"weight_kg", mass_json(taken.weight)}};
}

PlacingJson cost_json(const StockList& stock, const StockJob& job) {
  return {{"cost_hundredths", job.placing.cost},
          {"bound_hundredths", job.placing.bound},
          {"bound_by", word(job.placing.bound_kind)},
          {"proven", job.placing.proven()},
          {"sentence", cost_sentence(job, stock.currency)}};
}

PlacingJson use_json(const StockJob& job) {
  const StockUse use = stock_use(job);
  const auto thousandths = [&](Area part) {
    return use.stock == Area{} ? 0 : static_cast<std::int64_t>(part.doubled() * 1000 / use.stock.doubled());
  };
  return {{"parts_thousandths", thousandths(use.parts)},
          {"kept_thousandths", thousandths(use.kept)},
          {"waste_thousandths", thousandths(use.stock - use.parts - use.kept)},
          {"sentence", use_sentence(job)}};
}

PlacingJson job_json(const StockList& stock, const StockJob& job, std::size_t number, Unit own) {
  const StockMaterial& material = *job.material;
  PlacingJson parts = PlacingJson::array(), sheets = PlacingJson::array();
  PlacingJson unplaced = PlacingJson::array(), taken = PlacingJson::array();
  for (std::size_t p = 0; p < job.task.parts.size(); ++p) parts.push_back(part_json(job, p));
  for (std::size_t c = 0; c < job.placing.cuts.size(); ++c)
    sheets.push_back(stock_cut_json(job, job.placing.cuts[c], stock_label(number, c), own));
  for (const UnplacedPart& part : job.placing.unplaced)
    unplaced.push_back({{"part", part.part + 1},
                        {"count", part.count},
                        {"why", word(part.fault)},
                        {"sentence", unplaced_sentence(job, part, own)}});
  for (const StockTaken& one : stock_taken(job)) taken.push_back(taken_json(job, one));
  return {{"goods", word(material.goods)},
          {"material", material.name},
          {"thickness_mm",
           material.thickness ? PlacingJson(millimetres(*material.thickness)) : PlacingJson(nullptr)},
          {"cut", word(material.manner)},
          {"stages", material.stages ? PlacingJson(*material.stages) : PlacingJson(nullptr)},
          {"kerf_mm", millimetres(material.kerf)},
          {"keep_from_mm", millimetres(material.least_offcut)},
          {"parts", parts},
          {"sheets", sheets},
          {"unplaced", unplaced},
          {"takes", taken},
          {"cost", cost_json(stock, job)},
          {"use", use_json(job)}};
}

PlacingJson without_json(const PartWithoutStock& part, Unit own) {
  return {{"goods", word(part.goods)},
          {"name", part.called},
          {"material", part.material},
          {"thickness_mm", part.thickness ? PlacingJson(millimetres(*part.thickness)) : PlacingJson(nullptr)},
          {"why", word(part.why)},
          {"sentence", without_stock_sentence(part, own)}};
}

}  // namespace

std::string placing_json(const Plan& plan, const StockList& stock, const StockJobs& jobs) {
  const Unit own = plan->unit;
  PlacingJson json{{"schema_version", schema_version},
                   {"title", plan->title.title},
                   {"unit", own == Unit::inch ? "in" : "mm"},
                   {"exit_code", exit_code(jobs)},
                   {"stock", stock.title},
                   {"currency", stock.currency}};
  json["jobs"] = PlacingJson::array();
  for (std::size_t j = 0; j < jobs.jobs.size(); ++j)
    json["jobs"].push_back(job_json(stock, jobs.jobs[j], j, own));
  json["not_placed"] = PlacingJson::array();
  for (const PartWithoutStock& part : jobs.without) json["not_placed"].push_back(without_json(part, own));
  json["stock_notes"] = stock.notes;
  json["notes"] = placing_notes();
  json["caution"] = caution_line(plan->english);
  return text_of(json);
}

}  // namespace berthwright

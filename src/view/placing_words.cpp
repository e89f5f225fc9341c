#include "view/placing_words.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "view/called.h"

namespace berthwright {
namespace {

constexpr LengthStyle sawn_style{.feet = false, .parts = 32};

std::string per_mille_text(std::int64_t thousandths) {
  return std::to_string(thousandths / 10) + "." + std::to_string(thousandths % 10) + " %";
}

// How the piece could be glued up or seamed from what the stock can give.
std::string in_pieces(const StockJob& job, const StockPart& part, Unit own) {
  // A glue-up is reckoned for what may be turned.
  if (part.lay != PartLay::quarters) return {};
  std::vector<FoamSheet> sheets;
  for (const StockKind& kind : job.task.stock)
    sheets.push_back({kind.length - kind.trim * 2, kind.width - kind.trim * 2, one_tick});
  std::erase_if(sheets,
                [](const FoamSheet& sheet) { return std::min(sheet.length, sheet.width) <= Length{}; });
  const auto glued = glue_up(part.length, part.width, one_tick, sheets);
  if (!glued) return {};
  std::string text;
  for (const Length length : glued->layers.front().along)
    for (const Length width : glued->layers.front().across)
      text += (text.empty() ? "" : ", ") + sawn(length, width, own);
  return text;
}

// Exactly: 0.703 in of plywood are no 11/16, and a groove is cut to it.
std::string thick(Length thickness, Unit own) {
  const std::string exact = exact_text(thickness, own);
  return exact.ends_with("mm") ? exact : exact + " (" + metric(thickness) + ")";
}

std::string_view bound_words(CostBoundKind kind) {
  switch (kind) {
    case CostBoundKind::area:
      return "by area";
    case CostBoundKind::sizes:
      return "by the sizes of parts that cannot lie beside each other";
    case CostBoundKind::every_way:
      return "since every way was gone through";
  }
  throw std::logic_error("CostBoundKind out of range");
}

}  // namespace

std::string money_text(std::int64_t hundredths, const std::string& currency) {
  const std::string cents = std::to_string(hundredths % 100);
  return std::to_string(hundredths / 100) + "." + (cents.size() < 2 ? "0" : "") + cents + " " + currency;
}

std::string sawn(Length length, Unit own) { return both(length, own, sawn_style); }

std::string sawn(Length length, Length width, Unit own) {
  const std::string in = imperial(length, sawn_style) + " x " + imperial(width, sawn_style);
  const std::string mm = metric(length) + " x " + metric(width);
  return own == Unit::inch ? in + " (" + mm + ")" : mm + " (" + in + ")";
}

std::string percent_text(Area part, Area whole) {
  if (whole == Area{}) return per_mille_text(0);
  return per_mille_text(static_cast<std::int64_t>(part.doubled() * 1000 / whole.doubled()));
}

std::string_view word(StockGoods goods) {
  switch (goods) {
    case StockGoods::foam:
      return "foam";
    case StockGoods::board:
      return "board";
    case StockGoods::cloth:
      return "cloth";
  }
  throw std::logic_error("StockGoods out of range");
}
std::string_view word(CutManner manner) { return manner == CutManner::through ? "through" : "free"; }
std::string_view word(PartLay lay) {
  switch (lay) {
    case PartLay::quarters:
      return "any way";
    case PartLay::grain:
      return "along the grain";
    case PartLay::nap:
      return "along the nap";
  }
  throw std::logic_error("PartLay out of range");
}
std::string_view word(PlacingFault fault) {
  switch (fault) {
    case PlacingFault::no_stock:
      return "no-stock";
    case PlacingFault::larger_than_any_stock:
      return "larger-than-any-stock";
    case PlacingFault::too_little_stock:
      return "too-little-stock";
  }
  throw std::logic_error("PlacingFault out of range");
}
std::string_view word(PartWithoutStock::Why why) {
  switch (why) {
    case PartWithoutStock::Why::no_material:
      return "no-material";
    case PartWithoutStock::Why::unnamed:
      return "unnamed";
    case PartWithoutStock::Why::patterned:
      return "patterned";
    case PartWithoutStock::Why::not_reckoned:
      return "not-reckoned";
  }
  throw std::logic_error("PartWithoutStock::Why out of range");
}
std::string_view word(CostBoundKind kind) {
  switch (kind) {
    case CostBoundKind::area:
      return "area";
    case CostBoundKind::sizes:
      return "sizes";
    case CostBoundKind::every_way:
      return "every-way";
  }
  throw std::logic_error("CostBoundKind out of range");
}

std::string job_name(const StockJob& job, Unit own) {
  const StockMaterial& material = *job.material;
  std::string text = capital_first(word(material.goods)) + " " + material.name;
  if (material.thickness) text += ", " + thick(*material.thickness, own);
  return text;
}

std::string job_manner(const StockJob& job, Unit own) {
  std::string text = job.task.manner == CutManner::through ? "Through-cuts from edge to edge" : "Cut freely";
  if (job.task.stages)
    text +=
        " in at most " + std::to_string(*job.task.stages) + (*job.task.stages == 1 ? " stage" : " stages");
  return text + ", kerf " + sawn(job.task.kerf, own) + ".";
}

std::string stock_label(std::size_t job, std::size_t cut) {
  std::string letters(1, static_cast<char>('A' + job % 26));
  if (job >= 26) letters += std::to_string(job / 26);
  return letters + std::to_string(cut + 1);
}

std::string stock_piece_words(const StockJob& job, const StockCut& cut, Unit own) {
  const StockKind& kind = job.task.stock[cut.kind];
  std::string text = kind.id + ", " + sawn(cut.length, kind.width, own);
  if (kind.remnant) text += ", a remnant";
  if (kind.trim > Length{}) text += "; trim " + sawn(kind.trim, own) + " off every edge first";
  return text;
}

std::string through_cut_sentence(const ThroughCut& cut, Unit own) {
  const Length from = cut.at - (cut.crosswise ? cut.piece.low.x : cut.piece.low.y);
  return "The piece of " + sawn(cut.piece.width(), cut.piece.height(), own) +
         (cut.crosswise ? " crosswise, " : " lengthwise, ") + sawn(from, own) +
         (cut.crosswise ? " from its end." : " from its edge.");
}

std::string stock_place_sentence(const StockJob& job, const StockPlace& place, Unit own) {
  const StockPart& part = job.task.parts[place.part];
  return std::to_string(place.part + 1) + ", " + part.id + ": " + sawn(place.at.low.x, own) +
         " from the end, " + sawn(place.at.low.y, own) + " from the edge" + (place.turned ? ", turned" : "") +
         ".";
}

// The bound is one of all ways only where no part was left out, and neither defects nor a roll beside other
// stock kept the search from some of them.
bool bound_holds(const StockJob& job) {
  if (job.placing.cost == 0) return true;
  const auto& stock = job.task.stock;
  const bool rolled = std::ranges::any_of(stock, [](const auto& kind) { return kind.sold_by.has_value(); });
  const bool flawed = std::ranges::any_of(stock, [](const auto& kind) { return !kind.defects.empty(); });
  return job.placing.unplaced.empty() && !flawed && (!rolled || stock.size() == 1);
}

std::string cost_sentence(const StockJob& job, const std::string& currency) {
  const Placing& placing = job.placing;
  if (placing.cuts.empty()) return "Nothing is cut.";
  std::string text = "Cost " + money_text(placing.cost, currency) +
                     (placing.unplaced.empty() ? ". " : ", without what has no place. ");
  if (!bound_holds(job)) return text + "Whether it can be cut for less was not proved.";
  const std::string why = std::string(bound_words(placing.bound_kind));
  if (placing.cost == placing.bound) return text + "Nobody cuts it for less, " + why + ".";
  // Rounded up: the gap is never told as smaller than it is.
  const std::int64_t gap = placing.cost - placing.bound;
  const std::int64_t thousandths = (gap * 1000 + placing.cost - 1) / placing.cost;
  return text + "Below " + money_text(placing.bound, currency) + " nobody cuts it, " + why +
         "; between the two, at most " + per_mille_text(thousandths) + ", may lie something cheaper.";
}

std::string use_sentence(const StockJob& job) {
  const StockUse use = stock_use(job);
  return percent_text(use.parts, use.stock) + " of the stock becomes parts, " +
         percent_text(use.kept, use.stock) + " offcuts worth keeping (no side under " +
         metric(job.task.least_offcut) + "), " + percent_text(use.stock - use.parts - use.kept, use.stock) +
         " kerf, trim and waste.";
}

std::string unplaced_sentence(const StockJob& job, const UnplacedPart& unplaced, Unit own) {
  const StockPart& part = job.task.parts[unplaced.part];
  const std::string what = std::to_string(unplaced.count) + " of " + part.id + ", " +
                           sawn(part.length, part.width, own) + ", has no place: ";
  switch (unplaced.fault) {
    case PlacingFault::no_stock:
      return what + "there is no stock. Write into the stock file what can be bought.";
    case PlacingFault::too_little_stock:
      return what + "the stock is used up. Raise its count or add a size that can be bought.";
    case PlacingFault::larger_than_any_stock: {
      const std::string pieces = in_pieces(job, part, own);
      const std::string how = job.material->goods == StockGoods::cloth ? "Seam it from " : "Glue it up from ";
      return what + "it is larger than any stock as it may lie." +
             (pieces.empty() ? " Find larger stock or divide it."
                             : " " + how + pieces + ", or find larger stock.");
    }
  }
  throw std::logic_error("PlacingFault out of range");
}

std::string without_stock_sentence(const PartWithoutStock& part, Unit own) {
  const std::string goods(word(part.goods));
  std::string what = part.called + " (" + goods;
  if (!part.material.empty()) what += " " + part.material;
  if (part.thickness) what += ", " + thick(*part.thickness, own);
  what += ") is not placed: ";
  switch (part.why) {
    case PartWithoutStock::Why::no_material:
      return what +
             "the stock file has no such material. Add it, by the name and thickness that the plan has.";
    case PartWithoutStock::Why::unnamed:
      return what + "the plan does not say which. Name it in the plan as the stock file does.";
    case PartWithoutStock::Why::patterned:
      return what + "its pattern comes again, and where it must meet is not reckoned here. Place it by hand.";
    case PartWithoutStock::Why::not_reckoned:
      return what + "how it is cut is not reckoned. Place it by hand.";
  }
  throw std::logic_error("PartWithoutStock::Why out of range");
}

std::string_view placing_notes() {
  return "End and edge are those of the corner that a sheet is measured from; lengths run along grain, nap "
         "or "
         "roll. Crosswise cuts run across the length. The blade takes its kerf beyond the measure. Shapes "
         "that are no "
         "rectangles are placed by the box around them. Measures are rounded to 1/32 in and 0.1 mm; "
         "the JSON has them exactly. Strength of a glue-up and what foam and fabric must withstand in a fire "
         "are not judged.";
}

}  // namespace berthwright

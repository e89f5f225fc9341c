#include "support/placed_case.h"

namespace berthwright {
namespace {

oracle::CheckedBox box_of(const Rect& rect) {
  return {rect.low.x.ticks(), rect.low.y.ticks(), rect.high.x.ticks(), rect.high.y.ticks()};
}

}  // namespace

oracle::CutCase checked_case(const PlacingTask& task, const Placing& placing) {
  oracle::CutCase result;
  for (const StockKind& kind : task.stock) {
    oracle::CheckedStock stock{kind.length.ticks(), kind.width.ticks(), kind.trim.ticks(), -1, kind.price};
    if (kind.count) stock.count = static_cast<std::int64_t>(*kind.count);
    for (const Rect& defect : kind.defects) stock.defects.push_back(box_of(defect));
    result.stock.push_back(stock);
  }
  for (const StockPart& part : task.parts)
    result.parts.push_back({part.length.ticks(), part.width.ticks(), static_cast<std::int64_t>(part.count),
                            part.lay == PartLay::quarters});
  for (const UnplacedPart& unplaced : placing.unplaced)
    result.parts[unplaced.part].count -= static_cast<std::int64_t>(unplaced.count);
  for (const StockCut& cut : placing.cuts) {
    oracle::CheckedSheet sheet{cut.kind};
    for (const StockPlace& place : cut.places)
      sheet.places.push_back({place.part, box_of(place.at), place.turned});
    for (const ThroughCut& through : cut.cuts)
      sheet.cuts.push_back({box_of(through.piece), through.crosswise, through.at.ticks(), through.stage});
    for (const Rect& offcut : cut.offcuts) sheet.offcuts.push_back(box_of(offcut));
    result.sheets.push_back(sheet);
  }
  result.kerf = task.kerf.ticks();
  result.least_offcut = task.least_offcut.ticks();
  result.cost = placing.cost;
  result.through = task.manner == CutManner::through;
  result.most_stages = task.stages.value_or(0);
  return result;
}

oracle::CutCase checked_strip(Length width, const std::vector<StripPart>& parts,
                              const StripPlacing& placing) {
  oracle::CutCase result;
  result.through = false;
  result.stock = {{placing.length.ticks(), width.ticks()}};
  for (const StripPart& part : parts)
    result.parts.push_back({part.length.ticks(), part.width.ticks(), 1, part.turns});
  oracle::CheckedSheet sheet{0};
  for (const StripPlace& place : placing.places)
    sheet.places.push_back({place.part, box_of(place.at), place.at.width() != parts[place.part].length});
  result.sheets = {sheet};
  return result;
}

PlacingTask generated_job(unsigned seed, std::size_t parts) {
  std::mt19937 dice(seed);
  const auto between = [&](unsigned low, unsigned high) {
    return low + static_cast<unsigned>(dice() % (high - low + 1));
  };
  PlacingTask task;
  task.kerf = 3_mm;
  task.stock = {{"whole sheet", 2440_mm, 1220_mm, 100'00},
                {"square sheet", 1525_mm, 1525_mm, 82'00},
                {"long half", 2440_mm, 610_mm, 56'00},
                {"half", 1220_mm, 1220_mm, 56'00},
                {"quarter", 1220_mm, 610_mm, 31'00}};
  while (parts > 0) {
    StockPart part;
    part.count = std::min<std::size_t>(parts, between(1, 4));
    part.length = Length::millimetres(5 * std::int64_t{between(20, 150)});
    part.width = Length::millimetres(5 * std::int64_t{between(15, 80)});
    if (part.length < part.width) std::swap(part.length, part.width);
    part.lay = between(0, 2) == 0 ? PartLay::grain : PartLay::quarters;
    part.id = "part " + std::to_string(task.parts.size() + 1);
    parts -= part.count;
    task.parts.push_back(part);
  }
  return task;
}

}  // namespace berthwright

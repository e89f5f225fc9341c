#include "solve/split/foam_cost.h"

#include <algorithm>

#include <berthwright/solve/cover/foam_blank.h>

namespace berthwright {
namespace {

Int128 sheet_area(const PricedFoam& sheet) { return Int128{sheet.length.ticks()} * sheet.width.ticks(); }

bool is_cheaper(const PricedFoam& a, const PricedFoam& b) {
  return a.price * sheet_area(b) < b.price * sheet_area(a);
}

bool fits_on(const PricedFoam& sheet, Length longer, Length shorter) {
  return longer <= std::max(sheet.length, sheet.width) && shorter <= std::min(sheet.length, sheet.width);
}

}  // namespace

std::optional<FoamCost> foam_cost(std::span<const SplitPiece> pieces, const SplitLimits& limits) {
  std::vector<PricedFoam> sheets;
  std::ranges::copy_if(limits.foam_stock, std::back_inserter(sheets),
                       [&](const PricedFoam& sheet) { return sheet.thickness == limits.thickness; });
  if (sheets.empty()) return std::nullopt;
  std::ranges::stable_sort(sheets, is_cheaper);
  FoamCost cost;
  for (const SplitPiece& piece : pieces) {
    const Length over = foam_rule(FoamCut::half_inch_over).sides;
    const Length longer = std::max(piece.length, piece.width) + over;
    const Length shorter = std::min(piece.length, piece.width) + over;
    auto sheet =
        std::ranges::find_if(sheets, [&](const PricedFoam& one) { return fits_on(one, longer, shorter); });
    if (sheet == sheets.end()) {
      ++cost.glued;
      sheet = sheets.begin();
    }
    // Each share rounded up to the hundredth, so that sums are the same in any order.
    const Int128 whole = sheet_area(*sheet);
    const Int128 share = Int128{longer.ticks()} * shorter.ticks() * sheet->price;
    cost.hundredths += static_cast<std::int64_t>((share + whole - 1) / whole);
  }
  return cost;
}

Mass weight_of_foam(Length length, Length width, const SplitLimits& limits) {
  return foam_weight(Area::rectangle(length, width), limits.thickness, limits.foam_density);
}

}  // namespace berthwright

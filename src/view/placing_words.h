#pragma once

#include <string>
#include <string_view>

#include <berthwright/solve/place/stock_jobs.h>

namespace berthwright {

/// "96.00 USD", from hundredths.
std::string money_text(std::int64_t hundredths, const std::string& currency);
/// A measure of a cut sheet, to 1/32 in and 0.1 mm, own unit first; "22 1/2\" x 40\" (571.5 mm x 1016 mm)".
std::string sawn(Length length, Unit own);
std::string sawn(Length length, Length width, Unit own);
/// Tenths of a percent as "4.5 %".
std::string percent_text(Area part, Area whole);

std::string_view word(StockGoods goods);    ///< "foam", "board", "cloth"
std::string_view word(CutManner manner);    ///< "through", "free"
std::string_view word(PartLay lay);         ///< "any way"…, as stock files write it
std::string_view word(PlacingFault fault);  ///< as a machine reads it: "no-stock"…
std::string_view word(PartWithoutStock::Why why);
std::string_view word(CostBoundKind kind);  ///< "area", "sizes", "every-way"

/// "Foam 2535, 4\" (101.6 mm)".
std::string job_name(const StockJob& job, Unit own);
/// "Through-cuts from edge to edge, kerf 1/8\" (3.2 mm)."
std::string job_manner(const StockJob& job, Unit own);
/// "A1": the job's letter and the number of the piece of stock within it.
std::string stock_label(std::size_t job, std::size_t cut);
/// "whole sheet, 82\" x 72\" (…), a remnant".
std::string stock_piece_words(const StockJob& job, const StockCut& cut, Unit own);

/// "Cut the piece of 82\" x 40\" crosswise, 22 1/2\" from its end." Ends and edges are those nearest to the
/// corner the sheet is measured from.
std::string through_cut_sentence(const ThroughCut& cut, Unit own);
/// Where a part lies: "1, Front seat: 2\" from the end, 3\" from the edge, turned."
std::string stock_place_sentence(const StockJob& job, const StockPlace& place, Unit own);
/// What it costs and how much less it might.
std::string cost_sentence(const StockJob& job, const std::string& currency);
/// How much of the stock becomes parts, offcuts worth keeping and waste.
std::string use_sentence(const StockJob& job);
/// What has no place, why, and what to do.
std::string unplaced_sentence(const StockJob& job, const UnplacedPart& unplaced, Unit own);
std::string without_stock_sentence(const PartWithoutStock& part, Unit own);
/// How to read the sheets; what is not judged.
std::string_view placing_notes();

}  // namespace berthwright

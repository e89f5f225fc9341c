#pragma once

#include <string>

#include <berthwright/solve/place/stock_jobs.h>

namespace berthwright {

/// Where every part lies on its stock, in which order it is cut, what is bought and left, as text for people,
/// at most 100 columns wide, ending with the caution line.
std::string placing_text(const Plan& plan, const StockList& stock, const StockJobs& jobs);
/// The same as one JSON object (schema: plans/placing.schema.json), lengths exact.
std::string placing_json(const Plan& plan, const StockList& stock, const StockJobs& jobs);

/// 0: every part has a place; 1: one has none; 2: of one it is not known, or there is nothing to place.
int exit_code(const StockJobs& jobs);

}  // namespace berthwright

#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include <berthwright/exact/length.h>
#include "solve/place/cut_panel.h"

namespace berthwright {

/// A size of stock as bounds and searches see it: a kerf added, trim taken off.
struct KerfStock {
  KerfSize size;
  std::int64_t price = 0;
  std::optional<std::size_t> count{};
  Int128 usable = 0;  ///< area without defects
};
/// Parts of one size, a kerf added.
struct KerfPart {
  KerfSize size;
  std::size_t count = 1;
  bool turns = false;
};

/// What all parts ask for at least, and what one piece of each stock gives at most.
struct CoverRow {
  Int128 wanted = 0;
  std::vector<Int128> given{};
};

/// The least sum of prices that satisfies every row, or a lower bound of it where that takes too long.
/// None: no number of pieces does.
std::optional<std::int64_t> least_cover(const std::vector<KerfStock>& stock,
                                        const std::vector<CoverRow>& rows);
/// A lower bound of the cost by one row alone, numbers unlimited and no whole numbers.
std::int64_t cover_at_least(const std::vector<KerfStock>& stock, const CoverRow& row);

CoverRow area_row(const std::vector<KerfStock>& stock, const std::vector<KerfPart>& parts);
/// Pairs of dual feasible functions along and across that ask for most: Fekete & Schepers (2004), Clautiaux,
/// Alves & Valério de Carvalho (2010); a part counts in the attitude that counts less.
std::vector<CoverRow> size_rows(const std::vector<KerfStock>& stock, const std::vector<KerfPart>& parts);
}  // namespace berthwright

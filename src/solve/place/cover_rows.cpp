#include "solve/place/cover_rows.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <set>

namespace berthwright {
namespace {

constexpr std::int64_t no_cover = std::numeric_limits<std::int64_t>::max();
constexpr std::size_t most_cover_nodes = 100'000;
constexpr std::size_t most_functions = 100;

Int128 quotient_up(Int128 a, Int128 b) { return (a + b - 1) / b; }

class CoverSearch {
 public:
  CoverSearch(const std::vector<KerfStock>& stock, const std::vector<CoverRow>& rows)
      : stock_(stock), rows_(rows), order_(stock.size()) {
    std::iota(order_.begin(), order_.end(), std::size_t{});
    // What costs nothing is taken whole, then what costs most a piece: the last closes what is left.
    std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) {
      const bool free_a = stock[a].price == 0;
      const bool free_b = stock[b].price == 0;
      return free_a != free_b ? free_a : stock[a].price > stock[b].price;
    });
  }

  std::optional<std::int64_t> run() {
    std::vector<Int128> wanted;
    for (const CoverRow& row : rows_) wanted.push_back(row.wanted);
    const std::int64_t relaxed = rest_cost(0, wanted);
    if (relaxed == no_cover) return {};
    look(0, 0, wanted);
    if (nodes_ >= most_cover_nodes) return relaxed;
    return best_ == no_cover ? std::nullopt : std::optional(best_);
  }

 private:
  // At least, with the kinds from there on, each row by itself.
  std::int64_t rest_cost(std::size_t from, const std::vector<Int128>& wanted) const {
    std::int64_t most = 0;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
      if (wanted[r] <= 0) continue;
      std::int64_t least = no_cover;
      for (std::size_t o = from; o < order_.size(); ++o) {
        const Int128 given = rows_[r].given[order_[o]];
        if (given <= 0 || stock_[order_[o]].count == std::size_t{0}) continue;
        least = std::min(least,
                         static_cast<std::int64_t>(quotient_up(wanted[r] * stock_[order_[o]].price, given)));
      }
      most = std::max(most, least);
    }
    return most;
  }

  void look(std::size_t at, std::int64_t cost, const std::vector<Int128>& wanted) {
    if (++nodes_ >= most_cover_nodes) return;
    if (std::ranges::all_of(wanted, [](Int128 w) { return w <= 0; })) {
      best_ = std::min(best_, cost);
      return;
    }
    if (at == order_.size()) return;
    const std::int64_t rest = rest_cost(at, wanted);
    if (rest == no_cover || cost + rest >= best_) return;
    const KerfStock& kind = stock_[order_[at]];
    const std::size_t most = needed(order_[at], wanted);
    // From many to few: good covers early.
    for (std::size_t n = most + 1; n-- > 0;) {
      if (kind.price == 0 && n < most) break;
      std::vector<Int128> left = wanted;
      for (std::size_t r = 0; r < rows_.size(); ++r)
        left[r] -= rows_[r].given[order_[at]] * static_cast<std::int64_t>(n);
      look(at + 1, cost + kind.price * static_cast<std::int64_t>(n), left);
    }
  }

  // More of this kind than that satisfies every row that it can.
  std::size_t needed(std::size_t kind, const std::vector<Int128>& wanted) const {
    Int128 most = 0;
    for (std::size_t r = 0; r < rows_.size(); ++r)
      if (wanted[r] > 0 && rows_[r].given[kind] > 0)
        most = std::max(most, quotient_up(wanted[r], rows_[r].given[kind]));
    if (stock_[kind].count) most = std::min<Int128>(most, static_cast<std::int64_t>(*stock_[kind].count));
    return static_cast<std::size_t>(most);
  }

  const std::vector<KerfStock>& stock_;
  const std::vector<CoverRow>& rows_;
  std::vector<std::size_t> order_;
  std::int64_t best_ = no_cover;
  std::size_t nodes_ = 0;
};

// A step function that is superadditive and does not fall, of sizes up to `scale`.
struct DualFeasible {
  enum class Kind { plain, ends, steps } kind = Kind::plain;
  std::int64_t t = 0;
  std::int64_t scale = 0;

  std::int64_t operator()(std::int64_t x) const {
    switch (kind) {
      case Kind::plain:
        return x;
      case Kind::ends:
        return x > scale - t ? scale : x < t ? 0 : x;
      case Kind::steps:
        if (2 * x < scale) return 2 * (x / t);
        if (2 * x == scale) return scale / t;
        return 2 * (scale / t - (scale - x) / t);
    }
    return 0;
  }
};

std::vector<DualFeasible> functions_of(const std::set<std::int64_t>& sizes, std::int64_t scale) {
  std::set<std::int64_t> steps;
  for (const std::int64_t size : sizes) {
    for (const std::int64_t t : {size, scale - size, scale - size + 1, size + 1})
      if (t > 0 && 2 * t <= scale) steps.insert(t);
  }
  std::vector<DualFeasible> result{{DualFeasible::Kind::plain, 0, scale}};
  const std::size_t stride = 1 + steps.size() / most_functions;
  std::size_t number = 0;
  for (const std::int64_t t : steps) {
    if (number++ % stride != 0) continue;
    result.push_back({DualFeasible::Kind::ends, t, scale});
    result.push_back({DualFeasible::Kind::steps, t, scale});
  }
  return result;
}

Int128 product(std::int64_t a, std::int64_t b) { return Int128{a} * b; }

struct StockScale {
  std::int64_t length = 0;
  std::int64_t width = 0;
};
StockScale scale_of(const std::vector<KerfStock>& stock) {
  StockScale scale;
  for (const KerfStock& kind : stock) {
    scale.length = std::max(scale.length, kind.size.length);
    scale.width = std::max(scale.width, kind.size.width);
  }
  return scale;
}

CoverRow row_of(const std::vector<KerfStock>& stock, const std::vector<KerfPart>& parts,
                const DualFeasible& along, const DualFeasible& across) {
  CoverRow row;
  for (const KerfPart& part : parts) {
    const auto value = [&](std::int64_t length, std::int64_t width) {
      return product(along(length), across(width));
    };
    Int128 least = value(part.size.length, part.size.width);
    const bool lies = part.size.length <= along.scale && part.size.width <= across.scale;
    if (part.turns && part.size.width <= along.scale && part.size.length <= across.scale) {
      const Int128 turned = value(part.size.width, part.size.length);
      least = lies ? std::min(least, turned) : turned;
    }
    row.wanted += least * static_cast<std::int64_t>(part.count);
  }
  for (const KerfStock& kind : stock)
    row.given.push_back(product(along(kind.size.length), across(kind.size.width)));
  return row;
}

}  // namespace

std::optional<std::int64_t> least_cover(const std::vector<KerfStock>& stock,
                                        const std::vector<CoverRow>& rows) {
  return CoverSearch(stock, rows).run();
}

std::int64_t cover_at_least(const std::vector<KerfStock>& stock, const CoverRow& row) {
  std::int64_t least = no_cover;
  for (std::size_t k = 0; k < stock.size(); ++k)
    if (row.given[k] > 0)
      least =
          std::min(least, static_cast<std::int64_t>(quotient_up(row.wanted * stock[k].price, row.given[k])));
  return row.wanted <= 0 ? 0 : least;
}

CoverRow area_row(const std::vector<KerfStock>& stock, const std::vector<KerfPart>& parts) {
  CoverRow row;
  for (const KerfPart& part : parts)
    row.wanted += product(part.size.length, part.size.width) * static_cast<std::int64_t>(part.count);
  for (const KerfStock& kind : stock) row.given.push_back(kind.usable);
  return row;
}

std::vector<CoverRow> size_rows(const std::vector<KerfStock>& stock, const std::vector<KerfPart>& parts) {
  const StockScale scale = scale_of(stock);
  std::set<std::int64_t> lengths;
  std::set<std::int64_t> widths;
  for (const KerfPart& part : parts) {
    lengths.insert(part.size.length);
    widths.insert(part.size.width);
    if (part.turns) {
      lengths.insert(part.size.width);
      widths.insert(part.size.length);
    }
  }
  constexpr std::size_t rows_kept = 24;
  std::vector<std::pair<std::int64_t, CoverRow>> best;
  for (const DualFeasible& along : functions_of(lengths, scale.length))
    for (const DualFeasible& across : functions_of(widths, scale.width)) {
      CoverRow row = row_of(stock, parts, along, across);
      const std::int64_t cost = cover_at_least(stock, row);
      if (cost == no_cover) continue;
      if (best.size() == rows_kept && cost <= best.back().first) continue;
      best.emplace_back(cost, std::move(row));
      std::ranges::stable_sort(best, std::greater{}, [](const auto& entry) { return entry.first; });
      if (best.size() > rows_kept) best.pop_back();
    }
  std::vector<CoverRow> rows;
  for (auto& [cost, row] : best) rows.push_back(std::move(row));
  return rows;
}

}  // namespace berthwright

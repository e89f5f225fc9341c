#include "solve/place/block_table.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

namespace berthwright {
namespace {

bool within_any(const KerfSize& size, const std::vector<KerfSize>& stock) {
  return std::ranges::any_of(
      stock, [&](const KerfSize& s) { return size.length <= s.length && size.width <= s.width; });
}

void keep_least(std::vector<KerfSize>& sizes) {
  std::ranges::sort(sizes, {}, [](const KerfSize& s) { return std::pair(s.length, s.width); });
  std::vector<KerfSize> kept;
  for (const KerfSize& size : sizes)
    if (kept.empty() || size.width < kept.back().width) kept.push_back(size);
  sizes = std::move(kept);
}

KerfSize beside(const KerfSize& a, const KerfSize& b) {
  return {a.length + b.length, std::max(a.width, b.width)};
}
KerfSize behind(const KerfSize& a, const KerfSize& b) {
  return {std::max(a.length, b.length), a.width + b.width};
}

// Lengths rise and widths fall in both lists. For every width of either, the shortest of both that are no
// wider, side by side; for every length, the narrowest that are no longer, one behind the other.
void join(const std::vector<KerfSize>& a, const std::vector<KerfSize>& b, std::vector<KerfSize>& found) {
  for (std::size_t i = 0, j = 0; i < a.size() && j < b.size();) {
    found.push_back(beside(a[i], b[j]));
    // Less width is asked for next: of the wider, the next longer.
    if (a[i].width == b[j].width)
      ++i, ++j;
    else
      ++(a[i].width > b[j].width ? i : j);
  }
  for (std::size_t i = a.size(), j = b.size(); i > 0 && j > 0;) {
    found.push_back(behind(a[i - 1], b[j - 1]));
    if (a[i - 1].length == b[j - 1].length)
      --i, --j;
    else
      --(a[i - 1].length > b[j - 1].length ? i : j);
  }
}

constexpr std::int64_t dear = std::numeric_limits<std::int64_t>::max() / 4;

/// The dynamic programme over what is still to be cut.
class LeastCutTable {
 public:
  LeastCutTable(const BlockTable& table, const std::vector<KerfStock>& stock) : table_(table), stock_(stock) {
    layer(unlimited_cost());
    for (std::size_t s = 0; s < stock.size(); ++s) {
      if (!stock[s].count) continue;
      const std::size_t most = std::min(*stock[s].count, pieces());
      for (std::size_t n = 0; n < most; ++n) layer(with_one_of(s));
    }
  }

  std::optional<LeastCut> best() const {
    std::size_t choice = table_.choices() - 1;
    LeastCut result{layers_.back()[choice].cost, {}};
    if (result.cost >= dear) return {};
    for (std::size_t l = layers_.size(); l-- > 0;)
      while (choice != 0 && layers_[l][choice].cut != 0) {
        const Entry& entry = layers_[l][choice];
        const KerfSize& room = stock_[entry.stock].size;
        const auto& sizes = table_.sizes(entry.cut);
        const auto fit =
            std::ranges::find_if(sizes, [&](const KerfSize& size) { return lies_in(size, room); });
        result.sheets.push_back({entry.stock, entry.cut, *fit});
        choice -= entry.cut;
        if (l > 0) break;
      }
    return result;
  }

 private:
  struct Entry {
    std::int64_t cost = dear;
    std::size_t cut = 0;  // from one sheet; 0: the layer below has it
    std::size_t stock = 0;
  };
  using Layer = std::vector<Entry>;

  static bool lies_in(const KerfSize& a, const KerfSize& b) {
    return a.length <= b.length && a.width <= b.width;
  }
  bool cut_from(std::size_t choice, std::size_t s) const {
    return std::ranges::any_of(table_.sizes(choice),
                               [&](const KerfSize& size) { return lies_in(size, stock_[s].size); });
  }
  std::size_t pieces() const {
    std::size_t result = 0;
    for (std::size_t p = 0; p < table_.kinds(); ++p) result += table_.count(table_.choices() - 1, p);
    return result;
  }
  void layer(Layer next) { layers_.push_back(std::move(next)); }

  Layer unlimited_cost() const {
    Layer result(table_.choices());
    result[0].cost = 0;
    std::vector<Entry> single(table_.choices());
    for (std::size_t c = 1; c < table_.choices(); ++c) {
      for (std::size_t s = 0; s < stock_.size(); ++s)
        if (!stock_[s].count && stock_[s].price < single[c].cost && cut_from(c, s))
          single[c] = {stock_[s].price, c, s};
      result[c] = single[c];
      for (const std::size_t half : table_.halves(c))
        for (const std::size_t cut : {half, c - half})
          if (single[cut].cost + result[c - cut].cost < result[c].cost)
            result[c] = {single[cut].cost + result[c - cut].cost, cut, single[cut].stock};
    }
    return result;
  }

  Layer with_one_of(std::size_t s) const {
    const Layer& below = layers_.back();
    Layer result(table_.choices());
    std::vector<bool> cut(table_.choices());
    for (std::size_t c = 1; c < cut.size(); ++c) cut[c] = cut_from(c, s);
    for (std::size_t c = 0; c < result.size(); ++c) {
      result[c].cost = below[c].cost;
      const auto consider = [&](std::size_t part) {
        const std::int64_t cost = stock_[s].price + below[c - part].cost;
        if (cut[part] && cost < result[c].cost) result[c] = {cost, part, s};
      };
      if (c == 0) continue;
      consider(c);
      for (const std::size_t half : table_.halves(c)) {
        consider(half);
        consider(c - half);
      }
    }
    return result;
  }

  const BlockTable& table_;
  const std::vector<KerfStock>& stock_;
  std::vector<Layer> layers_{};
};

}  // namespace

std::optional<BlockTable> BlockTable::made(const std::vector<KerfPart>& parts,
                                           const std::vector<KerfSize>& stock, std::size_t most_merges) {
  BlockTable table(parts);
  std::size_t choices = 1;
  std::size_t merges = 1;
  for (const KerfPart& part : parts) {
    table.steps_.push_back(choices);
    const std::size_t count = part.count + 1;
    if (count > most_merges || merges * count / 2 * (count + 1) > most_merges * 2) return {};
    choices *= count;
    merges = merges * count * (count + 1) / 2;
  }
  if (merges > most_merges) return {};
  table.sizes_.resize(choices);
  for (std::size_t choice = 1; choice < choices; ++choice) table.fill(choice, stock);
  return table;
}

std::vector<std::size_t> BlockTable::halves(std::size_t choice) const {
  std::vector<std::size_t> result{0};
  for (std::size_t p = 0; p < parts_.size(); ++p) {
    const std::size_t before = result.size();
    const std::size_t most = count(choice, p);
    for (std::size_t n = 1; n <= most; ++n)
      for (std::size_t i = 0; i < before; ++i) result.push_back(result[i] + n * steps_[p]);
  }
  // The first and the last are nothing and all; what mirrors another is left out.
  std::erase_if(result, [&](std::size_t half) { return half == 0 || 2 * half > choice; });
  return result;
}

void BlockTable::fill(std::size_t choice, const std::vector<KerfSize>& stock) {
  std::vector<KerfSize> found;
  for (std::size_t p = 0; p < parts_.size(); ++p)
    if (choice == steps_[p]) {
      found.push_back(parts_[p].size);
      if (parts_[p].turns) found.push_back({parts_[p].size.width, parts_[p].size.length});
    }
  for (const std::size_t half : halves(choice)) join(sizes_[half], sizes_[choice - half], found);
  std::erase_if(found, [&](const KerfSize& size) { return !within_any(size, stock); });
  keep_least(found);
  sizes_[choice] = std::move(found);
}

CutNode BlockTable::cut(std::size_t choice, KerfSize size) const {
  for (std::size_t p = 0; p < parts_.size(); ++p)
    if (choice == steps_[p]) return {size, p};
  for (const std::size_t half : halves(choice))
    for (const KerfSize& a : sizes_[half])
      for (const KerfSize& b : sizes_[choice - half]) {
        const bool along = beside(a, b) == size;
        if (along || behind(a, b) == size) return joined(cut(half, a), cut(choice - half, b), along);
      }
  throw std::logic_error("a block of no such size");
}

std::optional<LeastCut> least_cut(const BlockTable& table, const std::vector<KerfStock>& stock) {
  return LeastCutTable(table, stock).best();
}

}  // namespace berthwright

#include "oracle/every_cut.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace berthwright::oracle {
namespace {

using Counts = std::vector<int>;

/// Each way to take some of the parts.
std::vector<Counts> every_share(const Counts& of) {
  std::vector<Counts> result{Counts(of.size())};
  for (std::size_t i = 0; i < of.size(); ++i) {
    const std::size_t before = result.size();
    for (int n = 1; n <= of[i]; ++n)
      for (std::size_t r = 0; r < before; ++r) {
        Counts next = result[r];
        next[i] = n;
        result.push_back(next);
      }
  }
  return result;
}

Counts less(Counts a, const Counts& b) {
  for (std::size_t i = 0; i < a.size(); ++i) a[i] -= b[i];
  return a;
}

class EveryCut {
 public:
  explicit EveryCut(const std::vector<CuttablePart>& parts) : parts_(parts) {}

  int worth(int length, int width, const Counts& counts) {
    const std::tuple key(length, width, counts);
    if (const auto known = known_.find(key); known != known_.end()) return known->second;
    int best = 0;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
      const CuttablePart& part = parts_[i];
      const bool lies = part.length <= length && part.width <= width;
      const bool turned = part.turns && part.width <= length && part.length <= width;
      if (counts[i] > 0 && (lies || turned)) best = std::max(best, part.worth);
    }
    for (const Counts& share : every_share(counts)) {
      const Counts rest = less(counts, share);
      for (int x = 1; x < length; ++x)
        best = std::max(best, worth(x, width, share) + worth(length - x, width, rest));
      for (int y = 1; y < width; ++y)
        best = std::max(best, worth(length, y, share) + worth(length, width - y, rest));
    }
    return known_[key] = best;
  }

 private:
  std::vector<CuttablePart> parts_;
  std::map<std::tuple<int, int, Counts>, int> known_{};
};

Counts counts_of(const std::vector<CuttablePart>& parts) {
  Counts counts;
  for (const CuttablePart& part : parts) counts.push_back(part.count);
  return counts;
}

// Whether what is left of the parts finds a place on the cells that are free.
bool finds_places(std::vector<std::vector<bool>>& taken, const std::vector<CuttablePart>& parts,
                  std::size_t from) {
  if (from == parts.size()) return true;
  const int length = static_cast<int>(taken.size());
  const int width = static_cast<int>(taken[0].size());
  for (const bool turned : {false, true}) {
    if (turned && !parts[from].turns) continue;
    const int l = turned ? parts[from].width : parts[from].length;
    const int w = turned ? parts[from].length : parts[from].width;
    for (int x = 0; x + l <= length; ++x)
      for (int y = 0; y + w <= width; ++y) {
        const auto each_cell = [&](const auto& visit) {
          for (int i = x; i < x + l; ++i)
            for (int j = y; j < y + w; ++j)
              visit(taken[static_cast<std::size_t>(i)], static_cast<std::size_t>(j));
        };
        bool free = true;
        each_cell([&](std::vector<bool>& row, std::size_t j) { free = free && !row[j]; });
        if (!free) continue;
        each_cell([](std::vector<bool>& row, std::size_t j) { row[j] = true; });
        if (finds_places(taken, parts, from + 1)) return true;
        each_cell([](std::vector<bool>& row, std::size_t j) { row[j] = false; });
      }
  }
  return false;
}

}  // namespace

int shortest_strip_by_every_place(int width, const std::vector<CuttablePart>& parts) {
  for (int length = 1;; ++length) {
    std::vector<std::vector<bool>> taken(static_cast<std::size_t>(length),
                                         std::vector<bool>(static_cast<std::size_t>(width)));
    if (finds_places(taken, parts, 0)) return length;
  }
}

int most_worth_by_every_cut(int length, int width, const std::vector<CuttablePart>& parts) {
  return EveryCut(parts).worth(length, width, counts_of(parts));
}

int least_cost_by_every_cut(const std::vector<PricedSheet>& sheets, const std::vector<CuttablePart>& parts) {
  // A part is worth 1: a share is cut from a sheet when all of it comes out.
  std::vector<CuttablePart> alike = parts;
  for (CuttablePart& part : alike) part.worth = 1;
  EveryCut cutter(alike);
  std::map<Counts, int> least;
  const auto cost = [&](const auto& self, const Counts& counts) -> int {
    int left = 0;
    for (const int count : counts) left += count;
    if (left == 0) return 0;
    if (const auto known = least.find(counts); known != least.end()) return known->second;
    int best = -1;
    for (const Counts& share : every_share(counts)) {
      int taken = 0;
      for (const int count : share) taken += count;
      if (taken == 0) continue;
      for (const PricedSheet& sheet : sheets) {
        if (cutter.worth(sheet.length, sheet.width, share) != taken) continue;
        const int rest = self(self, less(counts, share));
        if (rest >= 0 && (best < 0 || rest + sheet.price < best)) best = rest + sheet.price;
      }
    }
    return least[counts] = best;
  };
  return cost(cost, counts_of(parts));
}

}  // namespace berthwright::oracle

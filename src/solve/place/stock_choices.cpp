#include "solve/place/stock_choices.h"

#include <algorithm>

namespace berthwright {
namespace {

constexpr std::size_t most_choices_of_stock = 2'000;

class StockChooser {
 public:
  StockChooser(const KerfTask& task, std::int64_t dearest) : task_(task), dearest_(dearest) {
    for (const KerfPart& part : task.parts)
      wanted_ += Int128{part.size.length} * part.size.width * static_cast<std::int64_t>(part.count);
  }

  void choose(std::size_t at, const StockChoice& choice) {
    if (found_.size() == most_choices_of_stock || choice.room + most_room(at, choice.cost) < wanted_) return;
    if (at == task_.stock.size()) {
      found_.push_back(choice);
      return;
    }
    const KerfStock& stock = task_.stock[at];
    std::size_t most = stock.count.value_or(task_.kind_of.size());
    if (stock.price > 0)
      most = std::min(most, static_cast<std::size_t>((dearest_ - choice.cost) / stock.price));
    // What costs nothing may as well be there.
    for (std::size_t n = stock.price == 0 ? most : 0; n <= most; ++n) {
      StockChoice next = choice;
      next.counts.push_back(n);
      next.cost += stock.price * static_cast<std::int64_t>(n);
      next.room += stock.usable * static_cast<std::int64_t>(n);
      choose(at + 1, next);
    }
  }

  std::vector<StockChoice> found() && { return std::move(found_); }

 private:
  // What the rest of the money buys of the kinds from there on, at most.
  Int128 most_room(std::size_t from, std::int64_t cost) const {
    Int128 free_room = 0;
    Int128 bought = 0;
    for (std::size_t s = from; s < task_.stock.size(); ++s) {
      const KerfStock& stock = task_.stock[s];
      if (stock.price > 0)
        bought = std::max(bought, stock.usable * (dearest_ - cost) / stock.price);
      else
        free_room += stock.usable * static_cast<std::int64_t>(stock.count.value_or(task_.kind_of.size()));
    }
    return free_room + bought;
  }

  const KerfTask& task_;
  std::int64_t dearest_;
  Int128 wanted_ = 0;
  std::vector<StockChoice> found_{};
};

}  // namespace

std::vector<StockChoice> stock_choices(const KerfTask& task, std::int64_t cheapest, std::int64_t dearest) {
  StockChooser chooser(task, dearest);
  chooser.choose(0, {});
  std::vector<StockChoice> found = std::move(chooser).found();
  std::erase_if(found, [&](const StockChoice& choice) { return choice.cost < cheapest; });
  std::ranges::stable_sort(found, std::greater{}, &StockChoice::room);
  return found;
}

}  // namespace berthwright

#include "solve/site/greatest.h"

#include <algorithm>
#include <optional>

#include <berthwright/geometry/disc.h>

namespace berthwright {
namespace {

constexpr Length fine_enough = Length::inches(1, 16);
// So much margin is given away for a place that a tape can mark.
constexpr Length for_the_tape = Length::inches(1, 8);

class Search {
 public:
  Search(const ForbiddenPlaces& forbidden, std::span<const SiteRule> raised)
      : forbidden_(forbidden), raised_(raised) {}

  std::vector<PlacesLeft> left(const std::vector<PlacesLeft>& from, Length more) const {
    std::vector<PlacesLeft> result;
    for (const PlacesLeft& one : from) {
      Region places = one.places;
      for (const SiteRule rule : raised_)
        if (!places.empty()) places = left_of(std::move(places), forbidden_.zones(rule, one.way, more));
      if (!places.empty()) result.push_back({one.way, std::move(places)});
    }
    return result;
  }

 private:
  const ForbiddenPlaces& forbidden_;
  std::span<const SiteRule> raised_;
};

}  // namespace

std::vector<PlacesLeft> greatest_margin(const ForbiddenPlaces& forbidden, std::vector<PlacesLeft> from,
                                        std::span<const SiteRule> raised, Length at_least) {
  std::erase_if(from, [](const PlacesLeft& one) { return one.places.empty(); });
  if (!forbidden.any_burns() || from.empty()) return from;
  const Search search(forbidden, raised);
  Length low = at_least;
  Length high = std::max(forbidden.everywhere(), at_least);
  std::vector<PlacesLeft> best = from;
  while (high - low > fine_enough) {
    const Length middle = half(low + high);
    std::vector<PlacesLeft> left = search.left(best, middle);
    if (left.empty()) {
      high = middle;
    } else {
      low = middle;
      best = std::move(left);
    }
  }
  return search.left(from, std::max(low - for_the_tape, at_least));
}

Point middle_of(const Region& places) {
  const std::optional<Disc> disc = largest_disc(places);
  return disc ? disc->centre : places.faces().front().outer.vertices().front();
}

Point marked_near(Point place, const Region& places, Unit unit) {
  const std::int64_t step = unit == Unit::inch ? ticks_per_inch / 8 : ticks_per_mm;
  const auto nearest = [&](Length length) {
    const std::int64_t doubled = 2 * length.ticks() + step;
    const std::int64_t steps = doubled / (2 * step) - (doubled % (2 * step) < 0 ? 1 : 0);
    return Length::from_ticks(steps * step);
  };
  const Point marked{nearest(place.x), nearest(place.y)};
  return places.side_of(marked) != Side::outside ? marked : place;
}

}  // namespace berthwright

#pragma once

#include <optional>
#include <span>
#include <vector>

#include "solve/site/forbidden.h"

namespace berthwright {

/// Places that are left, for one way the front looks.
struct PlacesLeft {
  Wall way = Wall::rear;
  Region places;
};

/// Of the places in `from` those whose least margin of the yardsticks `raised` is greatest to within 3/16 in:
/// they keep what is asked and as much more (or less, where nothing keeps it). Where nothing burns: all of
/// them. Never less than `at_least` more, so that a place which keeps what is asked is not lost.
std::vector<PlacesLeft> greatest_margin(const ForbiddenPlaces& forbidden, std::vector<PlacesLeft> from,
                                        std::span<const SiteRule> raised, Length at_least);

/// The middle of its largest disc.
Point middle_of(const Region& places);
/// The place of whole eighths of an inch, or whole millimetres, nearest to one of the region, if it lies in
/// it; else that one.
Point marked_near(Point place, const Region& places, Unit unit);

}  // namespace berthwright

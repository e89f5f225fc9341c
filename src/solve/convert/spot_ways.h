#pragma once

#include <vector>

#include "solve/convert/overlaps.h"
#include "solve/convert/spots.h"

namespace berthwright {

/// Which spots lie over, under or in each other, and which over, under or in what is built in.
class SpotOverlaps {
 public:
  struct With {
    std::size_t other;  ///< number of a spot, or of a fixture
    Length depth;
  };

  SpotOverlaps(const Plan& plan, const std::vector<SpotEntry>& entries);

  const std::vector<With>& with_spots(std::size_t spot) const { return spots_[spot]; }
  const std::vector<With>& with_fixtures(std::size_t spot) const { return fixtures_[spot]; }
  /// Spots of other pieces in whose space this one stands.
  SpotSet at_rest(std::size_t spot) const;
  const StandingThing& standing(std::size_t spot) const { return standing_[spot]; }

 private:
  std::vector<StandingThing> standing_;  // of what is not in the room: empty
  std::vector<std::vector<With>> spots_;
  std::vector<std::vector<With>> fixtures_;
};

struct SpotWays {
  std::vector<OpenWay> ways;
  std::vector<WayAnchor> anchors;
  std::vector<ShutBy> shut;
};
SpotWays ways_of(const RoomAround& surroundings, const std::vector<SpotEntry>& entries, std::size_t at,
                 const SpotOverlaps& overlaps, const Carrying& carrying);
void add_bent_way(SpotWays& ways, const SpotSet& barred_by);

}  // namespace berthwright

#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include <berthwright/exact/length.h>

namespace berthwright {

/// Where along the boxing two strips may be joined. Closed; stretches are disjoint and ascending.
struct JoinStretch {
  Length from;
  Length to;
  bool front = false;    ///< on a face that looks to the people: only where nothing else will do
  int seen = 0;          ///< in how many configurations a join there is seen
  std::size_t edge = 0;  ///< of the rim
};

struct Join {
  Length at;  ///< along the boxing from its beginning
  std::size_t edge = 0;
  bool front = false;
  int seen = 0;
  friend bool operator==(const Join&, const Join&) = default;
};

/// How good a choice is: what comes first is less, whatever follows.
struct JoinCost {
  int on_front = 0;
  int joins = 0;
  int seen = 0;
  std::int64_t from_ends = 0;  ///< sum of the distances to the nearer end of the boxing, in ticks
  friend auto operator<=>(const JoinCost&, const JoinCost&) = default;
};
JoinCost cost_of(std::span<const Join> joins, Length total);

/// The joins of least cost that cut `total` into strips of `shortest` to `longest` each. Exact: an optimum
/// has every join at a border of a stretch or a whole number of longest and shortest strips from one or from
/// an end, for costs are flat or bent downward between. None: no choice does.
std::optional<std::vector<Join>> best_joins(std::span<const JoinStretch> stretches, Length total,
                                            Length shortest, Length longest);

}  // namespace berthwright

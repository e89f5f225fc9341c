#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/solve/cover/rim.h>
#include <berthwright/solve/finding.h>
#include <berthwright/solve/room/arrangement.h>
#include <berthwright/solve/seat/seats.h>

namespace berthwright {

/// One configuration as it stands, with its seats; none on the road.
struct SeenRoom {
  Arrangement arrangement;
  std::vector<Seat> seats;
};

/// What is seen of one stretch of a cushion's edge in one configuration. It is hidden where, over three
/// quarters of its length, a wall, a fixture or another piece comes within 1 in of it and covers at least
/// half of its height (own choice); where the cushion is stowed; and beneath one that stands on edge on
/// something. At the upright ends of one on edge its thickness counts as their length.
struct EdgeSight {
  enum class Kind { stowed, hidden, seen, front };  ///< front: seen by who sits there
  const Configuration* configuration = nullptr;
  Kind kind = Kind::seen;
  Portion covered{};  ///< of its length, rounded down
  std::vector<std::string>
      by{};  ///< ids of what covers it, "room" for a wall; in the order of the arrangement
};
/// Of one edge in all configurations: whether it ever is a front, and in how many it is seen.
bool is_front(const std::vector<EdgeSight>& sights);
int times_seen(const std::vector<EdgeSight>& sights);
inline constexpr Length hiding_reach = Length::inches(1);
inline constexpr Portion hiding_share{750};

/// Of every stretch of the rim (outer list), in every one of `stood`. A cushion on edge has its top panel,
/// the upper one as it lies unturned, where it faces; which of two sides is down the plan does not say: the
/// front or left one where `low_side_down`. Front: the edge of a seat that looks the way its sitter looks,
/// and the upper edge of a cushion on edge. Worked corners of a cushion on edge count as seen.
std::vector<std::vector<EdgeSight>> edge_sights(const Plan& plan, const std::vector<SeenRoom>& stood,
                                                const Piece& piece, const Rim& rim, bool low_side_down);

/// The edge that takes the zip.
struct ZipEdge {
  std::size_t edge = 0;
  std::optional<Wall>
      down;  ///< side of the unturned piece that is down where it stands on edge; none: never does
  std::vector<std::vector<EdgeSight>> sights;  ///< of every edge, with that side down
};

/// Among the edges at least half as long as the shorter side of the piece (own choice: the foam must pass),
/// or all where none is: never a front one where another is left, then the one seen in the fewest
/// configurations, straight before curved, the longest, the first along the rim. Where the plan asks for a
/// `side` of the piece, only among the straight edges on that side of its box, however short; if it has none,
/// as without.
ZipEdge zip_edge(const Plan& plan, const std::vector<SeenRoom>& stood, const Piece& piece, const Rim& rim,
                 std::optional<Wall> side = std::nullopt);

}  // namespace berthwright

#pragma once

#include <array>
#include <map>
#include <optional>
#include <vector>

#include <berthwright/solve/convert/motion.h>

#include "solve/convert/room_around.h"
#include "solve/convert/sliding_plane.h"

namespace berthwright {

/// A box is held in one of six ways: flat, flat and turned by a quarter, and on each of two edges, along x or
/// along y.
inline constexpr std::size_t holds = 6;

/// A box held at a place: its low corner.
struct HeldAt {
  std::size_t hold = 0;
  Point low;
};

/// One piece, as its box, carried level at a few heights among what is built in and what may stand there at
/// any stage. At each height: slid along x and y, turned by quarters, tipped over its lower edges.
class Carrying {
 public:
  /// Turns and tips are tried about places this far apart.
  static constexpr Length grid = Length::inches(4);

  /// `sides`: length, width, thickness of the piece. `upright`: it is never tipped.
  Carrying(const RoomAround& surroundings, std::vector<Hindrance> others, std::array<Length, 3> sides,
           bool upright);

  /// Levels of its underside, ascending; what was found out about one is kept.
  void set_heights(std::vector<Length> heights) { heights_ = std::move(heights); }

  const std::vector<Length>& heights() const { return heights_; }
  std::array<Length, 3> sides(std::size_t hold) const;
  Rect box(const HeldAt& at) const;

  /// How a piece is held in a pose; of one turned by no quarter: as it lies unturned.
  static std::size_t hold_of(const Pose& pose);

  /// Number of all that can be reached from there at that level, the same for whatever reaches the other.
  /// None: it cannot be there.
  std::optional<std::size_t> realm(std::size_t level, const HeldAt& at) const;
  /// Whether there the piece can be turned upside down.
  bool can_flip(std::size_t level, std::size_t realm) const;
  /// Whether nothing stands in the box at that level, up to `height` above it.
  bool is_clear_at(std::size_t level, const Rect& box, Length height) const;
  /// Whether there it can be turned end for end as it lies flat.
  bool can_spin(std::size_t level, std::size_t realm) const;
  enum class Detour { none, flip, spin };
  /// Slides, turns and tips from one place to the other, which is in the same realm; by the fewest turns and
  /// tips, or by way of turning it upside down, or end for end.
  std::vector<Motion> route(std::size_t level, const HeldAt& from, const HeldAt& to, Detour detour) const;

 private:
  struct Link {
    HeldAt from;
    HeldAt to;
    std::optional<Wall> over;  // tipped over that edge; else turned
  };
  struct Plane {
    std::array<std::optional<SlidingPlane>, holds> planes;
    std::array<std::size_t, holds> first{};  // number of the first part of each
    std::vector<std::size_t> realm;          // of each part of each plane
    std::vector<Link> links;
    std::vector<std::array<Link, 2>> flips;
    std::vector<std::array<Link, 2>> spins;
  };

  class Linking;

  const Plane& plane(std::size_t level) const;
  bool joins(const Plane& plane, const std::array<Link, 2>& detour, std::size_t realm) const;
  std::vector<Rect> standing(Length low, Length high) const;
  std::optional<SlidingPlane> sliding(Length base, std::size_t hold, std::span<const Point> marks) const;
  void link(Plane& plane, Length base) const;
  std::optional<std::size_t> part(const Plane& plane, const HeldAt& at) const;
  Motion motion(const Link& link, Length base) const;
  void slide(std::vector<Motion>& motions, Length base, const HeldAt& from, Point to) const;
  std::vector<Link> fewest_links(const Plane& plane, const HeldAt& from, const HeldAt& to) const;
  void follow(std::vector<Motion>& motions, const Plane& plane, Length base, HeldAt from,
              const HeldAt& to) const;

  const RoomAround& surroundings_;
  std::vector<Hindrance> others_;
  std::array<Length, 3> sides_;
  bool upright_;
  std::vector<Length> heights_;
  mutable std::map<Length, Plane> planes_;
};

}  // namespace berthwright

#pragma once

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "solve/place/nest_dice.h"
#include "solve/place/nest_pair.h"

namespace berthwright {

/// What is to be nested: each part lies as one of some shapes, its turns, which stand one after another.
struct NestTask {
  struct Part {
    std::size_t first = 0;  ///< of its shapes
    std::size_t count = 1;
  };
  std::vector<NestShape> shapes;
  std::vector<Part> parts;
};

/// Bays side by side along x, all but the last of one length. No part may reach from one into the next.
struct NestGround {
  std::int64_t width = 0;  ///< along y
  std::int64_t bay = 0;    ///< at least as long as any shape in one of the turns of each part
  std::int64_t count = 1;
  std::int64_t last = 0;  ///< length of the last bay
  std::int64_t length() const { return (count - 1) * bay + last; }
};

/// Where a part lies: as which shape, the low corner of its box.
struct NestSpot {
  std::size_t shape = 0;
  NestPoint at;
};
using NestSpots = std::vector<NestSpot>;

/// All pairs of shapes of a task, each made when it is first asked for; threads may ask at once.
class NestPairs {
 public:
  explicit NestPairs(const NestTask& task);
  ~NestPairs();
  NestPairs(const NestPairs&) = delete;
  NestPairs& operator=(const NestPairs&) = delete;
  const NestTask& task() const { return task_; }
  /// Where the second must not lie beside the first; with `turned`, the first beside the second.
  struct Seen {
    const NestPair* pair = nullptr;
    bool turned = false;
    /// From what lies at `first` to what lies at `second`, as the pair wants it.
    NestPoint place(NestPoint first, NestPoint second) const {
      return turned ? first - second : second - first;
    }
  };
  Seen of(std::size_t first, std::size_t second);
  bool clash(const NestSpot& a, const NestSpot& b);

 private:
  const NestTask& task_;
  std::vector<std::atomic<const NestPair*>> pairs_;
};

/// Parts on a ground, which may overlap: how much each two do, and what that weighs.
class NestLayout {
 public:
  NestLayout(const NestTask& task, NestPairs& pairs);

  const NestTask& task() const { return task_; }
  NestPairs& pairs() { return pairs_; }
  const NestGround& ground() const { return ground_; }
  const NestSpots& spots() const { return spots_; }
  std::size_t size() const { return spots_.size(); }
  void lie_on(const NestGround& ground) { ground_ = ground; }
  void place_all(const NestGround& ground, const NestSpots& spots);
  void place(std::size_t part, const NestSpot& spot);

  /// A part that is overlapped at a place, and the nearest stretch of the border of what it leaves free.
  struct Touch {
    const NestBorder* border = nullptr;
    NestPoint origin;
    bool turned = false;  ///< the border is turned half round
    double cost = 0;
  };
  /// The weighed sum of severities there; once over `most`, what is over it is not added up.
  double cost(std::size_t part, const NestSpot& spot, double most, std::vector<Touch>* touches = nullptr);
  double cost_of(std::size_t part) const;  ///< as it lies
  bool overlaps(std::size_t part) const;   ///< anything
  double severity() const;                 ///< of all pairs, unweighed; 0: nothing overlaps
  double cost_of_all() const;
  void forget();  ///< all pairs weigh the same again
  void learn();   ///< pairs that overlap weigh more, the worst most; others slowly less
  std::uint64_t looks() const { return looks_; }  ///< places looked at

  /// The low corners open to a shape in one bay; empty if high.x < low.x.
  struct Room {
    NestPoint low;
    NestPoint high;
    bool empty() const { return high.x < low.x || high.y < low.y; }
    NestPoint nearest(NestPoint p) const;
  };
  Room room(std::size_t shape, std::int64_t bay) const;
  /// In the bay where the shape's middle would be, or the one before where that is too short.
  Room room_at(std::size_t shape, NestPoint at) const;
  Room any_room(std::size_t shape, NestDice& dice) const;

 private:
  double severity_of(std::size_t a, std::size_t b, double depth) const;

  const NestTask& task_;
  NestPairs& pairs_;
  NestGround ground_;
  NestSpots spots_;
  struct Box {
    NestPoint low;
    NestPoint high;
  };
  Box box_of(const NestSpot& spot) const;
  std::vector<Box> boxes_;
  std::vector<double> scales_;      // of pairs
  std::vector<double> weights_;     // of pairs, both ways
  std::vector<double> severities_;  // as they lie
  std::uint64_t looks_ = 0;
};

}  // namespace berthwright

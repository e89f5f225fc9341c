#pragma once

#include <optional>

#include "solve/place/nest_build.h"
#include "solve/place/nest_layout.h"

namespace berthwright {

/// Shortens a nesting: the ground is made a little shorter than the best found, parts overlap, and each in
/// turn is moved where it overlaps least, what overlaps long weighing more and more.
class NestSearch {
 public:
  /// How long overlaps are fought: so many times from the least found, so many rounds without a gain each
  /// time.
  struct Persistence {
    std::size_t strikes = 0;
    std::size_t rounds = 0;
  };
  struct Manner {
    std::uint64_t seed = 0;
    Persistence persistence;  ///< while exploring
  };
  NestSearch(NestPairs& pairs, const NestBuilt& built, const Manner& manner);

  const NestGround& ground() const { return best_.ground; }  ///< of the best found
  const NestBuilt& best() const { return best_; }
  std::uint64_t looks() const { return layout_.looks(); }
  /// Goes on from another's best instead of its own.
  void adopt(const NestBuilt& other);

  /// How far to go: nothing new is begun after so many places looked at in all, nothing goes on after `end`
  /// of them; or until nothing can be shorter.
  struct Goal {
    std::uint64_t looks = 0;
    std::uint64_t end = 0;
    std::int64_t least = 0;
  };
  /// Changes layouts at large where overlaps do not go away.
  void explore(const Goal& goal);
  /// Shortens the best by less and less, down to next to nothing at the end.
  void press(const Goal& goal);
  /// Moves what can go left.
  void push();

 private:
  struct Tried {
    double severity = 0;
    NestSpots spots;
  };
  void try_shorter();
  void try_otherwise();
  NestGround shorter(double share) const;
  void shorten(const NestGround& ground);
  Tried separated(const Persistence& limits);
  bool round(Tried& least);
  void keep();
  void settle(std::size_t part, NestSpot& spot);
  void exchange_two();
  bool may_begin() const { return looks() < goal_.looks && best_.ground.length() > goal_.least; }
  bool is_over() const { return looks() >= goal_.end || best_.ground.length() <= goal_.least; }

  const NestTask& task_;
  NestPairs& pairs_;
  NestLayout layout_;
  NestDice dice_;
  Persistence persistence_;
  std::vector<std::size_t> large_;  // the parts that make up three quarters of the area
  Goal goal_;
  NestBuilt best_;
  double share_ = 0;  // by which the ground is to be shortened next
  std::vector<Tried>
      pool_;  // what came of the ground tried last, least overlap first; empty: it was not tried
  NestGround tried_;
  std::optional<std::uint64_t> pressed_from_;
};

}  // namespace berthwright

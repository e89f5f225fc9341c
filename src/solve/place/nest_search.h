#pragma once

#include "solve/place/nest_layout.h"

namespace berthwright {

/// Shortens a nesting: the ground is made a little shorter than the best found, parts overlap, and each in
/// turn is moved where it overlaps least, what overlaps long weighing more and more.
class NestSearch {
 public:
  NestSearch(const NestTask& task, const NestGround& bays, std::uint64_t seed);
  /// Until so many places were looked at, or nothing can be shorter than `least`. As often as wanted.
  void run(std::uint64_t effort, std::int64_t least);

  const NestGround& ground() const { return ground_; }  ///< of the best found
  const NestSpots& spots() const { return spots_; }
  std::uint64_t looks() const { return layout_.looks(); }
  void (*tell)(const NestSearch&) = nullptr;

 private:
  struct Persistence {
    std::size_t strikes = 0;
    std::size_t rounds = 0;
  };
  struct Tried {
    double severity = 0;
    NestSpots spots;
  };
  void explore();
  void press();
  NestGround shorter(double share) const;
  void shorten(const NestGround& ground);
  Tried separated(const Persistence& limits);
  bool round(Tried& least);
  void keep();
  void settle(std::size_t part, NestSpot& spot);
  void exchange_two();
  bool is_over() const { return layout_.looks() >= effort_ || ground_.length() <= least_; }

  const NestTask& task_;
  NestPairs pairs_;
  NestLayout layout_;
  NestDice dice_;
  std::vector<std::size_t> large_;  // the parts that make up three quarters of the area
  std::uint64_t effort_ = 0;
  std::int64_t least_ = 0;
  NestGround ground_;
  NestSpots spots_;
};

}  // namespace berthwright

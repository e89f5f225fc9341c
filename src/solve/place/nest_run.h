#pragma once

#include "solve/place/nest_build.h"
#include "solve/place/nest_layout.h"

namespace berthwright {

struct NestOrder {
  std::uint64_t effort = 0;  ///< places to be looked at
  std::int64_t least = 0;    ///< no ground can be shorter
  std::uint64_t seed = 0;
  bool two_threads = false;  ///< does not change what is found
};

struct NestFound {
  NestBuilt best;
  std::uint64_t looks = 0;
};

/// Two searches from one first layout, each with half the effort; every now and then the one that is behind
/// goes on from the best of the other.
NestFound nest_found(const NestTask& task, const NestGround& bays, const NestOrder& order);

}  // namespace berthwright

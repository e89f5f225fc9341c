#pragma once

#include <cstddef>
#include <cstdint>

namespace berthwright {

/// Numbers from a seed, the same everywhere (SplitMix64; Steele, Lea and Flood 2014, from memory).
class NestDice {
 public:
  explicit NestDice(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15U);
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31U);
  }
  /// Below `count`, which must not be 0.
  std::size_t below(std::size_t count) { return static_cast<std::size_t>(next() % count); }
  /// From 0 to `most`; 0 if that is negative.
  std::int64_t upto(std::int64_t most) {
    return most <= 0 ? 0 : static_cast<std::int64_t>(next() % (static_cast<std::uint64_t>(most) + 1));
  }
  /// From 0 to below 1.
  double share() { return static_cast<double>(next() >> 11U) * 0x1p-53; }

 private:
  std::uint64_t state_;
};

}  // namespace berthwright

#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "solve/convert/move_table.h"

namespace berthwright {

/// Bounds in stages looked at, not in time, so that every machine answers the same.
struct SearchBounds {
  std::size_t tidy = 20'000;      ///< for the least burden; beyond it any order of the fewest steps will do
  std::size_t stages = 400'000;   ///< for an order or a proof
  std::size_t aside = 3'000'000;  ///< stages of a group of pieces that get in each other's way
};

struct LeastSteps {
  enum class Verdict { order, none, undecided };
  Verdict verdict = Verdict::undecided;
  std::vector<TableMove> moves;  ///< as few as can be
  bool least_burden = false;     ///< of these orders one of the least burden
  /// No order has fewer steps, nor would any, had every piece room to be put aside. None: it was not found.
  std::optional<std::size_t> at_least;
  /// Of "none": not even if every piece that can be taken away could be put aside freely. Then the pieces
  /// that bar each other's way, ascending; else empty.
  std::vector<std::size_t> stuck;
  /// Else: the pieces of which one must be put aside, ascending, as `RoomAside::delayed`.
  std::vector<std::size_t> delayed;
  std::size_t stages = 0;  ///< how many were looked at
};

/// Fewest moves from `start` to `goal`. "none" is a proof within the table. Deterministic.
LeastSteps least_steps(const MoveTable& table, const SearchBounds& bounds = {});

}  // namespace berthwright

#pragma once

#include <bitset>
#include <cstddef>
#include <vector>

namespace berthwright {

/// How many spots all pieces of one search may have together.
inline constexpr std::size_t most_spots = 512;
/// A set of spots, by number: of a stage, those that are taken.
using SpotSet = std::bitset<most_spots>;

/// A way between a spot and what the piece can reach from there. Two ways of one piece join where they have
/// the same number.
struct OpenWay {
  std::size_t joins = 0;
  SpotSet barred_by;  ///< no other piece may be at one of these
  bool bent = false;  ///< a soft piece that must be bent or squeezed past something
  friend bool operator==(const OpenWay&, const OpenWay&) = default;
};

/// A place where one piece may be.
struct SpotRow {
  std::size_t piece = 0;
  SpotSet needs;  ///< what carries it there: taken before it comes and until it has left
  std::vector<OpenWay> ways;
  int burden = 0;  ///< of equally many steps those of least burden are sought
};

/// What can be moved where, free of all geometry. A piece may go from a spot to another one when each has a
/// way, the two joined, barred by nothing that is taken, when nothing taken needs the one, and when all that
/// the other needs is taken. So whatever can be done can be undone.
struct MoveTable {
  std::size_t pieces = 0;
  std::vector<SpotRow> spots;      ///< at most `most_spots`
  std::vector<std::size_t> start;  ///< a spot of each piece
  std::vector<std::size_t> goal;   ///< a spot of each piece
};

/// One move: the piece, and its spots by number.
struct TableMove {
  std::size_t piece = 0;
  std::size_t from = 0;
  std::size_t to = 0;
  friend bool operator==(const TableMove&, const TableMove&) = default;
};

}  // namespace berthwright

#pragma once

#include <cstdint>
#include <limits>
#include <vector>

#include "solve/convert/table_rules.h"

namespace berthwright {

/// Pieces that get in each other's way at their starts and goals, and how many moves they need at the least,
/// could each be put aside freely once it can be taken away: a lower bound for every choice of places.
class RoomAside {
 public:
  static constexpr std::uint16_t never = std::numeric_limits<std::uint16_t>::max();

  /// Groups of more than `most` stages are not counted out.
  RoomAside(const TableRules& rules, std::size_t most);

  /// Least number of moves from where the pieces are (a spot each) to the goal; `never`: there is none.
  std::size_t at_least(const std::vector<std::size_t>& at) const;
  bool counted_out() const;
  /// Pieces of groups that need more moves than they have pieces away from their goals, or that were not
  /// counted out, ascending: one of them must be put aside.
  std::vector<std::size_t> delayed() const;
  /// The pieces of the groups that never come from the start to the goal, ascending.
  std::vector<std::size_t> stuck() const;

 private:
  struct Group {
    std::vector<std::size_t> pieces;
    std::vector<std::size_t> weight;   // of each piece's state in the number of a stage
    std::vector<std::uint16_t> moves;  // by the number of a stage; empty: too many
  };
  enum State : std::size_t { at_goal = 0, aside = 1, at_start = 2 };

  void group(const std::vector<std::size_t>& leader);
  std::size_t states_of(std::size_t piece) const;
  void count_out(Group& group) const;
  std::size_t stage_of(const Group& group, const std::vector<std::size_t>& at) const;

  const TableRules& rules_;
  std::vector<Group> groups_;
};

}  // namespace berthwright

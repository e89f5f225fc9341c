#pragma once

#include <optional>
#include <vector>

#include "solve/convert/move_table.h"

namespace berthwright {

/// A move table made ready for many questions.
class TableRules {
 public:
  explicit TableRules(const MoveTable& table);

  const MoveTable& table() const { return table_; }
  const std::vector<std::size_t>& spots_of(std::size_t piece) const { return spots_of_[piece]; }
  const SpotSet& needed_by(std::size_t spot) const { return needed_by_[spot]; }
  /// Of the ways by which the piece of both spots can go, `taken` being where everything is, one that bends
  /// nothing if there is one. None: it cannot.
  std::optional<std::size_t> joined_by(std::size_t from, std::size_t to, const SpotSet& taken) const;
  bool may_move(std::size_t from, std::size_t to, const SpotSet& taken) const;
  /// Whether the piece can be taken up from the spot, and let go there, as far as others bar the way.
  bool is_open(std::size_t spot, const SpotSet& taken) const;
  /// At this spot the piece bars nobody's way and stands on nothing that may move.
  bool is_harmless(std::size_t spot) const { return harmless_[spot]; }

 private:
  struct Joint {
    SpotSet barred_by;
    bool bent;
    std::size_t joins;
  };
  const std::vector<Joint>& joints(std::size_t from, std::size_t to) const;
  static std::vector<Joint> joined(const SpotRow& from, const SpotRow& to);

  const MoveTable& table_;
  std::vector<std::vector<std::size_t>> spots_of_;
  std::vector<std::size_t> place_;  // of each spot among those of its piece
  std::vector<SpotSet> needed_by_;
  std::vector<bool> harmless_;
  std::vector<std::vector<std::vector<Joint>>> joints_;  // by spot, by place of the other
};

}  // namespace berthwright

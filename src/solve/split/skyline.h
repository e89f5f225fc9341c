#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include <berthwright/geometry/point.h>

namespace berthwright {

/// How far up a bay is covered already, if it is always covered where it is lowest: beneath the base of a
/// stretch nothing is free.
class Skyline {
 public:
  struct Stretch {
    Length low;  ///< from here to `high` along x
    Length high;
    Length base;  ///< free from here to `top`
    Length top;
    std::size_t column = 0;
    std::size_t interval = 0;

    Length free() const { return top - base; }
  };
  /// Stretches side by side with one base, walled in to that height at both ends. Whatever comes to lie on
  /// the base stands on it whole and between the walls.
  struct Valley {
    Length low;
    Length high;
    Length base;
    Length width() const { return high - low; }
  };

  /// The union of `parts`, less `taken`.
  Skyline(const std::vector<Rect>& parts, const std::vector<Rect>& taken);

  Int128 free_area() const;
  bool covered() const { return stretches_.empty(); }
  const std::vector<Stretch>& stretches() const { return stretches_; }
  std::vector<Valley> valleys() const;
  /// The leftmost of the lowest. std::logic_error: all is covered.
  Valley lowest() const;
  Point corner() const;
  /// With a rectangle of this size in the corner; none if it does not lie free there.
  std::optional<Skyline> with(Vector size) const;
  /// Two skylines of one bay are the same if these are.
  void append_key(std::vector<std::int64_t>& key) const;

 private:
  Skyline() = default;
  using Column = std::vector<std::pair<Length, Length>>;  // free intervals, rising

  void join_alike();

  std::shared_ptr<const std::vector<Column>> columns_;  // alike ones once
  std::vector<Stretch> stretches_;
};

}  // namespace berthwright

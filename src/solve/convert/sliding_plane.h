#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// Where the low corner of an upright box may be while it slides level: a closed range less the insides of
/// rectangles, so that touching is free and a slot as wide as the box is a way. Exact; ways run along x and
/// y.
class SlidingPlane {
 public:
  /// Corner, stretch between two lines, or field between four of them: x first, then y.
  struct Cell {
    std::size_t x;
    std::size_t y;
    friend bool operator==(Cell, Cell) = default;
  };

  /// `marks` may start or end a way. O(lines along x by lines along y).
  SlidingPlane(const Rect& range, std::span<const Rect> forbidden, std::span<const Point> marks = {});

  /// The connected part in which the point lies; none: it is forbidden or out of range.
  std::optional<std::size_t> part_at(Point at) const;
  std::size_t parts() const { return parts_; }
  /// A shortest way along x and y through middles of fields and along lines, from mark to mark: its corners
  /// with both ends. Empty: none.
  std::vector<Point> way(Point from, Point to) const;
  /// Every crossing of two lines that is free, by x, then y.
  std::vector<Point> free_crossings() const;

 private:
  std::optional<Cell> cell_at(Point at) const;
  Point point_of(Cell cell) const;
  std::size_t number(Cell cell) const { return cell.x * ys_.cells() + cell.y; }
  bool free(Cell cell) const { return part_[number(cell)] != forbidden_part; }
  void number_parts();
  std::vector<Point> straightened(std::vector<Point> way) const;
  bool is_free_between(Point from, Point to) const;

  struct Lines {
    std::vector<Length> at;
    std::size_t cells() const { return 2 * at.size() - 1; }
    std::optional<std::size_t> cell(Length where) const;
    Length middle(std::size_t cell) const;
  };
  static constexpr std::size_t forbidden_part = static_cast<std::size_t>(-1);
  static constexpr std::size_t no_part = static_cast<std::size_t>(-2);

  Lines xs_;
  Lines ys_;
  std::vector<std::size_t> part_;
  std::size_t parts_ = 0;
};

/// Rectangles that cover the region: exact for a rectilinear one; else columns about an inch wide, so too
/// large by what a slanted edge rises within one.
std::vector<Rect> rectangles_over(const Region& region);

}  // namespace berthwright

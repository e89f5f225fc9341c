#pragma once

#include <array>
#include <string>
#include <vector>

namespace berthwright::oracle {

/// An upright prism in millimetres.
struct PlainPrism {
  std::string name;
  std::vector<std::array<double, 2>> corners;  ///< of a simple polygon, either way round
  double base = 0;
  double top = 0;
  double gives = 0;  ///< how far from its sides another thing may be inside of it
};

/// One movement, told by where the thing is before and after it.
struct PlainMotion {
  enum class Kind { straight, turn, tip, swing };
  /// Of a swing: the box `before` turned in its upright section about a pivot, which is then at `at`, `height`.
  struct Key {
    double radians = 0;
    double at = 0;
    double height = 0;
  };
  Kind kind = Kind::straight;
  PlainPrism before;
  PlainPrism after;
  int axis = 0;  ///< of a swing: 0 in the plane of x and z, 1 of y and z
  std::array<double, 2> pivot{};
  std::vector<Key> keys{};
};

/// Walls: an outline, a profile along x and z, and openings as boxes (x, y, z from and to) that lead out.
struct PlainRoom {
  std::vector<std::array<double, 2>> outline;
  std::vector<std::array<double, 2>> profile;
  std::vector<std::array<double, 6>> doors;
};

/// Moves the thing in steps of at most 20 mm, or as many degrees as take its corners no farther, and looks at
/// points of it (corners, and a grid of 50 mm) inside of the others, at theirs inside of it, and at its own
/// outside of the room. What is found first, in words; empty: nothing.
std::string first_overlap(const PlainMotion& motion, const std::vector<PlainPrism>& others,
                          const PlainRoom& room);
/// Largest distance in millimetres by which a sampled point of the motion lies outside all the `cover`
/// prisms.
double farthest_uncovered(const PlainMotion& motion, const std::vector<PlainPrism>& cover);

}  // namespace berthwright::oracle

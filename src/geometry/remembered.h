#pragma once

#include <any>
#include <cstddef>
#include <cstdint>
#include <span>
#include <unordered_map>
#include <utility>
#include <vector>

#include <berthwright/geometry/region.h>

namespace berthwright {

/// A construction and all that it is made from, as numbers: equal exactly when the constructions are.
class Construction {
 public:
  enum class Kind {
    united,
    common,
    without,
    overlaps,
    contains,
    swept,
    rectangles,
    largest,
    upright,
    disc,
    way
  };
  explicit Construction(Kind kind) : numbers_{static_cast<std::int64_t>(kind)} {}

  Construction& of(const Region& region);
  Construction& of(const Polygon& polygon);
  Construction& of(std::span<const Edge> edges);
  Construction& of(std::span<const Length> lengths);

  friend bool operator==(const Construction&, const Construction&) = default;
  std::size_t hash() const;

 private:
  void add(Point point);
  std::vector<std::int64_t> numbers_;
};

/// While one lives, its thread remembers what the costly constructions of this floor gave and does not make
/// the same one twice. No result changes by it. One at a time: a second one in the thread does nothing.
class Remembering {
 public:
  Remembering();
  ~Remembering();
  Remembering(const Remembering&) = delete;
  Remembering& operator=(const Remembering&) = delete;

  /// What the thread remembers of `construction`; empty: nothing.
  static const std::any* found(const Construction& construction);
  static bool is_on();
  static void keep(Construction construction, std::any value);

 private:
  struct Hash {
    std::size_t operator()(const Construction& one) const { return one.hash(); }
  };
  std::unordered_map<Construction, std::any, Hash> kept_;
  static thread_local Remembering* current;
};

/// The value that `make` gives, or gave for the same construction. `construction` is only called for where
/// something is remembered at all.
template <class Value, class Describe, class Make>
Value remembered(Describe construction, Make make) {
  if (!Remembering::is_on()) return make();
  Construction key = construction();
  if (const std::any* known = Remembering::found(key)) return std::any_cast<const Value&>(*known);
  Value value = make();
  Remembering::keep(std::move(key), value);
  return value;
}

}  // namespace berthwright

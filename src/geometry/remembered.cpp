#include "geometry/remembered.h"

namespace berthwright {

// Counts stand before what they count, so that no two constructions are written alike.
void Construction::add(Point point) {
  numbers_.push_back(point.x.ticks());
  numbers_.push_back(point.y.ticks());
}

Construction& Construction::of(const Polygon& polygon) {
  numbers_.push_back(static_cast<std::int64_t>(polygon.vertices().size()));
  for (const Point& corner : polygon.vertices()) add(corner);
  return *this;
}

Construction& Construction::of(const Region& region) {
  numbers_.push_back(static_cast<std::int64_t>(region.faces().size()));
  for (const Face& face : region.faces()) {
    of(face.outer);
    numbers_.push_back(static_cast<std::int64_t>(face.holes.size()));
    for (const Polygon& hole : face.holes) of(hole);
  }
  return *this;
}

Construction& Construction::of(std::span<const Edge> edges) {
  numbers_.push_back(static_cast<std::int64_t>(edges.size()));
  for (const Edge& edge : edges) add(edge.from), add(edge.to);
  return *this;
}

Construction& Construction::of(std::span<const Length> lengths) {
  numbers_.push_back(static_cast<std::int64_t>(lengths.size()));
  for (const Length length : lengths) numbers_.push_back(length.ticks());
  return *this;
}

std::size_t Construction::hash() const {
  std::uint64_t hash = 14695981039346656037U;
  for (const std::int64_t number : numbers_) {
    hash = (hash ^ static_cast<std::uint64_t>(number)) * 1099511628211U;
    hash ^= hash >> 29U;
  }
  return static_cast<std::size_t>(hash);
}

thread_local Remembering* Remembering::current = nullptr;

Remembering::Remembering() {
  if (current == nullptr) current = this;
}

Remembering::~Remembering() {
  if (current == this) current = nullptr;
}

bool Remembering::is_on() { return current != nullptr; }

const std::any* Remembering::found(const Construction& construction) {
  const auto known = current->kept_.find(construction);
  return known == current->kept_.end() ? nullptr : &known->second;
}

void Remembering::keep(Construction construction, std::any value) {
  current->kept_.emplace(std::move(construction), std::move(value));
}

}  // namespace berthwright

#include "solve/place/nest_shape.h"

#include <algorithm>
#include <stdexcept>

namespace berthwright {
namespace {

std::int64_t turning(NestPoint a, NestPoint b, NestPoint c) { return cross(b - a, c - a); }

std::int64_t doubled_area_of(const NestRing& ring) {
  std::int64_t sum = 0;
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) sum += turning(ring[0], ring[i], ring[i + 1]);
  return sum;
}

void drop_straight_corners(NestRing& ring) {
  for (std::size_t i = 0; i < ring.size() && ring.size() > 3;) {
    const std::size_t n = ring.size();
    if (turning(ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]) == 0) {
      ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(i));
      i = i == 0 ? 0 : i - 1;
    } else {
      ++i;
    }
  }
}

bool within_triangle(NestPoint p, NestPoint a, NestPoint b, NestPoint c) {
  return turning(a, b, p) >= 0 && turning(b, c, p) >= 0 && turning(c, a, p) >= 0;
}

bool lies_between(NestPoint p, NestPoint a, NestPoint b) {
  return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
         p.y <= std::max(a.y, b.y);
}

// Whether the open way from `a` to `b` meets an edge of the ring; touching at its ends does not count.
bool is_barred(const NestRing& ring, NestPoint a, NestPoint b) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const NestPoint c = ring[i];
    const NestPoint d = ring[(i + 1) % ring.size()];
    if (c == a || c == b || d == a || d == b) continue;
    const std::int64_t sides[] = {turning(a, b, c), turning(a, b, d), turning(c, d, a), turning(c, d, b)};
    if ((sides[0] > 0 && sides[1] > 0) || (sides[0] < 0 && sides[1] < 0)) continue;
    if ((sides[2] > 0 && sides[3] > 0) || (sides[2] < 0 && sides[3] < 0)) continue;
    if (sides[0] == 0 && sides[1] == 0 && !lies_between(c, a, b) && !lies_between(d, a, b)) continue;
    return true;
  }
  return false;
}

// The way from `to` leaves into the solid between the edges at corner `i`.
bool opens_inward(const NestRing& ring, std::size_t i, NestPoint to) {
  const std::size_t n = ring.size();
  const NestPoint before = ring[(i + n - 1) % n];
  const NestPoint after = ring[(i + 1) % n];
  const bool left_of_both = turning(before, ring[i], to) > 0 && turning(ring[i], after, to) > 0;
  const bool left_of_one = turning(before, ring[i], to) > 0 || turning(ring[i], after, to) > 0;
  return turning(before, ring[i], after) > 0 ? left_of_both : left_of_one;
}

// Joins the hole to the outline by a cut there and back, at the shortest free way.
void cut_open(NestRing& outline, const NestRing& hole, const std::vector<NestRing>& all) {
  std::size_t from = 0;
  std::size_t to = 0;
  double shortest = -1;
  for (std::size_t i = 0; i < outline.size(); ++i)
    for (std::size_t j = 0; j < hole.size(); ++j) {
      const NestPoint way = hole[j] - outline[i];
      const double length = static_cast<double>(way.x) * static_cast<double>(way.x) +
                            static_cast<double>(way.y) * static_cast<double>(way.y);
      if (shortest >= 0 && length >= shortest) continue;
      if (!opens_inward(outline, i, hole[j]) || is_barred(outline, outline[i], hole[j])) continue;
      if (std::ranges::any_of(all, [&](const NestRing& r) { return is_barred(r, outline[i], hole[j]); }))
        continue;
      from = i, to = j, shortest = length;
    }
  if (shortest < 0) throw std::logic_error("a hole of a part to be nested has no way to its outline");
  NestRing joined(outline.begin(), outline.begin() + static_cast<std::ptrdiff_t>(from) + 1);
  for (std::size_t k = 0; k <= hole.size(); ++k) joined.push_back(hole[(to + k) % hole.size()]);
  joined.insert(joined.end(), outline.begin() + static_cast<std::ptrdiff_t>(from), outline.end());
  outline = std::move(joined);
}

bool is_ear(const NestRing& ring, std::size_t i) {
  const std::size_t n = ring.size();
  const NestPoint a = ring[(i + n - 1) % n];
  const NestPoint b = ring[i];
  const NestPoint c = ring[(i + 1) % n];
  if (turning(a, b, c) <= 0) return false;
  return std::ranges::none_of(
      ring, [&](NestPoint p) { return p != a && p != b && p != c && within_triangle(p, a, b, c); });
}

std::vector<NestRing> triangles_of(NestRing ring) {
  std::vector<NestRing> result;
  while (ring.size() >= 3) {
    const std::size_t n = ring.size();
    std::size_t ear = n;
    for (std::size_t i = 0; i < n && ear == n; ++i) {
      // What is straight or runs back on itself holds nothing.
      if (turning(ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]) == 0) ear = i;
    }
    const bool flat = ear < n;
    for (std::size_t i = 0; i < n && ear == n; ++i)
      if (is_ear(ring, i)) ear = i;
    if (ear == n) throw std::logic_error("a part to be nested has no ear");
    if (!flat) result.push_back({ring[(ear + n - 1) % n], ring[ear], ring[(ear + 1) % n]});
    ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(ear));
  }
  return result;
}

bool is_convex(const NestRing& ring) {
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n; ++i)
    if (turning(ring[i], ring[(i + 1) % n], ring[(i + 2) % n]) < 0) return false;
  return true;
}

// The union of two pieces along a common edge; empty if they have none or it is not convex.
NestRing joined_convex(const NestRing& a, const NestRing& b) {
  for (std::size_t i = 0; i < a.size(); ++i)
    for (std::size_t j = 0; j < b.size(); ++j) {
      if (a[i] != b[(j + 1) % b.size()] || a[(i + 1) % a.size()] != b[j]) continue;
      NestRing ring;
      for (std::size_t k = 1; k <= a.size(); ++k) ring.push_back(a[(i + k) % a.size()]);
      for (std::size_t k = 2; k < b.size(); ++k) ring.push_back(b[(j + k) % b.size()]);
      return is_convex(ring) ? ring : NestRing{};
    }
  return {};
}

void join_pieces(std::vector<NestRing>& pieces) {
  for (bool joined = true; joined;) {
    joined = false;
    for (std::size_t i = 0; i < pieces.size(); ++i)
      for (std::size_t j = i + 1; j < pieces.size(); ++j)
        if (NestRing both = joined_convex(pieces[i], pieces[j]); !both.empty()) {
          pieces[i] = std::move(both);
          pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(j));
          joined = true;
          --j;
        }
  }
  for (NestRing& piece : pieces) drop_straight_corners(piece);
}

}  // namespace

NestShape nest_shape(std::vector<NestRing> rings) {
  if (rings.empty() || rings.front().size() < 3) throw std::logic_error("a part to be nested has no outline");
  NestPoint low = rings.front().front();
  NestPoint high = low;
  for (const NestPoint p : rings.front()) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  std::int64_t doubled = 0;
  for (NestRing& ring : rings) {
    for (NestPoint& p : ring) p = p - low;
    drop_straight_corners(ring);
    doubled += doubled_area_of(ring);
  }
  NestRing outline = rings.front();
  const std::vector<NestRing> holes(rings.begin() + 1, rings.end());
  for (const NestRing& hole : holes) cut_open(outline, hole, holes);
  NestShape shape{triangles_of(std::move(outline)), high.x - low.x, high.y - low.y,
                  static_cast<double>(doubled) / 2};
  for (const NestRing& triangle : shape.convex) doubled -= doubled_area_of(triangle);
  if (doubled != 0) throw std::logic_error("the pieces of a part to be nested do not make it up");
  join_pieces(shape.convex);
  return shape;
}

}  // namespace berthwright

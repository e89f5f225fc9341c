#include <berthwright/geometry/solid.h>

#include <stdexcept>

namespace berthwright {

Solid::Solid(Region outline, Length base, Length top) : outline_(std::move(outline)), base_(base), top_(top) {
  if (outline_.empty()) throw std::invalid_argument("a solid needs an outline");
  if (base_ >= top_) throw std::invalid_argument("a solid needs a positive height");
}

bool overlaps(const Solid& a, const Solid& b) {
  return a.base() < b.top() && b.base() < a.top() && overlaps(a.outline(), b.outline());
}

}  // namespace berthwright

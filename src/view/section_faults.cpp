#include "view/section_faults.h"

#include <algorithm>

namespace berthwright {
namespace {

constexpr Length edge_is_shared = Length::inches(1, 16);

std::vector<Rect> faces_in(const DrawnConfiguration& of, const Section& section, const std::string& id) {
  const Placed* thing = of.answer->arrangement.find(id);
  return thing == nullptr ? std::vector<Rect>{} : cut(thing->solid, section.line);
}

}  // namespace

std::vector<SectionRidge> section_ridges(const DrawnConfiguration& of, const Section& section) {
  std::vector<SectionRidge> ridges;
  for (const BedAnswer& bed : of.answer->beds)
    for (const Ridge& ridge : bed.mattress.ridges)
      for (const Rect& lower : faces_in(of, section, ridge.lower.text()))
        for (const Rect& higher : faces_in(of, section, ridge.higher.text())) {
          const bool onward = abs(lower.low.x - higher.high.x) <= edge_is_shared;
          if (!onward && abs(higher.low.x - lower.high.x) > edge_is_shared) continue;
          ridges.push_back(
              {&ridge, onward ? lower.low.x : lower.high.x, lower.high.y, higher.high.y, onward});
        }
  return ridges;
}

std::vector<SectionClash> section_clashes(const DrawnConfiguration& of, const Section& section) {
  std::vector<SectionClash> clashes;
  for (const Collision& collision : of.answer->collisions) {
    if (collision.tolerated) continue;
    for (const Rect& a : faces_in(of, section, collision.first))
      for (const Rect& b : faces_in(of, section, collision.second)) {
        const Rect box{{std::max(a.low.x, b.low.x), std::max(a.low.y, b.low.y)},
                       {std::min(a.high.x, b.high.x), std::min(a.high.y, b.high.y)}};
        if (box.low.x < box.high.x && box.low.y < box.high.y) clashes.push_back({&collision, box});
      }
  }
  return clashes;
}

}  // namespace berthwright

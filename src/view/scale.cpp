#include "view/scale.h"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace berthwright {
namespace {

constexpr std::array inch_scales{Scale{4, "3\" = 1'-0\" (1:4)"},       Scale{8, "1 1/2\" = 1'-0\" (1:8)"},
                                 Scale{12, "1\" = 1'-0\" (1:12)"},     Scale{16, "3/4\" = 1'-0\" (1:16)"},
                                 Scale{24, "1/2\" = 1'-0\" (1:24)"},   Scale{32, "3/8\" = 1'-0\" (1:32)"},
                                 Scale{48, "1/4\" = 1'-0\" (1:48)"},   Scale{64, "3/16\" = 1'-0\" (1:64)"},
                                 Scale{96, "1/8\" = 1'-0\" (1:96)"},   Scale{192, "1/16\" = 1'-0\" (1:192)"},
                                 Scale{384, "1/32\" = 1'-0\" (1:384)"}};

constexpr std::array metric_scales{Scale{5, "1:5"},     Scale{10, "1:10"},   Scale{20, "1:20"},
                                   Scale{25, "1:25"},   Scale{50, "1:50"},   Scale{75, "1:75"},
                                   Scale{100, "1:100"}, Scale{200, "1:200"}, Scale{500, "1:500"}};

// Where a chain of chords that stands for `arc` ends, walking the ring from `start`; `start` when none does.
std::size_t end_of_arc(std::span<const Point> ring, std::size_t start, const Arc& arc, bool forward) {
  const Point from = forward ? arc.from : arc.to;
  const Point to = forward ? arc.to : arc.from;
  const bool left = forward ? arc.left : !arc.left;
  if (ring[start] != from) return start;
  for (std::size_t i = 1; i < ring.size(); ++i) {
    const Point p = ring[(start + i) % ring.size()];
    if (p == to) return start + i;
    const std::int64_t side = cross(from, to, p);
    if (left ? side >= 0 : side <= 0) return start;  // not on the arc's side of its chord
  }
  return start;
}

Path path_of(const PlanView& view, std::span<const Point> ring, std::span<const Arc> arcs, Ink ink) {
  // A path must not begin within an arc: begin where one begins, if there is any.
  std::size_t first = 0;
  for (std::size_t i = 0; i < ring.size(); ++i)
    for (const Arc& arc : arcs)
      for (const bool forward : {true, false})
        if (end_of_arc(ring, i, arc, forward) != i) first = i;
  Path path{ink, view(ring[first]), {}, true};
  for (std::size_t i = first; i < first + ring.size();) {
    Stretch stretch{view(ring[(i + 1) % ring.size()]), {}, false};
    std::size_t next = i + 1;
    for (const Arc& arc : arcs)
      for (const bool forward : {true, false}) {
        const std::size_t end = end_of_arc(ring, i % ring.size(), arc, forward);
        if (end == i % ring.size()) continue;
        next = i + (end - i % ring.size());
        stretch = {view(ring[next % ring.size()]), on_paper(arc.radius, view.ratio), forward != arc.left};
      }
    i = next;
    if (i < first + ring.size() || stretch.radius != PaperLength{}) path.stretches.push_back(stretch);
  }
  return path;
}

}  // namespace

std::span<const Scale> scales(Unit unit) {
  switch (unit) {
    case Unit::inch:
      return inch_scales;
    case Unit::millimetre:
      return metric_scales;
  }
  throw std::logic_error("Unit out of range");
}

PaperLength on_paper(Length length, std::int64_t ratio) {
  const std::int64_t ticks_per_micrometre = ticks_per_mm / 1000 * ratio;
  const std::int64_t doubled = 2 * length.ticks() + ticks_per_micrometre;
  const std::int64_t whole = 2 * ticks_per_micrometre;
  return PaperLength::micrometres(doubled >= 0 ? doubled / whole : -((whole - 1 - doubled) / whole));
}

Length in_nature(PaperLength length, std::int64_t ratio) {
  return Length::from_ticks(length.micrometres() * (ticks_per_mm / 1000) * ratio);
}

PaperRing PlanView::operator()(const Polygon& polygon) const {
  PaperRing ring;
  ring.reserve(polygon.size());
  for (const Point p : polygon.vertices()) ring.push_back((*this)(p));
  return ring;
}

std::vector<PaperRing> PlanView::operator()(const Region& region) const {
  std::vector<PaperRing> rings;
  for (const Face& face : region.faces()) {
    rings.push_back((*this)(face.outer));
    for (const Polygon& hole : face.holes) rings.push_back((*this)(hole));
  }
  return rings;
}

std::vector<Path> paths_of(const PlanView& view, const Region& region, std::span<const Arc> arcs, Ink ink) {
  std::vector<Path> paths;
  for (const Face& face : region.faces()) {
    paths.push_back(path_of(view, face.outer.vertices(), arcs, ink));
    for (const Polygon& hole : face.holes) paths.push_back(path_of(view, hole.vertices(), arcs, ink));
  }
  return paths;
}

}  // namespace berthwright

#pragma once

#include <span>
#include <string>

#include <berthwright/exact/measure.h>
#include <berthwright/geometry/outline.h>
#include <berthwright/geometry/region.h>

#include "view/paper.h"

namespace berthwright {

/// One of the scales a ruler carries.
struct Scale {
  std::int64_t ratio;      ///< 20 for 1:20
  std::string_view words;  ///< as the title block says it
};

/// Largest drawing first. Inches: architects' scales; millimetres: ISO 5455, and 1:25, 1:75 which a scale
/// ruler carries too.
std::span<const Scale> scales(Unit unit);

/// Rounded to the nearest micrometre.
PaperLength on_paper(Length length, std::int64_t ratio);
Length in_nature(PaperLength length, std::int64_t ratio);

/// A plan seen from above, laid on paper with the front at the left: x runs to the right and y, from the left
/// wall to the right wall, runs up the page, as a person sees it who looks down and toward the hitch.
struct PlanView {
  std::int64_t ratio = 20;
  PaperPoint origin;  ///< where x = 0, y = 0 stands

  PaperPoint operator()(Point p) const {
    return {origin.x + on_paper(p.x, ratio), origin.y - on_paper(p.y, ratio)};
  }
  PaperRing operator()(const Polygon& polygon) const;
  std::vector<PaperRing> operator()(const Region& region) const;
};

/// The borders of a region, one path a border, with true arcs wherever `arcs` has one for a run of chords.
std::vector<Path> paths_of(const PlanView& view, const Region& region, std::span<const Arc> arcs, Ink ink);

}  // namespace berthwright

#include <berthwright/solve/cover/cover.h>

#include <algorithm>
#include <utility>

#include <berthwright/geometry/mitred.h>
#include <berthwright/solve/open/road.h>

#include "plan/wall_names.h"
#include "solve/cover/boxing.h"

namespace berthwright {
namespace {

Polygon mapped_corners(const Polygon& polygon, bool flip_x, bool flip_y) {
  const Rect box = polygon.bounds();
  std::vector<Point> corners;
  for (const Point& p : polygon.vertices())
    corners.push_back(
        {flip_x ? box.low.x + box.high.x - p.x : p.x, flip_y ? box.low.y + box.high.y - p.y : p.y});
  return Polygon::promised(std::move(corners));
}

// The bottom panel is the mirror image of the top one; turned over it may be the same shape again.
bool is_its_own_mirror(const Polygon& polygon) {
  return mapped_corners(polygon, true, false) == polygon || mapped_corners(polygon, false, true) == polygon;
}

// A seat points from its front to its back, a back to its upper edge: in the first configuration that has a
// front.
std::optional<Wall> up_of(const std::vector<SeenRoom>& stood, const Piece& piece, const Rim& rim,
                          const std::vector<std::vector<EdgeSight>>& sights) {
  for (std::size_t c = 0; c < stood.size(); ++c) {
    const Placed* self = stood[c].arrangement.find(piece.id.text());
    if (self == nullptr) continue;
    const bool lies = self->pose->manner == Pose::Manner::flat;
    for (std::size_t e = 0; e < rim.edges.size(); ++e)
      if (sights[e][c].kind == EdgeSight::Kind::front && rim.edges[e].looks)
        return lies ? opposite(*rim.edges[e].looks) : *rim.edges[e].looks;
  }
  return std::nullopt;
}

PanelFit fit_of(const CoverPanel& panel, const std::optional<Wall>& up, const Sewing& sewing) {
  const bool along = up == Wall::front || up == Wall::rear;
  const Length across = !sewing.one_way || !up ? std::min(panel.length, panel.width)
                        : along                ? panel.width
                                               : panel.length;
  if (across <= sewing.fabric_width) return PanelFit::fits;
  return std::min(panel.length, panel.width) <= sewing.fabric_width ? PanelFit::turned_only
                                                                    : PanelFit::too_wide;
}

}  // namespace

Length zip_strip_width(Length boxing_cut) { return half(boxing_cut + one_tick) + Length::inches(3, 4); }

CoverPanel cover_panel(const Outline& outline, Length seam_allowance) {
  std::optional<Polygon> cut = mitred(outline.polygon(), seam_allowance);
  const bool sharp = cut.has_value();
  if (!sharp) {
    const Region round = grown(Region(outline.polygon()), seam_allowance);
    cut = round.faces().front().outer;
  }
  const Rect box = cut->bounds();
  return {*cut, box.width(), box.height(), sharp, is_its_own_mirror(outline.polygon())};
}

Cover cover_of(const Plan& plan, const Sewing& sewing, const std::vector<SeenRoom>& stood,
               const Piece& piece) {
  const Length seams = sewing.seam_allowance * 2;
  const Rim rim = rim_of(piece.outline);
  const CoverPanel panel = cover_panel(piece.outline, sewing.seam_allowance);
  const ZipEdge place = zip_edge(plan, stood, piece, rim);
  const std::optional<Wall> up = up_of(stood, piece, rim, place.sights);
  const Length boxing_cut = piece.thickness + seams;
  const ZipStrips zip = zip_strips(rim, place, boxing_cut, sewing.seam_allowance);
  Cover cover{&piece,
              rim,
              foam_blank(piece, sewing.foam_cut),
              panel,
              up,
              fit_of(panel, up, sewing),
              boxing_beside(rim, zip, boxing_cut, sewing),
              zip,
              std::nullopt,
              std::nullopt};
  if (sewing.welt) {
    const Length length = rim.perimeter * 2 + welt_ends;
    cover.welt = {length, roll_strips(length, welt_strip_width, sewing.fabric_width, seams)};
  }
  if (sewing.batting && cover.foam)
    cover.batting = {cover.foam->length, cover.foam->width, rim.perimeter, cover.foam->thickness};
  return cover;
}

Result<std::vector<Cover>> covers(const Plan& plan, const Sewing& sewing) {
  std::vector<SeenRoom> stood;
  for (const Configuration& configuration : plan->configurations) {
    if (is_on_the_road(configuration)) continue;
    Result<Arrangement> arrangement = arranged(plan, configuration);
    if (!arrangement) return arrangement.problems();
    stood.push_back({std::move(arrangement).value(), {}});
    stood.back().seats = seats_of(plan, stood.back().arrangement);
  }
  std::vector<Cover> all;
  for (const Piece& piece : plan->pieces)
    if (piece.kind == Piece::Kind::cushion) all.push_back(cover_of(plan, sewing, stood, piece));
  return all;
}

}  // namespace berthwright

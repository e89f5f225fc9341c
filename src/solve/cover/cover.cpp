#include <berthwright/solve/cover/cover.h>

#include <algorithm>
#include <span>
#include <stdexcept>
#include <utility>

#include <berthwright/solve/open/road.h>

#include "plan/wall_names.h"
#include "solve/cover/boxing.h"

namespace berthwright {
namespace {

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

// The way out of a middle, as one sees it who looks against `faces`: positive to the right.
Length to_the_right(Wall faces, Vector way) {
  switch (faces) {
    case Wall::front:
      return -way.y;
    case Wall::rear:
      return way.y;
    case Wall::left:
      return way.x;
    case Wall::right:
      return -way.x;
  }
  throw std::logic_error("Wall out of range");
}

Point centre_of(const Rect& box) { return {half(box.low.x + box.high.x), half(box.low.y + box.high.y)}; }

Point middle_of_seat(const Seat& seat, const Arrangement& arrangement) {
  std::optional<Rect> all;
  for (const std::string& id : seat.cushions) {
    const Rect box = arrangement.find(id)->solid.outline().bounds();
    all = all ? hull(*all, box) : box;
  }
  return centre_of(*all);
}

const Sewing& sewing_of(const Piece& piece, const Sewing& usual) {
  return piece.sewing ? *piece.sewing : usual;
}

// The seams that a welt is sewn into, once round each.
Length welted_seams(const Cover& cover) {
  const Piece& piece = *cover.piece;
  if (!cover.reckoned()) return {};
  switch (cover.sewing.shape) {
    case CoverShape::boxed:
      return cover.rim.perimeter * 2;
    case CoverShape::knife_edge:  // half of the thickness beyond every side
      return cover.rim.perimeter + piece.thickness * 4;
    case CoverShape::waterfall:
      return (cover.shaped->parts.front().length - cover.sewing.seam_allowance * 2 + piece.thickness) * 2;
    case CoverShape::bolster:
      return circumference(piece.thickness) * 2;
    case CoverShape::board_backed:
      return {};
  }
  throw std::logic_error("CoverShape out of range");
}

// What the trade sells is known in inches only.
std::optional<GlueUp> glued_from(const FoamBlank& foam, const std::vector<FoamSheet>& sheets, Unit unit) {
  if (sheets.empty() && unit != Unit::inch) return std::nullopt;
  return glue_up(foam.length, foam.width, foam.thickness,
                 sheets.empty() ? usual_foam_sheets() : std::span<const FoamSheet>(sheets));
}

}  // namespace

Length zip_strip_width(Length boxing_cut) { return half(boxing_cut + one_tick) + Length::inches(3, 4); }

Length welt_strip_width(Length cord, Length seam_allowance) {
  const std::int64_t eighth = ticks_per_inch / 8;
  const std::int64_t exact = (circumference(cord) + seam_allowance * 2).ticks();
  return Length::from_ticks((exact + eighth - 1) / eighth * eighth);
}

Length beside_seat(const std::vector<SeenRoom>& stood, const Piece& piece) {
  const std::string& id = piece.id.text();
  for (const SeenRoom& one : stood)
    for (const Seat& seat : one.seats) {
      const bool is_of_it = std::ranges::find(seat.cushions, id) != seat.cushions.end() ||
                            std::ranges::find(seat.backs, id) != seat.backs.end();
      if (!is_of_it || !seat.faces) continue;
      const Rect box = one.arrangement.find(id)->solid.outline().bounds();
      return to_the_right(*seat.faces, centre_of(box) - middle_of_seat(seat, one.arrangement));
    }
  return {};
}

Cover cover_of(const Plan& plan, const Sewing& usual, const std::vector<SeenRoom>& stood,
               const Piece& piece) {
  Sewing sewing = sewing_of(piece, usual);
  if (piece.kind == Piece::Kind::bolster && !piece.sewing) sewing.shape = CoverShape::bolster;
  const Length seams = sewing.seam_allowance * 2;
  const Rim rim = rim_of(piece.outline);
  CoverPanel panel = cover_panel(piece.outline, sewing.seam_allowance);
  ZipEdge place = zip_edge(plan, stood, piece, rim, sewing.zip_edge);
  const std::optional<Wall> up = up_of(stood, piece, rim, place.sights);
  // A wrap goes round the front, so its zip is at the back.
  if (sewing.shape == CoverShape::waterfall && up) place = zip_edge(plan, stood, piece, rim, up);
  std::optional<ShapedCover> shaped;
  if (sewing.shape != CoverShape::boxed) {
    const Wall zip_side = rim.edges[place.edge].looks.value_or(Wall::rear);
    shaped = shaped_cover(piece, sewing, up.value_or(zip_side), rim.edges[place.edge].length);
    if (shaped->panel) panel = *shaped->panel;
  }
  const Length boxing_cut = piece.thickness + seams;
  const ZipStrips zip = zip_strips(rim, place, boxing_cut, sewing.seam_allowance);
  Cover cover{&piece,
              sewing,
              rim,
              foam_of(piece, sewing),
              std::nullopt,
              panel,
              up,
              panel_lay(panel, up, sewing, beside_seat(stood, piece)),
              boxing_beside(rim, zip, boxing_cut, sewing),
              zip,
              shaped,
              std::nullopt,
              std::nullopt};
  if (cover.foam) cover.glued = glued_from(*cover.foam, usual.foam_sheets, plan->unit);
  if (const Length seamed = welted_seams(cover); sewing.welt && seamed > Length{}) {
    const Length length = seamed + welt_ends;
    const Length strip = welt_strip_width(*sewing.welt, sewing.seam_allowance);
    cover.welt = {length, strip, roll_strips(length, strip, sewing.fabric.width, seams)};
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
    if (piece.is_soft()) all.push_back(cover_of(plan, sewing, stood, piece));
  return all;
}

}  // namespace berthwright

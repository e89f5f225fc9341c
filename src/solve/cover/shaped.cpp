#include <berthwright/solve/cover/shaped.h>

#include <algorithm>

#include <berthwright/geometry/mitred.h>
#include <berthwright/solve/cover/cover.h>

#include "plan/wall_names.h"

namespace berthwright {
namespace {

using What = ShapedPart::What;

bool is_rectangle(const Piece& piece) {
  return piece.outline.polygon() == Polygon::rectangle({{}, {piece.length, piece.width}});
}

void cut_waterfall(ShapedCover& cover, const Piece& piece, const Sewing& sewing, Wall up) {
  const Length seams = sewing.seam_allowance * 2;
  const bool along = is_end_wall(up);
  const Length depth = along ? piece.length : piece.width;
  const Length width = along ? piece.width : piece.length;
  if (!is_rectangle(piece) || depth * 2 <= piece.thickness) return;
  const Length border = piece.thickness + seams;
  cover.parts = {{What::wrap, 1, waterfall_path(depth, piece.thickness) + seams, width + seams},
                 {What::side, 2, depth + seams, border},
                 {What::zip_strip, 2, width + seams, zip_strip_width(border)}};
  cover.zip = width;
}

void cut_bolster(ShapedCover& cover, const Piece& piece, const Sewing& sewing) {
  const Length seams = sewing.seam_allowance * 2;
  const Length across = std::min(piece.length, piece.width);
  const Length length = std::max(piece.length, piece.width);
  if (!is_round(piece)) return;
  cover.parts = {{What::wrap, 1, circumference(across) + seams, length + seams},
                 {What::disc, 2, across + seams, across + seams}};
  cover.zip = length;
}

void cut_board_backed(ShapedCover& cover, const Piece& piece) {
  cover.panel = cover_panel(piece.outline, piece.thickness + staple_allowance);
  const std::optional<Polygon> board = mitred(piece.outline.polygon(), -half(board_under));
  if (!board) return;
  const Rect box = board->bounds();
  cover.parts = {{What::board, 1, box.width(), box.height()}};
}

}  // namespace

Length circumference(Length diameter) { return quarter_arc(diameter * 2); }

Length waterfall_path(Length depth, Length thickness) {
  return depth * 2 - thickness + quarter_arc(thickness);
}

ShapedCover shaped_cover(const Piece& piece, const Sewing& sewing, Wall up, Length zip_edge) {
  ShapedCover cover{.shape = sewing.shape};
  switch (sewing.shape) {
    case CoverShape::boxed:
      break;
    case CoverShape::knife_edge:
      cover.panel = cover_panel(piece.outline, half(piece.thickness + one_tick) + sewing.seam_allowance);
      cover.zip = zip_edge;
      break;
    case CoverShape::waterfall:
      cut_waterfall(cover, piece, sewing, up);
      break;
    case CoverShape::bolster:
      cut_bolster(cover, piece, sewing);
      break;
    case CoverShape::board_backed:
      cut_board_backed(cover, piece);
      break;
  }
  return cover;
}

}  // namespace berthwright

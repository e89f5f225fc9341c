#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include <berthwright/plan/things.h>
#include <berthwright/solve/cover/cover_panel.h>

namespace berthwright {

/// A rectangle of cloth, or a board, of a cover that is not boxed.
struct ShapedPart {
  enum class What { wrap, side, disc, zip_strip, board };
  What what = What::wrap;
  int count = 1;
  Length length;  ///< of a wrap along its way round; of a disc across it, as the width
  Length width;
};

/// What is cut for a cover that is not boxed.
struct ShapedCover {
  CoverShape shape = CoverShape::knife_edge;
  std::optional<CoverPanel> panel{};  ///< knife edge: of two; board backed: the one over front and sides
  std::vector<ShapedPart> parts{};
  Length zip{};  ///< finished; none on a board
  bool reckoned() const { return panel || !parts.empty(); }
};

/// What a fabric needs behind a board to be stapled there, beyond its edge: 2 to 3 in
/// (littlevintagetrailer.com, 2012/04; upholsteryresource.com, node 173), the larger.
inline constexpr Length staple_allowance = Length::inches(3);
/// How much smaller than the cushion its board is, both sides together: 1 to 2 in (the same two pages), the
/// smaller.
inline constexpr Length board_under = Length::inches(1);

/// Once round a circle, rounded up to the tick.
Length circumference(Length diameter);
/// Around the foam of a waterfall cushion: over the top, round a half circle at the front, back beneath.
Length waterfall_path(Length depth, Length thickness);

/// Knife edge, over a slab: two panels that reach half the thickness down each side (webcasty.com, 2013).
/// Waterfall: a wrap and two sides with a half circle at the front, which looks away from `up`; the zip
/// stands at the back (a marine do-it-yourself book, excerpt at store.upholster.com). Bolster: a wrap and two
/// discs (common practice, no source). Board backed: one panel over front and sides, stapled behind. Boxed,
/// or of an outline for which there is no such form (a waterfall that is no rectangle, a bolster that is not
/// round): not reckoned.
ShapedCover shaped_cover(const Piece& piece, const Sewing& sewing, Wall up, Length zip_edge);

}  // namespace berthwright

#pragma once

#include <optional>
#include <vector>

#include <berthwright/geometry/outline.h>
#include <berthwright/plan/names.h>
#include <berthwright/plan/sewing.h>

namespace berthwright {

/// Top or bottom panel as it is cut: the finished outline with the seam allowance around it.
struct CoverPanel {
  Polygon outline;  ///< around the piece's own frame, so that its corners may be negative
  Length length;    ///< of the box around it, along x
  Length width;
  bool sharp = true;      ///< corners as drawn; else a slit was too narrow for that, and corners are rounded
  bool symmetric = true;  ///< top and bottom are alike; else one is the mirror image of the other
};

/// The outline with `around` of cloth beyond it.
CoverPanel cover_panel(const Outline& outline, Length around);

/// How a panel lies on the roll.
enum class PanelFit {
  fits,         ///< its up along the roll where the fabric has one way, else either way
  turned_only,  ///< only with its up across the roll, which a fabric with one way does not allow
  too_wide      ///< both its sides are wider than the fabric: it takes a seam
};

/// Where a cut begins behind the middle of a motif or a stripe, so that another stands where it should; less
/// than a repeat, zero where the pattern does not come again that way.
struct RepeatPlace {
  Length along;
  Length across;
  friend bool operator==(const RepeatPlace&, const RepeatPlace&) = default;
};

/// One panel on the roll.
struct PanelLay {
  PanelFit fit = PanelFit::fits;
  bool turned = false;  ///< by a quarter, or railroaded: its up, or its length where it has none, lies across
  Length along;         ///< of the cut, as it lies
  Length across;
  std::vector<Length> widths;  ///< across the roll, of its pieces from side to side: one, or more with seams
  Length takes;                ///< of the roll, each piece: whole repeats of the pattern
  std::optional<RepeatPlace> begins{};
};

/// Panels of plain goods lie with their up along the roll where that fits, else turned; those with a nap or a
/// pattern with their up as the fabric asks, in pieces where they are too wide: the middle one as wide as the
/// fabric between two alike where three do or two would (common practice, no source), else all alike. Every
/// seam takes two allowances. The pattern's middle stands in the panel's, `beside` to the left of it (see
/// `beside_seat`). std::invalid_argument where the fabric is no wider than two allowances.
PanelLay panel_lay(const CoverPanel& panel, const std::optional<Wall>& up, const Sewing& sewing,
                   Length beside);

}  // namespace berthwright

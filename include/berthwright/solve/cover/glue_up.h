#pragma once

#include <optional>
#include <span>
#include <vector>

#include <berthwright/plan/sewing.h>

namespace berthwright {

/// One layer of a block of foam, and the pieces it is glued together from, edge to edge.
struct FoamLayer {
  FoamSheet sheet;  ///< that they are cut from; its length lies along x where `turned` is not set
  bool turned = false;
  std::vector<Length> along;   ///< lengths of the columns along x
  std::vector<Length> across;  ///< widths of the rows along y
  std::size_t pieces() const { return along.size() * across.size(); }
};

/// How a block comes out of sheets: layers over each other, the thickest first.
struct GlueUp {
  std::vector<FoamLayer> layers;
  bool is_one_piece() const { return layers.size() == 1 && layers.front().pieces() == 1; }
};

/// The thicknesses next to one that no layers give.
struct NearThickness {
  std::optional<Length> below;
  std::optional<Length> above;
};

/// So many layers at the most; own choice.
inline constexpr std::size_t most_layers = 4;
/// No strip of foam is narrower than this where the block allows it; own choice.
inline constexpr Length least_foam_strip = Length::inches(6);

/// Out of sheets of which there are as many as are needed: the fewest layers whose thicknesses are together
/// exactly `thickness`, of those the one with the thickest layers; in each the fewest pieces in rows and
/// columns. Of two the joint is as far from the middle as it can be, for there people sit; of three the
/// middle one is whole. Foam has no grain, so a sheet may be turned; its thickness never is. None where no
/// such layers are that thick.
std::optional<GlueUp> glue_up(Length length, Length width, Length thickness,
                              std::span<const FoamSheet> sheets);

/// Of up to `most_layers` layers.
NearThickness near_thickness(Length thickness, std::span<const FoamSheet> sheets);

/// Sheets as the trade sells them, 72 by 82 in, 1/2 to 6 in thick: common practice, no source. They are
/// widest; narrower ones exist.
std::span<const FoamSheet> usual_foam_sheets();

}  // namespace berthwright

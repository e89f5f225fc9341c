#include <berthwright/solve/cover/cover_panel.h>

#include <algorithm>
#include <stdexcept>
#include <utility>

#include <berthwright/geometry/mitred.h>
#include <berthwright/geometry/region.h>
#include <berthwright/solve/cover/fabric.h>

#include "plan/wall_names.h"

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

Length rest_of(Length a, Length whole) {
  if (whole <= Length{}) return {};
  const std::int64_t rest = a.ticks() % whole.ticks();
  return Length::from_ticks(rest < 0 ? rest + whole.ticks() : rest);
}

// The pieces of a panel, from side to side.
std::vector<Length> widths_of(Length across, Length fabric, Length seams) {
  const std::int64_t count = std::max<std::int64_t>(1, roll_strips(across, one_tick, fabric, seams).count);
  if (count == 1) return {across};
  if (count <= 3) {
    // across + 2 seams = fabric + 2 sides; an odd tick is given to both.
    const Length side = half(across + seams * 2 - fabric + one_tick);
    return {side, fabric, side};
  }
  const Length all = across + seams * (count - 1);
  return std::vector<Length>(static_cast<std::size_t>(count),
                             Length::from_ticks((all.ticks() + count - 1) / count));
}

}  // namespace

CoverPanel cover_panel(const Outline& outline, Length around) {
  std::optional<Polygon> cut = mitred(outline.polygon(), around);
  const bool sharp = cut.has_value();
  if (!sharp) {
    const Region round = grown(Region(outline.polygon()), around);
    cut = round.faces().front().outer;
  }
  const Rect box = cut->bounds();
  return {*cut, box.width(), box.height(), sharp, is_its_own_mirror(outline.polygon())};
}

PanelLay panel_lay(const CoverPanel& panel, const std::optional<Wall>& up, const Sewing& sewing,
                   Length beside) {
  const Fabric& fabric = sewing.fabric;
  const Length seams = sewing.seam_allowance * 2;
  if (fabric.width <= seams) throw std::invalid_argument("a fabric no wider than two seam allowances");
  const bool up_is_length = !up || is_end_wall(*up);
  const Length along_up = up_is_length ? panel.length : panel.width;
  const Length across_up = up_is_length ? panel.width : panel.length;
  const auto fits = [&](Length across) { return across <= fabric.width; };
  PanelLay lay;
  lay.turned = fabric.up_across;
  // Who has no up may lie either way, nap or not.
  if ((fabric.may_turn() || !up) && !fits(lay.turned ? along_up : across_up) &&
      (fits(lay.turned ? across_up : along_up) || along_up < across_up))
    lay.turned = !lay.turned;
  lay.along = lay.turned ? across_up : along_up;
  lay.across = lay.turned ? along_up : across_up;
  if (!fits(lay.across)) lay.fit = fits(lay.along) ? PanelFit::turned_only : PanelFit::too_wide;
  lay.widths = widths_of(lay.across, fabric.width, seams);
  lay.takes = lay.along;
  if (!fabric.repeat) return lay;
  const Repeat& repeat = *fabric.repeat;
  if (repeat.along > Length{}) lay.takes = whole_repeats(lay.along, repeat.along);
  // A stripe that stands in the middle of the seat runs on from one cushion to the next.
  const Length up_beside = lay.turned ? beside : Length{};
  const Length side_beside = lay.turned ? Length{} : beside;
  const Length across = rest_of(side_beside - half(lay.across), repeat.across);
  Length along = up_beside - half(lay.along);
  // The motif from which we measure stands in one column, the one in the middle of the seat in another.
  if (repeat.half_drop && (across + half(lay.across) - side_beside).ticks() / repeat.across.ticks() % 2 != 0)
    along -= half(repeat.along);
  lay.begins = RepeatPlace{rest_of(along, repeat.along), across};
  return lay;
}

}  // namespace berthwright

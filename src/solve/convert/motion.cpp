#include <berthwright/solve/convert/motion.h>

#include <algorithm>
#include <stdexcept>

#include "geometry/convex.h"
#include "plan/box_sides.h"
#include "solve/convert/motion_room.h"

namespace berthwright {
namespace {

// Never less than the diagonal of a box with these sides.
Length diagonal(Length a, Length b) { return SquaredLength::of(a).plus_square_of(b).ceiling(); }

Solid boxed(const Rect& box, Length base, Length top) { return {Region(box), base, top}; }

Region swept_region(const Region& outline, Vector by) {
  std::vector<Region> parts;
  for (const Polygon& part : convex_parts(outline)) {
    std::vector<Point> corners;
    for (const Point corner : part.vertices()) {
      corners.push_back(corner);
      corners.push_back(corner + by);
    }
    parts.emplace_back(Polygon::promised(convex_hull(std::move(corners))));
  }
  return united(parts);
}

}  // namespace

Motion raised(const Solid& piece, Length to_base) {
  if (to_base == piece.base()) throw std::invalid_argument("a lift needs another height");
  Solid after(piece.outline(), to_base, to_base + piece.height());
  Solid sweep(piece.outline(), std::min(piece.base(), to_base), std::max(piece.top(), after.top()));
  const auto kind = to_base > piece.base() ? Motion::Kind::lift : Motion::Kind::lower;
  return {kind, piece, std::move(after), {std::move(sweep)}};
}

Motion slid(const Solid& piece, Vector by) {
  if (by == Vector{}) throw std::invalid_argument("a slide needs another place");
  return {Motion::Kind::slide,
          piece,
          Solid(moved(piece.outline(), by), piece.base(), piece.top()),
          {Solid(swept_region(piece.outline(), by), piece.base(), piece.top())}};
}

TurningRoom turning_room(const Rect& box) {
  const Length length = box.width(), width = box.height();
  const Point low{box.low.x + half(length - width), box.low.y + half(width - length)};
  const Rect after{low, {low.x + width, low.y + length}};
  const Length reach = half(diagonal(length, width) + one_tick);
  const Point middle{box.low.x + half(length), box.low.y + half(width)};
  const Rect square{{middle.x - reach, middle.y - reach},
                    {middle.x + reach + one_tick, middle.y + reach + one_tick}};
  return {after, hull(square, hull(box, after))};
}

TippingRoom tipping_room(const Rect& box, Length height, Wall over) {
  const Length side = is_end_wall(over) ? box.width() : box.height();
  const Rect after = beyond_side(box, over, height);
  return {after, side, hull(box, after), diagonal(side, height)};
}

Motion quarter_turned(const Solid& piece) {
  const Rect box = piece.outline().bounds();
  const TurningRoom room = turning_room(box);
  return {Motion::Kind::turn,
          boxed(box, piece.base(), piece.top()),
          boxed(room.after, piece.base(), piece.top()),
          {boxed(room.needed, piece.base(), piece.top())}};
}

Motion tipped(const Solid& piece, Wall over) {
  const Rect box = piece.outline().bounds();
  const TippingRoom room = tipping_room(box, piece.height(), over);
  const Length base = piece.base();
  return {Motion::Kind::tip,
          boxed(box, base, piece.top()),
          boxed(room.after, base, base + room.height_after),
          {boxed(room.needed, base, base + room.height_needed)}};
}

}  // namespace berthwright

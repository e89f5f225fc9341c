#include "view/section.h"

#include <algorithm>
#include <tuple>

namespace berthwright {
namespace {

bool is_long(const CutLine& line) { return line.along == CutLine::Along::x; }

// The wall that is looked at.
Wall far_wall(const CutLine& line) { return is_long(line) ? Wall::right : Wall::front; }

struct Ranked {
  SectionShape shape;
  std::tuple<int, Length, Area> rank;  // what is painted first has the least
};

Area area_of(const Rect& box) { return Area::rectangle(box.width(), box.height()); }

void add_openings(std::vector<Ranked>& out, const Plan& plan, const CutLine& line) {
  for (const Opening& opening : plan->openings) {
    if (opening.wall != far_wall(line)) continue;
    const Rect box{{opening.from, opening.sill},
                   {opening.from + opening.width, opening.sill + opening.height}};
    out.push_back({{SectionShape::Kind::far_opening, nullptr, &opening, box}, {0, {}, area_of(box)}});
  }
}

// What reaches out of the room ends at its wall: beyond it stand the heights.
std::optional<Rect> within_walls(const Rect& box, const Rect& room, const CutLine& line) {
  const Length low = std::max(box.low.x, is_long(line) ? room.low.x : room.low.y);
  const Length high = std::min(box.high.x, is_long(line) ? room.high.x : room.high.y);
  return low < high ? std::optional(Rect{{low, box.low.y}, {high, box.high.y}}) : std::nullopt;
}

void add_thing(std::vector<Ranked>& out, const Placed& placed, const Rect& room, const CutLine& line) {
  std::vector<Rect> faces;
  for (const Rect& face : cut(placed.solid, line))
    if (const std::optional<Rect> inside = within_walls(face, room, line)) faces.push_back(*inside);
  const Region outline = placed.solid.outline();
  for (const Interval& part : behind(outline, line)) {
    const std::optional<Rect> box =
        within_walls({{part.from, placed.solid.base()}, {part.to, placed.solid.top()}}, room, line);
    if (!box || std::ranges::find(faces, *box) != faces.end()) continue;
    out.push_back({{SectionShape::Kind::seen, &placed, nullptr, *box},
                   {1, -distance_behind(outline, line), Area{} - area_of(*box)}});
  }
  for (const Rect& face : faces)
    out.push_back({{SectionShape::Kind::cut, &placed, nullptr, face}, {2, {}, Area{} - area_of(face)}});
}

}  // namespace

Region room_in(const Interior& interior, const CutLine& line) {
  // In a profile x is along (or across) and y the height, so a place along it is cut upright.
  const CutLine upright{CutLine::Along::y, line.at};
  const Region plan_outline(interior.outline.polygon());
  const std::vector<Interval> along = cut(plan_outline, line);
  const Region side(interior.side_profile.polygon());
  const bool lengthwise = is_long(line);
  std::optional<Region> own;  // the profile that lies in the plane
  std::vector<Interval> heights;
  if (lengthwise) {
    own = side;
    heights = interior.cross_profile ? cut(Region(interior.cross_profile->polygon()), upright)
                                     : std::vector<Interval>{{side.bounds().low.y, side.bounds().high.y}};
  } else {
    if (interior.cross_profile) own = Region(interior.cross_profile->polygon());
    heights = cut(side, upright);
  }
  std::vector<Region> boxes;
  for (const Interval& a : along)
    for (const Interval& z : heights)
      if (a.from < a.to && z.from < z.to) boxes.emplace_back(Rect{{a.from, z.from}, {a.to, z.to}});
  const Region room = united(boxes);
  return own ? common(room, *own) : room;
}

Section section_of(const Plan& plan, const Arrangement& arrangement, const CutLine& line) {
  std::vector<Ranked> ranked;
  add_openings(ranked, plan, line);
  const Rect& room = plan->interior.outline.polygon().bounds();
  for (const Placed& placed : arrangement.things) add_thing(ranked, placed, room, line);
  std::ranges::stable_sort(ranked, {}, &Ranked::rank);
  Section section{line, room_in(plan->interior, line), {}};
  for (Ranked& one : ranked) section.shapes.push_back(one.shape);
  return section;
}

std::optional<Above> above(const Section& section, Length along, Length level) {
  const CutLine upright{CutLine::Along::y, along};
  std::optional<Above> least;
  for (const Interval& open : cut(section.room, upright)) {
    if (level < open.from || open.to <= level) continue;
    // Where the roof slants the stretch may be rounded up by a tick.
    const bool rounded = section.room.side_of({along, open.to}) == Side::outside;
    least = Above{rounded ? open.to - one_tick : open.to, nullptr};
  }
  if (!least) return std::nullopt;
  for (const SectionShape& shape : section.shapes) {
    if (shape.kind != SectionShape::Kind::cut || along < shape.box.low.x || shape.box.high.x < along)
      continue;
    if (shape.box.high.y <= level) continue;
    if (shape.box.low.y < level) return std::nullopt;
    if (shape.box.low.y < least->height) least = Above{shape.box.low.y, shape.placed};
  }
  return least;
}

}  // namespace berthwright

#include "view/head_room.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "view/plan_things.h"

namespace berthwright {
namespace {

constexpr Length same_height = Length::inches(1, 32);
constexpr Length off_the_end = 2_in;  // a line at the very end of a bed would lie on the wall's

class HeadRoomOf {
 public:
  HeadRoomOf(const DrawnConfiguration& of, const Section& section)
      : plan_(*of.plan), arrangement_(of.answer->arrangement), section_(section) {}

  void add_seat(const Seat& seat) {
    if (!seat.head_room) return;
    const HeadRoom& room = *seat.head_room;
    const std::optional<Interval> mine = longest_cut(cushions_of(seat));
    if (!mine) return;
    HeadRoomLine line;
    line.over = names_of(seat.cushions);
    line.level = seat.sits_at;
    line.top = seat.sits_at + room.height;
    line.along = std::clamp(along_of(room.where), mine->from, mine->to);
    line.at = across_of(room.where);
    settle(line, room.under, seat.top, *mine);
    lines.push_back(std::move(line));
  }

  void add_bed(const BedAnswer& bed) {
    const std::optional<Interval> mine = longest_cut(bed.mattress.closed);
    if (!mine) return;
    const std::string name = bed.bed->name.empty() ? bed.bed->id.text() : bed.bed->name;
    std::vector<std::string> told{"wall"};
    for (const ClearHeight& part : by_height(bed.room.overhead)) {
      if (part.height <= Length{} || std::ranges::find(told, part.what) != told.end()) continue;
      told.push_back(part.what);
      HeadRoomLine line;
      line.of = HeadRoomLine::Of::bed;
      line.over = name;
      line.level = bed.mattress.level;
      line.top = line.level + part.height;
      const Point lowest = lowest_in(part, line.level);
      line.along = std::clamp(along_of(lowest), mine->from, mine->to);
      line.at = across_of(lowest);
      settle(line, part.what == "roof" ? std::string() : part.what, line.level, *mine);
      if (line.in_plane || told.size() == 2) lines.push_back(std::move(line));
    }
    add_sitting_up(bed, name);
  }

  std::vector<HeadRoomLine> lines;

 private:
  bool lengthwise() const { return section_.line.along == CutLine::Along::x; }
  Length along_of(Point p) const { return lengthwise() ? p.x : p.y; }
  Length across_of(Point p) const { return lengthwise() ? p.y : p.x; }

  std::optional<Interval> longest_cut(const Region& region) const {
    std::optional<Interval> longest;
    for (const Interval& part : cut(region, section_.line))
      if (part.from < part.to && (!longest || part.to - part.from > longest->to - longest->from))
        longest = part;
    return longest;
  }

  Region cushions_of(const Seat& seat) const {
    std::vector<Region> outlines;
    for (const std::string& id : seat.cushions)
      if (const Placed* cushion = arrangement_.find(id)) outlines.push_back(cushion->solid.outline());
    return united(outlines);
  }

  std::string names_of(const std::vector<std::string>& ids) const {
    std::string names;
    for (const std::string& id : ids)
      if (const Placed* thing = arrangement_.find(id)) names += (names.empty() ? "" : ", ") + name_of(*thing);
    return names;
  }

  static std::vector<ClearHeight> by_height(std::vector<ClearHeight> parts) {
    std::ranges::stable_sort(parts, {}, &ClearHeight::height);
    return parts;
  }

  // A place of the part: of the roof the corner where it is lowest, else one in the plane if there is any.
  Point lowest_in(const ClearHeight& part, Length level) const {
    const std::optional<Interval> mine = longest_cut(part.region);
    const auto on_plane = [&](Length along) {
      return lengthwise() ? Point{along, section_.line.at} : Point{section_.line.at, along};
    };
    std::vector<Point> places;
    if (mine) places = {on_plane(half(mine->from + mine->to)), on_plane(mine->from), on_plane(mine->to)};
    const Rect box = part.region.bounds();
    places.push_back({half(box.low.x + box.high.x), half(box.low.y + box.high.y)});
    if (part.what != "roof") return places.front();
    for (const Face& face : part.region.faces())
      for (const Point corner : face.outer.vertices()) places.push_back(corner);
    Point best = places.front();
    std::optional<Length> least;
    for (const Point place : places) {
      const std::optional<Length> roof = roof_at(place, level);
      if (!roof || (least && *least <= *roof + same_height)) continue;
      least = roof;
      best = place;
    }
    return best;
  }

  std::optional<Length> roof_at(Point place, Length level) const {
    const CutLine line{CutLine::Along::x, place.y};
    const std::optional<Above> over = above({line, room_in(plan_->interior, line), {}}, place.x, level);
    if (!over) return std::nullopt;
    return over->height;
  }

  // Finds where the line stands in this section: in the plane if what hangs there is cut there.
  void settle(HeadRoomLine& line, const std::string& id, Length level, const Interval& mine) const {
    const Placed* thing = id.empty() ? nullptr : arrangement_.find(id);
    if (thing != nullptr) line.under = name_of(*thing);
    const auto ends_in_plane = [&](Length along) {
      const std::optional<Above> over = above(section_, along, level);
      return over && over->placed == thing && abs(over->height - line.top) <= same_height;
    };
    std::vector<Length> places{line.along};
    if (thing != nullptr)
      for (const Interval& part : cut(thing->solid.outline(), section_.line))
        places.push_back(half(std::max(part.from, mine.from) + std::min(part.to, mine.to)));
    const auto found = std::ranges::find_if(places, ends_in_plane);
    line.in_plane = found != places.end();
    if (line.in_plane) {
      line.along = *found;
      line.at = section_.line.at;
    } else {
      Interval under = mine;
      if (thing != nullptr) {
        const Rect box = thing->solid.outline().bounds();
        line.outline =
            Rect{{along_of(box.low), thing->solid.base()}, {along_of(box.high), thing->solid.top()}};
        under = {std::max(mine.from, along_of(box.low)), std::min(mine.to, along_of(box.high))};
      }
      // Over a bed it stands beside the middle, where other lines stand.
      if (line.of == HeadRoomLine::Of::bed && under.from < under.to)
        line.along = under.from + half(under.to - under.from) + half(half(under.to - under.from));
    }
    const Length inset = std::min(off_the_end, half(mine.to - mine.from));
    line.along = std::clamp(line.along, mine.from + inset, mine.to - inset);
  }

  void add_sitting_up(const BedAnswer& bed, const std::string& name) {
    if (!bed.room.sitting) return;
    const SittingUp& sitting = *bed.room.sitting;
    if (abs(across_of(sitting.place.centre) - section_.line.at) > sitting.place.radius) return;
    HeadRoomLine line;
    line.of = HeadRoomLine::Of::sitting_up;
    line.over = name;
    line.level = bed.mattress.level - seat_compression;
    line.top = line.level + sitting.head_room;
    const Length middle = along_of(sitting.place.centre);
    const Length radius = sitting.place.radius;
    line.along = middle - half(radius);  // beside the line of the bed, which often stands in the middle
    line.at = section_.line.at;
    line.width = Interval{middle - radius, middle + radius};
    lines.push_back(std::move(line));
  }

  const Plan& plan_;
  const Arrangement& arrangement_;
  const Section& section_;
};

std::string_view what_of(HeadRoomLine::Of of) {
  switch (of) {
    case HeadRoomLine::Of::seat:
      return "head room";
    case HeadRoomLine::Of::bed:
      return "clear height";
    case HeadRoomLine::Of::sitting_up:
      return "to sit up";
  }
  throw std::logic_error("HeadRoomLine::Of out of range");
}

}  // namespace

std::vector<HeadRoomLine> head_room_lines(const DrawnConfiguration& of, const Section& section) {
  HeadRoomOf all(of, section);
  for (const BedAnswer& bed : of.answer->beds)
    if (!bed.mattress.closed.empty()) all.add_bed(bed);
  for (const Seat& seat : of.answer->seats) all.add_seat(seat);
  return std::move(all.lines);
}

std::vector<std::string> words_of(const HeadRoomLine& line, const Plan& plan, const Section& section,
                                  bool both_units) {
  const Length room = line.top - line.level;
  const LengthStyle down{.rounding = Rounding::down};
  const std::string brief = plan->unit == Unit::inch ? imperial(room, down) : metric(room, Rounding::down);
  std::vector<std::string> words{std::string(what_of(line.of)) + " " +
                                 (both_units ? both(room, plan->unit, down) : brief)};
  if (line.in_plane) return words;
  words.push_back("under " + (line.under.empty() ? std::string("the roof") : line.under) + ",");
  const bool lengthwise = section.line.along == CutLine::Along::x;
  const std::string place = plan->unit == Unit::inch ? imperial(line.at) : metric(line.at);
  words.push_back(place + (lengthwise ? " from the left wall" : " from the front"));
  return words;
}

}  // namespace berthwright

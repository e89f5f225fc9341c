#include "view/section_people.h"

#include <algorithm>

#include "view/figures.h"
#include "view/plan_things.h"

namespace berthwright {
namespace {

constexpr Length to_the_head = 5_in;  // from the crown to where head room matters
constexpr Length foot_room = 6_in;    // above the floor
constexpr Length off_the_toes = Length::inches(3, 4);
constexpr Length over_the_seat = 4_in;  // what begins lower beside a person is no matter of fitting
const Area too_much = Area::rectangle(1_in, 1_in);

Length along_of(const Section& section, Point p) { return is_long(section) ? p.x : p.y; }
Length along_of(const Section& section, Vector v) { return is_long(section) ? v.x : v.y; }
Length across_of(const Section& section, Point p) { return is_long(section) ? p.y : p.x; }

Length scaled(Length length, Length times, Length parts) {
  return Length::from_ticks(
      static_cast<std::int64_t>(Int128{length.ticks()} * times.ticks() / parts.ticks()));
}

Build build_for(Length stature) {
  const Build large = large_man();
  const auto of = [&](Length length) { return scaled(length, stature, large.stature); };
  return {stature,
          of(large.sitting_height),
          of(large.popliteal_height),
          of(large.buttock_popliteal),
          of(large.buttock_knee),
          of(large.knee_height),
          of(large.thigh_clearance),
          of(large.abdominal_depth),
          of(large.shoulder_breadth),
          of(large.hip_breadth)};
}

Build tallest_of(const Bed& bed) {
  std::optional<Length> stature;
  for (const Person& person : bed.people)
    if (person.stature) stature = std::max(stature.value_or(Length{}), *person.stature);
  return stature ? build_for(*stature) : large_man();
}

class Drawing {
 public:
  Drawing(const DrawnConfiguration& of, const Section& section)
      : arrangement_(of.answer->arrangement), section_(section) {}

  void add_bed(const BedAnswer& bed) {
    const std::vector<Interval> parts = cut(bed.mattress.closed, section_.line);
    if (std::ranges::any_of(parts, [](const Interval& part) { return part.from < part.to; })) lie_down(bed);
  }

  void sit_down(const SittingPlace& place) {
    const Length across = section_.line.at;
    if (across < across_of(section_, place.clear.low) || across_of(section_, place.clear.high) < across)
      return;
    const Build build = seated_++ % 2 == 0 ? large_man() : small_woman();
    const Length pressed = place.height - seat_compression;
    const bool onward = place.faces == Wall::rear || place.faces == Wall::right;
    const bool looks_lengthwise = place.faces == Wall::front || place.faces == Wall::rear;
    DrawnPerson person;
    if (looks_lengthwise != is_long(section_)) {
      const Length middle = along_of(section_, place.middle);
      person.body = {trunk_figure(build, middle, pressed)};
      person.legs = legs_from_before(build, middle, pressed);
      // A section along looks to the right wall, one across forward.
      person.legs_in_front = place.faces == Wall::left || place.faces == Wall::rear;
      const Length belly = onward ? place.back + build.abdominal_depth : place.back - build.abdominal_depth;
      person.in_the_way = in_the_way(person.body.front(), pressed, std::minmax(place.back, belly));
    } else {
      SeatUnder seat{place.back, pressed, onward};
      seat.toes_before = before_the_toes(build, seat, place);
      person.body = {seated_figure(build, seat)};
      const Length shoulder = half(build.shoulder_breadth);
      person.in_the_way = in_the_way(person.body.front(), pressed, {across - shoulder, across + shoulder});
    }
    out.people.push_back(std::move(person));
  }

  SectionPeople out;

 private:
  bool is_through(const TurnedRectangle& rectangle) const {
    const auto [low, high] =
        std::ranges::minmax(rectangle.corners, {}, [&](Point p) { return across_of(section_, p); });
    return across_of(section_, low) <= section_.line.at && section_.line.at <= across_of(section_, high);
  }

  void lie_down(const BedAnswer& bed) {
    const Build build = tallest_of(*bed.bed);
    for (const auto& rectangle : {bed.room.largest, bed.room.longest}) {
      if (!rectangle || !is_through(*rectangle) || rectangle->length < build.stature) continue;
      const auto& corners = rectangle->corners;
      const Length middle = half(half(along_of(section_, corners[0]) + along_of(section_, corners[1])) +
                                 half(along_of(section_, corners[2]) + along_of(section_, corners[3])));
      const Length seen = abs(along_of(section_, corners[1] - corners[0]));
      if (seen * 2 >= rectangle->length)
        lie_along(build, middle, half(scaled(build.stature, seen, rectangle->length)), bed.mattress.level);
      else
        add_from_the_feet(bed, *rectangle, build, middle);
      return;
    }
    out.too_short.push_back(bed.bed->name.empty() ? bed.bed->id.text() : bed.bed->name);
  }

  void lie_along(const Build& build, Length middle, Length reach, Length level) {
    Length crown = middle - reach;
    Length heels = middle + reach;
    const auto over_near = above(section_, crown + to_the_head, level);
    const auto over_far = above(section_, heels - to_the_head, level);
    // The head lies where there is more room over it.
    if (over_far && (!over_near || over_near->height < over_far->height)) std::swap(crown, heels);
    out.people.push_back({{lying_figure(build, crown, heels, level)}, {}, true, {}});
  }

  void add_from_the_feet(const BedAnswer& bed, const TurnedRectangle& rectangle, const Build& build,
                         Length middle) {
    const auto count = static_cast<std::int64_t>(std::max<std::size_t>(bed.bed->people.size(), 1));
    for (std::int64_t i = 0; i < count; ++i) {
      const Length aside = Length::from_ticks(rectangle.width.ticks() * (2 * i + 1 - count) / (2 * count));
      out.people.push_back({figure_from_the_feet(build, middle + aside, bed.mattress.level), {}, true, {}});
    }
  }

  // The near face of the first hard thing that is cut where the feet go.
  std::optional<Length> before_the_toes(const Build& build, const SeatUnder& seat,
                                        const SittingPlace& place) const {
    const Length front = along_of(section_, seat.looks_onward ? place.clear.high : place.clear.low);
    const Length toes = toes_of(build, seat);
    std::optional<Length> first;
    for (const SectionShape& shape : section_.shapes) {
      if (shape.kind != SectionShape::Kind::cut || shape.placed->is_soft()) continue;
      if (shape.box.low.y >= foot_room) continue;
      const Length face =
          seat.looks_onward ? shape.box.low.x - off_the_toes : shape.box.high.x + off_the_toes;
      if (seat.looks_onward ? front < face && face < toes && (!first || face < *first)
                            : toes < face && face < front && (!first || *first < face))
        first = face;
    }
    return first;
  }

  // What hard thing, or the roof, needs the space of a body `over` this stretch across the section.
  std::string in_the_way(const Region& body, Length seat, std::pair<Length, Length> over) const {
    const Region outside = without(body, section_.room);
    if (too_much < outside.area()) {
      const Rect room = section_.room.bounds();
      const Rect box = outside.bounds();
      return box.low.x < room.low.x || room.high.x < box.high.x ? "the wall" : "the roof";
    }
    for (const Placed& thing : arrangement_.things) {
      const Solid& solid = thing.solid;
      if (thing.is_soft() || solid.base() < seat + over_the_seat || solid.base() >= body.bounds().high.y)
        continue;
      const Rect plan = solid.outline().bounds();
      const Rect band = is_long(section_) ? Rect{{plan.low.x, over.first}, {plan.high.x, over.second}}
                                          : Rect{{over.first, plan.low.y}, {over.second, plan.high.y}};
      const Region beside = common(solid.outline(), Region(band));
      if (beside.empty()) continue;
      const Rect box = beside.bounds();
      const Region seen(
          Rect{{along_of(section_, box.low), solid.base()}, {along_of(section_, box.high), solid.top()}});
      if (too_much < common(body, seen).area()) return name_of(thing);
    }
    return {};
  }

  const Arrangement& arrangement_;
  const Section& section_;
  int seated_ = 0;
};

}  // namespace

SectionPeople people_of(const DrawnConfiguration& of, const Section& section,
                        const std::vector<SittingPlace>& places) {
  Drawing drawing(of, section);
  for (const BedAnswer& bed : of.answer->beds)
    if (!bed.mattress.closed.empty()) drawing.add_bed(bed);
  std::vector<SittingPlace> ordered = places;
  std::ranges::stable_sort(ordered, {}, &SittingPlace::back);
  for (const SittingPlace& place : ordered) drawing.sit_down(place);
  return std::move(drawing.out);
}

Region outline_of(const DrawnPerson& person) {
  std::vector<Region> all = person.body;
  all.insert(all.end(), person.legs.begin(), person.legs.end());
  return united(all);
}

}  // namespace berthwright

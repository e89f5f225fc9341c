#include "view/section_people.h"

#include <algorithm>

#include "view/figures.h"
#include "view/plan_things.h"

namespace berthwright {
namespace {

constexpr Length pressed_down = 1_in;
constexpr Length worth_telling = 1_in;  // between two clear heights over one bed
constexpr Length the_same = Length::inches(1, 32);
constexpr Length thickest = 10_in;    // of a drawn person who lies
constexpr Length to_the_head = 5_in;  // from the crown to where head room matters

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
  Drawing(const Section& section, const std::vector<HeadRoomLine>& told) : section_(section), told_(told) {}

  void add_bed(const BedAnswer& bed) {
    std::optional<Interval> place;
    for (const Interval& part : cut(bed.mattress.closed, section_.line))
      if (!place || part.to - part.from > place->to - place->from) place = part;
    if (!place || place->from == place->to) return;
    const std::string name = bed.bed->name.empty() ? bed.bed->id.text() : bed.bed->name;
    const Length level = bed.mattress.level;
    const Length middle = half(place->from + place->to);
    const Length over_people = level + thickest;
    const std::optional<Length> head = lie_down(bed);
    if (head) tell({*head, level, {}, over_people, name}, {});
    tell({middle, level, {}, over_people, name}, head ? worth_telling : Length{});
    for (const SectionShape& shape : section_.shapes) {
      if (shape.kind != SectionShape::Kind::cut || shape.box.low.y <= level) continue;
      const Length from = std::max(shape.box.low.x, place->from);
      const Length to = std::min(shape.box.high.x, place->to);
      if (to - from > worth_telling) tell({half(from + to), level, {}, over_people, name}, worth_telling);
    }
  }

  void sit_down(const SittingPlace& place) {
    const Length across = section_.line.at;
    if (across < across_of(section_, place.clear.low) || across_of(section_, place.clear.high) < across)
      return;
    const Build build = seated_ % 2 == 0 ? large_man() : small_woman();
    ++seated_;
    const Length pressed = place.height - pressed_down;
    const Length crown = pressed + build.sitting_height;
    const bool looks_lengthwise = place.faces == Wall::front || place.faces == Wall::rear;
    if (looks_lengthwise != is_long(section_)) {
      const Length middle = along_of(section_, place.middle);
      people.outlines.push_back(trunk_figure(build, middle, pressed));
      tell({middle, place.height, {}, crown, name_of(*place.seat)}, {});
      return;
    }
    const SeatUnder seat{place.back, pressed, place.faces == Wall::rear || place.faces == Wall::right};
    people.outlines.push_back(seated_figure(build, seat));
    tell({seated_head(build, seat).x, place.height, {}, crown, name_of(*place.seat)}, {});
  }

  SectionPeople people;

 private:
  bool is_through(const TurnedRectangle& rectangle) const {
    const auto [low, high] =
        std::ranges::minmax(rectangle.corners, {}, [&](Point p) { return across_of(section_, p); });
    return across_of(section_, low) <= section_.line.at && section_.line.at <= across_of(section_, high);
  }

  // Where the head lies, when a person is seen from the side.
  std::optional<Length> lie_down(const BedAnswer& bed) {
    const Build build = tallest_of(*bed.bed);
    for (const auto& rectangle : {bed.room.largest, bed.room.longest}) {
      if (!rectangle || !is_through(*rectangle) || rectangle->length < build.stature) continue;
      const auto& corners = rectangle->corners;
      const Length middle = half(half(along_of(section_, corners[0]) + along_of(section_, corners[1])) +
                                 half(along_of(section_, corners[2]) + along_of(section_, corners[3])));
      const Length seen = abs(along_of(section_, corners[1] - corners[0]));
      if (seen * 2 >= rectangle->length)
        return lie_along(build, middle, half(scaled(build.stature, seen, rectangle->length)),
                         bed.mattress.level);
      add_from_the_feet(bed, *rectangle, build, middle);
      return std::nullopt;
    }
    people.too_short.push_back(bed.bed->name.empty() ? bed.bed->id.text() : bed.bed->name);
    return std::nullopt;
  }

  Length lie_along(const Build& build, Length middle, Length reach, Length level) {
    Length crown = middle - reach;
    Length heels = middle + reach;
    const auto over_near = above(section_, crown + to_the_head, level);
    const auto over_far = above(section_, heels - to_the_head, level);
    // The head lies where there is more room over it.
    const bool turned = over_far && (!over_near || over_near->height < over_far->height);
    if (turned) std::swap(crown, heels);
    people.outlines.push_back(lying_figure(build, crown, heels, level));
    return turned ? crown - to_the_head : crown + to_the_head;
  }

  void add_from_the_feet(const BedAnswer& bed, const TurnedRectangle& rectangle, const Build& build,
                         Length middle) {
    const auto count = static_cast<std::int64_t>(std::max<std::size_t>(bed.bed->people.size(), 1));
    for (std::int64_t i = 0; i < count; ++i) {
      const Length aside = Length::from_ticks(rectangle.width.ticks() * (2 * i + 1 - count) / (2 * count));
      for (Region& part : figure_from_the_feet(build, middle + aside, bed.mattress.level))
        people.outlines.push_back(std::move(part));
    }
  }

  // Tells it unless the same, or one as near as `apart`, is told of this bed or seat.
  void tell(HeadRoomLine room, Length apart) {
    const std::optional<Above> over = above(section_, room.along, room.level);
    if (!over) return;
    room.top = over->height;
    const auto near = [&](Length least) {
      return [&, least](const HeadRoomLine& other) {
        return other.over == room.over && abs((other.top - other.level) - (room.top - room.level)) <= least;
      };
    };
    if (std::ranges::any_of(told_, near(the_same))) return;
    if (std::ranges::any_of(people.head_room, near(std::max(apart, the_same)))) return;
    people.head_room.push_back(room);
  }

  const Section& section_;
  const std::vector<HeadRoomLine>& told_;
  int seated_ = 0;
};

}  // namespace

SectionPeople people_of(const DrawnConfiguration& of, const Section& section,
                        const std::vector<SittingPlace>& places, const std::vector<HeadRoomLine>& told) {
  Drawing drawing(section, told);
  for (const BedAnswer& bed : of.answer->beds)
    if (!bed.mattress.closed.empty()) drawing.add_bed(bed);
  std::vector<SittingPlace> ordered = places;
  std::ranges::stable_sort(ordered, {}, &SittingPlace::back);
  for (const SittingPlace& place : ordered) drawing.sit_down(place);
  return std::move(drawing.people);
}

}  // namespace berthwright

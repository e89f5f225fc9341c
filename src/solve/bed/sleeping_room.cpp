#include <berthwright/solve/bed/sleeping_room.h>

#include <algorithm>
#include <array>
#include <map>
#include <stdexcept>

#include <berthwright/solve/bed/statures.h>

#include "solve/room/room_shape.h"

namespace berthwright {

namespace {

constexpr Length berth_width = 24_in;

Length limit_of(const Plan& plan, std::string_view id) {
  const Rule* rule = find_rule(id);
  if (rule == nullptr) throw std::logic_error("no such rule: " + std::string(id));
  return plan.limit(*rule);
}

/// The longest rectangles of a region by width, each searched once.
class Rectangles {
 public:
  explicit Rectangles(const Region& region) : region_(region) {}
  const std::optional<TurnedRectangle>& of_width(Length width) {
    const auto found = known_.find(width);
    if (found != known_.end()) return found->second;
    return known_.emplace(width, longest_rectangle(region_, width)).first->second;
  }
  /// The other side of the longest rectangle with one side of `width`.
  std::optional<Length> beside(Length width) {
    const std::optional<TurnedRectangle>& found = of_width(width);
    if (!found) return std::nullopt;
    return abs(found->width - width) <= abs(found->length - width) ? found->length : found->width;
  }

 private:
  const Region& region_;
  std::map<Length, std::optional<TurnedRectangle>> known_;
};

Length least_clear_height(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress,
                          const Region& lying) {
  if (lying.empty()) return {};
  Length lowest = roof_over(plan->interior, lying, mattress.level);
  for (const Placed& thing : arrangement.things)
    if (thing.solid.base() > mattress.level && overlaps(thing.solid.outline(), lying))
      lowest = std::min(lowest, thing.solid.base());
  return lowest - mattress.level;
}

std::vector<SizeHeld> sizes_held(Rectangles& rectangles) {
  std::vector<SizeHeld> sizes;
  for (const NamedSize& size : named_sizes()) {
    SizeHeld held{&size, false, rectangles.beside(size.width), rectangles.beside(size.length)};
    if (held.spare_length) *held.spare_length -= size.length;
    if (held.spare_width) *held.spare_width -= size.width;
    held.held = held.spare_length >= Length{} || held.spare_width >= Length{};
    sizes.push_back(held);
  }
  return sizes;
}

// A rectangle turned away from the room is told only for a gain of more than this part of its area.
constexpr int worth_turning_in_hundredths = 1;

Area area_of(const TurnedRectangle& rectangle) { return Area::rectangle(rectangle.length, rectangle.width); }

void set_largest(SleepingRoom& room) {
  room.largest = largest_rectangle(room.lying);
  if (!room.largest || room.largest->turn.is_quarter()) return;
  room.largest_turned = room.largest;
  const std::optional<TurnedRectangle> upright = largest_upright_rectangle(room.lying);
  if (upright && area_of(*room.largest).doubled() * 100 <=
                     area_of(*upright).doubled() * (100 + worth_turning_in_hundredths))
    room.largest = upright;
}

PersonRoom room_of(const Person& person, Length allowance, const LyingSpace& space, Rectangles& rectangles) {
  PersonRoom room;
  room.person = &person;
  room.place = rectangles.of_width(person.width);
  room.lying = longest_place(space, std::array{person.width});
  if (room.lying) room.suits_stature = std::max(Length{}, room.lying->length - allowance);
  return room;
}

// What the longest of them needs; zero where no stature is known.
Length needed_length(const Bed& bed, Length allowance) {
  Length needed;
  for (const Person& person : bed.people)
    if (person.stature) needed = std::max(needed, *person.stature + allowance);
  return needed;
}

// Across, an equal share of the widest rectangle, in the proportion of the widths people take.
void set_widths(SleepingRoom& room, const Bed& bed, Length needed, Rectangles& rectangles) {
  Length taken;
  for (const Person& person : bed.people) taken += person.width;
  Length widest = room.largest ? room.largest->width : Length{};
  if (room.abreast) widest = std::max(widest, room.abreast->width);
  if (room.people.size() == 1)
    if (const auto& place = room.people.front().place) widest = std::max(widest, place->width);
  // Of a place too narrow for one of them nobody speaks: their length is what is missing.
  const std::optional<Length> wide = needed > Length{} ? rectangles.beside(needed) : std::nullopt;
  if (wide && std::ranges::all_of(bed.people, [&](const Person& one) { return one.width <= *wide; }))
    widest = *wide;
  for (PersonRoom& person : room.people) {
    const Int128 share = Int128{widest.ticks()} * person.person->width.ticks() / taken.ticks();
    person.width = Length::from_ticks(static_cast<std::int64_t>(share));
  }
}

// Of the two orders across the one that gets the longer place.
std::optional<LyingPlace> side_by_side(const LyingSpace& space, Length first, Length second) {
  std::optional<LyingPlace> one = longest_place(space, std::array{first, second});
  if (first == second) return one;
  std::optional<LyingPlace> other = longest_place(space, std::array{second, first});
  return one && (!other || one->length >= other->length) ? one : other;
}

TwoAbreast two_abreast(const Bed& bed, Length needed, const LyingSpace& space, Rectangles& rectangles) {
  const Person& first = bed.people[0];
  const Person& second = bed.people[1];
  TwoAbreast two;
  two.needed_length = needed;
  two.all_statures_known = first.stature && second.stature;
  two.side_by_side_width = first.width + second.width;
  two.side_by_side = side_by_side(space, first.width, second.width);
  two.head_to_foot_width = std::max(first.width + std::min(second.width, foot_width),
                                    second.width + std::min(first.width, foot_width));
  two.head_to_foot = rectangles.of_width(two.head_to_foot_width);
  if (needed > Length{}) two.widest = rectangles.beside(needed).value_or(Length{});
  return two;
}

}  // namespace

SleepingRoom sleeping_room(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                           const Mattress& mattress) {
  SleepingRoom room;
  const Length allowance = limit_of(plan, "bed.person-length");
  const Length clear = limit_of(plan, "bed.clear-height");
  room.lying = clear_over(plan, arrangement, mattress, clear);
  room.feet = clear_over(plan, arrangement, mattress, std::min(clear, foot_clear_height));
  room.area = room.lying.area();
  set_largest(room);
  const LyingSpace space{room.lying, room.feet};
  Rectangles rectangles(room.lying);
  room.longest = rectangles.of_width(berth_width);
  room.place = longest_place(space, std::array{berth_width});
  Length abreast;
  for (const Person& person : bed.people) {
    room.people.push_back(room_of(person, allowance, space, rectangles));
    abreast += person.width;
  }
  if (bed.people.size() > 1) room.abreast = rectangles.of_width(abreast);
  const Length needed = needed_length(bed, allowance);
  set_widths(room, bed, needed, rectangles);
  if (bed.people.size() == 2) room.two = two_abreast(bed, needed, space, rectangles);
  room.sizes = sizes_held(rectangles);
  if (room.place) room.fits = shares_up_to_stature(room.place->length - limit_of(plan, "bed.fits-people"));
  room.least_clear_height = least_clear_height(plan, arrangement, mattress, room.lying);
  room.overhead = clear_heights(plan, arrangement, mattress);
  room.sitting = sitting_up(plan, arrangement, mattress);
  return room;
}

}  // namespace berthwright

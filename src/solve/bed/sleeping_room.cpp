#include <berthwright/solve/bed/sleeping_room.h>

#include <algorithm>
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

bool is_in_surface(const Placed& thing, const Mattress& mattress) {
  return thing.piece != nullptr &&
         std::ranges::find(mattress.in_surface, thing.piece->id) != mattress.in_surface.end();
}

Region lying_space(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress, Length clear) {
  if (mattress.closed.empty()) return {};
  Region lying =
      common(mattress.closed, room_between(plan->interior, mattress.level, mattress.level + clear));
  std::vector<Region> low;
  for (const Placed& thing : arrangement.things) {
    const bool in_the_way = thing.solid.base() < mattress.level + clear && thing.solid.top() > mattress.level;
    if (in_the_way && !is_in_surface(thing, mattress)) low.push_back(thing.solid.outline());
  }
  return low.empty() ? lying : without(lying, united(low));
}

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

PersonRoom room_of(const Person& person, Length allowance, Rectangles& rectangles) {
  PersonRoom room{&person, rectangles.of_width(person.width), {}};
  if (const std::optional<Length> length = rectangles.beside(person.width))
    room.suits_stature = std::max(Length{}, *length - allowance);
  return room;
}

}  // namespace

SleepingRoom sleeping_room(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                           const Mattress& mattress) {
  SleepingRoom room;
  room.lying = lying_space(plan, arrangement, mattress, limit_of(plan, "bed.clear-height"));
  room.area = room.lying.area();
  room.largest = largest_rectangle(room.lying);
  Rectangles rectangles(room.lying);
  room.longest = rectangles.of_width(berth_width);
  Length abreast;
  for (const Person& person : bed.people) {
    room.people.push_back(room_of(person, limit_of(plan, "bed.person-length"), rectangles));
    abreast += person.width;
  }
  if (bed.people.size() > 1) room.abreast = rectangles.of_width(abreast);
  room.sizes = sizes_held(rectangles);
  if (const std::optional<Length> length = rectangles.beside(berth_width))
    room.fits = shares_up_to_stature(*length - limit_of(plan, "bed.fits-people"));
  room.least_clear_height = least_clear_height(plan, arrangement, mattress, room.lying);
  return room;
}

}  // namespace berthwright

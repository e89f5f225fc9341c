#include <berthwright/solve/bed/sitting_up.h>

#include <algorithm>
#include <stdexcept>

#include <berthwright/solve/bed/clear_height.h>
#include <berthwright/solve/body.h>

namespace berthwright {

namespace {

constexpr Length person_radius = 10_in;
constexpr Length cushion_gives = 1_in;
constexpr Length finest = Length::inches(1, 64);
// A largest disc may come out two ticks short.
constexpr Length doubt = 4 * one_tick;

/// Finds the greatest height at which a disc of the radius stays clear.
class HeadRoom {
 public:
  HeadRoom(const Plan& plan, const Arrangement& arrangement, const Mattress& mattress, Length radius)
      : plan_(plan), arrangement_(arrangement), mattress_(mattress), radius_(radius) {}

  // Between two heights at which something begins the roof slopes, or nothing changes.
  Length found() {
    const std::vector<Length> heights = candidates();
    const auto first_too_high =
        std::ranges::partition_point(heights, [&](Length height) { return fits(height); });
    Length low = first_too_high == heights.begin() ? Length{} : *(first_too_high - 1);
    if (first_too_high == heights.end()) return low;
    for (Length high = *first_too_high; high - low > finest;) {
      const Length middle = half(low + high);
      (fits(middle) ? low : high) = middle;
    }
    return low;
  }

  std::optional<Disc> place(Length height) const {
    return largest_disc(clear_over(plan_, arrangement_, mattress_, height));
  }

 private:
  bool fits(Length height) const {
    const std::optional<Disc> disc = place(height);
    return disc && disc->radius + doubt >= radius_;
  }

  std::vector<Length> candidates() const {
    std::vector<Length> heights;
    const auto add = [&](Length above_floor) {
      if (above_floor > mattress_.level) heights.push_back(above_floor - mattress_.level);
    };
    for (const Placed& thing : arrangement_.things) add(thing.solid.base());
    for (const Point& corner : plan_->interior.side_profile.polygon().vertices()) add(corner.y);
    if (const std::optional<Outline>& across = plan_->interior.cross_profile)
      for (const Point& corner : across->polygon().vertices()) add(corner.y);
    std::ranges::sort(heights);
    heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
    return heights;
  }

  const Plan& plan_;
  const Arrangement& arrangement_;
  const Mattress& mattress_;
  Length radius_;
};

}  // namespace

std::optional<SittingUp> sitting_up(const Plan& plan, const Arrangement& arrangement,
                                    const Mattress& mattress) {
  const std::optional<Disc> widest = largest_disc(mattress.closed);
  if (!widest) return std::nullopt;
  HeadRoom head_room(plan, arrangement, mattress, std::min(person_radius, widest->radius));
  const Length height = head_room.found();
  if (height <= Length{}) return std::nullopt;
  const std::optional<Disc> place = head_room.place(height);
  if (!place) throw std::logic_error("head room without a place");
  SittingUp sitting;
  sitting.head_room = height + cushion_gives;
  sitting.place = *place;
  sitting.sit_upright = shares_up_to(BodyMeasure::sitting_height, sitting.head_room);
  return sitting;
}

}  // namespace berthwright

#include "view/label_candidates.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "view/lettering.h"

namespace berthwright {
namespace {

constexpr PaperLength air = paper_mm(7, 10);  // between a block and what it must not meet
constexpr std::int64_t cost_of_crossing = 30'000;
constexpr std::int64_t cost_of_cover = 15'000;         // a label of what hangs above, over what lies below
constexpr PaperLength air_between = paper_mm(11, 10);  // two labels
constexpr std::int64_t cost_of_leader = 14'000;
constexpr std::int64_t cost_of_wording = 3'000;
constexpr std::int64_t cost_of_number = 40'000;
constexpr std::size_t kept_inside = 6;  // of one wording
constexpr std::size_t kept_beside = 20;
constexpr std::size_t kept_words = 30;  // of all wordings

// Sixteen ways around, in thousandths.
constexpr std::array<std::pair<int, int>, 16> directions{{{0, -1000},
                                                          {1000, 0},
                                                          {0, 1000},
                                                          {-1000, 0},
                                                          {707, -707},
                                                          {707, 707},
                                                          {-707, 707},
                                                          {-707, -707},
                                                          {383, -924},
                                                          {924, -383},
                                                          {924, 383},
                                                          {383, 924},
                                                          {-383, 924},
                                                          {-924, 383},
                                                          {-924, -383},
                                                          {-383, -924}}};

std::int64_t far_apart(PaperPoint a, PaperPoint b) {
  return std::max(std::abs((a.x - b.x).micrometres()), std::abs((a.y - b.y).micrometres())) +
         std::min(std::abs((a.x - b.x).micrometres()), std::abs((a.y - b.y).micrometres())) / 2;
}

PaperBox box_at(PaperPoint centre, PaperPoint size) {
  const PaperPoint low{centre.x - size.x / 2, centre.y - size.y / 2};
  return {low, {low.x + size.x, low.y + size.y}};
}

PaperBox bounds_of(const std::vector<PaperRing>& rings) {
  PaperBox box = bounds(rings.front());
  for (const PaperRing& ring : rings) box = hull(box, bounds(ring));
  return box;
}

/// Rings with the box around them, which most places do not meet.
struct Bounded {
  const std::vector<PaperRing>* rings;
  PaperBox box;
};
std::vector<Bounded> bounded(const std::vector<std::vector<PaperRing>>& all) {
  std::vector<Bounded> out;
  for (const std::vector<PaperRing>& rings : all)
    if (!rings.empty()) out.push_back({&rings, bounds_of(rings)});
  return out;
}
bool any_overlaps(const std::vector<Bounded>& all, const PaperBox& box) {
  return std::ranges::any_of(
      all, [&](const Bounded& one) { return overlaps(one.box, box) && overlaps(*one.rings, box); });
}

/// A wish on its ground.
struct Sought {
  const LabelGround& ground;
  const LabelWish& wish;
  std::vector<Bounded> covers;
  std::vector<Bounded> avoid;
  std::vector<Bounded> never;
};

bool is_free(const LabelGround& ground, const PaperBox& box) { return ground.is_free(grown(box, air)); }
std::int64_t crossings(const LabelGround& ground, const PaperBox& box) {
  return ground.crossings(grown(box, air / 2));
}

bool at_home(const Sought& sought, const PaperBox& box) {
  const PaperBox airy = grown(box, air);
  return holds(sought.wish.home, airy) && !any_overlaps(sought.covers, airy);
}

std::int64_t cost_over(const Sought& sought, const PaperBox& box) {
  return any_overlaps(sought.avoid, box) ? cost_of_cover : 0;
}

/// A place for a wording.
struct Spot {
  PaperBox box;
  std::optional<PaperLine> leader;
  bool crossed = false;
  std::int64_t cost = 0;
};

// The cheapest, in the order of their cost; of those at equal cost the higher, then the one more to the left.
template <typename Place>
void keep_best(std::vector<Place>& places, std::size_t count) {
  std::ranges::stable_sort(places, {},
                           [](const Place& p) { return std::tuple(p.cost, p.box.low.y, p.box.low.x); });
  if (places.size() > count) places.resize(count);
}

// Places for one wording inside the thing, spread so that they differ by about half a block.
std::vector<Spot> inside_home(const Sought& sought, const Wording& wording) {
  std::vector<Spot> out;
  const LabelWish& wish = sought.wish;
  const PaperBox room = bounds_of(wish.home);
  const PaperPoint size = size_of(wording);
  const auto steps = [](PaperLength play, PaperLength block) {
    return std::clamp<std::int64_t>(play.micrometres() * 3 / std::max<std::int64_t>(block.micrometres(), 1),
                                    6, 24);
  };
  const PaperPoint play{room.width() - size.x, room.height() - size.y};
  if (play.x < PaperLength{} || play.y < PaperLength{}) return out;
  const std::int64_t across = steps(play.x, size.x);
  const std::int64_t down = steps(play.y, size.y);
  for (std::int64_t i = 0; i <= across; ++i)
    for (std::int64_t j = 0; j <= down; ++j) {
      const PaperPoint low{room.low.x + play.x * i / across, room.low.y + play.y * j / down};
      const PaperBox box{low, {low.x + size.x, low.y + size.y}};
      if (!is_free(sought.ground, box) || !at_home(sought, box)) continue;
      const std::int64_t crossed = crossings(sought.ground, box);
      out.push_back(
          {box, std::nullopt, crossed > 0,
           far_apart(box.centre(), room.centre()) + cost_of_crossing * crossed + cost_over(sought, box)});
    }
  keep_best(out, kept_inside);
  return out;
}

// The point of the block's border that its leader leaves from.
PaperPoint foot(const Wording& wording, const PaperBox& box, PaperPoint target) {
  if (wording.ringed) return toward(box.centre(), target, box.width() / 2);
  return {std::clamp(target.x, box.low.x, box.high.x), std::clamp(target.y, box.low.y, box.high.y)};
}

// Places for one wording around its target: close by without a leader, or at the end of one.
std::vector<Spot> beside(const Sought& sought, const Wording& wording) {
  std::vector<Spot> out;
  const LabelWish& wish = sought.wish;
  const PaperPoint size = size_of(wording);
  for (const std::int64_t distance : {1, 3, 5, 8, 12, 17, 23, 30})
    for (const auto& [x, y] : directions) {
      const bool touching = distance == 1;
      if (touching && (!wish.may_touch || wording.ringed)) continue;
      const PaperPoint centre{wish.target.x + paper_mm(distance * x, 1000) + size.x * x / 2000,
                              wish.target.y + paper_mm(distance * y, 1000) + size.y * y / 2000};
      const PaperBox box = box_at(centre, size);
      if (!is_free(sought.ground, box) || (!wording.ringed && any_overlaps(sought.never, box))) continue;
      if (!wish.within.empty() && !holds(wish.within, box)) continue;
      const std::int64_t crossed = crossings(sought.ground, box);
      Spot spot{box, std::nullopt, crossed > 0, cost_of_crossing * crossed + cost_over(sought, box)};
      if (!touching) {
        spot.leader = PaperLine{foot(wording, box, wish.target), wish.target};
        spot.cost += cost_of_leader + 2 * far_apart(spot.leader->from, spot.leader->to);
        if (!sought.ground.leader_is_free(*spot.leader)) continue;
      }
      out.push_back(spot);
    }
  keep_best(out, kept_beside);
  return out;
}

// Where a leader may end: the middle of what is seen, else any seen point of a coarse grid.
std::vector<PaperPoint> targets_of(const LabelWish& wish) {
  std::vector<PaperPoint> targets{wish.target};
  if (wish.home.empty()) return targets;
  const PaperBox room = bounds_of(wish.home);
  for (std::int64_t i = 1; i < 12; i += 2)
    for (std::int64_t j = 1; j < 12; j += 2) {
      const PaperPoint p{room.low.x + room.width() * i / 12, room.low.y + room.height() * j / 12};
      if (inside(wish.home, p) &&
          std::ranges::none_of(wish.covers, [&](const auto& cover) { return inside(cover, p); }))
        targets.push_back(p);
    }
  return targets;
}

void add(std::vector<LabelCandidate>& all, const Wording& wording, const std::vector<Spot>& spots,
         std::int64_t cost, bool keyed) {
  for (const Spot& spot : spots)
    all.push_back({wording, spot.box, spot.leader, keyed, spot.crossed, spot.cost + cost});
}

}  // namespace

Wording number_wording(int number) { return {{std::to_string(number)}, lettering::note, false, true}; }

std::vector<LabelCandidate> candidates_of(const LabelGround& ground, const LabelWish& wish) {
  const Sought sought{ground, wish, bounded(wish.covers), bounded(wish.avoid), bounded(wish.never)};
  std::vector<LabelCandidate> all;
  std::int64_t cost = 0;
  for (const Wording& wording : wish.wordings) {
    if (!wish.home.empty()) add(all, wording, inside_home(sought, wording), cost, false);
    if (wish.may_stand_off || wish.may_touch) add(all, wording, beside(sought, wording), cost, false);
    cost += cost_of_wording;
  }
  keep_best(all, kept_words);
  const Wording number = number_wording(88);
  if (!wish.home.empty()) add(all, number, inside_home(sought, number), cost_of_number * wish.weight, true);
  add(all, number, beside(sought, number), cost_of_number * wish.weight, true);
  keep_best(all, all.size());
  return all;
}

std::optional<LabelCandidate> last_resort(const LabelGround& ground, const LabelWish& wish,
                                          const std::vector<LabelCandidate>& labels) {
  const Wording number = number_wording(88);
  const PaperPoint size = size_of(number);
  const PaperBox& area = ground.area();
  std::optional<LabelCandidate> best;
  const std::vector<PaperPoint> targets = targets_of(wish);
  for (PaperLength y = area.low.y + air; y + size.y < area.high.y; y = y + size.y / 2)
    for (PaperLength x = area.low.x + air; x + size.x < area.high.x; x = x + size.x / 2) {
      const PaperBox box{{x, y}, {x + size.x, y + size.y}};
      if (!is_free(ground, box)) continue;
      for (const PaperPoint target : targets) {
        const PaperLine leader{foot(number, box, target), target};
        const std::int64_t cost = far_apart(leader.from, leader.to);
        if ((best && best->cost <= cost) || !ground.leader_is_free(leader)) continue;
        LabelCandidate candidate{number, box, leader, true, false, cost};
        if (std::ranges::none_of(labels,
                                 [&](const LabelCandidate& label) { return conflict(label, candidate); }))
          best = std::move(candidate);
      }
    }
  return best;
}

bool conflict(const LabelCandidate& a, const LabelCandidate& b) {
  const PaperBox airy = grown(a.box, air_between);
  if (overlaps(airy, b.box)) return true;
  if (a.leader && crosses(*a.leader, grown(b.box, air / 2))) return true;
  if (b.leader && crosses(*b.leader, grown(a.box, air / 2))) return true;
  return a.leader && b.leader && crosses(*a.leader, *b.leader);
}

}  // namespace berthwright

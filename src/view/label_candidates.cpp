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

// What of the field can matter within `reach`.
LabelField within(const LabelField& field, const PaperBox& reach) {
  LabelField near{field.area, {}, {}, {}, {}};
  for (const PaperBox& box : field.taken)
    if (overlaps(box, reach)) near.taken.push_back(box);
  for (const PaperLine& line : field.heavy)
    if (crosses(line, reach)) near.heavy.push_back(line);
  for (const PaperLine& line : field.light)
    if (crosses(line, reach)) near.light.push_back(line);
  return near;
}

bool is_free(const LabelField& field, const PaperBox& box) {
  const PaperBox airy = grown(box, air);
  return holds(field.area, airy) &&
         std::ranges::none_of(field.taken, [&](const PaperBox& taken) { return overlaps(taken, airy); }) &&
         std::ranges::none_of(field.heavy, [&](const PaperLine& line) { return crosses(line, airy); });
}

std::int64_t crossings(const LabelField& field, const PaperBox& box) {
  const PaperBox airy = grown(box, air / 2);
  return std::ranges::count_if(field.light, [&](const PaperLine& line) { return crosses(line, airy); });
}

bool leader_is_free(const LabelField& field, const PaperLine& leader) {
  const auto in_its_way = [&](const PaperBox& box) { return crosses(leader, box); };
  return std::ranges::none_of(field.taken, in_its_way) && std::ranges::none_of(field.signs, in_its_way);
}

bool at_home(const LabelWish& wish, const PaperBox& box) {
  const PaperBox airy = grown(box, air);
  return holds(wish.home, airy) &&
         std::ranges::none_of(wish.covers, [&](const auto& cover) { return overlaps(cover, airy); });
}

std::int64_t cost_over(const LabelWish& wish, const PaperBox& box) {
  return std::ranges::any_of(wish.avoid, [&](const auto& rings) { return overlaps(rings, box); })
             ? cost_of_cover
             : 0;
}

bool is_barred(const LabelWish& wish, const PaperBox& box) {
  return std::ranges::any_of(wish.never, [&](const auto& rings) { return overlaps(rings, box); });
}

PaperBox bounds_of(const std::vector<PaperRing>& rings) {
  PaperBox box = bounds(rings.front());
  for (const PaperRing& ring : rings) box = hull(box, bounds(ring));
  return box;
}

void keep_best(std::vector<LabelCandidate>& candidates, std::size_t count) {
  std::ranges::stable_sort(
      candidates, {}, [](const LabelCandidate& c) { return std::tuple(c.cost, c.box.low.y, c.box.low.x); });
  if (candidates.size() > count) candidates.resize(count);
}

// Places for one wording inside the thing, spread so that they differ by about half a block.
std::vector<LabelCandidate> inside_home(const LabelField& field, const LabelWish& wish,
                                        const Wording& wording) {
  std::vector<LabelCandidate> out;
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
      if (!is_free(field, box) || !at_home(wish, box)) continue;
      const std::int64_t crossed = crossings(field, box);
      out.push_back(
          {wording, box, std::nullopt, false, crossed > 0,
           far_apart(box.centre(), room.centre()) + cost_of_crossing * crossed + cost_over(wish, box)});
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
std::vector<LabelCandidate> beside(const LabelField& field, const LabelWish& wish, const Wording& wording) {
  std::vector<LabelCandidate> out;
  const PaperPoint size = size_of(wording);
  for (const std::int64_t distance : {1, 3, 5, 8, 12, 17, 23, 30})
    for (const auto& [x, y] : directions) {
      const bool touching = distance == 1;
      if (touching && (!wish.may_touch || wording.ringed)) continue;
      const PaperPoint centre{wish.target.x + paper_mm(distance * x, 1000) + size.x * x / 2000,
                              wish.target.y + paper_mm(distance * y, 1000) + size.y * y / 2000};
      const PaperBox box = box_at(centre, size);
      if (!is_free(field, box) || (!wording.ringed && is_barred(wish, box))) continue;
      if (!wish.within.empty() && !holds(wish.within, box)) continue;
      const std::int64_t crossed = crossings(field, box);
      LabelCandidate candidate{wording, box,         std::nullopt,
                               false,   crossed > 0, cost_of_crossing * crossed + cost_over(wish, box)};
      if (!touching) {
        candidate.leader = PaperLine{foot(wording, box, wish.target), wish.target};
        candidate.cost += cost_of_leader + 2 * far_apart(candidate.leader->from, candidate.leader->to);
        if (!leader_is_free(field, *candidate.leader)) continue;
      }
      out.push_back(std::move(candidate));
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

void add(std::vector<LabelCandidate>& all, std::vector<LabelCandidate> more, std::int64_t cost, bool keyed) {
  for (LabelCandidate& candidate : more) {
    candidate.cost += cost;
    candidate.keyed = keyed;
    all.push_back(std::move(candidate));
  }
}

}  // namespace

Wording number_wording(int number) { return {{std::to_string(number)}, lettering::note, false, true}; }

std::vector<LabelCandidate> candidates_of(const LabelField& field, const LabelWish& wish) {
  std::vector<LabelCandidate> all;
  const LabelField near = wish.home.empty() ? field : within(field, grown(bounds_of(wish.home), paper_mm(2)));
  std::int64_t cost = 0;
  for (const Wording& wording : wish.wordings) {
    if (!wish.home.empty()) add(all, inside_home(near, wish, wording), cost, false);
    if (wish.may_stand_off || wish.may_touch) add(all, beside(field, wish, wording), cost, false);
    cost += cost_of_wording;
  }
  keep_best(all, kept_words);
  const Wording number = number_wording(88);
  if (!wish.home.empty()) add(all, inside_home(near, wish, number), cost_of_number * wish.weight, true);
  add(all, beside(field, wish, number), cost_of_number * wish.weight, true);
  keep_best(all, all.size());
  return all;
}

std::optional<LabelCandidate> last_resort(const LabelField& field, const LabelWish& wish,
                                          const std::vector<LabelCandidate>& labels) {
  const Wording number = number_wording(88);
  const PaperPoint size = size_of(number);
  std::optional<LabelCandidate> best;
  const std::vector<PaperPoint> targets = targets_of(wish);
  for (PaperLength y = field.area.low.y + air; y + size.y < field.area.high.y; y = y + size.y / 2)
    for (PaperLength x = field.area.low.x + air; x + size.x < field.area.high.x; x = x + size.x / 2) {
      const PaperBox box{{x, y}, {x + size.x, y + size.y}};
      if (!is_free(field, box)) continue;
      for (const PaperPoint target : targets) {
        const PaperLine leader{foot(number, box, target), target};
        const std::int64_t cost = far_apart(leader.from, leader.to);
        if ((best && best->cost <= cost) || !leader_is_free(field, leader)) continue;
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

#include "view/label_search.h"

#include <algorithm>
#include <numeric>

namespace berthwright {
namespace {

// Comparisons of two candidates: enough for groups of a dozen labels; beyond it the best found so far stands.
constexpr int most_comparisons = 600'000;
constexpr std::int64_t cost_of_none = 400'000;

// The search over one group of labels that compete: cheapest choices first, cut by the cost found so far.
class Search {
 public:
  Search(const LabelChoices& choices, std::vector<std::size_t> group)
      : choices_(choices), group_(std::move(group)) {
    least_rest_.assign(group_.size() + 1, 0);
    for (std::size_t i = group_.size(); i-- > 0;) {
      const auto& mine = choices_[group_[i]];
      least_rest_[i] = least_rest_[i + 1] + (mine.empty() ? cost_of_none : mine.front().cost);
    }
    chosen_.assign(group_.size(), nullptr);
    best_ = chosen_;
    descend(0, 0);
  }
  const std::vector<const LabelCandidate*>& best() const { return best_; }
  const std::vector<std::size_t>& group() const { return group_; }

 private:
  void descend(std::size_t depth, std::int64_t cost) {
    if (best_cost_ && cost + least_rest_[depth] >= *best_cost_) return;
    if (depth == group_.size()) {
      best_ = chosen_;
      best_cost_ = cost;
      return;
    }
    if (best_cost_ && comparisons_ > most_comparisons) return;
    for (const LabelCandidate& candidate : choices_[group_[depth]]) {
      const auto end = chosen_.begin() + static_cast<std::ptrdiff_t>(depth);
      comparisons_ += static_cast<int>(depth) + 1;
      if (std::any_of(chosen_.begin(), end,
                      [&](const LabelCandidate* other) { return other && conflict(*other, candidate); }))
        continue;
      chosen_[depth] = &candidate;
      descend(depth + 1, cost + candidate.cost);
    }
    chosen_[depth] = nullptr;
    descend(depth + 1, cost + cost_of_none);
  }

  const LabelChoices& choices_;
  std::vector<std::size_t> group_;
  std::vector<std::int64_t> least_rest_;
  std::vector<const LabelCandidate*> chosen_;
  std::vector<const LabelCandidate*> best_;
  std::optional<std::int64_t> best_cost_;
  int comparisons_ = 0;
};

// More than any two labels that conflict lie apart.
constexpr PaperLength beyond_conflict = paper_mm(2);

PaperBox reach_of(const LabelCandidate& candidate) {
  PaperBox box = grown(candidate.box, beyond_conflict);
  if (candidate.leader)
    for (const PaperPoint end : {candidate.leader->from, candidate.leader->to}) box = hull(box, {end, end});
  return grown(box, PaperLength::micrometres(1));
}

// Of each wish all that its candidates reach; what lies apart cannot conflict.
std::vector<std::optional<PaperBox>> reaches_of(const LabelChoices& choices) {
  std::vector<std::optional<PaperBox>> reaches(choices.size());
  for (std::size_t i = 0; i < choices.size(); ++i)
    for (const LabelCandidate& candidate : choices[i]) {
      const PaperBox own = reach_of(candidate);
      reaches[i] = reaches[i] ? hull(*reaches[i], own) : own;
    }
  return reaches;
}

bool compete(const std::vector<LabelCandidate>& a, const std::vector<LabelCandidate>& b) {
  return std::ranges::any_of(a, [&](const LabelCandidate& x) {
    return std::ranges::any_of(b, [&](const LabelCandidate& y) { return conflict(x, y); });
  });
}

// Wishes whose candidates can meet, found together; the fewest candidates first, for the search.
std::vector<std::vector<std::size_t>> groups_of(const LabelChoices& choices) {
  const std::vector<std::optional<PaperBox>> reaches = reaches_of(choices);
  std::vector<std::size_t> leader(choices.size());
  std::iota(leader.begin(), leader.end(), std::size_t{0});
  for (std::size_t i = 0; i < choices.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) {
      if (leader[i] == leader[j] || !reaches[i] || !reaches[j] || !overlaps(*reaches[i], *reaches[j]))
        continue;
      if (!compete(choices[i], choices[j])) continue;
      const std::size_t from = leader[i];
      const std::size_t to = leader[j];
      std::ranges::replace(leader, from, to);
    }
  std::vector<std::vector<std::size_t>> groups(choices.size());
  for (std::size_t i = 0; i < choices.size(); ++i) groups[leader[i]].push_back(i);
  std::erase_if(groups, [](const auto& group) { return group.empty(); });
  for (auto& group : groups)
    std::ranges::stable_sort(group, {}, [&](std::size_t i) { return choices[i].size(); });
  return groups;
}

// A wish whose best candidate is in nobody's way takes it: no choice of the others can be worse for that.
void settle(LabelChoices& choices) {
  const std::vector<std::optional<PaperBox>> reaches = reaches_of(choices);
  for (bool again = true; again;) {
    again = false;
    for (std::size_t i = 0; i < choices.size(); ++i) {
      if (choices[i].size() < 2) continue;
      const LabelCandidate& mine = choices[i].front();
      const PaperBox reach = reach_of(mine);
      bool alone = true;
      for (std::size_t j = 0; j < choices.size() && alone; ++j)
        alone = i == j || !reaches[j] || !overlaps(*reaches[j], reach) ||
                std::ranges::none_of(choices[j], [&](const auto& other) { return conflict(mine, other); });
      if (!alone) continue;
      choices[i].erase(choices[i].begin() + 1, choices[i].end());
      again = true;
    }
  }
}

using Chosen = std::vector<const LabelCandidate*>;

std::int64_t cost_of(const LabelCandidate* label) { return label == nullptr ? cost_of_none : label->cost; }

// The cheapest candidate of wish `i` that conflicts with none of the chosen, `i` itself left aside.
const LabelCandidate* free_choice(const LabelChoices& choices, const Chosen& chosen, std::size_t i) {
  for (const LabelCandidate& candidate : choices[i]) {
    bool free = true;
    for (std::size_t j = 0; j < chosen.size() && free; ++j)
      free = j == i || chosen[j] == nullptr || !conflict(candidate, *chosen[j]);
    if (free) return &candidate;
  }
  return nullptr;
}

// Gives wish `i` the candidate and finds new places for those in its way, if the whole gets cheaper.
bool improves(const LabelChoices& choices, Chosen& chosen, std::size_t i, const LabelCandidate& candidate) {
  Chosen trial = chosen;
  trial[i] = &candidate;
  std::int64_t gain = cost_of(chosen[i]) - candidate.cost;
  std::vector<std::size_t> moved;
  for (std::size_t j = 0; j < chosen.size(); ++j)
    if (j != i && chosen[j] != nullptr && conflict(candidate, *chosen[j])) moved.push_back(j);
  for (const std::size_t j : moved) trial[j] = nullptr;
  for (const std::size_t j : moved) {
    trial[j] = free_choice(choices, trial, j);
    gain += cost_of(chosen[j]) - cost_of(trial[j]);
    if (gain <= 0) return false;
  }
  if (gain <= 0) return false;
  chosen = std::move(trial);
  return true;
}

// Each change lowers the cost, so this ends; the rounds are bounded all the same.
void repair(const LabelChoices& choices, Chosen& chosen) {
  constexpr int most_rounds = 6;
  bool changed = true;
  for (int round = 0; changed && round < most_rounds; ++round) {
    changed = false;
    for (std::size_t i = 0; i < choices.size(); ++i)
      for (const LabelCandidate& candidate : choices[i]) {
        if (candidate.cost >= cost_of(chosen[i])) break;
        if (!improves(choices, chosen, i, candidate)) continue;
        changed = true;
        break;
      }
  }
}

}  // namespace

std::vector<const LabelCandidate*> chosen_labels(LabelChoices& choices) {
  settle(choices);
  Chosen chosen(choices.size(), nullptr);
  for (const auto& group : groups_of(choices)) {
    const Search search(choices, group);
    for (std::size_t i = 0; i < group.size(); ++i) chosen[group[i]] = search.best()[i];
  }
  repair(choices, chosen);
  return chosen;
}

}  // namespace berthwright

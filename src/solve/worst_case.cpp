#include <berthwright/solve/worst_case.h>

#include <algorithm>
#include <map>
#include <utility>

#include <berthwright/exact/squared_length.h>
#include <berthwright/solve/answer.h>

#include "geometry/remembered.h"
#include "solve/tape_proof.h"
#include "solve/tape_trial.h"

namespace berthwright {
namespace {

using MovedMeasures = std::vector<MovedMeasure>;

constexpr Length told_apart = Length::inches(1, 64);

Weight rule_weight(const Finding& finding) { return find_rule(finding.rule.text())->weight; }

Length sum_of(const std::vector<Decider>& deciders) {
  Length sum;
  for (const Decider& one : deciders) sum += one.effect;
  return sum;
}

/// A plan that was looked at, as far as it is needed again.
struct TapeLook {
  struct Seen {
    bool missing = true;
    Status status = Status::met;
    std::optional<Length> margin;
  };
  std::vector<Seen> of;
};

/// Whether a finding passes to another side of its limit; of one unknown as written only that it is not met
/// says more than the plan does.
bool turns_over(Status written, Status tried) {
  switch (written) {
    case Status::not_met:
      return is_fine(tried);
    case Status::unknown:
      return tried == Status::not_met;
    default:
      return !is_fine(tried);
  }
}

/// By how much less the margin is in a trial: more for what is not met, since that turns the other way.
std::optional<Length> toward_limit(const Finding& written, const std::optional<Length>& margin) {
  if (!written.margin || !margin || written.status == Status::unknown) return std::nullopt;
  return is_fine(written.status) ? *written.margin - *margin : *margin - *written.margin;
}

class TapeTrials {
 public:
  TapeTrials(const TapedPlan& plan, std::vector<Finding> written)
      : plan_(plan), written_(std::move(written)) {
    for (const TapeMeasure& one : plan.measures()) lengths_.push_back(one.length);
    for (const Finding& one : written_) {
      WorstCase as_written;
      as_written.written = one;
      as_written.at_worst = one;
      cases_.push_back(std::move(as_written));
    }
    turned_.resize(written_.size());
  }

  WorstCases found() && {
    for (std::size_t i = 0; i < lengths_.size(); ++i)
      if (tolerance(i) > Length{}) try_alone(i);
    for (WorstCase& one : cases_)
      std::ranges::stable_sort(one.deciders, std::ranges::greater{}, &Decider::effect);
    for (std::size_t i = 0; i < cases_.size(); ++i)
      if (is_near(i)) try_together(i);
    try_all(true);
    try_all(false);
    for (std::size_t i = 0; i < cases_.size(); ++i) {
      if (!turned_[i] || rule_weight(written_[i]) == Weight::information) continue;
      for (Decider& decider : cases_[i].deciders)
        if (turned_alone_at(i, end_of(decider))) decider.turns = bracket(i, decider);
    }
    judge();
    for (WorstCase& one : arisen_) cases_.push_back(std::move(one));
    result_.cases = std::move(cases_);
    result_.again = again(result_.cases);
    return std::move(result_);
  }

 private:
  Length tolerance(std::size_t measure) const { return plan_.measures()[measure].tolerance; }
  MovedMeasure at_end(std::size_t measure, bool longer) const {
    return {measure,
            longer ? lengths_[measure] + tolerance(measure) : lengths_[measure] - tolerance(measure)};
  }
  MovedMeasure end_of(const Decider& decider) const { return at_end(decider.measure, decider.longer); }

  /// None: there is no such plan; `reason` says why.
  const TapeLook* look_at(const MovedMeasures& moved, std::string* reason = nullptr) {
    std::vector<Length> lengths = lengths_;
    for (const MovedMeasure& one : moved) lengths[one.measure] = one.to;
    const auto known = looks_.find(lengths);
    if (known != looks_.end()) return &known->second;
    const Result<Plan> plan = plan_.made_from(lengths);
    const Result<Answer> answer = plan ? answered(*plan) : Result<Answer>(plan.problems());
    if (!answer) {
      if (reason != nullptr) *reason = answer.problems().front().message;
      return nullptr;
    }
    ++result_.looked_at;
    const TapeTrial trial = matched_to(written_, answer->findings);
    TapeLook look;
    for (std::size_t i = 0; i < written_.size(); ++i) look.of.push_back(noted(i, trial.of[i], moved));
    for (const Finding& one : trial.arisen) note_arisen(one, moved);
    return &looks_.emplace(std::move(lengths), std::move(look)).first->second;
  }

  TapeLook::Seen noted(std::size_t index, const std::optional<Finding>& tried, const MovedMeasures& moved) {
    WorstCase& one = cases_[index];
    const bool was_not_met = one.written.status == Status::not_met;
    if (!tried) {
      if (was_not_met) turned_[index] = one.vanishes = true;
      return {};
    }
    if (turns_over(one.written.status, tried->status)) turned_[index] = true;
    if (was_not_met ? tried->status != Status::unknown && is_worse(one.at_worst, *tried)
                    : is_worse(*tried, one.at_worst))
      one.at_worst = *tried, one.moved = moved;
    return {false, tried->status, tried->margin};
  }

  void note_arisen(const Finding& one, const MovedMeasures& moved) {
    const auto same = std::ranges::find_if(
        arisen_, [&](const WorstCase& other) { return is_about_the_same(other.written, one); });
    WorstCase& found = same == arisen_.end() ? arisen_.emplace_back() : *same;
    // Of two plans that show it, the one with fewer measures moved says more.
    if (!found.arises || (moved.size() <= found.moved.size() && is_worse(one, found.at_worst))) {
      found.written = found.at_worst = one;
      found.moved = moved;
    }
    found.arises = true;
    found.standing = TapeStanding::turns;
    if (moved.size() != 1) return;
    const auto [measure, to] = moved.front();
    if (std::ranges::find(found.deciders, measure, &Decider::measure) == found.deciders.end())
      found.deciders.push_back({measure, {}, to > lengths_[measure], std::nullopt});
  }

  static bool has_turned(const Finding& written, const TapeLook::Seen& seen) {
    if (seen.missing) return written.status == Status::not_met;
    return turns_over(written.status, seen.status);
  }

  void try_alone(std::size_t measure) {
    for (const bool longer : {false, true}) {
      const MovedMeasure moved = at_end(measure, longer);
      std::string reason;
      const TapeLook* look = look_at({moved}, &reason);
      if (look == nullptr) {
        result_.untried.push_back({moved, reason});
        continue;
      }
      for (std::size_t i = 0; i < written_.size(); ++i) note_alone(i, look->of[i], measure, longer);
    }
  }

  void note_alone(std::size_t index, const TapeLook::Seen& seen, std::size_t measure, bool longer) {
    const bool turns = has_turned(written_[index], seen);
    const Length effect = std::max(Length{}, toward_limit(written_[index], seen.margin).value_or(Length{}));
    if (effect == Length{} && !turns) return;
    std::vector<Decider>& deciders = cases_[index].deciders;
    const auto same = std::ranges::find(deciders, measure, &Decider::measure);
    const Decider decider{measure, effect, longer, std::nullopt};
    if (same == deciders.end())
      deciders.push_back(decider);
    else if (turns == turned_alone_at(index, end_of(*same)) ? same->effect < effect : turns)
      *same = decider;
  }

  void try_all(bool longer) {
    MovedMeasures moved;
    for (std::size_t i = 0; i < lengths_.size(); ++i)
      if (tolerance(i) > Length{}) moved.push_back(at_end(i, longer));
    if (moved.size() > 1 && look_at(moved) == nullptr) ++result_.not_stood_up;
  }

  /// Twice the sum of the effects, since two measures may do together what neither does alone.
  bool is_near(std::size_t index) const {
    const WorstCase& one = cases_[index];
    if (rule_weight(one.written) == Weight::information || one.deciders.size() < 2) return false;
    return turned_[index] || (one.written.margin && abs(*one.written.margin) <= 2 * sum_of(one.deciders));
  }

  void try_together(std::size_t index) {
    MovedMeasures moved;
    for (const Decider& one : cases_[index].deciders) moved.push_back(end_of(one));
    std::ranges::sort(moved, {}, &MovedMeasure::measure);
    const TapeLook* look = look_at(moved);
    if (look == nullptr) {
      ++result_.not_stood_up;
      return;
    }
    const Length sum = sum_of(cases_[index].deciders);
    cases_[index].adds_up = toward_limit(written_[index], look->of[index].margin) == sum;
  }

  bool turned_alone_at(std::size_t index, const MovedMeasure& moved) {
    const TapeLook* look = look_at({moved});
    return look != nullptr && has_turned(written_[index], look->of[index]);
  }

  /// The guess is the tick where an even margin turns; it and its neighbour settle it if it is one. None
  /// where a length between makes no plan, or one without the finding: there it neither holds nor turns.
  std::optional<TurnsBetween> bracket(std::size_t index, const Decider& decider) {
    const Finding& written = written_[index];
    const std::int64_t sign = decider.longer ? 1 : -1;
    const std::int64_t end = tolerance(decider.measure).ticks();
    std::int64_t holds = 0;
    std::int64_t turned = end;
    bool is_open = false;
    const auto look = [&](std::int64_t by) {
      const TapeLook* seen =
          look_at({{decider.measure, lengths_[decider.measure] + Length::from_ticks(sign * by)}});
      const bool turns = seen != nullptr && has_turned(written, seen->of[index]);
      is_open = is_open || seen == nullptr || (seen->of[index].missing && !turns);
      (turns ? turned : holds) = by;
    };
    if (written.margin && decider.effect > Length{}) {
      const Int128 margin = abs(*written.margin).ticks();
      const Int128 guess = margin * end / decider.effect.ticks() + (is_fine(written.status) ? 1 : 0);
      if (guess > 0 && guess < end) look(static_cast<std::int64_t>(guess));
      if (turned - holds > 1) look(turned == guess ? turned - 1 : holds + 1);
    }
    const std::int64_t apart = told_apart.ticks();
    while (turned - holds > apart && !is_open) look(holds + (turned - holds) / 2);
    if (is_open) return std::nullopt;
    const auto length = [&](std::int64_t by) {
      return lengths_[decider.measure] + Length::from_ticks(sign * by);
    };
    return TurnsBetween{length(holds), length(turned)};
  }

  void judge() {
    for (std::size_t i = 0; i < cases_.size(); ++i) {
      WorstCase& one = cases_[i];
      if (one.written.status == Status::unknown && !turned_[i]) continue;
      one.standing = turned_[i]                                       ? TapeStanding::turns
                     : is_proven(plan_, one.written, result_.untried) ? TapeStanding::proven
                                                                      : TapeStanding::looked_at;
    }
    result_.loose = static_cast<std::size_t>(std::ranges::count_if(
        plan_.measures(), [](const TapeMeasure& one) { return one.tolerance > Length{}; }));
  }

  std::vector<TakeAgain> again(const std::vector<WorstCase>& cases) const {
    std::map<std::size_t, std::pair<Int128, std::size_t>> votes;
    for (const WorstCase& one : cases) {
      const Weight weight = rule_weight(one.written);
      if (one.standing != TapeStanding::turns || weight == Weight::information) continue;
      const Int128 vote = Int128{1'000'000} * (weight == Weight::alert ? 4 : 1);
      const Length sum = sum_of(one.deciders);
      for (const Decider& decider : one.deciders) {
        auto& [votes_of, findings] = votes[decider.measure];
        ++findings;
        votes_of += sum > Length{} ? vote * decider.effect.ticks() / sum.ticks()
                                   : vote / static_cast<std::int64_t>(one.deciders.size());
      }
    }
    std::vector<TakeAgain> order;
    for (const auto& [measure, vote] : votes)
      if (plan_.measures()[measure].state != TapeState::checked) order.push_back({measure, vote.second});
    std::ranges::stable_sort(order, [&](const TakeAgain& a, const TakeAgain& b) {
      return votes.at(a.measure).first > votes.at(b.measure).first;
    });
    return order;
  }

  const TapedPlan& plan_;
  std::vector<Finding> written_;
  std::vector<Length> lengths_;
  std::vector<WorstCase> cases_;
  std::vector<WorstCase> arisen_;
  std::vector<bool> turned_;
  std::map<std::vector<Length>, TapeLook> looks_;
  WorstCases result_;
};

}  // namespace

Result<WorstCases> worst_cases(const TapedPlan& plan) {
  const Remembering remembering;
  Result<Answer> answer = answered(plan.plan());
  if (!answer) return answer.problems();
  return TapeTrials(plan, std::move(answer).value().findings).found();
}

Length root_of_squares(const std::vector<Decider>& deciders) {
  Int128 sum = 0;
  for (const Decider& one : deciders) sum += Int128{one.effect.ticks()} * one.effect.ticks();
  return SquaredLength(sum, 1).floor();
}

int exit_code(const WorstCases& worst) {
  bool unknown = false;
  for (const WorstCase& one : worst.cases) {
    if (rule_weight(one.written) != Weight::alert) continue;
    if (one.at_worst.status == Status::not_met || one.written.status == Status::not_met) return 1;
    unknown = unknown || one.at_worst.status == Status::unknown || one.written.status == Status::unknown;
  }
  return unknown ? 2 : 0;
}

}  // namespace berthwright

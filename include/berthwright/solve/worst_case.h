#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/plan/tape.h>
#include <berthwright/solve/finding.h>

namespace berthwright {

/// What becomes of a finding while every measure lies within its tolerance. A finding turns over where one
/// that is met (or close) is not met or unknown, one not met is met or gone, or one unknown is not met.
enum class TapeStanding {
  proven,     ///< it cannot turn: its figure is one measure as it is, or none at all
  looked_at,  ///< it turned in none of the plans looked at; no proof
  turns,      ///< it turned in a plan that was stood up and checked
  unknown     ///< as written; none of the plans looked at shows it not met
};

/// A measure at another length than the plan writes.
struct MovedMeasure {
  std::size_t measure = 0;  ///< into the plan's measures
  Length to;
  friend bool operator==(const MovedMeasure&, const MovedMeasure&) = default;
};

/// Where a finding turns over while one measure moves alone; both lengths were looked at, and they are one
/// tick apart where the margin changes evenly, else at most 1/64 in.
struct TurnsBetween {
  Length holds;
  Length turned;
  friend bool operator==(const TurnsBetween&, const TurnsBetween&) = default;
};

/// A measure that moves a finding toward its limit.
struct Decider {
  std::size_t measure = 0;
  Length effect;        ///< what the margin changes by where it alone is off, at the end that is worse
  bool longer = false;  ///< whether that is its longer end
  std::optional<TurnsBetween> turns;  ///< none: it does not turn the finding alone, or no such pair was found
};

struct WorstCase {
  Finding written;        ///< as the plan is written; where it `arises`, as at worst
  bool arises = false;    ///< the plan as written has no such finding
  bool vanishes = false;  ///< one of the plans looked at has no such finding and is fine there
  TapeStanding standing = TapeStanding::unknown;
  Finding at_worst;  ///< of the plans looked at, where it is nearest its limit or farthest beyond it
  std::vector<MovedMeasure> moved;  ///< what makes it so; empty: the plan as written
  std::vector<Decider> deciders;    ///< greatest effect first
  /// All deciders at their worse ends were tried together, and what they do alone adds up to the tick.
  bool adds_up = false;
};

/// An end of one measure at which no plan can be stood up, and the first reason.
struct Untried {
  MovedMeasure moved;
  std::string reason;
};

/// A measure to take again, and how many findings that may turn over it decides.
struct TakeAgain {
  std::size_t measure = 0;
  std::size_t findings = 0;
};

struct WorstCases {
  std::vector<WorstCase> cases;  ///< of every finding, in their order; then those that arise
  std::vector<TakeAgain> again;  ///< none that is checked; heaviest first
  std::vector<Untried> untried;
  std::size_t loose = 0;         ///< measures that may be off
  std::size_t looked_at = 0;     ///< plans stood up and checked whole, the one as written not counted
  std::size_t not_stood_up = 0;  ///< combinations of several measures that make no plan
};

/// Checks plans made anew with measures moved within their tolerances: each measure alone at both ends, all
/// at their longer and all at their shorter ends, then for every alert and piece of advice near its limit the
/// measures that move it, each at its worse end; and lengths between, to find where one measure alone turns
/// it.
///
/// Guarantee: a finding that turns is witnessed by a plan that was checked (`moved`), so none is told that
/// does not turn. One that is `proven` has a figure that is one measure of the plan or none. Of all others it
/// is only said that they turned in none of the plans looked at: where a figure jumps (a gap that counts as
/// closed, a cushion that drops out of a bed) a plan between those looked at may do what none of them does.
/// Measures stand at what the plan writes, also where it says what was found as built.
/// The order to measure again: each finding that turns has one vote, an alert four, shared among its deciders
/// by effect. Problems: those of `answered`.
Result<WorstCases> worst_cases(const TapedPlan& plan);

/// The root of the sum of the squares of the effects: what is usual if all are off by chance. For information
/// only; no finding is judged by it.
Length root_of_squares(const std::vector<Decider>& deciders);

/// 1: an alert is not met or may not be; 2: none, but one is unknown or may be; else 0.
int exit_code(const WorstCases& worst);

}  // namespace berthwright

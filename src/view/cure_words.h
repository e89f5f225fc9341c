#pragma once

#include <string>

#include <berthwright/solve/finding.h>

namespace berthwright {

/// What the sentence of one cure is made of.
struct ToldCure {
  const Plan& plan;
  const Finding& finding;
  const Cure& cure;

  std::string thing() const;                            ///< the name of the subject
  std::string things() const;                           ///< and of what is treated in the same way
  std::string by() const;                               ///< rounded up, or it would not cure
  bool several() const { return !cure.alike.empty(); }  ///< whether `things` are more than one
};

// Sentences of cures that differ from rule to rule. std::logic_error where a rule has none.

/// What is to be written into the plan.
std::string stating_by_rule(const ToldCure& told);
/// What is to be done, without a figure or with one that only this rule has.
std::string doing_by_rule(const ToldCure& told);
/// Why nothing mends it, and what that means.
std::string nothing_by_rule(const ToldCure& told);

}  // namespace berthwright

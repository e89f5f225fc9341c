#pragma once

#include <string_view>

#include <berthwright/solve/finding.h>

namespace berthwright {

/// A finding of `rule` with the rule's source and, where the plan has its own number, the reason for it.
/// Status unknown, nothing measured. std::logic_error when there is no such rule.
Finding finding_of(const Plan& plan, std::string_view rule);

/// Sets what was measured, the rule's limit (the plan's own in its place), margin and status; a margin is
/// what is to spare, so it is negative exactly when the rule is not met. The rule must have a limit.
void compare(const Plan& plan, Finding& finding, Length measured);

/// As above, against `required` in place of the limit.
void compare(Finding& finding, Length measured, Length required);

/// How much is missing where the rule is not met, else how much is to spare, as a negative length; zero where
/// nothing was compared.
Length shortfall(const Finding& finding);

/// The least length not below `length` that a shop marks out: the next 1/8 in, or the next millimetre.
Length marked_out(Length length, Unit unit);

/// What is to be done after what there is to do already.
void add_step(std::optional<Cure>& cure, Cure next);

/// The side of `box` at which the place lies: beyond it by most, or inside the box nearest to it.
Wall side_at(const Rect& box, Point place);

}  // namespace berthwright

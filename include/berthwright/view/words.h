#pragma once

#include <string>
#include <string_view>

#include <berthwright/solve/answer.h>

namespace berthwright {

/// Words that differ between American and British English, and the others that outputs share. One table.
enum class Term {
  trailer,
  curb_side,
  street_side,
  wheel_arch,
  cleat,
  filler,
  counter,
  cooktop,
  outlet,
  locker,
  front,
  rear,
  left,
  right,
  met,
  close,
  not_met,
  unknown,
  alert,
  advice,
  information
};
std::string_view word(Term term, English english);

Term term_of(Status status);
Term term_of(Weight weight);
Term term_of(Wall wall);
/// "bench", "wheel well"…
std::string_view word(Fixture::Kind kind, English english);

/// A quantity in both units, own first; `rounding` toward safety is the caller's choice.
std::string quantity_text(const Quantity& quantity, Unit own, Rounding rounding);

/// The finding as a person says it: what was measured where, what it was compared with and who says so, and
/// what it means. Complete sentences, no claim of safety.
std::string sentence(const Plan& plan, const Finding& finding);
/// What would mend it, in numbers; empty when there is no cure.
std::string cure_sentence(const Plan& plan, const Finding& finding);
/// "CPSC space-heater tips (published)", "common practice, no source".
std::string source_text(const Source& source);

/// Who comes before any figure of ours.
std::string_view deferral(English english);
/// The caution that stands on every sheet and under every check.
std::string_view caution_line(English english);

}  // namespace berthwright

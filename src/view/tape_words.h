#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/worst_case.h>

namespace berthwright {

/// As a machine reads it: "proven", "looked at", "turns", "unknown"; "planned", "as built", "checked".
std::string_view word(TapeStanding standing);
std::string_view word(TapeState state);

/// "left bench/width 20" (508 mm), ± 1/8" (3.2 mm), planned": under the name by which the plan calls it.
std::string measure_text(const TapeMeasure& measure, Unit own);

/// What becomes of the finding, in whole sentences, the first as the plan is written.
std::vector<std::string> turning_sentences(const TapedPlan& plan, const WorstCase& worst);

/// How many plans were looked at, and what that does and does not say.
std::vector<std::string> method_sentences(const TapedPlan& plan, const WorstCases& worst);

std::string again_sentence(const TapedPlan& plan, const TakeAgain& again);
std::string untried_sentence(const TapedPlan& plan, const Untried& untried);

}  // namespace berthwright

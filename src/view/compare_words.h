#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/comparison.h>
#include <berthwright/view/sheets.h>

namespace berthwright {

// Everything that is said of two plans or configurations side by side, which are A and B throughout.

/// "distance from a heater to what can burn", "share on the coupling, tanks full".
std::string compared_name(const Comparison& of, const ComparedFigure& figure);
/// The rule by which it is compared: its id, or what the loads compare; empty: none.
std::string compared_rule(const ComparedFigure& figure);
/// The figure of one side with its status and the things it is about; empty: that side has none.
std::string compared_side(const ComparedPlan& plan, const std::optional<FigureSide>& side);
/// Which is better and why, in a sentence.
std::string compared_verdict(const Comparison& of, const ComparedFigure& figure);
/// What was compared: "By day", "A by day, B by night", "The trailer as such".
std::string pair_heading(const Comparison& of, const ComparedPair& pair);
/// How many figures of the pair are better here and there.
std::string pair_sum(const ComparedPair& pair);
/// Configurations that one of them lacks, a sentence each.
std::vector<std::string> lacking_configurations(const Comparison& of);
/// What "better" means and does not mean.
std::string_view compared_caution();

std::string_view word(ComparedFigure::Verdict verdict);
std::string_view word(ComparedFigure::Because because);
std::string_view word(LoadFigure::Kind kind);

}  // namespace berthwright

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/convert/drop_in.h>
#include <berthwright/solve/convert/steps.h>

namespace berthwright {

/// As a machine reads it: "order", "none", "undecided"; "lift"…; "posed"…
std::string_view word(Conversion::Verdict verdict);
std::string_view word(Motion::Kind kind);
/// Where each leg of the plan is then.
std::vector<std::string> leg_sentences(const Plan& plan, const Arrangement& arrangement);
/// What is done with the bedding of the beds of either configuration, before the first step or after the last.
std::vector<std::string> bedding_sentences(const Plan& plan, const Conversion& conversion);
std::string_view word(PiecePlace::Kind kind);

/// What a person does in one step, as one or two plain sentences.
std::string step_sentence(const Plan& plan, const Step& step);
/// "From day to night: 8 steps", or that there is none, or that it was not decided.
std::string conversion_heading(const Conversion& conversion);
/// How few steps it could have been, or within what none was found; sentences.
std::string conversion_bound(const Conversion& conversion);
/// What keeps a piece.
std::string stuck_sentence(const Plan& plan, const Conversion& conversion, const Stuck& stuck);
/// How a board drops between what stands around it, in one direction.
std::string drop_in_sentence(const Plan& plan, const DropIn& board, const DropIn::Direction& direction);
/// What keeps a board from kicking back out of its place, as far as the plan says.
std::string held_sentence(const Plan& plan, const DropIn& board);
/// Which moves and places were tried, in sentences.
std::string_view moves_tried();

}  // namespace berthwright

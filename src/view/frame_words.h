#pragma once

#include <berthwright/solve/convert/steps.h>

#include "view/notes.h"

namespace berthwright {

/// What is said above the frame of a step, from 1: its number, what a person does, and what the pictures
/// cannot show.
std::vector<Note> frame_notes(const Plan& plan, const Conversion& conversion, std::size_t number);

/// "day to night".
std::string pair_words(const Conversion& conversion);

/// Why there is no storyboard: no order, or none decided.
std::vector<Note> no_story_notes(const Plan& plan, const Conversion& conversion);

}  // namespace berthwright

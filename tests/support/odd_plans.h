#pragma once

#include <memory>
#include <string>
#include <vector>

#include <berthwright/exact/result.h>

#include "support/trailer_text.h"

namespace berthwright {

/// Texts with faults of spelling or of size, of which a file can show but one, and some too large to keep.
std::vector<std::string> texts_that_are_no_plan();

/// Plans that can be read and not stood up.
std::vector<std::string> plans_that_do_not_stand();

/// A plan that can be checked, in a room too large for the search for places of a heater.
TrailerText plan_that_is_too_large_to_site();

/// Trailers whose findings are told in words that those of `plans_of_every_status` lack.
std::vector<TrailerText> plans_that_say_more();
/// The same with their answers, made once in a process.
const std::vector<std::unique_ptr<const Answered>>& answers_that_say_more();

/// What is said to a program that makes a plan, a length or an outline by itself, and no file can bring
/// about.
Problems told_to_programs();

/// What `new` says to answers that cannot be.
Problems told_to_answers();

}  // namespace berthwright

#pragma once

#include <string>

#include <berthwright/solve/answer.h>

namespace berthwright {

/// The part of a check on seats, one entry for each seat of each configuration; nothing where there is none.
std::string seats_part(const Plan& plan, const Answer& answer);

/// Findings whose numbers stand in that part already.
bool told_with_the_seats(const Finding& finding);

}  // namespace berthwright

#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/answer.h>

namespace berthwright {

// The figures that people ask for first, as sentences, apart from the findings that compare them.

/// How large a bed is, the first with its name; what it holds, how long it is, whom it suits, who sits up.
std::vector<std::string> bed_sentences(const Plan& plan, const BedAnswer& answer);
/// The share of the population for which a bed is long enough.
std::string fits_sentence(const Plan& plan, const SleepingRoom& room);

/// For each source of heat of a configuration the nearest thing that can burn.
std::vector<std::string> nearest_to_heat(const Plan& plan, const ConfigurationAnswer& answer);

/// The widest way from a bed to a door, where it is narrowest, and the ways out within reach of the bed.
std::string exits_sentence(const Plan& plan, const ConfigurationAnswer& configuration, const BedAnswer& bed);

}  // namespace berthwright

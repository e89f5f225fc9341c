#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/solve/site/siting.h>

namespace berthwright {

/// As a machine reads it: "room", "three feet".
std::string_view word(SiteRule rule);

/// "its nearest sides 4' 2" from the front wall and 1' 1" from the left wall, looking to the rear".
std::string place_text(const Plan& plan, const SitePlace& place);

/// "the published distance", "the published distance and the maker's distances".
std::string rules_text(std::span<const SiteRule> rules);

/// "2' 5" from Left seat; published distance 3' 0", short by 7"".
std::string margin_text(const Plan& plan, const SiteMargin& margin);

/// Where the regions that are free lie, a line for each way the front looks, equal ones together.
std::vector<std::string> free_texts(const Plan& plan, const SiteScope& scope);

/// What a heater is called, how large it is, and what is asked of it with the sources.
std::string asked_text(const Plan& plan, const std::string& heater);

/// "at least 3' 0" to what can burn" with the sources.
std::string published_text(const Plan& plan);
/// "back" and the like: faces that its data plate in the plan does not give. Empty without a plate.
std::vector<std::string> missing_faces(const Plan& plan, const std::string& source);
/// What the data plate of anything that gives heat asks at each face, and which faces are unknown.
std::string plate_text(const Plan& plan, const std::string& source);

/// "day and night".
std::string configurations_text(const SiteScope& scope);
/// Whether places keep every rule, or which rules leave none.
std::string verdict_text(const HeaterPlaces& heater, const SiteScope& scope);
/// "switch it off, unplug it…", of a portable heater that has no place where a bed is made; else empty.
std::string stow_before_bed(const Plan& plan, const HeaterPlaces& heater, const SiteScope& scope);
/// "does not keep the published distance", or that it keeps every rule that could be compared.
std::string breaks_text(const StandsNow& now);

/// "Outlets and its own cord of 6' 0"" and who says that it takes no other. The heater must have a cord.
std::string outlets_heading(const Plan& plan, const std::string& heater);
/// How long the cord must be where the plan stands the heater, or why it comes to the outlet nowhere.
std::string run_text(const Plan& plan, const std::string& heater, const CordRun& run);

/// "On the floor", "On Counter", "As high as it is built in".
std::string surface_text(const Plan& plan, const std::string& stands_on);

/// Whether it fits into the place, how it lies and what is clear in each direction.
std::string stow_sentence(const Plan& plan, const StowFit& fit);

/// What the plan does not say, so that it could not be compared; a sentence each.
std::vector<std::string> lacking_sentences(const Plan& plan, const HeaterPlaces& heater);

}  // namespace berthwright

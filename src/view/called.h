#pragma once

#include <string>
#include <string_view>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// What a person calls the fixture, piece, bed, leaf or opening of that id; the id itself of what has no
/// name.
std::string name_of(const Plan& plan, const std::string& id);

/// "a", "a and b", "a, b and c".
std::string listed_with_and(const std::vector<std::string>& words);
std::string names_with_and(const Plan& plan, const std::vector<std::string>& ids);

/// The words with their first letter large, or small.
std::string capital_first(std::string_view words);
std::string small_first(std::string_view words);

/// "trailer", "caravan", and of what drives itself "van".
std::string vehicle(const Plan& plan);

/// "By day", "By night", "On the road", "In lounge".
std::string when_of(const Configuration& configuration);

}  // namespace berthwright

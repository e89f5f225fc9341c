#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace berthwright {

/// Without what does not count in a name: capitals, spaces, hyphens and underscores.
std::string folded_name(std::string_view name);

/// The candidate that `name` was most likely meant to be: fewest letters changed, added, dropped or swapped,
/// at most a third of them and never more than three. Capitals, spaces, hyphens and underscores do not
/// count. Of equally near ones the first. None: nothing is near enough.
std::optional<std::string> nearest_name(std::string_view name, std::span<const std::string> candidates);

}  // namespace berthwright

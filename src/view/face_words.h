#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/finding.h>

namespace berthwright {

/// "its front and its side toward the left wall".
std::string faces_with_and(const std::vector<ApplianceFace>& faces);

/// Before what of an appliance a place lies: "before its front", "before the edge of its front and its top";
/// of no face "within it".
std::string before_faces(const std::vector<ApplianceFace>& faces);

}  // namespace berthwright

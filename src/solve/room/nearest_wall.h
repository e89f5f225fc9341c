#pragma once

#include <string>

#include <berthwright/plan/interior.h>

namespace berthwright {

/// "the front wall" and so on: the wall of the room whose line in plan lies nearest; outside of the room the
/// one that is farthest passed.
std::string nearest_wall(const Interior& room, Point place);

}  // namespace berthwright

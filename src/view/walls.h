#pragma once

#include <berthwright/plan/plan.h>

#include "view/scale.h"

namespace berthwright {

/// Half of the band that stands for a wall lies outside the room; its inner half is under the floor.
inline constexpr PaperLength wall_band = paper_mm(12, 10);

/// Where the ink of a heavy path is seen: its own lines and, of a wall, the outer border of its band too.
std::vector<PaperLine> seen_lines(const Path& path);

/// The bare room: walls and floor.
std::vector<Mark> room_marks(const PlanView& view, const Interior& interior);

/// An opening: the break in the wall and, of a door, its leaf and swing.
std::vector<Mark> opening_marks(const PlanView& view, const Plan& plan, const Opening& opening);

/// How far a door's leaf reaches outside the wall, as it is drawn: ajar.
PaperLength reach_outside(const Opening& opening, std::int64_t ratio);

/// What a wall and what its doors reach outside of it take beside a small plan.
PaperLength wall_depth(const Plan& plan, Wall wall, std::int64_t ratio);

/// A point outside the wall at the middle of the opening, where its tag stands.
PaperPoint tag_of(const PlanView& view, const Plan& plan, const Opening& opening);

}  // namespace berthwright

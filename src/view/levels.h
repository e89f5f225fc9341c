#pragma once

#include <string>
#include <vector>

#include "view/scale.h"
#include "view/section.h"

namespace berthwright {

/// A height that a section tells.
struct Level {
  Length height;
  std::string name;
  friend bool operator==(const Level&, const Level&) = default;
};

/// Floor, bench tops, cushion tops, boards, table tops and the roof of what the plane cuts, from the floor
/// up; heights within 1/32 in are one, with two of their names. Heights that `told` holds are left out, and
/// the roof where one is told: there it is head room that counts.
std::vector<Level> levels_of(const Section& section, const std::vector<Level>& told);

/// Level marks in a column to the right of the section.
struct LevelColumn {
  std::vector<Level> levels;
  std::vector<std::pair<std::string, std::string>> words;  ///< figure and name of each
  PaperLength width;
};
LevelColumn level_column(std::vector<Level> levels, Unit own);

/// The least height of a column that holds them all.
PaperLength least_height(const LevelColumn& column);

/// The marks, from `left` on; lettering stays between `top` and `foot`. The view is the section's.
std::vector<Mark> marks_of(const LevelColumn& column, const PlanView& view, PaperLength left, PaperLength top,
                           PaperLength foot);

}  // namespace berthwright

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
  Length from;  ///< how far along the cut what lies there reaches: from there a line leads to the tag
  friend bool operator==(const Level&, const Level&) = default;
};

/// Floor, tops of benches, cushions, boards and tables, and the roof of what the plane cuts, from the floor
/// up; heights within 1/32 in are one. A thing alone at its height goes by its own name ("Left seat top"),
/// several by what they are ("cushion tops"), or by their names where the same words would stand at two
/// heights.
std::vector<Level> levels_of(const Section& section);

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

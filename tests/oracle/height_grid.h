#pragma once

#include <string>
#include <vector>

namespace berthwright::oracle {

/// A box that hangs or stands, all in inches: x, y, length, width, underside, top.
struct Box {
  std::string name;
  double x, y, length, width, base, top;
};
/// A corner of a profile: along, height.
struct Corner {
  double along, height;
};

/// Height of the lowest thing over a point of a level surface, by looking up from it: boxes and the underside
/// of a roof profile whose walls are upright below the level.
struct Above {
  double height;
  std::string what;
};
Above look_up(const std::vector<Box>& boxes, const std::vector<Corner>& roof, double level, double x,
              double y);

/// The longest place on whole inches, by trying all: shoulders `width` across in cells where the height is at
/// least 24, then up to 24 in of feet 16 across in cells of at least 12, along x either way; `heights` by
/// [x][y]. 0: none.
int longest_place(const std::vector<std::vector<double>>& heights, const std::vector<int>& shoulders);

}  // namespace berthwright::oracle

#pragma once

#include <array>
#include <optional>
#include <string_view>

#include <berthwright/geometry/outline.h>

#include "plan/fields.h"

namespace berthwright {

/// An outline in its own frame, bounds from (0, 0). Where the plan is at fault a rectangle stands in.
struct Shape {
  Outline outline;
  Length length;
  Length width;
  bool sound = true;  ///< false: the stand-in
  bool free = false;  ///< given as a list of points…
  Vector written_at;  ///< …whose bounds begin here
};

/// Names of the four corners in the order of WorkedRectangle.
using CornerNames = std::array<std::string_view, 4>;
inline constexpr CornerNames plan_corners{"front left", "rear left", "rear right", "front right"};

/// Reads "length", "width" and "corners", or "outline". `side` stands in for a side that cannot be read.
Shape read_shape(Fields& fields, Length side = 1_in);

/// A rectangle with the corners that `corners` describes (none: all square), or nothing after a Problem.
std::optional<Outline> read_worked(const Node* corners, Rect bounds, const CornerNames& names,
                                   Reading& reading);

/// A free outline as it stands, or nothing after a Problem.
std::optional<Outline> read_free(const Node& node, Reading& reading);

}  // namespace berthwright

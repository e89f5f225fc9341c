#pragma once

#include <berthwright/geometry/cut_line.h>

namespace berthwright::oracle {

/// Whether the point of the line `along / parts` ticks from its begin lies in the closed region: each edge is
/// asked whether it carries the point, then rays are counted. Plain whole numbers; for small shapes only.
bool on_line(const Region& region, const CutLine& line, std::int64_t along, std::int64_t parts);

}  // namespace berthwright::oracle

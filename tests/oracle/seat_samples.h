#pragma once

#include <vector>

namespace oracle {

/// Inches. A seat whose cushion lies at 0 <= y <= width and whose back's face is at x = `back`; it looks
/// along +x.
struct SampledSeat {
  double back;
  double width;
  double sits_at;
};
struct SampledBox {
  double x0, y0, x1, y1, z0, z1;
};

/// By trying points about 1/4 in apart, never on a border: the lowest box over the heads, above who sits.
double sampled_head_room(const SampledSeat& seat, const std::vector<SampledBox>& boxes, double roof);
/// Least distance of such points of where eyes may be to the box: at most 1/4 in too long.
double sampled_eye_distance(const SampledSeat& seat, const SampledBox& box);
bool sampled_in_elbow_room(const SampledSeat& seat, const SampledBox& box);

}  // namespace oracle

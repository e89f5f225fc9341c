#pragma once

#include <cstdint>

#include <berthwright/solve/finding.h>

namespace berthwright {

enum class Sex { men, women };

/// A measure of ANSUR II; heights of a person who sits are taken from the seat, all without shoes.
enum class BodyMeasure {
  stature,
  sitting_height,
  eye_height_sitting,
  shoulder_breadth,   ///< over the upper arms
  forearm_breadth,    ///< from forearm to forearm, elbows at the sides
  hip_breadth,        ///< sitting
  popliteal_height,   ///< floor to the hollow of the knee
  buttock_popliteal,  ///< back of the buttocks to the hollow of the knee
  buttock_knee,       ///< to the front of the knee
  knee_height,        ///< floor to the top of the knee, sitting
  thigh_clearance,    ///< seat to the top of the thigh
  elbow_rest_height,
  abdominal_depth  ///< sitting
};

/// One measure of the men or of the women of the survey, to the tenth of a millimetre.
struct BodyFigures {
  Length mean;
  Length deviation;
  Length p5;  ///< five in a hundred are smaller
  Length p50;
  Length p95;
};

/// Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel (NATICK/TR-15/007, 2014), reckoned from
/// its public raw files: 4,082 men and 1,986 women, soldiers. Percentiles of different measures are no
/// person's and must not be added: figures stacked from them are for drawing only, never for a finding.
const BodyFigures& body_figures(BodyMeasure measure, Sex sex);

/// Share of the surveyed people whose measure is at most `size`, by the normal model of mean and deviation:
/// within 1.0 point of the raw shares, but about 2 points off near the medians of stature, of shoulder
/// breadth and of the buttock-popliteal length (too many beyond 20 in: 42.6 % of men, 40.6 counted).
Shares shares_up_to(BodyMeasure measure, Length size);
/// The others.
Shares shares_above(BodyMeasure measure, Length size);

/// Area under the standard normal curve left of `z`, in millionths; within 2 millionths. Computed from a
/// series in plain arithmetic, so every machine prints the same digits.
std::int64_t normal_share_millionths(double z);

}  // namespace berthwright

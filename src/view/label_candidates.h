#pragma once

#include "view/label_ground.h"

namespace berthwright {

/// One way to fulfil a wish. Its cost is compared with those of the other candidates of the drawing only.
struct LabelCandidate {
  Wording wording;
  PaperBox box;
  std::optional<PaperLine> leader;
  bool keyed = false;    ///< a number for the margin key
  bool crossed = false;  ///< by a light line
  std::int64_t cost = 0;
};

/// A number of the margin key before it is known: as wide as any of two digits.
Wording number_wording(int number);

/// The good ways to fulfil a wish that meet nothing there, cheapest first; none when there is no room.
std::vector<LabelCandidate> candidates_of(const LabelGround& ground, const LabelWish& wish);

/// A number anywhere in the area, nearest its target first, that meets nothing there and none of `labels`.
std::optional<LabelCandidate> last_resort(const LabelGround& ground, const LabelWish& wish,
                                          const std::vector<LabelCandidate>& labels);

/// Both cannot stand on one drawing.
bool conflict(const LabelCandidate& a, const LabelCandidate& b);

}  // namespace berthwright

#include <berthwright/solve/bed/statures.h>

namespace berthwright {

Shares shares_up_to_stature(Length stature) { return shares_up_to(BodyMeasure::stature, stature); }

}  // namespace berthwright

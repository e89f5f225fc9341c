#pragma once

#include <berthwright/solve/cover/cover.h>

namespace berthwright {

/// The zip on its edge and round both corners, but never onto a front face.
ZipStrips zip_strips(const Rim& rim, const ZipEdge& place, Length boxing_cut, Length seam_allowance);

/// The rest of the rim, cut where it is seen least; where that is a front and the fabric has no way, not at all.
Boxing boxing_beside(const Rim& rim, const ZipStrips& zip, Length width, const Sewing& sewing);

}  // namespace berthwright

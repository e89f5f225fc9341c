#pragma once

#include <string>

#include <berthwright/exact/length.h>

namespace berthwright {

/// How much larger than the finished cushion its foam is cut; the published ways disagree.
enum class FoamCut { half_inch_over, as_panel, one_percent_over, wrapped };

/// How the shop sews all covers of a plan.
struct Sewing {
  std::string fabric{};                      ///< as the shop calls it; empty: unknown
  Length fabric_width = Length::inches(54);  ///< usable, between the selvedges
  Length seam_allowance = Length::inches(1, 2);
  bool welt = false;     ///< a cord sewn into the seams of both panels
  bool batting = false;  ///< a layer of wadding between foam and cover
  bool one_way = false;  ///< nap or pattern: no panel may be turned
  FoamCut foam_cut = FoamCut::half_inch_over;
};

}  // namespace berthwright

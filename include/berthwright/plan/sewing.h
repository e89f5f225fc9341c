#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/exact/length.h>
#include <berthwright/exact/result.h>
#include <berthwright/plan/names.h>

namespace berthwright {

/// How much larger than the finished cushion its foam is cut; the published ways disagree.
enum class FoamCut { half_inch_over, as_panel, one_percent_over, wrapped };

/// How a cover is made up. Boxed: two panels and a border. Knife edge: two panels sewn together. Waterfall:
/// one wrap over top, front and bottom, and two sides. Bolster: a wrap and two discs. Board backed: a panel
/// stapled to the back of a board.
enum class CoverShape { boxed, knife_edge, waterfall, bolster, board_backed };

/// How a pattern comes again; zero where it does not, that way.
struct Repeat {
  Length along;            ///< the roll
  Length across;           ///< stripes along the roll have this one alone
  bool half_drop = false;  ///< every second column is shifted by half of `along`
  friend bool operator==(const Repeat&, const Repeat&) = default;
};

struct Fabric {
  std::string name{};                 ///< as the shop calls it; empty: unknown
  Length width = Length::inches(54);  ///< usable, between the selvedges
  std::optional<Length> roll{};       ///< how much there is; none: as much as is needed
  bool one_way = false;               ///< nap or pattern: no panel may be turned, not by half a turn either
  bool up_across = false;             ///< woven railroaded: its up points across the roll
  std::optional<Repeat> repeat{};

  /// A panel may lie any way round: plain goods without nap.
  bool may_turn() const { return !one_way && !repeat; }
  friend bool operator==(const Fabric&, const Fabric&) = default;
};

/// A sheet of foam as it is bought, of which there are as many as are needed.
struct FoamSheet {
  Length length;
  Length width;
  Length thickness;
  friend bool operator==(const FoamSheet&, const FoamSheet&) = default;
};

/// How the shop sews the covers of a plan, or the one of a cushion.
struct Sewing {
  Fabric fabric{};
  Length seam_allowance = Length::inches(1, 2);
  std::optional<Length> welt{};  ///< thickness of the cord sewn into the seams of both panels; none: no welt
  bool batting = false;          ///< a layer of wadding between foam and cover
  FoamCut foam_cut = FoamCut::half_inch_over;
  CoverShape shape = CoverShape::boxed;
  std::optional<Wall> zip_edge{};  ///< side of the unturned cushion; none: where it is hidden
  std::string seat_foam{};         ///< of a plan: for cushions without a grade of their own
  std::string back_foam{};
  std::vector<FoamSheet> foam_sheets{};  ///< of a plan; none: what the trade sells
  Origin origin{"/sewing"};
};

}  // namespace berthwright

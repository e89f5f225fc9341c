#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/exact/mass.h>
#include <berthwright/plan/cushion_wishes.h>
#include <berthwright/solve/split/night_bay.h>

namespace berthwright {

/// What a split keeps to. Backs as rules seat.low-back and seat.high-back have it, the rest common practice,
/// no source.
struct SplitLimits {
  Length thickness = 4_in;
  Length least_back = 12_in;
  Length most_back = 22_in;
  Length least_side = 6_in;     ///< of any cushion
  Length longest_side = 80_in;  ///< of any cushion; longer seats and backs are cut in equal parts
  std::size_t fillers = 1;      ///< how many cushions may have no use by day
  /// Backs are tried in steps of this, and at every height that closes exactly.
  Length step = Length::inches(1, 2);
  Length most_gap{};                  ///< how wide one may stay where nothing closes exactly; zero: none
  std::optional<Mass> most_weight{};  ///< of one cushion's foam; heavier seats and backs are cut too
  int foam_density = 25;              ///< tenths of a pound per cubic foot; common practice, no source
  std::vector<PricedFoam> foam_stock{};
};

/// How a bench is sat on by day.
enum class BackManner {
  on_seat,      ///< the seat reaches to the wall, the back stands on it
  behind_seat,  ///< the back stands on the bench behind the seat
  stays         ///< likewise, and it stays there by night: it is not slept on
};

struct SplitPiece {
  enum class Use { seat, back, filler };
  Use use = Use::seat;
  FixtureId bench;             ///< by day; of a filler empty
  std::size_t number = 0;      ///< among those of its use on its bench, from 0
  std::optional<Rect> by_day;  ///< in plan; none of a filler
  Rect by_night;
  /// Finished size: of a back the height; else along the trailer, as it lies by day (a filler: by night).
  Length length;
  Length width;
  Length height;      ///< of a back as it stands; else zero
  Region kept_out{};  ///< of a seat that stays: what rises through it

  bool turned() const;                               ///< by night, against `length` along and `width` across
  bool stays() const { return by_day == by_night; }  ///< a back: it stands there by night too
};

/// What the foam of all cushions costs: each takes its share, by area, of the cheapest sheet of its thickness
/// on which it fits, cut 1/2 in longer and wider than finished (rule of foam, see `foam_rule`). Offcuts are
/// not reckoned: placing them is not done here.
struct FoamCost {
  std::int64_t hundredths = 0;
  std::size_t glued = 0;  ///< larger than any sheet, reckoned by the cheapest by area
  friend auto operator<=>(const FoamCost&, const FoamCost&) = default;
};

/// One proposal. It closes exactly, no gap, no overlap; or but for one gap, where nothing does.
struct Split {
  std::vector<BackManner> manners{};  ///< of each lid
  std::vector<Length> heights{};      ///< of each lid's back
  /// Backs are as long as what a board lies before, so that they end at the corners of a lounge; else as the
  /// lid.
  bool short_backs = false;
  std::vector<SplitPiece> pieces{};  ///< seats and backs in the order of the lids, then fillers

  std::optional<Rect> gap{};  ///< what stays open
  Mass heaviest{};            ///< the foam of the heaviest cushion

  // Reasons, in the order in which proposals are ranked, the gap's width first.
  std::size_t fillers = 0;
  std::size_t sizes = 0;        ///< different sizes
  std::size_t beyond_ease = 0;  ///< lids whose back is not 14 to 18 in high (common practice, no source)
  Length hip_seams{};           ///< across the bed from 44 to 60 % of its length from the foot (own choice)
  Length shoulder_seams{};      ///< from 76 to 88 %; heads at the end where there is less under hips
  std::size_t moved = 0;        ///< seats that do not stay where they are by day
  std::optional<FoamCost> foam{};  ///< none: no foam of that thickness is in stock
  Area foam_area{};                ///< of all cushions, finished: with one thickness the measure of foam
  std::size_t seam_lines = 0;      ///< straight lines on which all seams lie: what seams share counts once
  Length seams{};                  ///< all that lie inside the bed
};

/// The least change found after which something closes.
struct SplitCure {
  enum class Kind { filler, higher_back, narrower_piece, deeper_benches, pressed_together };
  Kind kind = Kind::filler;
  Length by;  ///< filler: its width; higher_back: the height; narrower_piece: the side; deeper_benches: each
              ///< by; pressed_together: all of them by
  Split split;  ///< what then closes
};

struct BaySplits {
  NightBay bay;
  SplitLimits limits;
  std::vector<Split> best{};       ///< best first, at most `most_splits`; of equal backs only those better in
                                   ///< seats moved or seams
  std::vector<SplitCure> cures{};  ///< where none of `best` closes exactly
  std::size_t candidates = 0;      ///< manners and heights looked at
  std::size_t by_area = 0;         ///< of which given up by their areas alone
  std::size_t closed = 0;          ///< of which some tiling closes
  std::size_t stages = 0;          ///< tiles laid on trial
  std::size_t pruned = 0;          ///< of which given up by a bound
  bool complete = true;            ///< none of the searches came to its bound
};
inline constexpr std::size_t most_splits = 4;

/// Of the gap that stays; zero: none does.
Length gap_width(const Split& split);

/// Cushions that close a bay by night and are seats and backs by day.
///
/// Complete for: each back on or behind its seat, or staying there; all backs as long as their lids, or as
/// what a board lies before; heights on the steps, or closing exactly with seats and spans; at most two
/// different heights, and one where a filler is used; pieces turned by quarters; fillers as `tilings` looks
/// for them. Deterministic.
BaySplits splits_of(const NightBay& bay, const SplitLimits& limits);

}  // namespace berthwright

#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/cover/cover_panel.h>
#include <berthwright/solve/cover/fabric.h>
#include <berthwright/solve/cover/foam_blank.h>
#include <berthwright/solve/cover/glue_up.h>
#include <berthwright/solve/cover/shaped.h>
#include <berthwright/solve/cover/zip.h>

namespace berthwright {

/// A strip of the boxing, between two joins or a join and the zip.
struct BoxingStrip {
  Length finished;
  Length cut;  ///< with a seam allowance at either end
};
struct BoxingJoin {
  Length at;  ///< along the boxing from its beginning
  std::size_t edge = 0;
  bool front = false;
  int seen = 0;  ///< in how many configurations
};

/// The border from the end of the zip round to its beginning, counter-clockwise as the piece lies unturned.
struct Boxing {
  Length width;     ///< cut
  Length finished;  ///< of all strips; with the zip, the perimeter of the cushion
  std::vector<BoxingStrip> strips;
  std::vector<BoxingJoin> joins;  ///< one fewer
  bool along_roll = false;  ///< in one strip: its up lies across the roll, or a join would fall on a front
  bool joins_anywhere = false;  ///< the corners left no place for joins, so all strips are alike
  std::vector<Length> marks;    ///< where it meets the panels' corners, from its beginning
};

/// Two strips with the zip between them, as wide as the boxing once sewn.
struct ZipStrips {
  ZipEdge place;
  Length before;  ///< how far they reach round the corner at the beginning of the edge
  Length after;
  Length finished;  ///< edge and both ends round the corners
  Length cut_length;
  Length cut_width;           ///< of each
  std::vector<Length> marks;  ///< where they meet the panels' corners, from their beginning
};

struct WeltCord {
  Length length;       ///< round both panels, with what the ends take
  Length strip_width;  ///< cut
  RollStrips strips;   ///< straight across the roll
};

struct Batting {
  Length length;  ///< of two pieces; the box around the foam
  Length width;
  Length strip_length;  ///< around the foam
  Length strip_width;
};

/// All that is cut for one cushion.
struct Cover {
  const Piece* piece = nullptr;
  Sewing sewing;  ///< its own, else the plan's
  Rim rim;
  std::optional<FoamBlank> foam;  ///< none: the cushion is too small for the rule
  std::optional<GlueUp> glued;    ///< the foam out of sheets; none: no such layers, or no sheets are known
  CoverPanel panel;               ///< of two, or the one of the shape
  std::optional<Wall> up;  ///< side of the unturned piece to which nap and pattern point: the back of a seat,
                           ///< the top of a back; none: it is neither
  PanelLay lay;
  Boxing boxing;                      ///< only boxed covers are sewn with it,
  ZipStrips zip;                      ///< and with its strips; the place is that of all shapes
  std::optional<ShapedCover> shaped;  ///< what is cut in place of both; none: boxed
  std::optional<WeltCord> welt;
  std::optional<Batting> batting;

  /// Whether all of it is reckoned: false of an outline for which its shape has no form.
  bool reckoned() const { return !shaped || shaped->reckoned(); }
  /// Whether `lay` speaks of a panel of this cover: wraps and discs have none.
  bool has_panel() const { return !shaped || shaped->panel; }
};

/// How far a zip reaches round each corner, unless a front face is nearer. Common practice, no source.
inline constexpr Length zip_round_corner = Length::inches(3);
/// A join keeps this far from a corner: there the stitches are shortened (pattern-making.com, box pillow).
inline constexpr Length join_from_corner = Length::inches(1);
/// The shortest strip of boxing; own choice.
inline constexpr Length shortest_strip = Length::inches(6);
/// What the ends of a welt take in both loops together (upholsteryresource.com, node 173: 6 to 8 in a loop
/// when ordering; facts of one worked example: 6 for a cushion).
inline constexpr Length welt_ends = Length::inches(6);
/// Width of a straight welt strip: round the cord and two seam allowances, rounded up to 1/8 in. A cord of
/// 5/32 in and seams of 1/2 in: 1 1/2 in (upholsteryresource.com, node 56; forum.upholster.com, topic 10184).
Length welt_strip_width(Length cord, Length seam_allowance);

/// The cut width of each zip strip: half the boxing and 3/4 in (somethingfortheroad.com;
/// upholsteryresource.com, node 56), an odd tick rounded up.
Length zip_strip_width(Length boxing_cut);

/// The cover of one cushion, sewn as is `usual` unless it says otherwise. Boxing and zip together are as long
/// as its perimeter. std::invalid_argument where the fabric is no wider than two seam allowances.
Cover cover_of(const Plan& plan, const Sewing& usual, const std::vector<SeenRoom>& stood, const Piece& piece);

/// How far the middle of the cushion lies from the middle of the seat it belongs to, to the right of one who
/// looks at it; zero where it belongs to none. Of the first configuration that has such a seat.
Length beside_seat(const std::vector<SeenRoom>& stood, const Piece& piece);

/// Of every cushion and bolster of the plan, in its order; `sewing` holds for those that have none of their
/// own, and a bolster without is sewn as one. Configurations on the road do not count: nobody sees them.
/// Problems as of `arranged`. Points into `plan`.
Result<std::vector<Cover>> covers(const Plan& plan, const Sewing& sewing);

}  // namespace berthwright

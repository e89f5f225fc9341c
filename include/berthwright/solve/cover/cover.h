#pragma once

#include <optional>
#include <vector>

#include <berthwright/solve/cover/fabric.h>
#include <berthwright/solve/cover/foam_blank.h>
#include <berthwright/solve/cover/zip.h>

namespace berthwright {

/// Top or bottom panel as it is cut: the finished outline with the seam allowance around it.
struct CoverPanel {
  Polygon outline;  ///< around the piece's own frame, so that its corners may be negative
  Length length;    ///< of the box around it, along x
  Length width;
  bool sharp = true;      ///< corners as drawn; else a slit was too narrow for that, and corners are rounded
  bool symmetric = true;  ///< top and bottom are alike; else one is the mirror image of the other
};

/// How a panel lies on the roll.
enum class PanelFit {
  fits,         ///< its up along the roll where the fabric has one way, else either way
  turned_only,  ///< only with its up across the roll, which a fabric with one way does not allow
  too_wide      ///< both its sides are wider than the fabric: it takes a seam
};

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
  bool along_roll = false;  ///< in one strip, cut along the roll: across it a join would fall on a front
  bool joins_anywhere = false;    ///< the corners left no place for joins, so all strips are alike
  std::vector<Length> marks;      ///< where it meets the panels' corners, from its beginning
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
  Length length;      ///< round both panels, with what the ends take
  RollStrips strips;  ///< straight across the roll
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
  Rim rim;
  std::optional<FoamBlank> foam;  ///< none: the cushion is too small for the rule
  CoverPanel panel;               ///< of two
  std::optional<Wall> up;  ///< side of the unturned piece to which nap and pattern point: the back of a seat,
                           ///< the top of a back; none: it is neither
  PanelFit fit = PanelFit::fits;
  Boxing boxing;
  ZipStrips zip;
  std::optional<WeltCord> welt;
  std::optional<Batting> batting;
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
/// Width of a straight welt strip (upholsteryresource.com, node 56; forum.upholster.com, topic 10184).
inline constexpr Length welt_strip_width = Length::inches(3, 2);

/// The cut width of each zip strip: half the boxing and 3/4 in (somethingfortheroad.com;
/// upholsteryresource.com, node 56), an odd tick rounded up.
Length zip_strip_width(Length boxing_cut);

CoverPanel cover_panel(const Outline& outline, Length seam_allowance);

/// The cover of one cushion. Boxing and zip together are as long as its perimeter.
Cover cover_of(const Plan& plan, const Sewing& sewing, const std::vector<SeenRoom>& stood, const Piece& piece);

/// Of every cushion of the plan, in its order; bolsters are not reckoned. Configurations on the road do not
/// count: nobody sees them. Problems as of `arranged`. Points into `plan`.
Result<std::vector<Cover>> covers(const Plan& plan, const Sewing& sewing);

}  // namespace berthwright

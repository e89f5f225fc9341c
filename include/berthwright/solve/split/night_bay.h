#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// The top of a bench as people sit on it by day. Its front meets a board by night.
struct Lid {
  FixtureId bench;
  Rect top;
  Wall faces = Wall::rear;  ///< the way who sits on it looks: to its front
  /// What of its front a board lies before, as the lid's part behind it: the lid, but for corners of a
  /// lounge.
  Rect before_board{};

  bool looks_along() const { return faces == Wall::front || faces == Wall::rear; }
  Length depth() const { return looks_along() ? top.width() : top.height(); }
  /// Along its front.
  Length length() const { return looks_along() ? top.height() : top.width(); }
};

/// What cushions must cover by night: benches, and the boards between them at the same height.
struct NightBay {
  const Configuration* day = nullptr;
  const Configuration* night = nullptr;
  Length level;  ///< of the tops, above the floor
  /// Rectangles around each bench and board. Sides of boards are drawn out by up to 2 in (common practice, no
  /// source) to the lines of benches, or to the end of the bay: over their play, and a little over a free
  /// edge.
  std::vector<Rect> parts;
  std::vector<Lid> lids;
  std::vector<std::string> boards;  ///< ids of pieces
  std::vector<PieceId> cushions;    ///< the soft pieces that lie there now, by day or by night
  std::vector<std::string> risen;   ///< ids of fixtures that rise through it
  Region kept_out;                  ///< what those take, and what lies outside the room at that height
  std::vector<Wall> free_sides{};   ///< of `bounds`, along which 2 in beyond are free at that height

  Rect bounds() const;
};

/// A board that lies by night beside a bench, too far above or below its top to be part of a bed.
struct OffLevel {
  std::string board;
  std::string bench;
  Length above;  ///< of the board's top over the bench's; negative: below
};

struct NightBays {
  std::vector<NightBay> bays;
  std::vector<OffLevel> off_level;
};

/// Joins benches and boards whose tops are within 1/2 in and whose rectangles lie within 1/2 in of each
/// other. A group without a bench or without a board is none. Cushions of `thickness` are laid there. In the
/// order of the plan's benches. Problems as of `arranged`.
Result<NightBays> night_bays(const Plan& plan, const Configuration& day, const Configuration& night,
                             Length thickness);

}  // namespace berthwright

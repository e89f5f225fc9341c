#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace berthwright {

/// A distance on paper: whole micrometres, so that a drawing prints the same digits everywhere. Never mixed
/// with a Length of the trailer: only a Scale turns one into the other.
class PaperLength {
 public:
  constexpr PaperLength() = default;
  static constexpr PaperLength micrometres(std::int64_t count) { return PaperLength(count); }
  constexpr std::int64_t micrometres() const { return micrometres_; }
  friend constexpr auto operator<=>(PaperLength, PaperLength) = default;
  friend constexpr PaperLength operator+(PaperLength a, PaperLength b) {
    return PaperLength(a.micrometres_ + b.micrometres_);
  }
  friend constexpr PaperLength operator-(PaperLength a, PaperLength b) {
    return PaperLength(a.micrometres_ - b.micrometres_);
  }
  friend constexpr PaperLength operator-(PaperLength a) { return PaperLength(-a.micrometres_); }
  friend constexpr PaperLength operator*(PaperLength a, std::int64_t times) {
    return PaperLength(a.micrometres_ * times);
  }
  friend constexpr PaperLength operator/(PaperLength a, std::int64_t parts) {
    return PaperLength(a.micrometres_ / parts);
  }

 private:
  explicit constexpr PaperLength(std::int64_t micrometres) : micrometres_(micrometres) {}
  std::int64_t micrometres_ = 0;
};

/// From the top left corner of the page, y downward.
struct PaperPoint {
  PaperLength x;
  PaperLength y;
  friend constexpr auto operator<=>(const PaperPoint&, const PaperPoint&) = default;
};

/// What a mark stands for. Line widths, dashes, fills and lettering are decided by the writer's one table.
enum class Ink {
  frame,
  rule,  ///< thin lines of the title block
  wall,  ///< a band of which the inner half is covered by the floor
  floor,
  opening,
  fixture,
  overhead,  ///< hangs above; seen through
  cushion,
  board,
  table,
  appliance,
  grain,  ///< lines that tell boards from cushions
  alarm,
  bed_outline,
  made_up,  ///< edge of the bedding that hangs over
  sleeping_rectangle,
  off_level,  ///< lines over pieces of a bed that lie off its level
  heat_line,
  gap,
  ridge,
  clash,        ///< outline of space that two things need
  section_cut,  ///< stroke outside the wall where a section is cut
  cut_foam,     ///< of a section: what the plane cuts
  cut_box,      ///< hollow: bench, cabinet, locker
  cut_board,    ///< timber and board
  cut_thin,     ///< the same where hatching has no room: filled
  seen_behind,  ///< stands behind the plane
  person,
  hidden_person,  ///< where what is cut hides a person
  before_plane,   ///< stands before the plane, seen through it
  no_room,        ///< a person who does not fit
  hatch,
  alert,           ///< the triangle before what is not met
  quiet,           ///< of an overlay: what stands there, under what the sheet is about
  quiet_overhead,  ///< the same of what hangs above
  zone_published,  ///< edge of the published distance around a heater
  zone_plate,      ///< edge of the distances of a data plate
  zone_hatch,      ///< fills both along their edges
  cord,            ///< led from an appliance to its outlet
  site_region,     ///< where the corner of a heater may stand
  site_hatch,
  site_place,   ///< a heater at one such place
  site_taken,   ///< where a rule lets that corner not be
  way_band,     ///< the floor that the widest disc sweeps on its way out
  way_path,     ///< of its middle
  pinch,        ///< where it is narrowest
  still_piece,  ///< of a storyboard: lies as it lay before the step
  parked_piece,
  moved_piece,
  side_built,  ///< faces of raised views: fills without lines
  side_still,
  side_parked,
  side_moved,
  side_cushion,
  side_board,
  side_heat,
  foam_dots,   ///< on the tops of cushions in raised views
  ghost,       ///< where a piece was before it was moved
  move_way,    ///< along which it is moved, and the place that is opened for it
  move_head,   ///< of its arrow
  zip_run,     ///< of a cushion's cover, along its edge
  sign_exit,   ///< green square: a way to get out
  sign_shut,   ///< an opening that does not serve
  sign_alarm,  ///< red square: an alarm
  sign_light,  ///< what is drawn on a dark sign
  sign_outlet,
  chassis,       ///< axle and drawbar
  wheel,         ///< a sign, of no size in nature
  coupling,      ///< the ring of the sign of a coupling
  balance,       ///< the ring of the sign of a centre of gravity
  balance_area,  ///< it lies anywhere in this
  balance_hatch,
  asked_range,  ///< of a bar: what is asked
  figure_span,  ///< of a bar: the figure
  dimension,
  tick,  ///< the oblique stroke that ends a dimension
  leader,
  leader_dot,
  balloon,  ///< the ring around a number
  scale_bar_light,
  scale_bar_dark,
  direction,
  title,
  label,
  note,
  caution
};
/// Lines of 0.5 mm and more: no lettering over them.
bool is_heavy(Ink ink);

/// One stretch of a path: straight to `to`, or a circular arc to it.
struct Stretch {
  PaperPoint to;
  PaperLength radius;      ///< zero: straight; else an arc of at most half a turn
  bool clockwise = false;  ///< of an arc, as seen on paper
};
struct Path {
  Ink ink = Ink::fixture;
  PaperPoint from;
  std::vector<Stretch> stretches;
  bool closed = false;
};

enum class Anchor { start, middle, end };
/// A line of lettering. `at` is on the baseline; `height` is the font size. Upright or reading from the
/// right.
struct Text {
  Ink ink = Ink::label;
  PaperPoint at;
  PaperLength height;
  Anchor anchor = Anchor::start;
  bool reads_upward = false;  ///< turned a quarter so that it reads from the right of the page
  std::string words;          ///< as a person reads it; escaped by the writer
};
/// A clear patch under lettering, so that no line crosses it.
struct Patch {
  PaperPoint low;
  PaperPoint high;
};
using Mark = std::variant<Path, Text, Patch>;

/// Marks that belong together, in reading order, with a name for those who hear the drawing.
struct Group {
  std::string title;
  std::vector<Mark> marks;
  /// Set on the scale bar only: how long it is in nature, in micrometres, to be compared with the paper.
  /// The bar itself is its paths of the inks `scale_bar_light` and `scale_bar_dark`.
  std::int64_t natural_micrometres = 0;
};

/// One page.
struct Sheet {
  std::string file;         ///< stem of its file name, from counters and our own words: "1-day"
  std::string title;        ///< for the reader: "Sanderling: day plan"
  std::string description;  ///< what it shows with its main figures, in sentences, for those who hear it
  PaperLength width;
  PaperLength height;
  std::int64_t scale = 20;  ///< 20 for 1:20; 0: a page of notes, nothing to scale
  std::vector<Group> groups;
};

}  // namespace berthwright

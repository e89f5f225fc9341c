#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include <berthwright/exact/mass.h>
#include <berthwright/geometry/point.h>
#include <berthwright/plan/plan.h>

namespace berthwright {

enum class Status { met, close, not_met, unknown };

/// A share of the surveyed men and women, in thousandths; printed in whole percent.
struct Shares {
  int men = 0;
  int women = 0;
  friend bool operator==(const Shares&, const Shares&) = default;
};
/// Two sides of a rectangle: length and width.
struct Sides {
  Length length;
  Length width;
  friend bool operator==(const Sides&, const Sides&) = default;
};
/// A part of a whole, in thousandths; printed in whole percent.
struct Portion {
  std::int64_t thousandths = 0;
  friend bool operator==(Portion, Portion) = default;
};
/// How many: screws, people.
struct Count {
  std::int64_t number = 0;
  friend bool operator==(Count, Count) = default;
};
/// How far a board bends down in the middle of a span; printed finer than other lengths, and as a part of it.
struct Sag {
  Length depth;
  Length span;
  friend bool operator==(Sag, Sag) = default;
};
/// Whole degrees of a leaf that opens.
struct Degrees {
  int number = 0;
  friend bool operator==(Degrees, Degrees) = default;
};
/// What a finding measured or was compared with.
using Quantity = std::variant<Length, Area, Sides, Shares, Mass, Portion, Count, Sag, Degrees>;

/// What would mend a fault, as data; the sentence is made on the view floor.
struct Cure {
  enum class Kind {
    raise,            ///< raise `subject` (ledge, filler, cushion) by `by`
    lower,            ///< lower `subject` by `by`
    move_apart,       ///< move `subject` away by `by`
    widen,            ///< make `subject` larger by `by` on its `side`
    lengthen,         ///< make `subject` longer by `by`
    broaden,          ///< make `subject` wider by `by`
    shorten,          ///< make `subject` smaller by `by` on its `side`
    pad,              ///< lay a filler of `by` under `subject`, or make it of foam that much thicker
    bridge,           ///< carry `subject` at the place by a board, or by slats at most `by` apart
    bring_nearer,     ///< bring `subject` nearer by `by`
    stow_heater,      ///< switch `subject` off, unplug and stow it before the bed is made
    state_plate,      ///< write the maker's distances for `subject` into the plan
    state_measure,    ///< write into the plan what the rule lacks, of `subject` and `alike`
    state_cord,       ///< write the length of the cord of `subject` into the plan
    state_faces,      ///< write which way the outlet `subject` faces
    state_panel,      ///< write which panel the board `subject` is cut from
    state_grain,      ///< write which way the face grain of `subject` runs
    state_foam,       ///< write the grades of the cushions of the bed `subject`
    real_thickness,   ///< give `subject` the thickness `by` that its panel really has
    turn_grain,       ///< cut `subject` so that its face grain runs along the span
    bear_between,     ///< carry `subject` so that no free span is longer than `by`, or make it of `panel`
    add_guard_rail,   ///< `by`: least height of the rail above the mattress
    shift,            ///< move `subject` by `by` toward the wall `side`
    set_aside,        ///< take `subject` out of the way while the configuration lasts
    keep_clear,       ///< keep `by` free where the rule looks: what stands there is `subject` and `alike`
    carry_at,         ///< carry `subject` by something whose top is `to` above the floor
    lay_cushion,      ///< lay a cushion on `subject`, `by` wide, long or thick as the rule asks
    thicken,          ///< make `subject` thicker by `by`
    heighten,         ///< make `subject` higher by `by`, its underside staying
    cut_down,         ///< make `subject` less high by `by`, its underside staying
    raise_underside,  ///< raise the underside of `subject` by `by`
    rehang,           ///< hang `subject` on its `side`
    repack,   ///< make the bundle of bedding of `subject` smaller by `by`, or keep it in one of `alike`
    as_told,  ///< what to do stands with the rule; no figure but the finding's own
    none      ///< nothing mends it: why, and what it means, stands with the rule
  };
  Kind kind = Kind::raise;
  std::string subject;  ///< id of the thing
  Length by;
  std::optional<Length> to{};        ///< raise, lower: the height above the floor to which its top then comes
  std::vector<std::string> alike{};  ///< what must be moved with `subject` in the same way
  std::vector<Cure> then{};          ///< what is left to do after it
  std::string panel{};               ///< a stronger one that would do; empty: none of its make
  std::optional<Wall> side{};        ///< widen, shorten: the way that side looks
  friend bool operator==(const Cure&, const Cure&) = default;
};

/// A face of an appliance: front and back as it looks, any other upright one by the wall it looks to.
struct ApplianceFace {
  enum class Kind { front, back, side, top, underside };
  Kind kind = Kind::front;
  Wall toward = Wall::front;  ///< of a side
  friend auto operator<=>(const ApplianceFace&, const ApplianceFace&) = default;
};

/// One answer of a check: rule, place and numbers, no words.
struct Finding {
  RuleId rule;
  ConfigurationId configuration;      ///< empty: holds for the trailer
  BedId bed;                          ///< empty: not about one bed
  std::vector<std::string> subjects;  ///< ids of fixtures, pieces, openings; names of people
  Status status = Status::unknown;
  std::optional<Quantity> measured;
  std::optional<Quantity> compared;  ///< none for rules that only report
  std::vector<Quantity> besides{};   ///< further figures that the sentence names, in the rule's own order
  Source source;                     ///< of the number compared with
  std::string override_reason;       ///< not empty: the plan's own number was used
  std::optional<Length> margin;      ///< measured - required, rounded toward less
  std::vector<Point3> where;         ///< the place, or both nearest points
  std::optional<Cure> cure;
  /// Of distances by a data plate: before which face the place lies, or the two or three of an edge or
  /// corner; of what the plate does not give: the faces in question.
  std::vector<ApplianceFace> before{};
  std::string variant;  ///< which of several figures of one rule: "made up", "bare", "Twin"…
};

/// Alerts first, then advice, then information; inside: not met, unknown, close, met; then by configuration,
/// bed, rule, subjects, variant. Total, so that equal answers print equal bytes.
void sort_findings(std::vector<Finding>& findings);

}  // namespace berthwright

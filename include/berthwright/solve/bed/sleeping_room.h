#pragma once

#include <optional>

#include <berthwright/geometry/rectangle_in_region.h>
#include <berthwright/solve/bed/clear_height.h>
#include <berthwright/solve/bed/lying_place.h>
#include <berthwright/solve/bed/mattress.h>
#include <berthwright/solve/bed/sitting_up.h>
#include <berthwright/solve/finding.h>

namespace berthwright {

/// A mattress size of the trade.
struct NamedSize {
  std::string_view name;
  Length width;
  Length length;
  Source source;
};
std::span<const NamedSize> named_sizes();

/// How one named size sits on the bed.
struct SizeHeld {
  const NamedSize* size = nullptr;
  bool held = false;                   ///< fits at some turn
  std::optional<Length> spare_length;  ///< longest rectangle of its width less its length; negative: short
  std::optional<Length> spare_width;   ///< widest rectangle of its length less its width
};

/// What one person gets.
struct PersonRoom {
  const Person* person = nullptr;
  std::optional<TurnedRectangle> place;  ///< longest rectangle of the person's width, full clear height
  std::optional<LyingPlace> lying;       ///< longest place with less height and width at the feet
  Length suits_stature;                  ///< longest stature: length of `lying` less the allowance; 0 if none
  /// The share of the widest rectangle as long as the longest of the bed's people needs; where none is as
  /// wide as one of them, of the largest at all.
  Length width;
};

/// Two ways for two people to lie (design 4.16).
struct TwoAbreast {
  Length needed_length;  ///< longest stature and allowance; 0 where the plan gives neither stature
  bool all_statures_known = false;
  /// Heads at one end: both shoulders across, feet as in `longest_place`.
  Length side_by_side_width;
  std::optional<LyingPlace> side_by_side;
  /// Heads at both ends: the shoulders of one beside the feet of the other, tapering in between, with the
  /// full clear height over all of it.
  Length head_to_foot_width;
  std::optional<TurnedRectangle> head_to_foot;
  Length widest;  ///< rectangle as long as needed; 0 where there is none
};

/// Sleeping room over one mattress (design 4.4).
struct SleepingRoom {
  Region lying;  ///< S' less what hangs lower than the clear height above the level
  Region feet;   ///< S' less what hangs lower than 12 in: enough over the feet
  Area area;
  /// Along the room, unless a turned one is larger by more than 1 %.
  std::optional<TurnedRectangle> largest;
  std::optional<TurnedRectangle> largest_turned;  ///< where a turned one is larger at all
  std::optional<TurnedRectangle> longest;         ///< of 24 in width
  std::optional<TurnedRectangle> abreast;         ///< of the summed width of two or more people
  std::vector<PersonRoom> people;
  std::optional<TwoAbreast> two;      ///< for a bed of two people
  std::optional<LyingPlace> place;    ///< longest place for one person 24 in wide at the shoulders
  std::vector<SizeHeld> sizes;        ///< in the order of `named_sizes`
  Shares fits;                        ///< stature + 100 mm within `place`
  Length least_clear_height;          ///< over the lying space, from the level up
  std::vector<ClearHeight> overhead;  ///< over the whole closed surface
  std::optional<SittingUp> sitting;
};

SleepingRoom sleeping_room(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                           const Mattress& mattress);

}  // namespace berthwright

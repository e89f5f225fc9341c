#pragma once

#include <optional>

#include <berthwright/geometry/rectangle_in_region.h>
#include <berthwright/solve/bed/mattress.h>
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

/// What one person gets, with the full clear height from head to foot: the 12 in that are enough over the
/// feet (design 4.16) are not counted yet, so nothing here is too long.
struct PersonRoom {
  const Person* person = nullptr;
  std::optional<TurnedRectangle> place;  ///< longest rectangle of the person's width
  Length suits_stature;                  ///< longest stature: length less the allowance (4 in); 0 if none
};

/// Sleeping room over one mattress (design 4.4).
struct SleepingRoom {
  Region lying;  ///< S' less what hangs lower than the clear height above the level
  Area area;
  std::optional<TurnedRectangle> largest;
  std::optional<TurnedRectangle> longest;  ///< of 24 in width
  std::optional<TurnedRectangle> abreast;  ///< of the summed width of two or more people
  std::vector<PersonRoom> people;
  std::vector<SizeHeld> sizes;  ///< in the order of `named_sizes`
  Shares fits;                  ///< stature + 100 mm within `longest`
  Length least_clear_height;    ///< over the lying space, from the level up
};

SleepingRoom sleeping_room(const Plan& plan, const Arrangement& arrangement, const Bed& bed,
                           const Mattress& mattress);

}  // namespace berthwright

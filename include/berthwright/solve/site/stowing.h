#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// How a thing lies in a box: which of its own sides runs along x, across y and up.
struct LaidBox {
  Length along;
  Length across;
  Length up;
  friend bool operator==(const LaidBox&, const LaidBox&) = default;
};

/// A heater off and put away in one place of the plan that may hold it.
struct StowFit {
  std::string place;  ///< id of the fixture or drawer; as the plan writes it where it is none of its things
  /// Ids of the configurations in which the plan stows the heater here.
  std::vector<std::string> stowed_in;
  std::optional<InsideBox> inside;  ///< none: the plan does not give it, so nothing is compared
  /// Of the six ways to lay it the one with the most room where there is least; of equal ones upright first.
  LaidBox laid;
  std::array<Length, 3> clearance;  ///< along, across, up; negative: it does not fit
  bool fits() const;
  /// Openings of the place through which it passes so or turned; a drawer is its own. None is told where the
  /// plan shows none.
  std::vector<std::string> through;
  std::vector<std::string> too_small;  ///< and those through which it does not
};

/// Every place of the plan with an inside, and every one in which the plan stows the piece; in the order of
/// the plan.
std::vector<StowFit> stow_fits(const Plan& plan, const Piece& heater);

/// A box of these sides, by itself, in the inside of one place, a fixture or a leaf of one: a door or a lid
/// leads into its fixture.
StowFit stow_fit(const Plan& plan, const std::string& place, const std::array<Length, 3>& sides);

}  // namespace berthwright

#pragma once

#include <optional>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// Where along one axis the middle of something lies: between the two.
struct LengthSpan {
  Length low;
  Length high;
  friend bool operator==(const LengthSpan&, const LengthSpan&) = default;
};

/// How full the tanks are taken to be.
enum class TankState { as_told, empty, full };

/// One thing that weighs, in one configuration.
struct WeighedThing {
  /// What its weight comes from.
  enum class Basis {
    stated,   ///< the plan
    panel,    ///< the panel it is cut from, by its maker's data sheet
    plywood,  ///< plywood of which no more is known: two published figures that disagree
    foam,     ///< foam as it is cut, by its grade; the cover is not counted
    water,    ///< in a tank, at one kilogram a litre
    unknown
  };
  struct Place {
    LengthSpan along;   ///< from the front wall
    LengthSpan across;  ///< from the left wall
    friend bool operator==(const Place&, const Place&) = default;
  };
  std::string id;
  std::string name;
  Basis basis = Basis::unknown;
  MassSpan weight;
  Place place;
  std::optional<Place> on_scales{};  ///< where it stood while the trailer was weighed, and so counts already
  /// It stood on the scales, at one weight of the span that the plan gives, and may be at any other now:
  /// `weight` is then what it may weigh more or less than it did, below nothing too.
  bool may_differ = false;
};

/// Everything of the plan that weighs, but for what stood on the scales and is there still, unless the plan
/// gives its weight as a span (bottles full or empty): fixtures, pieces, cargo, and the water of each tank.
/// The middle of a thing is that of its outline; what is stowed lies anywhere within the bounds of where it
/// is kept, or of the room where the plan does not draw that. People, bedding and covers are not counted.
std::vector<WeighedThing> weights_in(const Plan& plan, const Configuration& configuration, TankState tanks);

/// What a piece weighs: as the plan states it, by its panel, its plywood or its foam, or unknown.
std::pair<MassSpan, WeighedThing::Basis> weight_of(const Piece& piece, const Sewing& usual);

/// Where the figures for panels and plywood come from.
const Source& weight_source(WeighedThing::Basis basis);

}  // namespace berthwright

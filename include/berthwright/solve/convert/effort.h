#pragma once

#include <optional>

#include <berthwright/solve/convert/steps.h>

namespace berthwright {

/// What one person is asked to lift at most, and how far from where they stand a piece may be: common
/// practice, no source (reach: design 4.16), unless the plan gives its own.
inline constexpr Mass lifted_alone = Mass::pounds(35);
inline constexpr Length reached_over = 30_in;
Mass lifting_limit(const Plan& plan);
Length reaching_limit(const Plan& plan);

/// What a step asks of the person who does it.
struct Effort {
  /// One end of the step: where the piece is taken up, or let go.
  enum class Stand {
    near,     ///< within reach of a place to stand
    far,      ///< the nearest place is farther than the reach
    nowhere,  ///< no floor of 20 x 20 in is free
    outside   ///< beyond a door, where no floor is known
  };
  std::optional<Mass>
      weight;  ///< of the piece; none: the plan does not say, so whether it is too heavy is unknown
  bool too_heavy = false;
  Stand taking = Stand::near;
  Stand letting_go = Stand::near;
};
Effort effort_of(const Plan& plan, const Step& step);

}  // namespace berthwright

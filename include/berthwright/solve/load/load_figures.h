#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include <berthwright/solve/load/loads.h>

namespace berthwright {

/// What does not come about however long one waits, by the figures that the plan gives.
struct Never {
  friend bool operator==(Never, Never) = default;
};

/// A count of which only the least is known.
struct AtLeast {
  std::int64_t low = 0;
  friend bool operator==(AtLeast, AtLeast) = default;
};

/// One figure of weight, supply or warmth, such as another configuration or plan has too.
struct LoadFigure {
  enum class Kind {
    added,            ///< what the plan holds, beside what stood on the scales
    along,            ///< its centre of gravity, behind the front wall
    across,           ///< and from the left wall
    coupling_change,  ///< what it does to the load on the coupling
    whole,
    coupling,
    axle,
    whole_along,
    whole_across,
    share,       ///< on the coupling
    sides,       ///< right wheels less left ones
    cargo_left,  ///< under the plate of the whole
    circuit,     ///< hundredths of a watt that count on `circuit`
    supply,      ///< watts of everything that draws
    together,    ///< watts of the most that may run together
    warm_up,     ///< seconds, or never
    hold         ///< watts
  };
  using Value = std::variant<LoadSpan, LengthSpan, ShareSpan, CountSpan, AtLeast, Never>;
  Kind kind = Kind::added;
  TankState tanks = TankState::as_told;
  std::string circuit{};               ///< id
  std::optional<Value> value;          ///< none: unknown
  std::optional<Status> status;        ///< of what is compared with a published figure or a plate
  std::optional<TowingRange> range{};  ///< that a share is compared with

  /// Both ends of it are known, and whether it keeps what it is compared with.
  bool is_known() const;
  bool is_named_like(const LoadFigure& other) const {
    return kind == other.kind && tanks == other.tanks && circuit == other.circuit;
  }
};

/// Everything that is told of one configuration, in the order of `loads`' sentences. Of tanks that are empty
/// or full only what they change.
std::vector<LoadFigure> load_figures(const Plan& plan, const Loads& loads);

}  // namespace berthwright

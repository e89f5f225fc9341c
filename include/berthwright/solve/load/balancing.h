#pragma once

#include <optional>
#include <vector>

#include <berthwright/exact/moment.h>
#include <berthwright/solve/finding.h>
#include <berthwright/solve/load/weights.h>

namespace berthwright {

/// A load or a change of one, between two figures; none: no bound is known on that side. Rounded outward by
/// less than a unit of mass.
struct LoadSpan {
  std::optional<Mass> low;
  std::optional<Mass> high;
  bool is_known() const { return low && high && *high - *low <= Mass::from_units(1); }
  friend bool operator==(const LoadSpan&, const LoadSpan&) = default;
};

/// One published range of the share on the coupling, in whole percent.
struct ShareRange {
  TowingRange range = TowingRange::us;
  int least = 10;
  int most = 15;
  bool of_plate = false;  ///< of the plate's gross weight, not of what the trailer weighs
  Source source;
};
const ShareRange& share_range(TowingRange range);

/// A part of a whole, in ten-thousandths, rounded outward; beside a weight without an end no less than
/// nothing and no more than all.
struct ShareSpan {
  std::int64_t low = 0;
  std::int64_t high = 0;
  /// Against the range, exactly: unknown where it may lie on either side of an end.
  Status status = Status::unknown;
  friend bool operator==(const ShareSpan&, const ShareSpan&) = default;
};

/// What everything in one configuration does to coupling, axle and sides.
struct Balance {
  TankState tanks = TankState::as_told;
  std::vector<WeighedThing> things;
  /// What each thing adds to the load on the coupling since the trailer was weighed, in the order of
  /// `things`; empty without the places of coupling and axle.
  std::vector<LoadSpan> on_coupling;
  MassSpan added;  ///< of all that was not on the scales
  /// Its centre of gravity, whatever else was moved since; none where nothing weighs anything, or some weight
  /// has no end. So are those of the whole.
  std::optional<LengthSpan> along{};
  std::optional<LengthSpan> across{};
  /// With the places of coupling and axle, or where nothing was added to what stood on the scales.
  std::optional<LoadSpan> coupling_change{};
  /// Of the right wheels less the left ones; without a track no more than which side gains, and that only
  /// with the wheels of both sides weighed.
  std::optional<LoadSpan> side_change{};

  // With the figures of the scales:
  std::optional<MassSpan> whole{};
  std::optional<LoadSpan> coupling{};
  std::optional<LoadSpan> axle{};
  std::optional<LengthSpan> whole_along{};
  std::optional<LengthSpan> whole_across{};  ///< with the wheels of both sides weighed, and the track
  std::optional<ShareSpan> share{};
  std::optional<LoadSpan> side{};        ///< right less left
  std::optional<LoadSpan> cargo_left{};  ///< under the plate of the whole
};

/// A thing that moves the load on the coupling, by index into `things`, what moves it most first.
std::vector<std::size_t> movers(const Balance& balance);

Balance balanced(const Plan& plan, const Configuration& configuration, TankState tanks);

/// The least and greatest mean of arms, each weighed with anything in its span, beside a load that is known:
/// `fixed` of `base`. None where nothing may weigh anything. Exact: a mean is `moment` over `mass`.
struct MeanArm {
  Moment moment;
  Mass mass;
};
struct SpannedArm {
  MassSpan weight;
  LengthSpan arm;
};
std::optional<MeanArm> greatest_mean(std::vector<SpannedArm> arms, Moment fixed, Mass base);
std::optional<MeanArm> least_mean(std::vector<SpannedArm> arms, Moment fixed, Mass base);

}  // namespace berthwright

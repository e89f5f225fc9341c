#include <berthwright/solve/load/balancing.h>

#include <algorithm>
#include <functional>
#include <iterator>
#include <stdexcept>

#include "exact/spelling.h"

namespace berthwright {
namespace {

/// A moment between two figures; none: no bound.
struct MomentSpan {
  std::optional<Moment> low = Moment{};
  std::optional<Moment> high = Moment{};

  void add(const MomentSpan& other) {
    low = low && other.low ? std::optional(*low + *other.low) : std::nullopt;
    high = high && other.high ? std::optional(*high + *other.high) : std::nullopt;
  }
};

// A weight that is a change may be below nothing: the ends lie at any two of the ends.
MomentSpan moment_of(const MassSpan& weight, const LengthSpan& arm) {
  const Mass most = weight.most.value_or(weight.least);
  const auto ends = std::minmax({Moment::of(weight.least, arm.low), Moment::of(weight.least, arm.high),
                                 Moment::of(most, arm.low), Moment::of(most, arm.high)});
  MomentSpan moment{ends.first, ends.second};
  if (!weight.most && arm.low < Length{}) moment.low.reset();
  if (!weight.most && arm.high > Length{}) moment.high.reset();
  return moment;
}

LoadSpan over(const MomentSpan& moment, Length arm) {
  LoadSpan load;
  if (moment.low) load.low = moment.low->over(arm, Rounding::down);
  if (moment.high) load.high = moment.high->over(arm, Rounding::up);
  return load;
}

using ArmOf = std::function<LengthSpan(const WeighedThing::Place&)>;

/// Of what was on the scales only the way it has been moved counts, and what it may weigh more or less.
LengthSpan arm_since(const WeighedThing& thing, const ArmOf& arm_of) {
  const LengthSpan now = arm_of(thing.place);
  if (!thing.on_scales || thing.may_differ) return now;
  const LengthSpan then = arm_of(*thing.on_scales);
  return {now.low - then.high, now.high - then.low};
}

MomentSpan moment_since(const std::vector<WeighedThing>& things, const ArmOf& arm_of) {
  MomentSpan sum;
  for (const WeighedThing& thing : things) sum.add(moment_of(thing.weight, arm_since(thing, arm_of)));
  return sum;
}

LoadSpan plus(Mass mass, const LoadSpan& change) {
  return {change.low ? std::optional(mass + *change.low) : std::nullopt,
          change.high ? std::optional(mass + *change.high) : std::nullopt};
}

struct MeanSpan {
  MeanArm least;
  MeanArm greatest;
};

/// Of everything new beside a load that is known; what was only moved adds to its moment.
std::optional<MeanSpan> mean_of(const std::vector<WeighedThing>& things, const ArmOf& arm_of, Moment fixed,
                                Mass base) {
  std::vector<SpannedArm> arms;
  MomentSpan shifted;
  for (const WeighedThing& thing : things) {
    const LengthSpan arm = arm_of(thing.place);
    if (thing.may_differ) {
      // All that may be gone is taken away where that draws most, then any of it put back, and as much again.
      const Mass differing = *thing.weight.most;
      shifted.add(moment_of(MassSpan::of(Mass{} - differing), arm));
      base = base - differing;
      for (const Length end : {arm.low, arm.high}) arms.push_back({{Mass{}, differing}, {end, end}});
    } else if (thing.on_scales) {
      shifted.add(moment_of(thing.weight, arm_since(thing, arm_of)));
    } else {
      arms.push_back({thing.weight, arm});
    }
  }
  // Lighter than nothing: the plan's figures do not go with those of the scales.
  const bool taken = std::ranges::any_of(things, &WeighedThing::may_differ);
  if (!shifted.low || !shifted.high || (taken && base <= Mass{})) return std::nullopt;
  const std::optional<MeanArm> least = least_mean(arms, fixed + *shifted.low, base);
  const std::optional<MeanArm> greatest = greatest_mean(arms, fixed + *shifted.high, base);
  return least && greatest ? std::optional(MeanSpan{*least, *greatest}) : std::nullopt;
}

std::optional<LengthSpan> lengths_of(const std::optional<MeanSpan>& mean) {
  if (!mean) return std::nullopt;
  return LengthSpan{mean->least.moment.over(mean->least.mass, Rounding::down),
                    mean->greatest.moment.over(mean->greatest.mass, Rounding::up)};
}

bool has_every_end(const std::vector<WeighedThing>& things) {
  return std::ranges::all_of(things, [](const WeighedThing& one) { return one.weight.most.has_value(); });
}

/// Nobody knows where the middle lies of what may weigh anything: none.
std::optional<LengthSpan> middle_of(const std::vector<WeighedThing>& things, const ArmOf& arm_of,
                                    Moment fixed, Mass base) {
  return has_every_end(things) ? lengths_of(mean_of(things, arm_of, fixed, base)) : std::nullopt;
}

/// A part of a whole, exactly: `part` over `whole`, which is above zero.
struct Part {
  Int128 part = 0;
  Int128 whole = 1;
  Int128 ten_thousandths(Rounding rounding) const { return rounded(part * 10'000, whole, rounding); }
  bool is_below(int percent) const { return part * 100 < whole * percent; }
  bool is_above(int percent) const { return part * 100 > whole * percent; }
};

ShareSpan compared(const Part& low, const Part& high, const ShareRange& range) {
  ShareSpan share{static_cast<std::int64_t>(low.ten_thousandths(Rounding::down)),
                  static_cast<std::int64_t>(high.ten_thousandths(Rounding::up)), Status::unknown};
  if (!low.is_below(range.least) && !high.is_above(range.most)) share.status = Status::met;
  if (high.is_below(range.least) || low.is_above(range.most)) share.status = Status::not_met;
  return share;
}

ArmOf along_of() {
  return [](const WeighedThing::Place& place) { return place.along; };
}
ArmOf across_of() {
  return [](const WeighedThing::Place& place) { return place.across; };
}
/// Ahead of the axle.
ArmOf ahead_of(Length axle) {
  return [axle](const WeighedThing::Place& place) {
    return LengthSpan{axle - place.along.high, axle - place.along.low};
  };
}
/// Behind the coupling.
ArmOf behind(Length coupling) {
  return [coupling](const WeighedThing::Place& place) {
    return LengthSpan{place.along.low + coupling, place.along.high + coupling};
  };
}
/// To the right of the middle between the side walls, twice.
ArmOf twice_right_of(Length width) {
  return [width](const WeighedThing::Place& place) {
    return LengthSpan{place.across.low * 2 - width, place.across.high * 2 - width};
  };
}

std::vector<WeighedThing> not_on_scales(const std::vector<WeighedThing>& things) {
  std::vector<WeighedThing> some;
  std::ranges::copy_if(things, std::back_inserter(some),
                       [](const WeighedThing& one) { return !one.on_scales; });
  return some;
}

MassSpan added_by(const std::vector<WeighedThing>& things) {
  MassSpan sum = MassSpan::of(Mass{});
  for (const WeighedThing& thing : not_on_scales(things)) {
    sum.least = sum.least + thing.weight.least;
    sum.most = sum.most && thing.weight.most ? std::optional(*sum.most + *thing.weight.most) : std::nullopt;
  }
  return sum;
}

/// The load on the coupling as a part of `whole`.
std::optional<ShareSpan> share_in(const Balance& balance, const std::optional<Mass>& whole,
                                  const ShareRange& range) {
  if (!whole || *whole <= Mass{} || !balance.coupling->low || !balance.coupling->high) return std::nullopt;
  return compared({balance.coupling->low->units(), whole->units()},
                  {balance.coupling->high->units(), whole->units()}, range);
}

std::optional<ShareSpan> share_of(const Balance& balance, const Chassis& chassis, Length span, Moment fixed,
                                  Mass base) {
  const ShareRange& range = share_range(chassis.range);
  if (range.of_plate) return share_in(balance, chassis.whole_limit, range);
  const std::optional<MeanSpan> mean = mean_of(balance.things, ahead_of(*chassis.axle), fixed, base);
  if (!mean) return std::nullopt;
  const auto part = [&](const MeanArm& arm) {
    return Part{arm.moment.units(), Int128{arm.mass.units()} * span.ticks()};
  };
  ShareSpan share = compared(part(mean->least), part(mean->greatest), range);
  if (has_every_end(balance.things)) return share;
  // What has no end would reach from one wall to the other: no part is less than nothing or more than all.
  constexpr std::int64_t all = 10'000;
  share.low = std::clamp<std::int64_t>(share.low, 0, all);
  share.high = std::clamp<std::int64_t>(share.high, 0, all);
  return share.low == 0 && share.high == all ? std::nullopt : std::optional(share);
}

/// What everything weighs more or less than on the scales.
MassSpan weight_since(const Balance& balance) {
  MassSpan sum = balance.added;
  for (const WeighedThing& thing : balance.things) {
    if (!thing.may_differ) continue;
    sum.least = sum.least + thing.weight.least;
    if (sum.most) sum.most = *sum.most + *thing.weight.most;
  }
  return sum;
}

/// Nothing that weighs anything came, went or was moved since the scales.
bool is_as_weighed(const Balance& balance) {
  return std::ranges::all_of(balance.things,
                             [](const WeighedThing& one) { return one.weight == MassSpan::of(Mass{}); });
}

/// Of a moment over a length of which only that it is above nothing is known.
LoadSpan over_unknown(const MomentSpan& moment) {
  LoadSpan load;
  if (moment.low && *moment.low >= Moment{}) load.low = Mass{};
  if (moment.high && *moment.high <= Moment{}) load.high = Mass{};
  return load;
}

/// From the left wall, of everything: twice its moment about the middle between the side walls is what the
/// right wheels carry more, times the track.
std::optional<LengthSpan> whole_across(const Balance& balance, const Chassis& chassis, Length width) {
  const Weighed& weighed = *chassis.weighed;
  const Moment twice = Moment::of(*weighed.right - *weighed.left, *chassis.track);
  const std::optional<LengthSpan> right_of_middle =
      middle_of(balance.things, twice_right_of(width), twice, weighed.coupling + weighed.axle);
  if (!right_of_middle) return std::nullopt;
  const auto halved = [&](Length doubled, Rounding rounding) {
    return Length::from_ticks(
        static_cast<std::int64_t>(rounded(doubled.ticks() + width.ticks(), 2, rounding)));
  };
  return LengthSpan{halved(right_of_middle->low, Rounding::down),
                    halved(right_of_middle->high, Rounding::up)};
}

void add_scales(const Chassis& chassis, Length width, Balance& balance) {
  const Weighed& weighed = *chassis.weighed;
  const Mass bare = weighed.coupling + weighed.axle;
  const MassSpan since = weight_since(balance);
  balance.whole = MassSpan{std::max(bare + since.least, Mass{}), std::nullopt};
  if (since.most) balance.whole->most = bare + *since.most;
  if (chassis.whole_limit)
    balance.cargo_left = LoadSpan{
        balance.whole->most ? std::optional(*chassis.whole_limit - *balance.whole->most) : std::nullopt,
        *chassis.whole_limit - balance.whole->least};
  if (balance.side_change && weighed.left) {
    balance.side = plus(*weighed.right - *weighed.left, *balance.side_change);
    if (chassis.track) balance.whole_across = whole_across(balance, chassis, width);
  }
  if (!balance.coupling_change) return;
  if (!chassis.coupling || !chassis.axle) {
    balance.coupling = LoadSpan{weighed.coupling, weighed.coupling};
    balance.axle = LoadSpan{weighed.axle, weighed.axle};
    const ShareRange& range = share_range(chassis.range);
    balance.share = share_in(balance, range.of_plate ? chassis.whole_limit : bare, range);
    return;
  }
  const Length span = *chassis.coupling + *chassis.axle;
  balance.coupling = plus(weighed.coupling, *balance.coupling_change);
  balance.axle = plus(weighed.axle, over(moment_since(balance.things, behind(*chassis.coupling)), span));
  // The bare trailer's own moment about the front wall: it hangs on coupling and axle.
  const Moment about_front =
      Moment::of(weighed.axle, *chassis.axle) - Moment::of(weighed.coupling, *chassis.coupling);
  balance.whole_along = middle_of(balance.things, along_of(), about_front, bare);
  balance.share = share_of(balance, chassis, span, Moment::of(weighed.coupling, span), bare);
}

}  // namespace

const ShareRange& share_range(TowingRange range) {
  static const ShareRange us{TowingRange::us,
                             10,
                             15,
                             false,
                             {.kind = Source::Kind::published,
                              .text = "table of a trailer owner's manual, of the loaded trailer's weight",
                              .edition = {},
                              .address = "manualshive.com"}};
  static const ShareRange uk{TowingRange::uk,
                             5,
                             7,
                             false,
                             {.kind = Source::Kind::published,
                              .text = "NCC Caravan Towing Guide p. 11, of the actual laden weight",
                              .edition = {},
                              .address = "ncc.paperturn-view.com"}};
  static const ShareRange australia{TowingRange::australia,
                                    8,
                                    10,
                                    true,
                                    {.kind = Source::Kind::published,
                                     .text = "an Australian trade magazine, of the ATM on the plate",
                                     .edition = "issues 21 and 61",
                                     .address = "emag.gorv.com.au"}};
  switch (range) {
    case TowingRange::us:
      return us;
    case TowingRange::uk:
      return uk;
    case TowingRange::australia:
      return australia;
  }
  throw std::logic_error("TowingRange out of range");
}

// A mean grows with a weight exactly while the weight's arm is above it; so the arms are taken from the
// longest down, each with its most, as long as they draw the mean upward.
std::optional<MeanArm> greatest_mean(std::vector<SpannedArm> arms, Moment fixed, Mass base) {
  std::ranges::sort(arms, std::greater<>{}, [](const SpannedArm& one) { return one.arm.high; });
  MeanArm mean{fixed, base};
  for (const SpannedArm& one : arms) {
    mean.moment = mean.moment + Moment::of(one.weight.least, one.arm.high);
    mean.mass = mean.mass + one.weight.least;
  }
  for (const SpannedArm& one : arms) {
    const bool heavier = !one.weight.most || *one.weight.most > one.weight.least;
    if (!heavier) continue;
    if (mean.mass > Mass{} && Moment::of(mean.mass, one.arm.high) <= mean.moment) break;
    if (!one.weight.most) return MeanArm{Moment::of(Mass::from_units(1), one.arm.high), Mass::from_units(1)};
    const Mass more = *one.weight.most - one.weight.least;
    mean.moment = mean.moment + Moment::of(more, one.arm.high);
    mean.mass = mean.mass + more;
  }
  return mean.mass > Mass{} ? std::optional(mean) : std::nullopt;
}

std::optional<MeanArm> least_mean(std::vector<SpannedArm> arms, Moment fixed, Mass base) {
  for (SpannedArm& one : arms) one.arm = {-one.arm.high, -one.arm.low};
  std::optional<MeanArm> mean = greatest_mean(std::move(arms), -fixed, base);
  if (mean) mean->moment = -mean->moment;
  return mean;
}

Balance balanced(const Plan& plan, const Configuration& configuration, TankState tanks) {
  Balance balance{
      .tanks = tanks, .things = weights_in(plan, configuration, tanks), .on_coupling = {}, .added = {}};
  balance.added = added_by(balance.things);
  const std::vector<WeighedThing> added = not_on_scales(balance.things);
  balance.along = middle_of(added, along_of(), {}, {});
  balance.across = middle_of(added, across_of(), {}, {});
  if (!plan->chassis) return balance;
  const Chassis& chassis = *plan->chassis;
  if (chassis.coupling && chassis.axle) {
    const Length span = *chassis.coupling + *chassis.axle;
    const ArmOf arm = ahead_of(*chassis.axle);
    for (const WeighedThing& thing : balance.things)
      balance.on_coupling.push_back(over(moment_of(thing.weight, arm_since(thing, arm)), span));
    balance.coupling_change = over(moment_since(balance.things, arm), span);
  } else if (chassis.weighed && is_as_weighed(balance)) {
    balance.coupling_change = LoadSpan{Mass{}, Mass{}};
  }
  // Each pound by the arm from the middle adds to one wheel what it takes from the other: twice the moment
  // over the track is the difference.
  if (chassis.track || (chassis.weighed && chassis.weighed->left)) {
    const MomentSpan aside = moment_since(balance.things, twice_right_of(plan->interior.width));
    balance.side_change = chassis.track ? over(aside, *chassis.track) : over_unknown(aside);
  }
  if (chassis.weighed) add_scales(chassis, plan->interior.width, balance);
  return balance;
}

std::vector<std::size_t> movers(const Balance& balance) {
  std::vector<std::size_t> order;
  // Without a bound before all others; then by the greatest of what it may do.
  const auto most = [&](std::size_t i) {
    const LoadSpan& load = balance.on_coupling[i];
    if (!load.low || !load.high) return heaviest + heaviest;
    return std::max(*load.high, Mass{} - *load.low);
  };
  for (std::size_t i = 0; i < balance.on_coupling.size(); ++i)
    if (most(i) > Mass{}) order.push_back(i);
  std::ranges::stable_sort(order, std::greater<>{}, most);
  return order;
}

}  // namespace berthwright

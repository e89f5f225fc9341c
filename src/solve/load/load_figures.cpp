#include <berthwright/solve/load/load_figures.h>

#include <algorithm>

namespace berthwright {
namespace {

using FigureKind = LoadFigure::Kind;

/// Collects the figures of one configuration, each with the verdict on it.
class FiguresOf {
 public:
  FiguresOf(const Plan& plan, const Loads& loads) : plan_(plan), verdicts_(verdicts_on(plan, loads)) {}

  void add(const Balance& balance) {
    tanks_ = balance.tanks;
    using Asked = LoadVerdict::Kind;
    add(FigureKind::added, LoadSpan{balance.added.least, balance.added.most});
    // Nothing has no middle; of what may weigh something it is unknown.
    if (balance.added != MassSpan::of(Mass{})) {
      add(FigureKind::along, balance.along);
      add(FigureKind::across, balance.across);
    }
    if (!plan_->chassis) return;
    if (plan_->chassis->towed) add(FigureKind::coupling_change, balance.coupling_change);
    // Nobody has weighed a van here; what its plate allows is asked all the same.
    if (plan_->chassis->towed || plan_->chassis->whole_limit) add_whole(balance);
    if (plan_->chassis->towed) add_carriers(balance);
    if (plan_->chassis->track) add(FigureKind::whole_across, balance.whole_across);
    if (plan_->chassis->track || balance.side) add(FigureKind::sides, balance.side, Asked::sides);
    if (plan_->chassis->whole_limit) add(FigureKind::cargo_left, balance.cargo_left);
  }

  void add(const SupplyFigures& supply) {
    tanks_ = TankState::as_told;
    std::int64_t watts = 0;
    for (const CircuitLoad& load : supply.loads) watts += load.draw.watts;
    for (std::size_t i = 0; i < supply.circuits.size(); ++i) {
      const BreakerFigures& figures = supply.circuits[i];
      figures_.push_back({FigureKind::circuit, tanks_, plan_->supply->circuits[i].id,
                          counted(figures.counted, figures.is_known()), figures.status});
    }
    add(FigureKind::supply, counted(watts, supply.no_figure.empty()));
    // Whether the circuits carry theirs is told of each.
    if (supply.whole) figures_.back().status = supply.whole->status;
    std::int64_t together = 0;
    for (const std::size_t i : supply.together) together += supply.loads[i].draw.watts;
    add(FigureKind::together, counted(together, supply.is_known()));
  }

  void add(const WarmUp& warm_up) {
    // A heater of which nothing is said may warm the room sooner, and where the others never would.
    const bool all_known = warm_up.no_figure.empty();
    if (warm_up.is_never_reached && all_known)
      add(FigureKind::warm_up, std::optional(Never{}));
    else if (warm_up.watts > 0 || !all_known)
      add(FigureKind::warm_up, all_known ? warm_up.seconds : std::nullopt);
    add(FigureKind::hold, std::optional(warm_up.hold));
  }

  std::vector<LoadFigure> figures() && { return std::move(figures_); }

 private:
  /// A weight is known where its plate is not.
  static std::optional<LoadVerdict::Kind> given(const std::optional<Mass>& limit, LoadVerdict::Kind kind) {
    return limit ? std::optional(kind) : std::nullopt;
  }
  void add_whole(const Balance& balance) {
    add(FigureKind::whole,
        balance.whole ? std::optional(LoadSpan{balance.whole->least, balance.whole->most}) : std::nullopt,
        given(plan_->chassis->whole_limit, LoadVerdict::Kind::whole_limit));
  }
  void add_carriers(const Balance& balance) {
    using Asked = LoadVerdict::Kind;
    const Chassis& chassis = *plan_->chassis;
    add(FigureKind::coupling, balance.coupling, given(chassis.coupling_limit, Asked::coupling_limit));
    add(FigureKind::axle, balance.axle, given(chassis.axle_limit, Asked::axle_limit));
    add(FigureKind::whole_along, balance.whole_along);
    add(FigureKind::share, balance.share, Asked::share);
    figures_.back().range = plan_->chassis->range;
  }
  static LoadFigure::Value counted(std::int64_t count, bool is_known) {
    if (is_known) return CountSpan{count, count};
    return AtLeast{count};
  }
  void add(FigureKind kind, LoadFigure::Value value, std::optional<LoadVerdict::Kind> asked = std::nullopt) {
    add(kind, std::optional(std::move(value)), asked);
  }
  template <class Span>
  void add(FigureKind kind, const std::optional<Span>& span,
           std::optional<LoadVerdict::Kind> asked = std::nullopt) {
    LoadFigure figure{kind, tanks_, {}, std::nullopt, std::nullopt};
    if (span) figure.value = *span;
    for (const LoadVerdict& verdict : verdicts_)
      if (verdict.kind == asked && verdict.tanks == tanks_) figure.status = verdict.status;
    figures_.push_back(std::move(figure));
  }

  const Plan& plan_;
  std::vector<LoadVerdict> verdicts_;
  TankState tanks_ = TankState::as_told;
  std::vector<LoadFigure> figures_;
};

}  // namespace

bool LoadFigure::is_known() const {
  if (!value || status == Status::unknown || std::holds_alternative<AtLeast>(*value)) return false;
  const LoadSpan* load = std::get_if<LoadSpan>(&*value);
  return load == nullptr || (load->low && load->high);
}

std::vector<LoadFigure> load_figures(const Plan& plan, const Loads& loads) {
  FiguresOf of(plan, loads);
  for (const Balance* balance : different_balances(loads)) of.add(*balance);
  if (loads.supply) of.add(*loads.supply);
  if (loads.warm_up) of.add(*loads.warm_up);
  return std::move(of).figures();
}

}  // namespace berthwright

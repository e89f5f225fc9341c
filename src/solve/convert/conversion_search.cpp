#include "solve/convert/conversion_search.h"

#include <algorithm>
#include <set>

#include "solve/convert/least_steps.h"
#include "solve/convert/meanwhile.h"
#include "solve/convert/parking.h"
#include "solve/convert/spots.h"
#include "solve/convert/step_motions.h"
#include "solve/convert/table_rules.h"

namespace berthwright {
namespace {

std::vector<std::string> pieces_among(const Plan& plan, const std::vector<std::string>& ids) {
  std::vector<std::string> pieces;
  for (const std::string& id : ids)
    if (plan.piece(id) != nullptr) pieces.push_back(id);
  std::ranges::sort(pieces);
  return pieces;
}

/// A search from one arrangement to another.
class ConversionSearch {
 public:
  ConversionSearch(const RoomAround& surroundings, const Arrangement& from, const Arrangement& to)
      : surroundings_(surroundings), plan_(surroundings.plan()), from_(from), to_(to) {
    for (std::size_t piece = 0; piece < plan_->pieces.size(); ++piece) add_piece(piece);
    for (std::size_t piece = 0; piece < plan_->pieces.size(); ++piece) {
      add_needs(start_[piece]);
      if (goal_[piece] != start_[piece]) add_needs(goal_[piece]);
    }
    posed_ = entries_;
    carrying_ = carryings(surroundings_, posed_);
  }

  Conversion run() {
    Conversion conversion;
    conversion.from = from_.configuration;
    conversion.to = to_.configuration;
    for (const std::size_t at : start_) conversion.start.push_back(posed_[at].spot);
    if (entries_.size() > most_spots) return conversion;
    // First without places to put things aside, then with some for those that need them, then for all; and
    // only where that does not do, with cushions bent past whatever is near.
    for (const bool bend_all : {false, true}) {
      LeastSteps found = attempt(conversion, {}, bend_all);
      std::vector<std::size_t> wanted = found.delayed;
      if (!is_done(found) && found.stuck.empty() && !wanted.empty())
        found = attempt(conversion, wanted, bend_all);
      if (!is_done(found) && found.stuck.empty()) {
        wanted.clear();
        for (std::size_t piece = 0; piece < plan_->pieces.size(); ++piece) wanted.push_back(piece);
        found = attempt(conversion, wanted, bend_all);
      }
      tell(conversion, found);
      if (conversion.verdict != Conversion::Verdict::none) break;
    }
    return conversion;
  }

 private:
  // Fewer steps than each piece that must move takes none, so a plan without parking that keeps to the
  // lower bound is the best of all.
  static bool is_done(const LeastSteps& found) {
    return found.verdict == LeastSteps::Verdict::order && found.at_least == found.moves.size();
  }

  void add_piece(std::size_t piece) {
    const PieceId& id = plan_->pieces[piece].id;
    const auto pose_in = [&](const Arrangement& arrangement) -> const Pose& {
      return *std::ranges::find(arrangement.configuration->poses, id, &Pose::piece);
    };
    PiecePlace start = spot_in(plan_, from_, pose_in(from_));
    PiecePlace goal = spot_in(plan_, to_, pose_in(to_));
    const bool stays = is_same_spot(start, goal) &&
                       pieces_among(plan_, start.carried_by) == pieces_among(plan_, goal.carried_by);
    start_.push_back(entries_.size());
    entries_.push_back({piece, std::move(start), {}, 0});
    goal_.push_back(stays ? start_.back() : entries_.size());
    if (!stays) entries_.push_back({piece, std::move(goal), {}, 0});
  }

  void add_needs(std::size_t at) {
    const std::size_t own = entries_[at].piece;
    const std::vector<std::size_t>& where = at == start_[own] ? start_ : goal_;
    for (const std::string& carrier : entries_[at].spot.carried_by)
      for (std::size_t piece = 0; piece < plan_->pieces.size(); ++piece)
        if (plan_->pieces[piece].id.text() == carrier) entries_[at].needs.push_back(where[piece]);
  }

  LeastSteps attempt(Conversion& conversion, const std::vector<std::size_t>& wanted, bool bend_all) {
    entries_ = posed_;
    add_parking(surroundings_, wanted, entries_);
    made_ = spot_table(surroundings_, entries_, carrying_, bend_all);
    made_.table.start = start_;
    made_.table.goal = goal_;
    first_.reset();
    last_.reset();
    const TableRules rules(made_.table);
    settle_heaters(rules);
    LeastSteps found = least_steps(made_.table);
    conversion.stages += found.stages;
    return found;
  }

  // A heater is switched off and put away before anything else, or comes last.
  void settle_heaters(const TableRules& rules) {
    const auto taken_at = [](const std::vector<std::size_t>& spots) {
      SpotSet taken;
      for (const std::size_t spot : spots) taken.set(spot);
      return taken;
    };
    for (std::size_t piece = 0; piece < plan_->pieces.size(); ++piece) {
      const bool runs = entries_[start_[piece]].spot.pose.state == Pose::State::running;
      const bool will_run = entries_[goal_[piece]].spot.pose.state == Pose::State::running;
      if (!plan_->pieces[piece].heat || start_[piece] == goal_[piece] || runs == will_run) continue;
      const TableMove move{piece, start_[piece], goal_[piece]};
      if (runs && !first_ && rules.may_move(move.from, move.to, taken_at(start_))) {
        first_ = move;
        made_.table.start[piece] = goal_[piece];
      } else if (will_run && !last_ && rules.may_move(move.to, move.from, taken_at(goal_))) {
        last_ = move;
        made_.table.goal[piece] = start_[piece];
      }
    }
  }

  void tell(Conversion& conversion, const LeastSteps& found) {
    conversion.steps.clear();
    conversion.stuck.clear();
    conversion.at_least = found.at_least;
    conversion.least_burden = found.least_burden;
    switch (found.verdict) {
      case LeastSteps::Verdict::order:
        conversion.verdict = Conversion::Verdict::order;
        tell_steps(conversion, found.moves);
        break;
      case LeastSteps::Verdict::none:
        conversion.verdict = Conversion::Verdict::none;
        tell_stuck(conversion, found.stuck);
        break;
      case LeastSteps::Verdict::undecided:
        conversion.verdict = Conversion::Verdict::undecided;
        break;
    }
  }

  void tell_steps(Conversion& conversion, std::vector<TableMove> moves) {
    const std::size_t more = (first_ ? 1U : 0U) + (last_ ? 1U : 0U);
    if (conversion.at_least) *conversion.at_least += more;
    if (first_) moves.insert(moves.begin(), *first_);
    if (last_) moves.push_back(*last_);
    const TableRules rules(made_.table);
    SpotSet taken;
    for (const std::size_t spot : start_) taken.set(spot);
    for (const TableMove& move : moves) {
      conversion.steps.push_back(step_of({made_, rules, entries_, carrying_}, move, taken));
      taken.reset(move.from);
      taken.set(move.to);
    }
  }

  // Of the pieces that do not come through: what bars each at its start and at its goal. Where something is
  // barred for good, that alone.
  void tell_stuck(Conversion& conversion, const std::vector<std::size_t>& pieces) {
    bool for_good = false;
    for (const std::size_t piece : pieces)
      for (const std::size_t spot : {start_[piece], goal_[piece]})
        for_good = for_good || made_.table.spots[spot].ways.empty();
    for (const std::size_t piece : pieces)
      for (const bool at_goal : {false, true}) {
        const std::size_t spot = at_goal ? goal_[piece] : start_[piece];
        if (at_goal && start_[piece] == goal_[piece]) continue;
        if (for_good && !made_.table.spots[spot].ways.empty()) continue;
        Stuck stuck{plan_->pieces[piece].id.text(), at_goal, {}, {}};
        add_bars(stuck, spot);
        if (!stuck.by.empty()) conversion.stuck.push_back(std::move(stuck));
      }
    if (pieces.empty()) tell_cut_off(conversion);
  }

  // Pieces of which no ways lead on from the start to the goal, and what shuts the way up from either.
  void tell_cut_off(Conversion& conversion) const {
    for (std::size_t piece = 0; piece < plan_->pieces.size(); ++piece) {
      if (is_joined(start_[piece], goal_[piece])) continue;
      for (const std::size_t spot : {start_[piece], goal_[piece]}) {
        Stuck stuck{plan_->pieces[piece].id.text(), spot == goal_[piece], {}, {}};
        add_shut(stuck, spot);
        if (!stuck.by.empty()) conversion.stuck.push_back(std::move(stuck));
      }
    }
  }

  bool is_joined(std::size_t from, std::size_t to) const {
    const std::vector<SpotRow>& spots = made_.table.spots;
    const auto joined = [&](std::size_t a, std::size_t b) {
      return std::ranges::any_of(spots[a].ways, [&](const OpenWay& way) {
        return std::ranges::find(spots[b].ways, way.joins, &OpenWay::joins) != spots[b].ways.end();
      });
    };
    std::vector<std::size_t> reached{from};
    for (std::size_t i = 0; i < reached.size(); ++i)
      for (std::size_t next = 0; next < spots.size(); ++next)
        if (spots[next].piece == spots[from].piece && std::ranges::find(reached, next) == reached.end() &&
            joined(reached[i], next))
          reached.push_back(next);
    return std::ranges::find(reached, to) != reached.end();
  }

  void add_shut(Stuck& stuck, std::size_t spot) const {
    for (const ShutBy& shut : made_.shut[spot]) {
      stuck.by.push_back(shut.thing);
      stuck.by_places = plan_.piece(shut.thing) != nullptr;
    }
  }

  void add_bars(Stuck& stuck, std::size_t spot) const {
    const SpotRow& row = made_.table.spots[spot];
    if (row.ways.empty()) {
      add_shut(stuck, spot);
      for (const ShutBy& shut : made_.shut[spot]) stuck.depth = std::max(stuck.depth, shut.depth);
      return;
    }
    std::set<std::size_t> others;
    for (const OpenWay& way : row.ways)
      for (std::size_t other = 0; other < made_.table.spots.size(); ++other)
        if (way.barred_by[other] || row.needs[other]) others.insert(made_.table.spots[other].piece);
    for (const SpotRow& other : made_.table.spots)
      if (other.needs[spot]) others.insert(other.piece);
    for (const std::size_t other : others) stuck.by.push_back(plan_->pieces[other].id.text());
  }

  const RoomAround& surroundings_;
  const Plan& plan_;
  const Arrangement& from_;
  const Arrangement& to_;
  std::vector<SpotEntry> posed_;
  std::vector<std::unique_ptr<Carrying>> carrying_;
  std::vector<SpotEntry> entries_;
  std::vector<std::size_t> start_;
  std::vector<std::size_t> goal_;
  SpotTable made_;
  std::optional<TableMove> first_;
  std::optional<TableMove> last_;
};

}  // namespace

Conversion searched(const RoomAround& surroundings, const Arrangement& from, const Arrangement& to) {
  return ConversionSearch(surroundings, from, to).run();
}

Conversion undone(const Conversion& conversion) {
  Conversion back = conversion;
  std::swap(back.from, back.to);
  for (const Step& step : conversion.steps)
    for (PiecePlace& spot : back.start)
      if (spot.pose.piece == step.piece) spot = step.to;
  std::ranges::reverse(back.steps);
  for (Step& step : back.steps) {
    std::swap(step.from, step.to);
    std::swap(step.taking, step.letting_go);
    std::ranges::reverse(step.motions);
    for (Motion& motion : step.motions) motion = backwards(std::move(motion));
  }
  for (Stuck& stuck : back.stuck) stuck.at_goal = !stuck.at_goal;
  for (Meanwhile& one : back.meanwhile) one = undone(std::move(one), back.steps.size());
  std::ranges::stable_sort(back.meanwhile, {}, &Meanwhile::from);
  return back;
}

}  // namespace berthwright

#include "solve/convert/least_steps.h"

#include <algorithm>
#include <queue>
#include <ranges>
#include <string>
#include <tuple>
#include <unordered_map>

#include "solve/convert/room_aside.h"

namespace berthwright {
namespace {

using Stage = std::vector<std::size_t>;  // the spot of each piece

// What was reached, and by which last move.
struct Node {
  Stage at;
  std::size_t steps = 0;
  int burden = 0;
  std::size_t before = 0;
  TableMove move;
};

// The most promising first: fewest steps in all, then least burden, then what was found last (it is the
// farthest on its way).
struct Promise {
  std::size_t steps;
  int burden;
  std::size_t node;
  friend bool operator<(const Promise& a, const Promise& b) {
    return std::tie(a.steps, a.burden, b.node) > std::tie(b.steps, b.burden, a.node);
  }
};

std::u16string key_of(const Stage& stage) {
  std::u16string key;
  for (const std::size_t spot : stage) key.push_back(static_cast<char16_t>(spot));
  return key;
}

class StepSearch {
 public:
  StepSearch(const TableRules& rules, const RoomAside& aside, bool weigh_burden)
      : rules_(rules), aside_(aside), weigh_burden_(weigh_burden) {}

  LeastSteps run(std::size_t most) {
    const MoveTable& table = rules_.table();
    LeastSteps result;
    reach({table.start, 0, 0, 0, {}});
    while (!open_.empty()) {
      const Promise next = open_.top();
      open_.pop();
      const Node node = nodes_[next.node];
      if (best_.at(key_of(node.at)) != next.node) continue;
      if (node.at == table.goal) return found(next.node);
      if (++result.stages > most) return result;
      expand(next.node);
    }
    result.verdict = LeastSteps::Verdict::none;
    return result;
  }

 private:
  void reach(Node node) {
    const std::size_t left = aside_.at_least(node.at);
    if (left == RoomAside::never) return;
    const auto [known, fresh] = best_.try_emplace(key_of(node.at), nodes_.size());
    if (!fresh) {
      const Node& old = nodes_[known->second];
      if (std::tie(old.steps, old.burden) <= std::tie(node.steps, node.burden)) return;
      known->second = nodes_.size();
    }
    open_.push({node.steps + left, node.burden, nodes_.size()});
    nodes_.push_back(std::move(node));
  }

  Node moved(std::size_t before, const TableMove& move) const {
    Node node = nodes_[before];
    node.at[move.piece] = move.to;
    node.steps += 1;
    if (weigh_burden_) node.burden += rules_.table().spots[move.to].burden;
    node.before = before;
    node.move = move;
    return node;
  }

  // A piece that can go where it belongs, there bars nobody, and on whose other spots nothing is ever laid,
  // may go at once: any order from here works as well, and is no longer, without its later moves.
  bool is_final(const TableMove& move) const {
    if (move.to != rules_.table().goal[move.piece] || !rules_.is_harmless(move.to)) return false;
    return std::ranges::all_of(rules_.spots_of(move.piece), [&](std::size_t spot) {
      return spot == move.to || rules_.needed_by(spot).none();
    });
  }

  void expand(std::size_t from) {
    const Stage at = nodes_[from].at;
    SpotSet taken;
    for (const std::size_t spot : at) taken.set(spot);
    std::vector<TableMove> moves;
    for (std::size_t piece = 0; piece < at.size(); ++piece)
      for (const std::size_t to : rules_.spots_of(piece)) {
        if (to == at[piece] || !rules_.may_move(at[piece], to, taken)) continue;
        const TableMove move{piece, at[piece], to};
        if (is_final(move)) return reach(moved(from, move));
        moves.push_back(move);
      }
    // The first is to be looked at first, and what was found last is.
    for (const TableMove& move : std::views::reverse(moves)) reach(moved(from, move));
  }

  LeastSteps found(std::size_t last) const {
    LeastSteps result;
    result.verdict = LeastSteps::Verdict::order;
    for (std::size_t at = last; nodes_[at].steps > 0; at = nodes_[at].before)
      result.moves.push_back(nodes_[at].move);
    std::ranges::reverse(result.moves);
    result.least_burden = weigh_burden_;
    result.stages = nodes_.size();
    return result;
  }

  const TableRules& rules_;
  const RoomAside& aside_;
  bool weigh_burden_;
  std::vector<Node> nodes_;
  std::unordered_map<std::u16string, std::size_t> best_;
  std::priority_queue<Promise> open_;
};

}  // namespace

LeastSteps least_steps(const MoveTable& table, const SearchBounds& bounds) {
  const TableRules rules(table);
  const RoomAside aside(rules, bounds.aside);
  const std::size_t at_least = aside.at_least(table.start);
  if (at_least == RoomAside::never) {
    LeastSteps none;
    none.verdict = LeastSteps::Verdict::none;
    none.stuck = aside.stuck();
    return none;
  }
  LeastSteps result = StepSearch(rules, aside, true).run(bounds.tidy);
  if (result.verdict == LeastSteps::Verdict::undecided) {
    const std::size_t before = result.stages;
    result = StepSearch(rules, aside, false).run(bounds.stages);
    result.stages += before;
  }
  if (aside.counted_out()) result.at_least = at_least;
  result.delayed = aside.delayed();
  return result;
}

}  // namespace berthwright

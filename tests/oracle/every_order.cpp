#include "oracle/every_order.h"

#include <algorithm>
#include <map>
#include <utility>

namespace berthwright::oracle {
namespace {

using PlainStage = std::vector<std::size_t>;

bool is_taken(const PlainStage& stage, std::size_t spot) {
  return std::find(stage.begin(), stage.end(), spot) != stage.end();
}

bool may_go(const std::vector<PlainSpot>& spots, const PlainStage& stage, std::size_t from, std::size_t to) {
  for (const std::size_t spot : stage)
    for (const std::size_t need : spots[spot].needs)
      if (need == from) return false;
  for (const std::size_t need : spots[to].needs)
    if (!is_taken(stage, need)) return false;
  for (const auto& out : spots[from].ways)
    for (const auto& in : spots[to].ways) {
      bool free = out.first == in.first;
      for (const std::size_t bar : out.second) free = free && !is_taken(stage, bar);
      for (const std::size_t bar : in.second) free = free && !is_taken(stage, bar);
      if (free) return true;
    }
  return false;
}

}  // namespace

std::optional<std::size_t> fewest_moves(const std::vector<PlainSpot>& spots, std::vector<std::size_t> start,
                                        const std::vector<std::size_t>& goal) {
  std::map<PlainStage, std::size_t> moves{{start, 0}};
  std::vector<PlainStage> ring{std::move(start)};
  for (std::size_t count = 0; !ring.empty(); ++count) {
    std::vector<PlainStage> next;
    for (const PlainStage& stage : ring) {
      if (stage == goal) return count;
      for (std::size_t piece = 0; piece < stage.size(); ++piece)
        for (std::size_t to = 0; to < spots.size(); ++to) {
          if (spots[to].piece != piece || to == stage[piece] || !may_go(spots, stage, stage[piece], to))
            continue;
          PlainStage then = stage;
          then[piece] = to;
          if (moves.emplace(then, count + 1).second) next.push_back(std::move(then));
        }
    }
    ring = std::move(next);
  }
  return std::nullopt;
}

}  // namespace berthwright::oracle

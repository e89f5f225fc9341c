#include "plan/reading.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "plan/values.h"

namespace berthwright {

void Reading::add(const Node& node, Problem problem) {
  if (full()) return;
  if (problem.pointer.empty()) problem.pointer = node.pointer;
  if (problem.found.empty()) problem.found = found_at(node);
  if (problem.line == 0) {
    const bool told = problem.column > 0 && !node.escaped;
    const std::size_t quote = node.kind == Node::Kind::text ? 1 : 0;
    problem.line = node.line;
    problem.column = told ? node.column + quote + problem.column - 1 : node.column;
  }
  problems.push_back(std::move(problem));
}

void Reading::add(const Origin& origin, Problem problem) {
  if (full()) return;
  problem.pointer = origin.pointer;
  problem.line = origin.line;
  problem.column = origin.column;
  problems.push_back(std::move(problem));
}

void sort_problems(Problems& problems) {
  std::ranges::sort(problems, {}, [](const Problem& p) {
    return std::tie(p.line, p.column, p.pointer, p.id, p.message, p.found, p.allowed, p.cure);
  });
  const auto repeated = std::ranges::unique(problems);
  problems.erase(repeated.begin(), repeated.end());
}

}  // namespace berthwright

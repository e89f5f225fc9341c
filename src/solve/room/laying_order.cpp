#include "solve/room/laying_order.h"

#include <algorithm>

namespace berthwright {

namespace {

using Poses = std::vector<const Pose*>;

const Pose* named_among(const Pose& pose, const Poses& poses) {
  for (const std::string& id : pose.on)
    for (const Pose* other : poses)
      if (other->piece.text() == id) return other;
  return nullptr;
}

// Each of the poses waits for another of them, so following what they wait for comes round to a pair.
Problem circle_among(const Poses& waiting) {
  Poses walked{waiting.front()};
  const Pose* next = named_among(*walked.back(), waiting);
  while (std::ranges::find(walked, next) == walked.end()) {
    walked.push_back(next);
    next = named_among(*next, waiting);
  }
  const Pose& last = *walked.back();
  Problem problem = problem_at(last, "rest.circle",
                               '"' + last.piece.text() + "\" and \"" + next->piece.text() +
                                   "\" each wait for the other to be laid first");
  problem.found = '"' + next->piece.text() + '"';
  problem.allowed = "a fixture, or a piece that is laid before this one";
  problem.cure = "name in \"on\" only what lies beneath";
  return problem;
}

}  // namespace

Problem problem_at(const Pose& pose, std::string id, std::string message) {
  Problem problem;
  problem.id = std::move(id);
  problem.pointer = pose.origin.pointer;
  problem.line = pose.origin.line;
  problem.column = pose.origin.column;
  problem.message = std::move(message);
  return problem;
}

Result<std::vector<const Pose*>> laying_order(const Configuration& configuration) {
  Poses waiting;
  for (const Pose& pose : configuration.poses)
    if (pose.manner != Pose::Manner::stowed) waiting.push_back(&pose);
  Poses laid;
  while (!waiting.empty()) {
    const auto ready = std::ranges::find_if(
        waiting, [&](const Pose* pose) { return named_among(*pose, waiting) == nullptr; });
    if (ready == waiting.end()) return circle_among(waiting);
    laid.push_back(*ready);
    waiting.erase(ready);
  }
  return laid;
}

}  // namespace berthwright

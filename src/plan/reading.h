#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

#include "plan/document.h"

namespace berthwright {

inline constexpr std::size_t most_problems = 1000;
inline constexpr std::size_t most_things = 2000;
inline constexpr std::size_t longest_name = 200;
inline constexpr std::size_t longest_note = 2000;

/// What one reading of a plan file knows and collects on its way down.
struct Reading {
  Unit unit = Unit::inch;
  bool drives_on_right = true;
  Problems problems;
  std::vector<AppliedDefault> defaults;

  /// Completes `problem` with pointer and place of `node`, where it has none of its own. A column without
  /// line counts within the value. After the thousandth fault no more are kept.
  void add(const Node& node, Problem problem);
  void add(const Origin& origin, Problem problem);
  bool full() const { return problems.size() >= most_problems; }
};

/// In the order of the file; of equal ones one.
void sort_problems(Problems& problems);

}  // namespace berthwright

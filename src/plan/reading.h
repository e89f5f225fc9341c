#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/plan/plan.h>

#include "plan/document.h"

namespace berthwright {

inline constexpr std::size_t most_problems = 1000;
inline constexpr std::size_t most_things = 2000;
inline constexpr std::size_t longest_name = 200;
inline constexpr std::size_t longest_note = 2000;

/// A length or a weight that a plan file spells.
struct SpelledMeasure {
  Origin origin;
  std::optional<Length> length;
  std::optional<Mass> mass;
  friend bool operator==(const SpelledMeasure&, const SpelledMeasure&) = default;
};

/// Lengths that stand in for what the file spells, by JSON pointer.
using OtherLengths = std::map<std::string, Length, std::less<>>;

/// What one reading of a plan file knows and collects on its way down.
struct Reading {
  Unit unit = Unit::inch;
  bool drives_on_right = true;
  Gallon gallon = Gallon::us;
  bool british = false;
  Problems problems;
  std::vector<AppliedDefault> defaults;
  std::vector<SpelledMeasure> measures;  ///< in the order of reading
  const OtherLengths* other = nullptr;   ///< none: every length is as the file spells it

  /// Completes `problem` with pointer and place of `node`, where it has none of its own. A column without
  /// line counts within the value. After the thousandth fault no more are kept.
  void add(const Node& node, Problem problem);
  void add(const Origin& origin, Problem problem);
  bool full() const { return problems.size() >= most_problems; }
};

/// As `read_plan`; also every length and weight of the file, in the order of the file, each once.
Result<Plan> read_plan(std::string_view text, std::vector<SpelledMeasure>& measures);

/// In the order of the file; of equal ones one.
void sort_problems(Problems& problems);

}  // namespace berthwright

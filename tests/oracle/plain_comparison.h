#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace berthwright::oracle {

/// How far a rule is kept; the worse the greater.
enum class Kept { yes, closely, no, unknown };

/// A finding without its things: what is measured and asked is a number that equal quantities share.
struct PlainFinding {
  std::string rule;
  std::string bed;
  std::vector<std::string> things;
  std::string variant;
  Kept kept = Kept::unknown;
  int measured = 0;
  int asked = -1;  ///< none: below zero
  bool is_own = false;
  int besides = 0;
  std::optional<std::int64_t> to_spare;
};

/// A figure of the loads: what it is, and its ends.
struct PlainLoad {
  std::string what;
  bool has_value = false;
  std::vector<std::optional<std::int64_t>> ends;
  std::optional<Kept> kept;
  int range = -1;
};

/// One side of a pair of configurations; the lengths are those of the room, or none.
struct PlainSide {
  std::vector<PlainFinding> findings;
  std::vector<PlainLoad> loads;
  std::vector<std::int64_t> lengths;
};

/// What is said of each pair of figures, a line each, in no order: "heat.three-feet 3 5 A keeps", by index
/// into the findings; "-" where a side has none.
struct PlainComparison {
  std::vector<std::string> lines;
  std::size_t alike = 0;
};
/// `numbered` are the rules that have a number.
PlainComparison plain_comparison(const PlainSide& first, const PlainSide& second,
                                 const std::vector<std::string>& numbered);

}  // namespace berthwright::oracle

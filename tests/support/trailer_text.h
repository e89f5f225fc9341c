#pragma once

#include <string>
#include <vector>

#include <berthwright/solve/answer.h>

namespace berthwright {

/// A plan of one test as lists of JSON objects, so that a test can add, move, mirror and reorder things. Two
/// configurations, "day" and "night"; a piece without a pose of its own is stowed.
struct TrailerText {
  std::string interior = R"({"length": 120, "width": 76, "height": 76})";
  std::string unit = "in";
  std::string more;  ///< members of the top object, each with its comma: R"("built": 1961, )"
  std::vector<std::string> openings;
  std::vector<std::string> fixtures;
  std::vector<std::string> pieces;
  std::vector<std::string> day;
  std::vector<std::string> night;
  std::vector<std::string> road;  ///< a third configuration, where not empty
  std::vector<std::string> beds;
  std::vector<std::string> rules;  ///< members: R"("bed.gap": {"limit": 2, "reason": "…"})"

  std::string json() const;
  Plan plan() const;
  /// Left and right exchanged everywhere; an opening in an end wall must stand in the middle of it.
  TrailerText mirrored() const;
};

/// The answer with the plan it points into. Throws when the plan cannot be stood up.
struct Answered {
  explicit Answered(const TrailerText& text);
  explicit Answered(Plan made);
  Answered(const Answered&) = delete;
  Answered& operator=(const Answered&) = delete;

  /// Findings of a rule, in the order of the answer.
  std::vector<Finding> of(std::string_view rule, std::string_view variant = {}) const;
  /// The only finding of a rule (and variant, if one is named); fails the test otherwise.
  Finding one(std::string_view rule, std::string_view variant = {}) const;

  /// The only finding of a rule in one configuration; fails the test otherwise.
  Finding one_in(std::string_view configuration, std::string_view rule) const;

  Plan plan;
  Answer answer;
};

}  // namespace berthwright

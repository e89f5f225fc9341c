#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/plan/plan.h>

namespace berthwright {

struct Document;

/// What a tape was held to; each kind has its usual tolerance. A heater counts among the fixtures; a place is
/// where a loose piece is laid.
enum class TapeKind { wall, opening, fixture, cushion, board, place };

/// How far a measure can be trusted: only drawn, taken once from what stands there, or taken again.
enum class TapeState { planned, as_built, checked };

/// One measure of a plan, with what it may be off by.
struct TapeMeasure {
  /// The thing and its field: "left bench/width", "interior/height", "night/B/left".
  std::string name;
  /// Of lengths of the file that are the same measure: a bench from wall to wall is as long as the room.
  std::vector<std::string> also;
  std::vector<std::string> pointers;  ///< JSON pointers of them all
  TapeKind kind = TapeKind::fixture;
  TapeState state = TapeState::planned;
  Length length;
  Length tolerance;  ///< it may be off by so much either way; zero: two things touch, or it is taken as it is
  std::optional<Length> as_built;  ///< what was found where the thing was built, if the plan says
  Origin origin;                   ///< of the first of the lengths
};

/// A plan with the measures it was made from, so that it can be made again from others.
///
/// Measures are the lengths of the interior, of openings, fixtures and pieces, and the places of pieces; not
/// what others have published or what somebody wishes (data plates, cords, sewing, people, rules), and not
/// what opens. A length of zero says that two things touch. A tolerance that no entry of the plan gives is at
/// most half its measure.
class TapedPlan {
 public:
  /// Problems: those of `read_plan`.
  static Result<TapedPlan> read(std::string_view text);

  const Plan& plan() const { return plan_; }
  const std::vector<TapeMeasure>& measures() const { return measures_; }  ///< in the order of the file

  /// The plan that these lengths make, one for each measure. A piece whose place is measured from the side on
  /// which it touches another thing in the plan as written is laid against that thing again, and a piece held
  /// at the height of a top follows that top. Problems: the lengths contradict each other.
  Result<Plan> made_from(std::span<const Length> lengths) const;

 private:
  struct Anchors;
  TapedPlan(std::shared_ptr<const Document> document, Plan plan, std::vector<TapeMeasure> measures);

  std::shared_ptr<const Document> document_;
  Plan plan_;
  std::vector<TapeMeasure> measures_;
  std::shared_ptr<const Anchors> anchors_;
};

}  // namespace berthwright

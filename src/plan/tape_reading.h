#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/plan/tape.h>

#include "plan/reading.h"

namespace berthwright {

/// What a plan says of its measures at one name.
struct TapeEntry {
  std::string name;
  Origin origin;  ///< of the name
  std::optional<Length> tolerance;
  std::optional<TapeState> state;
  std::optional<Length> as_built;
  Origin tolerance_origin;
};

/// The part "tape" of a plan, its usual values standing in for what it does not say.
struct TapeWishes {
  std::vector<Length> tolerances;  ///< in the order of `TapeKind`
  Length checked;                  ///< of a measure that was taken again
  TapeState state = TapeState::planned;
  std::vector<TapeEntry> entries;
};
TapeWishes read_tape(const Node* node, Reading& reading);

/// A length of a plan file under the name of its thing.
struct NamedLength {
  std::string name;
  std::string pointer;
  TapeKind kind = TapeKind::fixture;
  Length length;
  Origin origin;
};
/// Of a length at `pointer`; nothing: it is no measure of a tape.
std::optional<NamedLength> named_length(const Node& root, const SpelledMeasure& measure);

/// The pointer of the length that this one cannot differ from; its own: it stands for itself. `lengths` are
/// all of the plan.
std::string same_measure_as(const Node& root, std::span<const SpelledMeasure> lengths,
                            const SpelledMeasure& one);

/// Every measure of the plan. Faults are names that nothing has, tolerances that cannot be, entries that
/// contradict each other.
std::vector<TapeMeasure> taped_measures(const Node& root, std::span<const SpelledMeasure> lengths,
                                        const TapeWishes& wishes, Reading& faults);

/// Every length and weight of the file once, in its order.
std::vector<SpelledMeasure> in_file_order(std::vector<SpelledMeasure> measures);

/// The parts of a plan whose text was read without a fault, with other lengths at some pointers.
Result<PlanParts> read_with(const Node& root, const OtherLengths& other);

}  // namespace berthwright

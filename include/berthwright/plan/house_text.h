#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include <berthwright/exact/measure.h>
#include <berthwright/exact/result.h>

namespace berthwright {

/// The text of a plan file with its fields in the order of the schema and in house spacing. Values stay
/// spelled as they are, lists keep their order, every comment stays with what it belongs to. What is in the
/// house style stays as it is. Problems: those of `read_plan`.
Result<std::string> house_text(std::string_view text);

/// As `house_text`, with these parts of the plan (fields of the whole) in the words of `other`, a plan too.
/// Comments before a part stay; those inside it are the other's.
Result<std::string> with_parts_of(std::string_view text, std::string_view other,
                                  const std::vector<std::string>& parts);

/// A length that the other unit cannot say exactly.
struct KeptLength {
  std::size_t line = 0;
  std::string spelled;
  friend bool operator==(const KeptLength&, const KeptLength&) = default;
};

/// A default that goes with the unit.
struct ChangedDefault {
  std::string pointer;
  std::string before;
  std::string now;
  friend bool operator==(const ChangedDefault&, const ChangedDefault&) = default;
};

/// A plan's text with another unit.
struct UnitText {
  std::string text;
  Unit from = Unit::inch;
  std::size_t lengths = 0;       ///< how many are spelled anew
  std::size_t weights = 0;       ///< bare weights that were given the unit they count in
  std::vector<KeptLength> kept;  ///< in the order of the file; they carry their own unit
  /// What the plan does not say and what another unit changes, such as the paper.
  std::vector<ChangedDefault> defaults;
};
/// The plan with `unit` as its own, every length spelled in it as a bare number where it can say it exactly;
/// each is the same to the tick, and weights are the same. Spaces and comments are not touched. Problems:
/// those of `read_plan`.
Result<UnitText> in_unit(std::string_view text, Unit unit);

}  // namespace berthwright

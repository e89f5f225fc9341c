#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include <berthwright/exact/length.h>
#include <berthwright/exact/result.h>

#include "exact/length_tokens.h"

namespace berthwright {

/// A number as it is written before its unit: exactly numerator / denominator, both below 10^31, unless a
/// flag says that digits were left out.
struct Quantity {
  Int128 numerator = 0;
  Int128 denominator = 1;
  std::size_t column = 0;
  std::size_t fraction_column = 0;  ///< where its fraction begins; 0 where it has none
  std::size_t whole_digits = 0;
  bool decimal = false;
  bool huge = false;    ///< a whole part of more than 12 digits, left out: beyond every length
  bool longer = false;  ///< more than 18 decimals: the number is a little larger than stated
};

/// What every refusal of a length has in common; `found` is the whole text.
Problem length_problem(const char* id, std::size_t column, std::string message, std::string cure);

/// Reads the tokens of a length from the left.
class LengthTokens {
 public:
  explicit LengthTokens(std::vector<LengthToken> tokens) : tokens_(std::move(tokens)) {}
  const LengthToken& next(std::size_t ahead = 0) const;
  LengthToken take();
  bool take_if(LengthSign sign);
  /// "12", "12.5", ".5", "5/8", "⅝", "12 5/8", "12-5/8", "12⅝", "12-⅝", "12 ⅝".
  Result<Quantity> take_quantity();

 private:
  Result<Quantity> take_decimal(Quantity whole);
  Result<Quantity> take_fraction(Quantity whole, const LengthToken& top);
  Result<Quantity> take_after_dash(Quantity whole);

  std::vector<LengthToken> tokens_;
  std::size_t at_ = 0;
};

}  // namespace berthwright

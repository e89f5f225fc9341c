#include "exact/length_quantity.h"

#include <algorithm>
#include <utility>

namespace berthwright {
namespace {

constexpr std::size_t most_whole_digits = 12;
constexpr std::size_t most_fraction_digits = 18;

std::string_view without_leading_zeros(std::string_view digits) {
  return digits.substr(std::min(digits.find_first_not_of('0'), digits.size()));
}

Int128 number(std::string_view digits) {
  Int128 out = 0;
  for (const char digit : digits) out = out * 10 + (digit - '0');
  return out;
}

Quantity whole_number(const LengthToken& token) {
  Quantity out;
  out.column = token.column;
  out.whole_digits = token.text.size();
  const std::string_view digits = without_leading_zeros(token.text);
  out.huge = digits.size() > most_whole_digits;
  if (!out.huge) out.numerator = number(digits);
  return out;
}

Result<Quantity> with_fraction(Quantity whole, std::size_t column, Int128 top, Int128 bottom) {
  if (bottom == 0)
    return length_problem("length.fraction", column, "nothing can be cut into 0 parts",
                          "write the parts below the line, as in 5/8");
  if (whole.whole_digits > 0 && top >= bottom)
    return length_problem("length.fraction", column, "after a whole number the fraction must be below 1",
                          "carry the whole of the fraction: 7 9/8 is 8 1/8");
  whole.numerator = whole.numerator * bottom + top;
  whole.denominator = bottom;
  whole.fraction_column = column;
  return whole;
}

bool begins_fraction(const LengthTokens& tokens, std::size_t ahead) {
  return tokens.next(ahead).sign == LengthSign::vulgar ||
         (tokens.next(ahead).sign == LengthSign::number && tokens.next(ahead + 1).sign == LengthSign::slash);
}

}  // namespace

Problem length_problem(const char* id, std::size_t column, std::string message, std::string cure) {
  return {.id = id,
          .pointer = {},
          .line = 0,
          .column = column,
          .message = std::move(message),
          .found = {},
          .allowed = "a length such as 74 1/2 in, 6' 2 1/2\" or 1892.3 mm",
          .cure = std::move(cure)};
}

const LengthToken& LengthTokens::next(std::size_t ahead) const {
  return tokens_[std::min(at_ + ahead, tokens_.size() - 1)];
}

LengthToken LengthTokens::take() {
  LengthToken token = next();
  if (at_ + 1 < tokens_.size()) ++at_;
  return token;
}

bool LengthTokens::take_if(LengthSign sign) {
  if (next().sign != sign) return false;
  take();
  return true;
}

Result<Quantity> LengthTokens::take_quantity() {
  Quantity whole;
  whole.column = next().column;
  if (next().sign == LengthSign::point) return take_decimal(whole);
  if (begins_fraction(*this, 0)) return take_fraction(whole, take());
  if (next().sign == LengthSign::comma)
    return length_problem("length.comma", whole.column, "a comma cannot stand in a length",
                          "write a decimal point");
  if (next().sign == LengthSign::slash)
    return length_problem("length.fraction", whole.column, "the number above the line is missing",
                          "write a fraction as 5/8");
  if (next().sign != LengthSign::number)
    return length_problem("length.not-a-length", whole.column, "a number is expected here",
                          "begin with a number and give its unit, as in 74 1/2 in");
  whole = whole_number(take());
  if (next().sign == LengthSign::point) return take_decimal(whole);
  if (next().sign == LengthSign::dash) return take_after_dash(whole);
  if (next().sign == LengthSign::blank && begins_fraction(*this, 1)) take();
  if (begins_fraction(*this, 0)) return take_fraction(whole, take());
  return whole;
}

Result<Quantity> LengthTokens::take_decimal(Quantity whole) {
  const std::size_t column = take().column;
  if (next().sign != LengthSign::number)
    return length_problem("length.decimal", column, "digits are expected after the decimal point",
                          "write the decimals, as in 5.25, or leave the point away");
  std::string decimals = take().text;
  if (next().sign == LengthSign::point)
    return length_problem("length.decimal", next().column, "a number has one decimal point",
                          "keep one decimal point and write nothing between thousands");
  if (next().sign == LengthSign::slash)
    return length_problem("length.fraction", next().column, "a fraction is made of whole numbers",
                          "write either a decimal or a fraction");
  decimals.erase(decimals.find_last_not_of('0') + 1);
  whole.longer = decimals.size() > most_fraction_digits;
  decimals.resize(std::min(decimals.size(), most_fraction_digits));
  for (std::size_t i = 0; i < decimals.size(); ++i) whole.denominator *= 10;
  whole.numerator = whole.numerator * whole.denominator + number(decimals);
  whole.decimal = true;
  return whole;
}

Result<Quantity> LengthTokens::take_fraction(Quantity whole, const LengthToken& top) {
  if (top.sign == LengthSign::vulgar) return with_fraction(whole, top.column, top.top, top.bottom);
  take();  // the slash
  if (next().sign != LengthSign::number)
    return length_problem("length.fraction", next().column, "the number below the line is missing",
                          "write a fraction as 5/8");
  const LengthToken bottom = take();
  const std::string_view above = without_leading_zeros(top.text);
  const std::string_view below = without_leading_zeros(bottom.text);
  if (next().sign == LengthSign::slash || next().sign == LengthSign::point)
    return length_problem("length.fraction", next().column,
                          "a fraction is two whole numbers with one line between", "write a fraction as 5/8");
  if (std::max(above.size(), below.size()) > most_fraction_digits)
    return length_problem("length.fraction", top.column, "the fraction has too many digits",
                          "write a fraction as 5/8");
  if (below.empty()) return with_fraction(whole, bottom.column, number(above), 0);
  return with_fraction(whole, top.column, number(above), number(below));
}

Result<Quantity> LengthTokens::take_after_dash(Quantity whole) {
  const std::size_t column = take().column;
  if (next().sign == LengthSign::blank)
    return length_problem("length.dash", column, "the dash before a fraction stands without spaces",
                          "write 1-1/2 or 1 1/2");
  if (!begins_fraction(*this, 0))
    return length_problem("length.fraction", next().column, "a fraction is expected after the dash",
                          "write it as 74-1/2, or leave the dash away");
  return take_fraction(whole, take());
}

}  // namespace berthwright

#include <berthwright/exact/measure.h>

#include <cstdint>
#include <optional>
#include <stdexcept>
#include <utility>

#include "exact/code_points.h"
#include "exact/length_quantity.h"
#include "exact/spelling.h"

namespace berthwright {
namespace {

constexpr std::int64_t ticks_per_foot = 12 * ticks_per_inch;

struct Measure {
  std::int64_t ticks;
  const char* name;
  bool sixty_fourths;  // a fraction of it is read off a tape
};
constexpr Measure foot{ticks_per_foot, "ft", false};
constexpr Measure inch{ticks_per_inch, "in", true};
constexpr Measure millimetre{ticks_per_mm, "mm", false};
constexpr Measure centimetre{10 * ticks_per_mm, "cm", false};
constexpr Measure metre{1000 * ticks_per_mm, "m", false};

struct Written {
  std::optional<Int128> feet;  // before the quantity, when the quantity is inches
  Quantity quantity;
  Measure measure = inch;
  bool bare = false;  // the unit is the plan's, not written
};

std::optional<Measure> metric_measure(const std::string& word) {
  if (word == "mm" || word == "millimetre" || word == "millimetres" || word == "millimeter" ||
      word == "millimeters")
    return millimetre;
  if (word == "cm" || word == "centimetre" || word == "centimetres" || word == "centimeter" ||
      word == "centimeters")
    return centimetre;
  if (word == "m" || word == "metre" || word == "metres" || word == "meter" || word == "meters") return metre;
  return std::nullopt;
}

std::string spelled(Int128 ticks, const Written& as) {
  std::string text;
  if (as.feet) {
    text = std::to_string(static_cast<std::int64_t>(ticks / ticks_per_foot)) + " ft ";
    ticks %= ticks_per_foot;
  }
  if (as.measure.sixty_fourths && as.quantity.fraction_column != 0)
    return text + mixed_text(ticks / (as.measure.ticks / 64), 64) + " in";
  return text + decimal_text(ticks, as.measure.ticks) + " " + as.measure.name;
}

// What may not follow a length, or a quantity where `unit_known` is false.
Problem unexpected(const LengthToken& token, bool unit_known) {
  switch (token.sign) {
    case LengthSign::comma:
      return length_problem("length.comma", token.column, "a comma cannot stand in a length",
                            "write a decimal point, and nothing between thousands or after feet");
    case LengthSign::word:
      if (token.text == "x" || token.text == "by")
        return length_problem("length.size", token.column, "this is a size, not a length",
                              "give each side as a length of its own");
      if (unit_known) break;
      return length_problem("length.unit", token.column, "this unit is not known",
                            token.text == "M" ? "write m for metres" : "use in, ft, mm, cm or m");
    case LengthSign::dash:
      if (unit_known) break;
      return length_problem("length.dash", token.column, "the dash before a fraction stands without spaces",
                            "write 1-1/2 or 1 1/2");
    case LengthSign::slash:
      return length_problem("length.fraction", token.column,
                            "a fraction is two whole numbers with one line between",
                            "write a fraction as 5/8");
    case LengthSign::number:
    case LengthSign::vulgar:
    case LengthSign::point:
      if (unit_known) break;
      return length_problem("length.two-numbers", token.column, "two numbers stand where one is expected",
                            "write nothing between thousands, and a fraction as 74 1/2");
    case LengthSign::foot:
    case LengthSign::inch:
    case LengthSign::blank:
    case LengthSign::other:
    case LengthSign::end:
      break;
  }
  if (unit_known)
    return length_problem("length.trailing", token.column, "nothing may follow the length",
                          "remove what follows it");
  return length_problem("length.not-a-length", token.column, "this character cannot stand in a length",
                        "use digits, a unit, and a fraction as in 74 1/2 in");
}

bool begins_quantity(const LengthToken& token) {
  return token.sign == LengthSign::number || token.sign == LengthSign::vulgar ||
         token.sign == LengthSign::point;
}

Result<Written> take_inches_after(LengthTokens& tokens, const Quantity& feet) {
  if (tokens.take_if(LengthSign::dash)) tokens.take_if(LengthSign::blank);
  Result<Quantity> inches = tokens.take_quantity();
  if (!inches) return inches.problems();
  const std::size_t column = inches->column;
  if (feet.decimal || feet.fraction_column != 0)
    return length_problem("length.feet", feet.column, "feet before inches must be whole",
                          "write the part of a foot as inches");
  Written out{.feet = feet.huge ? Int128{0} : feet.numerator, .quantity = *inches};
  out.quantity.huge = out.quantity.huge || feet.huge;
  tokens.take_if(LengthSign::blank);
  if (!tokens.take_if(LengthSign::inch) && tokens.next().sign != LengthSign::end) {
    if (tokens.next().sign == LengthSign::foot || metric_measure(tokens.next().text))
      return length_problem("length.unit", tokens.next().column, "only inches may follow feet",
                            "write the whole length in one unit, or as 6 ft 2 1/2 in");
    return unexpected(tokens.next(), false);
  }
  // Three digits are a number of thousands (1'010) rather than inches, whatever their value.
  if (inches->huge || inches->numerator >= 12 * inches->denominator || inches->whole_digits > 2)
    return length_problem("length.inches", column, "the inches after feet must be below 12",
                          "carry twelve inches into one foot more, or write the whole length in inches");
  return out;
}

Result<Written> take_length(LengthTokens& tokens, Unit bare) {
  Result<Quantity> quantity = tokens.take_quantity();
  if (!quantity) return quantity.problems();
  Written out{.feet = std::nullopt, .quantity = *quantity};
  tokens.take_if(LengthSign::blank);
  const LengthToken unit = tokens.next();
  if (unit.sign == LengthSign::foot) {
    tokens.take();
    tokens.take_if(LengthSign::blank);
    if (tokens.next().sign != LengthSign::end) {
      if (!begins_quantity(tokens.next()) && tokens.next().sign != LengthSign::dash)
        return unexpected(tokens.next(), true);
      return take_inches_after(tokens, *quantity);
    }
    out.measure = foot;
  } else if (unit.sign == LengthSign::inch) {
    tokens.take();
  } else if (const auto measure = metric_measure(unit.text); measure) {
    tokens.take();
    out.measure = *measure;
  } else if (unit.sign != LengthSign::end) {
    return unexpected(unit, false);
  } else {
    if (bare == Unit::millimetre && quantity->fraction_column != 0)
      return length_problem("length.fraction-needs-unit", quantity->fraction_column,
                            "a fraction without a unit could mean inches or millimetres",
                            "write \"in\" after it, or a decimal");
    out.measure = bare == Unit::millimetre ? millimetre : inch;
    out.bare = true;
  }
  return out;
}

Problem off_lattice(const Written& written, Int128 numerator, bool negative) {
  const bool fraction = written.measure.sixty_fourths && written.quantity.fraction_column != 0;
  const Int128 step = fraction ? written.measure.ticks / 64 : decimal_step(written.measure.ticks);
  const Int128 below = numerator / written.quantity.denominator / step * step;
  const std::string minus = negative ? "-" : "";
  std::string cure = "write " + minus + spelled(below, written);
  if (below + step <= farthest.ticks()) cure += " or " + minus + spelled(below + step, written);
  return length_problem("length.off-lattice", written.quantity.column,
                        "this length falls between the marks that a plan can hold", std::move(cure));
}

Result<Length> value(const Written& written, bool negative) {
  const Quantity& quantity = written.quantity;
  // The whole part is below 10^12 and the denominator at most 10^18, so no product here reaches 10^38.
  const Int128 numerator = written.feet.value_or(0) * ticks_per_foot * quantity.denominator +
                           quantity.numerator * written.measure.ticks;
  const Int128 most = quantity.denominator * farthest.ticks();
  if (quantity.huge || numerator > most || (numerator == most && quantity.longer)) {
    const bool bare_inches = written.bare && written.measure.sixty_fourths;
    return length_problem(
        "length.too-long", quantity.column, "no length of a plan is above 25 m (82' 0 1/4\")",
        bare_inches ? "write mm after it if millimetres are meant" : "check the number and its unit");
  }
  if (quantity.longer || numerator % quantity.denominator != 0)
    return off_lattice(written, numerator, negative);
  const Length length = Length::from_ticks(static_cast<std::int64_t>(numerator / quantity.denominator));
  return negative ? -length : length;
}

Result<Length> read(std::string_view text, Unit bare, bool minus_allowed) {
  const CodePoints characters = code_points(text);
  if (characters.broken)
    return length_problem("length.encoding", *characters.broken + 1, "the text is not UTF-8",
                          "save the text as UTF-8");
  LengthTokens tokens(length_tokens(characters.text));
  tokens.take_if(LengthSign::blank);
  if (tokens.next().sign == LengthSign::end)
    return length_problem("length.empty", 1, "no length is written here",
                          "write a number and its unit, as in 74 1/2 in");
  const std::size_t sign_column = tokens.next().column;
  const bool negative = tokens.take_if(LengthSign::dash);
  if (negative) tokens.take_if(LengthSign::blank);
  if (negative && !minus_allowed && begins_quantity(tokens.next()))
    return length_problem("length.negative", sign_column, "a length cannot be negative",
                          "leave the minus away");
  const Result<Written> written = take_length(tokens, bare);
  if (!written) return written.problems();
  tokens.take_if(LengthSign::blank);
  if (tokens.next().sign != LengthSign::end) return unexpected(tokens.next(), true);
  return value(*written, negative);
}

// The text is known only here; every refusal names it.
Result<Length> naming(std::string_view text, const Result<Length>& result) {
  if (result) return result;
  Problems problems = result.problems();
  for (Problem& problem : problems) problem.found = printable(text);
  return problems;
}

}  // namespace

Result<Length> read_length(std::string_view text, Unit bare) { return naming(text, read(text, bare, false)); }

Result<Length> read_offset(std::string_view text, Unit bare) { return naming(text, read(text, bare, true)); }

}  // namespace berthwright

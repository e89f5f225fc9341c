#include <berthwright/exact/measure.h>

#include <cstdint>
#include <stdexcept>

#include "exact/spelling.h"

namespace berthwright {
namespace {

constexpr std::int64_t finest_parts = 64;

std::string digits(Int128 number) { return std::to_string(static_cast<std::uint64_t>(number)); }

std::string with_sign(bool negative, const std::string& magnitude) {
  return negative ? "-" + magnitude : magnitude;
}

std::string fixed_decimals(Int128 count, std::size_t decimals) {
  std::string text = digits(count < 0 ? -count : count);
  if (text.size() <= decimals) text.insert(0, decimals + 1 - text.size(), '0');
  text.insert(text.size() - decimals, ".");
  return with_sign(count < 0, text);
}

std::string pair(Unit own, const std::string& in_inches, const std::string& in_millimetres) {
  switch (own) {
    case Unit::inch:
      return in_inches + " (" + in_millimetres + ")";
    case Unit::millimetre:
      return in_millimetres + " (" + in_inches + ")";
  }
  throw std::logic_error("Unit out of range");
}

}  // namespace

std::string decimal_text(Int128 ticks, std::int64_t unit_ticks) {
  std::string text = digits(ticks / unit_ticks);
  Int128 rest = ticks % unit_ticks;
  if (rest == 0) return text;
  for (text += '.'; rest != 0; rest %= unit_ticks) {
    rest *= 10;
    text += static_cast<char>('0' + static_cast<int>(rest / unit_ticks));
  }
  return text;
}

std::string mixed_text(Int128 count, std::int64_t parts) {
  const Int128 whole = count / parts;
  std::int64_t top = static_cast<std::int64_t>(count % parts);
  if (top == 0) return digits(whole);
  while (top % 2 == 0) top /= 2, parts /= 2;
  const std::string fraction = digits(top) + "/" + digits(parts);
  return whole == 0 ? fraction : digits(whole) + " " + fraction;
}

std::string imperial(Length length, LengthStyle style) {
  if (style.parts < 1 || style.parts > finest_parts || (style.parts & (style.parts - 1)) != 0)
    throw std::invalid_argument("an inch is cut into a power of two up to 64");
  const Int128 signed_count = rounded(length.ticks(), ticks_per_inch / style.parts, style.rounding);
  const Int128 count = signed_count < 0 ? -signed_count : signed_count;
  const Int128 foot = Int128{12} * style.parts;
  std::string text;
  if (style.feet && count >= foot) {
    text = digits(count / foot) + "' ";
    // A fraction alone after the feet is easily missed: 82' 0 1/4".
    if (count % foot != 0 && count % foot < style.parts) text += "0 ";
  }
  text += mixed_text(style.feet ? count % foot : count, style.parts) + "\"";
  return with_sign(signed_count < 0, text);
}

std::string metric(Length length, Rounding rounding) {
  constexpr std::int64_t tenth = ticks_per_mm / 10;
  const Int128 count = rounded(length.ticks(), tenth, rounding);
  return with_sign(count < 0, decimal_text(count < 0 ? -count : count, 10)) + " mm";
}

std::string both(Length length, Unit own, LengthStyle style) {
  return pair(own, imperial(length, style), metric(length, style.rounding));
}

std::string exact_text(Length length, Unit unit) {
  const bool negative = length.ticks() < 0;
  const Int128 ticks = negative ? -Int128{length.ticks()} : Int128{length.ticks()};
  if (unit == Unit::inch) {
    constexpr std::int64_t part = ticks_per_inch / finest_parts;
    if (ticks % part == 0) return with_sign(negative, mixed_text(ticks / part, finest_parts) + " in");
    if (ticks % decimal_step(ticks_per_inch) == 0)
      return with_sign(negative, decimal_text(ticks, ticks_per_inch) + " in");
  }
  return with_sign(negative, decimal_text(ticks, ticks_per_mm) + " mm");
}

std::string area_text(Area area, Unit own) {
  constexpr Int128 foot = Int128{12} * ticks_per_inch;
  constexpr Int128 metre = Int128{1000} * ticks_per_mm;
  if (area > Area{} && area < Area::rectangle(Length::inches(12), Length::inches(12))) {
    constexpr Int128 centimetre = Int128{10} * ticks_per_mm;
    return pair(own, fixed_decimals(floor_divided(area.doubled() * 1440, 2 * foot * foot), 1) + " sq in",
                fixed_decimals(floor_divided(area.doubled() * 10, 2 * centimetre * centimetre), 1) + " cm²");
  }
  const Int128 tenths = floor_divided(area.doubled() * 10, 2 * foot * foot);
  const Int128 hundredths = floor_divided(area.doubled() * 100, 2 * metre * metre);
  return pair(own, fixed_decimals(tenths, 1) + " sq ft", fixed_decimals(hundredths, 2) + " m²");
}

}  // namespace berthwright

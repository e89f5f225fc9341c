#include <berthwright/view/words.h>

#include <algorithm>

#include <berthwright/exact/measure.h>

namespace berthwright {
namespace {

std::string whole_percent(std::int64_t thousandths, Rounding rounding) {
  const std::int64_t added = rounding == Rounding::up ? 9 : rounding == Rounding::down ? 0 : 5;
  return std::to_string((thousandths + added) / 10) + " %";
}

// "0.060": a sag is less than what the fractions of a tape can say.
std::string thousandths(Length length, Rounding rounding) {
  constexpr std::int64_t step = ticks_per_inch / 1000;
  const std::int64_t added = rounding == Rounding::up ? step - 1 : rounding == Rounding::down ? 0 : step / 2;
  const std::int64_t whole = (length.ticks() + added) / step;
  return std::to_string(whole / 1000) + "." + std::to_string(1000 + whole % 1000).substr(1);
}

// A greater sag is a greater part of the span, so it has the lesser divisor.
std::string part_of(Sag sag, Rounding rounding) {
  const std::int64_t depth = std::max<std::int64_t>(sag.depth.ticks(), 1);
  return std::to_string((sag.span.ticks() + (rounding == Rounding::up ? 0 : depth / 2)) / depth);
}

struct InWords {
  Unit own;
  Rounding rounding;

  std::string operator()(Length length) const { return both(length, own, {.rounding = rounding}); }
  std::string operator()(Area area) const { return area_text(area, own); }
  std::string operator()(const Sides& sides) const {
    const LengthStyle style{.rounding = rounding, .feet = false};
    const std::string inches = imperial(sides.length, style) + " × " + imperial(sides.width, style);
    const std::string mm = metric(sides.length, rounding) + " × " + metric(sides.width, rounding);
    return own == Unit::inch ? inches + " (" + mm + ")" : mm + " (" + inches + ")";
  }
  std::string operator()(const Shares& shares) const {
    return whole_percent(shares.men, rounding) + " of men, " + whole_percent(shares.women, rounding) +
           " of women";
  }
  std::string operator()(Mass mass) const { return mass_text(mass, own, rounding); }
  std::string operator()(Portion portion) const { return whole_percent(portion.thousandths, rounding); }
  std::string operator()(Count count) const { return std::to_string(count.number); }
  std::string operator()(Sag sag) const {
    const std::string inches = thousandths(sag.depth, rounding) + " in";
    const std::string mm = metric(sag.depth, rounding);
    const std::string part = ", 1/" + part_of(sag, rounding) + " of the span";
    return (own == Unit::inch ? inches + " (" + mm + ")" : mm + " (" + inches + ")") + part;
  }
  std::string operator()(Degrees degrees) const { return std::to_string(degrees.number) + "°"; }
};

}  // namespace

std::string quantity_text(const Quantity& quantity, Unit own, Rounding rounding) {
  return std::visit(InWords{own, rounding}, quantity);
}

std::string source_text(const Source& source) {
  switch (source.kind) {
    case Source::Kind::published:
    case Source::Kind::maker:
      return source.text;
    case Source::Kind::common_practice:
      return source.text.empty() ? "common practice, no source"
                                 : source.text + ", common practice, no source";
    case Source::Kind::from_memory:
      return source.text + ", from memory, not re-read";
    case Source::Kind::own_choice:
      return "our own choice";
  }
  throw std::logic_error("Source::Kind out of range");
}

}  // namespace berthwright

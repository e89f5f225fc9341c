#include <berthwright/exact/squared_length.h>

#include <stdexcept>

namespace berthwright {
namespace {

Int128 root(Int128 square) {
  Int128 low = 0;
  Int128 high = Int128{1} << 63;
  while (low < high) {
    const Int128 middle = (low + high + 1) / 2;
    if (middle <= square / middle)
      low = middle;
    else
      high = middle - 1;
  }
  return low;
}

}  // namespace

SquaredLength::SquaredLength(Int128 numerator, Int128 denominator)
    : numerator_(numerator), denominator_(denominator) {
  if (numerator < 0 || denominator <= 0) throw std::invalid_argument("no such squared length");
}

SquaredLength SquaredLength::of(Length length) { return {Int128{length.ticks()} * length.ticks(), 1}; }

SquaredLength SquaredLength::plus_square_of(Length across) const {
  return {numerator_ + Int128{across.ticks()} * across.ticks() * denominator_, denominator_};
}

Length SquaredLength::floor() const {
  return Length::from_ticks(static_cast<std::int64_t>(root(numerator_ / denominator_)));
}

Length SquaredLength::ceiling() const {
  const Length below = floor();
  return of(below) == *this ? below : below + one_tick;
}

// Fractions compare by their continued fractions: products of the parts would not fit 128 bits.
std::strong_ordering operator<=>(const SquaredLength& a, const SquaredLength& b) {
  Int128 an = a.numerator_, ad = a.denominator_, bn = b.numerator_, bd = b.denominator_;
  bool turned = false;
  while (true) {
    const Int128 aq = an / ad;
    const Int128 bq = bn / bd;
    if (aq != bq) return (aq < bq) != turned ? std::strong_ordering::less : std::strong_ordering::greater;
    const Int128 ar = an % ad;
    const Int128 br = bn % bd;
    if (ar == 0 || br == 0) {
      if (ar == br) return std::strong_ordering::equal;
      return (ar == 0) != turned ? std::strong_ordering::less : std::strong_ordering::greater;
    }
    an = ad, ad = ar, bn = bd, bd = br;
    turned = !turned;
  }
}

}  // namespace berthwright

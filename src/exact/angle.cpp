#include <berthwright/exact/angle.h>

#include <limits>
#include <numeric>
#include <stdexcept>
#include <utility>

#include <berthwright/exact/length.h>

namespace berthwright {
namespace {

constexpr std::int64_t quarter = 90'000'000;  // microdegrees
constexpr int scale = 60;                     // bits behind the point of a sine or cosine
constexpr Int128 one = Int128{1} << scale;
constexpr Int128 pi = 3'622'009'729'038'561'421;  // pi * 2^60, rounded

struct Direction {
  Int128 x;
  Int128 y;
};

// The point of the unit circle at `halves` half microdegrees, at most 45 degrees, by its power series: the
// terms left out are below 2^-60, and each term adds at most 2^-60 of rounding.
Direction direction(std::int64_t halves) {
  const Int128 angle = pi * halves / (Int128{4} * quarter);
  Int128 term = one;
  Direction sum{0, 0};
  for (int power = 0; term != 0; ++power) {
    Int128& part = power % 2 == 0 ? sum.x : sum.y;
    part += power % 4 < 2 ? term : -term;
    term = (term * angle >> scale) / (power + 1);
  }
  return sum;
}

// p / q, the tangent of half an angle: its cosine, sine and unit are q^2 - p^2, 2pq and q^2 + p^2.
struct HalfTangent {
  Int128 p;
  Int128 q;
};

enum class Side { below, within, above };

// One over the tangent of the angle that a turn may be off, a little below 1e-8 of a degree.
constexpr Int128 slack = 5'800'000'000;

Side side(HalfTangent t, Direction wanted) {
  const Int128 cosine = t.q * t.q - t.p * t.p;
  const Int128 sine = 2 * t.p * t.q;
  const Int128 across = cosine * wanted.y - sine * wanted.x;
  const Int128 along = cosine * wanted.x + sine * wanted.y;
  if ((across < 0 ? -across : across) <= along / slack) return Side::within;
  return across > 0 ? Side::below : Side::above;
}

HalfTangent stepped(HalfTangent from, HalfTangent by, Int128 times) {
  return {from.p + by.p * times, from.q + by.q * times};
}

// The least number of steps after which `from` is no longer on its own side.
Int128 steps_to_leave(HalfTangent from, HalfTangent by, Direction wanted, Side own) {
  Int128 high = 1;
  while (side(stepped(from, by, high), wanted) == own) high *= 2;
  Int128 low = high / 2;
  while (high - low > 1) {
    const Int128 middle = (low + high) / 2;
    (side(stepped(from, by, middle), wanted) == own ? low : high) = middle;
  }
  return high;
}

// The simplest half tangent within the slack, found down the Stern-Brocot tree; 0 <= y <= x < 2^61.
// Its q stays below 2^32: a gap without a simpler fraction is narrower than the slack leaves open.
HalfTangent simplest(Direction wanted) {
  HalfTangent low{0, 1};
  HalfTangent high{1, 1};
  if (side(low, wanted) == Side::within) return low;
  while (true) {
    const Int128 up = steps_to_leave(low, high, wanted, Side::below);
    if (side(stepped(low, high, up), wanted) == Side::within) return stepped(low, high, up);
    low = stepped(low, high, up - 1);
    const Int128 down = steps_to_leave(high, low, wanted, Side::above);
    if (side(stepped(high, low, down), wanted) == Side::within) return stepped(high, low, down);
    high = stepped(high, low, down - 1);
  }
}

struct CirclePoint {
  std::int64_t cosine;
  std::int64_t sine;
  std::int64_t unit;
};

// The rational point of the first half quadrant that lies in the direction wanted.
CirclePoint circle_point(Direction wanted) {
  HalfTangent t = simplest(wanted);
  // Beside the zero the unit would pass 63 bits; of two odd numbers it can be halved.
  if (t.p == 1 && t.q >= Int128{1} << 31 && t.q % 2 == 0) ++t.q;
  const Int128 common = t.p % 2 != 0 && t.q % 2 != 0 ? 2 : 1;
  const Int128 unit = (t.q * t.q + t.p * t.p) / common;
  if (unit > std::numeric_limits<std::int64_t>::max()) throw std::logic_error("a turn does not fit 64 bits");
  return {static_cast<std::int64_t>((t.q * t.q - t.p * t.p) / common),
          static_cast<std::int64_t>(2 * t.p * t.q / common), static_cast<std::int64_t>(unit)};
}

// `first` lies in the first half quadrant; the other seven are its mirror images.
CirclePoint mirrored(CirclePoint first, bool steep, bool leftward, bool downward) {
  if (steep) std::swap(first.cosine, first.sine);
  if (leftward) first.cosine = -first.cosine;
  if (downward) first.sine = -first.sine;
  return first;
}

}  // namespace

Turn Turn::toward(std::int64_t x, std::int64_t y) {
  constexpr std::int64_t most = std::int64_t{1} << 31;
  if ((x == 0 && y == 0) || x < -most || x > most || y < -most || y > most)
    throw std::invalid_argument("no direction of a turn");
  const std::int64_t common = std::gcd(x, y);
  const std::int64_t across = (x < 0 ? -x : x) / common;
  const std::int64_t up = (y < 0 ? -y : y) / common;
  const bool steep = up > across;
  const CirclePoint first = circle_point(steep ? Direction{up, across} : Direction{across, up});
  const CirclePoint point = mirrored(first, steep, x < 0, y < 0);
  return Turn(point.cosine, point.sine, point.unit);
}

Turn Turn::degrees(std::int64_t microdegrees) {
  std::int64_t angle = (microdegrees % (4 * quarter) + 4 * quarter) % (4 * quarter);
  const bool downward = angle > 2 * quarter;
  if (downward) angle = 4 * quarter - angle;
  const bool leftward = angle > quarter;
  if (leftward) angle = 2 * quarter - angle;
  const bool steep = 2 * angle > quarter;
  if (steep) angle = quarter - angle;
  const CirclePoint point = mirrored(circle_point(direction(2 * angle)), steep, leftward, downward);
  return Turn(point.cosine, point.sine, point.unit);
}

std::int64_t Turn::microdegrees() const {
  const Int128 across = cosine_ < 0 ? -cosine_ : cosine_;
  const Int128 up = sine_ < 0 ? -sine_ : sine_;
  const bool steep = up > across;
  // The first whole microdegree whose upper half-way point is beyond the angle; no rational point of the
  // circle but the quarters lies on a rational angle, so there are no ties.
  std::int64_t low = 0;
  std::int64_t high = quarter / 2;
  while (low < high) {
    const std::int64_t middle = (low + high) / 2;
    const Direction upper = direction(2 * middle + 1);
    if ((steep ? up : across) * upper.y > (steep ? across : up) * upper.x)
      high = middle;
    else
      low = middle + 1;
  }
  std::int64_t angle = steep ? quarter - low : low;
  if (cosine_ < 0) angle = 2 * quarter - angle;
  if (sine_ < 0) angle = 4 * quarter - angle;
  return angle % (4 * quarter);
}

}  // namespace berthwright

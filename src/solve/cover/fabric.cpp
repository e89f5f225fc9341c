#include <berthwright/solve/cover/fabric.h>

#include <array>
#include <stdexcept>

#include <berthwright/exact/squared_length.h>

namespace berthwright {
namespace {

Int128 divided_up(Int128 a, Int128 b) { return (a + b - 1) / b; }
Length from(Int128 ticks) { return Length::from_ticks(static_cast<std::int64_t>(ticks)); }
Int128 product(Length a, Length b) { return Int128{a.ticks()} * b.ticks(); }

struct RepeatClass {
  Length up_to;
  int percent;
};
// Where the classes of the two copies differ, the one that asks for more.
constexpr std::array<RepeatClass, 7> repeat_classes{
    {{Length{}, 0}, {14_in, 10}, {19_in, 15}, {27_in, 20}, {36_in, 25}, {43_in, 30}, {54_in, 35}}};

}  // namespace

RollStrips roll_strips(Length length, Length width, Length fabric_width, Length lost) {
  if (fabric_width <= lost) throw std::invalid_argument("a strip is longer than its join");
  // n strips give n x fabric width less n - 1 joins.
  const Int128 count = divided_up((length - lost).ticks(), (fabric_width - lost).ticks());
  const std::int64_t least = length > Length{} && count < 1 ? 1 : static_cast<std::int64_t>(count);
  return {least, width * least};
}

Length bias_from_square(Length side, Length width) { return from(product(side, side) / width.ticks()); }

Length square_for_bias(Length length, Length width) {
  const Length side = SquaredLength(product(length, width), 1).ceiling();
  return 1_in * static_cast<std::int64_t>(divided_up(side.ticks(), ticks_per_inch));
}

Length bias_of_roll(Length length, Length width, Length fabric_width) {
  return from(divided_up(product(length, width), fabric_width.ticks()));
}

Length whole_repeats(Length cut, Length repeat) {
  if (repeat <= Length{}) throw std::invalid_argument("a repeat has a length");
  return repeat * static_cast<std::int64_t>(divided_up(cut.ticks(), repeat.ticks()));
}

std::optional<int> repeat_percent(Length sum) {
  const Length whole = 1_in * static_cast<std::int64_t>(divided_up(sum.ticks(), ticks_per_inch));
  for (const RepeatClass& one : repeat_classes)
    if (whole <= one.up_to) return one.percent;
  return std::nullopt;
}

std::optional<Length> with_repeats(Length plain, Length sum) {
  const std::optional<int> percent = repeat_percent(sum);
  if (!percent) return std::nullopt;
  return from(divided_up(Int128{plain.ticks()} * (100 + *percent), 100));
}

const Source& repeat_source() {
  static const Source source{Source::Kind::published, "percentage table of two trade pages", "",
                             "throwmeapillow.com/blog; carrscorner.com/repeatadjustment.php"};
  return source;
}

}  // namespace berthwright

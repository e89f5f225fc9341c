#include <berthwright/exact/measure.h>

#include <gtest/gtest.h>

#include <limits>
#include <random>

namespace berthwright {
namespace {

using enum Rounding;

TEST(PrintLength, WritesFeetInchesAndReducedFractions) {
  EXPECT_EQ(imperial(Length::inches(149, 2)), "6' 2 1/2\"");
  EXPECT_EQ(imperial(Length::inches(15, 2)), "7 1/2\"");
  EXPECT_EQ(imperial(Length::inches(8, 16)), "1/2\"");
  EXPECT_EQ(imperial(Length{}), "0\"");
  EXPECT_EQ(imperial(1_ft), "1' 0\"");
  EXPECT_EQ(imperial(1_ft + Length::inches(1, 4)), "1' 0 1/4\"");
  EXPECT_EQ(imperial(-Length::inches(149, 2)), "-6' 2 1/2\"");
}

TEST(PrintLength, WritesPlainInchesForBedsAndBoards) {
  const LengthStyle plain{.feet = false};
  EXPECT_EQ(imperial(Length::inches(149, 2), plain), "74 1/2\"");
  EXPECT_EQ(imperial(75_in, plain), "75\"");
  EXPECT_EQ(imperial(Length::inches(1, 32), {.feet = false, .parts = 32}), "1/32\"");
}

TEST(PrintLength, CarriesAFullFractionIntoInchesAndFeet) {
  EXPECT_EQ(imperial(Length::inches(11 * 64 + 63, 64)), "1' 0\"");
  EXPECT_EQ(imperial(Length::inches(11 * 64 + 63, 64), {.rounding = down}), "11 15/16\"");
  EXPECT_EQ(imperial(Length::inches(11 * 64 + 63, 64), {.parts = 64}), "11 63/64\"");
  EXPECT_EQ(imperial(73_in - one_tick, {.feet = false}), "73\"");
}

// 36 in less a tick is below 3 ft: printed "at least" it must not read as 36.
TEST(PrintLength, RoundsDownAndUpInValueOnBothSidesOfZero) {
  EXPECT_EQ(imperial(36_in - one_tick, {.rounding = down, .feet = false}), "35 15/16\"");
  EXPECT_EQ(imperial(36_in + one_tick, {.rounding = up, .feet = false}), "36 1/16\"");
  EXPECT_EQ(imperial(-(36_in - one_tick), {.rounding = down, .feet = false}), "-36\"");
  EXPECT_EQ(imperial(-(36_in - one_tick), {.rounding = up, .feet = false}), "-35 15/16\"");
  EXPECT_EQ(imperial(-one_tick, {.rounding = up}), "0\"");
  EXPECT_EQ(imperial(-one_tick, {.rounding = nearest}), "0\"");
  EXPECT_EQ(metric(Length::millimetres(91439, 100), down), "914.3 mm");
  EXPECT_EQ(metric(Length::millimetres(91431, 100), up), "914.4 mm");
  EXPECT_EQ(metric(-Length::millimetres(91439, 100), down), "-914.4 mm");
  EXPECT_EQ(metric(-one_tick, up), "0 mm");
}

TEST(PrintLength, TakesAHalfAwayFromZero) {
  EXPECT_EQ(imperial(Length::inches(1, 32)), "1/16\"");
  EXPECT_EQ(imperial(-Length::inches(1, 32)), "-1/16\"");
  EXPECT_EQ(imperial(Length::inches(1, 32) - one_tick), "0\"");
  EXPECT_EQ(metric(Length::millimetres(5, 100)), "0.1 mm");
  EXPECT_EQ(metric(-Length::millimetres(5, 100)), "-0.1 mm");
}

TEST(PrintLength, WritesMillimetresInTenthsWithoutATrailingZero) {
  EXPECT_EQ(metric(Length::inches(149, 2)), "1892.3 mm");
  EXPECT_EQ(metric(1905_mm), "1905 mm");
  EXPECT_EQ(metric(10_mm), "10 mm");
  EXPECT_EQ(metric(Length::millimetres(3, 10)), "0.3 mm");
}

TEST(PrintLength, PutsTheOwnUnitFirst) {
  const Length bed = Length::inches(149, 2);
  EXPECT_EQ(both(bed, Unit::inch), "6' 2 1/2\" (1892.3 mm)");
  EXPECT_EQ(both(bed, Unit::millimetre), "1892.3 mm (6' 2 1/2\")");
  EXPECT_EQ(both(36_in - one_tick, Unit::inch, {.rounding = down, .feet = false}), "35 15/16\" (914.3 mm)");
}

TEST(PrintLength, RefusesAnInchCutIntoAnOddNumberOfParts) {
  for (const int parts : {0, -16, 3, 12, 128})
    EXPECT_THROW(imperial(1_in, {.parts = parts}), std::invalid_argument);
}

TEST(PrintLength, IsExactWhereAsked) {
  EXPECT_EQ(exact_text(Length::inches(149, 2), Unit::inch), "74 1/2 in");
  EXPECT_EQ(exact_text(Length::inches(149, 2), Unit::millimetre), "1892.3 mm");
  EXPECT_EQ(exact_text(Length::inches(703, 1000), Unit::inch), "0.703 in");
  EXPECT_EQ(exact_text(Length::from_ticks(127), Unit::inch), "0.000125 in");
  EXPECT_EQ(exact_text(one_tick, Unit::inch), "0.000025 mm");
  EXPECT_EQ(exact_text(-one_tick, Unit::millimetre), "-0.000025 mm");
  EXPECT_EQ(exact_text(-Length::inches(1, 64), Unit::inch), "-1/64 in");
  EXPECT_EQ(exact_text(Length{}, Unit::inch), "0 in");
}

// (2^63 - 1) / 40000 = 230584300921369.395175; the least value is one tick further down.
TEST(PrintLength, PrintsEvenWhatNoPlanCanHold) {
  EXPECT_EQ(exact_text(Length::from_ticks(std::numeric_limits<std::int64_t>::max()), Unit::millimetre),
            "230584300921369.395175 mm");
  EXPECT_EQ(exact_text(Length::from_ticks(std::numeric_limits<std::int64_t>::min()), Unit::millimetre),
            "-230584300921369.3952 mm");
}

// Printed down, up and nearest, every length stays on its promised side, by less than one part.
TEST(PrintLength, StaysOnThePromisedSide) {
  std::mt19937_64 random(15);
  std::uniform_int_distribution<std::int64_t> ticks(-farthest.ticks() / 2, farthest.ticks() / 2);
  for (int i = 0; i < 20'000; ++i) {
    const Length length = Length::from_ticks(ticks(random));
    SCOPED_TRACE(length.ticks());
    for (const int parts : {1, 2, 4, 8, 16, 32, 64}) {
      const auto printed = [&](Rounding rounding) {
        return *read_offset(imperial(length, {.rounding = rounding, .feet = i % 2 == 0, .parts = parts}),
                            Unit::inch);
      };
      const Length part = Length::inches(1, parts);
      ASSERT_TRUE(printed(down) <= length && length < printed(down) + part);
      ASSERT_TRUE(printed(up) >= length && length > printed(up) - part);
      ASSERT_LE(2 * abs(printed(nearest) - length), part);
    }
    const Length tenth = Length::millimetres(1, 10);
    const auto printed = [&](Rounding rounding) {
      return *read_offset(metric(length, rounding), Unit::millimetre);
    };
    ASSERT_TRUE(printed(down) <= length && length < printed(down) + tenth);
    ASSERT_TRUE(printed(up) >= length && length > printed(up) - tenth);
    ASSERT_LE(2 * abs(printed(nearest) - length), tenth);
  }
}

// 38 x 75 in: 2850 / 144 = 19.79 sq ft; 0.9652 m * 1.905 m = 1.8387 m².
TEST(PrintArea, RoundsDownAndPutsTheOwnUnitFirst) {
  EXPECT_EQ(area_text(Area::rectangle(38_in, 75_in), Unit::inch), "19.7 sq ft (1.83 m²)");
  EXPECT_EQ(area_text(Area::rectangle(38_in, 75_in), Unit::millimetre), "1.83 m² (19.7 sq ft)");
  EXPECT_EQ(area_text(Area::rectangle(10_ft, 2_ft), Unit::inch), "20.0 sq ft (1.85 m²)");
  EXPECT_EQ(area_text(Area::rectangle(1000_mm, 1000_mm), Unit::millimetre), "1.00 m² (10.7 sq ft)");
  EXPECT_EQ(area_text(Area::rectangle(1000_mm, 1000_mm - one_tick), Unit::millimetre),
            "0.99 m² (10.7 sq ft)");
  EXPECT_EQ(area_text(Area{}, Unit::inch), "0.0 sq ft (0.00 m²)");
  // 2 1/2 x 3 in: 7.5 sq in; 6.35 cm * 7.62 cm = 48.387 cm².
  EXPECT_EQ(area_text(Area::rectangle(Length::inches(5, 2), 3_in), Unit::inch), "7.5 sq in (48.3 cm²)");
  EXPECT_EQ(area_text(Area::rectangle(12_in, 12_in), Unit::inch), "1.0 sq ft (0.09 m²)");
}

}  // namespace
}  // namespace berthwright

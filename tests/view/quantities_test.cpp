#include <gtest/gtest.h>

#include <random>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

namespace berthwright {
namespace {

// Three feet are 914.4 mm. One tick less must not read as three feet where at least that is asked, one tick
// more not where at most that is.
TEST(Quantities, ALengthIsRoundedTowardSafety) {
  const Quantity less = 36_in - one_tick;
  const Quantity more = 36_in + one_tick;
  EXPECT_EQ(quantity_text(less, Unit::inch, Rounding::down), "2' 11 15/16\" (914.3 mm)");
  EXPECT_EQ(quantity_text(more, Unit::inch, Rounding::up), "3' 0 1/16\" (914.5 mm)");
  EXPECT_EQ(quantity_text(less, Unit::millimetre, Rounding::down), "914.3 mm (2' 11 15/16\")");
  EXPECT_EQ(quantity_text(more, Unit::millimetre, Rounding::up), "914.5 mm (3' 0 1/16\")");
  EXPECT_EQ(quantity_text(Quantity(36_in), Unit::inch, Rounding::down),
            quantity_text(Quantity(36_in), Unit::inch, Rounding::up));
}

// 75 in less a tick by 38 in less a tick: both sides are printed low, in inches alone, as the trade says
// them.
TEST(Quantities, BothSidesAreRoundedTowardSafety) {
  const Quantity sides = Sides{75_in - one_tick, 38_in - one_tick};
  EXPECT_EQ(quantity_text(sides, Unit::inch, Rounding::down),
            "74 15/16\" × 37 15/16\" (1904.9 mm × 965.1 mm)");
  EXPECT_EQ(quantity_text(sides, Unit::millimetre, Rounding::up), "1905 mm × 965.2 mm (75\" × 38\")");
}

// 0.0599 in over 30 in is 1/500.8 of it; never printed as less. A limit of 30 / 240 = 0.125 in stays one.
TEST(Quantities, ASagIsPrintedFinerThanATapeAndAsAPartOfItsSpan) {
  const Quantity sag = Sag{Length::from_ticks(60'858), 30_in};
  EXPECT_EQ(quantity_text(sag, Unit::inch, Rounding::up), "0.060 in (1.6 mm), 1/500 of the span");
  EXPECT_EQ(quantity_text(sag, Unit::millimetre, Rounding::up), "1.6 mm (0.060 in), 1/500 of the span");
  const Quantity limit = Sag{Length::inches(1, 8), 30_in};
  EXPECT_EQ(quantity_text(limit, Unit::inch, Rounding::down), "0.125 in (3.1 mm), 1/240 of the span");
  EXPECT_EQ(quantity_text(Sag{Length::inches(5, 4) - one_tick, 30_in}, Unit::inch, Rounding::down),
            "1.249 in (31.7 mm), 1/24 of the span");
}

// 6 ft by 3 ft 4 in = 72 * 40 in = 20 sq ft = 2880 * 645.16 mm² = 1 858 060.8 mm².
TEST(Quantities, AnAreaIsNeverPrintedTooLarge) {
  const Area area = Area::rectangle(72_in, 40_in);
  EXPECT_EQ(quantity_text(area, Unit::inch, Rounding::down), "20.0 sq ft (1.85 m²)");
  const Area less = Area::rectangle(72_in - one_tick, 40_in);
  EXPECT_EQ(quantity_text(less, Unit::inch, Rounding::down), "19.9 sq ft (1.85 m²)");
}

TEST(Quantities, SharesAreWholePercent) {
  EXPECT_EQ(quantity_text(Shares{994, 1000}, Unit::inch, Rounding::down), "99 % of men, 100 % of women");
  EXPECT_EQ(quantity_text(Shares{0, 45}, Unit::inch, Rounding::nearest), "0 % of men, 5 % of women");
  // A bed that is long enough for 99.7 % is not long enough for all.
  EXPECT_EQ(quantity_text(Shares{994, 997}, Unit::inch, Rounding::down), "99 % of men, 99 % of women");
  EXPECT_EQ(quantity_text(Shares{991, 999}, Unit::millimetre, Rounding::up), "100 % of men, 100 % of women");
}

Length read(const std::string& text) { return read_offset(text, Unit::inch).value(); }

TEST(Quantities, WhatIsPrintedLiesOnTheCarefulSide) {
  std::mt19937 random(11);
  std::uniform_int_distribution<std::int64_t> ticks(0, 200 * ticks_per_inch);
  for (int round = 0; round < 500; ++round) {
    const Length exact = Length::from_ticks(ticks(random));
    SCOPED_TRACE(exact.ticks());
    for (const Unit own : {Unit::inch, Unit::millimetre})
      for (const Rounding rounding : {Rounding::down, Rounding::up}) {
        const std::string text = quantity_text(exact, own, rounding);
        const std::size_t bracket = text.find(" (");
        ASSERT_NE(bracket, std::string::npos) << text;
        for (const std::string& part :
             {text.substr(0, bracket), text.substr(bracket + 2, text.size() - bracket - 3)}) {
          const Length printed = read(part);
          EXPECT_TRUE(rounding == Rounding::down ? printed <= exact : printed >= exact) << text;
          EXPECT_LT(abs(printed - exact), Length::inches(1, 16)) << text;
        }
      }
  }
}

Source source(Source::Kind kind, const char* text) {
  return {.kind = kind, .text = text, .edition = {}, .address = {}};
}

TEST(Sources, SayHowFarTheyCanBeTrusted) {
  using Kind = Source::Kind;
  EXPECT_EQ(source_text(source(Kind::published, "49 CFR 393.76(a)")), "49 CFR 393.76(a)");
  EXPECT_EQ(source_text(source(Kind::common_practice, "")), "common practice, no source");
  EXPECT_EQ(source_text(source(Kind::common_practice, "flush tops")),
            "flush tops, common practice, no source");
  EXPECT_EQ(source_text(source(Kind::from_memory, "46 CFR")), "46 CFR, from memory, not re-read");
  EXPECT_EQ(source_text(source(Kind::own_choice, "half an inch")), "our own choice");
  for (const Rule& rule : all_rules()) EXPECT_FALSE(source_text(rule.source).empty()) << rule.id.text();
}

}  // namespace
}  // namespace berthwright

#include <berthwright/exact/mass.h>

#include <gtest/gtest.h>

#include <random>
#include <string>

namespace berthwright {
namespace {

Mass read(std::string_view text, Unit bare = Unit::inch) { return read_mass(text, bare).value(); }

// The pound is 0.45359237 kg exactly: NIST Special Publication 811 (2008), appendix B.8, from memory.
TEST(Mass, PoundAndGramAreBothWhole) {
  EXPECT_EQ(Mass::pounds(1).units(), 45'359'237);
  EXPECT_EQ(Mass::grams(45'359'237, 100'000), Mass::pounds(1));
  EXPECT_EQ(Mass::pounds(100'000), Mass::grams(45'359'237));
  EXPECT_THROW(Mass::pounds(1, 2), std::invalid_argument);
  EXPECT_THROW(Mass::grams(1, 3), std::invalid_argument);
}

TEST(ReadMass, UnderstandsPoundsKilogramsAndGrams) {
  for (const char* text :
       {"250 lb", "250lb", "250 lbs", "250 pounds", " 250.0 LB ", "250", "000250 pound", "250\u00A0lb"})
    EXPECT_EQ(read(text), Mass::pounds(250)) << text;
  for (const char* text : {"113.4 kg", "113400 g", "113400 grams", "113.4 kilograms", "113.400000000 Kg"})
    EXPECT_EQ(read(text), Mass::grams(113'400)) << text;
  EXPECT_EQ(read(".5 kg"), Mass::grams(500));
  EXPECT_EQ(read("1 kg"), Mass::grams(1000));
  EXPECT_EQ(read("0"), Mass{});
}

TEST(ReadMass, ABareNumberGoesWithTheRuler) {
  EXPECT_EQ(read("12.5", Unit::inch), Mass::from_units(45'359'237 * std::int64_t{25} / 2 + 1));
  EXPECT_EQ(read("12.5", Unit::millimetre), Mass::grams(12'500));
  EXPECT_EQ(read("12.5 kg", Unit::inch), read("12.5", Unit::millimetre));
}

// Half a pound is 22,679,618.5 units: the half goes up. A tenth of a gram is 10,000 units, 5e-9 kg half a
// unit, 4e-9 kg less than half of one.
TEST(ReadMass, RoundsDecimalsOnce) {
  EXPECT_EQ(read("0.5 lb").units(), 22'679'619);
  EXPECT_EQ(read("0.1 g").units(), 10'000);
  EXPECT_EQ(read("0.000000005 kg").units(), 1);
  EXPECT_EQ(read("0.000000004 kg").units(), 0);
  EXPECT_EQ(read("0.000014999 g").units(), 1);
}

TEST(ReadMass, EndsAtTwentyTonnes) {
  EXPECT_EQ(read("20000 kg"), heaviest);
  EXPECT_EQ(read("20000000 g"), heaviest);
  EXPECT_EQ(read_mass("20000.00001 kg", Unit::inch).problems()[0].id, "mass.too-large");
  // 20 t are 44,092.45 lb.
  EXPECT_TRUE(read_mass("44092", Unit::inch));
  EXPECT_FALSE(read_mass("44093", Unit::inch));
}

TEST(ReadMass, RefusesWithAnIdAndTheColumn) {
  struct Row {
    const char* text;
    const char* id;
    std::size_t column;
  };
  for (const Row& row :
       std::initializer_list<Row>{{"", "mass.empty", 1},
                                  {"   ", "mass.empty", 1},
                                  {"-5 kg", "mass.negative", 1},
                                  {" −5", "mass.negative", 2},
                                  {"abc", "mass.not-a-mass", 1},
                                  {"kg", "mass.not-a-mass", 1},
                                  {"5.", "mass.not-a-mass", 3},
                                  {".", "mass.not-a-mass", 2},
                                  {"12,5 kg", "mass.comma", 3},
                                  {"0.0000000001 kg", "mass.decimals", 12},
                                  {"5 oz", "mass.unit", 3},
                                  {"5 1/2 lb", "mass.unit", 3},
                                  {"5 kg kg", "mass.unit", 3},
                                  {"5 in", "mass.unit", 3},
                                  {" 21000 kg", "mass.too-large", 2},
                                  {"99999999999999999999999999999999999999999999 g", "mass.too-large", 1},
                                  {"9\xFF", "mass.encoding", 2}}) {
    SCOPED_TRACE(row.text);
    const Result<Mass> mass = read_mass(row.text, Unit::inch);
    ASSERT_FALSE(mass);
    EXPECT_EQ(mass.problems()[0].id, row.id);
    EXPECT_EQ(mass.problems()[0].column, row.column);
    EXPECT_FALSE(mass.problems()[0].cure.empty());
  }
}

TEST(ReadMass, SurvivesAnyText) {
  std::mt19937_64 random(31);
  const std::string alphabet = "0019.,- kglbs\xC2\xA0\xFF\n";
  int understood = 0;
  for (int i = 0; i < 50'000; ++i) {
    std::string text;
    for (std::uint64_t count = random() % 7; count > 0; --count) text += alphabet[random() % alphabet.size()];
    SCOPED_TRACE(text);
    const Result<Mass> mass = read_mass(text, i % 2 == 0 ? Unit::inch : Unit::millimetre);
    understood += mass ? 1 : 0;
    if (mass) {
      ASSERT_GE(*mass, Mass{});
      ASSERT_LE(*mass, heaviest);
      continue;
    }
    ASSERT_EQ(mass.problems().size(), 1U);
    ASSERT_LE(mass.problems()[0].column, text.size() + 1);
  }
  EXPECT_GT(understood, 1'000);
}

// 59.5 kg / 0.45359237 kg = 131.175 lb; 150 lb = 68.0389 kg.
TEST(MassText, PrintsBothUnitsTheOwnOneFirst) {
  EXPECT_EQ(mass_text(Mass::grams(59'500), Unit::inch), "131 lb (59.5 kg)");
  EXPECT_EQ(mass_text(Mass::grams(59'500), Unit::millimetre), "59.5 kg (131 lb)");
  EXPECT_EQ(mass_text(Mass::grams(59'500), Unit::inch, Rounding::up), "132 lb (59.5 kg)");
  EXPECT_EQ(mass_text(Mass::pounds(150), Unit::inch), "150 lb (68.0 kg)");
  EXPECT_EQ(mass_text(Mass::pounds(150), Unit::inch, Rounding::up), "150 lb (68.1 kg)");
  EXPECT_EQ(mass_text(Mass::pounds(150), Unit::inch, Rounding::down), "150 lb (68.0 kg)");
  EXPECT_EQ(mass_text(Mass{}, Unit::inch), "0 lb (0.0 kg)");
  EXPECT_EQ(mass_text(Mass{} - Mass::grams(50), Unit::millimetre), "-0.1 kg (0 lb)");
}

TEST(MassText, ReadsBackWhatItPrinted) {
  std::mt19937_64 random(32);
  for (int i = 0; i < 20'000; ++i) {
    const Mass whole_pounds = Mass::pounds(static_cast<std::int64_t>(random() % 44'000));
    const Mass tenths = Mass::grams(static_cast<std::int64_t>(random() % 200'000) * 100);
    const std::string pounds = mass_text(whole_pounds, Unit::inch);
    const std::string kilograms = mass_text(tenths, Unit::millimetre);
    SCOPED_TRACE(pounds + ", " + kilograms);
    ASSERT_EQ(read(pounds.substr(0, pounds.find(" ("))), whole_pounds);
    ASSERT_EQ(read(kilograms.substr(0, kilograms.find(" ("))), tenths);
    // What was rounded down reads back as no more, what was rounded up as no less.
    const Mass any = Mass::from_units(static_cast<std::int64_t>(random() % 1'900'000'000'000));
    const auto first = [&](Rounding rounding) {
      const std::string text = mass_text(any, i % 2 == 0 ? Unit::inch : Unit::millimetre, rounding);
      return read(text.substr(0, text.find(" (")));
    };
    ASSERT_LE(first(Rounding::down), any);
    ASSERT_GE(first(Rounding::up), any);
    ASSERT_LT(first(Rounding::up) - first(Rounding::down), Mass::pounds(2));
  }
}

}  // namespace
}  // namespace berthwright

#include <berthwright/exact/measure.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

namespace berthwright {
namespace {

std::string digits(std::int64_t number) { return std::to_string(number); }

// Every n/64 up to 100 in, unreduced and reduced, plain and after feet.
TEST(Measure, ReadsEverySixtyFourthInEverySpelling) {
  for (std::int64_t n = 0; n < 6400; ++n) {
    const Length wanted = Length::from_ticks(n * 15'875);
    const std::string whole = digits(n / 64), top = digits(n % 64);
    const std::string feet = digits(n / 768), inches = digits(n / 64 % 12);
    const std::vector<std::string> spellings{whole + " " + top + "/64",
                                             whole + "-" + top + "/64 in",
                                             digits(n) + "/64\"",
                                             whole + "\u00A0" + top + "⁄64″",
                                             feet + "' " + inches + " " + top + "/64\"",
                                             feet + " ft " + inches + "-" + top + "/64 in",
                                             feet + "′-" + inches + " " + top + "/64″",
                                             imperial(wanted, {.parts = 64}),
                                             imperial(wanted, {.feet = false, .parts = 64})};
    for (const std::string& text : spellings) {
      const Result<Length> length = read_length(text, Unit::inch);
      ASSERT_TRUE(length) << text;
      ASSERT_EQ(*length, wanted) << text;
    }
  }
}

TEST(Measure, ReadsBackExactlyWhatItPrints) {
  std::mt19937_64 random(11);
  std::uniform_int_distribution<std::int64_t> ticks(-farthest.ticks(), farthest.ticks());
  for (int i = 0; i < 100'000; ++i) {
    // Every other value lies on one of the rulers, so that each spelling is met.
    constexpr std::int64_t rulers[] = {1, 127, 1'016, 15'875, 63'500, 40, 4'000, 40'000};
    const std::int64_t ruler = rulers[i % 8];
    const Length length = Length::from_ticks(ticks(random) / ruler * ruler);
    for (const Unit unit : {Unit::inch, Unit::millimetre}) {
      const std::string text = exact_text(length, unit);
      const Result<Length> offset = read_offset(text, unit);
      ASSERT_TRUE(offset) << text;
      ASSERT_EQ(*offset, length) << text;
      const Result<Length> plain = read_length(text, unit);
      ASSERT_EQ(plain.ok(), length >= Length{}) << text;
    }
  }
}

TEST(Measure, TakesADecimalOfAMillimetreExactlyWhenItIsWholeTicks) {
  std::mt19937_64 random(12);
  for (int i = 0; i < 100'000; ++i) {
    const std::int64_t whole = static_cast<std::int64_t>(random() % 20'000);
    std::int64_t millionths = static_cast<std::int64_t>(random() % 1'000'000);
    if (i % 2 == 0) millionths = millionths / 25 * 25;
    const std::string decimals = digits(1'000'000 + millionths).substr(1);
    const std::string text = digits(whole) + "." + decimals;
    const Result<Length> length = read_length(text, Unit::millimetre);
    ASSERT_EQ(length.ok(), millionths % 25 == 0) << text;
    if (length) {
      ASSERT_EQ(length->ticks(), whole * 40'000 + millionths / 25) << text;
    }
  }
}

std::vector<std::string> lengths_named(const std::string& cure) {
  EXPECT_EQ(cure.substr(0, 6), "write ");
  const std::size_t parting = cure.find(" or ");
  if (parting == std::string::npos) return {cure.substr(6)};
  return {cure.substr(6, parting - 6), cure.substr(parting + 4)};
}

TEST(Measure, OffTheLatticeNamesTwoLengthsThatEncloseTheOneMeant) {
  std::mt19937_64 random(13);
  const std::vector<std::pair<std::string, std::int64_t>> units{
      {" in", 1'016'000}, {" ft", 12'192'000}, {" mm", 40'000}, {" cm", 400'000}, {" m", 40'000'000}};
  int seen = 0;
  for (int i = 0; i < 50'000; ++i) {
    const auto& [name, unit] = units[static_cast<std::size_t>(i) % units.size()];
    const std::int64_t bottom = static_cast<std::int64_t>(random() % 100'000) + 1;
    const std::int64_t top = static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(20 * bottom));
    const std::string text = digits(top) + "/" + digits(bottom) + name;
    const Result<Length> length = read_length(text, Unit::millimetre);
    const Int128 product = Int128{top} * unit;
    ASSERT_EQ(length.ok(), product % bottom == 0) << text;
    if (length) continue;
    ++seen;
    ASSERT_EQ(length.problems()[0].id, "length.off-lattice") << text;
    const std::vector<std::string> named = lengths_named(length.problems()[0].cure);
    ASSERT_EQ(named.size(), 2U) << text;
    const Length below = read_length(named[0], Unit::millimetre).value();
    const Length above = read_length(named[1], Unit::millimetre).value();
    ASSERT_LT(Int128{below.ticks()} * bottom, product) << text;
    ASSERT_GT(Int128{above.ticks()} * bottom, product) << text;
    const std::int64_t step = name == " in" ? 15'875 : name == " ft" ? 381 : 1;
    ASSERT_EQ((above - below).ticks(), step) << text;
  }
  EXPECT_GT(seen, 40'000);
}

// A text of pieces that the grammar knows, whole characters that it does not, and stray bytes.
std::string random_text(std::mt19937_64& random) {
  static const std::vector<std::string> pieces{
      "0",    "1",        "2",    "12",     "74", "999999999999999999",
      "1/2",  "/",        "64",   ".",      ",",  "-",
      "–",    "−",        " ",    "\u00A0", "\"", "'",
      "′",    "″",        "''",   "ft",     "in", "mm",
      "cm",   "m",        "M",    "inches", "x",  "½",
      "⅝",    "⅓",        "⁄",    "é",      "\n", "…",
      "\xFF", "\xE2\x80", "\xC3", "+",      "e",  std::string(1, '\0')};
  std::string text;
  for (std::uint64_t count = random() % 9; count > 0; --count) text += pieces[random() % pieces.size()];
  if (random() % 16 == 0) text.insert(random() % (text.size() + 1), 1, static_cast<char>(random() % 256));
  return text;
}

TEST(Measure, SurvivesAnyText) {
  std::mt19937_64 random(14);
  int understood = 0;
  for (int i = 0; i < 200'000; ++i) {
    const std::string text = random_text(random);
    SCOPED_TRACE(testing::Message() << "text " << i << ": " << text);
    const Unit unit = i % 2 == 0 ? Unit::inch : Unit::millimetre;
    const Result<Length> length = read_offset(text, unit);
    if (length) {
      ++understood;
      ASSERT_LE(abs(*length), farthest);
      ASSERT_EQ(*read_offset(exact_text(*length, unit), unit), *length);
      const Result<Length> same = read_length(text, unit);
      if (same) {
        ASSERT_EQ(*same, *length);
      } else {
        ASSERT_EQ(same.problems()[0].id, "length.negative");
      }
      continue;
    }
    ASSERT_EQ(length.problems().size(), 1U);
    const Problem& problem = length.problems()[0];
    ASSERT_EQ(problem.id.substr(0, 7), "length.");
    ASSERT_GE(problem.column, 1U);
    ASSERT_LE(problem.column, text.size() + 1);
    ASSERT_EQ(problem.found.find('\n'), std::string::npos);
    ASSERT_EQ(problem.found.find('\xFF'), std::string::npos);
  }
  EXPECT_GT(understood, 5'000);
}

}  // namespace
}  // namespace berthwright

#include <berthwright/exact/angle.h>

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

#include <berthwright/exact/length.h>

namespace berthwright {
namespace {

constexpr long double promised = 1e-8L;

// The C library serves as the oracle here; its long double is good to 1e-17 of a degree.
long double degrees_between(Turn turn, long double x, long double y) {
  const auto c = static_cast<long double>(turn.cosine());
  const auto s = static_cast<long double>(turn.sine());
  const auto u = static_cast<long double>(turn.unit());
  const long double across = (c / u) * y - (s / u) * x;
  const long double along = (c / u) * x + (s / u) * y;
  return std::fabs(std::atan2(across, along)) * 180 / std::numbers::pi_v<long double>;
}

long double degrees_off(Turn turn, std::int64_t microdegrees) {
  const long double angle =
      static_cast<long double>(microdegrees) / 180'000'000 * std::numbers::pi_v<long double>;
  return degrees_between(turn, std::cos(angle), std::sin(angle));
}

void expect_on_the_circle(Turn turn) {
  const Int128 c = turn.cosine(), s = turn.sine(), u = turn.unit();
  ASSERT_TRUE(c * c + s * s == u * u);
  ASSERT_EQ(std::gcd(std::gcd(turn.cosine(), turn.sine()), turn.unit()), 1);
  ASSERT_GT(turn.unit(), 0);
}

TEST(Turn, QuartersAreExact) {
  for (int count = -5; count < 9; ++count) {
    const Turn turn = Turn::degrees(count * std::int64_t{90'000'000});
    EXPECT_EQ(turn, Turn::quarters(count));
    EXPECT_TRUE(turn.is_quarter());
    EXPECT_EQ(turn.microdegrees(), ((count % 4) + 4) % 4 * std::int64_t{90'000'000});
  }
  EXPECT_EQ(Turn::toward(0, 7), Turn::quarters(1));
  EXPECT_EQ(Turn::toward(-3, 0), Turn::quarters(2));
  EXPECT_EQ(Turn::toward(0, -1), Turn::quarters(3));
  EXPECT_EQ(Turn::toward(5, 0), Turn());
}

// 3-4-5 by hand: half of the angle of (4, 3) has the tangent 3 / (5 + 4) = 1/3.
TEST(Turn, TakesARightTriangleOfWholeSidesExactly) {
  const Turn turn = Turn::toward(4, 3);
  EXPECT_EQ(turn.cosine(), 4);
  EXPECT_EQ(turn.sine(), 3);
  EXPECT_EQ(turn.unit(), 5);
  EXPECT_FALSE(turn.is_quarter());
  EXPECT_EQ(Turn::toward(8, 6), turn);
  EXPECT_EQ(Turn::toward(4 << 20, 3 << 20), turn);
  EXPECT_EQ(turn.microdegrees(), 36'869'898);  // atan(3/4) = 36.8698976 degrees
}

TEST(Turn, KeepsItsPromiseForWholeMicrodegrees) {
  std::mt19937_64 random(21);
  for (std::int64_t i = 0; i < 60'000; ++i) {
    std::int64_t angle = static_cast<std::int64_t>(random() % 360'000'000);
    if (i < 20'000) angle = i;                                       // beside a quarter
    if (i >= 20'000 && i < 25'000) angle = 36'867'398 + i - 20'000;  // about atan(3/4), t = 1/3
    if (i >= 25'000 && i < 30'000) angle = 45'000'000 + i - 27'500;  // about the diagonal
    SCOPED_TRACE(angle);
    const Turn turn = Turn::degrees(angle);
    expect_on_the_circle(turn);
    ASSERT_LE(degrees_off(turn, angle), promised);
    ASSERT_EQ(turn.microdegrees(), angle);
    ASSERT_EQ(turn.is_quarter(), angle % 90'000'000 == 0);
    ASSERT_EQ(Turn::degrees(-angle), turn.reversed());
    ASSERT_EQ(Turn::degrees(angle - 720'000'000), turn);
  }
}

TEST(Turn, KeepsItsPromiseForEveryVector) {
  std::mt19937_64 random(22);
  constexpr std::int64_t most = std::int64_t{1} << 31;
  for (int i = 0; i < 100'000; ++i) {
    std::int64_t x = 1 + static_cast<std::int64_t>(random() % (std::uint64_t{1} << (random() % 32)));
    std::int64_t y = static_cast<std::int64_t>(random() % (std::uint64_t{1} << (random() % 32)));
    if (i % 4 == 0) x = most - static_cast<std::int64_t>(random() % 2000);  // the flattest there are
    if (i % 4 == 1) y = x / 3 + static_cast<std::int64_t>(random() % 3);
    SCOPED_TRACE(testing::Message() << x << ", " << y);
    const Turn turn = Turn::toward(x, y);
    expect_on_the_circle(turn);
    ASSERT_LE(degrees_between(turn, static_cast<long double>(x), static_cast<long double>(y)), promised);
    ASSERT_EQ(Turn::toward(x, -y), turn.reversed());
    const Turn left = Turn::toward(-x, y);
    ASSERT_EQ(left.cosine(), -turn.cosine());
    ASSERT_EQ(left.sine(), turn.sine());
    if (x != y) {
      const Turn steep = Turn::toward(y, x);
      ASSERT_EQ(steep.cosine(), turn.sine());
      ASSERT_EQ(steep.sine(), turn.cosine());
    }
    if (x < most / 7 && y < most / 7) {
      ASSERT_EQ(Turn::toward(7 * x, 7 * y), turn);
    }
  }
}

TEST(Turn, ReachesTheSmallestAngleOfAVector) {
  constexpr std::int64_t most = std::int64_t{1} << 31;
  const Turn turn = Turn::toward(most, 1);
  expect_on_the_circle(turn);
  EXPECT_FALSE(turn.is_quarter());
  EXPECT_LE(degrees_between(turn, static_cast<long double>(most), 1), promised);
  EXPECT_EQ(turn.microdegrees(), 0);
  EXPECT_EQ(turn.reversed().microdegrees(), 0);  // a hair below 360 degrees rounds to a full turn
}

TEST(Turn, RefusesAVectorWithoutDirection) {
  EXPECT_THROW(Turn::toward(0, 0), std::invalid_argument);
  EXPECT_THROW(Turn::toward((std::int64_t{1} << 31) + 1, 0), std::invalid_argument);
}

TEST(ReadTurn, UnderstandsDecimalDegrees) {
  EXPECT_EQ(*read_turn("12.5"), Turn::degrees(12'500'000));
  EXPECT_EQ(*read_turn(" 12.5 deg "), Turn::degrees(12'500'000));
  EXPECT_EQ(*read_turn("12.5°"), Turn::degrees(12'500'000));
  EXPECT_EQ(*read_turn("12.5\u00A0°"), Turn::degrees(12'500'000));
  EXPECT_EQ(*read_turn("-12.5 degrees"), Turn::degrees(-12'500'000));
  EXPECT_EQ(*read_turn("−90"), Turn::quarters(3));
  EXPECT_EQ(*read_turn("+.000001"), Turn::degrees(1));
  EXPECT_EQ(*read_turn("0"), Turn());
  EXPECT_EQ(*read_turn("000000000000450"), Turn::quarters(1));
  EXPECT_EQ(*read_turn("999999999.999999"), Turn::degrees(999'999'999'999'999));
}

TEST(ReadTurn, RefusesWithAnIdAndTheColumn) {
  struct Row {
    const char* text;
    const char* id;
    std::size_t column;
  };
  for (const Row& row : std::initializer_list<Row>{{"", "turn.empty", 1},
                                                   {"  ", "turn.empty", 1},
                                                   {"-", "turn.not-a-turn", 2},
                                                   {"abc", "turn.not-a-turn", 1},
                                                   {"--5", "turn.not-a-turn", 2},
                                                   {"5.", "turn.not-a-turn", 3},
                                                   {".", "turn.not-a-turn", 2},
                                                   {"12,5", "turn.comma", 3},
                                                   {"0.0000001", "turn.decimals", 9},
                                                   {"1234567890", "turn.too-large", 10},
                                                   {"90°x", "turn.unit", 3},
                                                   {"90 rad", "turn.unit", 4},
                                                   {"90 deg deg", "turn.unit", 8},
                                                   {"1.2.3", "turn.unit", 4},
                                                   {"9\xFF", "turn.encoding", 2}}) {
    SCOPED_TRACE(row.text);
    const Result<Turn> turn = read_turn(row.text);
    ASSERT_FALSE(turn);
    EXPECT_EQ(turn.problems()[0].id, row.id);
    EXPECT_EQ(turn.problems()[0].column, row.column);
    EXPECT_FALSE(turn.problems()[0].cure.empty());
  }
}

TEST(ReadTurn, SurvivesAnyText) {
  std::mt19937_64 random(23);
  const std::string alphabet = "0019.,-+ deg\xC2\xB0\xFF\n";
  int understood = 0;
  for (int i = 0; i < 50'000; ++i) {
    std::string text;
    for (std::uint64_t count = random() % 7; count > 0; --count) text += alphabet[random() % alphabet.size()];
    SCOPED_TRACE(text);
    const Result<Turn> turn = read_turn(text);
    understood += turn ? 1 : 0;
    if (turn) continue;
    ASSERT_EQ(turn.problems().size(), 1U);
    ASSERT_LE(turn.problems()[0].column, text.size() + 1);
  }
  EXPECT_GT(understood, 1'000);
}

}  // namespace
}  // namespace berthwright

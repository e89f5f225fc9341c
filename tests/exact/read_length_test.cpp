#include <berthwright/exact/measure.h>

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace berthwright {
namespace {

using enum Unit;

struct Accepted {
  const char* text;
  Unit bare;
  std::int64_t nanometres;
};

// Values by exact fractions: 1 in = 25 400 000 nm (1959 agreement), 1/64 in = 396 875 nm.
const std::vector<Accepted> accepted{
    {"6' 2 1/2\"", millimetre, 1'892'300'000},
    {"6'2-1/2\"", millimetre, 1'892'300'000},
    {"6′ 2½″", millimetre, 1'892'300'000},
    {"6’ 2 1/2”", inch, 1'892'300'000},
    {"6‘ 2 1/2“", inch, 1'892'300'000},
    {"6'-2 1/2\"", inch, 1'892'300'000},
    {"6' - 2 1/2\"", millimetre, 1'892'300'000},
    {"6' – 2‑½″", millimetre, 1'892'300'000},
    {"6'−2 1/2", millimetre, 1'892'300'000},
    {"6'—2 1/2", millimetre, 1'892'300'000},
    {"6 ft 2 1/2 in", inch, 1'892'300'000},
    {"6 ft 2-1/2 in", millimetre, 1'892'300'000},
    {"6 ft. 2 1/2 in.", millimetre, 1'892'300'000},
    {"6ft2.5in", millimetre, 1'892'300'000},
    {"6 feet 2.5 inches", millimetre, 1'892'300'000},
    {"1 foot 1 inch", millimetre, 330'200'000},
    {"6 FT 2 1/2 IN", millimetre, 1'892'300'000},
    {"6'2", millimetre, 1'879'600'000},
    {"6' ½", millimetre, 1'841'500'000},
    {"6.5'", millimetre, 1'981'200'000},
    {"6 1/2'", millimetre, 1'981'200'000},
    {"0' 11 63/64\"", inch, 304'403'125},
    {"6' 95/8\"", inch, 2'130'425'000},
    {"6' 02\"", inch, 1'879'600'000},
    {"74-1/2", inch, 1'892'300'000},
    {"74 1/2", inch, 1'892'300'000},
    {"74½", inch, 1'892'300'000},
    {"74 ½", inch, 1'892'300'000},
    {"74-½", inch, 1'892'300'000},
    {"74.5''", millimetre, 1'892'300'000},
    {"74.5′′", millimetre, 1'892'300'000},
    {"37 5/8 in", millimetre, 955'675'000},
    {"37 5⁄8″", millimetre, 955'675'000},
    {"37 ⅝″", millimetre, 955'675'000},
    {"37\u00A0⅝\u2009in", millimetre, 955'675'000},
    {"\t37\u202F5/8\u00A0\"  ", millimetre, 955'675'000},
    {"9/8\"", millimetre, 28'575'000},
    {"1/64 in", inch, 396'875},
    {"0.001 in", inch, 25'400},
    {"0.703in", millimetre, 17'856'200},
    {".5\"", millimetre, 12'700'000},
    {"1.905 m", inch, 1'905'000'000},
    {"190.5cm", inch, 1'905'000'000},
    {"1905 MM", inch, 1'905'000'000},
    {"1905 mm", inch, 1'905'000'000},
    {"1.905 metres", inch, 1'905'000'000},
    {"190.5 centimeters", inch, 1'905'000'000},
    {"1 millimetre", inch, 1'000'000},
    {"1905", millimetre, 1'905'000'000},
    {"98", inch, 2'489'200'000},
    {"1/2 mm", inch, 500'000},
    {"12 1/2 mm", millimetre, 12'500'000},
    {"0", inch, 0},
    {"0/8 in", inch, 0},
    {"1/127 in", inch, 200'000},
    {"0.000025 mm", inch, 25},
    {"000000000000000000000000000012.50000000000000000000000000000 mm", inch, 12'500'000},
    {"25 m", inch, 25'000'000'000},
    {"25000", millimetre, 25'000'000'000},
    {"82' 0 1/4\"", inch, 24'999'950'000},
    {"3000000000000000/1000000000000000 in", inch, 76'200'000},
};

TEST(ReadLength, UnderstandsTheSpellingsOfAWorkshop) {
  for (const Accepted& row : accepted) {
    SCOPED_TRACE(row.text);
    const Result<Length> length = read_length(row.text, row.bare);
    ASSERT_TRUE(length) << length.problems()[0].id;
    EXPECT_EQ(length->ticks() * 25, row.nanometres);
  }
}

struct Refused {
  const char* text;
  Unit bare;
  const char* id;
  std::size_t column;
};

const std::vector<Refused> refused{
    {"", inch, "length.empty", 1},
    {" \t\u00A0", inch, "length.empty", 1},
    {"1,905", millimetre, "length.comma", 2},
    {"1.905,5 mm", millimetre, "length.comma", 6},
    {",5", millimetre, "length.comma", 1},
    {"6', 2\"", inch, "length.comma", 3},
    {"1 905 mm", millimetre, "length.two-numbers", 3},
    {"74.5 1/2 in", inch, "length.two-numbers", 6},
    {"5.5½\"", inch, "length.two-numbers", 4},
    {"5/8 1/2 in", inch, "length.two-numbers", 5},
    {"1'010 mm", millimetre, "length.unit", 7},
    {"1'010", millimetre, "length.inches", 3},
    {"1e3", millimetre, "length.unit", 2},
    {"0x10", millimetre, "length.size", 2},
    {"NaN", millimetre, "length.not-a-length", 1},
    {"inf", inch, "length.not-a-length", 1},
    {"mm", inch, "length.not-a-length", 1},
    {"\"", inch, "length.not-a-length", 1},
    {"-4", inch, "length.negative", 1},
    {" −4 mm", inch, "length.negative", 2},
    {"-", inch, "length.not-a-length", 2},
    {"--4", inch, "length.not-a-length", 2},
    {"+4", inch, "length.not-a-length", 1},
    {"6' 14\"", inch, "length.inches", 4},
    {"6' 12\"", inch, "length.inches", 4},
    {"6' 96/8\"", inch, "length.inches", 4},
    {"6.5' 2\"", inch, "length.feet", 1},
    {"6 1/2' 2\"", inch, "length.feet", 1},
    {"6' 2 ft", inch, "length.unit", 6},
    {"6' 2 mm", inch, "length.unit", 6},
    {"6' -", inch, "length.not-a-length", 5},
    {"7 9/8\"", inch, "length.fraction", 3},
    {"7 8/8\"", inch, "length.fraction", 3},
    {"1/0", inch, "length.fraction", 3},
    {"7 1/0 in", inch, "length.fraction", 5},
    {"5/8/2", inch, "length.fraction", 4},
    {"5/", inch, "length.fraction", 3},
    {"/8", inch, "length.fraction", 1},
    {"1/2.5 in", inch, "length.fraction", 4},
    {"1.5/2 in", inch, "length.fraction", 4},
    {"74-", inch, "length.fraction", 4},
    {"74-1", inch, "length.fraction", 4},
    {"74-1\"", inch, "length.fraction", 4},
    {"1/9999999999999999999 in", inch, "length.fraction", 1},
    {"1 - 1/2\"", inch, "length.dash", 3},
    {"74- 1/2", inch, "length.dash", 3},
    {"74 -1/2", inch, "length.dash", 4},
    {"74-1/2", millimetre, "length.fraction-needs-unit", 4},
    {"1/2", millimetre, "length.fraction-needs-unit", 1},
    {"74½", millimetre, "length.fraction-needs-unit", 3},
    {"1/3\"", inch, "length.off-lattice", 1},
    {"⅓ in", inch, "length.off-lattice", 1},
    {"1/128\"", inch, "length.off-lattice", 1},
    {"0.000001 mm", inch, "length.off-lattice", 1},
    {"0.1234567890123456789 mm", inch, "length.off-lattice", 1},
    {"3 M", inch, "length.unit", 3},
    {"3 yd", inch, "length.unit", 3},
    {"2000 km", inch, "length.unit", 6},
    {"24 x 36", inch, "length.size", 4},
    {"24×36", inch, "length.size", 3},
    {"6' x 4'", inch, "length.size", 4},
    {"24 in by 36 in", inch, "length.size", 7},
    {"5.", inch, "length.decimal", 2},
    {".", inch, "length.decimal", 1},
    {"1..5 mm", inch, "length.decimal", 2},
    {"1.5.2 mm", inch, "length.decimal", 4},
    {"74 in wide", inch, "length.trailing", 7},
    {"74 mm.", inch, "length.trailing", 6},
    {"2\" 6'", inch, "length.trailing", 4},
    {"6 feet. 2", inch, "length.decimal", 7},
    {"74\n", inch, "length.not-a-length", 3},
    {"７４ mm", inch, "length.not-a-length", 1},
    {"74 €", inch, "length.not-a-length", 4},
    {"½½", inch, "length.two-numbers", 2},
    {"25.000000025 m", inch, "length.too-long", 1},
    {"25.0000000000000000000001 m", inch, "length.too-long", 1},
    {"1000001 m", inch, "length.too-long", 1},
    {"985", inch, "length.too-long", 1},
    {"82' 1/2\"", inch, "length.too-long", 5},
    {"99999999999999999999999999999999999999999 mm", inch, "length.too-long", 1},
    {"99999999999999999999999999999999999999999' 2\"", inch, "length.too-long", 44},
    {"999999999999 999999999999999998/999999999999999999 m", inch, "length.too-long", 1},
    {"9999999999999 999999999999999998/999999999999999999 m", inch, "length.too-long", 1},
    {"33333333333333333 999999999999999998/999999999999999999 m", inch, "length.too-long", 1},
    {"77777777777777777777 999999999999999998/999999999999999999 m", inch, "length.too-long", 1},
    {"555555555555555555555555 999999999999999998/999999999999999999 m", inch, "length.too-long", 1},
};

TEST(ReadLength, RefusesWithAnIdAndTheColumn) {
  for (const Refused& row : refused) {
    SCOPED_TRACE(row.text);
    const Result<Length> length = read_length(row.text, row.bare);
    ASSERT_FALSE(length) << length->ticks();
    ASSERT_EQ(length.problems().size(), 1U);
    const Problem& problem = length.problems()[0];
    EXPECT_EQ(problem.id, row.id);
    EXPECT_EQ(problem.column, row.column);
    EXPECT_FALSE(problem.message.empty());
    EXPECT_FALSE(problem.allowed.empty());
    EXPECT_FALSE(problem.cure.empty());
  }
}

std::string cure(const char* text, Unit bare) { return read_offset(text, bare).problems().at(0).cure; }

TEST(ReadLength, NamesTheNearestLengthsThatCanBeHeld) {
  EXPECT_EQ(cure("1/3 in", inch), "write 21/64 in or 11/32 in");
  EXPECT_EQ(cure("1/128", inch), "write 0 in or 1/64 in");
  // 0.3333 * 8000 = 2666.4: 2666 / 8000 and 2667 / 8000.
  EXPECT_EQ(cure("0.3333\"", inch), "write 0.33325 in or 0.333375 in");
  EXPECT_EQ(cure("12.00001", millimetre), "write 12 mm or 12.000025 mm");
  EXPECT_EQ(cure("-12.00001", millimetre), "write -12 mm or -12.000025 mm");
  EXPECT_EQ(cure("6' 2 1/3\"", inch), "write 6 ft 2 21/64 in or 6 ft 2 11/32 in");
  EXPECT_EQ(cure("6' 11 127/128\"", inch), "write 6 ft 11 63/64 in or 7 ft 0 in");
  EXPECT_EQ(cure("2.49999999999999999999999 m", inch), "write 2.499999975 m or 2.5 m");
  // Above it would pass 25 m.
  EXPECT_EQ(cure("984 2501/10000 in", inch), "write 984 1/4 in");
}

TEST(ReadLength, SaysWhatWasProbablyMeant) {
  EXPECT_EQ(cure("1905", inch), "write mm after it if millimetres are meant");
  EXPECT_EQ(cure("1905 in", inch), "check the number and its unit");
  EXPECT_EQ(cure("3 M", inch), "write m for metres");
}

TEST(ReadLength, ShowsWhatItFoundInOneShortLine) {
  const auto found = [](std::string_view text) { return read_length(text, inch).problems().at(0).found; };
  EXPECT_EQ(found("74 \n\u202E€"), "74 \uFFFD\uFFFD€");
  EXPECT_EQ(found(std::string(39, 'x') + "é"), std::string(39, 'x') + "é");
  EXPECT_EQ(found(std::string(39, 'x') + "é!"), std::string(39, 'x') + "é…");
}

TEST(ReadLength, RefusesWhatIsNoUtf8) {
  for (const std::string text : {"74\xFF", "74\xC0\xAF", "74\xE2\x80", "74\xED\xA0\x80", "74\xF4\x90\x80\x80",
                                 "74\xE0\x80\x80", "74\x80", "74\xF5\x80\x80\x80", "74\xE2(\x80"}) {
    const Result<Length> length = read_length(text, inch);
    ASSERT_FALSE(length);
    EXPECT_EQ(length.problems()[0].id, "length.encoding");
    EXPECT_EQ(length.problems()[0].column, 3U);
    EXPECT_EQ(length.problems()[0].found.substr(0, 5), "74\uFFFD");
  }
  EXPECT_EQ(read_length(std::string_view("74\0", 3), inch).problems().at(0).column, 3U);
}

TEST(ReadOffset, AllowsOneLeadingMinus) {
  EXPECT_EQ(*read_offset("-4", inch), -4_in);
  EXPECT_EQ(*read_offset("− 6' 2 1/2\"", millimetre), -Length::inches(149, 2));
  EXPECT_EQ(*read_offset("6' 2\"", millimetre), 74_in);
  EXPECT_EQ(*read_offset("-0", inch), Length{});
  EXPECT_EQ(*read_offset("-25 m", inch), -farthest);
  EXPECT_EQ(read_offset("--4", inch).problems().at(0).id, "length.not-a-length");
  EXPECT_EQ(read_offset("-25.1 m", inch).problems().at(0).id, "length.too-long");
}

}  // namespace
}  // namespace berthwright

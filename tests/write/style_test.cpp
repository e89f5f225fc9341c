#include "write/style.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace berthwright {
namespace {

constexpr Ink first = Ink::frame;
constexpr Ink last = Ink::caution;

template <class Check>
void for_all_inks(Check check) {
  for (int i = static_cast<int>(first); i <= static_cast<int>(last); ++i) {
    SCOPED_TRACE(i);
    check(static_cast<Ink>(i));
  }
}

double channel(std::string_view colour, std::size_t at) {
  const double c = std::stoi(std::string(colour.substr(at, 2)), nullptr, 16) / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}
// Relative luminance, WCAG 2.2 (formula from memory; blue gives 5.19 against white in the project's facts).
double luminance(std::string_view colour) {
  return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
}
double contrast(std::string_view a, std::string_view b) {
  const double x = luminance(a) + 0.05;
  const double y = luminance(b) + 0.05;
  return x > y ? x / y : y / x;
}

TEST(Style, WideLinesAreThoseThatLetteringKeepsOff) {
  for_all_inks(
      [](Ink ink) { EXPECT_EQ(style_of(ink).width >= PaperLength::micrometres(500), is_heavy(ink)); });
}

TEST(Style, ContrastAgreesWithTheFactsOfThePalette) {
  EXPECT_NEAR(contrast("#0072b2", "#ffffff"), 5.19, 0.01);  // measured in the project's facts
  EXPECT_NEAR(contrast("#d55e00", "#ffffff"), 3.87, 0.01);
}

TEST(Style, LinesAreSeenOnPaper) {
  // 3:1 for graphics (WCAG SC 1.4.11, from memory).
  for_all_inks([](Ink ink) {
    if (style_of(ink).width > PaperLength{}) {
      EXPECT_GE(contrast(style_of(ink).line, "#ffffff"), 3.0);
    }
  });
}

TEST(Style, BlackLetteringIsReadOnEveryFillThatMayLieUnderIt) {
  // 4.5:1 for text (WCAG SC 1.4.3).
  for (const Ink ink :
       {Ink::floor, Ink::fixture, Ink::cushion, Ink::board, Ink::table, Ink::appliance, Ink::gap,
        Ink::balloon, Ink::cut_foam, Ink::cut_box, Ink::cut_board, Ink::seen_behind, Ink::person})
    EXPECT_GE(contrast(style_of(ink).fill, "#000000"), 4.5);
}

TEST(Style, LinesComeInStepsOfTheSeries) {
  for_all_inks([](Ink ink) {
    if (ink == Ink::wall) return;  // a band, not a line
    const std::int64_t width = style_of(ink).width.micrometres();
    EXPECT_TRUE(width == 0 || width == 130 || width == 180 || width == 250 || width == 350 || width == 500 ||
                width == 700)
        << width;
  });
}

}  // namespace
}  // namespace berthwright

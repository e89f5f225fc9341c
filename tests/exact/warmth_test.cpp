#include <berthwright/exact/warmth.h>

#include <gtest/gtest.h>

namespace berthwright {
namespace {

TEST(ReadTemperature, KeepsTenthsOfBothScales) {
  EXPECT_EQ(read_temperature("40 F").value(), Temperature::fahrenheit(40));
  EXPECT_EQ(read_temperature("-40F").value(), read_temperature("-40 °C").value());
  EXPECT_EQ(read_temperature("20.5 c").value().units(), 1845);
  EXPECT_EQ(read_temperature("32.1 °F").value().units(), 5);
  for (const char* text : {"", "40", "F", "40 K", "40.55 F", "61 C", "-100 F", "999999999 F"})
    EXPECT_FALSE(read_temperature(text)) << text;
}

TEST(TemperatureText, TellsBothScalesOwnFirst) {
  EXPECT_EQ(temperature_text(Temperature::fahrenheit(40), Unit::inch), "40 °F (4.4 °C)");
  EXPECT_EQ(temperature_text(Temperature::celsius(-5), Unit::millimetre), "-5 °C (23 °F)");
}

TEST(ReadInsulation, UnderstandsRAndU) {
  EXPECT_EQ(read_insulation("R-4").value(), (Insulation{Insulation::Kind::r_value, 4'000}));
  EXPECT_EQ(read_insulation("r 3.5").value(), (Insulation{Insulation::Kind::r_value, 3'500}));
  EXPECT_EQ(read_insulation("U 1.7").value(), (Insulation{Insulation::Kind::u_value, 1'700}));
  for (const char* text : {"", "4", "R", "R-0", "R-100", "R4 in", "U -1", "R-1.2345"})
    EXPECT_FALSE(read_insulation(text)) << text;
  EXPECT_EQ(insulation_text({Insulation::Kind::r_value, 3'500}), "R-3.5");
  EXPECT_EQ(insulation_text({Insulation::Kind::u_value, 2'000}), "U 2");
}

// 420 sq ft at R-19, 69 °F inside and 33 °F outside: 420 × 36 / 19 = 15,120 / 19 = 796 Btu/h (98905.com;
// facts/standards.md 10.2). 36 °F are 20 K; a Btu/h is 1055.05585262 / 3600 W.
TEST(Conduction, OfAPublishedExample) {
  const Area wall = Area::rectangle(20_ft, 21_ft);
  const std::int64_t micro = conduction(wall, read_insulation("R-19").value());
  const double btu_per_hour = static_cast<double>(micro) * 20e-6 * 3600 / 1055.05585262;
  EXPECT_NEAR(btu_per_hour, 795.79, 0.01);
}

// 10 m² at 1.7 W/m²K: 17 W for each kelvin.
TEST(Conduction, OfAUValueIsAreaTimesIt) {
  const Area wall = Area::rectangle(5'000_mm, 2'000_mm);
  EXPECT_EQ(conduction(wall, read_insulation("U 1.7").value()), 17'000'000);
}

}  // namespace
}  // namespace berthwright

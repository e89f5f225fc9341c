#include <berthwright/exact/volume.h>

#include <gtest/gtest.h>

namespace berthwright {
namespace {

Volume read(std::string_view text, Gallon gallon = Gallon::us) { return read_volume(text, gallon).value(); }

// 231 in³ × (25.4 mm)³ = 3,785,411.784 mm³.
TEST(Volume, TheUsGallonIsItsCubicInches) {
  EXPECT_EQ(us_gallon, Volume::box(Area::rectangle(21_in, 11_in), 1_in));
  EXPECT_EQ(Volume::box(Area::rectangle(1000_mm, 1000_mm), 1_mm), Volume::litres(1));
}

TEST(ReadVolume, UnderstandsBothGallonsAndLitres) {
  for (const char* text : {"12 gal", "12 gallons", "12.0 US gal", " 12 Gal "})
    EXPECT_EQ(read(text).units(), 12 * us_gallon.units()) << text;
  for (const char* text : {"10 imp gal", "10 imperial gallons"})
    EXPECT_EQ(read(text).units(), 10 * imperial_gallon.units()) << text;
  EXPECT_EQ(read("10 gal", Gallon::imperial), read("10 imp gal"));
  for (const char* text : {"45 l", "45L", "45 litres", "45.000 liters"})
    EXPECT_EQ(read(text), Volume::litres(45)) << text;
  EXPECT_EQ(read("0 l"), Volume{});
}

TEST(ReadVolume, RefusesTheRest) {
  for (const char* text : {"", "12", "gal", "12 kg", "1,5 l", "1e2 l", "-3 l", "2001 l", "9999999999 l",
                           "1.2.3 l", "\xff l", "1.1234567 l"})
    EXPECT_FALSE(read_volume(text, Gallon::us)) << text;
  EXPECT_EQ(read_volume("3000 l", Gallon::us).problems().front().id, "volume.too-large");
  EXPECT_EQ(read_volume("-3 l", Gallon::us).problems().front().id, "volume.negative");
}

// 20 US gal = 75.70823568 kg of water at 1 kg/L.
TEST(Water, WeighsAKilogramALitre) {
  const Volume tank = read("20 gal");
  EXPECT_EQ(water(tank, 100), Mass::from_units(7'570'823'568));
  EXPECT_EQ(water(tank, 50), Mass::from_units(3'785'411'784));
  EXPECT_EQ(water(tank, 0), Mass{});
  EXPECT_EQ(volume_text(tank, Unit::inch, Gallon::us), "20 gal (75.7 L)");
  EXPECT_EQ(volume_text(tank, Unit::millimetre, Gallon::imperial), "75.7 L (16.7 gal)");
}

}  // namespace
}  // namespace berthwright

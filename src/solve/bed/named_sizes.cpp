#include <array>

#include <berthwright/solve/bed/sleeping_room.h>

namespace berthwright {

namespace {

Source trade(std::string chart, std::string address) {
  return {Source::Kind::common_practice, std::move(chart), "", std::move(address)};
}

// Charts disagree by an inch on the width of a twin and a full and on 74 or 75 in of length.
const Source us_chart = trade("trade sizes of mattresses, United States", "mattressnerd.com/mattress-sizes");
const Source trailer_chart = trade("trade sizes of trailer mattresses, United States",
                                   "engineerfix.com/what-size-are-camper-and-rv-mattresses");
const Source us_memory{Source::Kind::from_memory, "trade sizes of mattresses, United States", "", ""};
const Source european{Source::Kind::from_memory, "trade sizes of mattresses, continental Europe", "", ""};
const Source british{Source::Kind::from_memory, "trade sizes of mattresses, United Kingdom", "", ""};

}  // namespace

std::span<const NamedSize> named_sizes() {
  static const std::array sizes{
      NamedSize{"Cot", 28_in, 75_in, trailer_chart},
      NamedSize{"Narrow bunk", 30_in, 75_in, trailer_chart},
      NamedSize{"Bunk", 34_in, 75_in, trailer_chart},
      NamedSize{"Twin", 38_in, 75_in, us_chart},
      NamedSize{"Twin XL", 38_in, 80_in, us_chart},
      NamedSize{"Three-quarter", 48_in, 75_in, us_memory},
      NamedSize{"Trailer full", 53_in, 75_in, trailer_chart},
      NamedSize{"Full", 54_in, 75_in, us_chart},
      NamedSize{"Short queen", 60_in, 75_in, trailer_chart},
      NamedSize{"Queen", 60_in, 80_in, us_chart},
      NamedSize{"Short king", 72_in, 75_in, trailer_chart},
      NamedSize{"Trailer king", 72_in, 80_in, trailer_chart},
      NamedSize{"King", 76_in, 80_in, us_chart},
      NamedSize{"California king", 72_in, 84_in, us_chart},
      NamedSize{"80 x 200 cm", 800_mm, 2000_mm, european},
      NamedSize{"90 x 200 cm", 900_mm, 2000_mm, european},
      NamedSize{"100 x 200 cm", 1000_mm, 2000_mm, european},
      NamedSize{"120 x 200 cm", 1200_mm, 2000_mm, european},
      NamedSize{"140 x 200 cm", 1400_mm, 2000_mm, european},
      NamedSize{"160 x 200 cm", 1600_mm, 2000_mm, european},
      NamedSize{"180 x 200 cm", 1800_mm, 2000_mm, european},
      NamedSize{"UK small single", 750_mm, 1900_mm, british},
      NamedSize{"UK single", 900_mm, 1900_mm, british},
      NamedSize{"UK small double", 1200_mm, 1900_mm, british},
      NamedSize{"UK double", 1350_mm, 1900_mm, british},
      NamedSize{"UK king", 1500_mm, 2000_mm, british},
      NamedSize{"UK super king", 1800_mm, 2000_mm, british},
  };
  return sizes;
}

}  // namespace berthwright

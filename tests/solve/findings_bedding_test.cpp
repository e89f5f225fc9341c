#include <gtest/gtest.h>

#include "support/small_trailers.h"

namespace berthwright {
namespace {

// A bench that is a locker of 22 x 18 x 12 in inside.
TrailerText with_bedding(const std::string& bundle, const std::string& inside =
                                                        R"("inside": {"length": 22, "width": 18, "height": 12}, )") {
  TrailerText text = two_benches("0", "14");
  text.fixtures[0].insert(1, inside);
  text.beds[0].insert(1, R"("bedding": {"kept_in": "left bench")" + bundle + "}, ");
  return text;
}

// 20 x 16 x 10 laid any way but so is too large: 22 - 20, 18 - 16, 12 - 10.
TEST(BedLinenPlace, GoesIntoItsPlaceTheWayThatLeavesMost) {
  for (const char* bundle : {R"(, "length": 20, "width": 16, "height": 10)", R"(, "length": 10, "width": 20, "height": 16)"}) {
    const Finding found = Answered(with_bedding(bundle)).one("bed.bedding-locker");
    EXPECT_EQ(found.status, Status::met);
    EXPECT_EQ(std::get<Length>(*found.measured), 2_in);
    EXPECT_EQ(found.subjects, (std::vector<std::string>{"bed", "left bench"}));
  }
}

TEST(BedLinenPlace, TooLargeABundleIsToldByHowMuch) {
  const Finding found =
      Answered(with_bedding(R"(, "length": 20, "width": 16, "height": "12 1/2")")).one("bed.bedding-locker");
  EXPECT_EQ(found.status, Status::not_met);
  EXPECT_EQ(std::get<Length>(*found.measured), -Length::inches(1, 2));
}

TEST(BedLinenPlace, WhatThePlanDoesNotSayIsUnknown) {
  const Finding no_size = Answered(with_bedding("")).one("bed.bedding-locker");
  EXPECT_EQ(no_size.status, Status::unknown);
  EXPECT_EQ(no_size.variant, "size of the bundle");
  const Finding no_inside =
      Answered(with_bedding(R"(, "length": 20, "width": 16, "height": 10)", "")).one("bed.bedding-locker");
  EXPECT_EQ(no_inside.status, Status::unknown);
  EXPECT_EQ(no_inside.variant, "inside of the place");
  const Finding unsaid = Answered(two_benches("0", "14")).one("bed.bedding-locker");
  EXPECT_EQ(unsaid.status, Status::unknown);
  EXPECT_EQ(unsaid.subjects, std::vector<std::string>{"bed"});
}

}  // namespace
}  // namespace berthwright

#include "write/report_ways.h"

#include <gtest/gtest.h>

#include "support/small_trailers.h"
#include "support/way_trailers.h"

namespace berthwright {
namespace {

std::string told(const TrailerText& text) {
  const Answered made(text);
  return ways_part(made.plan, made.answer);
}

TEST(WaysPart, TellsTheWayItsPinchAndWhatIsInReach) {
  TrailerText text = way_trailer();
  text.fixtures.push_back(R"({"id": "screen", "name": "Screen", "kind": "wall", "length": 2, "width": 55,
                              "at": {"front": 60, "right": 0}, "top": 70})");
  const std::string part = told(text);
  EXPECT_TRUE(
      part.starts_with("\nWays out\n  bed (night): to door 21\" (533.4 mm) wide, at its narrowest between "))
      << part;
  EXPECT_NE(part.find("Screen"), std::string::npos) << part;
  EXPECT_NE(part.find("the left wall"), std::string::npos) << part;
  EXPECT_NE(part.find("window (30\" × 20\""), std::string::npos) << part;
}

TEST(WaysPart, SaysWhatThereIsNot) {
  TrailerText text = way_trailer();
  text.openings.erase(text.openings.begin());
  EXPECT_NE(told(text).find("the plan shows no door that opens"), std::string::npos);
  EXPECT_EQ(told(two_benches("0", "14")), "");
  TrailerText far = way_trailer();
  far.openings.pop_back();
  EXPECT_NE(told(far).find("as the door itself; no way out within 24\""), std::string::npos) << told(far);
  EXPECT_NE(told(far).find("it (NFPA 1192, 6.2.1.3)."), std::string::npos) << told(far);
}

}  // namespace
}  // namespace berthwright

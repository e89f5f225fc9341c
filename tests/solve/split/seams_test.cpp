#include "solve/split/seams.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

// A bed 100 in long and 40 in wide, its cushions ending at these places.
Seams seams_at(const std::vector<int>& places) {
  std::vector<Rect> cushions;
  int from = 0;
  for (const int to : places) {
    cushions.push_back({{Length::inches(from), Length{}}, {Length::inches(to), 40_in}});
    from = to;
  }
  cushions.push_back({{Length::inches(from), Length{}}, {100_in, 40_in}});
  return seams_of(cushions, {{}, {100_in, 40_in}});
}

// Whichever end the head is at, one of the pair lies in the band, which reaches to its ends.
TEST(Seams, AreUnderHipsFrom44To60PercentFromTheFoot) {
  EXPECT_EQ(seams_at({50}).under_hips, 40_in);
  EXPECT_EQ(seams_at({40, 60}).under_hips, 40_in);
  EXPECT_EQ(seams_at({39, 61}).under_hips, Length{});
  // Alone, 60 from one end is 40 from the other: heads go to the end where that is better.
  EXPECT_EQ(seams_at({60}).under_hips, Length{});
  EXPECT_EQ(seams_at({56}).under_hips, 40_in);  // 44 from the other end
}

TEST(Seams, AreUnderShouldersFrom76To88PercentFromTheFoot) {
  EXPECT_EQ(seams_at({12, 88}).under_shoulders, 40_in);
  EXPECT_EQ(seams_at({11, 89}).under_shoulders, Length{});
  EXPECT_EQ(seams_at({24, 76}).under_shoulders, 40_in);
  EXPECT_EQ(seams_at({25, 75}).under_shoulders, Length{});
}

// Four cushions meet in a cross: 100 + 40 in on two lines. Moved by 10 in in one half, the seam across lies
// on two lines.
TEST(Seams, OnOneLineCountOnce) {
  const auto bed = [](int low, int high) {
    const auto rect = [](int x, int y, int to_x, int to_y) {
      return Rect{{Length::inches(x), Length::inches(y)}, {Length::inches(to_x), Length::inches(to_y)}};
    };
    return seams_of(
        {rect(0, 0, low, 20), rect(low, 0, 100, 20), rect(0, 20, high, 40), rect(high, 20, 100, 40)},
        rect(0, 0, 100, 40));
  };
  EXPECT_EQ(bed(30, 30).all, 140_in);
  EXPECT_EQ(bed(30, 30).lines, 2U);
  EXPECT_EQ(bed(30, 40).all, 140_in);
  EXPECT_EQ(bed(30, 40).lines, 3U);
}

}  // namespace
}  // namespace berthwright

#include "view/height_map.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/demo_sections.h"

namespace berthwright {
namespace {

std::ptrdiff_t times_said(const Draft& draft, std::string_view words) {
  std::ptrdiff_t found = 0;
  for (const Group& group : draft.sheet.groups)
    for (const Mark& mark : group.marks)
      if (const Text* text = std::get_if<Text>(&mark)) found += text->words.find(words) != std::string::npos;
  return found;
}

TEST(HeightMap, NamesItsBed) {
  const CutTrailer& trailer = CutTrailer::demo("sanderling");
  const std::vector<Draft> drafts = height_drafts(trailer.of("night"));
  ASSERT_EQ(drafts.size(), 2U);
  EXPECT_EQ(drafts[0].subject, "over Front bed");
  EXPECT_EQ(drafts[1].subject, "over Rear bed");
  EXPECT_EQ(times_said(drafts[1], "Clear height over Rear bed"), 1);
  EXPECT_NE(drafts[0].sheet.title.find("over Front bed"), std::string::npos);
}

// Under Sanderling's round roof 36 in are the least of a part that rises to 56; 32 of a strip at the wall:
// the arc of 24 in about z = 50 is 54 up where x = 24 - sqrt(24^2 - 4^2) = 0.336 in, to the sixteenth 5/16.
TEST(HeightMap, SaysThatMoreIsClearUnderASlopeAndHowWideAStripIs) {
  const CutTrailer& trailer = CutTrailer::demo("sanderling");
  const Draft front = height_drafts(trailer.of("night")).at(0);
  EXPECT_GE(times_said(front, "and more"), 2);
  EXPECT_EQ(times_said(front, "3' 0\" (914.4 mm) and more"), 1);
  EXPECT_EQ(times_said(front, "5/16\""), 1);
  EXPECT_EQ(times_said(front, "3' 1 11/16\""), 1) << "the rest of 38 in";
}

// Nuthatch's bed is two islands, each under a locker and a flat roof; its backs lie 2 5/16 in too low.
TEST(HeightMap, EveryPartBearsItsFigureAndWhatIsLeftBlankIsExplained) {
  const CutTrailer& trailer = CutTrailer::demo("nuthatch");
  const Draft map = height_drafts(trailer.of("night")).at(0);
  EXPECT_EQ(times_said(map, "1' 6\" (457.2 mm)"), 2);
  EXPECT_EQ(times_said(map, "4' 6\" (1371.6 mm)"), 2);
  EXPECT_EQ(times_said(map, "4' 6\" (1371.6 mm) and more"), 0) << "a flat roof";
  EXPECT_GE(times_said(map, "lies 2 5/16\" lower"), 2);
}

}  // namespace
}  // namespace berthwright

#include <gtest/gtest.h>

#include <berthwright/view/sheets.h>

#include "view/lettering.h"
#include "view/paper.h"

namespace berthwright {
namespace {

Text text(std::int64_t x, std::int64_t y, const std::string& words) {
  return {Ink::label, {paper_mm(x), paper_mm(y)}, lettering::label, Anchor::start, false, words};
}

Sheet sheet(std::vector<Mark> marks) {
  Sheet sheet;
  sheet.width = paper_mm(100);
  sheet.height = paper_mm(100);
  sheet.groups.push_back({"all", std::move(marks), 0});
  return sheet;
}

std::size_t faults(std::vector<Mark> marks) { return lettering_faults(sheet(std::move(marks))).size(); }

TEST(LetteringFaults, ACleanSheetHasNone) {
  EXPECT_EQ(faults({text(10, 10, "seat"), text(10, 14, "back"),
                    closed_path(Ink::frame, PaperBox{{}, {paper_mm(100), paper_mm(100)}})}),
            0U);
}

TEST(LetteringFaults, LetteringOverLetteringIsFound) {
  EXPECT_EQ(faults({text(10, 10, "seat"), text(12, 11, "back")}), 1U);
}

TEST(LetteringFaults, LetteringOffThePageIsFound) {
  EXPECT_EQ(faults({text(95, 10, "a long name")}), 1U);
  EXPECT_EQ(faults({text(10, 1, "seat")}), 1U) << "its capitals reach above the page";
  Text upward = text(10, 5, "a long name");
  upward.reads_upward = true;
  EXPECT_EQ(faults({upward}), 1U);
}

TEST(LetteringFaults, LetteringOverAHeavyLineIsFoundAndOverALightOneAllowed) {
  const auto line = [](Ink ink) {
    return straight(ink, {paper_mm(11), paper_mm(0)}, {paper_mm(11), paper_mm(50)});
  };
  EXPECT_EQ(faults({text(10, 10, "seat"), line(Ink::bed_outline)}), 1U);
  EXPECT_EQ(faults({text(10, 10, "seat"), line(Ink::wall)}), 1U);
  EXPECT_EQ(faults({text(10, 10, "seat"), line(Ink::fixture)}), 0U);
}

TEST(LetteringFaults, TheBandOfAWallReachesOutward) {
  // The foot of a room, walked with the room on the left as it is seen: from left to right.
  const Path foot = straight(Ink::wall, {paper_mm(0), paper_mm(50)}, {paper_mm(90), paper_mm(50)});
  Text below = text(10, 53, "W1");
  below.at.y =
      PaperLength::micrometres(52'900);  // its box begins 0.77 mm below the line, within the band of 1.2
  EXPECT_EQ(faults({below, foot}), 1U);
  EXPECT_EQ(faults({text(10, 55, "W1"), foot}), 0U);
  EXPECT_EQ(faults({text(10, 48, "seat"), foot}), 0U) << "inside the floor covers the band";
}

TEST(LetteringFaults, LetteringTooSmallToReadIsFound) {
  Text small = text(10, 10, "seat");
  small.height = paper_mm(2);
  EXPECT_EQ(faults({small}), 1U);
}

TEST(LetteringFaults, AnchorsMoveTheBox) {
  Text right = text(40, 10, "seat");
  right.anchor = Anchor::end;
  EXPECT_EQ(faults({right, text(40, 10, "back")}), 0U);
  Text middle = text(40, 10, "seat");
  middle.anchor = Anchor::middle;
  EXPECT_EQ(faults({middle, text(40, 10, "back")}), 1U);
}

}  // namespace
}  // namespace berthwright

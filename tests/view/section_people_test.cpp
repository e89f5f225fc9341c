#include "view/section_people.h"

#include <gtest/gtest.h>

#include "support/demo_sections.h"
#include "support/seat_trailers.h"

namespace berthwright {
namespace {

SectionPeople seen_in(const CutTrailer& trailer, std::string_view configuration, const CutLine& line) {
  const DrawnConfiguration& of = trailer.of(configuration);
  return people_of(of, trailer.cut(of, line), sitting_places(*of.answer));
}

// Nuthatch's locker begins at 36 in, over x 108 to 120. Who sits at 17 in in the middle of the left seat, x
// 101, has shoulders of 22 3/8 in (a man of the 95th percentile, 567 mm) up to x 112.
TEST(SectionPeople, WhoFindsNoRoomIsSaidToFitNowhere) {
  const CutTrailer& trailer = CutTrailer::demo("nuthatch");
  const SectionPeople along = seen_in(trailer, "day", {CutLine::Along::x, 10_in});
  ASSERT_EQ(along.people.size(), 1U);
  EXPECT_EQ(along.people[0].in_the_way, "Rear locker");
  const SectionPeople across = seen_in(trailer, "day", {CutLine::Along::y, 101_in});
  ASSERT_EQ(across.people.size(), 2U);
  EXPECT_EQ(across.people[0].in_the_way, "Rear locker") << "seen from the side a body is broad all the same";
  // In front of the locker by more than half the shoulders there is room.
  for (const DrawnPerson& person : seen_in(trailer, "day", {CutLine::Along::y, 96_in}).people)
    EXPECT_EQ(person.in_the_way, "");
}

// Sitting at 18 in a man of the 95th percentile (sitting height 977 mm, 38.5 in) reaches 56 1/2.
TEST(SectionPeople, ALowRoofIsInTheWay) {
  const auto in_the_way = [](const char* height) {
    const CutTrailer trailer(booth({.table_base = "", .room_height = height}).plan());
    return seen_in(trailer, "day", {CutLine::Along::x, 21_in}).people.at(0).in_the_way;
  };
  EXPECT_EQ(in_the_way("57"), "");
  EXPECT_EQ(in_the_way("54"), "the roof");
}

TEST(SectionPeople, ASmallThingBesideTheSeatIsInNobodysWay) {
  const CutTrailer trailer(
      booth({.more = {box("galley", "counter", {"30", "44", "20", "20", "0", "36"})}}).plan());
  for (const DrawnPerson& person : seen_in(trailer, "day", {CutLine::Along::x, 21_in}).people)
    EXPECT_EQ(person.in_the_way, "");
}

// Seen from before the legs hang over the seat; from behind the bench hides them.
TEST(SectionPeople, WhoIsSeenFromBeforeOrBehindHasLegs) {
  const CutTrailer trailer(booth({}).plan());  // the front seat looks to the rear, the rear one forward
  const SectionPeople front = seen_in(trailer, "day", {CutLine::Along::y, 12_in});
  ASSERT_EQ(front.people.size(), 1U);
  EXPECT_EQ(front.people[0].legs.size(), 2U);
  EXPECT_TRUE(front.people[0].legs_in_front);
  const SectionPeople rear = seen_in(trailer, "day", {CutLine::Along::y, 66_in});
  ASSERT_EQ(rear.people.size(), 1U);
  EXPECT_FALSE(rear.people[0].legs_in_front);
  // From the side they are part of the body.
  EXPECT_TRUE(seen_in(trailer, "day", {CutLine::Along::x, 21_in}).people.at(0).legs.empty());
}

// A post that is cut where the feet would stand, in front of the bench and the knees.
TEST(SectionPeople, FeetKeepOffWhatIsCutBeforeThem) {
  const TrailerText text =
      booth({.table_base = "", .more = {box("post", "leg", {"36", "20", "2", "2", "0", "28"})}});
  const CutTrailer trailer(text.plan());
  const Region post(Rect{{36_in, 0_in}, {38_in, 28_in}});
  const SectionPeople people = seen_in(trailer, "day", {CutLine::Along::x, 21_in});
  const Region man = outline_of(people.people.at(0));
  EXPECT_FALSE(overlaps(man, post));
  EXPECT_LT(man.bounds().low.y, Length::inches(1, 8)) << "his feet stay on the floor";
  const SectionPeople beside = seen_in(trailer, "day", {CutLine::Along::x, 15_in});
  EXPECT_TRUE(overlaps(outline_of(beside.people.at(0)), post)) << "beside the post they go as far as they do";
}

}  // namespace
}  // namespace berthwright

#include "view/head_room.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/demo_sections.h"
#include "support/demos.h"
#include "support/seat_trailers.h"
#include "view/plan_things.h"

namespace berthwright {
namespace {

using Over = HeadRoomLine::Of;

std::vector<HeadRoomLine> lines_in(const CutTrailer& trailer, std::string_view configuration,
                                   const CutLine& line) {
  const DrawnConfiguration& of = trailer.of(configuration);
  return head_room_lines(of, trailer.cut(of, line));
}

const HeadRoomLine& line_over(const std::vector<HeadRoomLine>& lines, const std::string& over, Over of,
                              const std::string& under) {
  const auto found = std::ranges::find_if(lines, [&](const HeadRoomLine& line) {
    return line.over == over && line.of == of && line.under == under;
  });
  EXPECT_NE(found, lines.end()) << over << " under " << under;
  static const HeadRoomLine none;
  return found == lines.end() ? none : *found;
}

// A locker whose underside is 48 in up hangs over x 0 to 14. People sit at 18, their heads over x 8 to 16: 30
// in under the locker, the middle of what lies beneath it at 11.
TEST(HeadRoom, OfASeatIsTheLeastWhereverThePlaneCutsIt) {
  const CutTrailer trailer(
      booth({.more = {box("locker", "locker", {"0", "0", "14", "42", "48", "64"})}}).plan());
  const auto along = lines_in(trailer, "day", {CutLine::Along::x, 21_in});
  ASSERT_EQ(along.size(), 2U) << "both seats are cut";
  const HeadRoomLine& cut = line_over(along, "A", Over::seat, "locker");
  EXPECT_EQ(cut.level, 18_in);
  EXPECT_EQ(cut.top, 48_in);
  EXPECT_EQ(cut.along, 11_in);
  EXPECT_TRUE(cut.in_plane);
  EXPECT_FALSE(cut.outline);

  // Across at 20 the plane passes behind the locker, over the same seat.
  const CutLine behind{CutLine::Along::y, 20_in};
  const auto across = lines_in(trailer, "day", behind);
  ASSERT_EQ(across.size(), 1U);
  const HeadRoomLine& beside = line_over(across, "A", Over::seat, "locker");
  EXPECT_EQ(beside.top - beside.level, 30_in);
  EXPECT_FALSE(beside.in_plane);
  EXPECT_EQ(beside.at, 11_in);
  EXPECT_EQ(beside.outline, (Rect{{0_in, 48_in}, {42_in, 64_in}}));
  const Section section = trailer.cut(trailer.of("day"), behind);
  EXPECT_EQ(words_of(beside, trailer.plan(), section, true),
            (std::vector<std::string>{"head room 2' 6\" (762 mm)", "under locker,", "11\" from the front"}));
  EXPECT_EQ(words_of(cut, trailer.plan(), section, false), std::vector<std::string>{"head room 2' 6\""});
}

// Sanderling's roof is an arc of 24 in about x = 96, z = 50 at the rear. Heads reach to 116.0 in from the
// front: there it is 63 1/4 in up, 46 1/4 above who sits at 17.
TEST(HeadRoom, UnderARoofThatSlopesAlongThePlaneItStandsAtTheLowestPlace) {
  const CutTrailer& trailer = CutTrailer::demo("sanderling");
  const auto across = lines_in(trailer, "day", {CutLine::Along::y, 101_in});
  const HeadRoomLine& line = line_over(across, "Left seat", Over::seat, "");
  EXPECT_FALSE(line.in_plane);
  EXPECT_LT(abs(line.at - 116_in), Length::inches(1, 8));
  EXPECT_LT(abs(line.top - Length::inches(253, 4)), Length::inches(1, 16));
  // Along through the same seat the slope is seen: no words of another place.
  const auto along = lines_in(trailer, "day", {CutLine::Along::x, 10_in});
  EXPECT_TRUE(line_over(along, "Left seat", Over::seat, "").in_plane);
}

// Nuthatch's bed lies at 18 in, a locker over x 108 to 120 at 36: 18 in clear; the roof at 72: 54.
TEST(HeadRoom, OfABedIsTheLeastUnderEachThingThePlaneCutsAndTheLeastOfAll) {
  const CutTrailer& trailer = CutTrailer::demo("nuthatch");
  const auto along = lines_in(trailer, "night", {CutLine::Along::x, 10_in});
  const HeadRoomLine& locker = line_over(along, "Rear bed", Over::bed, "Rear locker");
  EXPECT_EQ(locker.top - locker.level, 18_in);
  EXPECT_EQ(locker.along, 114_in);
  EXPECT_TRUE(locker.in_plane);
  const HeadRoomLine& roof = line_over(along, "Rear bed", Over::bed, "");
  EXPECT_EQ(roof.top - roof.level, 54_in);
  EXPECT_EQ(roof.along, 95_in);

  const auto across = lines_in(trailer, "night", {CutLine::Along::y, 95_in});
  const HeadRoomLine& beside = line_over(across, "Rear bed", Over::bed, "Rear locker");
  EXPECT_EQ(beside.top - beside.level, 18_in);
  EXPECT_FALSE(beside.in_plane);
  EXPECT_EQ(beside.at, 114_in);
  EXPECT_TRUE(line_over(across, "Rear bed", Over::bed, "").in_plane);
  EXPECT_TRUE(lines_in(trailer, "night", {CutLine::Along::y, 40_in}).empty()) << "it cuts no bed";
}

TEST(HeadRoom, ToSitUpIsToldWhereThePlaneMeetsThePlaceForIt) {
  const CutTrailer& trailer = CutTrailer::demo("sanderling");
  const SittingUp& sitting = *trailer.bed("front bed").room.sitting;
  const auto told = [&](Length aside) {
    const auto lines = lines_in(trailer, "night", {CutLine::Along::y, sitting.place.centre.x + aside});
    return std::ranges::find(lines, Over::sitting_up, &HeadRoomLine::of) != lines.end();
  };
  EXPECT_TRUE(told({}));
  EXPECT_TRUE(told(9_in));
  EXPECT_FALSE(told(11_in));
  const auto lines = lines_in(trailer, "night", {CutLine::Along::y, sitting.place.centre.x});
  const auto line = std::ranges::find(lines, Over::sitting_up, &HeadRoomLine::of);
  EXPECT_EQ(line->top - line->level, sitting.head_room);
  EXPECT_EQ(line->level, 17_in) << "the cushion pressed down by 1 in";
}

// What the answer, and so the check, knows of what one line tells.
std::optional<Length> known_of(const HeadRoomLine& line, const DrawnConfiguration& of) {
  std::optional<Length> least;
  const auto know = [&](Length height) { least = std::min(least.value_or(height), height); };
  const Arrangement& arrangement = of.answer->arrangement;
  const auto called = [&](const std::string& id) {
    const Placed* thing = arrangement.find(id);
    return thing == nullptr ? std::string() : name_of(*thing);
  };
  for (const Seat& seat : of.answer->seats)
    if (line.of == Over::seat && called(seat.cushions.front()) == line.over) know(seat.head_room->height);
  for (const BedAnswer& bed : of.answer->beds) {
    if (bed.bed->name != line.over) continue;
    if (line.of == Over::sitting_up) know(bed.room.sitting->head_room);
    for (const ClearHeight& part : bed.room.overhead)
      if (line.of == Over::bed && called(part.what) == line.under && part.height > Length{}) know(part.height);
  }
  return least;
}

TEST(HeadRoom, OfEveryDemoIsWhatTheCheckSays) {
  for (const std::string& name : demo_names()) {
    const CutTrailer& trailer = CutTrailer::demo(name);
    std::size_t told = 0;
    for (const DrawnConfiguration& of : trailer.configurations())
      for (const SectionCut& cut : of.cuts) {
        SCOPED_TRACE(name + " " + of.answer->configuration->id.text() + " " + cut.letter);
        for (const HeadRoomLine& line : head_room_lines(of, trailer.cut(of, cut.line))) {
          EXPECT_EQ(std::optional(line.top - line.level), known_of(line, of)) << line.over << line.under;
          ++told;
        }
      }
    EXPECT_GE(told, 4U) << name;
  }
}

}  // namespace
}  // namespace berthwright

#include "view/carried.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/convert_trailers.h"
#include "view/frame.h"
#include "view/packet.h"

namespace berthwright {
namespace {

/// A plan and its conversions, which point into it.
struct CarriedTrailer {
  explicit CarriedTrailer(const TrailerText& text) : plan(text.plan()), ways(conversions(plan).value()) {}
  CarriedTrailer(const CarriedTrailer&) = delete;
  CarriedTrailer& operator=(const CarriedTrailer&) = delete;

  /// The last step by day to night that moves the piece.
  std::vector<CarriedMoment> of(const std::string& piece, const SmallLayout& layout) const {
    for (std::size_t i = ways.front().steps.size(); i > 0; --i)
      if (ways.front().steps[i - 1].piece.text() == piece)
        return carried_moments({&plan, &ways.front(), i}, layout);
    return {};
  }

  Plan plan;
  std::vector<Conversion> ways;
};

// At 1:48, with the room's corner 10 mm from the left and 60 mm from the top: 1 in of nature is 25.4/48 mm on
// paper, 0.529 mm.
constexpr SmallLayout at_48{
    48, {{}, {}, {paper_mm(10), paper_mm(60)}}, {{}, {}, {paper_mm(10), paper_mm(60)}}};

// By night the table lies at 82 1/8 in from the front (120 - 1/8 - 37 3/4) and 22 1/8 in from the left wall,
// on ledges at 13 1/4 in. From above: x = 10 + 82 1/8 x 0.52917 = 53.458, y of its far side = 60 - (22 1/8 +
// 31 3/4) x 0.52917 = 31.491, 19.976 x 16.801 mm. In the raised view (three tenths of y to the right, six
// tenths of y and z upward): foot x = 10 + (82 1/8 + 0.3 x 22 1/8) x 0.52917 = 56.970, y = 60 - 0.6 x (22 1/8
// + 13 1/4) x 0.52917 = 48.768.
TEST(Carried, EndsWhereTheStepLetsThePieceGo) {
  const CarriedTrailer trailer(dinette());
  const std::vector<CarriedMoment> moments = trailer.of("table", at_48);
  ASSERT_GE(moments.size(), 2U);
  const auto near = [](PaperLength length, std::int64_t um) {
    EXPECT_LE(std::abs(length.micrometres() - um), 2);
  };
  const CarriedMoment& last = moments.back();
  near(last.above.low.x, 53'458);
  near(last.above.low.y, 31'491);
  near(last.above.width(), 19'976);
  near(last.above.height(), 16'801);
  near(last.foot.x, 56'970);
  near(last.foot.y, 48'768);
  near(last.along, 19'976);
  near(last.lean, 5'040);    // 0.3 x 16.801
  near(last.depth, 10'081);  // 0.6 x 16.801
  near(last.height, 238);    // 0.6 x 3/4 in
}

TEST(Carried, IsFollowedBetweenPlacesInTheRoomAndNotBeyondThem) {
  const CarriedTrailer trailer(dinette());
  const std::vector<CarriedMoment> table = trailer.of("table", at_48);
  EXPECT_FALSE(table.front().followed);
  EXPECT_TRUE(std::all_of(table.begin() + 1, table.end(), [](const CarriedMoment& m) { return m.followed; }));
  const std::vector<CarriedMoment> leg = trailer.of("leg", at_48);
  ASSERT_GE(leg.size(), 2U);
  EXPECT_FALSE(leg.back().followed) << "into the bench, where nobody looks";
}

TEST(Carried, IsNotFollowedWhereItIsBent) {
  CarriedTrailer trailer(dinette());
  for (Step& step : trailer.ways.front().steps) step.bent = true;
  const std::vector<CarriedMoment> table = trailer.of("table", at_48);
  ASSERT_GE(table.size(), 2U);
  for (const CarriedMoment& moment : table) EXPECT_FALSE(moment.followed);
}

// The same boxes as the pictures of the step: the ghost where it came from, the piece where it is.
TEST(Carried, BeginsAtTheGhostAndEndsAtThePieceOfEveryPicture) {
  const CarriedTrailer trailer(dinette_with_cushions());
  std::size_t looked_at = 0;
  for (const Conversion& way : trailer.ways)
    for (const StageDrawing& stage : stage_drawings(trailer.plan, way, telephone_width)) {
      const auto bounds_of = [&](Ink ink) {
        std::optional<PaperBox> box;
        for (const Group& group : stage.above.groups)
          for (const Mark& mark : group.marks)
            if (const Path* path = std::get_if<Path>(&mark); path != nullptr && path->ink == ink) {
              PaperBox one{path->from, path->from};
              for (const Stretch& stretch : path->stretches) one = hull(one, {stretch.to, stretch.to});
              box = box ? hull(*box, one) : one;
            }
        return box;
      };
      if (const auto ghost = bounds_of(Ink::ghost)) {
        EXPECT_EQ(stage.carried.front().above, *ghost) << stage.above.title;
        ++looked_at;
      }
      if (const auto moved = bounds_of(Ink::moved_piece)) {
        EXPECT_EQ(stage.carried.back().above, *moved) << stage.above.title;
        ++looked_at;
      }
    }
  EXPECT_GT(looked_at, 8U);
}

}  // namespace
}  // namespace berthwright

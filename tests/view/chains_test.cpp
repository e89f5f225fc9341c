#include "view/chains.h"

#include <gtest/gtest.h>

#include "support/drawn_room.h"

namespace berthwright {
namespace {

using Of = DimensionChain::Of;

std::vector<DimensionChain> chains_of(DrawnRoom& room, Wall wall, std::int64_t ratio = 24) {
  const Plan& plan = room.plan();
  const Arrangement& arrangement = room.answer().configurations.front().arrangement;
  return chains_along(plan, plan_things(PlanView{ratio, {}}, plan, arrangement), wall, ratio);
}

const DimensionChain* chain_of(const std::vector<DimensionChain>& chains, Of what) {
  for (const DimensionChain& chain : chains)
    if (chain.what == what) return &chain;
  return nullptr;
}

// 0.7 mm on paper are 16.8 mm at 1:24 and 8.4 mm at 1:12; a 1/2 in is 12.7 mm.
TEST(Chains, StopsThatCannotBeToldApartAreMergedIntoThoseOfTheLongerPiece) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  const Length half_inch = Length::inches(1, 2);
  room.piece("seat", Piece::Kind::cushion, Region(Rect{{half_inch, {}}, {30_in, 20_in}}), 14_in, 18_in)
      .piece("table", Piece::Kind::table, Region(Rect{{30_in + half_inch, {}}, {70_in, 20_in}}), 28_in,
             29_in);
  const auto coarse = chains_of(room, Wall::left);
  ASSERT_NE(chain_of(coarse, Of::things), nullptr);
  EXPECT_EQ(chain_of(coarse, Of::things)->stops, (std::vector<Length>{{}, 30_in + half_inch, 70_in, 120_in}));
  EXPECT_TRUE(chain_of(coarse, Of::things)->left_out);
  const auto fine = chains_of(room, Wall::left, 12);
  EXPECT_EQ(chain_of(fine, Of::things)->stops,
            (std::vector<Length>{{}, half_inch, 30_in, 30_in + half_inch, 70_in, 120_in}));
  EXPECT_FALSE(chain_of(fine, Of::things)->left_out);
}

TEST(Chains, WhatIsHiddenIsNotMeasured) {
  DrawnRoom room(Unit::inch, 120_in, 72_in);
  room.fixture("bench", Fixture::Kind::bench, inches(40, 0, 80, 20), {}, 14_in)
      .piece("front half", Piece::Kind::cushion, Region(inches(35, 0, 60, 20)), 14_in, 18_in)
      .piece("rear half", Piece::Kind::cushion, Region(inches(60, 0, 85, 20)), 14_in, 18_in);
  EXPECT_EQ(chain_of(chains_of(room, Wall::left), Of::things)->stops,
            (std::vector<Length>{{}, 35_in, 60_in, 85_in, 120_in}));
}

TEST(Chains, OpeningsComeFirstAndTheWholeLast) {
  DrawnRoom room = rear_dinette();
  const auto left = chains_of(room, Wall::left);
  ASSERT_EQ(left.size(), 3U);
  EXPECT_EQ(left[0].what, Of::openings);
  EXPECT_EQ(left[0].stops, (std::vector<Length>{{}, 84_in, 114_in, 120_in}));
  EXPECT_EQ(left[1].what, Of::things);
  EXPECT_EQ(left[2].what, Of::whole);
  EXPECT_EQ(left[2].stops, (std::vector<Length>{{}, 120_in}));
  const auto right = chains_of(room, Wall::right);
  EXPECT_EQ(right.front().stops, (std::vector<Length>{{}, 40_in, 64_in, 120_in}));
  EXPECT_EQ(chain_of(right, Of::whole), nullptr);
}

TEST(Chains, TheMirrorHasTheSameStopsOnTheOtherWall) {
  for (const bool mirrored : {false, true}) {
    DrawnRoom room(Unit::inch, 120_in, 72_in);
    const Rect box = mirrored ? inches(24, 52, 66, 72) : inches(24, 0, 66, 20);
    room.fixture("galley", Fixture::Kind::counter, box, {}, 36_in);
    const auto chains = chains_of(room, mirrored ? Wall::right : Wall::left);
    EXPECT_EQ(chain_of(chains, Of::things)->stops, (std::vector<Length>{{}, 24_in, 66_in, 120_in}));
  }
}

}  // namespace
}  // namespace berthwright

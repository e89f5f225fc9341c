#include <berthwright/solve/room/support.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include <berthwright/exact/measure.h>

#include "oracle/support_scan.h"
#include "support/furniture.h"
#include "support/plan_builder.h"
#include "support/stood.h"

namespace berthwright {
namespace {

using oracle::Raster;
using support::Furniture;
using support::Stood;

constexpr int per_inch = 4;  // cells of a quarter of an inch
constexpr int margin = 2 * per_inch;

struct Block {
  int x;
  int y;
  int wide;
  int deep;
};

std::string inches_of(int cells) { return exact_text(Length::inches(cells, per_inch), Unit::inch); }

/// A board or cushion at (40, 20) in on random ledges, with random blocks beside it that stop it.
struct BoardScene {
  int wide = 0;
  int deep = 0;
  std::vector<Block> ledges;
  std::vector<Block> blocks;

  int origin_x = 40 * per_inch;
  int origin_y = 20 * per_inch;

  Furniture furniture(const std::string& kind) const {
    Furniture made;
    int number = 0;
    const auto spot = [&](const Block& b) {
      return support::Spot{inches_of(origin_x + b.x), inches_of(origin_y + b.y), inches_of(b.wide),
                           inches_of(b.deep)};
    };
    for (const Block& b : ledges)
      made.fixture("ledge " + std::to_string(++number), "ledge", spot(b), "10", "12");
    for (const Block& b : blocks)
      made.fixture("block " + std::to_string(++number), "wall", spot(b), "0", "13");
    made.lay("piece", kind, spot({0, 0, wide, deep}), kind == "cushion" ? "4" : "0.5", "",
             R"("material": "plywood")");
    return made;
  }
  // The tops, `around` cells beyond the piece on all sides.
  Raster tops(int around) const {
    Raster raster(wide + 2 * around, deep + 2 * around);
    for (const Block& b : ledges)
      raster.fill(b.x + around, b.y + around, b.x + b.wide + around, b.y + b.deep + around);
    return raster;
  }
  // How far the piece can go toward greater y, at most half an inch.
  int play() const {
    for (int by = 1; by <= per_inch / 2; ++by)
      for (const Block& b : blocks)
        if (b.x < wide && b.x + b.wide > 0 && b.y < deep + by && b.y + b.deep > by) return by - 1;
    return per_inch / 2;
  }
  BoardScene transposed() const {
    BoardScene other{deep, wide, {}, {}};
    for (const Block& b : ledges) other.ledges.push_back({b.y, b.x, b.deep, b.wide});
    for (const Block& b : blocks) other.blocks.push_back({b.y, b.x, b.deep, b.wide});
    return other;
  }
  BoardScene flipped() const {
    BoardScene other{wide, deep, {}, {}};
    for (const Block& b : ledges) other.ledges.push_back({b.x, deep - b.y - b.deep, b.wide, b.deep});
    for (const Block& b : blocks) other.blocks.push_back({b.x, deep - b.y - b.deep, b.wide, b.deep});
    return other;
  }
  /// Ledges, blocks and piece elsewhere in the room.
  BoardScene moved(int by_x, int by_y) const {
    BoardScene other = *this;
    other.origin_x += by_x;
    other.origin_y += by_y;
    return other;
  }
  BoardScene reordered() const {
    BoardScene other = *this;
    std::ranges::reverse(other.ledges);
    std::ranges::reverse(other.blocks);
    return other;
  }
};

BoardScene random_board_scene(unsigned seed) {
  std::mt19937 random(seed);
  const auto between = [&](int low, int high) {
    return std::uniform_int_distribution<int>(low, high)(random);
  };
  BoardScene scene;
  scene.wide = between(10, 30) * 2;
  scene.deep = between(10, 30) * 2;
  // Some along the sides, some anywhere.
  for (int i = between(1, 5); i > 0; --i) {
    const int across = between(2, 8);
    const int along = between(4, 40);
    const int at = between(-6, 50);
    const int off = between(-3, 3);
    switch (between(0, 4)) {
      case 0:
        scene.ledges.push_back({at, off, along, across});
        break;
      case 1:
        scene.ledges.push_back({at, scene.deep - across + off, along, across});
        break;
      case 2:
        scene.ledges.push_back({off, at, across, along});
        break;
      case 3:
        scene.ledges.push_back({scene.wide - across + off, at, across, along});
        break;
      default:
        scene.ledges.push_back({at, between(-6, 50), across, across});
    }
  }
  // One that surely lies beneath.
  scene.ledges.push_back({between(0, scene.wide - 4), between(0, scene.deep - 4), 4, 4});
  for (int i = between(0, 3); i > 0; --i) {
    const int off = between(0, 3);
    if (between(0, 1) == 0)
      scene.blocks.push_back({between(-10, 20), between(0, 1) == 0 ? scene.deep + off : -8 - off, 20, 8});
    else
      scene.blocks.push_back({between(0, 1) == 0 ? scene.wide + off : -8 - off, between(-10, 20), 8, 20});
  }
  return scene;
}

Length cells(int count) { return Length::inches(count, per_inch); }
double in_cells(Length length) {
  return static_cast<double>(length.ticks()) * per_inch / static_cast<double>(ticks_per_inch);
}

// The side y = 0 of the scene against the side of the piece that it is.
void expect_side(const BoardScene& scene, const BearingSide& side) {
  const oracle::ScannedSide scanned =
      oracle::scanned_side(scene.tops(0), scene.tops(margin), margin, per_inch, scene.play());
  EXPECT_EQ(side.borne, cells(scanned.borne));
  EXPECT_EQ(side.depth, cells(scanned.depth));
  EXPECT_EQ(side.at_play, cells(scanned.at_play));
  EXPECT_EQ(side.play, side.is_free() ? Length{} : cells(scene.play()));
}

void expect_span(const BoardScene& scene, const std::optional<FreeSpan>& span) {
  const std::optional<oracle::ScannedSpan> scanned = oracle::scanned_span(scene.tops(0), per_inch);
  ASSERT_EQ(span.has_value(), scanned.has_value());
  if (!span) return;
  EXPECT_EQ(span->clear, cells(scanned->clear));
  EXPECT_EQ(span->carried, cells(scanned->carried));
  EXPECT_EQ(span->open, cells(scanned->open));
}

TEST(BoardSupport, AgreesWithARaster) {
  int free_sides = 0;
  int borne_sides = 0;
  int balanced = 0;
  int spans = 0;
  int tipping = 0;
  for (unsigned seed = 1; seed <= 150; ++seed) {
    SCOPED_TRACE(seed);
    const BoardScene scene = random_board_scene(seed);
    const Stood made(scene.furniture("board"));
    expect_side(scene, made.side(Wall::left));
    expect_side(scene.flipped(), made.side(Wall::right));
    expect_side(scene.transposed(), made.side(Wall::front));
    expect_side(scene.transposed().flipped(), made.side(Wall::rear));
    for (const BearingSide& side : made.board().sides) ++(side.is_free() ? free_sides : borne_sides);
    expect_span(scene, made.board().over_width);
    expect_span(scene.transposed(), made.board().over_length);
    spans += made.board().span() != nullptr ? 1 : 0;

    const oracle::ScannedBalance scanned = oracle::scanned_balance(scene.tops(0));
    EXPECT_EQ(made.board().balanced, scanned.balanced);
    balanced += scanned.balanced ? 1 : 0;
    EXPECT_NEAR(in_cells(made.board().beyond), scanned.beyond, 1e-4);
    EXPECT_NEAR(in_cells(made.board().overhang), scanned.overhang, 1e-4);
    if (!made.board().tips_at) continue;
    ++tipping;
    const double ratio = static_cast<double>(made.board().tips_at->units()) /
                         static_cast<double>(made.board().weight->units());
    if (ratio > 50) continue;  // capped, or the overhang is a hair
    EXPECT_LE(ratio, scanned.ratio * (1 + 1e-6));
    EXPECT_GE(ratio, scanned.ratio * 0.98);
  }
  EXPECT_GT(free_sides, 50);
  EXPECT_GT(borne_sides, 100);
  EXPECT_GT(balanced, 20);
  EXPECT_LT(balanced, 130);
  EXPECT_GT(spans, 30);
  EXPECT_GT(tipping, 20);
}

TEST(CushionSupport, AgreesWithARaster) {
  int hollow = 0;
  for (unsigned seed = 1; seed <= 20; ++seed) {
    SCOPED_TRACE(seed);
    BoardScene scene = random_board_scene(seed);
    scene.blocks.clear();
    const Stood made(scene.furniture("cushion"));
    const CushionSupport& cushion = made.support.cushions.front();
    const double scanned = oracle::scanned_hollow(scene.tops(0));
    // The centre of the true disc lies within half a cell of one that was tried.
    EXPECT_GE(in_cells(cushion.widest), scanned - 1e-4);
    EXPECT_LE(in_cells(cushion.widest), scanned + 0.8);
    hollow += cushion.widest > 4_in ? 1 : 0;
  }
  EXPECT_GT(hollow, 5);
}

void expect_same_numbers(const BearingSide& a, const BearingSide& b) {
  EXPECT_EQ(a.borne, b.borne);
  EXPECT_EQ(a.depth, b.depth);
  EXPECT_EQ(a.play, b.play);
  EXPECT_EQ(a.at_play, b.at_play);
}

void expect_same_board(const BoardSupport& a, const BoardSupport& b) {
  EXPECT_EQ(a.balanced, b.balanced);
  EXPECT_EQ(a.beyond, b.beyond);
  EXPECT_EQ(a.overhang, b.overhang);
  EXPECT_EQ(a.tips_at, b.tips_at);
  const auto clear = [](const BoardSupport& board) {
    return board.span() == nullptr ? Length{} : board.span()->clear;
  };
  EXPECT_EQ(clear(a), clear(b));
}

TEST(BoardSupport, IsTheSameInTheMirrorElsewhereAndInAnotherOrder) {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE(seed);
    const BoardScene scene = random_board_scene(seed);
    const Stood made(scene.furniture("board"));
    const Stood mirrored(scene.flipped().furniture("board"));
    const Stood reordered(scene.reordered().furniture("board"));
    expect_same_board(made.board(), mirrored.board());
    expect_same_board(made.board(), reordered.board());
    const Stood moved(scene.moved(-5 * per_inch + 1, 7 * per_inch + 1).furniture("board"));
    expect_same_board(made.board(), moved.board());
    for (const Wall wall : {Wall::left, Wall::right, Wall::front, Wall::rear})
      expect_same_numbers(made.side(wall), moved.side(wall));
    for (const auto& [here, there] : {std::pair{Wall::left, Wall::right},
                                      {Wall::right, Wall::left},
                                      {Wall::front, Wall::front},
                                      {Wall::rear, Wall::rear}})
      expect_same_numbers(made.side(here), mirrored.side(there));
    for (const Wall wall : {Wall::left, Wall::right, Wall::front, Wall::rear}) {
      expect_same_numbers(made.side(wall), reordered.side(wall));
      EXPECT_EQ(made.side(wall).where, reordered.side(wall).where);
    }
  }
}

}  // namespace
}  // namespace berthwright

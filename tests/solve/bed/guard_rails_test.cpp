#include <berthwright/solve/bed/guard_rails.h>

#include <gtest/gtest.h>

#include <random>

#include "support/small_bunks.h"
#include "support/small_trailers.h"

namespace berthwright {
namespace {

// 16 CFR 1213.2 and 1213.3(a) (text of the part as read in copies, 2026): over 30 in to the underside it is a
// bunk; rails on both sides; at least 5 in above the mattress; at most 15 in open at the side; the rail on
// the wall's side continuous, with gaps of at most 0.22 in.
TEST(GuardRails, AreAskedForOverThirtyInches) {
  const Answered low(railed("30", {.length = "10"}));
  EXPECT_NE(low.one("bed.guard-rail").status, Status::not_met);
  for (const char* rule : {"bed.rail-height", "bed.rail-opening", "bed.rail-closed-side"})
    EXPECT_TRUE(low.of(rule).empty());
  const Answered high(railed("30.5", {.length = "10"}));
  EXPECT_EQ(high.one("bed.guard-rail").status, Status::not_met);
  EXPECT_EQ(high.one("bed.rail-opening").status, Status::not_met);
}

TEST(GuardRails, FifteenInchesOpenPassAndMoreDoNot) {
  const Answered passes(railed("40"));
  EXPECT_EQ(passes.one("bed.rail-opening").measured, Quantity(15_in));
  EXPECT_EQ(passes.one("bed.rail-opening").status, Status::met);
  EXPECT_EQ(passes.one("bed.rail-opening").variant, "right");
  EXPECT_EQ(passes.one("bed.rail-closed-side").measured, Quantity(Length{}));
  EXPECT_EQ(passes.one("bed.guard-rail").status, Status::met);
  EXPECT_EQ(passes.one("bed.guard-rail").variant, "railed");
  EXPECT_EQ(exit_code(passes.answer), 0);
  const Answered fails(railed("40", {.from = "15 1/64", .length = "59 63/64"}));
  const Finding opening = fails.one("bed.rail-opening");
  EXPECT_EQ(opening.status, Status::not_met);
  EXPECT_EQ(opening.margin, -Length::inches(1, 64));
  EXPECT_EQ(opening.cure, (Cure{Cure::Kind::lengthen, "rail", Length::inches(1, 8)}));
  EXPECT_EQ(fails.one("bed.guard-rail").status, Status::not_met);
  EXPECT_EQ(exit_code(fails.answer), 1);
}

TEST(GuardRails, FourPointNineInchesAreTooLow) {
  EXPECT_EQ(Answered(railed("40")).one("bed.rail-height").status, Status::met);
  const Answered low(railed("40", {.above = "4.9"}));
  const Finding height = low.one("bed.rail-height");
  EXPECT_EQ(height.measured, Quantity(Length::inches(49, 10)));
  EXPECT_EQ(height.status, Status::not_met);
  EXPECT_EQ(height.subjects, std::vector<std::string>{"rail"});
  EXPECT_EQ(height.cure, (Cure{Cure::Kind::raise, "rail", Length::inches(1, 8)}));
  EXPECT_EQ(low.one("bed.guard-rail").status, Status::not_met);
}

// The bunk stands free, 20 in from the left wall, with a rail on its left side that ends 0.22 or 0.23 in
// short.
TEST(GuardRails, TheClosedSideMayHaveAGapOfTwentyTwoHundredths) {
  const auto closed = [](const char* length) {
    TrailerText text = railed("40", {.left = "44"});
    for (std::string* entry : {&text.fixtures[0], &text.night[0]})
      entry->replace(entry->find(R"("left": 0)"), 9, R"("left": 20)");
    text.fixtures.push_back(R"({"id": "wall rail", "kind": "guard rail", "width": 1, "length": ")" +
                            std::string(length) +
                            R"(", "at": {"front": 0, "left": 19}, "base": 40, "top": 50})");
    return Answered(text).one("bed.rail-closed-side");
  };
  EXPECT_EQ(closed("75").measured, Quantity(Length{}));
  EXPECT_EQ(closed("74.78").measured, Quantity(Length::inches(22, 100)));
  EXPECT_EQ(closed("74.78").status, Status::met);
  EXPECT_EQ(closed("74.78").variant, "left");
  EXPECT_EQ(closed("74.77").status, Status::not_met);
}

TEST(GuardRails, MissingOnesAreAskedForInNumbers) {
  const Answered bare(bunk("75", "24", "40", "41"));
  const Finding opening = bare.one("bed.rail-opening");
  EXPECT_EQ(opening.measured, Quantity(75_in));
  EXPECT_EQ(opening.margin, -60_in);
  EXPECT_EQ(opening.cure, (Cure{Cure::Kind::add_guard_rail, "bed", 5_in}));
  EXPECT_EQ(bare.one("bed.rail-closed-side").status, Status::met);  // the wall
  EXPECT_TRUE(bare.of("bed.rail-height").empty());
}

TEST(GuardRails, ACabinetCountsAsTheRailOfItsSideAndOneTooFarAwayDoesNot) {
  const auto beside = [](const char* kind, const char* left, const char* base, const char* top) {
    TrailerText text = bunk("75", "24", "40", "41");
    text.fixtures.push_back(std::string(R"({"id": "thing", "length": 75, "width": 12, "kind": ")") + kind +
                            R"(", "at": {"front": 0, "left": ")" + left + R"("}, "base": )" + base +
                            R"(, "top": )" + top + "}");
    return Answered(text).one("bed.rail-opening").measured;
  };
  EXPECT_EQ(beside("cabinet", "24", "0", "60"), Quantity(Length{}));
  EXPECT_EQ(beside("cabinet", "24 63/64", "0", "60"), Quantity(Length{}));
  EXPECT_EQ(beside("cabinet", "25", "0", "60"), Quantity(75_in));
  EXPECT_EQ(beside("cabinet", "24", "46", "60"), Quantity(75_in));  // begins above the mattress at 45
  EXPECT_EQ(beside("cabinet", "24", "0", "45"), Quantity(75_in));   // ends level with it
  EXPECT_EQ(beside("curtain", "24", "0", "60"), Quantity(75_in));
}

TEST(GuardRails, TheUndersideIsThatOfTheLowestCarrier) {
  const Answered made(bunk("75", "24", "33", "34"));
  const ConfigurationAnswer& night = made.answer.configurations.back();
  EXPECT_EQ(underside_of(night.arrangement, night.beds.front().mattress), 33_in);
}

// Slow twin: a point every quarter of an inch along each side is open unless a rail stands beside it.
TEST(GuardRails, OpeningsAgreeWithCountingPoints) {
  for (unsigned seed = 0; seed < 8; ++seed) {
    SCOPED_TRACE(seed);
    for (const bool mirror : {false, true}) {
      std::mt19937 random(seed);
      const auto draw = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
      };
      TrailerText text = bunk("75", "24", "40", "41");
      std::vector<bool> open(300, true);
      for (int i = 0; i < 4; ++i) {
        const int from = draw(0, 200);
        const int length = draw(4, 90);
        const int gap = draw(0, 5);  // quarters off the mattress
        for (int k = from; k < std::min(300, from + length); ++k)
          if (gap < 4) open[static_cast<std::size_t>(k)] = false;
        text.fixtures.push_back(R"({"id": "r)" + std::to_string(i) +
                                R"(", "kind": "guard rail", "length": ")" + std::to_string(length * 0.25) +
                                R"(", "width": 1, "at": {"front": ")" + std::to_string(from * 0.25) +
                                R"(", "left": ")" + std::to_string(24 + gap * 0.25) +
                                R"("}, "base": 40, "top": 52})");
      }
      int longest = 0;
      int run = 0;
      for (const bool here : open) longest = std::max(longest, run = here ? run + 1 : 0);
      const Answered made(mirror ? text.mirrored() : text);
      EXPECT_EQ(made.one("bed.rail-opening").measured, Quantity(Length::inches(longest, 4)));
      if (longest > 0) {
        EXPECT_EQ(made.one("bed.rail-opening").variant, mirror ? "left" : "right");
      }
    }
  }
}

}  // namespace
}  // namespace berthwright

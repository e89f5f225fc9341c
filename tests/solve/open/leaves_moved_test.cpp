#include <gtest/gtest.h>

#include <random>

#include "oracle/leaf_samples.h"
#include "support/furniture.h"
#include "support/opened_leaves.h"

namespace berthwright {
namespace {

using support::Furniture;
using support::inches;
using support::Opened;
using support::opens;

// Things at random whole inches around a fixture that opens; every leaf against the samples.
std::string leaf_of(std::mt19937_64& random) {
  const auto any = [&](auto... from) {
    const std::string all[] = {from...};
    return all[random() % sizeof...(from)];
  };
  const std::string angle = any("90", "75", "110", "180", "33.5");
  switch (random() % 5) {
    case 0: {
      const std::string face = any("left", "right");
      return R"("kind": "door", "face": ")" + face +
             R"(", "from": 2, "width": 12, "base": 4, "top": 20, "hinge": ")" + any("front", "rear") +
             R"(", "angle": )" + angle;
    }
    case 1: {
      const std::string face = any("front", "rear");
      return R"("kind": "door", "face": ")" + face + R"(", "from": 1, "width": 11, "hinge": ")" +
             any("left", "right") + R"(", "angle": )" + angle;
    }
    case 2:
      return R"("kind": "flap", "face": ")" + any("front", "rear", "left", "right") +
             R"(", "base": 6, "top": 18, "hinge": ")" + any("bottom", "top") + R"(", "angle": )" + angle;
    case 3:
      return R"("kind": "drawer", "face": ")" + any("front", "rear", "left", "right") +
             R"(", "base": 6, "top": 12, "pull": 13)";
    default:
      break;
  }
  const std::string hinge = any("front", "rear", "left", "right", "lifts out");
  return R"("kind": "lid", "length": 12, "width": 12, "at": {"front": 41, "left": 31}, "hinge": ")" + hinge +
         '"' + (hinge == "lifts out" ? "" : R"(, "angle": )" + angle);
}

Furniture random_room(std::mt19937_64& random) {
  const auto whole = [&](int low, int high) {
    return std::to_string(low + static_cast<int>(random() % static_cast<unsigned>(high - low)));
  };
  Furniture text;
  text.interior(R"("length": 70, "width": 60, "height": 40, "corners": {"rear left": {"round": 12}},
                   "side_profile": {"corners": {"roof rear": {"clip": [24, 20]}}},
                   "cross_profile": {"corners": {"roof right": {"clip": [20, 22]}}})");
  text.fixture("own", "cabinet", {"40", "30", "16", "14"}, "0", "22", opens(leaf_of(random)));
  for (int i = 0; i < 6; ++i) {
    const std::string name = "thing " + std::to_string(i);
    // Clear of the fixture: before or behind it, left or right of it, or above it.
    switch (random() % 5) {
      case 0:
        text.fixture(name, "cabinet", {whole(8, 30), whole(10, 40), "10", "9"}, whole(0, 12), whole(13, 38));
        break;
      case 1:
        text.fixture(name, "cabinet", {whole(56, 62), whole(20, 45), "7", "9"}, whole(0, 12), whole(13, 30));
        break;
      case 2:
        text.fixture(name, "cabinet", {whole(28, 55), whole(6, 22), "10", "8"}, whole(0, 12), whole(13, 30));
        break;
      case 3:
        text.fixture(name, "cabinet", {whole(28, 55), whole(44, 52), "10", "8"}, whole(0, 12), whole(13, 30));
        break;
      default:
        text.fixture(name, "shelf", {whole(32, 55), whole(20, 40), "10", "8"}, whole(22, 30), whole(31, 38));
        break;
    }
  }
  text.lay("turned", "board", {whole(10, 20), whole(12, 40), "14", "8"}, "3",
           R"("turn": )" + whole(1, 89) + R"(, "base": )" + whole(3, 18));
  return text;
}

TEST(Leaves, AgreeWithLeavesMovedInSmallSteps) {
  int stopped = 0;
  for (unsigned seed = 1; seed <= 60; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937_64 random(seed);
    const Opened made(random_room(random).plan());
    const LeafReach& reach = made.first();
    SCOPED_TRACE("first met: " + (reach.stops.empty() ? "nothing" : reach.stops[0].thing));
    const auto slow = oracle::first_met(made.plan, made.arrangement, *reach.leaf, reach.lifted);
    const bool turns = reach.leaf->hinge.has_value();
    const double free = turns ? reach.free.degrees : inches(reach.free.travel);
    if (!slow) {
      // What the samples miss lies between them: never more than the last degrees.
      EXPECT_GE(free, (turns ? reach.whole.degrees : inches(reach.whole.travel)) - (turns ? 2.0 : 0.07));
      continue;
    }
    ++stopped;
    EXPECT_LE(free, *slow);
    EXPECT_GE(free, *slow - (turns ? 3.0 : 0.13));
  }
  EXPECT_GT(stopped, 20);
  EXPECT_LT(stopped, 55);
}

// Mirrored, shifted, and with its things in another order, a room gives the same reaches.
TEST(Leaves, DoNotHangOnWhereTheRoomBeginsOrInWhichOrderItIsTold) {
  const auto made = [](bool mirror, int shift, bool last) {
    Furniture text;
    text.interior(R"("length": 120, "width": 60, "height": 60)");
    const auto x = [&](int at) { return std::to_string(at + shift); };
    const auto y = [&](int at, int width) { return std::to_string(mirror ? 60 - at - width : at); };
    const auto box = [&](const std::string& id, int at, int across, int length, int width, const char* top) {
      text.fixture(id, "cabinet", {x(at), y(across, width), std::to_string(length), std::to_string(width)},
                   "0", top);
    };
    if (!last) box("near", 22, 31, 9, 12, "40");
    text.fixture("own", "cabinet", {x(20), y(0, 20), "30", "20"}, "0", "36",
                 R"("opens": [
        {"id": "door", "kind": "door", "face": ")" +
                     std::string(mirror ? "left" : "right") +
                     R"(", "width": 14, "hinge": "front", "angle": 150},
        {"id": "flap", "kind": "flap", "face": ")" +
                     (mirror ? "left" : "right") + R"(", "from": 14, "base": 4, "top": 20},
        {"id": "drawer", "kind": "drawer", "face": ")" +
                     (mirror ? "left" : "right") + R"(", "base": 22, "pull": 18},
        {"id": "lid", "kind": "lid", "hinge": ")" +
                     (mirror ? "right" : "left") + R"(", "angle": 120}])");
    box("far", 36, 29, 10, 10, "18");
    if (last) box("near", 22, 31, 9, 12, "40");
    std::string told;
    const Opened opened(text.plan());
    for (const LeafReach& reach : opened.leaves) {
      told += reach.leaf->id.text() + ' ' + std::to_string(reach.free.degrees) + ' ' +
              std::to_string(reach.free.travel.ticks());
      for (const LeafStop& stop : reach.stops) told += ' ' + stop.thing;
      told += '\n';
    }
    return told;
  };
  // 11 in to the near thing, 9 to the far one; 36 in up, 60 high, so the lid of 20 in clears the roof and
  // stops at the wall behind its hinge.
  const std::string straight = made(false, 0, false);
  EXPECT_EQ(straight,
            "door 51 0 near\n"  // 14 sin a = 11 at 51.79
            "flap 34 0 far\n"   // 16 sin a = 9 at 34.2, where 16 cos a = 13.2 is below its top, 14 in above
                                // the hinge
            "drawer 0 " +
                std::to_string((11_in).ticks()) +
                " near\n"
                "lid 90 0 \n");
  for (const bool mirror : {false, true})
    for (const int shift : {0, 17})
      for (const bool last : {false, true})
        EXPECT_EQ(made(mirror, shift, last), straight) << mirror << shift << last;
}

}  // namespace
}  // namespace berthwright

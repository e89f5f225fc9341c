#include <gtest/gtest.h>

#include <tuple>

#include "support/cord_trailers.h"
#include "support/sited_plan.h"
#include "support/way_trailers.h"

namespace berthwright {
namespace {

// No place in a room of 50 x 50 in is 3 ft from a heater in its middle: the farthest corner is 28 in away.
TEST(HeatSheet, AZoneWiderThanTheRoomIsToldInWords) {
  TrailerText text;
  text.interior = R"({"length": 50, "width": 50, "height": 76})";
  text.pieces = {R"({"id": "H", "name": "Stove", "kind": "heater", "length": 10, "width": 10, "height": 10,
                     "faces": "rear"})"};
  text.day = {R"({"piece": "H", "at": {"front": 20, "left": 20}, "on": "floor"})"};
  const SitedPlan plan(text);
  const Sheet& sheet = plan.of("day-heat");
  EXPECT_TRUE(laid_paths(sheet, Ink::zone_published).empty());
  EXPECT_NE(noted(sheet).find("The whole room lies within that distance"), std::string::npos) << noted(sheet);
}

// Smoke and CO alarms side by side, an oven under the cooktop: at scale they would lie over each other.
TEST(QuietSheets, NoSignLiesOverAnother) {
  TrailerText text = way_trailer();
  for (const char* front : {"60", "64"})
    text.fixtures.push_back(std::string(R"({"id": "alarm )") + front +
                            R"(", "kind": "smoke alarm", "length": 3,
                            "width": 2, "at": {"left": 0, "front": )" +
                            front + R"(}, "base": 70, "top": 74})");
  for (const auto& [kind, base] : {std::pair{"oven", 20}, std::pair{"cooktop", 36}})
    text.fixtures.push_back(std::string(R"({"id": "the )") + kind + R"(", "kind": ")" + kind +
                            R"(", "length": 18, "width": 18, "faces": "left", "at": {"right": 0, "front": 44},
                            "base": )" +
                            std::to_string(base) + R"(, "top": )" + std::to_string(base + 2) + "}");
  const SitedPlan plan(text);
  for (const auto& [end, ink, count] :
       {std::tuple{"night-ways", Ink::sign_alarm, 2U}, std::tuple{"night-heat", Ink::alert, 2U}}) {
    std::vector<PaperBox> boxes;
    for (const Path& path : laid_paths(plan.of(end), ink))
      if (path.stretches.front().radius == PaperLength{}) boxes.push_back(reach_of(path));
    ASSERT_EQ(boxes.size(), count) << end;
    EXPECT_FALSE(overlaps(boxes[0], boxes[1])) << end;
  }
}

// Doors that are missing, shut or barred, windows too small, cords that reach nothing: every sheet is drawn,
// and none has lettering at fault (`sheets` throws otherwise).
TEST(QuietSheets, AreDrawnOfWhateverWaysAndCordsThereAre) {
  std::vector<TrailerText> plans = ways_of_every_status();
  for (TrailerText& cord : cords_of_every_status()) plans.push_back(std::move(cord));
  int ways = 0;
  int heats = 0;
  for (std::size_t i = 0; i < plans.size(); i += 2) {
    const Answered made(plans[i]);
    for (const Sheet& sheet : sheets(made.plan, made.answer)) {
      ways += sheet.file.ends_with("-ways");
      heats += sheet.file.ends_with("-heat");
    }
  }
  EXPECT_GT(ways, 5);
  EXPECT_GT(heats, 5);
}

}  // namespace
}  // namespace berthwright

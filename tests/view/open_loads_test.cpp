#include "view/open_loads.h"

#include <gtest/gtest.h>

#include <string>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

std::vector<std::string> open_loads(const Plan& plan) { return open_load_sentences(plan, loads_of(plan)); }
std::vector<std::string> open_of(const std::string& sections) { return open_loads(small_plan(sections)); }

/// 900 lb on the scales, so many of them on the coupling; by day and by night, with these limits.
std::vector<std::string> open_of_scales(int coupling, const std::string& more = "") {
  return open_of(R"("configurations": {"day": [], "night": []}, "chassis": {"coupling": 40, "axle": 80)" +
                 more + R"(, "weighed": {"coupling": ")" + std::to_string(coupling) + R"( lb", "axle": ")" +
                 std::to_string(900 - coupling) + R"( lb"}})");
}
constexpr auto ample = R"(, "limits": {"whole": "900 lb", "axle": "900 lb", "coupling": "200 lb"})";

// 108 of 900 lb are 12 %, 45 are 5, 144 are 16. 45 lb are 20.41 kg, 855 lb 387.82, 840 lb 381.01, 890 lb
// 403.69; 900 lb are 408.23 kg, and 10 lb 4.54.
TEST(OpenLoadSentences, TellEachFigureThatIsNotMetOnce) {
  EXPECT_TRUE(open_of_scales(108, ample).empty());
  const std::string range =
      "compared with 10 to 15 % (table of a trailer owner's manual, of the loaded "
      "trailer's weight): ";
  EXPECT_EQ(
      open_of_scales(45, ample),
      std::vector<std::string>{"The share on the coupling is 5.00 % of the whole, " + range + "too little."});
  EXPECT_EQ(
      open_of_scales(144, ample),
      std::vector<std::string>{"The share on the coupling is 16.00 % of the whole, " + range + "too much."});
  EXPECT_EQ(
      open_of_scales(108, R"(, "limits": {"whole": "890 lb", "axle": "792 lb", "coupling": "107 lb"})"),
      (std::vector<std::string>{
          "The whole weighs 900 lb (408.3 kg); its plate allows 890 lb (403.6 kg): not met, over it by 10 "
          "lb (4.6 kg).",
          "The coupling carries 108 lb (49.0 kg); its plate allows 107 lb (48.5 kg): not met."}));
}

TEST(OpenLoadSentences, TellWhatIsUnknownAndWhy) {
  EXPECT_TRUE(open_of(R"("configurations": {"day": []})").empty()) << "nothing is asked";
  const std::vector<std::string> told =
      open_of(R"("configurations": {"day": []}, "chassis": {"coupling": 40, "axle": 80, "track": 60,
                 "limits": {"axle": "800 lb"}})");
  ASSERT_EQ(told.size(), 4U);
  EXPECT_TRUE(
      told[0].starts_with("The share on the coupling is unknown, as the plan does not say what the "
                          "scales found; compared would be 10 to 15 % ("));
  EXPECT_EQ(told[1], "How even the left and right wheels are is unknown without the wheels weighed.");
  EXPECT_EQ(told[2],
            "The axle carries an unknown load; its plate allows 800 lb (362.8 kg): kept or not, by what is "
            "not known.");
  EXPECT_EQ(told[3], "The plan gives no plates of whole and coupling: what they may carry is unknown.");
  // A van is asked for no share, and its plates are unknown all the same.
  EXPECT_EQ(open_of(R"("configurations": {"day": []}, "chassis": {"towed": false})"),
            std::vector<std::string>{"The plan gives no plates: what whole and axle may carry is unknown."});
  const std::string supply =
      R"("circuits": [{"id": "a", "breaker": 15, "loads": [{"name": "Fan", "watts": 100}]}]})";
  EXPECT_EQ(open_of(R"("configurations": {"day": []}, "supply": {)" + supply),
            std::vector<std::string>{"The plan gives no \"amps\" of the supply: what everything together may "
                                     "draw is unknown."});
  EXPECT_TRUE(open_of(R"("configurations": {"day": []}, "supply": {"amps": 20, )" + supply).empty());
}

// 20 and 10 gal full weigh 250 lb, of which 83 are told; 1300 lb hold what is told and not what is full.
TEST(OpenLoadSentences, TellWhatFullTanksBreak) {
  std::string text = repository_text("tests/plan/loads.json");
  const std::string limit = R"("whole": "1500 lb")";
  text.replace(text.find(limit), limit.size(), R"("whole": "1300 lb")");
  std::size_t broken = 0;
  for (const std::string& one : open_loads(plan_from(text)))
    if (one.find("its plate allows 1300 lb") != std::string::npos) {
      EXPECT_TRUE(one.starts_with("With every tank full: the whole weighs between ")) << one;
      EXPECT_NE(one.find(": not met, over it by between 50 lb ("), std::string::npos) << one;
      ++broken;
    }
  EXPECT_EQ(broken, 1U);
}

// By night a leg of 100 lb stands 50 in behind the axle, 120 in from the coupling: 41.67 lb less on its
// 108: 66.33 of 900 are 7.370 %, told rounded down: less is worse.
TEST(OpenLoadSentences, BeginWithWhenAndThenWithTheTanks) {
  const std::vector<std::string> told = open_of(
      R"("interior": {"length": 200, "width": 76, "height": 76},
      "pieces": [{"id": "A", "kind": "leg", "length": 2, "width": 2, "thickness": 20, "weight": "100 lb"}],
      "fixtures": [{"id": "T", "kind": "tank", "length": 20, "width": 20, "top": 10, "weight": 0, "volume": "5 gal",
                    "fill": 0, "at": {"front": 70, "left": 0}}],
      "configurations": {"day": [{"piece": "A", "at": {"front": 79, "left": 37}}],
                         "night": [{"piece": "A", "at": {"front": 129, "left": 37}}]},
      "chassis": {"coupling": 40, "axle": 80, "limits": {"whole": "1000 lb", "axle": "900 lb",
                  "coupling": "200 lb"}, "weighed": {"coupling": "108 lb", "axle": "792 lb",
                  "with": "everything", "configuration": "day"}})");
  ASSERT_EQ(told.size(), 2U) << testing::PrintToString(told);
  EXPECT_TRUE(told[0].starts_with("By night: The share on the coupling is 7.37 % of the whole")) << told[0];
  EXPECT_TRUE(told[1].starts_with("By night, with every tank full: the share on the coupling is 7."))
      << told[1];
}

// 1500 W continuous count 1875 of 1800: 0.625 A too much; 12.5 A are 0.5 above the 12 of a plug.
TEST(OpenLoadSentences, SayWhenWhereItIsNotAlways) {
  const auto told = [](const std::string& night) {
    return open_of(R"("pieces": [{"id": "H", "name": "Heater", "kind": "heater", "length": 8, "width": 8,
                                  "height": 14, "faces": "right", "watts": 1500}],
      "fixtures": [{"id": "outlet", "kind": "outlet", "length": 3, "width": 1, "at": {"front": 40, "left": 0},
                    "base": 12, "top": 16}],
      "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}, "plugged_into": "outlet"}],
                         "night": [{"piece": "H", )" +
                   night +
                   R"(}]}, "supply": {"volts": 120, "amps": 30, "circuits": [{"id": "c", "name": "Galley",
                   "breaker": 15, "feeds": ["outlet"]}]})");
  };
  const std::string over =
      "Galley, breaker of 15 A, for hours 12 A: all on, 12.5 A (1500 W), of which 12.5 A (1500 W) "
      "continuous: over by 0.7 A, as continuous loads count by 125 %. Heater alone draws 12.5 A, above the "
      "12 A for a "
      "plug on this breaker by 0.5 A.";
  EXPECT_EQ(told(R"("stowed": "outside")"), std::vector<std::string>{"By day: " + over});
  EXPECT_EQ(told(R"("at": {"front": 50, "left": 30}, "plugged_into": "outlet")"),
            std::vector<std::string>{over});
}

// At U 1 the box of 312 sq ft, 28.99 m², passes 29 W/K: at 75 °F over 30 725 W are lost, more than 700.
TEST(OpenLoadSentences, TellWhatIsNeverWarmed) {
  const std::vector<std::string> told = open_of(
      R"("interior": {"length": "10 ft", "width": "6 ft", "height": "6 ft"},
      "pieces": [{"id": "H", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right", "watts": 700}],
      "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}}]},
      "warming": {"from": "40 F", "to": "75 F", "outside": "30 F", "insulation": "U 1"})");
  ASSERT_EQ(told.size(), 2U);
  EXPECT_TRUE(told[0].starts_with("H, 700 W, never brings it from 40 °F")) << told[0];
  EXPECT_TRUE(told[1].starts_with("To hold 75 °F")) << told[1];
  EXPECT_TRUE(told[1].ends_with(": more than the heater gives.")) << told[1];
}

}  // namespace
}  // namespace berthwright

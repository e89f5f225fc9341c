#include "view/load_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

bool is_told(const std::vector<std::string>& sentences, const std::string& words) {
  return std::ranges::any_of(sentences, [&](const std::string& one) { return one.starts_with(words); });
}

// The seat stays where the scales found it on the road, so its foam counts by day alone.
TEST(LoadGrounds, NameWhatIsWeighedInAnyConfiguration) {
  const Plan plan = small_plan(
      R"("pieces": [{"id": "A", "kind": "cushion", "name": "Seat", "length": 20, "width": 20, "thickness": 4,
                     "foam": "2535"}],
         "configurations": {"road": [{"piece": "A", "at": {"front": 60, "left": 20}}],
                            "day": [{"piece": "A", "at": {"front": 40, "left": 20}}]},
         "chassis": {"coupling": 40, "axle": 80, "weighed": {"coupling": "100 lb", "axle": "800 lb",
                     "with": "everything", "configuration": "road"}})");
  const std::vector<Loads> all = loads_of(plan);
  ASSERT_TRUE(all[0].balance().things.empty());
  EXPECT_TRUE(is_told(load_grounds(plan, all), "Weight of foam (Seat): "));
  EXPECT_FALSE(is_told(load_grounds(plan, {all[0]}), "Weight of foam"));
}

// 20 and 10 gal full weigh 75.7 and 37.9 kg, 250.4 lb, of which 83.5 lb are in the 1,183 to 1,204 lb as told.
TEST(LoadWords, TellWhichPlatesFullTanksBreak) {
  std::string text = repository_text("tests/plan/loads.json");
  const std::string limit = R"("whole": "1500 lb")";
  text.replace(text.find(limit), limit.size(), R"("whole": "1300 lb")");
  const Plan plan = plan_from(text);
  const std::vector<Loads> all = loads_of(plan);
  const std::vector<std::string> told = weight_sentences(plan, all[0]);
  EXPECT_TRUE(
      is_told(told, "The plate of the whole allows 1300 lb (589.6 kg): met; left for cargo under it "));
  EXPECT_TRUE(is_told(told, "With every tank full: plate of the whole not met (over it by between 50 lb ("));
  EXPECT_TRUE(
      is_told(told, "With every tank empty: plate of the whole met (left for cargo under it between "));
  EXPECT_EQ(exit_code(plan, all), 1);
}

TEST(LoadWords, NameTheSideThatCarriesMore) {
  const auto told_of = [](const std::string& wheels) {
    const Plan plan = small_plan(
        R"("configurations": {"day": []}, "chassis": {"coupling": 40, "axle": 80, "track": "60",
           "weighed": {"coupling": "100 lb", "axle": "700 lb", )" +
        wheels + "}}");
    return weight_sentences(plan, loads_of(plan).front());
  };
  EXPECT_TRUE(is_told(
      told_of(R"("left": "340 lb", "right": "360 lb")"),
      "The right wheels carry 20 lb (9.1 kg) more than the left ones; compared with 5 % of the axle"));
  EXPECT_TRUE(is_told(told_of(R"("left": "365 lb", "right": "335 lb")"),
                      "The left wheels carry 30 lb (13.6 kg) more than the right ones; compared with"));
  EXPECT_TRUE(is_told(told_of(R"("left": "350 lb", "right": "350 lb")"),
                      "Left and right wheels carry the same; compared with"));
}

// 60 lb 60 in ahead of the axle put 30 lb on the coupling, 120 in from it; 40 lb 30 in behind take 10 off.
TEST(LoadWords, TellWhatMovesTheLoadOnTheCouplingMost) {
  const Plan plan = small_plan(
      R"("interior": {"length": 200, "width": 72, "height": 76}, "configurations": {"day": []},
         "fixtures": [{"id": "b", "name": "Bench", "kind": "bench", "length": 20, "width": 20, "top": 14,
                       "at": {"front": 100, "left": 0}, "weight": "40 lb"},
                      {"id": "g", "name": "Galley", "kind": "counter", "length": 20, "width": 20, "top": 36,
                       "at": {"front": 10, "left": 0}, "weight": "60 lb"}],
         "chassis": {"coupling": 40, "axle": 80})");
  const std::vector<std::string> told = weight_sentences(plan, loads_of(plan).front());
  EXPECT_TRUE(is_told(told,
                      "What moves the load on the coupling most: Galley +30 lb (13.6 kg); Bench -10 lb "
                      "(-4.5 kg)."));
  EXPECT_TRUE(is_told(told, "It changes the load on the coupling (tongue weight) by +20 lb (9.1 kg)."));
}

std::vector<std::string> told_of_scales(const std::string& coupling, const std::string& axle,
                                        const std::string& fixtures = "") {
  const Plan plan = small_plan(R"("configurations": {"day": []}, "fixtures": [)" + fixtures +
                               R"(], "chassis": {"coupling": 40, "axle": 70, "weighed": {"coupling": ")" +
                               coupling + R"(", "axle": ")" + axle + R"("}})");
  return weight_sentences(plan, loads_of(plan).front());
}

// 99.999 of 1000 lb are 9.9999 %, 150.001 are 15.0001: by a hair outside of 10 to 15 %.
TEST(LoadWords, TellOnWhichSideOfItsRangeAShareLies) {
  const auto is_share = [](const char* coupling, const char* axle, const std::string& figure,
                           const std::string& verdict) {
    const std::vector<std::string> told = told_of_scales(coupling, axle);
    return std::ranges::any_of(told, [&](const std::string& one) {
      return one.starts_with("That is " + figure + " of the whole, compared with 10 to 15 %") &&
             one.ends_with(": " + verdict + ".");
    });
  };
  EXPECT_TRUE(is_share("99.999 lb", "900.001 lb", "9.99 to 10.00 %", "too little"));
  EXPECT_TRUE(is_share("80 lb", "920 lb", "8.00 %", "too little"));
  EXPECT_TRUE(is_share("100 lb", "900 lb", "10.00 %", "within"));
  EXPECT_TRUE(is_share("150 lb", "850 lb", "15.00 %", "within"));
  EXPECT_TRUE(is_share("150.001 lb", "849.999 lb", "15.00 to 15.01 %", "too much"));
}

// A weight that nobody says, ahead of the axle, and another one behind it: neither end of either load.
TEST(LoadWords, SayAnUnknownLoadOfWhatHasNoEnd) {
  const auto cabinet = [](const char* id, const char* front) {
    return std::string(R"({"id": ")") + id +
           R"(", "kind": "cabinet", "length": 20, "width": 20, "top": 30, "at": {"left": 0, "front": )" +
           front + "}}";
  };
  const std::vector<std::string> told =
      told_of_scales("100 lb", "900 lb", cabinet("a", "10") + ", " + cabinet("b", "90"));
  EXPECT_TRUE(std::ranges::any_of(told, [](const std::string& one) {
    return one.find("the coupling carries an unknown load (tongue weight) and the axle at least 900 lb") !=
           std::string::npos;
  })) << testing::PrintToString(told);
}

// 100 W of a fan on the circuit of a heater of which nobody says what it draws.
TEST(LoadWords, DoNotCallACircuitWithinWhileItsHeaterIsUnknown) {
  const auto told_of = [](const std::string& watts) {
    const Plan plan = small_plan(
        R"("pieces": [{"id": "H", "name": "Heater", "kind": "heater", "length": 8, "width": 8, "height": 14,
                       "faces": "right")" +
        watts +
        R"(}], "fixtures": [{"id": "outlet", "kind": "outlet", "length": 3, "width": 1, "base": 12, "top": 16,
                             "at": {"front": 40, "left": 0}}],
           "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}, "plugged_into": "outlet"}]},
           "supply": {"volts": 120, "amps": 20, "circuits": [{"id": "c", "name": "Galley", "breaker": 15,
                      "feeds": ["outlet"], "loads": [{"name": "Fan", "watts": 100, "continuous": false}]}]})");
    return supply_sentences(plan, loads_of(plan).front());
  };
  const std::vector<std::string> known = told_of(R"(, "watts": 600)");
  EXPECT_TRUE(known.at(0).ends_with("continuous: within.")) << known.at(0);
  const std::vector<std::string> dark = told_of("");
  EXPECT_EQ(dark.at(0),
            "Galley, breaker of 15 A, for hours 12 A: Fan 0.9 A (100 W); Heater, watts not given. All on, "
            "0.9 A (100 W): within as far as the loads are known.");
  EXPECT_EQ(dark.at(1),
            "The whole supply, 20 A, for hours 16 A: all on, 0.9 A (100 W): within as far as the loads are "
            "known.");
  EXPECT_EQ(dark.at(2), "Most that may run together, of what is known: Fan, 0.9 A (100 W).");
}

/// A trailer of 800 lb, its wheels even, with a cabinet that nobody weighed.
std::vector<std::string> told_of_unweighed(const std::string& at, const std::string& limits = "") {
  const Plan plan = small_plan(
      R"("interior": {"length": 200, "width": 76, "height": 76}, "configurations": {"day": []},
         "fixtures": [{"id": "a", "kind": "cabinet", "length": 20, "width": 20, "top": 30, "at": {)" +
      at + R"(}}], "chassis": {"coupling": 40, "axle": 70, "track": 60, "limits": {)" + limits +
      R"(}, "weighed": {"coupling": "100 lb", "axle": "700 lb", "left": "350 lb", "right": "350 lb"}})");
  return weight_sentences(plan, loads_of(plan).front());
}

// It weighs at least nothing, and so it adds at least nothing to one side: neither is a figure.
TEST(LoadWords, TellNoFigureOfWhatMayBeNothing) {
  const std::vector<std::string> ahead = told_of_unweighed(R"("front": 10, "left": 50)");
  EXPECT_TRUE(is_told(ahead,
                      "What the plan holds beside what stood on the scales is of unknown weight: the "
                      "plan does not say what a weighs."));
  EXPECT_TRUE(is_told(ahead, "What moves the load on the coupling most: a an unknown amount more."));
  EXPECT_TRUE(is_told(ahead,
                      "The right wheels carry an unknown amount more than the left ones; compared with 5 % "
                      "of the axle (common practice, no source): kept or not, by what is not known."));
  const std::vector<std::string> behind = told_of_unweighed(R"("front": 100, "left": 5)");
  EXPECT_TRUE(is_told(behind, "What moves the load on the coupling most: a an unknown amount less."));
  EXPECT_TRUE(is_told(behind,
                      "The left wheels carry an unknown amount more than the right ones; compared with 5 % "
                      "of the axle (common practice, no source): kept or not, by what is not known."));
}

// What the plate allows is known; whether it is kept is not.
TEST(LoadWords, DoNotCallAPlateUnknown) {
  const std::vector<std::string> told =
      told_of_unweighed(R"("front": 10, "left": 28)", R"("whole": "1000 lb", "axle": "690 lb")");
  EXPECT_TRUE(is_told(told,
                      "The plate of the whole allows 1000 lb (453.5 kg): kept or not, by what is not known; "
                      "left for cargo under it at most 200 lb (90.8 kg)."));
  for (const std::string& one : told) EXPECT_EQ(one.find(": unknown"), std::string::npos) << one;
}

TEST(LoadWords, TellWhyNothingMayRunTogether) {
  const auto together = [](const std::string& circuit, const std::string& heater = "") {
    const Plan plan = small_plan(
        R"("pieces": [)" + heater + R"(], "configurations": {"day": [)" +
        (heater.empty() ? "" : R"({"piece": "H", "at": {"front": 50, "left": 30}})") +
        R"(]}, "supply": {"volts": 120, "circuits": [{"id": "c", "breaker": 15)" + circuit + "}]}");
    return together_sentence(plan, *loads_of(plan).front().supply);
  };
  const std::string heater =
      R"({"id": "H", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right")";
  EXPECT_EQ(together(""), "Nothing that draws hangs on a circuit.");
  EXPECT_EQ(together(R"(, "loads": [{"name": "Kettle", "watts": 1900}])"),
            "Nothing that hangs on a circuit may run.");
  const std::string unknown =
      "What may run together is unknown: of nothing that draws are watts and circuit known.";
  EXPECT_EQ(together("", heater + "}"), unknown);
  EXPECT_EQ(together("", heater + R"(, "watts": 500})"), unknown);
  EXPECT_EQ(together(R"(, "loads": [{"name": "Kettle", "watts": 1900}])", heater + "}"),
            "Nothing whose watts and circuit are known may run.");
}

// 100 W are less than holding takes, but nobody says what the other heater gives.
TEST(LoadWords, DoNotCallHeatTooLittleOfWhichSomeIsUnknown) {
  const auto last_of = [](const std::string& other) {
    const auto heater = [](const char* id, const std::string& more) {
      return std::string(R"({"id": ")") + id +
             R"(", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right")" + more + "}";
    };
    const Plan plan = small_plan(
        R"("pieces": [)" + heater("H", R"(, "watts": 100)") + "," + heater("I", other) +
        R"(], "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}, "state": "running"},
                                         {"piece": "I", "at": {"front": 80, "left": 30}, "state": "running"}]},
           "warming": {"from": "40 F", "to": "68 F", "outside": "10 F", "insulation": "R-3"})");
    return warm_up_sentences(plan, loads_of(plan).front()).back();
  };
  EXPECT_TRUE(last_of(R"(, "watts": 100)").ends_with(": more than the heater gives."));
  EXPECT_TRUE(last_of("").ends_with("and a whole change: our own choice).")) << last_of("");
}

}  // namespace
}  // namespace berthwright

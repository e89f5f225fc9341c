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

/// What is told of 102.4 lb on the coupling and 797.6 on the axle, all on the scales, with these limits.
std::vector<std::string> told_under(const std::string& limits) {
  const Plan plan =
      small_plan(R"("configurations": {"day": []}, "chassis": {"coupling": 40, "axle": 80, "limits": {)" +
                 limits + R"(}, "weighed": {"coupling": "102.4 lb", "axle": "797.6 lb"}})");
  return weight_sentences(plan, loads_of(plan).front());
}

// 102.4 lb are 46.45 kg and 797.6 361.79; 1000.4 lb less 900 leave 100.4 lb, 45.54 kg.
TEST(LoadWords, TellNoLoadLighterAndNoRoomLargerThanItIs) {
  const std::vector<std::string> told = told_under(R"("whole": "1000.4 lb", "coupling": "102 lb")");
  EXPECT_TRUE(
      is_told(told,
              "The whole trailer weighs 900 lb (408.3 kg), of which the coupling carries 103 lb (46.5 "
              "kg) (tongue weight) and the axle 798 lb (361.8 kg)."))
      << testing::PrintToString(told);
  EXPECT_TRUE(is_told(told,
                      "The plate of the whole allows 1000 lb (453.7 kg): met; left for cargo under it 100 lb "
                      "(45.5 kg)."))
      << testing::PrintToString(told);
  EXPECT_TRUE(is_told(told, "The plate of the coupling allows 102 lb (46.2 kg): not met."));
}

// 400 lb 50 in behind the axle, 100 in from the coupling: 200 lb off its 50.
TEST(LoadWords, SayThatACouplingIsLifted) {
  const Plan plan = small_plan(
      R"("configurations": {"day": []}, "fixtures": [{"id": "a", "kind": "cabinet", "length": 20, "width": 20,
         "top": 30, "at": {"front": 100, "left": 0}, "weight": "400 lb"}],
         "chassis": {"coupling": 40, "axle": 60, "weighed": {"coupling": "50 lb", "axle": "800 lb"}})");
  const std::vector<std::string> told = weight_sentences(plan, loads_of(plan).front());
  EXPECT_TRUE(
      is_told(told,
              "The whole trailer weighs 1250 lb (567.0 kg), its coupling is lifted by 150 lb (68.1 kg), "
              "and the axle carries 1400 lb (635.1 kg)."))
      << testing::PrintToString(told);
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
                      "The left wheels carry 30 lb (13.7 kg) more than the right ones; compared with"));
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
                      "What moves the load on the coupling most: Galley +30 lb (13.7 kg); Bench -10 lb "
                      "(-4.6 kg)."));
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

// Of 1000.001 lb 113.92 are 11.3920 %, of 999.999 lb 95.511 are 9.5511 %; 13.3934 and 16.3934 of 1000. Below
// the middle of 10 to 15 % less is worse, above it more.
TEST(LoadWords, TellAShareOnTheSideOnWhichItsRangeEnds) {
  EXPECT_TRUE(is_told(told_of_scales("113.92 lb", "886.081 lb"), "That is 11.39 % of the whole"));
  EXPECT_TRUE(is_told(told_of_scales("95.511 lb", "904.488 lb"), "That is 9.55 % of the whole"));
  EXPECT_TRUE(is_told(told_of_scales("133.934 lb", "866.066 lb"), "That is 13.40 % of the whole"));
  EXPECT_TRUE(is_told(told_of_scales("163.934 lb", "836.066 lb"), "That is 16.40 % of the whole"));
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
            "at least 0.9 A (100 W): within as far as the loads are known.");
  EXPECT_EQ(dark.at(1),
            "The whole supply, 20 A, for hours 16 A: all on, at least 0.9 A (100 W): within as far as the "
            "loads are "
            "known.");
  EXPECT_EQ(dark.at(2),
            "Most that may run together, of what is known and while the rest is off: Fan, at least 0.9 A "
            "(100 W).");
}

// 1900 W alone are above the 1800 of 15 A at 120 V by 100, 0.9 A, and nobody says what the heater adds.
TEST(LoadWords, TellWhatIsOverAtLeastWhileAHeaterIsUnknown) {
  const auto told_of = [](const std::string& plugged, const std::string& watts) {
    const Plan plan = small_plan(
        R"("pieces": [{"id": "H", "name": "Heater", "kind": "heater", "length": 8, "width": 8, "height": 14,
                       "faces": "right")" +
        watts +
        R"(}], "fixtures": [{"id": "outlet", "kind": "outlet", "length": 3, "width": 1, "base": 12, "top": 16,
                             "at": {"front": 40, "left": 0}}],
           "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30})" +
        plugged + R"(}]},
           "supply": {"volts": 120, "circuits": [
             {"id": "c", "name": "Galley", "breaker": 15, "feeds": ["outlet"],
              "loads": [{"name": "Kettle", "watts": 1900}]},
             {"id": "d", "name": "Rear", "breaker": 15, "loads": [{"name": "Lamp", "watts": 60}]}]})");
    return supply_sentences(plan, loads_of(plan).front());
  };
  const std::string end = " Kettle alone draws 15.9 A, above the 12 A for a plug on this breaker by 3.9 A.";
  EXPECT_TRUE(told_of(R"(, "plugged_into": "outlet")", "")
                  .at(0)
                  .ends_with("All on, at least 15.9 A (1900 W): over by at least 0.9 A." + end));
  const std::vector<std::string> astray = told_of("", R"(, "watts": 600)");
  EXPECT_TRUE(astray.at(0).ends_with(
      "All on, at least 15.9 A (1900 W), with everything on it that has no circuit in the plan 20.9 A "
      "(2500 W): over by at least 0.9 A." +
      end))
      << astray.at(0);
  EXPECT_TRUE(astray.at(1).ends_with(
      "All on, at least 0.5 A (60 W), with everything on it that has no circuit in the plan 5.5 A (660 W): "
      "within."))
      << astray.at(1);
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
  EXPECT_TRUE(is_told(ahead, "Where its centre of gravity lies is unknown as well."));
  // 100 of 800 lb are 12.5 %, and more ahead of the axle makes more.
  EXPECT_TRUE(is_told(ahead, "That is 12.50 to 45.46 % of the whole, compared with 10 to 15 % ("));
  EXPECT_TRUE(is_told(ahead, "That is") &&
              std::ranges::any_of(ahead,
                                  [](const std::string& one) {
                                    return one.ends_with(
                                        ": within or not, as the plan does not say exactly what a weighs.");
                                  }))
      << testing::PrintToString(ahead);
  EXPECT_TRUE(
      is_told(ahead, "What moves the load on the coupling most: a, which adds nobody knows how much."));
  EXPECT_TRUE(is_told(
      ahead,
      "The right wheels carry as much as the left ones or more, by how much is unknown; "
      "compared with 5 % of the axle (common practice, no source): kept or not, by what is not known."));
  const std::vector<std::string> behind = told_of_unweighed(R"("front": 100, "left": 5)");
  EXPECT_TRUE(is_told(behind, "That is 0.00 to 12.50 % of the whole, compared with 10 to 15 % ("));
  EXPECT_TRUE(
      is_told(behind, "What moves the load on the coupling most: a, which takes off nobody knows how much."));
  EXPECT_TRUE(is_told(
      behind,
      "The left wheels carry as much as the right ones or more, by how much is unknown; "
      "compared with 5 % of the axle (common practice, no source): kept or not, by what is not known."));
}

// What the plate allows is known; whether it is kept is not.
TEST(LoadWords, DoNotCallAPlateUnknown) {
  const std::vector<std::string> told =
      told_of_unweighed(R"("front": 10, "left": 28)", R"("whole": "1000 lb", "axle": "690 lb")");
  EXPECT_TRUE(is_told(told,
                      "The plate of the whole allows 1000 lb (453.5 kg): kept or not, by what is not known; "
                      "left for cargo under it at most 200 lb (90.7 kg)."));
  for (const std::string& one : told) EXPECT_EQ(one.find(": unknown"), std::string::npos) << one;
}

std::string supply_of(const std::string& english, const std::string& more = "") {
  const Plan plan = small_plan(R"("english": ")" + english + R"(", "configurations": {"day": []})" + more +
                               R"(, "supply": {"circuits": [{"id": "c", "breaker": 10,
                                   "loads": [{"name": "Kettle", "watts": 3000}]}]})");
  std::string told;
  for (const std::string& one : supply_sentences(plan, loads_of(plan).front())) told += one + "\n";
  return told;
}

// NEC is the American code; facts have no British or Australian figure for it.
TEST(LoadWords, SayThatARuleIsAmericanWhereThePlanIsNot) {
  const std::string words = "What a breaker carries for hours was taken from an American rule (NEC";
  EXPECT_EQ(supply_of("american").find(words), std::string::npos);
  EXPECT_NE(supply_of("british").find(words), std::string::npos);
  EXPECT_NE(supply_of("american", R"(, "chassis": {"range": "australia"})").find(words), std::string::npos);
  const Plan plan =
      small_plan(R"("english": "british", "configurations": {"day": []}, "supply": {"circuits": [
      {"id": "c", "breaker": 10, "loads": [{"name": "Kettle", "watts": 3000}]}]})");
  const std::vector<std::string> open = open_supply_sentences(plan, *loads_of(plan).front().supply);
  EXPECT_TRUE(is_told(open, words)) << "beside what is over";
}

TEST(LoadWords, GiveInsulationItsUnit) {
  const auto room = [](const char* insulation) {
    const Plan plan = small_plan(R"("configurations": {"day": []}, "warming": {"from": "40 F", "to": "68 F",
                                    "insulation": ")" +
                                 std::string(insulation) + R"("})");
    return warm_up_sentences(plan, loads_of(plan).front()).front();
  };
  EXPECT_TRUE(room("R-3").ends_with("insulation R-3 (sq ft °F h/Btu)."));
  EXPECT_TRUE(room("U 0.9").ends_with("insulation U 0.9 W/m²K."));
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

// The box of 10 x 6 x 6 ft at U 1 loses 725 W at 75 °F over 30, and with half a change of air 767, with a
// whole one and seams 1535: 750 W get there by the insulation alone, 1000 may, 1600 do.
TEST(LoadWords, SayThatWhatIsNotHeldMayNotBeReached) {
  const auto told = [](const char* watts) {
    const Plan plan = small_plan(
        R"("interior": {"length": "10 ft", "width": "6 ft", "height": "6 ft"},
        "pieces": [{"id": "H", "kind": "heater", "length": 8, "width": 8, "height": 14, "faces": "right", "watts": )" +
        std::string(watts) +
        R"(}], "configurations": {"day": [{"piece": "H", "at": {"front": 50, "left": 30}}]},
        "warming": {"from": "40 F", "to": "75 F", "outside": "30 F", "insulation": "U 1"})");
    return time_sentence(plan, *loads_of(plan).front().warm_up);
  };
  EXPECT_NE(told("750").find("takes more than the heater gives, so it gets there only where less air"),
            std::string::npos);
  EXPECT_TRUE(
      told("1000").ends_with(" Where holding that takes more than the heater gives, it never gets there."));
  EXPECT_TRUE(told("1600").ends_with("min).")) << told("1600");
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

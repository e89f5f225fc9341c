#include "view/load_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

bool has_sentence(const std::vector<std::string>& sentences, const std::string& words) {
  return std::ranges::any_of(sentences, [&](const std::string& one) { return one.starts_with(words); });
}

std::vector<std::string> told_with(const std::string& limits) {
  const Plan plan =
      small_plan(R"("configurations": {"day": []}, "chassis": {"coupling": 40, "axle": 80, "limits": {)" +
                 limits + R"(}, "weighed": {"coupling": "100 lb", "axle": "800 lb"}})");
  return weight_sentences(plan, loads_of(plan).front());
}

// Without the place of the axle what the scales found is told, of what stood on them.
TEST(LoadWords, TellWhatTheScalesFoundWithoutThePlacesOfCouplingAndAxle) {
  const auto told_of = [](const std::string& fixtures) {
    const Plan plan = small_plan(R"("configurations": {"day": []}, "fixtures": [)" + fixtures +
                                 R"(], "chassis": {"coupling": 40, "limits": {"coupling": "150 lb"},
                                     "weighed": {"coupling": "100 lb", "axle": "900 lb"}})");
    return weight_sentences(plan, loads_of(plan).front());
  };
  EXPECT_TRUE(has_sentence(
      told_of(""), "The whole trailer weighs 1000 lb (453.6 kg), of which the coupling carries 100 lb"));
  const std::vector<std::string> added = told_of(
      R"({"id": "a", "kind": "cabinet", "length": 20, "width": 20, "top": 30, "weight": "9 lb",
          "at": {"left": 0, "front": 0}})");
  EXPECT_TRUE(
      has_sentence(added,
                   "On the scales the coupling carried 100 lb (45.4 kg) and the axle 900 lb (408.3 kg), "
                   "with what stood on them; what was added or moved since is not in it."))
      << testing::PrintToString(added);
}

TEST(LoadWords, SayWhichPlatesAreNotGiven) {
  const std::string none = "The plan gives no plates: what whole, axle and coupling may carry is unknown.";
  const std::string axle = "The plan gives no plate of the axle: what it may carry is unknown.";
  EXPECT_TRUE(has_sentence(told_with(""), none));
  EXPECT_TRUE(has_sentence(told_with(R"("whole": "1000 lb", "coupling": "150 lb")"), axle));
  EXPECT_FALSE(has_sentence(told_with(R"("whole": "1000 lb", "coupling": "150 lb", "axle": "900 lb")"),
                            "The plan gives no plate"));
}

// Bars and table tell plate, load and verdict; what is left for cargo they do not.
TEST(LoadWords, DoNotRepeatBesideBarsWhatTheyTell) {
  const Plan plan = small_plan(
      R"("configurations": {"day": []}, "chassis": {"coupling": 40, "axle": 80, "limits": {"whole": "1000 lb",
         "axle": "900 lb", "coupling": "150 lb"}, "weighed": {"coupling": "100 lb", "axle": "800 lb"}})");
  const Loads loads = loads_of(plan).front();
  EXPECT_TRUE(has_sentence(weight_sentences(plan, loads), "The plate of the axle allows"));
  EXPECT_TRUE(has_sentence(weight_sentences(plan, loads), "The plate of the coupling allows"));
  const std::vector<std::string> remarks = weight_remarks(plan, loads);
  EXPECT_FALSE(has_sentence(remarks, "The plate of the axle allows"));
  EXPECT_FALSE(has_sentence(remarks, "The plate of the coupling allows"));
  EXPECT_TRUE(has_sentence(remarks, "The plate of the whole allows 1000 lb (453.5 kg): met; left for cargo"));
}

// 38 to 62 lb on the scales and now: 24 lb, 10.89 kg, more or less.
TEST(LoadWords, NameWhatMayDifferAndTanksWithoutAnEnd) {
  const Plan plan = small_plan(
      R"("configurations": {"day": []},
         "fixtures": [{"id": "t", "name": "Tank", "kind": "tank", "length": 20, "width": 20, "top": 12,
                       "at": {"front": 0, "left": 0}, "weight": "10 lb"}],
         "cargo": [{"id": "gas", "name": "Bottles", "weight": ["38 lb", "62 lb"], "ahead_of_front": 20}],
         "chassis": {"coupling": 40, "axle": 80, "weighed": {"coupling": "100 lb", "axle": "700 lb",
                     "with": "everything", "configuration": "day"}})");
  const std::vector<std::string> told = weight_sentences(plan, loads_of(plan).front());
  EXPECT_TRUE(has_sentence(told,
                           "What may weigh more or less than it did on the scales, as the plan gives a span: "
                           "Bottles by up to 24 lb (10.9 kg)."))
      << testing::PrintToString(told);
  EXPECT_TRUE(has_sentence(told,
                           "How much Tank holds the plan does not say, so what is in it has no end: write "
                           "\"volume\" beside \"kind\"."));
}

}  // namespace
}  // namespace berthwright

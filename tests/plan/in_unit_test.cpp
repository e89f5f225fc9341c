#include <berthwright/plan/house_text.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <random>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include <berthwright/exact/mass.h>
#include <berthwright/plan/plan.h>

#include "plan/document.h"
#include "support/comments_in.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

UnitText written_in(const std::string& text, Unit unit) {
  Result<UnitText> result = in_unit(text, unit);
  if (!result) throw std::invalid_argument(listed(result.problems()));
  return std::move(result).value();
}

/// A plan in one line each for unit, room, one bench and its place.
std::string small_text(const std::string& unit, const std::string& room, const std::string& bench) {
  return "{\"berthwright\": 1, \"title\": \"T\", \"unit\": \"" + unit + "\",\n\"interior\": {" + room +
         "},\n\"fixtures\": [{\"id\": \"b\", \"kind\": \"bench\", " + bench +
         "}],\n\"pieces\": [], \"configurations\": {\"day\": []}}";
}

// One inch is 25.4 mm by definition (the international inch of 1959): 120 in = 3048 mm, 6 ft 4 in = 76 in =
// 1930.4 mm, 74 1/2 in = 1892.3 mm, 38 in = 965.2 mm, 0.703 in = 17.8562 mm, 14 in = 355.6 mm.
TEST(InUnit, SpellsInchesInMillimetres) {
  const UnitText metric = written_in(
      small_text("in", R"("length": 120, "width": "6 ft 4 in", "height": "74-1/2")",
                 R"("length": "38", "width": "0.703", "at": {"front": "0", "left": 3.5}, "top": "35.56 cm")"),
      Unit::millimetre);
  EXPECT_EQ(
      metric.text,
      small_text(
          "mm", R"("length": 3048, "width": "1930.4", "height": "1892.3")",
          R"("length": "965.2", "width": "17.8562", "at": {"front": "0", "left": 88.9}, "top": "355.6")"));
  EXPECT_EQ(metric.lengths, 7U) << "all but the zero";
  EXPECT_EQ(metric.from, Unit::inch);
  EXPECT_TRUE(metric.kept.empty());
  EXPECT_EQ(metric.defaults, (std::vector<ChangedDefault>{{"/paper", "letter", "a4"}}));
}

// 300 / 25.4 = 1500 / 127 and 127 is prime, so 300 mm has no finite decimal in inches and is no 64th; 9.525
// mm = 3/8 in; 17.8562 / 25.4 = 0.703; 0.003175 mm = 1/8000 in = 0.000125 in.
TEST(InUnit, KeepsWhatInchesCannotSay) {
  const UnitText inches = written_in(
      small_text(
          "mm", R"("length": 3048, "width": 1930.4, "height": "1.88 m")",
          R"("length": 300, "width": "9.525", "at": {"front": 17.8562, "left": "0.003175"}, "top": "300 mm")"),
      Unit::inch);
  EXPECT_EQ(
      inches.text,
      small_text(
          "in", R"("length": 120, "width": 76, "height": "1.88 m")",
          R"("length": "300 mm", "width": "3/8", "at": {"front": 0.703, "left": "0.000125"}, "top": "300 mm")"));
  EXPECT_EQ(inches.kept, (std::vector<KeptLength>{{2, "1.88 m"}, {3, "300 mm"}, {3, "300 mm"}}));
  EXPECT_EQ(inches.lengths, 5U);
}

TEST(InUnit, LeavesBareNumbersOfAPlanThatHasTheUnit) {
  const std::string room = R"("length": 120.0, "width": "79-1/2 ", "height": ")";
  const std::string bench =
      R"("length": ".5", "width": "10 mm", "at": {"front": "0", "left": "0"}, "top": "2")";
  const UnitText same = written_in(small_text("in", room + "6 ft 2 in\"", bench), Unit::inch);
  EXPECT_EQ(same.text, small_text("in", room + "74\"", bench));
  EXPECT_EQ(same.kept, (std::vector<KeptLength>{{3, "10 mm"}}));
  EXPECT_EQ(same.lengths, 1U);
  EXPECT_TRUE(same.defaults.empty());
}

// A bare weight counts in pounds beside inches and in kilograms beside millimetres, so it must now say which.
TEST(InUnit, WeightsSayWhatTheyCountIn) {
  const std::string text =
      R"({"berthwright": 1, "title": "T", "unit": "in", "paper": "letter", "interior": {"length": 120, "width": 76, "height": 74},)"
      R"( "lifting": {"weight": 35, "reach": 30, "reason": "r"}, "configurations": {"day": []}})";
  const UnitText metric = written_in(text, Unit::millimetre);
  EXPECT_NE(metric.text.find(R"("lifting": {"weight": "35 lb", "reach": 762, "reason": "r"})"),
            std::string::npos)
      << metric.text;
  EXPECT_EQ(metric.weights, 1U);
  EXPECT_TRUE(metric.defaults.empty());
  const UnitText back = written_in(metric.text, Unit::inch);
  EXPECT_NE(back.text.find("\"35 lb\""), std::string::npos);
  EXPECT_EQ(back.weights, 0U);
}

TEST(InUnit, RefusesWhatIsNoPlan) {
  EXPECT_FALSE(in_unit("", Unit::inch).ok());
  EXPECT_FALSE(in_unit("{\"unit\": \"in\"}", Unit::millimetre).ok());
}

/// Every value that differs between two texts of one shape is a length that is the same to the tick, or a
/// weight.
std::size_t compare(const Node& a, Unit of_a, const Node& b, Unit of_b) {
  EXPECT_EQ(a.pointer, b.pointer);
  EXPECT_EQ(a.children.size(), b.children.size());
  std::size_t differing = 0;
  for (std::size_t i = 0; i < std::min(a.children.size(), b.children.size()); ++i)
    differing += compare(a.children[i], of_a, b.children[i], of_b);
  if (a.text == b.text || a.pointer == "/unit") return differing;
  const Result<Length> first = read_length(a.text, of_a);
  const Result<Length> second = read_length(b.text, of_b);
  if (first && second) {
    EXPECT_EQ(first->ticks(), second->ticks()) << a.pointer;
  } else {
    EXPECT_EQ(read_mass(a.text, of_a)->units(), read_mass(b.text, of_b)->units()) << a.pointer;
  }
  return differing + 1;
}

TEST(InUnit, EveryDemoGoesThereAndBackToTheTick) {
  for (const char* name : {"tests/plan/example.json", "plans/sanderling.json", "plans/dunnock.json",
                           "plans/nuthatch.json", "plans/siskin.json", "plans/whinchat.json"}) {
    SCOPED_TRACE(name);
    const std::string text = repository_text(name);
    const Node root = *read_document(text).root;
    const UnitText metric = written_in(text, Unit::millimetre);
    EXPECT_GT(compare(root, Unit::inch, *read_document(metric.text).root, Unit::millimetre), 50U);
    EXPECT_TRUE(metric.kept.empty());
    EXPECT_EQ(comments_in(metric.text), comments_in(text));
    const UnitText back = written_in(metric.text, Unit::inch);
    compare(root, Unit::inch, *read_document(back.text).root, Unit::inch);
    EXPECT_EQ(written_in(back.text, Unit::inch).text, back.text);
  }
}

// Lengths at random on the lattice, spelled as a number of the plan's unit or with a unit of their own.
TEST(InUnit, AnyLengthStaysTheSameToTheTick) {
  for (unsigned seed = 0; seed < 200; ++seed) {
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    const auto spelled = [&] {
      const auto ticks = static_cast<std::int64_t>(random() % 40'000'000 + 1);
      switch (random() % 4) {
        case 0:
          return exact_text(Length::from_ticks(ticks), Unit::millimetre);
        case 1:
          return exact_text(Length::from_ticks(ticks / 15'875 * 15'875 + 15'875), Unit::inch);
        case 2:
          return exact_text(Length::from_ticks(ticks / 127 * 127 + 127), Unit::inch);
        default:
          return std::to_string(random() % 30 + 1);
      }
    };
    const std::string text = small_text("in", R"("length": 200, "width": 90, "height": 90)",
                                        "\"length\": \"" + spelled() + "\", \"width\": \"" + spelled() +
                                            "\", \"at\": {\"front\": \"" + spelled() + "\", \"left\": \"" +
                                            spelled() + "\"}, \"top\": \"" + spelled() + "\"");
    const UnitText metric = written_in(text, Unit::millimetre);
    const UnitText back = written_in(metric.text, Unit::inch);
    compare(*read_document(text).root, Unit::inch, *read_document(metric.text).root, Unit::millimetre);
    compare(*read_document(text).root, Unit::inch, *read_document(back.text).root, Unit::inch);
  }
}

}  // namespace
}  // namespace berthwright

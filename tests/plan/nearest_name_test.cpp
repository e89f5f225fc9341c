#include "plan/nearest_name.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "plan/meant_field.h"

namespace berthwright {
namespace {

const std::vector<std::string> fields{"length", "width", "height", "sill", "from_front", "data_plate", "on"};

TEST(NearestName, ForgivesOneLetterInThree) {
  EXPECT_EQ(nearest_name("lenght", fields), "length");  // two letters swapped count as one
  EXPECT_EQ(nearest_name("widht", fields), "width");
  EXPECT_EQ(nearest_name("Data-Plate", fields), "data_plate");
  EXPECT_EQ(nearest_name("fromfront", fields), "from_front");
  EXPECT_EQ(nearest_name("hight", fields), "height");
}

TEST(NearestName, DoesNotGuessWildly) {
  EXPECT_EQ(nearest_name("colour", fields), std::nullopt);
  EXPECT_EQ(nearest_name("x", fields), std::nullopt);
  EXPECT_EQ(nearest_name("", fields), std::nullopt);
  EXPECT_EQ(nearest_name(std::string(5000, 'w'), fields), std::nullopt);
  EXPECT_EQ(nearest_name("length", {}), std::nullopt);
}

TEST(NearestName, TakesTheFirstOfEquallyNearOnes) {
  const std::vector<std::string> names{"left bench", "lift bench"};
  EXPECT_EQ(nearest_name("loft bench", names), "left bench");
}

/// The field that is meant, and how to say it.
std::string meant(std::string_view typed, const std::vector<std::string>& known) {
  const std::optional<MeantField> field = meant_field(typed, known);
  return field ? field->field + ": " + field->cure : "";
}

// A thing has "at"; a measure has walls, a door or window a distance, a door in a face "from".
TEST(MeantField, KnowsWhatPeopleTypeForADistance) {
  const std::vector<std::string> fixture{"id", "kind", "length", "width", "at", "turn", "base", "top"};
  for (const char* typed : {"from_front", "from_left", "from-rear", "From Right", "front", "x", "position"})
    EXPECT_EQ(meant(typed, fixture),
              R"(at: write "at": {"front": "…", "left": "…"}, its distances from two walls)")
        << typed;
  const std::vector<std::string> place{"front", "rear",  "behind",   "ahead_of",
                                       "left",  "right", "right_of", "left_of"};
  EXPECT_EQ(meant("from_front", place), "front: write \"front\"");
  EXPECT_EQ(meant("back", place), "rear: write \"rear\"");
  EXPECT_EQ(meant("in front of", place), "ahead_of: write \"ahead_of\"");
  EXPECT_EQ(meant("from", {"wall", "from_left", "width"}), "from_left: write \"from_left\"");
  EXPECT_EQ(meant("front", {"wall", "from_front", "width"}), "from_front: write \"from_front\"");
  EXPECT_EQ(meant("from_front", {"face", "from", "width"}), "from: write \"from\"");
}

TEST(MeantField, KnowsOtherWordsForSizes) {
  EXPECT_EQ(meant("depth", {"length", "width", "top"}),
            R"(width: write "length" for the measure along the trailer, "width" for the one across it)");
  EXPECT_EQ(meant("depth", {"length", "thickness"}), "thickness: write \"thickness\"");
  EXPECT_EQ(meant("underside", {"base", "top"}),
            R"(base: write "base", the height of the underside above the floor)");
  // Two letters lead from "height" to "weight", and yet a person's height is meant.
  EXPECT_EQ(meant("height", {"name", "stature", "width", "weight"}), "stature: write \"stature\"");
}

TEST(MeantField, ElseTheNearestLettersCount) {
  EXPECT_EQ(meant("lenght", fields), "length: write \"length\"");
  EXPECT_EQ(meant("colour", fields), "");
  EXPECT_EQ(meant("from_front", {"name", "shop"}), "") << "nothing of it may stand there";
}

/// The textbook recursion, without limit or table.
std::size_t slowly_apart(std::string_view a, std::string_view b) {
  if (a.empty() || b.empty()) return a.size() + b.size();
  std::size_t best = std::min({slowly_apart(a.substr(1), b) + 1, slowly_apart(a, b.substr(1)) + 1,
                               slowly_apart(a.substr(1), b.substr(1)) + (a[0] == b[0] ? 0U : 1U)});
  if (a.size() > 1 && b.size() > 1 && a[0] == b[1] && a[1] == b[0])
    best = std::min(best, slowly_apart(a.substr(2), b.substr(2)) + 1);
  return best;
}

TEST(NearestName, AgreesWithTheTextbookRecursion) {
  std::mt19937 random(7);
  const auto word = [&] {
    std::string letters;
    for (std::size_t n = 1 + random() % 6; n > 0; --n) letters += static_cast<char>('a' + random() % 3);
    return letters;
  };
  for (int round = 0; round < 2000; ++round) {
    SCOPED_TRACE(round);
    const std::string name = word();
    const std::vector<std::string> candidates{word(), word(), word()};
    const std::size_t limit = std::min<std::size_t>(3, (name.size() + 1) / 3);
    const auto best =
        std::ranges::min_element(candidates, {}, [&](const auto& c) { return slowly_apart(name, c); });
    const auto near = nearest_name(name, candidates);
    if (slowly_apart(name, *best) <= limit)
      EXPECT_EQ(near, *best);
    else
      EXPECT_EQ(near, std::nullopt);
  }
}

}  // namespace
}  // namespace berthwright

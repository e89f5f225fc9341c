#include "write/wrap.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

TEST(Wrap, BreaksAtTheLastSpaceThatFits) {
  const std::string word(40, 'x');
  EXPECT_EQ(wrapped(word + " " + word + " " + word, {"* ", "  "}),
            "* " + word + " " + word + "\n  " + word + "\n");
}

TEST(Wrap, CountsCharactersNotBytes) {
  std::string inches;
  for (int i = 0; i < 49; ++i) inches += "½";
  EXPECT_EQ(wrapped(inches + " " + inches, {}), inches + " " + inches + "\n");
  EXPECT_EQ(wrapped(inches + " " + inches + "½½", {}), inches + "\n" + inches + "½½\n");
}

TEST(Wrap, BreaksNoMeasureAndPrintsPlainBlanks) {
  const std::string words(95, 'x');
  EXPECT_EQ(wrapped(words + " 6' 2 1/2\" (1892.3 mm)", {}), words + "\n6' 2 1/2\" (1892.3 mm)\n");
}

TEST(Wrap, KeepsALongWordWhole) {
  const std::string word(150, 'x');
  EXPECT_EQ(wrapped("a " + word, {"", "  "}), "a\n  " + word + "\n");
}

}  // namespace
}  // namespace berthwright

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

TEST(Wrap, KeepsALongWordWhole) {
  const std::string word(150, 'x');
  EXPECT_EQ(wrapped("a " + word, {"", "  "}), "a\n  " + word + "\n");
}

TEST(Printable, ShowsWhatATerminalWouldObey) {
  EXPECT_EQ(printable("plain ½ ″ 漢"), "plain ½ ″ 漢");
  EXPECT_EQ(printable("a\x1b[2Jb"), "a\uFFFD[2Jb");
  EXPECT_EQ(printable("a\u202Eb"), "a\uFFFDb");
  EXPECT_EQ(printable("a\nb"), "a\uFFFDb");
}

TEST(Printable, ReplacesBrokenUtf8ByteByByte) {
  EXPECT_EQ(printable("\xff"), "\uFFFD");
  EXPECT_EQ(printable("\xe2\x82"), "\uFFFD\uFFFD");
  EXPECT_EQ(printable("\xc0\xaf"), "\uFFFD\uFFFD");            // overlong
  EXPECT_EQ(printable("\xed\xa0\x80"), "\uFFFD\uFFFD\uFFFD");  // surrogate
}

}  // namespace
}  // namespace berthwright

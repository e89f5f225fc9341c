#include "exact/code_points.h"

#include <gtest/gtest.h>

namespace berthwright {
namespace {

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

TEST(Printable, ShortensToTheCharactersAskedFor) {
  EXPECT_EQ(printable("½½½½", 3), "½½½…");
  EXPECT_EQ(printable("½½½", 3), "½½½");
}

}  // namespace
}  // namespace berthwright

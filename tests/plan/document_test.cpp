#include "plan/document.h"

#include <gtest/gtest.h>

#include <array>
#include <random>
#include <string>
#include <vector>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

struct Expected {
  std::string pointer;
  std::string text;
  std::size_t line;
  std::size_t column;
  friend bool operator==(const Expected&, const Expected&) = default;
};

void collect(const Node& node, std::vector<Expected>& all) {
  const bool leaf = node.kind != Node::Kind::list && node.kind != Node::Kind::object;
  all.push_back({node.pointer, leaf ? node.text : "", node.line, node.column});
  for (const Node& child : node.children) collect(child, all);
}

std::string only_problem(std::string_view text) {
  const Document document = read_document(text);
  return document.root ? "a root" : listed(document.problems);
}

/// Writes random JSON and knows, because it has written it, where each value stands.
class Writer {
 public:
  explicit Writer(unsigned seed) : random_(seed) {}

  std::string text;
  std::vector<Expected> expected;

  void write(const std::string& pointer, int depth) {
    space();
    const std::size_t kind = below(depth > 4 ? 4 : 6);
    const std::size_t entry = expected.size();
    expected.push_back({pointer, "", line_, column_});
    if (kind < 4) {
      constexpr std::array<std::array<const char*, 2>, 8> leaves{
          {{"609.60", "609.60"},
           {"-1.50e+02", "-1.50e+02"},
           {"true", "true"},
           {"null", "null"},
           {"\"6' 2 ½\\\"\"", "6' 2 ½\""},
           {"\"// no, /* not */\"", "// no, /* not */"},
           {"\"\\\\\"", "\\"},
           {"0", "0"}}};
      const auto& [spelled, value] = leaves[below(leaves.size())];
      put(spelled);
      expected[entry].text = value;
      return;
    }
    const bool object = kind == 5;
    put(object ? "{" : "[");
    const std::size_t count = below(4);
    for (std::size_t i = 0; i < count; ++i) {
      if (i > 0) put(",");
      if (object) {
        space();
        put("\"k~" + std::to_string(i) + "é\"");
        space();
        put(":");
        write(pointer + "/k~0" + std::to_string(i) + "é", depth + 1);
      } else {
        write(pointer + '/' + std::to_string(i), depth + 1);
      }
      space();
    }
    put(object ? "}" : "]");
  }

 private:
  std::size_t below(std::size_t n) { return random_() % n; }

  void put(std::string_view piece) {
    text += piece;
    for (const char c : piece) {
      if (c == '\n') {
        ++line_;
        column_ = 1;
      } else if ((static_cast<unsigned char>(c) & 0xc0U) != 0x80) {
        ++column_;
      }
    }
  }

  void space() {
    constexpr std::array<const char*, 8> spaces{"",           "", " ", "\t", "\r\n", "\n", "/* ½ \n \" */",
                                                "// ] \" é\n"};
    for (std::size_t n = below(3); n > 0; --n) put(spaces[below(spaces.size())]);
  }

  std::mt19937 random_;
  std::size_t line_ = 1;
  std::size_t column_ = 1;
};

TEST(Document, KnowsWhereEveryValueStandsAndHowItIsSpelled) {
  for (unsigned seed = 0; seed < 500; ++seed) {
    SCOPED_TRACE(seed);
    Writer writer(seed);
    writer.write("", 0);
    const Document document = read_document(writer.text);
    ASSERT_TRUE(document.root) << writer.text << listed(document.problems);
    std::vector<Expected> found;
    collect(*document.root, found);
    ASSERT_EQ(found.size(), writer.expected.size());
    for (std::size_t i = 0; i < found.size(); ++i)
      ASSERT_EQ(found[i], writer.expected[i])
          << found[i].pointer << " " << found[i].line << ":" << found[i].column;
    EXPECT_TRUE(document.problems.empty());
  }
}

TEST(Document, AByteOrderMarkDoesNotShiftTheFirstLine) {
  const Document document = read_document("\xef\xbb\xbf{\"a\": 1}");
  ASSERT_TRUE(document.root);
  EXPECT_EQ(document.root->find("a")->column, 7U);
}

TEST(Document, KeepsTheFirstOfTwoEqualNamesAndReportsTheSecond) {
  const Document document = read_document("{\"a\": 1,\n \"a\": [2, {\"a\": 3}],\n \"b\": 4, \"a\": 5}");
  ASSERT_TRUE(document.root);
  ASSERT_EQ(document.root->children.size(), 2U);
  EXPECT_EQ(document.root->find("a")->text, "1");
  ASSERT_EQ(document.problems.size(), 2U);
  EXPECT_EQ(document.problems[0].id, "json.doubled-name");
  EXPECT_EQ(document.problems[0].line, 2U);
  EXPECT_EQ(document.problems[0].column, 2U);
  EXPECT_EQ(document.problems[1].line, 3U);
  EXPECT_EQ(document.problems[1].column, 10U);
}

TEST(Document, ReadsSixtyFourLevelsAndRefusesSixtyFive) {
  const auto nested = [](std::size_t levels) { return std::string(levels, '[') + std::string(levels, ']'); };
  EXPECT_TRUE(read_document(nested(64)).root);
  const Document document = read_document(nested(65));
  EXPECT_FALSE(document.root);
  ASSERT_EQ(document.problems.size(), 1U);
  EXPECT_EQ(document.problems[0].id, "json.too-deep");
  EXPECT_EQ(document.problems[0].column, 65U);
  EXPECT_FALSE(read_document(std::string(3'000'000, '[')).root);
}

TEST(Document, RefusesFilesBeyondItsLimits) {
  EXPECT_EQ(read_document(std::string(largest_file + 1, ' ')).problems.at(0).id, "json.too-large");
  std::string many = "[0";
  for (std::size_t i = 1; i < most_values; ++i) many += ",0";
  EXPECT_EQ(read_document(many + "]").problems.at(0).id, "json.too-many-values");
}

TEST(Document, PointsAtAZeroByteInsteadOfStoppingThere) {
  const Document document = read_document(std::string_view("{\n \"a\": 1}\0 rubbish", 19));
  ASSERT_EQ(document.problems.size(), 1U);
  EXPECT_EQ(document.problems[0].id, "json.zero-byte");
  EXPECT_EQ(document.problems[0].line, 2U);
  EXPECT_EQ(document.problems[0].column, 9U);
}

TEST(Document, SaysWhatIsWrongWithTheSpelling) {
  const auto starts = [](std::string_view text, std::string_view start) {
    const std::string problem = only_problem(text);
    EXPECT_TRUE(problem.starts_with(start)) << problem;
    return problem;
  };
  starts("", "1:1 json.syntax : the file is empty");
  EXPECT_NE(starts("{\"a\": 1,\n}", "2:1 json.syntax").find("take away the comma"), std::string::npos);
  EXPECT_NE(starts("{\"a\": 74 1/2}", "1:10 json.syntax").find("in quotes"), std::string::npos);
  EXPECT_NE(starts("{\"a\": \"74\"\", \"b\": 1}", "1:11 json.syntax").find("inch mark"), std::string::npos);
  EXPECT_NE(starts("{'a': 1}", "1:2 json.syntax").find("double quotes"), std::string::npos);
  EXPECT_NE(starts("{\"a\": \"x\n\"}", "1:7 json.syntax").find("same line"), std::string::npos);
  EXPECT_NE(starts("{\"a\": [1, 2", "1:12 json.syntax").find("close every bracket"), std::string::npos);
  starts("{\"a\": \"x\\q\"}", "1:10 json.syntax");
  starts("{\"a\": \"\xff\"}", "1:8 json.syntax");
  starts("{\"a\": 1e999}", "1:7 json.syntax : this number is larger");
  starts("{\"a\": /* never closed", "1:7 json.syntax");
  starts("{\"a\": 1} 7", "1:10 json.syntax");
}

// The value that ended, not the line below it: there the eye would look in vain.
TEST(Document, AMissingCommaIsSoughtWhereItBelongs) {
  const auto at = [](std::string_view text, std::string_view start) {
    const std::string problem = only_problem(text);
    EXPECT_TRUE(problem.starts_with(start)) << problem;
    EXPECT_NE(problem.find("a comma is missing after this"), std::string::npos) << problem;
  };
  at("{\"a\": []\n \"b\": 1}", "1:8 json.syntax");
  at("{\"a\": \"½ in\"\n\n \"b\": 1}", "1:12 json.syntax");
  at("{\"a\": 12 // twelve, \"of course\"\n , \"b\": true // yes\n /* and */ \"c\": 1}", "2:12 json.syntax");
  at("[1,\n {\"a\": 2}\n {\"a\": 3}]", "2:9 json.syntax");
  at("[[1]\n 2]", "1:4 json.syntax");
  at("{\"a\": {\"b\": 1\n \"c\": 2}}", "1:13 json.syntax");
  // A bracket that closes too soon, and a value in the same line, are other faults.
  EXPECT_EQ(only_problem("{\"a\": [1\n}").find("comma is missing"), std::string::npos);
  EXPECT_EQ(only_problem("{\"a\": 1 \"b\": 2}").find("comma is missing"), std::string::npos);
  EXPECT_EQ(only_problem("{\"a\"\n \"b\": 2}").find("comma is missing"), std::string::npos);
}

TEST(Document, FindsTheInnermostNodeOfAPointer) {
  const Document document = read_document(R"({"a": [1, {"b/c": 2}], "ab": 3})");
  EXPECT_EQ(innermost(*document.root, "/a/1/b~1c").text, "2");
  EXPECT_EQ(innermost(*document.root, "/a/1/d").pointer, "/a/1");
  EXPECT_EQ(innermost(*document.root, "/ab").text, "3");
  EXPECT_EQ(innermost(*document.root, "/abc").pointer, "");
}

}  // namespace
}  // namespace berthwright

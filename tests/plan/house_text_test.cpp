#include <berthwright/plan/house_text.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include <berthwright/plan/plan.h>

#include "plan/document.h"
#include "plan/plan_schema.h"
#include "support/comments_in.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

const std::vector<std::string> real_plans{
    "tests/plan/example.json", "tests/plan/shapes.json", "tests/plan/hinge.json", "tests/plan/loads.json",
    "plans/sanderling.json",   "plans/dunnock.json",     "plans/nuthatch.json",   "plans/siskin.json",
    "plans/goldcrest.json",    "plans/whinchat.json"};

std::string ordered(const std::string& text) {
  const Result<std::string> result = house_text(text);
  if (!result) throw std::invalid_argument(listed(result.problems()));
  return *result;
}

/// What a text says, each value with its pointer, in the order of the pointers.
std::vector<std::string> said(const std::string& text) {
  const Document document = read_document(text);
  std::vector<std::string> all;
  const auto collect = [&all](const auto& self, const Node& node) -> void {
    all.push_back(node.pointer + " " + std::to_string(static_cast<int>(node.kind)) + " " +
                  (node.children.empty() ? node.text : ""));
    for (const Node& child : node.children) self(self, child);
  };
  collect(collect, *document.root);
  std::ranges::sort(all);
  return all;
}

// A plan as somebody types it who has never seen another: every rule of the layout once.
constexpr const char* as_typed = R"plan(// Mine


{"unit":"in", // inches
"title":"Wren",  /* as painted */
   "berthwright":1 ,
"configurations":{"night":[{"at":{"left":"0","front":"0"},"piece":"A"}],

"day":[ {"piece":"A", "at":{"front":"0","left":"0"}} ] },
"interior":{"height":"74","width":"76","length":"120"}, "pieces":[
  {"kind":"cushion", "id":"A",
   // Cut twice.
   "thickness":"4", "width":"20", "length":"38", "name":"A cushion with a name so long that no line will hold it all"}

  // none more
]}
// end)plan";

constexpr const char* as_ordered = R"plan(// Mine

{
  "berthwright": 1,
  "title": "Wren",  /* as painted */
  "unit": "in",     // inches

  "interior": { "length": "120", "width": "76", "height": "74" },

  "pieces": [
    { "id": "A", "name": "A cushion with a name so long that no line will hold it all", "kind": "cushion",
      "length": "38", "width": "20",
      // Cut twice.
      "thickness": "4" }

    // none more
  ],

  "configurations": {
    "night": [
      { "piece": "A", "at": { "front": "0", "left": "0" } }
    ],

    "day": [
      { "piece": "A", "at": { "front": "0", "left": "0" } }
    ]
  }
}
// end
)plan";

TEST(HouseText, PutsFieldsInTheOrderOfTheSchemaAndKeepsCommentsWithThem) {
  EXPECT_EQ(ordered(as_typed), as_ordered);
}

TEST(HouseText, LeavesWhatIsInOrder) { EXPECT_EQ(ordered(as_ordered), as_ordered); }

TEST(HouseText, KeepsHowValuesAreSpelledAndTheOrderOfListsAndNames) {
  const std::string text = ordered(
      R"({"berthwright":1,"unit":"mm","title":"\u0057\/en","interior":{"length":3048.0,"width":1930.40,"height":1880},)"
      R"("configurations":{"z":[],"a":[]},"notes":["b","a"]})");
  EXPECT_NE(text.find(R"("title": "\u0057\/en")"), std::string::npos) << text;
  EXPECT_NE(text.find(R"({ "length": 3048.0, "width": 1930.40, "height": 1880 })"), std::string::npos)
      << text;
  EXPECT_LT(text.find("\"z\""), text.find("\"a\": []")) << text;
  EXPECT_NE(text.find("    \"b\",\n    \"a\"\n"), std::string::npos) << text;
}

TEST(HouseText, KeepsCommentsWhereverTheyStand) {
  const std::string text = ordered(
      "{ /*1*/ // 2\n\"berthwright\" /*3*/ : // 4\n 1 /*5*/ , /*6*/ \"title\": \"T\" // 7\n // 8\n , "
      "\"unit\": /*9\n9*/ "
      "\"in\", /*10*/\n \"interior\": { \"length\": \"120\" /*11*/, \"width\": /*12*/ \"76\", \"height\": "
      "\"74\" },\n"
      "\"configurations\": { // 13\n \"day\": [ /*14*/ ] /*15*/ } /*16*/ } /*17*/ // 18");
  EXPECT_EQ(text,
            "{\n"
            "  /*1*/\n"
            "  // 2\n"
            "  /*3*/\n"
            "  // 4\n"
            "  \"berthwright\": 1 /*5*/,\n"
            "  /*6*/ \"title\": \"T\",  // 7\n"
            "  // 8\n"
            "  /*9\n9*/\n"
            "  \"unit\": \"in\",  /*10*/\n"
            "\n"
            "  \"interior\": { \"length\": \"120\" /*11*/, /*12*/ \"width\": \"76\", \"height\": \"74\" },\n"
            "\n"
            "  \"configurations\": {\n"
            "    // 13\n"
            "    \"day\": [\n"
            "      /*14*/\n"
            "    ]  /*15*/\n"
            "  }    /*16*/\n"
            "}\n"
            "/*17*/\n"
            "// 18\n");
  EXPECT_EQ(ordered(text), text);
}

TEST(HouseText, AByteOrderMarkAndCarriageReturnsGo) {
  std::string text = as_ordered;
  for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; at += 2) text.insert(at, "\r");
  EXPECT_EQ(ordered("\xef\xbb\xbf" + text), as_ordered);
}

TEST(HouseText, RefusesWhatIsNoPlan) {
  EXPECT_EQ(house_text("").problems().front().id, "json.syntax");
  EXPECT_EQ(house_text("{}").problems().front().id, "field.missing");
  EXPECT_EQ(house_text(std::string(largest_file + 1, ' ')).problems().front().id, "json.too-large");
}

TEST(HouseText, TheDemosAreInOrderAndNoLineIsTooWide) {
  for (const std::string& name : real_plans) {
    SCOPED_TRACE(name);
    const std::string text = repository_text(name);
    const std::string laid = ordered(text);
    if (name.starts_with("plans/")) {
      EXPECT_EQ(laid, text);
    }
    EXPECT_EQ(said(laid), said(text));
    EXPECT_EQ(ordered(laid), laid);
    std::istringstream lines(laid);
    for (std::string line; std::getline(lines, line);) EXPECT_LE(line.size(), 120U) << line;
  }
}

/// Writes the tokens of a plan with other spaces, comments between them and, if asked, fields in another
/// order.
class Mangler {
 public:
  Mangler(unsigned seed, bool shuffled) : random_(seed), shuffled_(shuffled) {}

  std::string mangled(const Node& root) {
    space();
    write(root, plan_schema());
    space();
    return text_;
  }

 private:
  std::size_t below(std::size_t n) { return random_() % n; }

  void space() {
    for (std::size_t n = below(3); n > 0; --n) {
      const std::string number = std::to_string(++comments_);
      switch (below(9)) {
        case 0:
          text_ += "// " + number + (below(2) == 0 ? " \" } ,\n" : "\n");
          break;
        case 1:
          text_ += "/* " + number + " */";
          break;
        case 2:
          text_ += "/* " + number + (below(2) == 0 ? "\n   * \" [ */" : "\r\n */");
          break;
        case 3:
          text_ += "\n\n\n";
          break;
        case 4:
          text_ += "\r\n";
          break;
        case 5:
          text_ += "\t";
          break;
        default:
          text_ += ' ';
      }
    }
  }

  static std::string quoted(const std::string& text) {
    std::string all = "\"";
    for (const char c : text) all += c == '"' ? "\\\"" : c == '\\' ? "\\\\" : std::string(1, c);
    return all + '"';
  }

  void write(const Node& node, const Node* schema) {
    if (node.kind != Node::Kind::list && node.kind != Node::Kind::object) {
      text_ += node.kind == Node::Kind::text ? quoted(node.text) : node.text;
      return;
    }
    const bool object = node.kind == Node::Kind::object;
    std::vector<const Node*> children;
    for (const Node& child : node.children) children.push_back(&child);
    // Names of a person's own (configurations, rules) have the order that the person gave them.
    const bool ours = object && !children.empty() && place_of_field(schema, "") > 0;
    if (ours && shuffled_) std::ranges::shuffle(children, random_);
    text_ += object ? '{' : '[';
    space();
    for (std::size_t i = 0; i < children.size(); ++i) {
      if (i > 0) {
        text_ += ',';
        space();
      }
      if (object) {
        text_ += quoted(children[i]->key);
        space();
        text_ += ':';
        space();
      }
      write(*children[i], object ? schema_of_member(schema, children[i]->key) : schema_of_element(schema, i));
      space();
    }
    text_ += object ? '}' : ']';
  }

  std::mt19937 random_;
  bool shuffled_;
  std::string text_;
  std::size_t comments_ = 0;
};

std::vector<std::string> without_returns(std::vector<std::string> comments) {
  for (std::string& comment : comments) std::erase(comment, '\r');
  return comments;
}

// Two plans that say the same value by value, and their own names in the same order, are read as the same
// plan.
TEST(HouseText, MangledPlansSayTheSameAfterwardsAndKeepEveryComment) {
  std::size_t comments = 0;
  for (unsigned seed = 0; seed < 120; ++seed) {
    SCOPED_TRACE(seed);
    // In order already, so that comments keep their order too; shuffled, each is there once.
    const bool shuffled = seed % 2 == 1;
    const std::string plan = ordered(repository_text(real_plans[seed / 2 % real_plans.size()]));
    const std::string mangled = Mangler(seed, shuffled).mangled(*read_document(plan).root);
    const std::string laid = ordered(mangled);
    ASSERT_EQ(said(laid), said(plan));
    ASSERT_EQ(ordered(laid), laid) << laid;
    std::vector<std::string> before = without_returns(comments_in(mangled));
    std::vector<std::string> after = comments_in(laid);
    comments += before.size();
    if (shuffled) {
      std::ranges::sort(before);
      std::ranges::sort(after);
    }
    ASSERT_EQ(after, before);
    const std::size_t from = laid.find("\"configurations\"");
    ASSERT_LT(laid.find("\"day\": [", from), laid.find("\"night\": [", from));
  }
  EXPECT_GT(comments, 10'000U);
}

TEST(HouseText, SpacesAloneChangeNothing) {
  for (const std::string& name : real_plans) {
    SCOPED_TRACE(name);
    const std::string laid = ordered(repository_text(name));
    std::string squeezed;
    std::string wide;
    bool quoted = false;
    bool comment = false;
    for (std::size_t i = 0; i < laid.size(); ++i) {
      const char c = laid[i];
      if (c == '"' && !comment && laid[i - 1] != '\\') quoted = !quoted;
      if (!quoted && laid.compare(i, 2, "//") == 0) comment = true;
      if (c == '\n') comment = false;
      const bool space = c == ' ' && !quoted && !comment;
      squeezed += space ? "" : std::string(1, c);
      wide += space ? "\t  " : std::string(1, c);
    }
    EXPECT_EQ(ordered(squeezed), laid);
    EXPECT_EQ(ordered(wide), laid);
  }
}

TEST(HouseText, AFileOfFourMebibytesIsPutInOrder) {
  std::string text = as_ordered;
  const std::string comment = "// a line of comment that somebody was fond of\n";
  while (text.size() + comment.size() < largest_file) text += comment;
  EXPECT_TRUE(ordered(text) == text);
}

}  // namespace
}  // namespace berthwright

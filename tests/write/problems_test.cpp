#include <berthwright/write/outputs.h>

#include <gtest/gtest.h>

namespace berthwright {
namespace {

Problem a_problem() {
  Problem problem;
  problem.id = "length.comma";
  problem.pointer = "/interior/width";
  problem.line = 7;
  problem.column = 21;
  problem.message = "a comma stands in a length";
  problem.found = "1,905";
  problem.allowed = "a point as decimal sign";
  problem.cure = "write 1.905 m";
  return problem;
}

TEST(ProblemsText, NamesFileLineColumnAndHowToMendIt) {
  EXPECT_EQ(problems_text("my.json", {a_problem()}),
            "my.json:7:21: a comma stands in a length [length.comma]\n"
            "    mend:    write 1.905 m\n"
            "    found:   1,905\n"
            "    allowed: a point as decimal sign\n"
            "    where:   /interior/width\n"
            "1 fault in my.json; nothing was computed.\n");
}

TEST(ProblemsText, LeavesOutWhatIsNotKnownAndCountsAll) {
  Problem bare;
  bare.id = "x";
  bare.message = "m";
  EXPECT_EQ(problems_text("p", {bare, bare}), "p: m [x]\np: m [x]\n2 faults in p; nothing was computed.\n");
}

TEST(ProblemsText, NeverLetsAFileCommandTheTerminal) {
  Problem hostile = a_problem();
  hostile.found = "\x1b]0;owned\x07";
  EXPECT_EQ(problems_text("a\x1b.json", {hostile}).find('\x1b'), std::string::npos);
}

TEST(ProblemsJson, EscapesAndSurvivesBrokenUtf8) {
  Problem hostile = a_problem();
  hostile.found = "\"\xff";
  const std::string text = problems_json("p", {hostile});
  EXPECT_NE(text.find("\\\"\uFFFD"), std::string::npos) << text;
  EXPECT_NE(text.find("\"line\": 7"), std::string::npos) << text;
}

TEST(Explain, PrintsTheNumberItsSourceAndTheCautionOfEveryRule) {
  for (const Rule& rule : all_rules()) {
    const std::string text = explain_text(rule, Unit::inch);
    SCOPED_TRACE(text);
    EXPECT_EQ(text.rfind(rule.id.text(), 0), 0U);
    EXPECT_NE(text.find("asked:"), std::string::npos);
    EXPECT_NE(text.find("standing:"), std::string::npos);
    EXPECT_EQ(text.find("caution:") != std::string::npos, !rule.caution.empty());
    EXPECT_NE(rules_text().find(rule.id.text() + " "), std::string::npos);
  }
}

}  // namespace
}  // namespace berthwright

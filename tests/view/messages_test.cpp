#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <set>
#include <span>
#include <string>
#include <vector>

#include <berthwright/plan/rules.h>

#include "support/message_table.h"
#include "support/plan_builder.h"
#include "support/source_phrases.h"

namespace berthwright {
namespace {

std::string missing_from_the_table(const std::vector<SourcePhrase>& phrases,
                                   std::span<const UntoldWords> excuses) {
  std::set<std::string_view> used;
  std::string missing;
  for (const SourcePhrase& phrase : phrases) {
    if (is_told(message_table(), phrase.words)) continue;
    const auto excuse = std::ranges::find(excuses, phrase.words, &UntoldWords::words);
    if (excuse != excuses.end())
      used.insert(excuse->words);
    else
      missing += phrase.file + ":" + std::to_string(phrase.line) + ": " + phrase.words + "\n";
  }
  for (const UntoldWords& excuse : excuses)
    if (!used.contains(excuse.words)) missing += "excused and yet told: " + std::string(excuse.words) + "\n";
  return missing;
}

TEST(Messages, StandInTheTable) {
  const std::string page = messages_page(message_table());
  if (repository_text("plans/MESSAGES.md") == page) return;
  const std::string made = testing::TempDir() + "MESSAGES.md";
  std::ofstream(made, std::ios::binary) << page;
  ADD_FAILURE()
      << "plans/MESSAGES.md is not what the plans say. Read the difference; where it is meant:\n  cp " << made
      << " plans/MESSAGES.md";
}

TEST(Messages, EveryTextOfAFaultIsTold) {
  std::vector<SourcePhrase> phrases;
  const auto add = [&](const std::vector<SourcePhrase>& more) {
    phrases.insert(phrases.end(), more.begin(), more.end());
  };
  add(phrases_in("src/exact"));
  add(phrases_in("src/geometry"));
  add(phrases_in("src/plan", {"panel.cpp", "laminate.cpp"}));
  for (const std::string file : {"src/solve/room/arrangement.cpp", "src/solve/room/laying_order.cpp",
                                 "src/solve/site/siting.cpp", "src/write/interview.cpp"})
    add(phrases_of(file, repository_text(file)));
  EXPECT_GT(phrases.size(), 400U);
  constexpr std::array no_faults{
      UntoldWords{"your answers say so", "why an answer is usual"},
      UntoldWords{"# Answers for: berthwright new. One a line; what is missing is asked.\n",
                  "head of a file"}};
  EXPECT_EQ(missing_from_the_table(phrases, no_faults), "");
}

TEST(Messages, EveryTextOfTheYardIsTold) {
  std::vector<SourcePhrase> phrases;
  for (const std::string file :
       {"commands", "files", "font", "loopback_microhttpd", "pdf_of", "plan_file", "run_compare",
        "run_packet", "run_placing", "run_split", "run_watch", "saved_file"}) {
    const std::string name = "src/yard/" + file + ".cpp";
    for (const SourcePhrase& phrase : phrases_of(name, repository_text(name))) phrases.push_back(phrase);
  }
  EXPECT_GT(phrases.size(), 40U);
  constexpr std::array elsewhere{
      UntoldWords{"; the rules are:\n", "the beginning of a list that the table cuts short"},
      UntoldWords{"Make room on the disk; the old file is untouched.", "wants a full disk"},
      UntoldWords{"Check who may write into this folder.", "wants a folder that is shut between two writes"},
      UntoldWords{"the font of the drawings is not there: ", "wants a machine without the font"},
      UntoldWords{"Install DejaVu Sans (Debian: fonts-dejavu-core); without --pdf drawings need no font.",
                  "wants a machine without the font"},
      UntoldWords{" cannot be had: ", "wants a port that the system refuses"},
      UntoldWords{
          "Letters that DejaVu Sans lacks are empty boxes in the PDF; drawings as SVG and pages as HTML "
          "show them.\n",
          "a remark beside a PDF that was made"},
      UntoldWords{"It makes no plan: ", "of a proposal, in the report"},
      UntoldWords{"It does not stand: ", "of a proposal, in the report"},
      UntoldWords{" is shown at http://127.0.0.1:", "no fault"},
      UntoldWords{"/ and read again at every save. Ctrl-C ends it.\n", "no fault"}};
  EXPECT_EQ(missing_from_the_table(phrases, elsewhere), "");
}

TEST(Messages, EveryRuleIsTold) {
  std::set<std::string> told;
  for (const ToldFinding& one : message_table().findings) told.insert(one.rule.text());
  for (const Rule& rule : all_rules()) EXPECT_TRUE(told.contains(rule.id.text())) << rule.id.text();
}

TEST(Messages, EveryTextOfAFindingIsTold) {
  std::vector<SourcePhrase> phrases;
  for (const SourcePhrase& phrase : phrases_in("src/view"))
    if (phrase.file.starts_with("src/view/tell_") || phrase.file == "src/view/sentences.cpp")
      phrases.push_back(phrase);
  EXPECT_GT(phrases.size(), 100U);
  EXPECT_EQ(missing_from_the_table(phrases, untold_words()), "");
}

// Whoever reads these saws plywood.
TEST(Messages, SpeakAsACraftsmanDoes) {
  constexpr std::array words{"object", "array",   "string", "boolean", "integer", "pointer", "null",
                             "JSON",   "lattice", "parse",  "invalid", "syntax",  "token",   "schema"};
  for (const Problems* problems :
       {&message_table().of_files, &message_table().of_stock, &message_table().of_answers})
    for (const Problem& p : *problems) {
      SCOPED_TRACE(p.message);
      EXPECT_FALSE(p.cure.empty());
      EXPECT_FALSE(p.allowed.empty());
      for (const std::string_view word : words)
        for (const std::string& text : {p.message, p.cure, p.allowed})
          EXPECT_EQ(text.find(word), std::string::npos) << word << " in: " << text;
    }
}

// The scanner itself: what it takes for a text, and what it leaves out.
TEST(SourcePhrases, AreTheTextsThatAreTold) {
  const auto words = [](std::string_view source) {
    std::string all;
    for (const SourcePhrase& phrase : phrases_of("x.cpp", source))
      all += std::to_string(phrase.line) + ":" + phrase.words + ";";
    return all;
  };
  EXPECT_EQ(words("f(\"a short text\");"), "1:a short text;");
  EXPECT_EQ(words("// \"not a text\"\n/* \"nor is this\" */ f(\"two \"\n \"halves\");"), "2:two halves;");
  EXPECT_EQ(words("f(R\"(with \"quotes\" in it)\", \"a \\\"b\\\" text\");"),
            "1:with \"quotes\" in it;1:a \"b\" text;");
  EXPECT_EQ(words("throw std::logic_error(\"our own \" + (\"fault )\" + x)); f(\"after it\");"),
            "1:after it;");
  EXPECT_EQ(words("constexpr std::array x{\"table of words\"};\nf(c == '\"' ? \"one of two\" : \"word\");"),
            "2:one of two;");
  EXPECT_EQ(words("text.find(\"looked for\"); refind(\"is told of\");"), "1:is told of;");
}

}  // namespace
}  // namespace berthwright

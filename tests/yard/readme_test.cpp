#include <gtest/gtest.h>

#include <chrono>
#include <filesystem>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <thread>
#include <vector>

#include <berthwright/exact/measure.h>
#include <berthwright/plan/rules.h>

#include "plan/plan_schema.h"
#include "support/plan_builder.h"
#include "support/process.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

namespace fs = std::filesystem;

/// What a pattern's first group holds, wherever it is met in README.md.
std::vector<std::string> in_readme(const std::string& pattern) {
  const std::string readme = repository_text("README.md");
  const std::regex expression(pattern);
  std::vector<std::string> found;
  for (std::sregex_iterator at(readme.begin(), readme.end(), expression), end; at != end; ++at)
    found.push_back((*at)[1]);
  return found;
}

// A newcomer copies a demo and types one command after the other.
TEST(Readme, EveryCommandForThePlanOfOnesOwnWorks) {
  TemporaryFolder folder;
  const std::string mine = folder.put("plans/mine.json", repository_text("plans/nuthatch.json"));
  folder.put("plans/stock/plover-lane.json", repository_text("plans/stock/plover-lane.json"));
  std::set<std::string> verbs;
  for (const std::string& command : in_readme("`\\./dev run ([^`]*)`")) {
    SCOPED_TRACE(command);
    std::istringstream words(command);
    std::vector<std::string> arguments;
    for (std::string word; words >> word;) arguments.push_back(word);
    // Where a plan is begun there is none yet; the room is typed, the rest is as usual.
    TemporaryFolder empty;
    const bool begins = arguments.front() == "new";
    // The usual port may be taken where the tests run.
    if (arguments.front() == "watch") arguments.insert(arguments.end(), {"--port", "0"});
    if (begins) fs::create_directory(empty.path("plans"));
    Process run(BERTHWRIGHT_PROGRAM, arguments,
                {.input = begins ? "\n\n\n10 ft\n76\n74\n\n\n50\n" + std::string(30, '\n') : "",
                 .folder = begins ? empty.path() : folder.path()});
    // What goes on until it is told to end is told so once it has said where its page is.
    if (arguments.front() == "watch") {
      for (int i = 0; i < 500 && run.out().empty(); ++i)
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
      run.interrupt();
    }
    EXPECT_LE(run.code(), 2) << run.err();
    EXPECT_GE(run.code(), 0);
    EXPECT_FALSE(run.out().empty());
    verbs.insert(arguments.front());
  }
  EXPECT_GT(verbs.size(), 7U);
  EXPECT_TRUE(fs::exists(folder.path("out/mine/1-day.svg")));
}

TEST(Readme, EveryOptionIsOneOfTheProgramOrOfDev) {
  std::string helps = repository_text("dev");
  for (const char* verb : {"check", "draw", "heater", "steps", "split", "cut", "loads", "compare", "packet", "fmt",
                           "convert-units", "new", "watch", "explain"}) {
    Process help(BERTHWRIGHT_PROGRAM, {verb, "--help"});
    EXPECT_EQ(help.code(), 0) << verb;
    helps += help.out();
  }
  const std::vector<std::string> options = in_readme("[` ](--[a-z][a-z-]*)");
  EXPECT_GT(options.size(), 15U);
  for (const std::string& option : options) EXPECT_NE(helps.find(option), std::string::npos) << option;
}

TEST(Readme, EveryCommandOfDevExists) {
  const std::string help = repository_text("dev");
  const std::vector<std::string> commands = in_readme("\\./dev ([a-z]+)");
  EXPECT_GT(commands.size(), 8U);
  for (const std::string& command : commands)
    EXPECT_NE(help.find("\n  " + command + " "), std::string::npos) << command;
}

TEST(Readme, EveryLengthThatItShowsIsRead) {
  const std::string readme = repository_text("README.md");
  const std::size_t from = readme.find("are written as in a workshop: ");
  ASSERT_NE(from, std::string::npos);
  const std::string sentence = readme.substr(from, readme.find(". ", from) - from);
  const std::regex quoted("`([^`]*)`");
  std::size_t lengths = 0;
  for (std::sregex_iterator at(sentence.begin(), sentence.end(), quoted), end; at != end; ++at, ++lengths)
    EXPECT_TRUE(read_length((*at)[1].str(), Unit::inch).ok()) << (*at)[1];
  EXPECT_EQ(lengths, 5U);
}

TEST(Readme, EveryPartOfThePlanIsInTheSchemaAndEveryRuleThatItNamesIsOne) {
  const std::vector<std::string> rows = in_readme("\n\\| (`[^|]*`) \\|");
  const std::regex quoted("`([a-z_]+)`");
  std::size_t parts = 0;
  for (const std::string& row : rows)
    for (std::sregex_iterator at(row.begin(), row.end(), quoted), end; at != end; ++at, ++parts)
      EXPECT_NE(schema_of_member(plan_schema(), (*at)[1].str()), nullptr) << (*at)[1];
  EXPECT_GT(parts, 12U);
  for (const std::string& name : in_readme("explain ([a-z]+\\.[a-z-]+)"))
    EXPECT_NE(find_rule(name), nullptr) << name;
}

TEST(Readme, EveryFileThatItLinksToIsThere) {
  const std::vector<std::string> links = in_readme("\\]\\(([^)#:]+)\\)");
  EXPECT_GT(links.size(), 12U);
  for (const std::string& link : links) EXPECT_TRUE(fs::exists(repository_path(link))) << link;
}

}  // namespace
}  // namespace berthwright

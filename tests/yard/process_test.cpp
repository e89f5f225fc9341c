#include "support/process.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <map>
#include <memory>
#include <set>
#include <thread>

#include "support/plan_builder.h"
#include "support/temporary_folder.h"
#include "support/yard_plans.h"

namespace berthwright {
namespace {

namespace fs = std::filesystem;

// The program as it was built, in a folder of its own: what only a whole process can show.
class BuiltProgram : public testing::Test {
 protected:
  std::unique_ptr<Process> started(const std::vector<std::string>& arguments,
                                   ProcessSurroundings around = {}) const {
    if (around.folder.empty()) around.folder = folder.path();
    return std::make_unique<Process>(BERTHWRIGHT_PROGRAM, arguments, around);
  }
  int code(const std::vector<std::string>& arguments, const ProcessSurroundings& around = {}) const {
    return started(arguments, around)->code();
  }
  std::map<std::string, std::string> drawn(const std::string& text, const std::string& name) const {
    EXPECT_EQ(code({"draw", "-", "--out", name}, {.input = text}), 0);
    return files_in(folder.path(name));
  }

  TemporaryFolder folder;
};

TEST_F(BuiltProgram, GivesItsExitCodeToTheShell) {
  EXPECT_EQ(code({"check", "-"}, {.input = plan_that_meets()}), 0);
  EXPECT_EQ(code({"check", "-"}, {.input = plan_that_does_not()}), 1);
  EXPECT_EQ(code({"check", "-"}, {.input = plan_with_an_unknown()}), 2);
  EXPECT_EQ(code({}), 64);
  EXPECT_EQ(code({"check", "-"}, {.input = plan_that_is_broken()}), 65);
  EXPECT_EQ(code({"check", "missing.json"}), 66);
  EXPECT_EQ(code({"--help"}), 0);
  EXPECT_EQ(code({"--version"}), 0);
}

TEST_F(BuiltProgram, ReadsStandardInputAsItReadsAFile) {
  folder.put("plan.json", plan_with_an_unknown());
  const auto file = started({"check", "plan.json", "--json"});
  const auto input = started({"check", "-", "--json"}, {.input = plan_with_an_unknown()});
  EXPECT_EQ(file->code(), 2);
  EXPECT_EQ(input->code(), 2);
  EXPECT_EQ(file->out(), input->out());
  const auto broken = started({"check", "-"}, {.input = plan_that_is_broken()});
  EXPECT_EQ(broken->code(), 65);
  EXPECT_TRUE(broken->err().starts_with("-:2:")) << broken->err();
}

TEST_F(BuiltProgram, KeepsTheFaultsOfAPlanOutOfStandardOutput) {
  const auto text = started({"check", "-"}, {.input = plan_that_is_broken()});
  EXPECT_EQ(text->code(), 65);
  EXPECT_EQ(text->out(), "");
  EXPECT_FALSE(text->err().empty());
  const auto json = started({"check", "-", "--json"}, {.input = plan_that_is_broken()});
  EXPECT_EQ(json->code(), 65);
  EXPECT_NE(json->out().find("\"problems\""), std::string::npos);
  EXPECT_EQ(json->err(), "");
}

TEST_F(BuiltProgram, DrawsIntoAFolderNamedForThePlan) {
  folder.put("plans/linnet.json", plan_that_meets());
  EXPECT_EQ(code({"draw", "plans/linnet.json"}), 0);
  EXPECT_EQ(code({"draw", "-"}, {.input = plan_that_meets()}), 0);
  EXPECT_EQ(files_in(folder.path("out/linnet")).size(), 16U)
      << "two plans, the sections by night, where the heater may stand by day, by night and at both, each "
         "with "
         "its rules, the ways out by night, the steps there and back, the key to the cushions, labels, two raised views";
  EXPECT_EQ(files_in(folder.path("out/plan")), files_in(folder.path("out/linnet")));
}

// Each help ends in an example; a newcomer types it in the folder with plans/.
TEST_F(BuiltProgram, DoesWhatTheExampleOfEachHelpSays) {
  fs::create_directory_symlink(repository_path("plans"), folder.path("plans"));
  for (const char* verb : {"", "check", "draw", "heater", "steps", "split", "cut", "loads", "compare", "packet", "fmt",
                           "convert-units", "new", "explain"}) {
    SCOPED_TRACE(verb);
    const auto help = *verb == '\0' ? started({"--help"}) : started({verb, "--help"});
    ASSERT_EQ(help->code(), 0);
    const std::string text = help->out();
    const std::string before = "Example:\n  berthwright ";
    ASSERT_NE(text.find(before), std::string::npos) << text;
    std::istringstream line(text.substr(text.find(before) + before.size()));
    std::string example;
    std::getline(line, example);
    std::istringstream words(example);
    std::vector<std::string> arguments;
    for (std::string word; words >> word;) arguments.push_back(word);
    const auto run = started(arguments);
    EXPECT_LE(run->code(), 2) << example << '\n' << run->err();
    EXPECT_GE(run->code(), 0);
    EXPECT_FALSE(run->out().empty()) << example;
  }
}

TEST_F(BuiltProgram, SaysWhenTheDiskIsFull) {
  if (!fs::exists("/dev/full")) GTEST_SKIP() << "no /dev/full here";
  folder.put("plan.json", plan_that_meets());
  for (const std::vector<std::string>& arguments :
       std::vector<std::vector<std::string>>{{"check", "plan.json"},
                                             {"check", "plan.json", "--json"},
                                             {"draw", "plan.json"},
                                             {"explain"},
                                             {"check", "--help"},
                                             {"--version"}}) {
    SCOPED_TRACE(testing::PrintToString(arguments));
    const auto full = started(arguments, {.output = "/dev/full"});
    EXPECT_EQ(full->code(), 74);
    EXPECT_FALSE(full->err().empty());
  }
}

TEST_F(BuiltProgram, SaysWhenAFileMayNotGrowAndKeepsTheOldOnes) {
  folder.put("plan.json", plan_that_meets());
  const auto old = drawn(plan_that_does_not(), "out");
  ASSERT_EQ(old.size(), 11U) << "two plans, two sheets of sections, the ways out by night, the steps there "
                                "and back, key, labels, two raised views";
  EXPECT_EQ(code({"draw", "plan.json", "--out", "out"}, {.largest_file = 500}), 74);
  EXPECT_EQ(files_in(folder.path("out")), old);
  EXPECT_EQ(code({"check", "plan.json"}, {.output = folder.path("check.txt"), .largest_file = 100}), 74);
}

TEST_F(BuiltProgram, SaysWhenItsOutputIsClosedAndSparesThePlan) {
  folder.put("plan.json", plan_that_meets());
  EXPECT_EQ(code({"check", "plan.json"}, {.closed_output = true}), 74);
  EXPECT_EQ(code({"draw", "plan.json", "--out", "out"}, {.closed_output = true}), 74);
  EXPECT_EQ(bytes_of(folder.path("plan.json")), plan_that_meets());
  for (const auto& [name, bytes] : files_in(folder.path("out"))) {
    EXPECT_TRUE(bytes.starts_with("<svg ")) << name;
    EXPECT_TRUE(bytes.ends_with("</svg>\n")) << name;
  }
}

TEST_F(BuiltProgram, SaysWhenItHasNoRightToReadOrToWrite) {
  folder.put("plan.json", plan_that_meets());
  folder.put("secret.json", plan_that_meets());
  fs::permissions(folder.path("secret.json"), fs::perms::none);
  fs::create_directory(folder.path("locked"));
  fs::permissions(folder.path("locked"), fs::perms{0555});
  const ProcessSurroundings nobody{.as_nobody = true};
  if (code({"--version"}, nobody) != 0) GTEST_SKIP() << "the program cannot be started without our rights";
  EXPECT_EQ(code({"check", "secret.json"}, nobody), 66);
  EXPECT_EQ(code({"draw", "plan.json", "--out", "locked"}, nobody), 73);
  EXPECT_EQ(code({"draw", "plan.json", "--out", "locked/new"}, nobody), 73);
  fs::permissions(folder.path("locked"), fs::perms{0755});
  EXPECT_TRUE(files_in(folder.path("locked")).empty());
}

TEST_F(BuiltProgram, SaysWhereSomethingElseStands) {
  folder.put("plan.json", plan_that_meets());
  folder.put("taken", "mine");
  EXPECT_EQ(code({"draw", "plan.json", "--out", "taken"}), 73);
  EXPECT_EQ(bytes_of(folder.path("taken")), "mine");
  ASSERT_EQ(code({"draw", "plan.json", "--out", "out"}), 0);
  const std::string first = files_in(folder.path("out")).begin()->first;
  fs::remove(folder.path("out/" + first));
  fs::create_symlink("../plan.json", folder.path("out/" + first));
  EXPECT_EQ(code({"draw", "plan.json", "--out", "out"}), 73);
  EXPECT_EQ(bytes_of(folder.path("plan.json")), plan_that_meets());
}

bool is_file_of(const std::map<std::string, std::string>& drawing, const std::string& name,
                const std::string& bytes) {
  const auto file = drawing.find(name);
  return file != drawing.end() && file->second == bytes;
}

TEST_F(BuiltProgram, DrawnTwiceAtOnceLeavesWholeFiles) {
  const auto one = drawn(plan_that_meets(), "one");
  const auto two = drawn(plan_that_does_not(), "two");
  for (int round = 0; round < 3; ++round) {
    SCOPED_TRACE(round);
    std::vector<std::unique_ptr<Process>> draws;
    for (const auto& text :
         {plan_that_meets(), plan_that_does_not(), plan_that_meets(), plan_that_does_not()})
      draws.push_back(started({"draw", "-", "--out", "both"}, {.input = text}));
    for (const auto& draw : draws) EXPECT_EQ(draw->code(), 0) << draw->err();
    const auto both = files_in(folder.path("both"));
    auto names = one;
    names.insert(two.begin(), two.end());
    EXPECT_EQ(both.size(), names.size());
    for (const auto& [name, bytes] : both)
      EXPECT_TRUE(is_file_of(one, name, bytes) || is_file_of(two, name, bytes)) << name;
  }
}

// The program is killed at twenty moments of its life, from the first to the last.
TEST_F(BuiltProgram, KilledLeavesTheOldDrawingOrTheNewOne) {
  const auto old = drawn(plan_that_meets(), "out");
  const auto before = std::chrono::steady_clock::now();
  const auto fresh = drawn(plan_that_does_not(), "fresh");
  const auto life = std::chrono::steady_clock::now() - before;
  ASSERT_NE(old, fresh);
  constexpr int moments = 20;
  for (int moment = 0; moment <= moments; ++moment) {
    SCOPED_TRACE(moment);
    const auto draw = started({"draw", "-", "--out", "out"}, {.input = plan_that_does_not()});
    std::this_thread::sleep_for(life * moment / moments);
    draw->kill();
    draw->code();
    std::set<std::string> whole;
    for (const auto& [name, bytes] : files_in(folder.path("out"))) {
      if (name.starts_with(".")) continue;  // what was begun bears another name
      whole.insert(name);
      EXPECT_TRUE(is_file_of(old, name, bytes) || is_file_of(fresh, name, bytes)) << name;
    }
    for (const auto& [name, bytes] : old) EXPECT_TRUE(whole.contains(name)) << name;
  }
}

}  // namespace
}  // namespace berthwright

#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <thread>

#include "support/loopback_client.h"
#include "support/process.h"
#include "support/temporary_folder.h"
#include "support/yard_plans.h"

namespace berthwright {
namespace {

namespace fs = std::filesystem;

class WatchCommand : public testing::Test {
 protected:
  std::unique_ptr<Process> started(const std::vector<std::string>& arguments) const {
    return std::make_unique<Process>(BERTHWRIGHT_PROGRAM, arguments,
                                     ProcessSurroundings{.folder = folder.path()});
  }
  /// The port in the address that the program says; 0: it said none within ten seconds.
  static int port_of(const Process& watch) {
    const std::string before = "http://127.0.0.1:";
    for (int i = 0; i < 500; ++i) {
      const std::string out = watch.out();
      const std::size_t at = out.find(before);
      if (at != std::string::npos && out.ends_with('\n')) return std::atoi(out.c_str() + at + before.size());
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    return 0;
  }
  /// The page as soon as it holds these words; the last one seen after twenty seconds.
  static std::string page_with(int port, const std::string& words) {
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(20);
    std::string page = body_of(fetched(port, "/"));
    while (page.find(words) == std::string::npos && std::chrono::steady_clock::now() < end) {
      std::this_thread::sleep_for(std::chrono::milliseconds(50));
      page = body_of(fetched(port, "/"));
    }
    return page;
  }

  TemporaryFolder folder;
};

TEST_F(WatchCommand, ShowsEverySaveAndKeepsTheLastGoodDrawingBesideFaults) {
  folder.put("plan.json", plan_that_is_broken());
  const auto watch = started({"watch", "plan.json", "--port", "0"});
  const int port = port_of(*watch);
  ASSERT_GT(port, 0) << watch->err();
  std::string page = page_with(port, "Save 1 has");
  EXPECT_NE(page.find("href=\"#L2\""), std::string::npos) << "the line of the fault";
  EXPECT_NE(page.find("Nothing is drawn before the file is free of faults."), std::string::npos);
  folder.put("plan.json", plan_that_does_not());
  page = page_with(port, " data-plans=\"2\"");
  EXPECT_NE(page.find("class=\"pin not-met\""), std::string::npos)
      << "what is not met is marked on the drawing";
  EXPECT_EQ(page.find("Faults in the file"), std::string::npos);
  folder.put("plan.json", plan_that_is_broken());
  page = page_with(port, "Save 3 has");
  EXPECT_NE(page.find("What is drawn is save 2, the last good one."), std::string::npos);
  EXPECT_NE(page.find("class=\"pin not-met\""), std::string::npos);
  fs::remove(folder.path("plan.json"));
  page = page_with(port, "Save 4 has");
  EXPECT_NE(page.find("No such file or directory"), std::string::npos);
  folder.put("plan.json", plan_that_meets());
  page = page_with(port, " data-findings=\"5\"");
  EXPECT_NE(page.find("Save 5: 0 alerts not met"), std::string::npos);
  watch->interrupt();
  EXPECT_EQ(watch->code(), 0);
  EXPECT_EQ(files_in(folder.path()).size(), 1U) << "nothing is written";
}

TEST_F(WatchCommand, SaysWhatKeepsItFromBeginning) {
  folder.put("plan.json", plan_that_meets());
  EXPECT_EQ(started({"watch", "missing.json"})->code(), 66);
  EXPECT_EQ(started({"watch", "."})->code(), 66);
  EXPECT_EQ(started({"watch", "-"})->code(), 64);
  EXPECT_EQ(started({"watch", "plan.json", "--port", "70000"})->code(), 64);
  const auto first = started({"watch", "plan.json", "--port", "0"});
  const int port = port_of(*first);
  ASSERT_GT(port, 0);
  const auto second = started({"watch", "plan.json", "--port", std::to_string(port)});
  EXPECT_EQ(second->code(), 73);
  EXPECT_NE(second->err().find("is taken by another program\n    Free now: --port "), std::string::npos)
      << second->err();
  first->interrupt();
  EXPECT_EQ(first->code(), 0);
}

// It writes nothing, so it needs no right to.
TEST_F(WatchCommand, AFolderThatMayOnlyBeReadServesAsWell) {
  folder.put("plan.json", plan_that_meets());
  fs::permissions(folder.path(), fs::perms{0555});
  const ProcessSurroundings nobody{.folder = folder.path(), .as_nobody = true};
  const bool can_start = Process(BERTHWRIGHT_PROGRAM, {"--version"}, nobody).code() == 0;
  Process watch(BERTHWRIGHT_PROGRAM, {"watch", "plan.json", "--port", "0"}, nobody);
  const int port = can_start ? port_of(watch) : 0;
  const std::string page = port > 0 ? page_with(port, " data-findings=\"1\"") : "";
  watch.interrupt();
  const int code = watch.code();
  fs::permissions(folder.path(), fs::perms{0755});
  if (!can_start) GTEST_SKIP() << "the program cannot be started without our rights";
  EXPECT_NE(page.find("Save 1: 0 alerts not met"), std::string::npos) << watch.err();
  EXPECT_EQ(code, 0) << watch.err();
  EXPECT_EQ(files_in(folder.path()).size(), 1U);
}

TEST_F(WatchCommand, HelpHasAnExampleAndTellsHowItEnds) {
  const auto help = started({"watch", "--help"});
  EXPECT_EQ(help->code(), 0);
  EXPECT_NE(help->out().find("Example:\n  berthwright watch plans/sanderling.json"), std::string::npos);
  EXPECT_NE(help->out().find("Ctrl-C ends it."), std::string::npos);
}

}  // namespace
}  // namespace berthwright

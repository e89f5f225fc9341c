#include "yard/saved_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <chrono>
#include <filesystem>
#include <thread>

#include "support/temporary_folder.h"

namespace berthwright {
namespace {

namespace fs = std::filesystem;

class SavedFileTest : public testing::Test {
 protected:
  /// What is told within thirty looks, as the program takes them; "nothing" where there is no news.
  std::string told() {
    for (int look = 0; look < 30; ++look) {
      const std::optional<Result<std::string>> news = file.news();
      if (news) return *news ? news->value() : "fault: " + news->problems().front().message;
      std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
    return "nothing";
  }

  TemporaryFolder folder;
  std::string path = folder.put("plan.json", "one");
  SavedFile file{path, 1000};
};

TEST_F(SavedFileTest, TellsTheFileOnceAndEachSaveOnce) {
  EXPECT_EQ(told(), "one");
  EXPECT_EQ(told(), "nothing");
  folder.put("plan.json", "two");
  EXPECT_EQ(told(), "two");
  EXPECT_EQ(told(), "nothing");
}

TEST_F(SavedFileTest, SeesAFileThatIsReplacedByRenaming) {
  EXPECT_EQ(told(), "one");
  fs::rename(folder.put("plan.json.new", "two"), path);
  EXPECT_EQ(told(), "two");
  // The old one is moved away first and the new one written in its place.
  fs::rename(path, folder.path("plan.json~"));
  folder.put("plan.json", "three");
  EXPECT_EQ(told(), "three");
}

TEST_F(SavedFileTest, ASaveWithoutAChangeIsNoNews) {
  EXPECT_EQ(told(), "one");
  folder.put("plan.json", "one");
  EXPECT_EQ(told(), "nothing");
}

// Both saves bear one date and have one size: only the bytes tell them apart.
TEST_F(SavedFileTest, ASecondSaveAtTheSameMomentIsNotMissed) {
  EXPECT_EQ(told(), "one");
  folder.put("plan.json", "two");
  struct stat dated {};
  ASSERT_EQ(stat(path.c_str(), &dated), 0);
  EXPECT_FALSE(file.news()) << "the change is seen, and whoever writes has time until the next look";
  ASSERT_TRUE(file.news()) << "then it is read";
  folder.put("plan.json", "six");
  EXPECT_EQ(told(), "six");
}

TEST_F(SavedFileTest, TellsOnceThatTheFileIsGoneAndThatItIsBackAsItWas) {
  EXPECT_EQ(told(), "one");
  fs::remove(path);
  EXPECT_EQ(told(), "fault: " + path + ": No such file or directory");
  EXPECT_EQ(told(), "nothing");
  folder.put("plan.json", "one");
  EXPECT_EQ(told(), "one");
}

TEST_F(SavedFileTest, AFileThatIsAwayForAMomentIsNotGone) {
  EXPECT_EQ(told(), "one");
  fs::remove(path);
  for (int look = 0; look < 4; ++look) EXPECT_FALSE(file.news());
  folder.put("plan.json", "two");
  EXPECT_EQ(told(), "two");
}

TEST_F(SavedFileTest, AFolderOrAPipeInItsPlaceIsToldAndNotWaitedFor) {
  EXPECT_EQ(told(), "one");
  fs::remove(path);
  fs::create_directory(path);
  EXPECT_EQ(told(), "fault: " + path + ": not a plain file");
  fs::remove(path);
  ASSERT_EQ(mkfifo(path.c_str(), 0600), 0);
  EXPECT_EQ(told(), "nothing") << "the same fault is not told twice";
  fs::remove(path);
  folder.put("plan.json", "two");
  EXPECT_EQ(told(), "two");
}

TEST_F(SavedFileTest, FollowsALinkToItsFile) {
  const std::string goal = folder.put("goal.json", "one");
  fs::remove(path);
  fs::create_symlink(goal, path);
  EXPECT_EQ(told(), "one");
  folder.put("goal.json", "two");
  EXPECT_EQ(told(), "two");
}

TEST_F(SavedFileTest, ReadsOneByteMoreThanItsMostSoThatTooLargeIsSeen) {
  folder.put("plan.json", std::string(5000, 'x'));
  EXPECT_EQ(told(), std::string(1001, 'x'));
}

}  // namespace
}  // namespace berthwright

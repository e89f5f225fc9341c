#include "yard/files.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace berthwright {
namespace {

namespace fs = std::filesystem;

class Files : public testing::Test {
 protected:
  Files() {
    std::string name = (fs::temp_directory_path() / "berthwright-files-XXXXXX").string();
    folder_ = mkdtemp(name.data());
  }
  ~Files() override { fs::remove_all(folder_); }

  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  std::string content(const std::string& name) const {
    std::ifstream file(folder_ / name);
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
  }
  std::size_t entries() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder_), fs::directory_iterator{}));
  }

  fs::path folder_;
};

std::string id_of(const Result<Written>& result) { return result.ok() ? "" : result.problems().front().id; }

TEST_F(Files, MakeTheFolderAndReplaceWhatStoodThere) {
  ASSERT_TRUE(write_files(path("a/b"), {{"one.svg", "old"}}).ok());
  ASSERT_TRUE(write_files(path("a/b"), {{"one.svg", "new"}, {"two.svg", "2"}}).ok());
  EXPECT_EQ(content("a/b/one.svg"), "new");
  EXPECT_EQ(content("a/b/two.svg"), "2");
  EXPECT_EQ(std::distance(fs::directory_iterator(path("a/b")), fs::directory_iterator{}), 2);
}

TEST_F(Files, RefuseToReplaceALinkOrAFolderAndLeaveTheRestAlone) {
  ASSERT_TRUE(write_files(folder_.string(), {{"one.svg", "old"}}).ok());
  fs::create_directory(path("two.svg"));
  EXPECT_EQ(id_of(write_files(folder_.string(), {{"one.svg", "new"}, {"two.svg", "2"}})), "output.create");
  EXPECT_EQ(content("one.svg"), "old");
  EXPECT_EQ(entries(), 2U);  // no temporary file is left
  fs::create_symlink(path("one.svg"), path("three.svg"));
  EXPECT_EQ(id_of(write_files(folder_.string(), {{"three.svg", "x"}})), "output.create");
  EXPECT_EQ(content("one.svg"), "old");
}

TEST_F(Files, SayWhenAFileStandsInPlaceOfTheFolder) {
  ASSERT_TRUE(write_files(folder_.string(), {{"plain", ""}}).ok());
  EXPECT_EQ(id_of(write_files(path("plain"), {{"one.svg", ""}})), "output.create");
  EXPECT_EQ(id_of(write_files(path("plain/below"), {{"one.svg", ""}})), "output.create");
}

TEST_F(Files, KeepTheOldFileWhenTheNewOneCannotBeWrittenWhole) {
  ASSERT_TRUE(write_files(folder_.string(), {{"one.svg", "old"}}).ok());
  const auto ignored = std::signal(SIGXFSZ, SIG_IGN);
  rlimit before{};
  ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
  const rlimit small{1000, before.rlim_max};
  ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
  const Result<Written> result = write_files(folder_.string(), {{"one.svg", std::string(5000, 'x')}});
  ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
  std::signal(SIGXFSZ, ignored);
  EXPECT_EQ(id_of(result), "output.write");
  EXPECT_EQ(content("one.svg"), "old");
  EXPECT_EQ(entries(), 1U);
}

TEST_F(Files, TakeThePlaceOfWhatAKilledRunLeft) {
  const std::string left = ".one.svg." + std::to_string(getpid()) + ".part";
  ASSERT_TRUE(write_files(folder_.string(), {{left, "half"}}).ok());
  ASSERT_TRUE(write_files(folder_.string(), {{"one.svg", "new"}}).ok());
  EXPECT_EQ(content("one.svg"), "new");
  EXPECT_EQ(entries(), 1U);
}

TEST_F(Files, AreReadWholeAndNoFurtherThanTheLimit) {
  ASSERT_TRUE(write_files(folder_.string(), {{"plan", std::string(70000, 'p')}}).ok());
  EXPECT_EQ(read_file(path("plan"), 100000)->size(), 70000U);
  EXPECT_EQ(read_file(path("plan"), 1000)->size(), 1001U);
}

TEST_F(Files, ThatCannotBeReadSayWhy) {
  EXPECT_EQ(read_file(path("missing"), 10).problems().front().id, "file.unreadable");
  EXPECT_EQ(read_file(folder_.string(), 10).problems().front().id, "file.unreadable");
}

}  // namespace
}  // namespace berthwright

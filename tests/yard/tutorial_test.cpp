#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include <berthwright/plan/house_text.h>

#include <nlohmann/json.hpp>

#include "support/plan_builder.h"
#include "support/process.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

using TypedJson = nlohmann::ordered_json;

/// A fenced block of a page: what stands behind the fence, what is in it, and the words before it.
struct PageBlock {
  std::string language;
  std::string list;  ///< "/pieces": its things go there
  std::string text;
  std::string words_before;
};

std::vector<PageBlock> blocks_of(const std::string& page) {
  std::vector<PageBlock> blocks;
  std::istringstream lines(page);
  std::string words;  // the last lines without an empty one between
  bool ended = false;
  for (std::string line; std::getline(lines, line);) {
    if (!line.starts_with("```")) {
      if (!line.empty()) words = (ended ? "" : words) + line + '\n';
      ended = line.empty();
      continue;
    }
    std::istringstream fence(line.substr(3));
    PageBlock block;
    fence >> block.language >> block.list;
    block.words_before = words;
    while (std::getline(lines, line) && line != "```") block.text += line + '\n';
    blocks.push_back(std::move(block));
  }
  return blocks;
}

/// Whether what is shown stands in what was printed, line by line; … leaves lines out.
testing::AssertionResult shown_in(const std::string& shown, const std::string& printed) {
  std::size_t from = 0;
  std::istringstream lines(shown);
  std::string part;
  const auto found = [&] {
    if (part.empty()) return true;
    const std::string all = '\n' + printed;
    const std::size_t at = all.find('\n' + part, from);
    if (at == std::string::npos) return false;
    from = at + part.size();
    return true;
  };
  for (std::string line; std::getline(lines, line);) {
    if (line != "…") {
      part += line + '\n';
      continue;
    }
    if (!found()) break;
    part.clear();
  }
  if (found()) return testing::AssertionSuccess();
  return testing::AssertionFailure() << "shown, but not printed:\n" << part << "printed:\n" << printed;
}

/// A plan as a person types it, step by step.
class TypedPlan {
 public:
  explicit TypedPlan(std::string file) : file_(std::move(file)) {}

  void type(const PageBlock& block) {
    std::string text = block.text.substr(0, block.text.find_last_not_of(",\n") + 1);
    if (block.list.empty() && text.starts_with('{')) {
      json_ = TypedJson::parse(text);
      write(block.text);
      return;
    }
    if (block.list.empty()) {
      const TypedJson members = TypedJson::parse('{' + text + '}');
      for (const auto& [name, value] : members.items()) {
        EXPECT_NE(block.words_before.find('`' + name + '`'), std::string::npos)
            << "the words before do not say where it goes: " << block.words_before;
        json_[name] = value;
      }
    } else {
      EXPECT_NE(block.words_before.find('`' + block.list.substr(block.list.rfind('/') + 1) + '`'),
                std::string::npos)
          << "the words before do not say where it goes: " << block.words_before;
      TypedJson& list = json_.at(TypedJson::json_pointer(block.list));
      for (const TypedJson& thing : TypedJson::parse('[' + text + ']')) put(list, thing);
    }
    write(json_.dump(1));
  }

 private:
  /// In place of the same thing, else at the end.
  static void put(TypedJson& list, const TypedJson& thing) {
    const char* key = thing.contains("id") ? "id" : "piece";
    const auto same =
        std::ranges::find_if(list, [&](const TypedJson& one) { return one.at(key) == thing.at(key); });
    if (same == list.end())
      list.push_back(thing);
    else
      *same = thing;
  }
  void write(const std::string& text) const { std::ofstream(file_) << text; }

  std::string file_;
  TypedJson json_;
};

TEST(Tutorial, BuildsTheTrailerByHandAndShowsWhatIsSeen) {
  const TemporaryFolder folder;
  TypedPlan plan(folder.put("plans/linnet.json", ""));
  std::string printed;
  std::size_t commands = 0;
  std::size_t shown = 0;
  for (const PageBlock& block : blocks_of(repository_text("plans/TUTORIAL.md"))) {
    SCOPED_TRACE(block.text);
    if (block.language == "json") {
      ASSERT_NO_THROW(plan.type(block));
    } else if (block.language == "sh") {
      std::istringstream words(block.text);
      std::string dev, run;
      words >> dev >> run;
      ASSERT_EQ(dev + ' ' + run, "./dev run");
      std::vector<std::string> arguments;
      for (std::string word; words >> word;) arguments.push_back(word);
      Process process(BERTHWRIGHT_PROGRAM, arguments, {.folder = folder.path()});
      const int code = process.code();
      printed = process.out() + process.err();
      EXPECT_TRUE((0 <= code && code <= 2) || code == 65) << code << printed;
      ++commands;
    } else {
      ASSERT_EQ(block.language, "text");
      EXPECT_TRUE(shown_in(block.text, printed));
      ++shown;
    }
  }
  EXPECT_EQ(commands, 12U);
  EXPECT_EQ(shown, 11U);
  const std::string kept = repository_text("plans/tutorial/linnet.json");
  EXPECT_EQ(bytes_of(folder.path("plans/linnet.json")), kept) << "the finished plan is another one";
  EXPECT_EQ(*house_text(kept), kept);
  for (const char* sheet : {"1-day.svg", "2-night.svg"})
    EXPECT_TRUE(bytes_of(folder.path(std::string("out/linnet/") + sheet)) ==
                repository_text(std::string("plans/tutorial/") + sheet))
        << sheet << " is stale: run ./dev demo";
}

// A control: what is not printed is not shown.
TEST(Tutorial, NoticesWhatIsNotPrinted) {
  EXPECT_TRUE(shown_in("a\n…\nc\n", "a\nb\nc\n"));
  EXPECT_TRUE(shown_in("b\nc\n", "a\nb\nc\n"));
  EXPECT_FALSE(shown_in("a\nc\n", "a\nb\nc\n"));
  EXPECT_FALSE(shown_in("c\n…\na\n", "a\nb\nc\n"));
  EXPECT_FALSE(shown_in("a\n…\nd\n", "a\nb\nc\n"));
  EXPECT_FALSE(shown_in("b", "ab\n"));
}

// The blocks of README without a language are parts of files that it links to just before.
TEST(Readme, ShowsWhatTheFilesSayToWhichItLinks) {
  const std::string readme = repository_text("README.md");
  std::size_t parts = 0;
  for (const PageBlock& block : blocks_of(readme)) {
    if (!block.language.empty() || block.text.starts_with("./dev")) continue;
    SCOPED_TRACE(block.text);
    const std::size_t before = readme.find(block.text);
    const std::string file_end = ".txt](";
    const std::size_t link = readme.rfind(file_end, before);
    ASSERT_NE(link, std::string::npos);
    const std::size_t from = link + file_end.size();
    EXPECT_TRUE(shown_in(block.text, repository_text(readme.substr(from, readme.find(')', from) - from))));
    ++parts;
  }
  EXPECT_EQ(parts, 4U);
}

}  // namespace
}  // namespace berthwright

#include <berthwright/yard/program.h>

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "support/plan_builder.h"
#include "support/temporary_folder.h"
#include "support/yard_plans.h"

namespace berthwright {
namespace {

namespace fs = std::filesystem;

constexpr const char* loose =
    "{\"title\":\"T\", \"unit\":\"in\", // mine\n \"berthwright\":1,"
    "\"configurations\":{\"day\":[]},\"interior\":{\"height\":74,\"length\":120,\"width\":76}}";
constexpr const char* tidy = R"({
  "berthwright": 1,
  "title": "T",
  "unit": "in",  // mine

  "interior": { "length": 120, "width": 76, "height": 74 },

  "configurations": { "day": [] }
}
)";

class FmtCommand : public testing::Test {
 protected:
  int ran(const std::vector<std::string>& arguments) {
    out.str("");
    err.str("");
    return run(arguments, out, err);
  }
  TemporaryFolder folder;
  std::ostringstream out;
  std::ostringstream err;
};

TEST_F(FmtCommand, PutsAFileInOrderInPlaceAndThenLeavesIt) {
  const std::string file = folder.put("a.json", loose);
  ASSERT_EQ(chmod(file.c_str(), 0640), 0);
  EXPECT_EQ(ran({"fmt", file}), 0) << err.str();
  EXPECT_EQ(out.str(), file + ": put in house order\n");
  EXPECT_EQ(bytes_of(file), tidy);
  struct stat there {};
  ASSERT_EQ(stat(file.c_str(), &there), 0);
  EXPECT_EQ(there.st_mode & 07777U, 0640U) << "who may read it stays the same";
  EXPECT_EQ(ran({"fmt", file}), 0);
  EXPECT_EQ(out.str(), file + ": is in house order\n");
  struct stat again {};
  ASSERT_EQ(stat(file.c_str(), &again), 0);
  EXPECT_EQ(again.st_ino, there.st_ino) << "not written again";
  EXPECT_EQ(files_in(folder.path()).size(), 1U) << "no temporary file is left";
}

TEST_F(FmtCommand, ChecksWithoutWriting) {
  const std::string first = folder.put("a.json", loose);
  const std::string second = folder.put("b.json", tidy);
  EXPECT_EQ(ran({"fmt", "--check", first, second}), 1);
  EXPECT_EQ(out.str(), first + ": is not in house order\n" + second + ": is in house order\n");
  EXPECT_EQ(bytes_of(first), loose);
  EXPECT_EQ(ran({"fmt", "--check", second}), 0);
}

TEST_F(FmtCommand, LeavesABrokenPlanAloneAndOrdersTheOthers) {
  const std::string broken = folder.put("broken.json", plan_that_is_broken());
  const std::string empty = folder.put("empty.json", "");
  const std::string sound = folder.put("sound.json", loose);
  EXPECT_EQ(ran({"fmt", broken, empty, sound, folder.path("missing.json")}), 66);
  EXPECT_EQ(bytes_of(broken), plan_that_is_broken());
  EXPECT_EQ(bytes_of(empty), "");
  EXPECT_EQ(bytes_of(sound), tidy);
  EXPECT_NE(err.str().find(broken + ":2:"), std::string::npos) << err.str();
  EXPECT_NE(err.str().find(empty + ":1:1"), std::string::npos) << err.str();
  EXPECT_EQ(ran({"fmt", broken}), 65);
  EXPECT_EQ(ran({"fmt"}), 64);
}

TEST_F(FmtCommand, WritesNoReadOnlyFileAndNoLink) {
  const std::string file = folder.put("a.json", loose);
  const std::string link = folder.path("link.json");
  fs::create_symlink(file, link);
  EXPECT_EQ(ran({"fmt", link}), 73);
  EXPECT_TRUE(fs::is_symlink(link));
  ASSERT_EQ(chmod(file.c_str(), 0444), 0);
  EXPECT_EQ(ran({"fmt", file}), 73);
  EXPECT_NE(err.str().find("the file is read-only"), std::string::npos) << err.str();
  EXPECT_EQ(bytes_of(file), loose);
}

TEST_F(FmtCommand, SaysWhenTheFolderIsReadOnly) {
  const std::string file = folder.put("sub/a.json", loose);
  ASSERT_EQ(chmod(file.c_str(), 0666), 0);
  for (const std::string& place : {folder.path(), folder.path("sub")})
    ASSERT_EQ(chmod(place.c_str(), 0555), 0);
  const bool root = geteuid() == 0;
  constexpr uid_t nobody = 65534;
  if (root) {
    ASSERT_EQ(seteuid(nobody), 0);
  }
  const int code = ran({"fmt", file});
  if (root) {
    ASSERT_EQ(seteuid(0), 0);
  }
  for (const std::string& place : {folder.path(), folder.path("sub")})
    ASSERT_EQ(chmod(place.c_str(), 0755), 0);
  EXPECT_EQ(code, 73) << err.str();
  EXPECT_NE(err.str().find("see who may write into this one."), std::string::npos) << err.str();
  EXPECT_EQ(bytes_of(file), loose);
}

TEST_F(FmtCommand, OrdersAFileOfNearlyFourMebibytesAndRefusesALargerOne) {
  const std::string comment = "/*" + std::string((4U << 20U) - 1000, 'c') + "*/\n";
  const std::string file = folder.put("a.json", comment + loose);
  EXPECT_EQ(ran({"fmt", file}), 0) << err.str();
  EXPECT_TRUE(bytes_of(file) == comment + tidy);
  const std::string large = folder.put("b.json", comment + std::string(1000, ' ') + loose);
  EXPECT_EQ(ran({"fmt", large}), 65);
}

// Nothing that a check says of a demo depends on the order of its fields.
TEST_F(FmtCommand, ChangesNothingThatACheckSays) {
  std::string text = repository_text("plans/nuthatch.json");
  for (const auto& [from, to] : std::vector<std::pair<std::string, std::string>>{
           {"\"unit\": \"in\",", ""},
           {"\"interior\": {", "\"unit\": \"in\", \"interior\": {"},
           {"\"length\": \"38\", \"width\": \"20\", \"thickness\": \"4\"",
            "\"thickness\": \"4\",\n\n\"width\": \"20\", \"length\": \"38\""}}) {
    ASSERT_NE(text.find(from), std::string::npos) << from;
    text.replace(text.find(from), from.size(), to);
  }
  const std::string file = folder.put("plan.json", text);
  EXPECT_EQ(ran({"fmt", file}), 0);
  EXPECT_NE(bytes_of(file), text);
  EXPECT_EQ(ran({"check", file}), 1);
  EXPECT_EQ(out.str(), repository_text("out/nuthatch/check.txt"));
}

TEST_F(FmtCommand, ConvertsUnitsToStandardOutputOrIntoANewFile) {
  const std::string file = folder.put("a.json", tidy);
  EXPECT_EQ(ran({"convert-units", file}), 0);
  const std::string metric = out.str();
  // 120 in = 3048 mm, 76 in = 1930.4 mm, 74 in = 1879.6 mm.
  EXPECT_NE(metric.find(R"({ "length": 3048, "width": 1930.4, "height": 1879.6 })"), std::string::npos)
      << metric;
  EXPECT_EQ(err.str(),
            "3 lengths written in millimetres; every length is the same to the tick.\n"
            "The plan does not say /paper, and what goes without saying changes with the unit: a4, no longer "
            "letter. Write it "
            "into the plan to keep it.\n");
  EXPECT_EQ(bytes_of(file), tidy);
  const std::string copy = folder.path("b.json");
  EXPECT_EQ(ran({"convert-units", file, "--write", copy}), 0);
  EXPECT_EQ(bytes_of(copy), metric);
  EXPECT_NE(out.str().find("Written: " + copy + "\n"), std::string::npos) << out.str();
  EXPECT_EQ(ran({"convert-units", copy, "--write", file}), 73) << "it exists";
  EXPECT_EQ(bytes_of(file), tidy);
  EXPECT_EQ(ran({"convert-units", copy, "--write", file, "--force"}), 0);
  EXPECT_EQ(bytes_of(file), tidy);
}

TEST_F(FmtCommand, NamesWhatInchesCannotSay) {
  std::string text = tidy;
  text.replace(text.find("76, \"height\": 74"), 16, "\"1.9 m\", \"height\": \"1900 mm\"");
  EXPECT_EQ(ran({"convert-units", "--to", "in", folder.put("a.json", text)}), 0);
  EXPECT_EQ(out.str(), text);
  EXPECT_EQ(err.str(),
            "0 lengths written in inches; every length is the same to the tick.\n"
            "2 lengths cannot be said exactly in inches and carry their own unit:\n"
            "  1.9 m (line 6),\n  1900 mm (line 6).\n");
}

TEST_F(FmtCommand, RefusesAUnitItDoesNotKnowAndABrokenPlan) {
  EXPECT_EQ(ran({"convert-units", folder.put("a.json", tidy), "--to", "cm"}), 64);
  EXPECT_EQ(
      ran({"convert-units", folder.put("b.json", plan_that_is_broken()), "--write", folder.path("c.json")}),
      65);
  EXPECT_FALSE(fs::exists(folder.path("c.json")));
  EXPECT_EQ(ran({"convert-units", folder.path("missing.json")}), 66);
}

// What a check measures is the same in either unit: all its millimetres, and every status.
TEST_F(FmtCommand, ACheckInTheOtherUnitMeasuresTheSame) {
  const std::string file = folder.path("metric.json");
  ASSERT_EQ(ran({"convert-units", repository_path("plans/dunnock.json"), "--write", file}), 0);
  const auto figures = [&](const std::string& plan) {
    EXPECT_LE(ran({"check", "--json", plan}), 2);
    std::vector<std::string> all;
    const auto collect = [&all](const auto& self, const std::string& key,
                                const nlohmann::json& value) -> void {
      if (value.is_number() || key == "status") all.push_back(key + " " + value.dump());
      if (!value.is_structured()) return;
      for (const auto& [name, member] : value.items()) self(self, name, member);
    };
    collect(collect, "", nlohmann::json::parse(out.str()));
    return all;
  };
  const std::vector<std::string> inches = figures(repository_path("plans/dunnock.json"));
  EXPECT_GT(inches.size(), 500U);
  EXPECT_EQ(figures(file), inches);
}

}  // namespace
}  // namespace berthwright

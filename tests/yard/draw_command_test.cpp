#include <gtest/gtest.h>

#include <string>

#include "support/plan_builder.h"
#include "support/program_said.h"
#include "support/temporary_folder.h"
#include "support/yard_plans.h"

namespace berthwright {
namespace {

using support::ProgramSaid;
using support::told;

class DrawCommand : public testing::Test {
 protected:
  std::string plan(const std::string& text) const { return folder.put("plan.json", text); }
  TemporaryFolder folder;
};

TEST_F(DrawCommand, SaysWhenTheDrawingsCannotBeMade) {
  const std::string file = plan(plan_that_meets());
  const ProgramSaid refused = told({"draw", file, "--out", folder.put("taken", "mine")});
  EXPECT_EQ(refused.code, 73);
  EXPECT_EQ(refused.out, "");
  EXPECT_FALSE(refused.err.empty());
  EXPECT_EQ(bytes_of(folder.path("taken")), "mine");
}

TEST_F(DrawCommand, DrawsEveryConfigurationAndNamesTheFiles) {
  const std::string drawings = folder.path("a/b");
  const ProgramSaid draw = told({"draw", plan(plan_that_meets()), "--out", drawings});
  EXPECT_EQ(draw.code, 0);
  EXPECT_EQ(draw.err, "");
  std::string names;
  for (const auto& [name, bytes] : files_in(drawings)) {
    names += drawings + "/" + name + "\n";
    EXPECT_TRUE(bytes.starts_with("<svg ")) << name;
    EXPECT_TRUE(bytes.ends_with("</svg>\n")) << name;
  }
  EXPECT_EQ(draw.out, names);
  EXPECT_EQ(files_in(drawings).size(), 16U)
      << "two plans, the sections by night, where the heater may stand by day, by night and at both, each "
         "with "
         "its rules, the ways out by night, the steps to night and back, the key to the cushions, labels, two raised views";
}

TEST_F(DrawCommand, DrawsOnePdfFileNamedForThePlan) {
  const std::string file = plan(plan_that_meets());
  const ProgramSaid draw = told({"draw", "--pdf", file, "--out", folder.path("one")});
  EXPECT_EQ(draw.code, 0);
  EXPECT_EQ(draw.err, "");
  EXPECT_EQ(draw.out, folder.path("one") + "/plan.pdf\n");
  const auto drawn = files_in(folder.path("one"));
  ASSERT_EQ(drawn.size(), 1U);
  EXPECT_TRUE(drawn.at("plan.pdf").starts_with("%PDF-1.5\n"));
  EXPECT_TRUE(drawn.at("plan.pdf").ends_with("%%EOF\n"));
  told({"draw", "--pdf", file, "--out", folder.path("two")});
  EXPECT_EQ(files_in(folder.path("two")), drawn);
}

TEST_F(DrawCommand, DrawsTheKeyToTheCushionsAndTheirLabels) {
  const std::string dunnock = repository_path("plans/dunnock.json");
  const ProgramSaid cut = told({"cut", dunnock, "--out", folder.path("key")});
  EXPECT_EQ(cut.code, 0);
  EXPECT_EQ(cut.out, told({"cut", dunnock}).out);
  const auto drawn = files_in(folder.path("key"));
  EXPECT_TRUE(drawn.contains("1-cushions-key.svg"));
  EXPECT_TRUE(drawn.rbegin()->first.ends_with("-cushions-labels.svg"));
  EXPECT_EQ(told({"cut", dunnock, "--out", folder.put("taken", "mine")}).code, 73);
}

TEST_F(DrawCommand, DrawsWhatIsNotMetAndSaysSo) {
  for (const std::string& text : {plan_that_does_not(), plan_with_an_unknown()}) {
    const ProgramSaid draw = told({"draw", plan(text), "--out", folder.path("out")});
    EXPECT_EQ(draw.code, 0);
    EXPECT_NE(draw.err.find("berthwright check "), std::string::npos);
  }
}

}  // namespace
}  // namespace berthwright

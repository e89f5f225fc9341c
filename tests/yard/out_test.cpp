#include <berthwright/yard/program.h>

#include <gtest/gtest.h>

#include <filesystem>
#include <set>
#include <sstream>

#include "support/demos.h"
#include "support/plan_builder.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

constexpr auto cure = "\nRun ./dev demo, look at what changed in out/ (git diff out), and commit it.";

// What ./dev demo makes of one plan: every drawing, the check as text, where its heaters may stand, the
// steps, the cushions proposed, its own laid anew, what is cut and where on stock, its loads, and the packet
// that goes home with it.
std::map<std::string, std::string> made_now(const std::string& name) {
  const TemporaryFolder folder;
  const std::string plan = repository_path("plans/" + name + ".json");
  std::ostringstream drawn, checked, sited, stepped, cut, err;
  EXPECT_EQ(run({"draw", plan, "--out", folder.path()}, drawn, err), 0) << err.str();
  EXPECT_LE(run({"check", plan}, checked, err), 2) << err.str();
  std::ostringstream split;
  EXPECT_LE(run({"split", plan, "--out", folder.path()}, split, err), 2) << err.str();
  std::ostringstream reused;
  EXPECT_LE(run({"split", plan, "--reuse", "--out", folder.path()}, reused, err), 2) << err.str();
  std::ostringstream packed;
  EXPECT_EQ(run({"packet", plan, "--out", folder.path("packet.html")}, packed, err), 0) << err.str();
  std::ostringstream placed;
  EXPECT_LE(
      run({"cut", plan, "--stock", repository_path("plans/stock/plover-lane.json"), "--out", folder.path()},
          placed, err),
      2)
      << err.str();
  auto files = files_in(folder.path());
  files["stock.txt"] = placed.str();
  files["check.txt"] = checked.str();
  if (demo_text(name).find("\"kind\": \"heater\"") != std::string::npos) {
    EXPECT_LE(run({"heater", plan}, sited, err), 2) << err.str();
    files["heater.txt"] = sited.str();
  }
  EXPECT_LE(run({"steps", plan}, stepped, err), 2) << err.str();
  files["steps.txt"] = stepped.str();
  files["split.txt"] = split.str();
  files["reuse.txt"] = reused.str();
  EXPECT_LE(run({"cut", plan}, cut, err), 2) << err.str();
  files["cut.txt"] = cut.str();
  std::ostringstream loads;
  EXPECT_LE(run({"loads", plan}, loads, err), 2) << err.str();
  files["loads.txt"] = loads.str();
  return files;
}

TEST(Out, HoldsWhatIsMadeOfEveryPlanByteForByte) {
  for (const std::string& name : demo_names()) {
    SCOPED_TRACE(name);
    const auto made = made_now(name);
    const auto kept = files_in(repository_path("out/" + name));
    ASSERT_GE(made.size(), 2U);
    for (const auto& [file, bytes] : made) {
      const auto there = kept.find(file);
      if (there == kept.end())
        ADD_FAILURE() << "out/" << name << '/' << file << " is missing." << cure;
      else
        EXPECT_TRUE(there->second == bytes) << "out/" << name << '/' << file << " is stale." << cure;
    }
    for (const auto& [file, bytes] : kept)
      EXPECT_TRUE(made.contains(file)) << "out/" << name << '/' << file << " comes from no plan." << cure;
  }
}

// As much as a telephone loads without complaint (our own choice).
TEST(Out, HoldsNoPacketOfSixHundredKilobytes) {
  for (const std::string& name : demo_names())
    EXPECT_LT(files_in(repository_path("out/" + name)).at("packet.html").size(), 600'000U) << name;
}

TEST(Out, HoldsNothingElse) {
  const std::vector<std::string> names = demo_names();
  std::set<std::string> kept;
  for (const auto& entry : std::filesystem::directory_iterator(repository_path("out")))
    kept.insert(entry.path().filename().string());
  EXPECT_EQ(kept, std::set<std::string>(names.begin(), names.end())) << cure;
}

}  // namespace
}  // namespace berthwright

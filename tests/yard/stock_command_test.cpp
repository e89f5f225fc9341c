#include <berthwright/yard/program.h>

#include <gtest/gtest.h>

#include <sstream>

#include <nlohmann/json.hpp>

#include "support/plan_builder.h"
#include "support/temporary_folder.h"

namespace berthwright {
namespace {

class StockCommand : public testing::Test {
 protected:
  int cut(const std::vector<std::string>& more, const std::string& plan = "plans/dunnock.json") {
    std::vector<std::string> arguments{"cut", repository_path(plan)};
    arguments.insert(arguments.end(), more.begin(), more.end());
    out.str("");
    err.str("");
    return run(arguments, out, err);
  }
  const std::string demo = repository_path("plans/stock/plover-lane.json");
  TemporaryFolder folder;
  std::ostringstream out;
  std::ostringstream err;
};

TEST_F(StockCommand, SaysWhereEveryPartLiesAndWhatItCosts) {
  EXPECT_EQ(cut({"--stock", demo}), 2) << err.str();  // the fabric of Dunnock is unknown
  EXPECT_NE(out.str().find("Part 2, Rear seat: "), std::string::npos) << out.str();
  EXPECT_NE(out.str().find("Cut 1: The piece of 72\" x 41\""), std::string::npos);
  EXPECT_NE(out.str().find("Together 171.00 USD"), std::string::npos);
  EXPECT_NE(out.str().find("prices, weights and remnants of this file are invented"), std::string::npos);
  EXPECT_EQ(cut({"--stock", demo}, "plans/whinchat.json"), 0) << out.str();
}

TEST_F(StockCommand, PrintsTheSameAsJson) {
  EXPECT_EQ(cut({"--stock", demo, "--json"}), 2);
  const nlohmann::json answer = nlohmann::json::parse(out.str());
  EXPECT_EQ(answer["exit_code"], 2);
  std::int64_t cost = 0;
  for (const auto& job : answer["jobs"]) cost += job["cost"]["cost_hundredths"].get<std::int64_t>();
  EXPECT_EQ(cost, 171'00);
  EXPECT_EQ(answer["jobs"][0]["sheets"][0]["cuts"][0]["at_mm"], 571.5);
}

TEST_F(StockCommand, DrawsASheetForEveryPieceOfStock) {
  EXPECT_EQ(cut({"--stock", demo, "--out", folder.path()}), 2) << err.str();
  const auto files = files_in(folder.path());
  EXPECT_EQ(files.size(), 3U);
  ASSERT_TRUE(files.contains("1-stock-a1.svg"));
  EXPECT_NE(files.at("1-stock-a1.svg").find("2: Rear seat"), std::string::npos);
}

TEST_F(StockCommand, EndsWith1WhereAPartHasNoPlace) {
  const std::string small =
      folder.put("small.json", R"({"berthwright_stock": 1, "title": "Rack", "unit": "in",
      "currency": "USD", "materials": [{"material": "2535", "goods": "foam", "thickness": "4", "kerf": "0",
      "stock": [{"name": "strip", "length": "82", "width": "20", "price": "1", "count": 1}]}]})");
  EXPECT_EQ(cut({"--stock", small}), 1) << out.str();
  EXPECT_NE(out.str().find("has no place: "), std::string::npos);
}

TEST_F(StockCommand, TellsFaultsOfTheStockFileByFileAndLine) {
  const std::string broken = repository_path("plans/stock/broken/version.json");
  EXPECT_EQ(cut({"--stock", broken}), 65);
  EXPECT_NE(err.str().find("version.json:2:"), std::string::npos) << err.str();
  EXPECT_NE(err.str().find("write \"berthwright_stock\": 1"), std::string::npos);
  EXPECT_EQ(cut({"--stock", folder.path("absent.json")}), 66);
  EXPECT_EQ(cut({"--effort", "5"}), 64);
}

TEST_F(StockCommand, ReadsStockFromStandardInputOnlyWhereThePlanDoesNot) {
  EXPECT_EQ(run({"cut", "-", "--stock", "-"}, out, err), 64);
}

}  // namespace
}  // namespace berthwright

#include <berthwright/plan/stock.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "support/plan_builder.h"

namespace berthwright {
namespace {

constexpr std::string_view whole_file = R"({
  "berthwright_stock": 1, "title": "Rack", "unit": "in", "currency": "USD",
  "materials": [
    { "material": "birch plywood", "goods": "board", "thickness": "17.6 mm", "kerf": "1/8", "stages": 3, "keep_from": "10",
      "stock": [
        { "name": "whole sheet", "length": "96", "width": "48", "price": "92.50", "weight": "76 lb", "trim": "1/4" },
        { "name": "rest", "length": "30", "width": "20", "remnant": true,
          "defects": [{ "from_end": "4", "from_edge": "0", "length": "2", "width": "1" }] }],
      "parts": [{ "name": "cleat", "length": "38", "width": "1 1/2", "count": 4, "lies": "along the grain" }] },
    { "material": "duck", "goods": "cloth", "kerf": 0, "cut": "free",
      "stock": [{ "name": "roll", "length": "720", "width": "56", "sold_by": "9", "price": 7, "count": 1 }] }
  ],
  "notes": ["invented"] })";

TEST(ReadStock, TakesEveryField) {
  const Result<StockList> read = read_stock(whole_file);
  ASSERT_TRUE(read.ok()) << listed(read.problems());
  const StockList& list = *read;
  EXPECT_EQ(list.title, "Rack");
  EXPECT_EQ(list.currency, "USD");
  EXPECT_EQ(list.notes, std::vector<std::string>{"invented"});
  ASSERT_EQ(list.materials.size(), 2U);
  const StockMaterial& board = list.materials[0];
  EXPECT_EQ(board.goods, StockGoods::board);
  EXPECT_EQ(board.thickness, Length::millimetres(176, 10));
  EXPECT_EQ(board.kerf, Length::inches(1, 8));
  EXPECT_EQ(board.manner, CutManner::through);
  EXPECT_EQ(board.stages, std::size_t{3});
  EXPECT_EQ(board.least_offcut, 10_in);
  ASSERT_EQ(board.stock.size(), 2U);
  EXPECT_EQ(board.stock[0].price, 92'50);
  EXPECT_EQ(board.stock[0].weight, Mass::pounds(76));
  EXPECT_EQ(board.stock[0].trim, Length::inches(1, 4));
  EXPECT_FALSE(board.stock[0].count);
  EXPECT_TRUE(board.stock[1].remnant);
  EXPECT_EQ(board.stock[1].price, 0);
  EXPECT_EQ(board.stock[1].count, std::size_t{1});
  EXPECT_EQ(board.stock[1].defects, (std::vector<Rect>{{{4_in, 0_in}, {6_in, 1_in}}}));
  ASSERT_EQ(board.parts.size(), 1U);
  EXPECT_EQ(board.parts[0].count, 4U);
  EXPECT_EQ(board.parts[0].lay, PartLay::grain);
  const StockMaterial& cloth = list.materials[1];
  EXPECT_EQ(cloth.manner, CutManner::free);
  EXPECT_FALSE(cloth.thickness);
  EXPECT_EQ(cloth.stock.at(0).sold_by, 9_in);
  EXPECT_EQ(cloth.stock[0].count, std::size_t{1});
}

TEST(ReadStock, ReadsTheDemo) {
  const Result<StockList> read = read_stock(repository_text("plans/stock/plover-lane.json"));
  EXPECT_TRUE(read.ok()) << listed(read.problems());
}

TEST(ReadStock, ReportsEveryFaultInItsLine) {
  std::size_t files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(repository_path("plans/stock/broken"))) {
    const std::string name = entry.path().filename().string();
    SCOPED_TRACE(name);
    ++files;
    const std::string text = repository_text("plans/stock/broken/" + name);
    std::string list;
    const Result<StockList> read = read_stock(text);
    for (const Problem& problem : read.problems()) {
      list += (list.empty() ? "" : ", ") + problem.id + ' ' + std::to_string(problem.line);
      EXPECT_FALSE(problem.found.empty()) << problem.message;
      EXPECT_FALSE(problem.allowed.empty()) << problem.message;
      EXPECT_FALSE(problem.cure.empty()) << problem.message;
    }
    EXPECT_TRUE(text.starts_with("// expect: " + list + ";")) << list;
  }
  EXPECT_GE(files, 6U);
}

TEST(ReadStock, NeverEndsOnTextThatIsNoFile) {
  for (const std::string_view text : {"", "{", "null", "{\"materials\": [1]}", "{\"berthwright_stock\": 1"})
    EXPECT_FALSE(read_stock(text).ok()) << text;
}

}  // namespace
}  // namespace berthwright

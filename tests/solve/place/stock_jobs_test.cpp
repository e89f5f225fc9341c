#include <berthwright/solve/place/stock_jobs.h>

#include <gtest/gtest.h>

#include <algorithm>

#include "support/placed_case.h"
#include "support/plan_builder.h"

namespace berthwright {
namespace {

/// A plan with its covers and stock; jobs point into all three.
struct MadeJobs {
  Plan plan;
  std::vector<Cover> covers;
  StockList stock;
  StockJobs jobs;
};
std::unique_ptr<MadeJobs> jobs_of(const std::string& plan_file, const std::string& stock_text) {
  Plan plan = read_plan(repository_text(plan_file)).value();
  auto made = std::make_unique<MadeJobs>(MadeJobs{std::move(plan), {}, read_stock(stock_text).value(), {}});
  made->covers = covers(made->plan, made->plan->sewing).value();
  made->jobs = stock_jobs(made->plan, made->covers, made->stock);
  return made;
}
std::string stock_of(const std::string& materials) {
  return R"({"berthwright_stock": 1, "title": "Rack", "unit": "in", "currency": "USD", "materials": [)" +
         materials + "]}";
}

// Dunnock: two seats of 22 x 40 in 2535, cut 22 1/2 x 40 1/2 (foam 1/2 in over); two backs of 15 1/2 x 40 in
// 1824. A sheet of 46 x 41 gives both seats: 22 1/2 + 1/8 + 22 1/2 = 45 1/8.
TEST(StockJobs, HoldTheFoamOfAGrade) {
  const auto made = jobs_of("plans/dunnock.json", stock_of(R"(
      {"material": "2535", "goods": "foam", "thickness": "4", "kerf": "1/8",
       "stock": [{"name": "sheet", "length": "46", "width": "41", "price": "50"}]})"));
  ASSERT_EQ(made->jobs.jobs.size(), 1U);
  const StockJob& job = made->jobs.jobs[0];
  ASSERT_EQ(job.task.parts.size(), 2U);
  EXPECT_EQ(job.task.parts[0].id, "Front seat");
  EXPECT_EQ(job.task.parts[0].length, Length::inches(45, 2));
  EXPECT_EQ(job.task.parts[0].width, Length::inches(81, 2));
  EXPECT_TRUE(job.parts[0].by_its_box);
  EXPECT_EQ(job.placing.cost, 50'00);
  EXPECT_TRUE(job.placing.proven());
  const std::vector<StockTaken> taken = stock_taken(job);
  ASSERT_EQ(taken.size(), 1U);
  EXPECT_EQ(taken[0].count, 1U);
  // 2.5 lb a cubic foot x 46 x 41 x 4 in: 7544 / 1728 x 2.5 = 10.914 lb.
  ASSERT_TRUE(taken[0].weight);
  EXPECT_EQ(taken[0].weight->units() / mass_units_per_pound, 10);
  const StockUse use = stock_use(job);
  EXPECT_EQ(use.stock, Area::rectangle(46_in, 41_in));
  EXPECT_EQ(use.parts, Area::rectangle(Length::inches(45, 2), 81_in));
}

// Foam of 4 in out of sheets of 2 in: two layers of each seat.
TEST(StockJobs, GlueFoamUpFromLayersThatThereAre) {
  const auto made = jobs_of("plans/dunnock.json", stock_of(R"(
      {"material": "2535", "goods": "foam", "thickness": "2", "kerf": "1/8",
       "stock": [{"name": "sheet", "length": "82", "width": "72", "price": "50"}]})"));
  ASSERT_EQ(made->jobs.jobs.size(), 1U);
  EXPECT_EQ(made->jobs.jobs[0].task.parts.size(), 4U);
  EXPECT_EQ(made->jobs.jobs[0].task.parts[1].id, "Front seat, piece 2");
}

// The table of Dunnock is 30 3/4 x 38, its grain along its length.
TEST(StockJobs, KeepTheGrainOfBoards) {
  const std::string board =
      R"({"material": "23/32 plywood", "goods": "board", "thickness": "0.703", "kerf": "0",
       "stock": [{"name": "sheet", "length": "LL", "width": "WW", "price": "50"}]})";
  const auto sized = [&](const std::string& length, const std::string& width) {
    std::string text = board;
    text.replace(text.find("LL"), 2, length);
    text.replace(text.find("WW"), 2, width);
    return jobs_of("plans/dunnock.json", stock_of(text));
  };
  EXPECT_TRUE(sized("31", "38")->jobs.jobs.at(0).placing.unplaced.empty());
  EXPECT_FALSE(sized("38", "31")->jobs.jobs.at(0).placing.unplaced.empty());
}

TEST(StockJobs, TellWhatHasNoStock) {
  const auto made = jobs_of("plans/dunnock.json", stock_of(""));
  EXPECT_TRUE(made->jobs.jobs.empty());
  // Four cushions of foam, their four covers, one table.
  ASSERT_EQ(made->jobs.without.size(), 9U);
  EXPECT_EQ(made->jobs.without[0].why, PartWithoutStock::Why::no_material);
  EXPECT_EQ(std::ranges::count(made->jobs.without, PartWithoutStock::Why::unnamed, &PartWithoutStock::why),
            4);
}

// Whinchat's covers have neither nap nor repeat and are cut off one roll; Sanderling's stripes come again.
TEST(StockJobs, CutCoversOffTheRoll) {
  const std::string demo = repository_text("plans/stock/plover-lane.json");
  const auto whinchat = jobs_of("plans/whinchat.json", demo);
  const auto cloth = std::ranges::find(whinchat->jobs.jobs, StockGoods::cloth,
                                       [](const StockJob& job) { return job.material->goods; });
  ASSERT_NE(cloth, whinchat->jobs.jobs.end());
  EXPECT_TRUE(cloth->placing.unplaced.empty());
  EXPECT_EQ(cloth->placing.cuts.size(), 1U);
  const auto sanderling = jobs_of("plans/sanderling.json", demo);
  EXPECT_TRUE(std::ranges::any_of(sanderling->jobs.without, [](const PartWithoutStock& part) {
    return part.why == PartWithoutStock::Why::patterned;
  }));
}

TEST(StockJobs, OfTheDemosAreSound) {
  const std::string demo = repository_text("plans/stock/plover-lane.json");
  for (const std::string name : {"dunnock", "goldcrest", "nuthatch", "sanderling", "siskin", "whinchat"}) {
    SCOPED_TRACE(name);
    const auto made = jobs_of("plans/" + name + ".json", demo);
    for (const StockJob& job : made->jobs.jobs) {
      // What is cut off a roll is checked as a sheet of its own.
      PlacingTask task = job.task;
      for (StockKind& kind : task.stock)
        if (kind.sold_by && !job.placing.cuts.empty()) {
          kind.length = job.placing.cuts[0].length;
          kind.price = job.placing.cuts[0].price;
        }
      EXPECT_EQ(oracle::cut_faults(checked_case(task, job.placing)), std::vector<std::string>{});
    }
  }
}

}  // namespace
}  // namespace berthwright

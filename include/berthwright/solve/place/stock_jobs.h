#pragma once

#include <string>
#include <vector>

#include <berthwright/plan/stock.h>
#include <berthwright/solve/cover/cover.h>
#include <berthwright/solve/place/placing.h>

namespace berthwright {

/// What a part of a job is, beyond its size.
struct JobPart {
  const Piece* piece = nullptr;  ///< of the plan; none: it is in the stock file alone
  bool by_its_box = false;       ///< it is no rectangle, and the box around it is placed
  std::optional<int> density{};  ///< of foam, tenths of a pound per cubic foot; none: unknown
};

/// The parts of a plan and of a stock file that are cut from one material, and how.
struct StockJob {
  const StockMaterial* material = nullptr;
  PlacingTask task;
  std::vector<JobPart> parts{};  ///< one for each of the task
  Placing placing{};
};

/// Stock of one kind that a job takes; of a roll each length by itself.
struct StockTaken {
  std::size_t kind = 0;
  Length length;
  std::size_t count = 0;
  std::int64_t cost = 0;
  std::optional<Mass> weight{};  ///< as the file says; of foam else by its grade; none: unknown
};
std::vector<StockTaken> stock_taken(const StockJob& job);

/// Where the stock of a job goes; what is left is kerf, trim and waste.
struct StockUse {
  Area stock;
  Area parts;
  Area kept;  ///< offcuts worth keeping
};
StockUse stock_use(const StockJob& job);

/// Something that is to be cut and for which the stock file has no material.
struct PartWithoutStock {
  enum class Why { no_material, unnamed, patterned, not_reckoned };
  StockGoods goods = StockGoods::foam;
  std::string called;    ///< "Front seat"
  std::string material;  ///< as the plan calls it; empty: it does not say
  std::optional<Length> thickness{};
  Why why = Why::no_material;
};

struct StockJobs {
  std::vector<StockJob> jobs{};  ///< in the order of the stock file, those without a part left out
  std::vector<PartWithoutStock> without{};
};

/// Foam of cushions by grade and thickness, whole or, where the file has no foam so thick, as the layers and
/// pieces of its glue-up; boards and tables by material and thickness, along their grain; covers by the
/// fabric's name, panels as they lie on the roll, strips across it. A fabric with a repeat is not placed.
/// Shapes are placed by their boxes. Points into all three.
StockJobs stock_jobs(const Plan& plan, const std::vector<Cover>& covers, const StockList& stock,
                     const PlacingEffort& effort = {});

}  // namespace berthwright

#pragma once

#include <stdexcept>
#include <string>
#include <utility>

#include <berthwright/solve/open/leaves.h>

#include "support/plan_builder.h"

namespace berthwright::support {

/// The plan with its arrangement and its leaves.
struct Opened {
  explicit Opened(Plan made)
      : plan(std::move(made)), arrangement(stood(plan)), leaves(leaves_in(plan, arrangement)) {}
  Opened(const Opened&) = delete;
  Opened& operator=(const Opened&) = delete;

  static Arrangement stood(const Plan& plan) {
    Result<Arrangement> arrangement = arranged(plan, plan->configurations.front());
    if (!arrangement) throw std::invalid_argument(listed(arrangement.problems()));
    return std::move(arrangement).value();
  }
  const LeafReach& first() const { return leaves.at(0); }

  Plan plan;
  Arrangement arrangement;
  std::vector<LeafReach> leaves;
};

inline std::string opens(const std::string& members) { return R"("opens": [{"id": "L", )" + members + "}]"; }
inline double inches(Length length) { return static_cast<double>(length.ticks()) / ticks_per_inch; }

}  // namespace berthwright::support

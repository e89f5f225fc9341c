#pragma once

#include <berthwright/solve/room/support.h>

#include <stdexcept>

#include "support/furniture.h"
#include "support/plan_builder.h"

namespace berthwright::support {

/// Arrangement and plan together, since one points into the other.
struct Stood {
  explicit Stood(const Furniture& furniture) : plan(furniture.plan()) {
    Result<Arrangement> made = arranged(plan, plan->configurations.front());
    if (!made) throw std::invalid_argument(listed(made.problems()));
    arrangement = std::move(made).value();
    support = support_of(plan, arrangement);
  }
  Stood(const Stood&) = delete;
  Stood& operator=(const Stood&) = delete;

  const BoardSupport& board() const { return support.boards.front(); }
  BearingSide side(Wall toward) const {
    for (const BearingSide& side : board().sides)
      if (side.toward == toward) return side;
    throw std::invalid_argument("no such side");
  }

  Plan plan;
  Arrangement arrangement;
  Support support;
};

}  // namespace berthwright::support

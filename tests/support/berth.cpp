#include "support/berth.h"

#include <stdexcept>

#include "support/plan_builder.h"

namespace berthwright::support {

Furniture berth(const std::string& length, const std::string& width, const std::string& people) {
  Furniture furniture;
  furniture.fixture("bench", "bench", {"0", "0", length, width}, "0", "14")
      .lay("pad", "cushion", {"0", "0", length, width}, "4", R"("on": ["bench"])")
      .bed("bed", {"pad"}, people);
  return furniture;
}

MadeUp::MadeUp(Plan made) : plan(std::move(made)) {
  Result<Arrangement> stood = arranged(plan, plan->configurations.front());
  if (!stood) throw std::invalid_argument(listed(stood.problems()));
  arrangement = std::move(stood).value();
  mattress = mattress_of(plan, arrangement, plan->beds.front());
}

SleepingRoom MadeUp::room() const { return sleeping_room(plan, arrangement, plan->beds.front(), mattress); }

}  // namespace berthwright::support

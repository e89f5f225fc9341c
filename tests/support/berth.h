#pragma once

#include <string>

#include <berthwright/solve/bed/sleeping_room.h>

#include "support/furniture.h"

namespace berthwright::support {

/// A bed of one cushion 4 in thick on a bench 14 in high, at the front left: its level is 18 in.
Furniture berth(const std::string& length, const std::string& width, const std::string& people = "");

/// The only configuration of a plan stood up, with the mattress of its first bed. Throws where it does not
/// stand.
struct MadeUp {
  explicit MadeUp(Plan made);
  SleepingRoom room() const;

  Plan plan;
  Arrangement arrangement;
  Mattress mattress;
};

}  // namespace berthwright::support

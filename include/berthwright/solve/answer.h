#pragma once

#include <berthwright/solve/bed/sleeping_room.h>
#include <berthwright/solve/heat/distances.h>
#include <berthwright/solve/heat/plugged.h>
#include <berthwright/solve/open/leaves.h>
#include <berthwright/solve/open/road.h>
#include <berthwright/solve/room/collisions.h>
#include <berthwright/solve/room/support.h>
#include <berthwright/solve/seat/knocks.h>
#include <berthwright/solve/way/alarms.h>
#include <berthwright/solve/way/exits.h>

namespace berthwright {

struct BedAnswer {
  const Bed* bed = nullptr;
  Mattress mattress;
  SleepingRoom room;
  std::optional<SleepingRoom> levelled;  ///< once every piece lies at the level; none when each does already
  Bedding bedding;
  BedExits exits;
};

struct ConfigurationAnswer {
  const Configuration* configuration = nullptr;
  Arrangement arrangement;
  std::vector<Collision> collisions;
  std::vector<Overreach> overreach;
  Support support;
  std::vector<LeafReach> leaves;  ///< what opens, in the order of the plan
  std::vector<BedAnswer> beds;    ///< the beds of this configuration
  std::vector<HeatDistance> heat;
  std::vector<PluggedIn> plugged;
  std::vector<Seat> seats;    ///< none on the road
  std::vector<Knock> knocks;  ///< of the seats, then of the beds
  std::vector<ExitOpening> exit_openings;
  std::vector<InwardSwing> inward_swings;  ///< of every opening that opens inward
};

/// Everything the tool knows about a plan, computed once; every output reads the same answer. Points into
/// `plan`, which must outlive it.
struct Answer {
  std::vector<ConfigurationAnswer> configurations;  ///< in the order of the plan
  std::vector<LeafReach> leaves;                    ///< how far each opens among what is built in alone
  std::vector<AlarmPlace> alarms;
  std::vector<Finding> findings;  ///< sorted
};

/// Problems are faults of the plan that only show when it is stood up (a piece that rests on nothing).
Result<Answer> answered(const Plan& plan);

/// 0: every alert met or close; 1: an alert not met; 2: none not met but one unknown.
int exit_code(const Answer& answer);

}  // namespace berthwright

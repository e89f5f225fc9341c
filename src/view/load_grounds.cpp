#include <algorithm>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/load_words.h"

namespace berthwright {
namespace {

void add_ground(const std::vector<Loads>& all, WeighedThing::Basis basis, const std::string& lead,
                std::vector<std::string>& told) {
  std::vector<std::string> names;
  // What stood on the scales counts only in the configurations in which it lies elsewhere.
  for (const Loads& loads : all)
    for (const WeighedThing& thing : loads.balance().things)
      if (thing.basis == basis && std::ranges::find(names, thing.name) == names.end())
        names.push_back(thing.name);
  if (!names.empty())
    told.push_back(lead + " (" + listed_with_and(names) + "): " + source_text(weight_source(basis)) + ".");
}

}  // namespace

std::string_view loads_lead() {
  return "Reckoned from what the plan says things weigh and draw; “met” and “not met” are what was compared "
         "here, with the numbers named. Where a scale or a meter says otherwise, the scale and the meter "
         "decide.";
}

std::string weighing_caution(const Plan& plan) {
  const bool van = plan->chassis && !plan->chassis->towed;
  return "Weigh the " + vehicle(plan) +
         (van ? " loaded as it is driven, each axle" : " loaded as it is towed, coupling and axle") +
         ": no figure here replaces a scale.";
}

std::vector<std::string> load_grounds(const Plan& plan, const std::vector<Loads>& all) {
  std::vector<std::string> told;
  using Basis = WeighedThing::Basis;
  if (std::ranges::none_of(all, [&](const Loads& one) { return states_loads(plan, one); }))
    told.push_back(
        "No numbers are drawn: the plan states no chassis and no circuit, and not what everything weighs.");
  add_ground(all, Basis::panel, "Weight by panel", told);
  add_ground(all, Basis::plywood, "Weight of plywood", told);
  add_ground(all, Basis::foam, "Weight of foam", told);
  add_ground(all, Basis::water, "Weight of water", told);
  told.push_back(
      "The middle of a thing is taken to be that of its outline; what is stowed lies anywhere in what it is "
      "kept in. People, bedding and the covers of cushions are not counted.");
  if (plan->chassis && plan->chassis->towed)
    told.push_back(
        "Coupling and axle are reckoned as supports of a beam that stands level, the wheels even about the "
        "middle of the room.");
  if (plan->supply)
    told.push_back(
        "What has no watts in the plan is not counted. What may run three hours or more counts by " +
        std::to_string(continuous_percent) +
        " %, and what is plugged in by a cord takes at "
        "most 80 % of its breaker: " +
        source_text(continuous_source()) + ".");
  if (plan->warming)
    told.push_back(
        "Warming: the whole room is air of 1.2 kg/m³ and 1005 J/kgK (from memory), stirred and of one "
        "temperature; "
        "the low end of a time warms air alone, the high end takes linings and furniture for twice what the "
        "air "
        "takes (our own choice; common practice, no source, is 15 to 20 minutes where air alone takes 11 to "
        "12). "
        "To warm boards and cushions through takes far longer.");
  told.push_back(weighing_caution(plan) + " Wiring is for a " +
                 (plan->english == English::american ? "licensed" : "qualified") +
                 " person and the local code; the maker's instructions come first.");
  return told;
}

}  // namespace berthwright

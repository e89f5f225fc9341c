#include "write/report_ways.h"

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string pinch_of(const Plan& plan, const WayOut& way) {
  if (way.left == way.door && way.right == way.door) return "as the door itself";
  if (way.left == way.right) return "at its narrowest within " + name_of(plan, way.left);
  return "at its narrowest between " + name_of(plan, way.left) + " and " + name_of(plan, way.right);
}

std::string floor_text(const Plan& plan, const BedExits& exits) {
  if (exits.ways.empty()) return "the plan shows no door that opens";
  const WayOut* way = widest(exits.ways);
  if (way == nullptr) return "no way over the floor to a door";
  return "to " + name_of(plan, way->door) + " " +
         both(way->width, plan->unit, {.rounding = Rounding::down, .feet = false}) + " wide, " +
         pinch_of(plan, *way);
}

std::string near_text(const Plan& plan, const ConfigurationAnswer& configuration, const BedExits& exits) {
  std::string text;
  for (std::size_t i = 0; i < exits.away.size(); ++i) {
    const ExitOpening& one = configuration.exit_openings[i];
    if (exits.away[i] > in_reach) continue;
    text += (text.empty() ? "" : ", ") + one.clear.opening->name + " (" +
            (one.opens() ? quantity_text(one.clear.for_vehicle, plan->unit, Rounding::down) + " clear"
                         : std::string("not known to open")) +
            ")";
  }
  return (text.empty() ? "no way out" : text) + " within " + both(in_reach, plan->unit, {.feet = false}) +
         " of it";
}

}  // namespace

std::string ways_part(const Plan& plan, const Answer& answer) {
  std::string text;
  for (const ConfigurationAnswer& configuration : answer.configurations) {
    if (configuration.exit_openings.empty()) continue;
    for (const BedAnswer& bed : configuration.beds)
      text += wrapped(bed.bed->name + " (" + configuration.configuration->name +
                          "): " + floor_text(plan, bed.exits) + "; " +
                          near_text(plan, configuration, bed.exits) + ".",
                      {"  ", "    "});
  }
  return text.empty() ? text : "\nWays out\n" + text;
}

}  // namespace berthwright

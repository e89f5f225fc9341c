#include "view/told_figures.h"

#include <algorithm>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"

namespace berthwright {
namespace {

std::string heat_sentence(const Plan& plan, const ConfigurationAnswer& answer, const HeatDistance& entry) {
  const Bed* bed = plan.bed(entry.nearest_to);
  const std::string to = bed != nullptr ? bed->name + (entry.made_up ? " (made up)" : " (bare)")
                                        : name_of(plan, entry.nearest_to);
  return answer.configuration->name + ": " + name_of(plan, entry.source) + " to " + to + " " +
         both(entry.distance, plan->unit, {.rounding = Rounding::down}) + ".";
}

std::string narrowest_at(const Plan& plan, const WayOut& way) {
  if (way.left == way.door && way.right == way.door) return "as the door itself";
  if (way.left == way.right) return "at its narrowest within " + name_of(plan, way.left);
  return "at its narrowest between " + name_of(plan, way.left) + " and " + name_of(plan, way.right);
}

std::string over_the_floor(const Plan& plan, const BedExits& exits) {
  if (exits.ways.empty()) return "the plan shows no door that opens";
  const WayOut* way = widest(exits.ways);
  if (way == nullptr) return "no way over the floor to a door";
  return "to " + name_of(plan, way->door) + " " +
         both(way->width, plan->unit, {.rounding = Rounding::down, .feet = false}) + " wide, " +
         narrowest_at(plan, *way);
}

std::string ways_in_reach(const Plan& plan, const ConfigurationAnswer& configuration, const BedExits& exits) {
  std::string text;
  for (std::size_t i = 0; i < exits.away.size(); ++i) {
    const ExitOpening& one = configuration.exit_openings[i];
    if (!exits.reached[i]) continue;
    text += (text.empty() ? "" : ", ") + one.clear.opening->name + " (" +
            (one.opens() ? quantity_text(one.clear.for_vehicle, plan->unit, Rounding::down) + " clear"
                         : std::string("not known to open")) +
            ")";
  }
  return (text.empty() ? "no way out" : text) + " within " + both(in_reach, plan->unit, {.feet = false}) +
         " of it (NFPA 1192, 6.2.1.3)";
}

}  // namespace

std::vector<std::string> bed_sentences(const Plan& plan, const BedAnswer& answer) {
  const Unit own = plan->unit;
  const SleepingRoom& room = answer.room;
  const Configuration* when = plan.configuration(answer.bed->configuration.text());
  const std::string name = answer.bed->name + " (" + (when == nullptr ? "" : when->name) + "): ";
  if (!room.largest) return {name + "no lying space at all."};

  const Sides largest{room.largest->length, room.largest->width};
  std::vector<std::string> told{name + quantity_text(largest, own, Rounding::down) +
                                " is the largest rectangle in it; lying area " +
                                quantity_text(room.area, own, Rounding::down) + "; its level is " +
                                both(answer.mattress.level, own) + " above the floor."};
  std::string held;
  for (const SizeHeld& size : room.sizes)
    if (size.held) held += (held.empty() ? "" : ", ") + std::string(size.size->name);
  const std::string sizes = source_text(find_rule("bed.named-size")->source);
  told.push_back(held.empty() ? "It holds no mattress of a named size (" + sizes + ")."
                              : "It holds: " + held + " (" + sizes + ").");
  if (answer.levelled && answer.levelled->largest) {
    const Sides level{answer.levelled->largest->length, answer.levelled->largest->width};
    told.push_back("Once every piece lies at that level: " + quantity_text(level, own, Rounding::down) + ".");
  }
  if (room.longest)
    told.push_back("Longest place " + both(24_in, own, {.feet = false}) +
                   " wide (at the shoulders; common practice, no source): " +
                   both(side_beside(*room.longest, 24_in), own, {.rounding = Rounding::down}) + ".");
  for (const PersonRoom& person : room.people) {
    const std::string who = person.person->name.empty() ? "One person" : person.person->name;
    const std::string stature =
        person.person->stature ? " (" + both(*person.person->stature, own) + " tall)" : std::string{};
    told.push_back(who + stature + ": a place " + both(person.person->width, own) +
                   " wide suits people up to " +
                   both(person.suits_stature, own, {.rounding = Rounding::down}) + " tall.");
  }
  if (room.sitting)
    told.push_back(
        "Head room to sit up: " + both(room.sitting->head_room, own, {.rounding = Rounding::down}) +
        " (from the cushion pressed down).");
  return told;
}

std::string fits_sentence(const Plan& plan, const SleepingRoom& room) {
  return "Long enough for " + quantity_text(room.fits, plan->unit, Rounding::down) +
         " (stature and 100 mm, ANSUR II, normal model).";
}

std::vector<std::string> nearest_to_heat(const Plan& plan, const ConfigurationAnswer& answer) {
  std::vector<std::string> told;
  const auto& entries = answer.heat;
  for (auto first = entries.begin(); first != entries.end();) {
    const auto last =
        std::find_if(first, entries.end(), [&](const auto& e) { return e.source != first->source; });
    told.push_back(
        heat_sentence(plan, answer, *std::min_element(first, last, [](const auto& a, const auto& b) {
                        return a.distance < b.distance;
                      })));
    first = last;
  }
  return told;
}

std::string exits_sentence(const Plan& plan, const ConfigurationAnswer& configuration, const BedAnswer& bed) {
  return bed.bed->name + " (" + configuration.configuration->name + "): " + over_the_floor(plan, bed.exits) +
         "; " + ways_in_reach(plan, configuration, bed.exits) + ".";
}

}  // namespace berthwright

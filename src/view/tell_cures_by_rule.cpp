#include <array>
#include <span>
#include <stdexcept>
#include <string_view>

#include <berthwright/exact/measure.h>

#include "view/called.h"
#include "view/cure_words.h"
#include "view/telling.h"

namespace berthwright {
namespace {

/// Who tells the cures of one rule.
struct CureTeller {
  std::string_view rule;
  std::string (*tell)(const ToldCure&);
};

std::string by_rule(const ToldCure& told, std::span<const CureTeller> tellers) {
  for (const CureTeller& teller : tellers)
    if (teller.rule == told.finding.rule.text()) return teller.tell(told);
  throw std::logic_error("no words for a cure of " + told.finding.rule.text());
}

std::string limit_of(const ToldCure& told, std::string_view rule) {
  return both(told.plan.limit(*find_rule(rule)), told.plan->unit);
}

// Shown as "its place of rest is": one thing or several.
std::string is_or_are(const ToldCure& told) { return told.several() ? " are" : " is"; }

std::string state_bedding(const ToldCure& told) {
  if (told.finding.variant == "unsaid")
    return "Write where the bedding of " + told.things() +
           " is kept by day, and how large its bundle is, into the plan (bedding).";
  if (told.finding.variant == "size of the bundle")
    return "Write the length, width and height of the bundled bedding of " + told.thing() +
           " into the plan (bedding).";
  return "Write the clear inside of " + told.thing() + " into the plan (inside).";
}
std::string state_stature(const ToldCure& told) {
  return "Write how tall " + told.things() + is_or_are(told) + " into the plan (stature).";
}
std::string state_facing(const ToldCure& told) {
  return "Draw what people on " + told.things() +
         " lean against: a cushion on edge (stands_on, faces), or the wall or cabinet behind them.";
}
std::string state_outlet(const ToldCure& told) {
  return "Draw the outlet of " + told.thing() + " (fixtures, kind outlet), and name it (plugged_into).";
}
std::string state_opening(const ToldCure& told) {
  const Opening* opening = told.plan.opening(told.cure.subject);
  if (opening != nullptr && !opening->escape)
    return "Try whether " + told.thing() + " opens by hand from inside, and mark it as a way out (escape).";
  return "Write into the plan whether and how " + told.thing() + " opens (opens).";
}
std::string state_hinge(const ToldCure& told) {
  return "Write into the plan on which side the hinge of " + told.thing() + " stands (hinge).";
}
std::string state_ways(const ToldCure&) {
  return "Draw the door (openings), and mark every window or hatch that serves as a way out (escape).";
}
std::string state_leaf(const ToldCure& told) {
  return "Write the length, width and place of " + told.thing() + " into the plan (length, width, at).";
}
std::string state_hold(const ToldCure& told) {
  return "See what holds " + told.things() +
         " on the road, and write it into the plan (held_by: latch, hook, strap and the like); where nothing "
         "does, fit it.";
}
std::string state_on_edge(const ToldCure& told) {
  return "Lay " + told.things() + " flat for the road, or write into the plan what holds " +
         (told.several() ? "them" : "it") + " (held_by).";
}
std::string state_heater_on_the_road(const ToldCure& told) {
  if (told.finding.variant == "running")
    return "Switch " + told.things() + " off for the road, unplug " + (told.several() ? "them" : "it") +
           ", let cool and stow behind a door or drawer that is latched (state, stowed).";
  return "Stow " + told.things() +
         " cold behind a door or drawer that is latched (stowed), or write into the plan what holds " +
         (told.several() ? "them" : "it") + " (held_by).";
}
std::string state_road(const ToldCure&) {
  return R"(Add a configuration "road" that says where every piece travels (configurations).)";
}
std::string state_stowed(const ToldCure& told) {
  return "Write into the plan where " + told.thing() + " is kept (stowed).";
}
std::string state_built(const ToldCure& told) {
  const std::string year = "rite the year in which the " +
                           std::string(word(Term::trailer, told.plan->english)) +
                           " was built into the plan (built)";
  if (!told.finding.variant.empty()) return "W" + year + ".";
  return "Set " + told.thing() + " against what it hangs on (at), or draw that; or w" + year + ".";
}

constexpr std::array stating{
    CureTeller{"bed.bedding-locker", state_bedding},
    CureTeller{"bed.person-length", state_stature},
    CureTeller{"bed.side-by-side", state_stature},
    CureTeller{"bed.head-to-foot", state_stature},
    CureTeller{"seat.shallow", state_facing},
    CureTeller{"heat.stowed", state_stowed},
    CureTeller{"cord.reach", state_outlet},
    CureTeller{"way.opening", state_opening},
    CureTeller{"way.none", state_opening},
    CureTeller{"way.second", state_opening},
    CureTeller{"way.swing", state_hinge},
    CureTeller{"way.not-stated", state_ways},
    CureTeller{"leaf.opens", state_leaf},
    CureTeller{"road.hold", state_hold},
    CureTeller{"road.on-edge", state_on_edge},
    CureTeller{"road.heater", state_heater_on_the_road},
    CureTeller{"road.unchecked", state_road},
    CureTeller{"alarm.inside-wall", state_built},
};

std::string do_fasten(const ToldCure& told) {
  const std::vector<std::string>& all = told.finding.subjects;
  const std::string legs =
      all.size() > 1 ? names_with_and(told.plan, {all.begin() + 1, all.end()}) : std::string("the leg");
  return "Hold " + legs + " in " + told.thing() +
         " and below by a socket, a catch or screws; the plan has no field for it: write it into the notes "
         "(notes).";
}
std::string do_firmer(const ToldCure& told) {
  const auto asked = std::get<Count>(*told.finding.compared).number;
  return "Make " + names_with_and(told.plan, told.finding.subjects) + " of foam that at least " +
         std::to_string(asked) + " lb press in by a quarter: the last two digits of its grade.";
}
std::string do_into_the_room(const ToldCure& told) {
  return "Move " + told.things() + " so far into the room that there is a roof over it.";
}
std::string do_knees(const ToldCure& told) {
  return "Clear " + told.by() + " more for knees under " + told.thing() +
         ": move what stands there, or set the seats farther apart.";
}
std::string do_cord(const ToldCure& told) {
  const std::string& variant = told.finding.variant;
  if (variant == "shut out")
    return "Keep " + told.by() + " of floor free below " + name_of(told.plan, told.finding.subjects.at(1)) +
           ", or plug " + told.thing() + " into an outlet that has it (plugged_into).";
  if (variant == "no way")
    return "Stand " + told.thing() + " where free floor leads to its outlet, or plug it into another " +
           "(plugged_into).";
  if (variant == "shut in")
    return "Keep " + told.by() + " of floor free where the cord of " + told.thing() +
           " comes out, all the way to its outlet.";
  return "Stand " + told.thing() + " upright and square to the room.";
}
std::string do_leaf(const ToldCure& told) {
  const Leaf* leaf = told.plan.leaf(told.cure.subject);
  const bool drawer = leaf != nullptr && leaf->kind == Leaf::Kind::drawer;
  return "Make " + told.thing() + (drawer ? " shorter" : " smaller, or hang it on another edge (hinge)") +
         "; where it opens far enough to be of use, write that into the plan " +
         (drawer ? "(pull)." : "(angle).");
}
std::string do_exit(const ToldCure& told) {
  return "Fit a window or hatch within " + told.by() + " of " + told.thing() + " that opens " +
         quantity_text(vehicle_opening, told.plan->unit, Rounding::up) +
         " (across × high) clear or more, and mark it as a way out (escape).";
}
std::string hang(const std::string& alarm, const std::string& kind) {
  return alarm + " where its maker says, and write it into the plan (fixtures, kind " + kind + ").";
}
std::string do_smoke(const ToldCure&) {
  return hang("Hang a smoke alarm listed for recreational vehicles", "smoke alarm");
}
std::string do_co(const ToldCure&) { return hang("Hang a CO alarm to UL 2034", "co alarm"); }
std::string do_gas(const ToldCure& told) {
  return hang("Where " + told.thing() + " burns gas, hang a gas alarm", "gas alarm");
}
std::string do_inside_wall(const ToldCure& told) {
  return "Hang " + told.thing() + " on an inside wall or on furniture, its top " +
         limit_of(told, "alarm.dead-air") + " to " + limit_of(told, "alarm.below-ceiling") +
         " below the ceiling, if its maker allows it.";
}

std::string do_far_from_cooking(const ToldCure& told) {
  return "Hang " + told.thing() + " as high as it is now, at least " + told.by() + " from " +
         name_of(told.plan, told.finding.subjects.back()) +
         " as the plan shows it, where its maker's instructions allow that.";
}
std::string do_swing(const ToldCure& told) {
  const std::vector<std::string>& all = told.finding.subjects;
  return "Let " + told.thing() + " open outward (opens), or hang it where " +
         names_with_and(told.plan, {all.begin() + 1, all.end()}) + (all.size() > 2 ? " do" : " does") + " not stand in its swing.";
}
std::string do_fit_the_room(const ToldCure& told) {
  return "Look whether the measures of " + told.thing() +
         " are written right: the room is not so large. Else make it smaller.";
}
std::string do_plug_elsewhere(const ToldCure& told) {
  return "Plug the heater into another outlet (plugged_into), one with " + limit_of(told, "cord.plug-room") +
         " free before it: " + name_of(told.plan, told.finding.subjects.back()) + " must stay before " +
         told.thing() + ".";
}

std::string do_back_cushion(const ToldCure& told) {
  return "Stand a back cushion " + told.by() + " thick behind who sits on " + told.things() +
         ", of which a bed is made: cut back, it would not fill it.";
}

constexpr std::array doing{
    CureTeller{"seat.deep", do_back_cushion},
    CureTeller{"room.inside", do_fit_the_room},
    CureTeller{"cord.plug-room", do_plug_elsewhere},
    CureTeller{"way.swing", do_swing},
    CureTeller{"alarm.cooking", do_far_from_cooking},
    CureTeller{"support.fastening", do_fasten},
    CureTeller{"foam.firmness", do_firmer},
    CureTeller{"seat.head-room", do_into_the_room},
    CureTeller{"seat.knee-depth", do_knees},
    CureTeller{"cord.reach", do_cord},
    CureTeller{"leaf.opens", do_leaf},
    CureTeller{"leaf.opens-by-bed", do_leaf},
    CureTeller{"way.none", do_exit},
    CureTeller{"way.second", do_exit},
    CureTeller{"alarm.smoke", do_smoke},
    CureTeller{"alarm.co", do_co},
    CureTeller{"alarm.gas", do_gas},
    CureTeller{"alarm.inside-wall", do_inside_wall},
};

std::string no_bed_for(const ToldCure& told) {
  return "Nothing in this room mends that: it is " + both(told.plan->interior.length, told.plan->unit) +
         " long and " + both(told.plan->interior.width, told.plan->unit) +
         " wide, so no bed of it is large enough. ";
}
std::string nothing_for_a_bed(const ToldCure& told) {
  if (told.several())
    return names_with_and(told.plan, told.cure.alike) + " must stay above " + told.thing() +
           ", which cannot come down so far. Tell the buyer how much height is left.";
  return no_bed_for(told) + "Tell the buyer how large it is.";
}
std::string nothing_for_one(const ToldCure& told) {
  if (told.several()) return nothing_for_a_bed(told);
  return no_bed_for(told) + "Look whether the stature is written right; else tell " + told.thing() +
         " before the bed is made.";
}
std::string nothing_for_two(const ToldCure& told) {
  if (told.several()) return nothing_for_a_bed(told);
  return no_bed_for(told) + "Tell the buyer that two cannot lie so in it.";
}
std::string nothing_over_a_seat(const ToldCure& told) {
  const std::string upright = " Tell the buyer that the tall do not sit upright there.";
  if (told.several())
    return names_with_and(told.plan, told.cure.alike) + " under " + told.thing() +
           " must stay as high as it is, so nothing mends that." + upright;
  if (told.finding.variant != "roof" && !told.finding.subjects.empty())
    return name_of(told.plan, told.finding.subjects.back()) + " must stay above " + told.thing() +
           ", where people cannot sit lower, so nothing mends that." + upright;
  return "Nothing short of a higher roof mends that: over " + told.thing() +
         " it is too low even where people sit only " + limit_of(told, "seat.low") + " above the floor." +
         upright;
}
std::string nothing_between_walls(const ToldCure& told) {
  return "Nothing that may be moved narrows the way to " + told.thing() +
         ": walls or things that must stay do. Tell the buyer how wide it is.";
}
std::string nothing_far_from_cooking(const ToldCure& told) {
  return "Nothing mends that: no place in the room is so far from " +
         name_of(told.plan, told.finding.subjects.back()) + ". Hang " + told.thing() +
         " as far off as the room and its maker's instructions allow.";
}

std::string nothing_before_an_opening(const ToldCure& told) {
  return names_with_and(told.plan, told.cure.alike) + " must stay before " + told.thing() +
         ". Fit another window or hatch that opens " +
         quantity_text(vehicle_opening, told.plan->unit, Rounding::up) +
         " (across × high) clear or more, or tell the buyer how much of this one is clear.";
}

std::string nothing_of_a_heater(const ToldCure& told) {
  return "Keep to the data plate of " + told.thing() +
         ": this figure is one of portable heaters, told to compare.";
}
std::string nothing_below_a_bunk(const ToldCure& told) {
  return "Leave " + told.thing() + " where it is: a lower sill would serve nobody in " +
         names_with_and(told.plan, told.cure.alike) + ". Tell the buyer that one climbs out there.";
}

constexpr std::array nothing{
    CureTeller{"bed.berth-width", nothing_for_a_bed},
    CureTeller{"bed.berth-length", nothing_for_a_bed},
    CureTeller{"bed.vessel-length", nothing_for_a_bed},
    CureTeller{"bed.named-size", nothing_for_a_bed},
    CureTeller{"bed.person-width", nothing_for_a_bed},
    CureTeller{"bed.clear-height", nothing_for_a_bed},
    CureTeller{"way.opening", nothing_before_an_opening},
    CureTeller{"way.dwelling-window", nothing_before_an_opening},
    CureTeller{"heat.also-three-feet", nothing_of_a_heater},
    CureTeller{"way.sill", nothing_below_a_bunk},
    CureTeller{"bed.person-length", nothing_for_one},
    CureTeller{"bed.side-by-side", nothing_for_two},
    CureTeller{"bed.head-to-foot", nothing_for_two},
    CureTeller{"seat.head-room", nothing_over_a_seat},
    CureTeller{"way.aisle", nothing_between_walls},
    CureTeller{"alarm.cooking", nothing_far_from_cooking},
};

}  // namespace

std::string stating_by_rule(const ToldCure& told) { return by_rule(told, stating); }
std::string doing_by_rule(const ToldCure& told) { return by_rule(told, doing); }
std::string nothing_by_rule(const ToldCure& told) { return by_rule(told, nothing); }

}  // namespace berthwright

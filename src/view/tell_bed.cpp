#include <array>

#include <berthwright/exact/measure.h>

#include "view/telling.h"

namespace berthwright {
namespace {

std::string widest_gap(const Telling& t) {
  if (t.variant() == "parts")
    return t.bed() + " lies in parts that are " + t.measured() + " apart; " + t.compared() + ".";
  if (!t.variant().empty())
    return t.bed() + " has an opening of " + t.measured() + " between " + t.variant() + t.place() +
           "; nothing is asked of such a one.";
  if (t.status() == Status::met && !t.is_measured()) return t.bed() + " closes without a gap.";
  return t.bed() + " has a gap of " + t.measured() + t.place() + "; " + t.compared() + ".";
}

std::string wall_gap(const Telling& t) {
  return t.bed() + " stands off the wall or what is built in by " + t.measured() + t.place() + "; " +
         t.compared() + ".";
}

std::string ridge(const Telling& t) {
  if (!t.has_subject(1)) return t.bed() + " has no ridge between its cushions.";
  return t.bed() + ": " + t.subject(0) + " lies " + t.measured() + " lower than " + t.subject(1) + "; " +
         t.compared() + ".";
}

std::string dropped(const Telling& t) {
  if (!t.has_subject(0)) return t.bed() + ": every piece of it lies in its surface.";
  return t.bed() + ": " + t.subject(0) + " is " + t.measured() +
         " off the level of the bed and drops out of its surface; " + t.compared() + ".";
}

std::string size(const Telling& t) { return t.bed() + " holds a rectangle of " + t.measured() + "."; }
std::string area(const Telling& t) { return t.bed() + " has a lying area of " + t.measured() + "."; }

std::string berth_width(const Telling& t) {
  return t.bed() + " is " + t.measured() + " wide (its largest rectangle); " + t.compared() + ".";
}
std::string berth_length(const Telling& t) {
  return t.bed() + " is " + t.measured() + " long at a width of " + both(24_in, t.unit(), {.feet = false}) +
         "; " + t.compared() + ".";
}
std::string vessel_length(const Telling& t) {
  return t.bed() + " is " + t.measured() + " long at a width of " + both(24_in, t.unit(), {.feet = false}) +
         "; asked of berths on small vessels: " + t.demand() + t.shortfall() + ".";
}
// "under Rear locker", "under the roof".
std::string under(const Telling& t) {
  return "under " + (t.subject(0) == "roof" ? std::string("the roof") : t.subject(0));
}

std::string clear_height(const Telling& t) {
  if (t.is_negative())
    return t.bed() + " lies " + t.magnitude() + " too high to be " + under(t) + t.place() + "; " +
           t.compared() + ".";
  return "Over " + t.bed() + " there are " + t.measured() + " of clear height; " + t.compared() + ".";
}
std::string access_aid(const Telling& t) {
  return t.bed() + " lies " + t.measured() +
         " above the floor; without a step or ladder asked: " + t.demand() + t.shortfall() + ".";
}
std::string guard_rail(const Telling& t) {
  return "The underside of what carries " + t.bed() + " is " + t.measured() +
         " above the floor; without guard rails asked: " + t.demand() + t.shortfall() +
         (t.variant() == "railed" ? "; both its long sides are guarded" : "") + ".";
}
std::string rail_opening(const Telling& t) {
  return t.bed() + " counts as a bunk, and its " + t.variant() +
         (t.is_nothing() ? " side is closed" : " side is open over " + t.measured() + t.place()) + "; " +
         t.compared() + ".";
}
std::string rail_height(const Telling& t) {
  return t.subject(0) + " on the " + t.variant() + " side of " + t.bed() + " rises " + t.measured() +
         " above the mattress; " + t.compared() + ".";
}
std::string overhead(const Telling& t) {
  if (t.is_negative())
    return "A part of " + t.bed() + " lies " + t.magnitude() + " too high to be " + under(t) + t.place() +
           ".";
  if (t.is_nothing()) return t.subject(0) + " stands in the room above " + t.bed() + t.place() + ".";
  return "Over a part of " + t.bed() + " there are " + t.measured() + " " + under(t) + t.place() + ".";
}
std::string sitting_up(const Telling& t) {
  if (t.is_nothing()) return t.bed() + " has no head room at all to sit up in.";
  return t.bed() + " has " + t.measured() + " of head room to sit up in (from the cushion pressed down " +
         both(1_in, t.unit(), {.feet = false}) + "): upright under it sit " + t.upright_under_measured() +
         " (" + t.source() + ").";
}
std::string bedding(const Telling& t) {
  if (t.variant() == "unsaid")
    return "Where the bedding of " + t.subjects(0) + " is kept by day the plan does not say (bedding).";
  const std::string place = "The bedding of " + t.subject(0) + " is kept in " + t.subject(1);
  if (!t.is_measured()) return place + "; the plan does not give the " + t.variant() + ".";
  if (t.is_negative()) return place + ", where its bundle is " + t.magnitude() + " too large" + t.own_figure() + ".";
  return place + ": its bundle has " + t.measured() + " to spare there where it is tightest" + t.own_figure() + ".";
}

std::string no_cushion(const Telling& t) {
  if (!t.is_measured()) return t.bed() + " has no cushion: all of it is stowed.";
  return t.bed() + " has no cushion: " + t.subject(1) + " lies bare, " + t.measured() + " above the floor" +
         t.place() + ".";
}
std::string person_length(const Telling& t) {
  if (!t.is_measured())
    return "How long " + t.subject(0) + " is, who sleeps on " + t.bed() + ", the plan does not say.";
  if (t.is_negative())
    return t.subject(0) + " is " + t.magnitude() + " longer than the place on " + t.bed() +
           (t.variant().empty() ? "" : " and " + t.variant()) + "; asked to spare: " + t.demand() +
           t.shortfall() + ".";
  return t.subject(0) + " has " + t.measured() + " of length left beyond the stature on " + t.bed() + "; " +
         t.compared() + ".";
}
std::string person_width(const Telling& t) {
  return t.subject(0) + " gets " + t.measured() + " of width on " + t.bed() + "; " + t.compared() + ".";
}
std::string abreast(const Telling& t, const std::string& way) {
  const std::string who = t.subject(0) + " and " + t.subject(1) + " " + way + " on " + t.bed();
  if (!t.is_compared())
    return who + ": the place is " + t.measured() + "; whether that is long enough the plan does not say.";
  return who + ": the place is " + t.measured() + "; " + t.compared() + ".";
}
std::string side_by_side(const Telling& t) { return abreast(t, "side by side"); }
std::string head_to_foot(const Telling& t) { return abreast(t, "head to foot"); }
std::string named_size(const Telling& t) {
  const bool held = t.status() == Status::met || t.status() == Status::close;
  return t.bed() + (held ? " holds the size " : " does not hold the size ") + t.variant() + "; " +
         t.compared() + "; the bed: " + t.measured() + ".";
}
std::string fits_people(const Telling& t) {
  return t.bed() + " is long enough for " + t.measured() + " of the survey (stature and 100 mm; " +
         t.source() + ").";
}

}  // namespace

std::span<const Teller> bed_tellers() {
  static constexpr std::array tellers{
      Teller{"bed.gap", widest_gap},
      Teller{"bed.wall-gap", wall_gap},
      Teller{"bed.ridge", ridge},
      Teller{"bed.dropped-piece", dropped},
      Teller{"bed.size", size},
      Teller{"bed.area", area},
      Teller{"bed.berth-width", berth_width},
      Teller{"bed.berth-length", berth_length},
      Teller{"bed.vessel-length", vessel_length},
      Teller{"bed.clear-height", clear_height},
      Teller{"bed.access-aid", access_aid},
      Teller{"bed.guard-rail", guard_rail},
      Teller{"bed.rail-closed-side", rail_opening},
      Teller{"bed.rail-opening", rail_opening},
      Teller{"bed.rail-height", rail_height},
      Teller{"bed.overhead", overhead},
      Teller{"bed.sitting-up", sitting_up},
      Teller{"bed.bedding-locker", bedding},
      Teller{"bed.no-cushion", no_cushion},
      Teller{"bed.side-by-side", side_by_side},
      Teller{"bed.head-to-foot", head_to_foot},
      Teller{"bed.person-length", person_length},
      Teller{"bed.person-width", person_width},
      Teller{"bed.named-size", named_size},
      Teller{"bed.fits-people", fits_people},
  };
  return tellers;
}

}  // namespace berthwright

#include <array>

#include <berthwright/exact/measure.h>

#include "view/telling.h"

namespace berthwright {
namespace {

std::string pinch(const Telling& t) {
  if (t.subject(1) == t.subject(0) && t.subject(2) == t.subject(0)) return "in the door itself";
  if (t.subject(1) == t.subject(2)) return "within " + t.subject(1) + t.place();
  return "between " + t.subject(1) + " and " + t.subject(2) + t.place();
}

std::string aisle(const Telling& t) {
  if (t.variant() == "no free edge")
    return t.when() + t.bed() +
           " has no free edge: a wall or furniture stands along all of it, so no way leads to " +
           t.subjects(0) + ".";
  if (t.variant() == "no way")
    return t.when() + "no way leads over the floor from " + t.bed() + " to " + t.subjects(0) + ".";
  return t.when() + "the widest way from " + t.bed() + " to " + t.subject(0) + " is " + t.measured() +
         " wide, at its narrowest " + pinch(t) + "; " + t.compared() + ".";
}

std::string ways(const Telling& t, const std::string& which) {
  const std::string number = t.measured();
  const std::string ways = number == "1" ? " way out" : " ways out";
  return t.when() + t.bed() + " has " + number + ways + which +
         (t.has_subject(0) ? ": " + t.subjects(0) : "") + "; " + t.compared() + ".";
}
std::string none(const Telling& t) { return ways(t, " that a body passes"); }
std::string second(const Telling& t) {
  return ways(t, t.measured() == "1" ? " that counts as one" : " that count as such");
}

std::string opening(const Telling& t) {
  if (!t.is_measured())
    return t.when() + t.subject(0) + " is marked as a way out, and the plan does not say that it opens.";
  return t.when() + t.subject(0) + " is clear over " + t.measured() + " (across × high)" +
         (t.has_subject(1) ? ", behind " + t.subjects(1) : "") + "; " + t.compared() + ".";
}
std::string dwelling_window(const Telling& t) {
  const std::string what = t.variant() == "area" ? " in area" : " at the smaller side";
  return t.when() + t.subject(0) + " is clear over " + t.measured() + what +
         "; of windows in manufactured homes asked: " + t.demand() + t.shortfall() + ".";
}
std::string sill(const Telling& t) {
  return "The sill of " + t.subject(0) + " stands " + t.measured() + " above the floor; " + t.compared() +
         ".";
}
std::string swing(const Telling& t) {
  if (t.has_subject(1)) return t.when() + t.subject(0) + " opens inward against " + t.subjects(1) + ".";
  if (t.status() == Status::unknown)
    return t.when() + t.subject(0) +
           " opens inward; on which side its hinge stands the plan does not say, and on one of them it would "
           "be "
           "stopped.";
  return t.when() + t.subject(0) + " opens inward and meets nothing.";
}
std::string not_stated(const Telling&) {
  return "The plan shows no door that opens and no opening marked as a way out, so no way out was measured.";
}

}  // namespace

std::span<const Teller> way_tellers() {
  static constexpr std::array tellers{
      Teller{"way.aisle", aisle},   Teller{"way.none", none},
      Teller{"way.second", second}, Teller{"way.opening", opening},
      Teller{"way.sill", sill},     Teller{"way.dwelling-window", dwelling_window},
      Teller{"way.swing", swing},   Teller{"way.not-stated", not_stated},
  };
  return tellers;
}

}  // namespace berthwright

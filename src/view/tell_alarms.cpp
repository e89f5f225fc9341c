#include <array>

#include "view/telling.h"

namespace berthwright {
namespace {

std::string presence(const Telling& t, const std::string& alarm) {
  if (!t.is_measured()) return "The plan shows no " + alarm + "; one is asked for (" + t.source() + ").";
  return "The plan shows " + t.measured() + " " + alarm + (t.measured() == "1" ? "" : "s") + ", " +
         t.subjects(0) + "; " + t.compared() + ".";
}
std::string smoke(const Telling& t) { return presence(t, "smoke alarm"); }
std::string co(const Telling& t) { return presence(t, "CO alarm") + " Its maker says where it hangs."; }
std::string gas(const Telling& t) {
  if (t.is_measured()) return presence(t, "gas alarm");
  return t.subject(0) +
         " may burn gas, which the plan does not tell, and no gas alarm is shown; where gas is " +
         "burned one is asked for (" + t.source() + ").";
}
std::string below_ceiling(const Telling& t) {
  return "The top of " + t.subject(0) + " is " + t.measured() + " below the ceiling; " + t.compared() + ".";
}
std::string inside_wall(const Telling& t) {
  if (t.status() == Status::met || t.status() == Status::close)
    return t.subject(0) + " hangs on an inside wall or on furniture, as asked of old " +
           std::string(word(Term::trailer, t.english())) + "s (" + t.source() + ").";
  const std::string place = t.variant() == "ceiling"   ? "on the ceiling"
                            : t.variant() == "outside" ? "on an outside wall"
                                                       : "where the plan does not tell on what";
  const std::string age =
      t.status() == Status::unknown ? ", and the plan does not tell all that is asked" : "";
  return t.subject(0) + " hangs " + place + age + "; in a " + std::string(word(Term::trailer, t.english())) +
         " built before 1978 an inside wall is asked for (" + t.source() + ").";
}
std::string covered(const Telling& t) {
  if (!t.has_subject(1)) return t.subject(0) + " has no curtain and no cushion before it.";
  const bool one = !t.has_subject(2);
  return t.when() + t.subjects(1) + (one ? " is" : " are") + " before " + t.subject(0) +
         ", which smoke or gas must reach.";
}
std::string cooking(const Telling& t) {
  return t.subject(0) + " is " + t.measured() + " from " + t.subject(1) + "; of houses asked: " + t.demand() +
         t.shortfall() + ".";
}
std::string gas_height(const Telling& t) {
  if (t.variant() == "low")
    return t.subject(0) + " begins " + t.measured() + " above the floor; many instructions ask 4 in (" +
           t.source() + ").";
  return "The top of " + t.subject(0) + " is " + t.measured() + " above the floor; " + t.compared() + ".";
}

}  // namespace

std::span<const Teller> alarm_tellers() {
  static constexpr std::array tellers{
      Teller{"alarm.smoke", smoke},
      Teller{"alarm.co", co},
      Teller{"alarm.gas", gas},
      Teller{"alarm.below-ceiling", below_ceiling},
      Teller{"alarm.dead-air", below_ceiling},
      Teller{"alarm.inside-wall", inside_wall},
      Teller{"alarm.covered", covered},
      Teller{"alarm.cooking", cooking},
      Teller{"alarm.gas-height", gas_height},
  };
  return tellers;
}

}  // namespace berthwright

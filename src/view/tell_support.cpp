#include <array>

#include "view/telling.h"

namespace berthwright {
namespace {

// "Left ledge and Right ledge": the subjects from the `first`-th on.
std::string names(const Telling& t, std::size_t first) {
  std::string text = t.subject(first);
  for (std::size_t i = first + 1; t.has_subject(i); ++i)
    text += (t.has_subject(i + 1) ? ", " : " and ") + t.subject(i);
  return text;
}

std::string rests(const Telling& t) {
  if (!t.has_subject(0))
    return t.when() + "every board and table that lies loose has its middle between its bearings.";
  if (t.variant() == "nothing")
    return t.when() + "nothing in the plan carries " + t.subject(0) + t.place() + ": it would drop by " +
           t.measured() + ", onto " + (t.has_subject(1) ? t.subject(1) : "the floor") + t.own_figure() + ".";
  return t.when() + t.subject(0) + " cannot lie level by itself: its middle" + t.place() + ", lies " +
         t.measured() + " beyond what bears it" + (t.has_subject(1) ? " (" + names(t, 1) + ")" : "") +
         t.own_figure() + ".";
}

std::string fastening(const Telling& t) {
  if (t.variant() == "leg")
    return t.when() + "how " + t.subject(0) + " is fastened to " +
           (t.has_subject(1) ? names(t, 1) : "its leg") + ", its underside " + t.measured() +
           " up, the plan does not say: loose on it, it would tip.";
  return t.when() + t.subject(0) + " is held with its underside " + t.measured() +
         " up, and by what, the plan does not say.";
}

std::string bearing(const Telling& t) {
  const std::string on = t.has_subject(1) ? " on " + names(t, 1) : "";
  const std::string bears = t.when() + t.subject(0) + " bears " + t.measured() + on + " along its " +
                            t.variant() + " side" + t.place();
  if (!t.has_beside(1)) return bears + ", where it cannot be shoved over; " + t.compared() + ".";
  return bears + ", once it is shoved away by " + t.beside(1, Rounding::up) + " (" +
         t.beside(0, Rounding::down) + " as it lies); " + t.compared() + ".";
}

std::string tipping(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "no loose board or table reaches beyond what bears it.";
  const std::string reach = t.when() + t.subject(0) + " reaches " + t.beside(0, Rounding::up) +
                            " beyond what bears it" + t.place() + "; ";
  if (!t.is_measured())
    return reach +
           "what load tips it there cannot be told, as the plan does not say what it "
           "weighs, nor that it is plywood.";
  return reach + "a load of about " + t.measured() + " there tips it, by its own weight of about " +
         t.beside(1, Rounding::down) + "; " + t.compared() + ".";
}

std::string span(const Telling& t) {
  return t.when() + t.subject(0) + " bridges " + t.measured() + " with its " + t.variant() +
         "; across that it bears at both ends over " + t.beside(0, Rounding::down) + ".";
}

std::string free_edge(const Telling& t) {
  return t.when() + "nothing bears " + t.subject(0) + " along its " + t.variant() + " side, " + t.measured() +
         " long.";
}

std::string flush(const Telling& t) {
  if (t.variant().empty()) return t.when() + t.subject(0) + " lies flush with " + names(t, 1) + " beside it.";
  return t.when() + "the top of " + t.subject(0) + " lies " + t.measured() + " " + t.variant() +
         " than that of " + names(t, 1) + " beside it; " + t.compared() + ".";
}

std::string unsupported(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "every cushion that lies flat is carried all over.";
  return t.when() + t.subject(0) + " has nothing beneath it over a spot " + t.measured() + " across" +
         t.place() + "; " + t.compared() + ".";
}

std::string two_heights(const Telling& t) {
  return t.when() + t.subject(0) + " lies with " + t.beside(0, Rounding::nearest) + " of its area on " +
         t.subject(1) + " and with " + t.beside(1, Rounding::nearest) + " on " + t.subject(2) +
         ", which is " + t.measured() + " " + t.variant() + "; " + t.compared() + ".";
}

std::string laid_upon(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "nothing hard lies on " + t.bed() + ".";
  return t.when() + t.subject(0) + " lies on the cushions of " + t.bed() + " and takes " +
         (t.is_measured() ? t.measured() : "a part") + " of it" + t.place() + ".";
}

}  // namespace

std::span<const Teller> support_tellers() {
  static constexpr std::array tellers{
      Teller{"support.rests", rests},
      Teller{"support.fastening", fastening},
      Teller{"support.bearing", bearing},
      Teller{"support.tipping", tipping},
      Teller{"support.span", span},
      Teller{"support.free-edge", free_edge},
      Teller{"support.flush", flush},
      Teller{"support.unsupported", unsupported},
      Teller{"support.two-heights", two_heights},
      Teller{"bed.laid-upon", laid_upon},
  };
  return tellers;
}

}  // namespace berthwright

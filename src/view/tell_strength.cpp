#include <array>

#include "view/telling.h"

namespace berthwright {
namespace {

std::string board_of(const Telling& t) { return t.subject(0) + " (" + t.variant() + ")"; }

std::string panel_of_board(const Telling& t) {
  return t.when() + t.subject(0) + " bridges " + t.beside(0, Rounding::up) +
         " under a cushion; from which panel it is cut, and so how it bends, the plan does not say.";
}

std::string thickness(const Telling& t) {
  return "The thickness of " + t.subject(0) + " in the plan differs by " + t.measured() +
         " from that of its panel (" + t.variant() + "); " + t.compared() + ".";
}

std::string sag(const Telling& t) {
  return t.when() + board_of(t) + " bends down by " + t.measured() + ", which is " +
         t.beside(0, Rounding::up) + ", under 30 lb per sq ft; " + t.compared() + ".";
}

std::string load(const Telling& t) {
  return t.when() + board_of(t) + " takes " + t.measured() + " of the moment that it may carry over " +
         t.beside(0, Rounding::up) + " under 30 lb per sq ft; " + t.compared() + ".";
}

std::string knee(const Telling& t) {
  return t.when() + board_of(t) + " takes " + t.measured() + " of the moment that it may carry over " +
         t.beside(0, Rounding::up) + " under a knee of 250 lb shared by " + t.beside(1, Rounding::down) +
         " of its width; " + t.compared() + ".";
}

std::string knee_sag(const Telling& t) {
  return t.when() + board_of(t) + " bends down by " + t.measured() + ", which is " +
         t.beside(0, Rounding::up) + ", under a knee of 250 lb shared by " + t.beside(1, Rounding::down) +
         " of its width.";
}

std::string ledge(const Telling& t) {
  return t.when() + t.subject(0) + " carries " + t.beside(1, Rounding::up) + ": " +
         t.beside(0, Rounding::up) + " of sleepers (30 lb per sq ft) on " + t.subjects(1) +
         " and 250 lb beside it; " + t.measured() +
         " wood screws #8 through a 3/4 in cleat of spruce hold that at 69 lb each (" + t.source() + ").";
}

std::string foam_thickness(const Telling& t) {
  if (!t.has_subject(0))
    return t.bed() + ": the cushions on bare boards are " + t.measured() + " thick; " + t.compared() + ".";
  const std::string felt = t.variant().empty() ? "" : "; so thin that the board is felt at once";
  return t.bed() + ": " + t.subjects(0) + " on a board that does not give: " + t.measured() +
         " at the thinnest" + felt + "; " + t.compared() + ".";
}

std::string foam_firmness(const Telling& t) {
  const std::string which = t.has_subject(0) ? t.subjects(0) : std::string("the softest cushion");
  return t.bed() + ": " + which + " on a board that does not give: foam that " + t.measured() +
         " lb press in by a quarter; " + t.compared() + ".";
}

std::string foam_grade(const Telling& t) {
  return t.bed() + ": " + t.subjects(0) +
         " on a board that does not give: how firm the foam is, the plan does "
         "not say in the four digits of the trade.";
}

}  // namespace

std::span<const Teller> strength_tellers() {
  static constexpr std::array tellers{
      Teller{"strength.panel", panel_of_board},
      Teller{"strength.thickness", thickness},
      Teller{"strength.sag", sag},
      Teller{"strength.load", load},
      Teller{"strength.knee", knee},
      Teller{"strength.knee-sag", knee_sag},
      Teller{"strength.ledge", ledge},
      Teller{"foam.thickness", foam_thickness},
      Teller{"foam.firmness", foam_firmness},
      Teller{"foam.grade", foam_grade},
  };
  return tellers;
}

}  // namespace berthwright

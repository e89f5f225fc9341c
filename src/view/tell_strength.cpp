#include <array>

#include "view/telling.h"

namespace berthwright {
namespace {

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
      Teller{"foam.thickness", foam_thickness},
      Teller{"foam.firmness", foam_firmness},
      Teller{"foam.grade", foam_grade},
  };
  return tellers;
}

}  // namespace berthwright

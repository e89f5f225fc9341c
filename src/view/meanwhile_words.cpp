#include "view/meanwhile_words.h"

#include <algorithm>
#include <stdexcept>

#include "view/face_words.h"
#include "view/telling.h"

namespace berthwright {
namespace {

/// All that the sentences about one fault draw on.
struct MeanwhileTold {
  const Plan& plan;
  const Conversion& conversion;
  const Meanwhile& one;
  Telling t;

  std::string ends() const;
  std::string period() const;
  std::string cure_of_heat() const;
};

std::string step_number(std::size_t number) { return "step " + std::to_string(number); }

std::string MeanwhileTold::period() const {
  const std::string from = "After " + step_number(one.from);
  if (one.until == one.from + 1) return from + ", until " + step_number(one.until) + " is done, ";
  const std::string worst = one.worst == one.from ? "" : " (measured after " + step_number(one.worst) + ")";
  return from + ", until " + step_number(one.until) + " is done" + worst + ", ";
}

std::string MeanwhileTold::ends() const {
  const std::string away =
      one.finding.rule.text() == "way.aisle" ? "that place is taken" : "one of them is away";
  const auto at = [&](const std::optional<Quantity>& figure) {
    return figure ? "it is " + quantity_text(*figure, plan->unit, Rounding::down) : away;
  };
  if (one.at_start == one.at_end) return "; at the start and at the end " + at(one.at_start);
  return "; at the start " + at(one.at_start) + ", at the end " + at(one.at_end);
}

// A portable heater that was put where it stands by a step before: the number of that step, else 0.
std::size_t put_down_by(const Conversion& conversion, const std::string& piece, std::size_t after) {
  std::size_t by = 0;
  for (std::size_t i = 0; i < after; ++i)
    if (conversion.steps[i].piece.text() == piece) by = i + 1;
  return by;
}

std::string MeanwhileTold::cure_of_heat() const {
  const std::string& id = one.finding.subjects.front();
  const bool portable = plan.piece(id) != nullptr;
  if (portable && put_down_by(conversion, id, one.from) > 0)
    return " Leave " + t.subject(0) + " switched off and unplugged until " + step_number(one.until) +
           " is done.";
  return " Switch " + t.subject(0) + " off" + (portable ? ", unplug it" : "") + " and let it cool before " +
         step_number(one.from) + "; leave it so until " + step_number(one.until) + " is done.";
}

std::string others(const MeanwhileTold& told) {
  if (!told.t.has_subject(2)) return {};
  return " Too near in that time as well: " + told.t.subjects(2) + ".";
}

std::string near_heat(const MeanwhileTold& told) {
  return told.t.subject(1) + " lies " + told.t.measured() + " from " + told.t.subject(0) + told.ends() +
         "; " + told.t.compared() + "." + others(told) + told.cure_of_heat();
}

std::string before_plate(const MeanwhileTold& told) {
  const Telling& t = told.t;
  const std::vector<ApplianceFace>& faces = t.finding().before;
  if (t.status() != Status::unknown)
    return t.subject(1) + " lies " + t.measured() + " from " + t.subject(0) + ", " + before_faces(faces) +
           ", where its maker asks " + t.demand() + t.shortfall() + told.ends() + " (in space)." +
           others(told) + told.cure_of_heat();
  return t.subject(1) + " lies " + t.measured() + " from " + t.subject(0) +
         (faces.empty() ? "" : ", before " + faces_with_and(faces)) + told.ends() +
         "; the plan does not give the distance by its maker, so this is unknown." + others(told) +
         told.cure_of_heat();
}

std::string by_hand(const MeanwhileTold& told) {
  return " Do " + step_number(told.one.until) + " at once, and let nobody else be inside meanwhile.";
}

std::string way(const MeanwhileTold& told) {
  const Telling& t = told.t;
  if (t.variant() == "no way")
    return "no way leads over the floor from where one stands to " + t.subjects(0) + told.ends() + "; " +
           t.compared() + "." + by_hand(told);
  const bool door_alone = t.subject(1) == t.subject(0) && t.subject(2) == t.subject(0);
  const std::string pinch = door_alone ? "in the door itself"
                            : t.subject(1) == t.subject(2)
                                ? "within " + t.subject(1)
                                : "between " + t.subject(1) + " and " + t.subject(2);
  return "the widest way from where one stands to " + t.subject(0) + " is " + t.measured() +
         " wide, at its narrowest " + pinch + told.ends() + "; " + t.compared() + "." + by_hand(told);
}

std::string opening(const MeanwhileTold& told) {
  const Telling& t = told.t;
  return t.subject(0) + " is clear over " + t.measured() + " (across × high)" +
         (t.has_subject(1) ? ", behind " + t.subjects(1) : "") + told.ends() + "; " + t.compared() + "." +
         by_hand(told);
}

std::string swing(const MeanwhileTold& told) {
  const Telling& t = told.t;
  if (t.status() == Status::unknown)
    return t.subject(0) + " opens inward, on one side against " + t.subjects(1) +
           "; where its hinge stands the plan does not say.";
  return t.subject(0) + " opens inward against " + t.subjects(1) + ", at neither end." + by_hand(told);
}

}  // namespace

std::string meanwhile_sentence(const Plan& plan, const Conversion& conversion, const Meanwhile& meanwhile) {
  const MeanwhileTold told{plan, conversion, meanwhile, Telling(plan, meanwhile.finding)};
  const std::string& rule = meanwhile.finding.rule.text();
  if (rule == "heat.three-feet") return told.period() + near_heat(told);
  if (rule == "heat.data-plate") return told.period() + before_plate(told);
  if (rule == "way.aisle") return told.period() + way(told);
  if (rule == "way.opening") return told.period() + opening(told);
  if (rule == "way.swing") return told.period() + swing(told);
  throw std::logic_error("nobody tells meanwhile " + rule);
}

std::string_view looked_at_meanwhile() {
  return "Looked at between the steps: how near cushions, curtains and what else can burn come to what gives "
         "heat, the widest way to a door from where one stands, openings marked as a way out, what opens "
         "inward. Told is what is not met and worse than at the start and at the end; it does not change the "
         "exit code. While a piece is in the hand nothing is measured. A heater put aside counts as off, "
         "unplugged and cold.";
}

}  // namespace berthwright

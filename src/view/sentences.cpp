#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "view/telling.h"

namespace berthwright {

std::string sentence(const Plan& plan, const Finding& finding) {
  for (const std::span<const Teller> tellers : {room_tellers(), bed_tellers(), heat_tellers()})
    for (const Teller& teller : tellers)
      if (teller.rule == finding.rule.text()) return teller.tell(Telling(plan, finding));
  throw std::logic_error("no sentence for " + finding.rule.text());
}

std::string cure_sentence(const Plan& plan, const Finding& finding) {
  if (!finding.cure) return {};
  const Cure& cure = *finding.cure;
  Finding about = finding;
  about.subjects = {cure.subject};
  const std::string thing = Telling(plan, about).subject(0);
  const std::string by = both(cure.by, plan->unit, {.rounding = Rounding::up});
  switch (cure.kind) {
    case Cure::Kind::raise:
      return "Raise " + thing + " by " + by + ".";
    case Cure::Kind::lower:
      return "Lower " + thing + " by " + by + ".";
    case Cure::Kind::move_apart:
      return "Move " + thing + " away by " + by + ".";
    case Cure::Kind::widen:
      return "Make " + thing + " larger by " + by + ".";
    case Cure::Kind::shorten:
      return "Make " + thing + " smaller by " + by + ".";
    case Cure::Kind::stow_heater:
      return "Switch " + thing + " off, unplug it and stow it before the bed is made.";
    case Cure::Kind::state_plate:
      return "Write the distances of the maker's data plate of " + thing + " into the plan (data_plate).";
    case Cure::Kind::state_measure:
      return "Write the missing figure of " + thing + " into the plan.";
    case Cure::Kind::add_guard_rail:
      return "Fit a guard rail whose top stands at least " + by + " above the mattress.";
  }
  throw std::logic_error("Cure::Kind out of range");
}

}  // namespace berthwright

#include <stdexcept>

#include "view/telling.h"

namespace berthwright {

std::string sentence(const Plan& plan, const Finding& finding) {
  for (const std::span<const Teller> tellers :
       {room_tellers(), support_tellers(), bed_tellers(), strength_tellers(), seat_tellers(), heat_tellers(),
        cord_tellers(), leaf_tellers(), way_tellers(), alarm_tellers()})
    for (const Teller& teller : tellers)
      if (teller.rule == finding.rule.text()) return teller.tell(Telling(plan, finding));
  throw std::logic_error("no sentence for " + finding.rule.text());
}

std::string cure_sentence(const Plan& plan, const Finding& finding) {
  if (!finding.cure) return {};
  std::string text = told_cure(plan, finding, *finding.cure);
  for (const Cure& next : finding.cure->then) text += " " + told_cure(plan, finding, next);
  return text;
}

}  // namespace berthwright

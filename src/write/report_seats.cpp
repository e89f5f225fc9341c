#include "write/report_seats.h"

#include <berthwright/exact/measure.h>
#include <berthwright/solve/body.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string least(const Plan& plan, Length length) {
  return both(length, plan->unit, {.rounding = Rounding::down});
}

std::string people(const Plan& plan, std::int64_t count, Length each) {
  const std::string share = " at " + both(each, plan->unit, {.feet = false});
  return count == 1 ? "1 person" + share : std::to_string(count) + " people" + share + " each";
}

std::string room_for(const Plan& plan, Length length) {
  const Length each = plan.limit(*find_rule("seat.people"));
  const std::int64_t at_ease = each > Length{} ? length.ticks() / each.ticks() : 0;
  const std::int64_t at_least = length.ticks() / least_seat_for_one.ticks();
  if (at_least == 0)
    return "too short for 1 person at " + both(least_seat_for_one, plan->unit, {.feet = false});
  if (at_ease == at_least) return "room for " + people(plan, at_ease, each);
  return "room for " + (at_ease > 0 ? people(plan, at_ease, each) + " or " : "") +
         people(plan, at_least, least_seat_for_one);
}

std::string seat_lines(const Plan& plan, const ConfigurationAnswer& answer, const Seat& seat) {
  std::string text = names_with_and(plan, seat.cushions) + " (" + answer.configuration->name +
                     "): people sit " + both(seat.height, plan->unit) + " above the floor";
  const Shares feet = shares_above(BodyMeasure::popliteal_height, seat.height - shoe_sole);
  text += "; the feet of " + quantity_text(feet, plan->unit, Rounding::down) + " rest flat on it.";
  text = wrapped(text, item);
  if (seat.faces) {
    std::string place = "Faces the " + std::string(word(term_of(*seat.faces), plan->english)) + "; " +
                        least(plan, seat.depth) + " deep, " + least(plan, seat.length) + " long, " +
                        room_for(plan, seat.length) + ".";
    place +=
        seat.back_height ? " The back rises " + least(plan, *seat.back_height) + "." : " No back cushion.";
    text += wrapped(place, under_item);
  } else {
    text += wrapped("Which way one sits the plan does not show.", under_item);
  }
  if (seat.head_room) {
    const Shares upright = shares_up_to(BodyMeasure::sitting_height, seat.head_room->height);
    const std::string under =
        seat.head_room->under.empty() ? "the roof" : name_of(plan, seat.head_room->under);
    text += wrapped("Head room to " + under + ": " + least(plan, seat.head_room->height) + "; " +
                        quantity_text(upright, plan->unit, Rounding::down) + " sit upright.",
                    under_item);
  }
  if (seat.table)
    text += wrapped(name_of(plan, seat.table->table) + ": top " + both(seat.table->top, plan->unit) +
                        " above the seat, " + least(plan, seat.table->thigh_room) + " of room for thighs.",
                    under_item);
  return text;
}

}  // namespace

std::string seats_part(const Plan& plan, const Answer& answer) {
  std::string text;
  for (const ConfigurationAnswer& configuration : answer.configurations)
    for (const Seat& seat : configuration.seats) text += seat_lines(plan, configuration, seat);
  if (text.empty()) return text;
  return "\nSeats, their cushions pressed " + both(seat_compression, plan->unit, {.feet = false}) +
         " by who sits\n" + text +
         wrapped(
             "Shares are those of the people of ANSUR II (soldiers, 2012), by the normal model; feet in "
             "shoes of " +
                 both(shoe_sole, plan->unit, {.feet = false}) + ".",
             item);
}

bool told_with_the_seats(const Finding& finding) { return finding.rule.text() == "seat.people"; }

}  // namespace berthwright

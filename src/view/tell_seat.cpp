#include <array>

#include <berthwright/exact/measure.h>

#include "view/telling.h"

namespace berthwright {
namespace {

/// "Left seat", "Front seat and Rear seat": the subjects but the last `apart`.
std::string seat_but(const Telling& t, std::size_t apart) {
  const std::size_t count = t.finding().subjects.size();
  std::string names;
  for (std::size_t i = 0; i + apart < count; ++i) {
    if (i > 0) names += i + apart + 1 == count ? " and " : ", ";
    names += t.subject(i);
  }
  return names;
}
/// "By day, Left seat".
std::string seat(const Telling& t) { return t.when() + seat_but(t, 0); }
std::string thing(const Telling& t) { return t.subject(t.finding().subjects.size() - 1); }
std::string asked(const Telling& t) { return "; " + t.compared() + "."; }
std::string on(const Telling& t, const std::string& name) {
  return (t.when().empty() ? "On " : t.when() + "on ") + name;
}

std::string height(const Telling& t) {
  return on(t, seat_but(t, 0)) + " people sit " + t.measured() + " above the floor, the cushion pressed " +
         both(seat_compression, t.unit(), {.feet = false}) + asked(t);
}
std::string depth(const Telling& t) {
  if (!t.is_measured())
    return "Which way one sits on " + seat_but(t, 0) +
           " the plan does not show: no back stands on it and no wall behind it, so its depth is not known.";
  return seat(t) + " leaves " + t.measured() + " to sit on, from its front to its back" + asked(t);
}
std::string back(const Telling& t) {
  return t.when() + thing(t) + " rises " + t.measured() + " above " + seat_but(t, 1) + asked(t);
}

std::string persons(std::int64_t count) {
  return count == 1 ? "1 person" : std::to_string(count) + " people";
}
/// How many sit at the length asked for each, and at the least.
std::string people(const Telling& t) {
  const Length length = std::get<Length>(*t.finding().measured);
  const Length each = std::get<Length>(*t.finding().compared);
  const std::int64_t at_ease = each > Length{} ? length.ticks() / each.ticks() : 0;
  const std::int64_t at_least = length.ticks() / least_seat_for_one.ticks();
  const std::string least = both(least_seat_for_one, t.unit(), {.feet = false}) + " each";
  std::string room = at_ease > 0 ? "room for " + persons(at_ease) : "";
  if (at_ease == 0) room = at_least == 0 ? "too short for a person" : "room for 1 person, tightly";
  if (at_least > at_ease && at_ease > 0) room += " (" + std::to_string(at_least) + " at " + least + ")";
  return seat(t) + (t.finding().subjects.size() > 1 ? " are " : " is ") + t.measured() + " long: " + room +
         "; asked for each: " + t.demand() + t.shortfall() + ".";
}

std::string head_room(const Telling& t) {
  if (!t.is_measured())
    return "The head room over " + seat_but(t, 0) + " is not known: it is not in the room.";
  if (t.variant() == "roof")
    return t.when() + "over the heads on " + seat_but(t, 0) + " the roof leaves " + t.measured() + asked(t);
  return t.when() + "where " + thing(t) + " hangs over " + seat_but(t, 1) + " heads have " + t.measured() +
         asked(t);
}
std::string way_in(const Telling& t) {
  return t.when() + "the widest free way onto " + seat_but(t, 0) + " is " + t.measured() + asked(t);
}

std::string over_thighs(const Telling& t) {
  return t.when() + "the underside of " + thing(t) + " is " + t.measured() + " above " + seat_but(t, 1) +
         " with people on it" + asked(t);
}
std::string knee_height(const Telling& t) {
  return t.when() + "knees on " + seat_but(t, 1) + " have " + t.measured() + " of height under " + thing(t) +
         asked(t);
}
std::string knee_depth(const Telling& t) {
  return t.when() + "knees on " + seat_but(t, 1) + " have " + t.measured() + " of depth under " + thing(t) +
         asked(t);
}
std::string table_over(const Telling& t) {
  return t.when() + thing(t) + " reaches " + t.measured() + " over the front of " + seat_but(t, 1) + asked(t);
}
std::string table_away(const Telling& t) {
  return t.when() + thing(t) + " ends " + t.measured() + " before the front of " + seat_but(t, 1) + asked(t);
}

std::string knock_sitting(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "nothing juts out near the heads of people who sit.";
  return t.when() + thing(t) + " juts out " + t.measured() + " from the eyes of people on " + seat_but(t, 1) +
         t.place() + asked(t);
}
std::string knock_elbow(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "nothing juts into the elbow room of people who sit.";
  return t.when() + thing(t) + " juts " + t.measured() + " into the elbow room of people on " +
         seat_but(t, 1) + t.place() + asked(t);
}
std::string knock_lying(const Telling& t) {
  if (!t.has_subject(0)) return "Nothing juts out near a pillow at either end of " + t.bed() + ".";
  return thing(t) + " juts out " + t.measured() + " from where a pillow may lie on " + t.bed() + t.place() +
         asked(t);
}

}  // namespace

std::span<const Teller> seat_tellers() {
  static constexpr std::array tellers{
      Teller{"seat.low", height},
      Teller{"seat.high", height},
      Teller{"seat.shallow", depth},
      Teller{"seat.deep", depth},
      Teller{"seat.low-back", back},
      Teller{"seat.high-back", back},
      Teller{"seat.people", people},
      Teller{"seat.head-room", head_room},
      Teller{"seat.way-in", way_in},
      Teller{"seat.thigh-room", over_thighs},
      Teller{"seat.low-table", over_thighs},
      Teller{"seat.high-table", over_thighs},
      Teller{"seat.knee-height", knee_height},
      Teller{"seat.knee-depth", knee_depth},
      Teller{"seat.table-over", table_over},
      Teller{"seat.table-away", table_away},
      Teller{"knock.sitting", knock_sitting},
      Teller{"knock.elbow", knock_elbow},
      Teller{"knock.lying", knock_lying},
  };
  return tellers;
}

}  // namespace berthwright

#include <array>

#include "view/telling.h"

namespace berthwright {
namespace {

std::string its_cord(const Telling& t) {
  return (t.when().empty() ? "The" : t.when() + "the") + " cord of " + t.subject(0);
}

std::string because_of(const Telling& t, const std::string& where) {
  return t.has_subject(2) ? ": " + t.subject(2) + " " + where : std::string{};
}

std::string unknown_reach(const Telling& t) {
  const std::string end = t.has_subject(1) ? t.subject(1) : "an outlet";
  if (t.variant() == "no length")
    return t.when() + t.subject(0) + " is plugged into " + end +
           ", and the plan does not give the length of its cord.";
  if (t.variant() == "no outlet")
    return t.when() + t.subject(0) + " has a cord, and the plan shows no outlet that it could reach.";
  return t.when() + t.subject(0) +
         " does not stand upright and square to the room, so it is not known whether its cord "
         "reaches " +
         end + ".";
}

std::string reach(const Telling& t) {
  if (t.is_measured())
    return its_cord(t) + " must be " + t.measured() + " long to reach " + t.subject(1) +
           (t.variant() == "nearest" ? ", the nearest outlet (the plan names none)," : "") +
           " over the floor; " + t.compared() + ".";
  if (t.variant() == "shut in")
    return its_cord(t) + " has no free floor where it comes out" + because_of(t, "stands there") +
           ", so it does not reach " + t.subject(1) + ".";
  if (t.variant() == "shut out")
    return its_cord(t) + " finds no free floor below the face of " + t.subject(1) +
           because_of(t, "takes it") + ".";
  if (t.variant() == "no way")
    return its_cord(t) + " finds no free way over the floor to " + t.subject(1) + ".";
  return unknown_reach(t);
}

std::string not_given(const Telling& t) {
  return "Of the cord of " + t.subject(0) +
         " the plan gives neither its length nor its outlet, so it was not "
         "followed.";
}

std::string under_bedding(const Telling& t) {
  if (!t.is_measured()) return its_cord(t) + " keeps clear of made-up bedding.";
  return its_cord(t) + " passes under made-up bedding over " + t.measured() + t.place() +
         "; no cord belongs there (" + t.source() + ")" + t.own_figure() + ".";
}

std::string walkway(const Telling& t) {
  if (t.status() == Status::met) return its_cord(t) + " keeps clear of the walkway from " + t.bed() + ".";
  return its_cord(t) + " crosses the walkway from " + t.bed() + t.place() + " (" + t.source() + ").";
}

std::string plug_room(const Telling& t) {
  if (!t.is_measured())
    return t.when() + "room for a plug in " + t.subject(0) +
           " is not known: the plan does not say where it faces.";
  if (t.is_nothing())
    return t.when() + t.subject(1) + " is against the face of " + t.subject(0) + "; " + t.compared() + ".";
  return t.when() + "before " + t.subject(0) + " " + t.measured() + " are free, up to " + t.subject(1) +
         "; " + t.compared() + ".";
}

std::string outlet_faces(const Telling& t) {
  if (t.is_measured())
    return t.when() + t.bed() + " (made up) lies before the face of " + t.subject(0) + ", " + t.measured() +
           " from it; " + t.compared() + ".";
  if (t.status() == Status::met) return t.when() + t.subject(0) + " faces no bedding.";
  return t.when() + "which way " + t.subject(0) +
         " faces the plan does not say, so bedding before it is not known.";
}

}  // namespace

std::span<const Teller> cord_tellers() {
  static constexpr std::array tellers{
      Teller{"cord.reach", reach},
      Teller{"cord.not-given", not_given},
      Teller{"cord.under-bedding", under_bedding},
      Teller{"cord.walkway", walkway},
      Teller{"cord.plug-room", plug_room},
      Teller{"cord.outlet-faces", outlet_faces},
  };
  return tellers;
}

}  // namespace berthwright

#include <array>

#include "view/telling.h"

namespace berthwright {
namespace {

std::string inside(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "everything stands inside the room.";
  if (t.status() == Status::close)
    return t.when() + t.subject(0) + " presses into a wall or the roof by " + t.measured() + ", as foam may" +
           t.own_figure() + ".";
  return t.when() + t.subject(0) + " reaches outside the room by " + t.measured() + t.place() +
         t.own_figure() + ".";
}

std::string overlap(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "no piece needs the space of another thing.";
  if (t.status() == Status::close)
    return t.when() + t.subject(0) + " and " + t.subject(1) + " press into each other by " + t.measured() +
           ", as foam may" + t.own_figure() + ".";
  return t.when() + t.subject(0) + " and " + t.subject(1) + " need the same space, " + t.measured() +
         " deep" + t.place() + t.own_figure() + ".";
}

}  // namespace

std::span<const Teller> room_tellers() {
  static constexpr std::array tellers{
      Teller{"room.inside", inside},
      Teller{"room.overlap", overlap},
  };
  return tellers;
}

}  // namespace berthwright

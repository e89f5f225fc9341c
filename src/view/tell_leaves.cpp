#include <array>

#include <berthwright/exact/measure.h>

#include "view/telling.h"

namespace berthwright {
namespace {

// "A", "A and B", "A, B and C".
std::string listed(const Telling& t, std::size_t from, const std::string& before_last) {
  std::string text;
  for (std::size_t i = from; t.has_subject(i); ++i)
    text += (i == from ? "" : t.has_subject(i + 1) ? ", " : before_last) + t.subject(i);
  return text;
}

std::string movement(const Telling& t) {
  if (t.variant().starts_with("pull")) return " comes out by ";
  return t.variant().starts_with("lift") ? " can be raised by " : " opens by ";
}

std::string opens(const Telling& t) {
  if (!t.is_measured())
    return t.subject(0) +
           " is drawn over more than its fixture has there, so how far it opens is not known: give its own "
           "length, width and place.";
  const bool cleared = t.variant().ends_with("once cleared");
  const std::string leaf = t.subject(0) + (cleared ? ", once what lies on it is lifted off," : "");
  const bool shut = t.measured() == "0°" || t.measured() == both(Length{}, t.unit());
  std::string text =
      t.when() + leaf + (shut ? " does not open (" + t.measured() + ")" : movement(t) + t.measured());
  if (t.status() != Status::met)
    text += (shut ? ": it meets " : ", then meets ") +
            (t.has_subject(1) ? t.subject(1) : "a wall, the roof or the floor") + t.place();
  return text + "; " + t.compared() + ".";
}

// "Left lid (Left back, then Left seat); Right lid (…)".
std::string under_pieces(const Telling& t) {
  std::string text = t.when() + "storage that opens only once cushions are lifted off: ";
  for (std::size_t i = 0; t.has_subject(i); ++i) {
    if (t.is_leaf(i))
      text += (i == 0 ? "" : "); ") + t.subject(i) + " (";
    else
      text += (t.is_leaf(i - 1) ? "" : ", then ") + t.subject(i);
  }
  return text + ").";
}

std::string hold(const Telling& t) {
  if (!t.has_subject(0)) return "Every piece and everything that opens names what holds it on the road.";
  return "What holds " + listed(t, 0, " and ") + " in place on the road, the plan does not say.";
}

std::string on_edge(const Telling& t) {
  const bool more = t.has_subject(1);
  return listed(t, 0, " and ") + (more ? " stand" : " stands") + " on edge on the road; what keeps " +
         (more ? "them" : "it") + " from tipping forward, the plan does not say.";
}

std::string heater(const Telling& t) {
  if (t.variant() == "running")
    return "On the road the plan has " + listed(t, 0, " and ") +
           " running, or does not call it off; nothing that heats may run there.";
  return listed(t, 0, " and ") + (t.has_subject(1) ? " stand" : " stands") +
         " about on the road, and the plan names nothing that holds " + (t.has_subject(1) ? "them." : "it.");
}

std::string unchecked(const Telling&) {
  return R"(Nothing was checked for the road: the plan has no configuration "road".)";
}

}  // namespace

std::span<const Teller> leaf_tellers() {
  static constexpr std::array tellers{
      Teller{"leaf.opens", opens},
      Teller{"leaf.opens-by-bed", opens},
      Teller{"leaf.under-pieces", under_pieces},
      Teller{"road.hold", hold},
      Teller{"road.on-edge", on_edge},
      Teller{"road.heater", heater},
      Teller{"road.unchecked", unchecked},
  };
  return tellers;
}

}  // namespace berthwright

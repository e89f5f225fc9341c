#include <array>

#include "view/face_words.h"
#include "view/telling.h"

namespace berthwright {
namespace {

/// "bare" and "made up" say how a bed was measured; of a cushion or curtain its name says enough.
std::string burning(const Telling& t) {
  const bool of_bed = t.variant() == "bare" || t.variant() == "made up";
  return t.subject(1) + (of_bed ? " (" + t.variant() + ")" : "");
}

std::string three_feet(const Telling& t) {
  return t.when() + t.subject(0) + " stands " + t.measured() + " from " + burning(t) + "; " + t.compared() +
         ".";
}
std::string also_three_feet(const Telling& t) {
  return t.when() + t.subject(0) + " is " + t.measured() + " from " + burning(t) + "; of a heater would be " +
         t.compared() + ".";
}
std::string shield(const Telling& t) {
  return t.when() + t.subjects(2) + (t.has_subject(3) ? " stand" : " stands") + " between " + t.subject(0) +
         " and " + burning(t) + " on every straight line of least distance; that shortens nothing.";
}
std::string data_plate(const Telling& t) {
  const std::vector<ApplianceFace>& faces = t.finding().before;
  if (t.status() != Status::unknown && t.is_measured())
    return t.when() + burning(t) + " lies " + t.measured() + " from " + t.subject(0) + ", " +
           before_faces(faces) + ", where its maker asks " + t.demand() + t.shortfall() + ".";
  const std::string known = t.is_measured() ? "; before what it does give: " + t.measured() + ", asked " +
                                                  t.demand() + t.shortfall()
                                            : std::string{};
  return t.when() + burning(t) + " lies near " + t.subject(0) +
         (faces.empty() ? "" : ", before " + faces_with_and(faces)) +
         ", and the plan does not give the distance by its maker" + known + ".";
}
std::string data_plate_missing(const Telling& t) {
  const std::vector<ApplianceFace>& faces = t.finding().before;
  return (t.when().empty() ? "The" : t.when() + "the") +
         " plan does not give every distance of the data plate of " + t.subject(0) +
         (faces.empty() ? "" : " (not those of " + faces_with_and(faces) + ")") +
         ", so they could not be compared.";
}
std::string stowed(const Telling& t) {
  const std::string means =
      " is stowed: it must be off, unplugged and cold before it is put away. No distance is ";
  const std::string end = t.status() == Status::unknown
                              ? "measured, and the plan does not say where it is kept."
                              : "measured here.";
  return t.when() + t.subject(0) + means + end;
}

}  // namespace

std::span<const Teller> heat_tellers() {
  static constexpr std::array tellers{
      Teller{"heat.three-feet", three_feet},
      Teller{"heat.also-three-feet", also_three_feet},
      Teller{"heat.shield", shield},
      Teller{"heat.data-plate", data_plate},
      Teller{"heat.data-plate-missing", data_plate_missing},
      Teller{"heat.stowed", stowed},
  };
  return tellers;
}

}  // namespace berthwright

#include "solve/tape_proof.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "solve/tape_trial.h"

namespace berthwright {
namespace {

// What the plan shows and says, whatever its lengths.
constexpr std::array<std::string_view, 9> without_lengths{
    "alarm.co",  "alarm.gas",    "alarm.smoke",    "cord.not-given", "road.heater",
    "road.hold", "road.on-edge", "road.unchecked", "way.not-stated"};

/// Whether the field of the finding's subject is a measure whose ends were both looked at.
bool was_tried(const TapedPlan& plan, const Finding& written, const std::vector<Untried>& untried,
               const std::string& field) {
  if (written.subjects.size() != 1) return false;
  const std::string name = written.subjects.front() + "/" + field;
  const auto measure = std::ranges::find_if(plan.measures(), [&](const TapeMeasure& one) {
    return one.name == name || std::ranges::find(one.also, name) != one.also.end();
  });
  const auto index = static_cast<std::size_t>(measure - plan.measures().begin());
  return measure != plan.measures().end() &&
         std::ranges::none_of(untried, [&](const Untried& one) { return one.moved.measure == index; });
}

}  // namespace

bool is_proven(const TapedPlan& plan, const Finding& written, const std::vector<Untried>& untried) {
  const std::string& rule = written.rule.text();
  if (std::ranges::find(without_lengths, rule) != without_lengths.end()) return true;
  // The limit less the sill.
  if (rule == "way.sill") return was_tried(plan, written, untried, "sill");
  // The limit less how far the thickness lies from the panel's: nowhere less than at both ends, but more in
  // between.
  if (rule == "strength.thickness")
    return is_fine(written.status) && was_tried(plan, written, untried, "thickness");
  return false;
}

}  // namespace berthwright

#include "view/reuse_words.h"

#include <algorithm>

#include <berthwright/exact/measure.h>

#include "view/called.h"
#include "view/split_words.h"

namespace berthwright {
namespace {

std::string own_name(const Plan& plan, const OwnCushion& cushion) {
  const std::string name = name_of(plan, cushion.id.text());
  return name == cushion.id.text() ? name : cushion.id.text() + ", " + name;
}

std::string cushions_text(std::size_t count) {
  return std::to_string(count) + (count == 1 ? " cushion" : " cushions");
}

std::string relaid_sentence(const Plan& plan, const Reuse& reuse, const RelaidCushion& laid) {
  const OwnCushion& own = reuse.cushions[laid.cushion];
  const Rect box = own.outline.bounds();
  std::string text = own_name(plan, own) + ": " + box_text(plan, box.width(), box.height());
  if (own.outline.area() != Area::rectangle(box.width(), box.height())) text += " with corners cut";
  text += ", " + corner_text(plan, laid.at);
  if (laid.stays) return text + ", where it lies now.";
  if (laid.flipped) text += ", its underside up";
  if (laid.quarters == 2) return text + ", turned half round.";
  return text + (laid.quarters == 0 ? "." : ", turned by a quarter.");
}

// How far it hangs over, at most.
Length overhang_of(const Region& overhang) {
  Length most;
  for (const Face& face : overhang.faces()) {
    const Rect box = face.outer.bounds();
    most = std::max(most, std::min(box.width(), box.height()));
  }
  return most;
}

}  // namespace

std::string reuse_heading(const Plan& plan, const Reuse& reuse) {
  if (reuse.cushions.empty()) return "No cushion of the plan lies on it by day or by night.";
  const std::string own = cushions_text(reuse.cushions.size()) + " of the plan lie on it by day or by night.";
  if (reuse.closes()) {
    std::string text = own + " Laid as follows they close it, ";
    text += reuse.open.empty()
                ? "nothing open"
                : "nothing open but corners cut off them, " + area_text(reuse.open.area(), plan->unit) +
                      " together, none wider than " + inches_of(plan, reuse.widest_gap) +
                      " (up to 3 in: common practice, no source)";
    return text +
           (reuse.left_over.empty() ? "." : ", with " + cushions_text(reuse.left_over.size()) + " to spare.");
  }
  return own + " At best they leave " + area_text(reuse.open.area(), plan->unit) +
         " open; the widest gap takes a disc of " + inches_of(plan, reuse.widest_gap) + " across.";
}

std::vector<std::string> relaid_sentences(const Plan& plan, const Reuse& reuse) {
  std::vector<std::string> result;
  for (const RelaidCushion& laid : reuse.laid) result.push_back(relaid_sentence(plan, reuse, laid));
  for (const std::size_t index : reuse.left_over) {
    const OwnCushion& own = reuse.cushions[index];
    const Rect box = own.outline.bounds();
    result.push_back(own_name(plan, own) + ": " + box_text(plan, box.width(), box.height()) + ", not laid" +
                     (reuse.closes() ? "." : ": there is no place for it in this laying."));
  }
  return result;
}

std::vector<std::string> shortfall_sentences(const Plan& plan, const Reuse& reuse) {
  std::vector<std::string> result;
  if (!reuse.closes() && reuse.least_open > Area{})
    result.push_back("The bay is larger than all of them together by " +
                     area_text(reuse.least_open, plan->unit) +
                     (reuse.open.area() == reuse.least_open ? ": less cannot stay open with these cushions."
                                                            : ": no laying leaves less open than that."));
  if (!reuse.closes() && reuse.least_open == Area{})
    result.push_back("By their area they would do; it is their sides that do not go together.");
  if (!reuse.overhang.empty())
    result.push_back("They hang over the side of the bay by " + inches_of(plan, overhang_of(reuse.overhang)) +
                     ", into open room.");
  if (reuse.ridge > Length{})
    result.push_back("Their thicknesses differ by " + inches_of(plan, reuse.ridge) +
                     ": so high a ridge stays between them, unless the thinner are packed up.");
  return result;
}

std::string reuse_effort_sentence(const Plan& plan, const Reuse& reuse, const ReuseLimits& limits) {
  return std::to_string(reuse.choices) + " sets of cushions looked at, " + std::to_string(reuse.skipped) +
         " given up by their areas; " + std::to_string(reuse.stages) + " cushions laid on trial, " +
         std::to_string(reuse.pruned) +
         " given up early. Cushions turned by quarters, those with corners cut "
         "turned over too; at most " +
         std::to_string(limits.openings) + " rectangles left open, at most " +
         inches_of(plan, limits.overhang) + " over a free side (common practice, no source)." +
         (reuse.complete ? "" : " A search came to its bound: there may be better.");
}

}  // namespace berthwright

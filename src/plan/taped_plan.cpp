#include <berthwright/plan/tape.h>

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "plan/document.h"
#include "plan/laid_against.h"
#include "plan/tape_reading.h"

namespace berthwright {

struct TapedPlan::Anchors {
  std::vector<LaidAgainst> poses;
};

TapedPlan::TapedPlan(std::shared_ptr<const Document> document, Plan plan, std::vector<TapeMeasure> measures)
    : document_(std::move(document)),
      plan_(std::move(plan)),
      measures_(std::move(measures)),
      anchors_(std::make_shared<const Anchors>(Anchors{laid_against(plan_, *document_->root)})) {}

Result<TapedPlan> TapedPlan::read(std::string_view text) {
  std::vector<SpelledMeasure> lengths;
  Result<Plan> plan = read_plan(text, lengths);
  if (!plan) return plan.problems();
  auto document = std::make_shared<const Document>(read_document(text));
  const Node& root = *document->root;
  Reading reading;
  reading.unit = (*plan)->unit;
  const TapeWishes wishes = read_tape(root.find("tape"), reading);
  std::vector<TapeMeasure> measures = taped_measures(root, lengths, wishes, reading);
  if (!reading.problems.empty()) throw std::logic_error("a plan that was read has a fault in its tape");
  return TapedPlan(std::move(document), std::move(plan).value(), std::move(measures));
}

Result<Plan> TapedPlan::made_from(std::span<const Length> lengths) const {
  if (lengths.size() != measures_.size())
    throw std::invalid_argument("as many lengths as the plan has measures");
  OtherLengths other;
  for (std::size_t i = 0; i < lengths.size(); ++i)
    if (lengths[i] != measures_[i].length)
      for (const std::string& pointer : measures_[i].pointers) other.emplace(pointer, lengths[i]);
  if (other.empty()) return plan_;
  Result<PlanParts> parts = read_with(*document_->root, other);
  if (!parts) return parts.problems();
  return Plan::checked(laid_again(std::move(parts).value(), anchors_->poses));
}

}  // namespace berthwright

#include <berthwright/solve/convert/effort.h>

namespace berthwright {
namespace {

Effort::Stand stand_at(const PiecePlace& end, const std::optional<StandingPlace>& place, Length reach) {
  if (end.kind == PiecePlace::Kind::outside) return Effort::Stand::outside;
  if (!place) return Effort::Stand::nowhere;
  return place->away > reach ? Effort::Stand::far : Effort::Stand::near;
}

}  // namespace

Mass lifting_limit(const Plan& plan) { return plan->lifting.weight.value_or(lifted_alone); }

Length reaching_limit(const Plan& plan) { return plan->lifting.reach.value_or(reached_over); }

Effort effort_of(const Plan& plan, const Step& step) {
  Effort effort;
  effort.weight = plan.piece(step.piece.text())->weight;
  effort.too_heavy = effort.weight && *effort.weight > lifting_limit(plan);
  effort.taking = stand_at(step.from, step.taking, reaching_limit(plan));
  effort.letting_go = stand_at(step.to, step.letting_go, reaching_limit(plan));
  return effort;
}

}  // namespace berthwright

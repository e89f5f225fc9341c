#include <berthwright/solve/convert/steps.h>

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "solve/convert/conversion_search.h"
#include "solve/convert/meanwhile.h"
#include "solve/convert/standing.h"

namespace berthwright {
namespace {

// The piece is there when it is taken up, and when it has been let go: nobody stands in it.
void find_standing_places(const RoomAround& surroundings, Conversion& conversion) {
  Arrangement before = stage_after(surroundings.plan(), conversion, 0);
  for (std::size_t i = 0; i < conversion.steps.size(); ++i) {
    Step& step = conversion.steps[i];
    Arrangement after = stage_after(surroundings.plan(), conversion, i + 1);
    if (step.from.kind != PiecePlace::Kind::outside)
      step.taking = standing_place(surroundings, before, step.from.reach);
    if (step.to.kind != PiecePlace::Kind::outside)
      step.letting_go = standing_place(surroundings, after, step.to.reach);
    before = std::move(after);
  }
}

}  // namespace

Result<std::vector<Conversion>> conversions(const Plan& plan) {
  std::vector<Arrangement> arrangements;
  Problems problems;
  for (const Configuration& configuration : plan->configurations) {
    Result<Arrangement> arrangement = arranged(plan, configuration);
    if (arrangement)
      arrangements.push_back(std::move(arrangement).value());
    else
      problems.insert(problems.end(), arrangement.problems().begin(), arrangement.problems().end());
  }
  if (!problems.empty()) return problems;
  const RoomAround surroundings(plan);
  std::vector<Conversion> found;
  for (std::size_t a = 0; a < arrangements.size(); ++a)
    for (std::size_t b = a + 1; b < arrangements.size(); ++b) {
      found.push_back(searched(surroundings, arrangements[a], arrangements[b]));
      find_standing_places(surroundings, found.back());
      found.back().meanwhile = found_meanwhile(plan, found.back());
      found.push_back(undone(found.back()));
    }
  return found;
}

int exit_code(const std::vector<Conversion>& conversions) {
  const auto any = [&](Conversion::Verdict verdict) {
    return std::ranges::find(conversions, verdict, &Conversion::verdict) != conversions.end();
  };
  if (any(Conversion::Verdict::none)) return 1;
  return conversions.empty() || any(Conversion::Verdict::undecided) ? 2 : 0;
}

const PiecePlace& place_after(const Conversion& conversion, const PieceId& piece, std::size_t steps) {
  const PiecePlace* place = nullptr;
  for (const PiecePlace& start : conversion.start)
    if (start.pose.piece == piece) place = &start;
  if (place == nullptr) throw std::invalid_argument("a conversion without the piece " + piece.text());
  for (std::size_t i = 0; i < std::min(steps, conversion.steps.size()); ++i)
    if (conversion.steps[i].piece == piece) place = &conversion.steps[i].to;
  return *place;
}

Arrangement stage_after(const Plan& plan, const Conversion& conversion, std::size_t steps) {
  Arrangement stage{conversion.from, {}};
  for (const Fixture& fixture : plan->fixtures)
    stage.things.push_back({fixture.id.text(), &fixture, nullptr, nullptr, fixture.solid, {}, {}});
  std::vector<const PiecePlace*> spots;
  for (const PiecePlace& start : conversion.start)
    spots.push_back(&place_after(conversion, start.pose.piece, steps));
  std::erase_if(spots, [](const PiecePlace* spot) { return !spot->stands_in_room(); });
  std::ranges::stable_sort(spots, {}, [](const PiecePlace* spot) { return spot->base; });
  for (const PiecePlace* spot : spots) {
    const std::string& id = spot->pose.piece.text();
    stage.things.push_back({id, nullptr, plan.piece(id), &spot->pose, spot->solid(), spot->carried_by, {}});
  }
  return stage;
}

}  // namespace berthwright

#include "solve/bed_scene.h"

#include "solve/bed/levelling.h"

namespace berthwright {

Cure levelling(const BedScene& scene, const Placed& dropped) {
  const Arrangement& arrangement = scene.answer.arrangement;
  const Length off = scene.mattress().level - dropped.solid.top();
  for (const PieceId& id : scene.mattress().in_surface)
    if (const Placed* level = arrangement.find(id.text());
        level->solid.top() == scene.mattress().level && off > Length{})
      return cure_of_ridge(arrangement, dropped, *level);
  return cure_of_height(arrangement, dropped, off);
}

// No bed grows out of nothing: without a cushion there is no cure of this kind.
std::optional<Cure> larger_bed(const BedScene& scene, Cure::Kind kind, Length by) {
  if (scene.mattress().surface.empty()) return std::nullopt;
  for (const PieceId& id : scene.mattress().dropped_out)
    if (const Placed* placed = scene.answer.arrangement.find(id.text())) return levelling(scene, *placed);
  return scene.cure(kind, scene.bed.bed->id.text(), by);
}

}  // namespace berthwright

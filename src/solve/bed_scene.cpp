#include "solve/bed_scene.h"

#include <algorithm>

#include "solve/bed/levelling.h"

namespace berthwright {
namespace {

// What a cushion could be laid on: the first piece of the bed that is not stowed, else the bed.
std::string first_laid(const BedScene& scene) {
  for (const PieceId& id : scene.bed.bed->pieces)
    if (scene.answer.arrangement.find(id.text()) != nullptr) return id.text();
  return scene.bed.bed->id.text();
}

Length missing(Sides asked, Sides has) {
  return std::max(asked.length - has.length, Length{}) + std::max(asked.width - has.width, Length{});
}

}  // namespace

Length longest_in_room(const Plan& plan) {
  return SquaredLength::of(plan->interior.length).plus_square_of(plan->interior.width).ceiling();
}

Cure levelling(const BedScene& scene, const Placed& dropped) {
  const Arrangement& arrangement = scene.answer.arrangement;
  const Length off = scene.mattress().level - dropped.solid.top();
  for (const PieceId& id : scene.mattress().in_surface)
    if (const Placed* level = arrangement.find(id.text());
        level->solid.top() == scene.mattress().level && off > Length{})
      return cure_of_ridge(arrangement, dropped, *level);
  return cure_of_height(arrangement, dropped, off);
}

Cure larger_bed(const BedScene& scene, Cure::Kind kind, Length by) {
  if (scene.mattress().surface.empty()) return scene.cure(Cure::Kind::lay_cushion, first_laid(scene), by);
  for (const PieceId& id : scene.mattress().dropped_out)
    if (const Placed* placed = scene.answer.arrangement.find(id.text())) return levelling(scene, *placed);
  if (!scene.room().largest) return more_clear_height(scene);
  return scene.cure(kind, scene.bed.bed->id.text(), by);
}

Cure larger_bed(const BedScene& scene, Sides asked, Sides has) {
  if (std::max(asked.length, asked.width) > longest_in_room(scene.plan))
    return {Cure::Kind::none, scene.bed.bed->id.text(), {}};
  // A narrow bed may be measured across: less may be missing of it as it lies.
  if (const auto& largest = scene.room().largest)
    if (const Sides whole{largest->length, largest->width}; missing(asked, whole) < missing(asked, has))
      has = whole;
  // Where nobody can lie, what the cushions have.
  const bool low_all_over = !scene.room().largest && !scene.mattress().surface.empty();
  if (low_all_over) {
    const Rect box = scene.mattress().surface.bounds();
    has = {std::max(box.width(), box.height()), std::min(box.width(), box.height())};
    std::optional<Cure> cure = larger_bed(scene, Cure::Kind::lengthen, asked.length - has.length);
    if (cure->kind == Cure::Kind::none) return *cure;
    const std::string& bed = scene.bed.bed->id.text();
    if (has.length < asked.length)
      add_step(cure, scene.cure(Cure::Kind::lengthen, bed, asked.length - has.length));
    if (has.width < asked.width)
      add_step(cure, scene.cure(Cure::Kind::broaden, bed, asked.width - has.width));
    return *cure;
  }
  Cure cure = larger_bed(scene, Cure::Kind::lengthen, asked.length - has.length);
  if (asked.width <= has.width) return cure;
  Cure broaden = larger_bed(scene, Cure::Kind::broaden, asked.width - has.width);
  if (asked.length <= has.length) return broaden;
  if (cure.kind == Cure::Kind::lengthen) cure.then.push_back(std::move(broaden));
  return cure;
}

}  // namespace berthwright

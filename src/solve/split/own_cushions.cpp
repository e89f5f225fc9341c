#include <berthwright/solve/room/arrangement.h>
#include <berthwright/solve/split/reuse.h>

namespace berthwright {

Result<std::vector<OwnCushion>> own_cushions(const Plan& plan, const NightBay& bay) {
  const Result<Arrangement> night = arranged(plan, *bay.night);
  if (!night) return night.problems();
  std::vector<OwnCushion> result;
  for (const PieceId& id : bay.cushions) {
    const Piece& piece = *plan.piece(id.text());
    if (piece.kind != Piece::Kind::cushion) continue;
    OwnCushion cushion{id, Region(piece.outline.polygon()), piece.thickness};
    const Placed* placed = night->find(id.text());
    if (placed != nullptr && placed->pose->manner == Pose::Manner::flat)
      cushion.now = placed->solid.outline();
    result.push_back(std::move(cushion));
  }
  return result;
}

}  // namespace berthwright

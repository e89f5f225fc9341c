#include <algorithm>

#include <berthwright/exact/measure.h>

#include "plan/promises.h"

namespace berthwright {
namespace {

constexpr Length widest_seam = 3_in;
constexpr Length thickest_cord = 1_in;
constexpr std::size_t most_sheets = 40;
constexpr Length least_foam = Length::inches(1, 8);

// Of a cushion only what it has otherwise than the plan: the rest is reported there.
void check_one(const Sewing& sewing, const Sewing* usual, Unit unit, Reading& faults) {
  const bool own_seam = usual == nullptr || sewing.seam_allowance != usual->seam_allowance;
  const bool own_fabric = usual == nullptr || sewing.fabric != usual->fabric;
  const bool own_welt = usual == nullptr || sewing.welt != usual->welt;
  const auto text = [&](Length length) { return exact_text(length, unit); };
  const Fabric& fabric = sewing.fabric;
  if (own_seam && (sewing.seam_allowance <= Length{} || sewing.seam_allowance > widest_seam))
    faults.add(field_of(sewing.origin, "seam_allowance"),
               {.id = "sewing.seam",
                .message = "no seam allowance is " + both(sewing.seam_allowance, unit),
                .found = text(sewing.seam_allowance),
                .allowed = "above zero, at most " + text(widest_seam),
                .cure = "give what lies outside one seam"});
  if ((own_seam || own_fabric) && fabric.width <= sewing.seam_allowance * 2)
    faults.add(field_of(sewing.origin, "fabric"),
               {.id = "sewing.narrow",
                .message = "the fabric is " + both(fabric.width, unit) + " wide, and two seams take " +
                           both(sewing.seam_allowance * 2, unit),
                .found = text(fabric.width),
                .allowed = "more than " + text(sewing.seam_allowance * 2),
                .cure = "check the width of the fabric and its unit"});
  if (own_welt && sewing.welt && (*sewing.welt <= Length{} || *sewing.welt > thickest_cord))
    faults.add(field_of(sewing.origin, "welt"),
               {.id = "sewing.welt",
                .message = "no cord in a seam is " + both(*sewing.welt, unit),
                .found = text(*sewing.welt),
                .allowed = "at most " + text(thickest_cord),
                .cure = "give how thick the cord is"});
  if (own_fabric && fabric.roll && *fabric.roll <= Length{})
    faults.add(field_of(sewing.origin, "fabric/roll"), {.id = "size.zero",
                                                        .message = "a roll has a length above zero",
                                                        .found = "zero or less",
                                                        .allowed = "a length above zero",
                                                        .cure = "give how much of the fabric there is"});
  if (!own_fabric || !fabric.repeat) return;
  const Repeat& repeat = *fabric.repeat;
  const bool is_one = repeat.along > Length{} || repeat.across > Length{};
  const bool may_drop = repeat.along > Length{} && repeat.across > Length{};
  if (is_one && (!repeat.half_drop || may_drop) && repeat.along >= Length{} && repeat.across >= Length{})
    return;
  faults.add(field_of(sewing.origin, "fabric/repeat"),
             {.id = "sewing.repeat",
              .message = "a repeat is along the roll, across it or both, and only both are dropped by half",
              .found = is_one ? "a half drop of one of them" : "no length",
              .allowed = "lengths above zero",
              .cure = "give the lengths after which the pattern comes again"});
}

}  // namespace

void check_sewing(const PlanParts& parts, Reading& faults) {
  check_one(parts.sewing, nullptr, parts.unit, faults);
  const std::vector<FoamSheet>& sheets = parts.sewing.foam_sheets;
  if (sheets.size() > most_sheets)
    faults.add(field_of(parts.sewing.origin, "foam_sheets"),
               {.id = "sewing.sheets",
                .message = "these are " + std::to_string(sheets.size()) + " kinds of foam sheets",
                .found = std::to_string(sheets.size()),
                .allowed = "at most " + std::to_string(most_sheets),
                .cure = "give those that the shop cuts from"});
  for (std::size_t i = 0; i < sheets.size(); ++i)
    if (std::min({sheets[i].length, sheets[i].width, sheets[i].thickness}) < least_foam)
      faults.add(field_of(parts.sewing.origin, "foam_sheets/" + std::to_string(i)),
                 {.id = "sewing.sheet",
                  .message = "no sheet of foam is that small",
                  .found = exact_text(std::min({sheets[i].length, sheets[i].width, sheets[i].thickness}),
                                      parts.unit),
                  .allowed = "at least " + exact_text(least_foam, parts.unit) + " each way",
                  .cure = "check the sheet and its unit"});
  for (const Piece& piece : parts.pieces) {
    if (!piece.sewing) continue;
    if (piece.is_soft())
      check_one(*piece.sewing, &parts.sewing, parts.unit, faults);
    else
      faults.add(field_of(piece.origin, "cover"), {.id = "field.misplaced",
                                                   .message = "only cushions and bolsters have a cover",
                                                   .found = "a cover",
                                                   .allowed = "no cover",
                                                   .cure = "take it away"});
  }
}

}  // namespace berthwright

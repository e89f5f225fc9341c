#pragma once

#include <string>

#include <berthwright/plan/plan.h>

namespace berthwright {

/// Everything that a packet says of its own accord, in one table; the rest are the words of the checks.
enum class PacketWord {
  lead,
  lead_plan,
  lead_file,
  glance,
  night,
  no_bed,
  changing,
  change_hint,
  moving_hint,
  steps_on_sheets,
  view_on_sheet,
  one_configuration,
  nothing_moves,
  before_driving,
  cushions,
  no_cushion,
  cushion,
  finished_size,
  where_it_lies,
  foam,
  zip_side,
  unknown_foam,
  heat,
  no_heat,
  may_stand,
  before_bed,
  ways,
  no_ways,
  alarms,
  no_alarm,
  handover,
  no_notes,
  figures,
  figures_lead,
  what,
  found,
  result,
  alerts,
  alerts_lead,
  cautions,
  unknown_means,
  signatures,
  handed_over,
  taken_over,
  shop_lead,
  parts,
  part,
  kind,
  material,
  weight,
  unknown_weight,
  cut_sheets,
  purchase,
  purchase_lead,
  how_much,
  all_foam,
  unknown_sum,
  fabric,
  fabric_by_cut,
  welt_cord,
  templates,
  templates_note,
  open_items,
  nothing_open,
  on_paper
};
std::string word(PacketWord which, English english);

}  // namespace berthwright

#pragma once

#include "view/label_wishes.h"
#include "view/raised.h"

namespace berthwright {

// Drawings without frame or notes, for a screen as narrow as a telephone's.

/// Lettering of 2.8 mm on it is read on a telephone that is held upright.
inline constexpr PaperLength telephone_width = paper_mm(84);

struct SmallBox {
  PaperLength width;
  PaperLength height;
  PaperPoint origin;  ///< of the room's corner x = 0, y = 0, on the floor
};

/// What the plan and the raised view of one room have in common.
struct SmallLayout {
  std::int64_t ratio = 20;
  SmallBox above;
  SmallBox raised;

  PlanView plan_view() const { return {ratio, above.origin}; }
  PaperBox plan_area() const { return {{}, {above.width, above.height}}; }
  RaisedView raised_view() const { return {ratio, raised.origin}; }
};
/// What a drawing takes beside a wall.
using Beside = PaperLength (*)(const Plan& plan, Wall wall, std::int64_t ratio);
/// At the largest scale at which neither is wider than `widest`; raised up to `height`.
SmallLayout small_layout(const Plan& plan, Length height, PaperLength widest, Beside beside);

/// As wide as it may be at any scale: where many labels stand in it, each bit helps. Nothing is raised.
SmallLayout filling_layout(const Plan& plan, PaperLength widest, Beside beside);

/// std::logic_error where lettering meets lettering.
Sheet small_sheet(std::string title, const SmallBox& box, std::int64_t ratio, std::vector<Group> groups);

/// A wish for the name of a thing: on it, else beside it at the end of a leader to `target`.
LabelWish name_wish(const std::string& name, const std::vector<PaperRing>& home, PaperPoint target);

}  // namespace berthwright

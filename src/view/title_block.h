#pragma once

#include <berthwright/plan/plan.h>

#include "view/paper.h"

namespace berthwright {

/// What the title block says beside the plan's own title fields.
struct SheetTitle {
  std::string drawing;  ///< "Day"
  std::string subject;  ///< what of it is drawn, on a line of its own; may be empty
  std::string scale;
  std::string sides;  ///< how the drawing lies on the page; empty: as a plan does
  int number = 1;     ///< sheet n
  int count = 1;      ///< of m
};

/// Height of the block for a page of this width; the caution line takes what it needs.
PaperLength title_block_height(const Plan& plan, PaperLength width);

/// The block at the foot of `box`, with all its cells.
std::vector<Mark> title_block_marks(const Plan& plan, const SheetTitle& title, const PaperBox& box);

}  // namespace berthwright

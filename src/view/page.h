#pragma once

#include "view/plan_drawing.h"

namespace berthwright {

/// How one page is divided. Everything stays within 12.7 mm of its edges, which home printers reach.
struct Page {
  PaperLength width;
  PaperLength height;
  PaperBox frame;
  PaperBox drawing;               ///< for the plan and its dimension chains
  PaperPoint foot;                ///< left end of the strip with scale bar and arrow
  std::vector<PaperBox> columns;  ///< for notes
};

/// A page at a scale.
struct Layout {
  Page page;
  Scale scale;
  Surroundings around;
  PlanView view;
};

/// The layouts worth trying, best first: largest scale, then lying pages before upright ones. At least one.
std::vector<Layout> layouts_of(const DrawnConfiguration& of);

/// A page for notes alone.
Page notes_page(const Plan& plan);

/// Scale bar and arrow of travel, from `foot` on.
std::vector<Group> foot_groups(const Plan& plan, const Layout& layout);

}  // namespace berthwright

#pragma once

#include <functional>

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

struct PaperSize {
  PaperLength width;
  PaperLength height;
};
enum class NotesAt { right, below };
/// A page with room for a drawing of this size; none when it does not fit or too little is left for notes.
std::optional<Page> page_for(const Plan& plan, bool landscape, NotesAt notes, const PaperSize& needs);
/// The same with the notes to the right of the drawing's last row, down to the title block.
std::optional<Page> page_beside(const Plan& plan, bool landscape, const PaperSize& needs,
                                const PaperSize& last_row);
/// A page that is a drawing but for its foot strip.
Page strip_page(const Plan& plan, bool landscape);
/// How wide a drawing on such a page may be.
PaperLength widest_drawing(const Plan& plan, bool landscape, NotesAt notes);

/// A page at a scale.
struct Layout {
  Page page;
  Scale scale;
  Surroundings around;
  PlanView view;
};

/// The layouts worth trying, best first: largest scale, then lying pages before upright ones. At least one.
std::vector<Layout> layouts_of(const DrawnConfiguration& of);
/// The same for a drawing with other things around it than chains of measures; of a ratio.
std::vector<Layout> layouts_of(const DrawnConfiguration& of,
                               const std::function<Surroundings(std::int64_t)>& around_at);

/// A page for notes alone.
Page notes_page(const Plan& plan);

/// Scale bar and arrow of travel, from `foot` on.
std::vector<Group> foot_groups(const Plan& plan, const Page& page, std::int64_t ratio);
/// The arrow alone, its lettering beneath; about 26 mm wide and 9 mm high, from its top left corner on.
Group travel_arrow(PaperPoint corner);
/// The bar alone, from its top left corner on.
Group scale_bar(const Plan& plan, std::int64_t ratio, PaperPoint low);

}  // namespace berthwright

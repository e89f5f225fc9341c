#include "view/plan_page.h"

#include "view/page.h"

namespace berthwright {

std::vector<Draft> plan_drafts(const DrawnConfiguration& of) {
  return fitted_drafts(of, layouts_of(of),
                       {name_of(*of.answer->configuration), "", of.answer->configuration->id.text(), "",
                        "Plan seen from above, front at the left."},
                       certain_notes(of), [&](const Layout& layout) {
                         return plan_drawing(of, layout.view, layout.around, layout.page.drawing);
                       });
}

}  // namespace berthwright

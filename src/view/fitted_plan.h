#pragma once

#include <functional>
#include <string>
#include <vector>

#include "view/draft.h"
#include "view/plan_drawing.h"

namespace berthwright {

/// What the sheet of a drawing is called.
struct FittedTitle {
  std::string drawing;
  std::string subject;
  std::string id;       ///< of the file's stem: the configuration's
  std::string suffix;   ///< of the file's stem
  std::string told;     ///< what is drawn, for those who hear it
  std::string sides{};  ///< how it lies on the page; empty: as plans do
};

/// The drawing at the first of `layouts` that leaves room for all of its notes. Two scales are tried before
/// the rest of the notes goes over to pages of its own: a smaller drawing is the greater loss. `certain` are
/// notes that every drawing has, in their order: where not even they find room nothing is drawn in vain.
std::vector<Draft> fitted_drafts(const DrawnConfiguration& of, const std::vector<Layout>& layouts,
                                 const FittedTitle& title, const std::vector<Note>& certain,
                                 const std::function<PlanDrawing(const Layout&)>& drawn_at);

}  // namespace berthwright

#pragma once

#include <string>
#include <vector>

#include <berthwright/geometry/cut_line.h>
#include <berthwright/plan/plan.h>

#include "view/labels.h"
#include "view/scale.h"

namespace berthwright {

/// Where a configuration is cut. The letter means this plane on every sheet of the plan.
struct SectionCut {
  CutLine line;
  std::string letter;
  friend bool operator==(const SectionCut&, const SectionCut&) = default;
};

/// "A" to "Z", then "AA" and so on; I and O are left out, which read as figures.
std::string section_letter(std::size_t index);

/// The mark at one end of a cut, as drawing standards have it (ISO 128, from memory): a wide stroke outside
/// the wall where the plane passes, an arrow that points to it the way the section looks, the letter behind
/// the arrow. Marks that would meet stand in rows, one farther out than the other.
struct CutMark {
  const SectionCut* cut = nullptr;
  Wall wall = Wall::left;
  PaperLength out;  ///< from the wall's outer face to the nearer end of the stroke
};
/// In the order of the cuts, two for each; `ratio` is the drawing's. Marks keep off the leaves of doors that
/// open outward.
std::vector<CutMark> cut_marks(const Plan& plan, const std::vector<SectionCut>& cuts, std::int64_t ratio);

/// How far the marks at one wall reach from its outer face; zero where there are none.
PaperLength depth_of(const std::vector<CutMark>& marks, Wall wall);

/// Stroke and arrow. `face` is the outer face of the walls on paper.
std::vector<Mark> marks_of(const CutMark& mark, const PlanView& view, const PaperBox& face);
/// The letter, which finds its place like all lettering.
LabelWish letter_wish(const CutMark& mark, const PlanView& view, const PaperBox& face, Unit own);

}  // namespace berthwright

#pragma once

#include <functional>
#include <set>

#include "view/draft.h"
#include "view/hatching.h"
#include "view/label_wishes.h"

namespace berthwright {

/// Lines that fill an area once the lettering stands, broken around it.
struct Hatched {
  std::vector<PaperRing> rings;
  Ink edge = Ink::zone_published;  ///< decides how far apart they are
  Ink line = Ink::zone_hatch;
  Diagonal way = Diagonal::rising;
};

/// What one sheet lays over the quiet plan of a configuration.
struct Laid {
  std::vector<Group> beneath;  ///< on the floor: what hangs above is drawn over it
  std::vector<Hatched> hatched;
  std::vector<Group> above;     ///< over everything that stands there
  std::vector<PaperBox> signs;  ///< no lettering meets them
  std::set<std::string> named;  ///< ids of the things whose names are wanted
  std::vector<LabelWish> wishes;
};

/// A sheet over a thin grey plan: what it is about stands out from it.
struct QuietSheet {
  std::string kind;              ///< "ways out": of its title; of its file the first word
  std::string when;              ///< before it in the title; empty: the configuration's name
  std::string id;                ///< of its file; empty: the configuration's
  std::string subject;           ///< a line more of the title; may be empty
  std::string told;              ///< what is drawn, for those who hear it
  std::vector<Note> notes;       ///< before the key and the signs
  std::set<std::string> strong;  ///< ids of what gives heat and is drawn as on the plans
  std::function<Laid(const PlanView&)> laid;
};
/// With pages for those of its notes that find no room beside it.
std::vector<Draft> quiet_drafts(const DrawnConfiguration& of, const QuietSheet& sheet);

/// What such a drawing takes beside a wall, for its signs and tags.
PaperLength beside_quiet(const Plan& plan, Wall wall, std::int64_t ratio);
/// The drawing by itself, all of its lettering in `area`, and its notes with the key and the signs.
PlanDrawing quiet_drawing(const DrawnConfiguration& of, const QuietSheet& sheet, const PlanView& view,
                          const PaperBox& area);
/// Room around such a plan for signs and what opens outward.
Surroundings bare_surroundings(const Plan& plan, std::int64_t ratio);

/// The thin grey plan by itself.
Group quiet_plan(const DrawnConfiguration& of, const PlanView& view);

/// The heading with a triangle, what it warns of, and who comes before any figure.
std::vector<Note> warning_notes(const Plan& plan, const std::vector<std::string>& warnings);

/// The outlines of the beds and the edges of their bedding made up.
Group bedding_group(const DrawnConfiguration& of, const PlanView& view);
std::vector<LabelWish> bed_name_wishes(const DrawnConfiguration& of, const PlanView& view);

}  // namespace berthwright

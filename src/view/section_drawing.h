#pragma once

#include "view/head_room.h"
#include "view/levels.h"
#include "view/section_faults.h"
#include "view/section_people.h"

namespace berthwright {

/// One section with all it tells, before its place on the page is known.
struct DrawnSection {
  Section section;
  std::string letter;  ///< "A"
  std::string configuration;
  std::string where;  ///< "Along the trailer, 3' 2\" (965.2 mm) from the left wall, looking to the right."
  SectionPeople people;
  std::vector<HeadRoomLine> head_room;
  std::vector<SectionRidge> ridges;
  std::vector<SectionClash> clashes;
  LevelColumn levels;
};

/// The sections of a configuration, one for each of its cuts; each tells all that it cuts.
std::vector<DrawnSection> drawn_sections(const DrawnConfiguration& of);

/// What one section takes on paper, its walls, levels and title with it.
PaperPoint size_of(const DrawnSection& drawn, std::int64_t ratio);

/// Sections on one page: `corners` are the top left ones of what each takes.
struct SectionsDrawing {
  std::vector<Group> groups;
  std::vector<Note> notes;
  std::string told;  ///< the sections in sentences, for those who hear the drawing
};
SectionsDrawing sections_drawing(const DrawnConfiguration& of, const std::vector<DrawnSection>& sections,
                                 const std::vector<PaperPoint>& corners, std::int64_t ratio,
                                 const PaperBox& area);

}  // namespace berthwright

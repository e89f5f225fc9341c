#pragma once

#include <optional>
#include <string>
#include <vector>

#include "view/paper.h"

namespace berthwright {

/// One paragraph beside the drawing.
struct Note {
  enum class Kind { heading, alert, text, caution };  ///< `alert`: a heading behind a triangle
  Kind kind = Kind::text;
  std::string words;
  int number = 0;             ///< of the key; 0: none
  bool goes_on = false;       ///< its paragraph continues in the next note
  std::optional<Ink> swatch;  ///< a sample of the sign that the words explain
};

/// The sample of a note's sign by itself.
Sheet swatch_of(Ink ink);

/// Notes set in columns, and those for which there was no room.
struct SetNotes {
  std::vector<Mark> marks;
  std::vector<Note> rest;
};

/// Fills the columns, all of one width, in order. A note longer than eight lines may be broken between them;
/// a heading never stands alone at a foot.
SetNotes set_notes(const std::vector<Note>& notes, const std::vector<PaperBox>& columns);

/// Notes over the whole width of a box, in three or four columns, as low as they can be; at most half of it.
struct NotesAcross {
  std::vector<Mark> marks;
  std::vector<Note> rest;
  PaperLength height;  ///< from the top of the box to the last baseline; none where nothing is set
};
NotesAcross set_across(const std::vector<Note>& notes, const PaperBox& box);

/// The lowest baseline of the lettering among `marks`, or `top` where none is lower.
PaperLength last_baseline(const std::vector<Mark>& marks, PaperLength top);

}  // namespace berthwright

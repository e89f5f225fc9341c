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

/// Notes set in columns, and those for which there was no room.
struct SetNotes {
  std::vector<Mark> marks;
  std::vector<Note> rest;
};

/// Fills the columns, all of one width, in order. A note longer than eight lines may be broken between them;
/// a heading never stands alone at a foot.
SetNotes set_notes(const std::vector<Note>& notes, const std::vector<PaperBox>& columns);

}  // namespace berthwright

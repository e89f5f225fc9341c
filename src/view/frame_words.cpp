#include "view/frame_words.h"

#include "view/called.h"
#include "view/draft.h"
#include "view/effort_words.h"
#include "view/meanwhile_words.h"
#include "view/step_words.h"

namespace berthwright {
namespace {

Note plain(std::string words) { return {Note::Kind::text, std::move(words), 0, false, std::nullopt}; }

// The pieces that wait outside after so many steps, but for the one moved last.
std::vector<std::string> waiting_outside(const Conversion& conversion, std::size_t steps) {
  std::vector<std::string> ids;
  for (const PiecePlace& start : conversion.start) {
    const PiecePlace::Kind kind = place_after(conversion, start.pose.piece, steps).kind;
    const bool just_moved = conversion.steps[steps - 1].piece == start.pose.piece;
    if (kind == PiecePlace::Kind::outside && !just_moved) ids.push_back(start.pose.piece.text());
  }
  return ids;
}

}  // namespace

std::vector<Note> frame_notes(const Plan& plan, const Conversion& conversion, std::size_t number) {
  const Step& step = conversion.steps.at(number - 1);
  std::vector<Note> notes{
      {Note::Kind::heading,
       "Step " + std::to_string(number) + " of " + std::to_string(conversion.steps.size()), 0, false,
       std::nullopt},
      plain(step_sentence(plan, step))};
  for (std::string& asked : effort_sentences(plan, step)) notes.push_back(plain(std::move(asked)));
  for (const Meanwhile& one : conversion.meanwhile)
    if (one.from == number) notes.push_back(plain(meanwhile_sentence(plan, conversion, one)));
  const std::vector<std::string> outside = waiting_outside(conversion, number);
  if (!outside.empty()) notes.push_back(plain("Waiting outside: " + names_with_and(plan, outside) + "."));
  return notes;
}

std::string pair_words(const Conversion& conversion) {
  return name_of(*conversion.from) + " to " + name_of(*conversion.to);
}

std::vector<Note> no_story_notes(const Plan& plan, const Conversion& conversion) {
  std::vector<Note> notes{{Note::Kind::heading, conversion_heading(conversion) + ".", 0, false, std::nullopt},
                          plain("No step is drawn. " + conversion_bound(conversion))};
  for (const Stuck& stuck : conversion.stuck) notes.push_back(plain(stuck_sentence(plan, conversion, stuck)));
  notes.push_back(plain(std::string(moves_tried())));
  return notes;
}

}  // namespace berthwright

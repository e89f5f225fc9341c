#include "view/frame_words.h"

#include "view/called.h"
#include "view/draft.h"
#include "view/step_words.h"

namespace berthwright {
namespace {

Note plain(std::string words) { return {Note::Kind::text, std::move(words), 0, false, std::nullopt}; }

// The pieces that wait outside after so many steps, but for the one moved last.
std::vector<std::string> waiting_outside(const Conversion& conversion, std::size_t steps) {
  std::vector<std::string> ids;
  for (const PiecePlace& start : conversion.start) {
    PiecePlace::Kind kind = start.kind;
    for (std::size_t i = 0; i < steps; ++i)
      if (conversion.steps[i].piece == start.pose.piece) kind = conversion.steps[i].to.kind;
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
  const auto no_floor = [&](const PiecePlace& spot, const std::optional<StandingPlace>& place,
                            const std::string& what) {
    if (spot.kind != PiecePlace::Kind::outside && !place)
      notes.push_back(plain("No free floor was found to stand on to " + what + "."));
  };
  no_floor(step.from, step.taking, "take it up");
  no_floor(step.to, step.letting_go, "let it go");
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

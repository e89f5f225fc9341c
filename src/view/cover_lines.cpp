#include "view/cover_lines.h"

#include "view/called.h"
#include "view/cover_words.h"
#include "view/shape_words.h"

namespace berthwright {
namespace {

class CoverLines {
 public:
  void say(std::string_view what, std::string words, bool goes_on = false) {
    if (!words.empty()) lines_.push_back({std::string(what), std::move(words), goes_on});
  }
  void boxed(const Plan& plan, const Cover& cover) {
    const CoverTerms terms = cover_terms(plan->english);
    say("Top and bottom panels", panel_sentence(plan, cover));
    say(capital_first(terms.boxing), boxing_sentence(plan, cover));
    say(capital_first(terms.zip), zip_sentence(plan, cover));
    say("", zip_strips_sentence(plan, cover), true);
    say("Marks", marks_sentence(plan, cover));
  }
  void shaped(const Plan& plan, const Cover& cover) {
    if (cover.shaped->panel)
      say(cover.shaped->shape == CoverShape::board_backed ? "Panel" : "Panels", panel_sentence(plan, cover));
    for (std::string& sentence : shape_sentences(plan, cover)) say("", std::move(sentence));
    say(capital_first(cover_terms(plan->english).zip), zip_place_sentence(plan, cover));
  }
  std::vector<CoverLine> all() && { return std::move(lines_); }

 private:
  std::vector<CoverLine> lines_;
};

}  // namespace

std::vector<CoverLine> lines_of_cover(const Plan& plan, const Sewing& usual, const Cover& cover) {
  const CoverTerms terms = cover_terms(plan->english);
  CoverLines lines;
  lines.say("Foam", foam_sentence(plan, cover));
  lines.say("", glue_sentence(plan, cover), true);
  lines.say("Sewn otherwise", own_sewing_sentence(plan, usual, cover));
  if (cover.shaped)
    lines.shaped(plan, cover);
  else
    lines.boxed(plan, cover);
  lines.say(capital_first(terms.welt), welt_sentence(plan, cover));
  lines.say(capital_first(terms.batting), batting_sentence(plan, cover));
  for (std::string& problem : cut_problems(plan, usual, cover))
    lines.say("Cannot be cut so", std::move(problem));
  return std::move(lines).all();
}

std::string finished_size(const Plan& plan, const Piece& piece) {
  return cut_size({piece.length, piece.width, piece.thickness}, plan->unit) + " finished";
}

}  // namespace berthwright

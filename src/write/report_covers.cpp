#include <berthwright/write/cut_list.h>

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/cover_words.h"
#include "view/cushion_words.h"
#include "view/shape_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string cover_line(std::string_view what, const std::string& sentence) {
  return sentence.empty() ? "" : wrapped(std::string(what) + ": " + sentence, item);
}

std::string wrapped_or_none(const std::string& sentence, const Indent& indent) {
  return sentence.empty() ? "" : wrapped(sentence, indent);
}

std::string boxed_lines(const Plan& plan, const Cover& cover) {
  const CoverTerms terms = cover_terms(plan->english);
  return cover_line("Top and bottom panels", panel_sentence(plan, cover)) +
         cover_line(capital_first(terms.boxing), boxing_sentence(plan, cover)) +
         cover_line(capital_first(terms.zip), zip_sentence(plan, cover)) +
         wrapped(zip_strips_sentence(plan, cover), under_item) +
         cover_line("Marks", marks_sentence(plan, cover));
}

std::string shaped_lines(const Plan& plan, const Cover& cover) {
  const ShapedCover& shaped = *cover.shaped;
  std::string text;
  if (shaped.panel)
    text += cover_line(shaped.shape == CoverShape::board_backed ? "Panel" : "Panels",
                       panel_sentence(plan, cover));
  for (const std::string& sentence : shape_sentences(plan, cover)) text += wrapped(sentence, item);
  text += cover_line(capital_first(cover_terms(plan->english).zip), zip_place_sentence(plan, cover));
  return text;
}

std::string cover_lines(const Plan& plan, const Sewing& usual, const Cover& cover,
                        const std::string& letter) {
  const CoverTerms terms = cover_terms(plan->english);
  const Piece& piece = *cover.piece;
  std::string text =
      "\n" + wrapped(lettered_name(letter, piece) + ": " +
                         cut_size({piece.length, piece.width, piece.thickness}, plan->unit) + " finished",
                     {});
  text += cover_line("Foam", foam_sentence(plan, cover));
  text += wrapped_or_none(glue_sentence(plan, cover), under_item);
  text += cover_line("Sewn otherwise", own_sewing_sentence(plan, usual, cover));
  text += cover.shaped ? shaped_lines(plan, cover) : boxed_lines(plan, cover);
  text += cover_line(capital_first(terms.welt), welt_sentence(plan, cover));
  text += cover_line(capital_first(terms.batting), batting_sentence(plan, cover));
  for (const std::string& problem : cut_problems(plan, usual, cover))
    text += cover_line("Cannot be cut so", problem);
  return text;
}

std::string foam_sum(const Plan& plan, const std::vector<Cover>& covers) {
  Mass sum;
  for (const Cover& cover : covers) {
    if (!cover.foam || !cover.foam->weight) return {};
    sum = sum + *cover.foam->weight;
  }
  return "All foam together: " + mass_text(sum, plan->unit) + ".\n";
}

}  // namespace

std::string cut_text(const Plan& plan, const Sewing& sewing, const std::vector<Cover>& covers) {
  std::string text = heading(plan);
  if (covers.empty()) text += "\nThe plan has no cushion.\n";
  const std::vector<std::string> letters = cover_letters(plan, covers);
  for (std::size_t i = 0; i < covers.size(); ++i) text += cover_lines(plan, sewing, covers[i], letters[i]);
  text += "\n";
  if (!covers.empty()) text += foam_sum(plan, covers);
  text += "How it is cut\n";
  for (const std::string& rule : cutting_rules(plan, sewing)) text += wrapped(rule, item);
  return text + "\n" + wrapped(cutting_notes(), {}) + wrapped(caution_line(plan->english), {});
}

int exit_code(const Plan& plan, const std::vector<Cover>& covers) {
  const auto lacks = [&](const Cover& cover) { return !cut_problems(plan, plan->sewing, cover).empty(); };
  if (std::ranges::any_of(covers, lacks)) return 1;
  const bool whole = !covers.empty() && std::ranges::all_of(covers, [](const Cover& cover) {
    return cover.foam && cover.foam->weight && cover.reckoned();
  });
  return whole ? 0 : 2;
}

}  // namespace berthwright

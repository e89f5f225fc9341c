#include <berthwright/write/cut_list.h>

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/cover_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string capital(std::string_view text) {
  std::string word(text);
  word[0] = static_cast<char>(word[0] - 'a' + 'A');
  return word;
}

std::string line(std::string_view what, const std::string& sentence) {
  return sentence.empty() ? "" : wrapped(std::string(what) + ": " + sentence, item);
}

std::string cover_lines(const Plan& plan, const Sewing& sewing, const Cover& cover) {
  const CoverTerms terms = cover_terms(plan->english);
  const Piece& piece = *cover.piece;
  const std::string id = piece.id.text();
  std::string text =
      "\n" + wrapped((piece.name == id ? id : id + ", " + piece.name) + ": " +
                         cut_size({piece.length, piece.width, piece.thickness}, plan->unit) + " finished",
                     {});
  text += line("Foam", foam_sentence(plan, cover));
  text += line("Top and bottom panels", panel_sentence(plan, sewing, cover));
  text += line(capital(terms.boxing), boxing_sentence(plan, cover));
  text += line(capital(terms.zip), zip_sentence(plan, cover));
  text += wrapped(zip_strips_sentence(plan, sewing, cover), under_item);
  text += line("Marks", marks_sentence(plan, cover));
  text += line(capital(terms.welt), welt_sentence(plan, cover));
  return text + line(capital(terms.batting), batting_sentence(plan, cover));
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
  for (const Cover& cover : covers) text += cover_lines(plan, sewing, cover);
  text += "\n";
  if (!covers.empty()) text += foam_sum(plan, covers);
  std::vector<std::string> bolsters;
  for (const Piece& piece : plan->pieces)
    if (piece.kind == Piece::Kind::bolster) bolsters.push_back(piece.name);
  if (!bolsters.empty()) text += wrapped("Bolsters are not reckoned: " + listed_with_and(bolsters) + ".", {});
  text += "How it is cut\n";
  for (const std::string& rule : cutting_rules(plan, sewing)) text += wrapped(rule, item);
  return text + "\n" + wrapped(cutting_notes(), {}) + wrapped(caution_line(plan->english), {});
}

int exit_code(const Plan& plan, const std::vector<Cover>& covers) {
  const bool whole = !covers.empty() && std::ranges::all_of(covers, [](const Cover& cover) {
    return cover.foam && cover.foam->weight;
  });
  const bool bolster =
      std::ranges::find(plan->pieces, Piece::Kind::bolster, &Piece::kind) != plan->pieces.end();
  return whole && !bolster ? 0 : 2;
}

}  // namespace berthwright

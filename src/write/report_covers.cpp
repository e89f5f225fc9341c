#include <berthwright/write/cut_list.h>

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/cover_words.h"
#include "view/cushion_words.h"
#include "view/cover_lines.h"
#include "view/shape_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string cover_lines(const Plan& plan, const Sewing& usual, const Cover& cover,
                        const std::string& letter) {
  const Piece& piece = *cover.piece;
  std::string text = "\n" + wrapped(lettered_name(letter, piece) + ": " + finished_size(plan, piece), {});
  for (const CoverLine& line : lines_of_cover(plan, usual, cover))
    text += wrapped(line.said(), line.goes_on ? under_item : item);
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

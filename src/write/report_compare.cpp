#include <berthwright/write/outputs.h>

#include <berthwright/view/words.h>

#include "view/compare_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string side_line(const char* letter, const std::string& words) {
  return wrapped(std::string(letter) + " " + words, {"    ", "      "});
}

std::string figure_lines(const Comparison& of, const ComparedFigure& figure) {
  const std::string rule = compared_rule(figure);
  const bool named = figure.either().finding != nullptr;
  const std::string name = compared_name(of, figure) + (named ? " (" + rule + ")" : "");
  if (!figure.second) return wrapped(name + ", only A: " + compared_side(*of.first, figure.first), item);
  if (!figure.first) return wrapped(name + ", only B: " + compared_side(*of.second, figure.second), item);
  return wrapped(name, item) + side_line("A", compared_side(*of.first, figure.first)) +
         side_line("B", compared_side(*of.second, figure.second)) +
         wrapped(compared_verdict(of, figure), {"    ", "    "});
}

}  // namespace

std::string compare_text(const Comparison& of, const ComparedNames& names) {
  std::string text = wrapped("A: " + names.first + ": " + heading_words(*of.first->plan), {"", "   "}) +
                     wrapped("B: " + names.second + ": " + heading_words(*of.second->plan), {"", "   "});
  for (const ComparedPair& pair : of.pairs) {
    text += "\n" + wrapped(pair_heading(of, pair), {}) + wrapped(pair_sum(pair), item);
    for (const ComparedFigure& figure : pair.figures) text += figure_lines(of, figure);
  }
  const std::vector<std::string> lacking = lacking_configurations(of);
  if (!lacking.empty()) text += "\n";
  for (const std::string& sentence : lacking) text += wrapped(sentence, {});
  return text + "\n" + wrapped(compared_caution(), {}) +
         wrapped(caution_line((*of.first->plan)->english), {});
}

}  // namespace berthwright

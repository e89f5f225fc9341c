#include <berthwright/write/outputs.h>

#include <algorithm>

#include <berthwright/solve/convert/drop_in.h>
#include <berthwright/view/words.h>

#include "view/effort_words.h"
#include "view/meanwhile_words.h"
#include "view/step_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

constexpr Indent under_step{"  ", "     "};

std::string conversion_lines(const Plan& plan, const Conversion& conversion) {
  std::string text = "\n" + wrapped(conversion_heading(conversion), {});
  for (std::size_t i = 0; i < conversion.steps.size(); ++i) {
    const std::string number = std::to_string(i + 1) + ". ";
    text += wrapped((number.size() < 4 ? " " : "") + number + step_sentence(plan, conversion.steps[i]),
                    under_step);
  }
  for (const Stuck& stuck : conversion.stuck) text += wrapped(stuck_sentence(plan, conversion, stuck), item);
  text += wrapped(conversion_bound(conversion), item);
  for (const std::string& told : bedding_sentences(plan, conversion)) text += wrapped(told, item);
  for (std::size_t i = 0; i < conversion.steps.size(); ++i)
    for (const std::string& asked : effort_sentences(plan, conversion.steps[i]))
      text += wrapped("Step " + std::to_string(i + 1) + ": " + asked, item);
  if (const std::string unknown = unknown_weights(plan, conversion); !unknown.empty())
    text += wrapped(unknown, item);
  for (const Meanwhile& one : conversion.meanwhile)
    text += wrapped(meanwhile_sentence(plan, conversion, one), item);
  return text;
}

std::string drop_in_lines(const Plan& plan, const std::vector<Conversion>& shown) {
  std::string text;
  std::vector<const Configuration*> told;
  for (const Conversion& conversion : shown) {
    if (std::ranges::find(told, conversion.to) != told.end()) continue;
    told.push_back(conversion.to);
    const Result<Arrangement> end = arranged(plan, *conversion.to);
    if (!end) continue;
    std::string lines;
    for (const DropIn& board : drop_ins(plan, *end)) {
      for (const DropIn::Direction& direction : board.directions)
        lines += wrapped(drop_in_sentence(plan, board, direction), item);
      lines += wrapped(held_sentence(plan, board), item);
    }
    if (!lines.empty())
      for (const std::string& leg : leg_sentences(plan, *end)) lines += wrapped(leg, item);
    if (!lines.empty()) text += "\n" + wrapped("Boards on their ledges, " + conversion.to->name, {}) + lines;
  }
  return text;
}

}  // namespace

std::string steps_text(const Plan& plan, const std::vector<Conversion>& shown) {
  std::string text = heading(plan);
  if (shown.empty()) text += "\nThe plan has no two configurations of which one could become the other.\n";
  for (const Conversion& conversion : shown) text += conversion_lines(plan, conversion);
  text += drop_in_lines(plan, shown) + "\n";
  return text + wrapped(moves_tried(), {}) + wrapped(looked_at_meanwhile(), {}) +
         wrapped(caution_line(plan->english), {});
}

}  // namespace berthwright

#include <berthwright/write/outputs.h>

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/split_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

constexpr Indent of_proposal{"  ", "     "};
constexpr Indent under_proposal{"     ", "       "};

std::string proposal_lines(const Plan& plan, const ProposedSplits& bay, std::size_t index,
                           const std::vector<std::string>& others) {
  const Split& split = bay.splits.best[index];
  std::string text =
      "\n" +
      wrapped(std::to_string(index + 1) + ". " + split_heading(plan, bay.splits.bay, split), of_proposal);
  text += wrapped(split_reasons(plan, split), under_proposal);
  const std::vector<CushionName> names = cushion_names(plan, bay.splits.bay, split, others);
  for (std::size_t i = 0; i < names.size(); ++i)
    text += wrapped(piece_sentence(plan, split.pieces[i], names[i]), under_proposal);
  if (index < bay.unmet.size()) {
    text += wrapped(bay.unmet[index].empty()
                        ? "Checked as a plan: nothing of beds, seats, support and room unmet."
                        : "Checked as a plan:",
                    under_proposal);
    for (const std::string& sentence : bay.unmet[index]) text += wrapped("- " + sentence, under_proposal);
  }
  return text;
}

}  // namespace

int exit_code(const std::vector<ProposedSplits>& bays) {
  if (bays.empty()) return 2;
  const bool all = std::ranges::none_of(
      bays, [](const ProposedSplits& bay) { return bay.splits.best.empty() || bay.splits.best.front().gap; });
  return all ? 0 : 1;
}

std::string split_text(const Plan& plan, const std::vector<ProposedSplits>& bays,
                       const std::vector<OffLevel>& off_level) {
  std::string text = heading(plan);
  if (bays.empty()) text += "\n" + wrapped(no_bay_sentence(), {});
  std::vector<std::string> others;
  for (const ProposedSplits& bay : bays) {
    text += "\n" + wrapped(bay_heading(plan, bay.splits.bay), {});
    if (bay.splits.best.empty() || bay.splits.best.front().gap)
      text += wrapped("Nothing closes exactly within these limits.", item);
    for (std::size_t i = 0; i < bay.splits.best.size(); ++i) text += proposal_lines(plan, bay, i, others);
    for (const SplitCure& cure : bay.splits.cures)
      text += wrapped(split_cure_sentence(plan, bay.splits.bay, cure), item);
    text += "\n" + wrapped(split_effort_sentence(bay.splits), item);
    add_ids(others, plan, bay.splits);
  }
  for (const OffLevel& off : off_level) text += "\n" + wrapped(off_level_sentence(plan, off), {});
  text += "\n";
  if (!bays.empty()) text += wrapped(split_limits_sentence(plan, bays.front().splits.limits), {});
  return text + wrapped(caution_line(plan->english), {});
}

}  // namespace berthwright

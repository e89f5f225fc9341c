#include <berthwright/write/outputs.h>

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/reuse_words.h"
#include "view/split_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {

int exit_code(const std::vector<BayReuse>& bays) {
  if (bays.empty()) return 2;
  return std::ranges::all_of(bays, [](const BayReuse& bay) { return bay.reuse.closes(); }) ? 0 : 1;
}

std::string reuse_text(const Plan& plan, const std::vector<BayReuse>& bays,
                       const std::vector<OffLevel>& off_level) {
  std::string text = heading(plan);
  if (bays.empty()) text += "\n" + wrapped(no_bay_sentence(), {});
  for (const BayReuse& of : bays) {
    text += "\n" + wrapped(bay_heading(plan, of.bay), {});
    text += wrapped(reuse_heading(plan, of.reuse), {});
    for (const std::string& sentence : relaid_sentences(plan, of.reuse)) text += wrapped(sentence, item);
    for (const std::string& sentence : shortfall_sentences(plan, of.reuse)) text += wrapped(sentence, {});
    text += "\n" + wrapped(reuse_effort_sentence(plan, of.reuse, of.limits), item);
  }
  for (const OffLevel& off : off_level) text += "\n" + wrapped(off_level_sentence(plan, off), {});
  return text + "\n" + wrapped(caution_line(plan->english), {});
}

}  // namespace berthwright

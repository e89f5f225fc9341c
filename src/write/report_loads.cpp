#include <berthwright/write/outputs.h>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/load_words.h"
#include "write/heading.h"
#include "write/wrap.h"

namespace berthwright {
namespace {

std::string load_part(const std::string& title, const std::vector<std::string>& sentences) {
  if (sentences.empty()) return {};
  std::string text = wrapped(title, item);
  for (const std::string& sentence : sentences) text += wrapped(sentence, {"    ", "      "});
  return text;
}

}  // namespace

std::string loads_text(const Plan& plan, const std::vector<Loads>& shown) {
  std::string text = heading(plan) + wrapped(std::string(loads_lead()), {});
  for (const Loads& loads : shown)
    text += "\n" + wrapped(when_of(*loads.configuration), {}) +
            load_part("Weight and balance", weight_sentences(plan, loads)) +
            load_part("Supply", supply_sentences(plan, loads)) +
            load_part("Warming", warm_up_sentences(plan, loads));
  text += "\n" + wrapped("What these figures suppose", {});
  for (const std::string& ground : load_grounds(plan, shown)) text += wrapped(ground, item);
  return text + "\n" + wrapped(caution_line(plan->english), {});
}

}  // namespace berthwright

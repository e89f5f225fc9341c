#include <berthwright/write/outputs.h>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "write/wrap.h"

namespace berthwright {
namespace {

std::string line(std::string_view label, const std::string& value) {
  return value.empty() ? std::string{} : wrapped(value, {label, "              "});
}

std::string kind_text(Source::Kind kind) {
  switch (kind) {
    case Source::Kind::published:
      return "published";
    case Source::Kind::maker:
      return "the maker's own figure";
    case Source::Kind::common_practice:
      return "common practice, no source";
    case Source::Kind::from_memory:
      return "a published figure quoted from memory, not re-read";
    case Source::Kind::own_choice:
      return "our own choice, no source";
  }
  throw std::logic_error("Source::Kind out of range");
}

}  // namespace

std::string explain_text(const Rule& rule, Unit own) {
  std::string text = rule.id.text() + "\n";
  text += line("  what:       ", rule.title);
  text += line("  weight:     ", std::string(word(term_of(rule.weight), English::american)));
  text += line("  measured:   ", rule.meaning);
  if (rule.limit) {
    const Rounding rounding = rule.at_least ? Rounding::up : Rounding::down;
    text += line("  asked:      ",
                 (rule.at_least ? "at least " : "at most ") + both(*rule.limit, own, {.rounding = rounding}));
  } else {
    text += line("  asked:      ", rule.asked.empty() ? "nothing: this rule only reports" : rule.asked);
  }
  if (rule.close_within > Length{})
    text += line("  close:      ", "met with less than " + both(rule.close_within, own) + " to spare");
  text += line("  source:     ", rule.source.text);
  text += line("  edition:    ", rule.source.edition);
  text += line("  read at:    ", rule.source.address);
  text += line("  standing:   ", kind_text(rule.source.kind));
  text += line("  caution:    ", rule.caution);
  return text;
}

std::string rules_text() {
  std::size_t widest = 0;
  for (const Rule& rule : all_rules()) widest = std::max(widest, rule.id.text().size());
  std::string text;
  for (const Rule& rule : all_rules()) {
    const std::string gap(widest + 2 - rule.id.text().size(), ' ');
    const std::string weight(word(term_of(rule.weight), English::american));
    text += rule.id.text() + gap + weight + std::string(13 - weight.size(), ' ') + rule.title + '\n';
  }
  return text;
}

}  // namespace berthwright

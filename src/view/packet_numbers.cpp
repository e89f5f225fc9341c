#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/load_bars.h"
#include "view/load_words.h"
#include "view/numbers_sheet.h"
#include "view/packet_parts.h"
#include "view/packet_words.h"
#include "view/small_view.h"

namespace berthwright {
namespace {

void add_sentences(PacketSection& section, std::vector<std::string> sentences) {
  if (!sentences.empty()) section.blocks.emplace_back(PacketList{std::move(sentences), false});
}

PacketViews bar_views(const Configuration& configuration, const std::vector<LoadBar>& bars) {
  const SmallBox box{telephone_width, height_of(bars, telephone_width), {}};
  Group group{"Bars: what is asked, and the figure", marks_of(bars, {{}, {box.width, box.height}}), 0};
  return {{small_sheet(name_of(configuration) + ", loads beside what is asked", box, 0, {std::move(group)})},
          {}};
}

}  // namespace

PacketSection numbers_section(const PacketMatter& of) {
  const Plan& plan = of.plan;
  PacketSection section{"numbers", word(PacketWord::numbers, plan->english), {}};
  std::vector<Loads> stated;
  for (const Loads& one : of.loads) {
    if (!states_loads(plan, one)) continue;
    if (stated.empty())
      for (const std::string& caution : numbers_cautions(plan))
        section.blocks.emplace_back(PacketText{caution, PacketText::Tone::alert});
    stated.push_back(one);
    section.blocks.emplace_back(PacketHeading{when_of(*one.configuration)});
    if (const std::vector<LoadBar> bars = load_bars(plan, one); !bars.empty())
      section.blocks.emplace_back(bar_views(*one.configuration, bars));
    add_sentences(section, weight_sentences(plan, one));
    add_sentences(section, supply_sentences(plan, one));
    add_sentences(section, warm_up_sentences(plan, one));
  }
  if (stated.empty())
    section.blocks.emplace_back(
        PacketText{word(PacketWord::no_numbers, plan->english), PacketText::Tone::plain});
  else
    add_sentences(section, load_grounds(plan, stated));
  return section;
}

}  // namespace berthwright

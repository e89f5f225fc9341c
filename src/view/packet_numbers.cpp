#include <algorithm>
#include <utility>

#include <berthwright/solve/open/road.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/load_bars.h"
#include "view/load_words.h"
#include "view/numbers_sheet.h"
#include "view/packet_parts.h"
#include "view/packet_views.h"
#include "view/packet_words.h"
#include "view/plan_notes.h"
#include "view/small_view.h"

namespace berthwright {
namespace {

constexpr PaperLength bar_margin = paper_mm(3);

/// What is said of weight, supply or warming in one configuration.
struct NumbersPart {
  std::string title;
  std::vector<LoadBar> bars{};
  PacketTable table{};
  std::vector<std::string> sentences{};
  bool is_empty() const { return sentences.empty(); }
  /// Bars show nothing that the table does not tell.
  bool says_as(const NumbersPart& other) const {
    return title == other.title && table.rows == other.table.rows && sentences == other.sentences;
  }
};

NumbersPart weight_part(const Plan& plan, const Loads& loads) {
  const English english = plan->english;
  NumbersPart part{word(PacketWord::balance, english), load_bars(plan, loads)};
  part.table.heads = {word(PacketWord::what, english), word(PacketWord::figure, english),
                      word(PacketWord::asked, english), word(PacketWord::result, english)};
  for (const LoadBar& bar : part.bars)
    part.table.rows.push_back({bar.name, bar.figures, bar.asked, bar.verdict});
  part.sentences = weight_remarks(plan, loads);
  return part;
}

NumbersPart supply_part(const Plan& plan, const Loads& loads) {
  const English english = plan->english;
  NumbersPart part{word(PacketWord::supply, english)};
  if (!loads.supply) return part;
  part.table.heads = {word(PacketWord::circuit, english), word(PacketWord::breaker, english),
                      word(PacketWord::hangs_on_it, english), word(PacketWord::result, english)};
  part.table.rows = circuit_cells(plan, *loads.supply);
  part.sentences = supply_remarks(plan, *loads.supply);
  return part;
}

std::vector<NumbersPart> parts_of(const Plan& plan, const Loads& loads) {
  return {weight_part(plan, loads),
          supply_part(plan, loads),
          {word(PacketWord::warming, plan->english), {}, {}, warm_up_sentences(plan, loads)}};
}

PacketViews bar_views(const Configuration& configuration, const std::vector<LoadBar>& bars) {
  const PaperLength width = telephone_width - bar_margin * 2;
  const SmallBox box{telephone_width, height_of(bars, width) + bar_margin * 2, {}};
  const std::vector<Group> groups{
      {"Bars: what is asked, and the figure",
       marks_of(bars, {{bar_margin, bar_margin}, {bar_margin + width, box.height - bar_margin}}), 0}};
  PacketViews views;
  views.keys = packet_keys(legend_notes(groups));
  views.views.push_back(small_sheet(name_of(configuration) + ", loads beside what is asked", box, 0, groups));
  return views;
}

void add_sentences(PacketSection& section, std::vector<std::string> sentences) {
  if (!sentences.empty()) section.blocks.emplace_back(PacketList{std::move(sentences), false});
}

void add_part(PacketSection& section, const Configuration& configuration, NumbersPart part) {
  section.blocks.emplace_back(PacketHeading{part.title, true});
  if (!part.bars.empty()) section.blocks.emplace_back(bar_views(configuration, part.bars));
  if (!part.table.rows.empty()) section.blocks.emplace_back(std::move(part.table));
  add_sentences(section, std::move(part.sentences));
}

/// The part of an earlier configuration that says the same; none: nothing does.
using ToldParts = std::vector<std::pair<const Configuration*, NumbersPart>>;
const Configuration* told_already(const ToldParts& told, const NumbersPart& part) {
  const auto found = std::ranges::find_if(told, [&](const auto& one) { return one.second.says_as(part); });
  return found == told.end() ? nullptr : found->first;
}

}  // namespace

std::vector<const Loads*> loads_day_first(std::span<const Loads> all) {
  std::vector<const Loads*> order;
  for (const Loads& loads : all) order.push_back(&loads);
  std::ranges::stable_sort(order, {}, [](const Loads* one) {
    return one->configuration->id.text() == "day" ? 0 : is_on_the_road(*one->configuration) ? 2 : 1;
  });
  return order;
}

PacketSection numbers_section(const PacketMatter& of) {
  const Plan& plan = of.plan;
  PacketSection section{"numbers", word(PacketWord::numbers, plan->english), {}};
  std::vector<Loads> stated;
  ToldParts told;
  for (const Loads* one : loads_day_first(of.loads)) {
    if (!states_loads(plan, *one)) continue;
    if (stated.empty()) {
      section.blocks.emplace_back(PacketText{std::string(loads_lead()), PacketText::Tone::quiet});
      for (const std::string& caution : numbers_cautions(plan))
        section.blocks.emplace_back(PacketText{caution, PacketText::Tone::alert});
    }
    stated.push_back(*one);
    section.blocks.emplace_back(PacketHeading{when_of(*one->configuration)});
    for (NumbersPart& part : parts_of(plan, *one)) {
      if (part.is_empty()) continue;
      if (const Configuration* as = told_already(told, part)) {
        section.blocks.emplace_back(
            PacketText{part.title + ": as " + small_first(when_of(*as)) + ".", PacketText::Tone::plain});
        continue;
      }
      told.emplace_back(one->configuration, part);
      add_part(section, *one->configuration, std::move(part));
    }
  }
  if (stated.empty())
    section.blocks.emplace_back(
        PacketText{word(PacketWord::no_numbers, plan->english), PacketText::Tone::plain});
  else
    add_sentences(section, load_grounds(plan, stated));
  return section;
}

}  // namespace berthwright

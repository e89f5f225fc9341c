#include "view/packet.h"

#include <algorithm>
#include <array>

#include <berthwright/view/words.h>

#include "view/alerts.h"
#include "view/called.h"
#include "view/meanwhile_words.h"
#include "view/open_loads.h"
#include "view/packet_parts.h"
#include "view/packet_words.h"
#include "view/step_words.h"

namespace berthwright {
namespace {

std::string whose_work(const Plan& plan) {
  const Title& title = plan->title;
  std::string text = title.shop;
  const auto add_words = [&](const std::string& words) {
    if (!words.empty()) text += (text.empty() ? "" : ", ") + words;
  };
  add_words(title.owner.empty() ? "" : "for " + title.owner);
  add_words(title.date);
  add_words(title.revision.empty() ? "" : "revision " + title.revision);
  return text;
}

// "A1: ", as the drawings call it; empty: none does.
std::string tag_in(const DrawnAll& drawn, const Finding& finding) {
  for (const DrawnConfiguration& one : drawn)
    if (const std::string tag = tag_of(one, finding); !tag.empty()) return tag + ": ";
  return {};
}

// What somebody who sleeps there must know though it is no alert: ways out, alarms, heat.
constexpr std::array to_know{std::string_view{"way.second"},  std::string_view{"way.not-stated"},
                             std::string_view{"way.aisle"},   std::string_view{"way.swing"},
                             std::string_view{"alarm.smoke"}, std::string_view{"alarm.co"},
                             std::string_view{"alarm.gas"},   std::string_view{"heat.data-plate-missing"},
                             std::string_view{"road.heater"}};

bool stands_in_front(const Finding& finding) {
  const bool asks = finding.status == Status::not_met || finding.status == Status::unknown;
  const std::string& rule = finding.rule.text();
  return asks &&
         (find_rule(rule)->weight == Weight::alert || std::ranges::find(to_know, rule) != to_know.end());
}

// The alerts and loads that are not met, or not known, in one list before everything else.
void add_alerts(const PacketMatter& of, const DrawnAll& drawn, Packet& packet) {
  PacketList list;
  bool any_drawn = false;
  for (const Finding& finding : of.answer.findings) {
    if (!stands_in_front(finding)) continue;
    // What the shop must do about the rest stands in the shop's packet.
    const bool alert = find_rule(finding.rule.text())->weight == Weight::alert;
    const std::string cure = alert ? cure_sentence(of.plan, finding) : std::string{};
    const std::string tag = tag_in(drawn, finding);
    any_drawn = any_drawn || !tag.empty();
    list.items.push_back(tag + (cure.empty() ? "" : cure + " ") + sentence(of.plan, finding));
  }
  for (std::string& sentence : open_load_sentences(of.plan, of.loads))
    list.items.push_back(std::move(sentence));
  if (list.items.empty()) return;
  PacketSection section{"alerts", word(PacketWord::alerts, packet.english), {}};
  if (any_drawn)
    section.blocks.emplace_back(
        PacketText{word(PacketWord::alerts_lead, packet.english), PacketText::Tone::quiet});
  section.blocks.emplace_back(std::move(list));
  packet.sections.push_back(std::move(section));
}

PacketSection handover_section(const PacketMatter& of) {
  const English english = of.plan->english;
  PacketSection section{"handover", word(PacketWord::handover, english), {}};
  if (of.plan->notes.empty())
    section.blocks.emplace_back(PacketText{word(PacketWord::no_notes, english), PacketText::Tone::quiet});
  else
    section.blocks.emplace_back(PacketList{of.plan->notes, false, true});
  return section;
}

}  // namespace

PacketSection figures_section(const PacketMatter& of) {
  const English english = of.plan->english;
  PacketSection section{"figures", word(PacketWord::figures, english), {}};
  section.blocks.emplace_back(PacketText{word(PacketWord::figures_lead, english), PacketText::Tone::quiet});
  constexpr std::array order{Status::not_met, Status::unknown, Status::close, Status::met};
  PacketTable table{
      {word(PacketWord::what, english), word(PacketWord::result, english), word(PacketWord::found, english)},
      {}};
  for (const Status status : order)
    for (const Finding& finding : of.answer.findings) {
      const Rule& rule = *find_rule(finding.rule.text());
      if (finding.status != status || rule.weight == Weight::information) continue;
      table.rows.push_back(
          {rule.title, std::string(word(term_of(status), english)), sentence(of.plan, finding)});
    }
  section.blocks.emplace_back(std::move(table));
  return section;
}

PacketSection caution_section(const PacketMatter& of) {
  const English english = of.plan->english;
  PacketList list{{std::string(deferral(english)), word(PacketWord::unknown_means, english)}, false};
  if (!of.conversions.empty()) {
    list.items.emplace_back(moves_tried());
    list.items.emplace_back(looked_at_meanwhile());
  }
  return {"cautions", word(PacketWord::cautions, english), {std::move(list)}};
}

const DrawnConfiguration& day_of(const DrawnAll& drawn) {
  const auto named = std::ranges::find_if(
      drawn, [](const DrawnConfiguration& one) { return one.answer->configuration->id.text() == "day"; });
  if (named != drawn.end()) return *named;
  const auto bedless = std::ranges::find_if(drawn, is_by_day);
  return bedless == drawn.end() ? drawn.front() : *bedless;
}

std::vector<PacketBlock> asking_blocks(const PacketMatter& of, const std::string& configuration,
                                       std::span<const std::string_view> rules) {
  std::vector<PacketBlock> blocks;
  for (const Finding& finding : of.answer.findings) {
    const std::string& rule = finding.rule.text();
    const bool asks = finding.status == Status::not_met || finding.status == Status::unknown;
    const Weight weight = find_rule(rule)->weight;
    if (!asks || weight == Weight::information || finding.configuration.text() != configuration) continue;
    if (std::ranges::none_of(rules, [&](std::string_view start) { return rule.starts_with(start); }))
      continue;
    const std::string cure = cure_sentence(of.plan, finding);
    blocks.emplace_back(
        PacketText{(cure.empty() ? "" : cure + " ") + sentence(of.plan, finding),
                   weight == Weight::alert ? PacketText::Tone::alert : PacketText::Tone::plain});
  }
  return blocks;
}

Packet titled_packet(const PacketMatter& of) {
  Packet packet;
  packet.english = of.plan->english;
  packet.title = of.plan->title.title;
  packet.under_title = whose_work(of.plan);
  packet.caution = std::string(caution_line(packet.english));
  return packet;
}

Packet buyer_packet(const PacketMatter& of) {
  DrawnAll drawn;
  for (const ConfigurationAnswer& one : of.answer.configurations)
    drawn.push_back({&of.plan, &one, of.answer.findings, {}});
  Packet packet = titled_packet(of);
  packet.lead = {{word(PacketWord::lead, of.plan), PacketText::Tone::plain},
                 {word(PacketWord::lead_plan, packet.english), PacketText::Tone::quiet},
                 {word(PacketWord::lead_file, packet.english), PacketText::Tone::quiet, true}};
  add_alerts(of, drawn, packet);
  for (PacketSection& section :
       std::array{glance_section(of, drawn), night_section(of, drawn), changing_section(of, drawn),
                  cushion_section(of, drawn), heat_section(of, drawn), way_section(of, drawn),
                  numbers_section(of), handover_section(of), figures_section(of), caution_section(of)})
    packet.sections.push_back(std::move(section));
  packet.sections.push_back({"signatures",
                             word(PacketWord::signatures, packet.english),
                             {PacketSignatures{{word(PacketWord::handed_over, packet.english),
                                                word(PacketWord::taken_over, packet.english)}}}});
  return packet;
}

}  // namespace berthwright

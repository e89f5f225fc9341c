#include <algorithm>
#include <array>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/heat_sheet.h"
#include "view/packet_parts.h"
#include "view/packet_views.h"
#include "view/packet_words.h"
#include "view/site_sheet.h"
#include "view/siting_words.h"
#include "view/told_figures.h"
#include "view/way_sheet.h"

namespace berthwright {
namespace {

constexpr std::array heat_beginnings{std::string_view{"heat."}, std::string_view{"cord."}};
constexpr std::array way_beginnings{std::string_view{"way."}};
constexpr std::array alarm_beginnings{std::string_view{"alarm."}};

void add_asking(PacketSection& section, const PacketMatter& of, const std::string& configuration,
                std::span<const std::string_view> rules) {
  for (PacketBlock& block : asking_blocks(of, configuration, rules))
    section.blocks.push_back(std::move(block));
}

// What a sheet warns of, once; its alerts have a place of their own.
void add_warnings(PacketSection& section, const PacketMatter& of, const std::vector<Note>& notes) {
  if (!section.blocks.empty()) return;
  for (const Note& note : notes) {
    if (note.words == deferral(of.plan->english)) return;
    if (note.kind == Note::Kind::caution)
      section.blocks.emplace_back(PacketText{note.words, PacketText::Tone::alert});
  }
}

std::vector<std::string> scope_sentences(const PacketMatter& of, const SitedScope& sited) {
  const Plan& plan = of.plan;
  const SiteScope& scope = *sited.scope;
  std::vector<std::string> told{asked_of(sited) + ": " + verdict_text(*sited.heater, scope) + "."};
  for (const std::string& free : free_texts(plan, scope)) told.push_back("Free, " + free + ".");
  for (const ShownPlace& shown : shown_places(plan, scope, Outlets::too))
    told.push_back(shown_text(sited, shown));
  if (scope.now)
    told.push_back("As the plan stands it: " + place_text(plan, scope.now->place) + ". There it " +
                   breaks_text(*scope.now) + ".");
  return told;
}

void add_before_bed(PacketSection& section, const PacketMatter& of) {
  PacketList list;
  for (const HeaterPlaces& heater : of.heaters)
    for (const Siting& siting : heater.sitings)
      for (const SiteScope& scope : siting.scopes) {
        const std::string words = stow_before_bed(of.plan, heater, scope);
        const std::string told = name_of(of.plan, heater.heater) + ", " +
                                 small_first(when_of(*scope.configurations.front())) + ": " + words;
        if (!words.empty() && std::ranges::find(list.items, told) == list.items.end())
          list.items.push_back(told);
      }
  for (const HeaterPlaces& heater : of.heaters)
    for (const StowFit& fit : heater.stowing) list.items.push_back(stow_sentence(of.plan, fit));
  if (list.items.empty()) return;
  section.blocks.emplace_back(PacketHeading{word(PacketWord::before_bed, of.plan->english)});
  section.blocks.emplace_back(std::move(list));
}

void add_sites(PacketSection& section, const PacketMatter& of, const DrawnAll& drawn) {
  const std::vector<SitedScope> scopes = sited_scopes(drawn, of.heaters);
  const HeaterPlaces* told = nullptr;
  for (const SitedScope& sited : scopes) {
    if (sited.heater != told) {
      section.blocks.emplace_back(PacketHeading{word(PacketWord::may_stand, of.plan->english) + ": " +
                                                name_of(of.plan, sited.heater->heater)});
      section.blocks.emplace_back(
          PacketText{asked_text(of.plan, sited.heater->heater), PacketText::Tone::plain});
      for (const std::string& lacking : lacking_sentences(of.plan, *sited.heater))
        section.blocks.emplace_back(PacketText{"Unknown: " + lacking, PacketText::Tone::alert});
      told = sited.heater;
    }
    section.blocks.emplace_back(quiet_views(*sited.in.front(), site_sheet(sited)));
    section.blocks.emplace_back(PacketList{scope_sentences(of, sited), false});
  }
}

void add_alarms(PacketSection& section, const PacketMatter& of) {
  section.blocks.emplace_back(PacketHeading{word(PacketWord::alarms, of.plan->english)});
  PacketList list;
  for (const AlarmPlace& place : of.answer.alarms)
    list.items.push_back(name_of(of.plan, place.alarm->id.text()) + " (" +
                         std::string(word(place.alarm->kind, of.plan->english)) + ")");
  if (list.items.empty())
    section.blocks.emplace_back(
        PacketText{word(PacketWord::no_alarm, of.plan->english), PacketText::Tone::alert});
  else
    section.blocks.emplace_back(std::move(list));
  add_asking(section, of, "", alarm_beginnings);
}

}  // namespace

PacketSection heat_section(const PacketMatter& of, const DrawnAll& drawn) {
  const English english = of.plan->english;
  PacketSection section{"heat", word(PacketWord::heat, english), {}};
  for (const DrawnConfiguration& one : drawn) {
    const std::optional<QuietSheet> sheet = heat_sheet(one);
    if (!sheet) continue;
    add_warnings(section, of, sheet->notes);
    section.blocks.emplace_back(PacketHeading{when_of(*one.answer->configuration)});
    section.blocks.emplace_back(quiet_views(one, *sheet));
    if (std::vector<std::string> nearest = nearest_to_heat(of.plan, *one.answer); !nearest.empty())
      section.blocks.emplace_back(PacketList{std::move(nearest), false});
    add_asking(section, of, one.answer->configuration->id.text(), heat_beginnings);
  }
  add_asking(section, of, "", heat_beginnings);
  add_before_bed(section, of);
  add_sites(section, of, drawn);
  if (section.blocks.empty())
    section.blocks.emplace_back(PacketText{word(PacketWord::no_heat, english), PacketText::Tone::plain});
  return section;
}

PacketSection way_section(const PacketMatter& of, const DrawnAll& drawn) {
  const English english = of.plan->english;
  PacketSection section{"ways", word(PacketWord::ways, english), {}};
  for (const DrawnConfiguration& one : drawn) {
    const std::optional<QuietSheet> sheet = way_sheet(one);
    if (!sheet) continue;
    add_warnings(section, of, sheet->notes);
    section.blocks.emplace_back(PacketHeading{when_of(*one.answer->configuration)});
    section.blocks.emplace_back(quiet_views(one, *sheet));
    PacketList list;
    for (const BedAnswer& bed : one.answer->beds)
      list.items.push_back(exits_sentence(of.plan, *one.answer, bed));
    if (!list.items.empty()) section.blocks.emplace_back(std::move(list));
    add_asking(section, of, one.answer->configuration->id.text(), way_beginnings);
    add_asking(section, of, one.answer->configuration->id.text(), alarm_beginnings);
  }
  if (section.blocks.empty())
    section.blocks.emplace_back(PacketText{word(PacketWord::no_ways, english), PacketText::Tone::alert});
  add_asking(section, of, "", way_beginnings);
  add_alarms(section, of);
  return section;
}

}  // namespace berthwright

#include "view/packet_sheets.h"

#include <algorithm>

#include "view/cushion_key.h"
#include "view/heat_sheet.h"
#include "view/numbers_sheet.h"
#include "view/packet_parts.h"
#include "view/packet_words.h"
#include "view/plan_page.h"
#include "view/site_sheet.h"
#include "view/storyboard.h"
#include "view/way_sheet.h"

namespace berthwright {
namespace {

Note packet_note(Note::Kind kind, std::string words) {
  return {kind, std::move(words), 0, false, std::nullopt};
}

/// Blocks as notes; drawings have sheets of their own.
struct BlockNotes {
  std::vector<Note>& notes;
  English english;

  void say(Note::Kind kind, std::string words) const { notes.push_back(packet_note(kind, std::move(words))); }
  void operator()(const PacketText& text) const {
    if (text.on_screen_alone) return;
    say(text.tone == PacketText::Tone::alert ? Note::Kind::caution : Note::Kind::text, text.words);
  }
  void operator()(const PacketHeading& heading) const { say(Note::Kind::heading, heading.words); }
  void operator()(const PacketStages& stages) const {
    say(Note::Kind::heading, stages.heading);
    say(Note::Kind::text, word(PacketWord::steps_on_sheets, english));
  }
  void operator()(const PacketViews&) const {
    say(Note::Kind::text, word(PacketWord::view_on_sheet, english));
  }
  void operator()(const PacketList& list) const {
    for (std::size_t i = 0; i < list.items.size(); ++i)
      say(Note::Kind::text, (list.numbered ? std::to_string(i + 1) + ". " : "• ") + list.items[i]);
  }
  void operator()(const PacketTable& table) const {
    for (const std::vector<std::string>& row : table.rows) {
      std::string words = row.front() + ".";
      for (std::size_t i = 1; i < row.size(); ++i)
        words += " " + table.heads[i] + ": " + row[i] + (row[i].ends_with('.') ? "" : ".");
      say(Note::Kind::text, std::move(words));
    }
  }
  void operator()(const PacketSignatures& signatures) const {
    for (const std::string& who : signatures.who) {
      say(Note::Kind::text, who + ":");
      say(Note::Kind::text, "……………………………………………………");
    }
  }
};

void add_drafts(std::vector<Draft>& drafts, std::vector<Draft> more) {
  for (Draft& draft : more) drafts.push_back(std::move(draft));
}

std::vector<Draft> dangers(const DrawnAll& drawn,
                           std::optional<QuietSheet> (*sheet_of)(const DrawnConfiguration&)) {
  std::vector<Draft> drafts;
  for (const DrawnConfiguration& one : drawn)
    if (const std::optional<QuietSheet> sheet = sheet_of(one)) add_drafts(drafts, quiet_drafts(one, *sheet));
  return drafts;
}

// The sheets that a section is about.
std::vector<Draft> sheets_about(const PacketMatter& of, const DrawnAll& drawn, const std::string& section) {
  std::vector<Draft> drafts;
  const DrawnConfiguration& day = day_of(drawn);
  if (section == "glance")
    for (const DrawnConfiguration& one : drawn)
      if (&one == &day || is_by_day(one)) add_drafts(drafts, plan_drafts(one));
  if (section == "night")
    for (const DrawnConfiguration& one : drawn)
      if (&one != &day && !one.answer->beds.empty()) add_drafts(drafts, plan_drafts(one));
  if (section == "changing")
    for (const Conversion& conversion : of.conversions)
      if (is_shown(conversion, drawn)) add_drafts(drafts, story_drafts(of.plan, conversion));
  if (section == "cushions" || section == "cut") drafts = key_drafts(of.plan, of.covers);
  if (section == "heat") {
    drafts = dangers(drawn, heat_sheet);
    for (const SitedScope& sited : sited_scopes(drawn, of.heaters))
      add_drafts(drafts, quiet_drafts(*sited.in.front(), site_sheet(sited)));
  }
  if (section == "ways") drafts = dangers(drawn, way_sheet);
  if (section == "numbers")
    for (const Loads* one : loads_day_first(of.loads))
      for (const DrawnConfiguration& in : drawn)
        if (in.answer->configuration == one->configuration) add_drafts(drafts, numbers_drafts(in, *one));
  return drafts;
}

}  // namespace

std::vector<Sheet> packet_sheets(const PacketMatter& of, const Packet& packet) {
  DrawnAll drawn;
  for (const ConfigurationAnswer& one : of.answer.configurations)
    drawn.push_back({&of.plan, &one, of.answer.findings, {}});
  std::vector<Note> notes;
  std::vector<Draft> drawings;
  for (const PacketText& text : packet.lead) BlockNotes{notes, packet.english}(text);
  for (const PacketSection& section : packet.sections) {
    notes.push_back(packet_note(Note::Kind::heading, section.heading));
    for (const PacketBlock& block : section.blocks) std::visit(BlockNotes{notes, packet.english}, block);
    add_drafts(drawings, sheets_about(of, drawn, section.id));
  }
  notes.push_back(packet_note(Note::Kind::caution, packet.caution));
  std::vector<Draft> drafts;
  add_text_pages(drafts, of.plan, {word(PacketWord::on_paper, packet.english), "packet", ""},
                 std::move(notes));
  add_drafts(drafts, std::move(drawings));
  return finished(of.plan, std::move(drafts));
}

}  // namespace berthwright

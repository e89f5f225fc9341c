#include <algorithm>
#include <map>
#include <stdexcept>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/cover_lines.h"
#include "view/cover_words.h"
#include "view/cushion_words.h"
#include "view/open_loads.h"
#include "view/packet_parts.h"
#include "view/packet_words.h"
#include "view/shape_words.h"

namespace berthwright {
namespace {

std::string_view kind_of_part(Piece::Kind kind) {
  switch (kind) {
    case Piece::Kind::cushion:
      return "cushion";
    case Piece::Kind::board:
      return "board";
    case Piece::Kind::table:
      return "table";
    case Piece::Kind::leg:
      return "leg";
    case Piece::Kind::bolster:
      return "bolster";
    case Piece::Kind::heater:
      return "heater";
  }
  throw std::logic_error("Piece::Kind out of range");
}

// Panel with its plies, else what the shop wrote, the foam's grade among it.
std::string material_or(const Piece& piece, PacketWord none, English english) {
  if (!piece.panel.empty())
    return piece.panel + (piece.plies ? ", " + std::to_string(*piece.plies) + " plies" : std::string{});
  return piece.material.empty() ? word(none, english) : piece.material;
}

PacketSection parts_section(const PacketMatter& of) {
  const English english = of.plan->english;
  PacketTable table{{word(PacketWord::part, english), word(PacketWord::kind, english),
                     word(PacketWord::finished_size, english), word(PacketWord::material, english),
                     word(PacketWord::weight, english)},
                    {}};
  const std::vector<std::string> letters = cushion_letters(of.plan);
  for (std::size_t i = 0; i < of.plan->pieces.size(); ++i) {
    const Piece& piece = of.plan->pieces[i];
    table.rows.push_back(
        {piece.is_soft()      ? lettered_name(letters[i], piece)
         : piece.name.empty() ? piece.id.text()
                              : piece.name,
         std::string(kind_of_part(piece.kind)),
         cut_size({piece.length, piece.width, piece.thickness}, of.plan->unit),
         material_or(piece, PacketWord::unknown_foam, english),
         piece.weight ? mass_text(*piece.weight, of.plan->unit) : word(PacketWord::unknown_weight, english)});
  }
  PacketSection section{"parts", word(PacketWord::parts, english), {}};
  section.blocks.emplace_back(std::move(table));
  return section;
}

PacketSection cut_section(const PacketMatter& of) {
  const English english = of.plan->english;
  PacketSection section{"cut", word(PacketWord::cut_sheets, english), {}};
  if (of.covers.empty()) {
    section.blocks.emplace_back(PacketText{word(PacketWord::no_cushion, english), PacketText::Tone::plain});
    return section;
  }
  const std::vector<std::string> letters = cover_letters(of.plan, of.covers);
  for (std::size_t i = 0; i < of.covers.size(); ++i) {
    const Cover& cover = of.covers[i];
    section.blocks.emplace_back(
        PacketHeading{lettered_name(letters[i], *cover.piece) + ": " + finished_size(of.plan, *cover.piece)});
    PacketList list;
    for (const CoverLine& line : lines_of_cover(of.plan, of.plan->sewing, cover))
      if (line.goes_on && !list.items.empty())
        list.items.back() += " " + line.said();
      else
        list.items.push_back(line.said());
    section.blocks.emplace_back(std::move(list));
  }
  PacketList rules;
  for (std::string& rule : cutting_rules(of.plan, of.plan->sewing)) rules.items.push_back(std::move(rule));
  section.blocks.emplace_back(std::move(rules));
  section.blocks.emplace_back(PacketText{std::string(cutting_notes()), PacketText::Tone::quiet});
  return section;
}

// "2 of 24 1/2" × …": equal sizes counted together, in the order in which they come.
std::string counted_sizes(const std::vector<std::string>& sizes) {
  std::string text;
  for (auto one = sizes.begin(); one != sizes.end(); ++one) {
    if (std::find(sizes.begin(), one, *one) != one) continue;
    text += (text.empty() ? "" : "; ") + std::to_string(std::count(sizes.begin(), sizes.end(), *one)) +
            " of " + *one;
  }
  return text;
}

// How long the zips are, finished; of a cover that is not reckoned "unknown".
std::vector<std::string> zips_of(const PacketMatter& of) {
  std::vector<std::string> sizes;
  for (const Cover& cover : of.covers) {
    if (cover.sewing.shape == CoverShape::board_backed) continue;
    sizes.push_back(cover.reckoned()
                        ? cut_size({cover.shaped ? cover.shaped->zip : cover.zip.finished}, of.plan->unit)
                        : word(PacketWord::unknown_sum, of.plan->english));
  }
  return sizes;
}

std::vector<std::string> batting_of(const PacketMatter& of) {
  const Unit own = of.plan->unit;
  std::vector<std::string> sizes;
  for (const Cover& cover : of.covers)
    if (cover.batting) {
      const Batting& batting = *cover.batting;
      sizes.insert(sizes.end(), 2, cut_size({batting.length, batting.width}, own));
      sizes.push_back(cut_size({batting.strip_length, batting.strip_width}, own));
    }
  return sizes;
}

void add_cushion_goods(const PacketMatter& of, PacketTable& table) {
  if (of.covers.empty()) return;
  const Unit own = of.plan->unit;
  const English english = of.plan->english;
  std::map<std::string, std::vector<std::string>> foam;
  Length cord;
  std::optional<Mass> all = Mass{};
  for (const Cover& cover : of.covers) {
    if (cover.welt) cord = cord + cover.welt->length;
    const bool weighed = cover.foam && cover.foam->weight;
    all = all && weighed ? std::optional(*all + *cover.foam->weight) : std::nullopt;
    if (cover.foam)
      foam[material_or(*cover.piece, PacketWord::foam_no_grade, english)].push_back(
          cut_size({cover.foam->length, cover.foam->width, cover.foam->thickness}, own));
  }
  for (const auto& [grade, sizes] : foam)
    table.rows.push_back({word(PacketWord::foam, english) + " " + grade, counted_sizes(sizes)});
  table.rows.push_back({word(PacketWord::all_foam, english),
                        all ? mass_text(*all, own) : word(PacketWord::unknown_sum, english)});
  table.rows.push_back({word(PacketWord::fabric, english), word(PacketWord::fabric_by_cut, english)});
  if (cord > Length{}) table.rows.push_back({word(PacketWord::welt_cord, english), cut_size({cord}, own)});
  const CoverTerms terms = cover_terms(english);
  if (const std::string zips = counted_sizes(zips_of(of)); !zips.empty())
    table.rows.push_back({capital_first(terms.zip), zips});
  if (const std::string batting = counted_sizes(batting_of(of)); !batting.empty())
    table.rows.push_back({capital_first(terms.batting), batting});
}

PacketSection purchase_section(const PacketMatter& of) {
  const English english = of.plan->english;
  PacketTable table{{word(PacketWord::what, english), word(PacketWord::how_much, english)}, {}};
  add_cushion_goods(of, table);
  std::map<std::string, std::vector<std::string>> boards;
  for (const Piece& piece : of.plan->pieces)
    if (piece.kind == Piece::Kind::board || piece.kind == Piece::Kind::table)
      boards[material_or(piece, PacketWord::board_no_panel, english)].push_back(
          cut_size({piece.length, piece.width, piece.thickness}, of.plan->unit));
  for (const auto& [panel, sizes] : boards) table.rows.push_back({panel, counted_sizes(sizes)});
  PacketSection section{"purchase", word(PacketWord::purchase, english), {}};
  section.blocks.emplace_back(PacketText{word(PacketWord::purchase_lead, english), PacketText::Tone::quiet});
  if (!of.covers.empty())
    section.blocks.emplace_back(
        PacketText{sewing_sentence(of.plan, of.plan->sewing), PacketText::Tone::plain});
  section.blocks.emplace_back(std::move(table));
  return section;
}

PacketSection open_section(const PacketMatter& of) {
  const English english = of.plan->english;
  PacketList list;
  for (const Finding& finding : of.answer.findings) {
    const bool asks = finding.status == Status::not_met || finding.status == Status::unknown;
    if (!asks || find_rule(finding.rule.text())->weight == Weight::information) continue;
    const std::string cure = cure_sentence(of.plan, finding);
    list.items.push_back((cure.empty() ? "" : cure + " ") + sentence(of.plan, finding));
  }
  for (std::string& sentence : open_load_sentences(of.plan, of.loads))
    list.items.push_back(std::move(sentence));
  PacketSection section{"open", word(PacketWord::open_items, english), {}};
  if (list.items.empty())
    section.blocks.emplace_back(PacketText{word(PacketWord::nothing_open, english), PacketText::Tone::plain});
  else
    section.blocks.emplace_back(std::move(list));
  return section;
}

}  // namespace

Packet shop_packet(const PacketMatter& of) {
  Packet packet = titled_packet(of);
  packet.lead = {{word(PacketWord::shop_lead, of.plan), PacketText::Tone::plain}};
  PacketSection templates{"templates", word(PacketWord::templates, packet.english), {}};
  templates.blocks.emplace_back(
      PacketText{word(PacketWord::templates_note, packet.english), PacketText::Tone::plain});
  packet.sections.push_back(open_section(of));
  packet.sections.push_back(parts_section(of));
  packet.sections.push_back(cut_section(of));
  packet.sections.push_back(purchase_section(of));
  packet.sections.push_back(std::move(templates));
  packet.sections.push_back(numbers_section(of));
  packet.sections.push_back(figures_section(of));
  packet.sections.push_back(caution_section(of));
  return packet;
}

}  // namespace berthwright

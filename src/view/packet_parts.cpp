#include "view/packet_parts.h"

#include <algorithm>
#include <array>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/cover_words.h"
#include "view/cushion_words.h"
#include "view/effort_words.h"
#include "view/packet_views.h"
#include "view/packet_words.h"
#include "view/plan_notes.h"
#include "view/small_view.h"
#include "view/step_words.h"
#include "view/told_figures.h"

namespace berthwright {
namespace {

constexpr std::array bed_rules{std::string_view{"bed."}, std::string_view{"bunk."},
                               std::string_view{"mattress."}};

void add_blocks(PacketSection& section, std::vector<PacketBlock> blocks) {
  for (PacketBlock& block : blocks) section.blocks.push_back(std::move(block));
}

void add_conversion(PacketSection& section, const PacketMatter& of, const Conversion& conversion,
                    bool shown) {
  const Plan& plan = of.plan;
  if (conversion.verdict != Conversion::Verdict::order) {
    section.blocks.emplace_back(PacketHeading{conversion_heading(conversion)});
    section.blocks.emplace_back(PacketText{conversion_bound(conversion), PacketText::Tone::alert});
    for (const Stuck& stuck : conversion.stuck)
      section.blocks.emplace_back(
          PacketText{stuck_sentence(plan, conversion, stuck), PacketText::Tone::alert});
    return;
  }
  if (shown && !conversion.steps.empty()) {
    section.blocks.emplace_back(
        PacketStages{conversion_heading(conversion), stage_drawings(plan, conversion, telephone_width)});
  } else {
    section.blocks.emplace_back(PacketHeading{conversion_heading(conversion)});
    PacketList steps{{}, true};
    for (const Step& step : conversion.steps) steps.items.push_back(step_sentence(plan, step));
    if (!steps.items.empty()) section.blocks.emplace_back(std::move(steps));
    if (conversion.steps.empty())
      section.blocks.emplace_back(
          PacketText{word(PacketWord::nothing_moves, plan->english), PacketText::Tone::plain});
  }
  for (std::string& told : bedding_sentences(plan, conversion))
    section.blocks.emplace_back(PacketText{std::move(told), PacketText::Tone::plain});
  if (std::string unknown = unknown_weights(plan, conversion); shown && !unknown.empty())
    section.blocks.emplace_back(PacketText{std::move(unknown), PacketText::Tone::quiet});
}

}  // namespace

bool is_by_day(const DrawnConfiguration& of) {
  return of.answer->beds.empty() && !is_on_the_road(*of.answer->configuration);
}

bool is_shown(const Conversion& conversion, const DrawnAll& drawn) {
  const bool no_beds =
      std::ranges::all_of(drawn, [](const DrawnConfiguration& one) { return one.answer->beds.empty(); });
  const Configuration* day = day_of(drawn).answer->configuration;
  const auto counts = [&](const Configuration* one) {
    return std::ranges::any_of(drawn, [&](const DrawnConfiguration& other) {
      if (other.answer->configuration != one) return false;
      return no_beds ? !is_on_the_road(*one) : !other.answer->beds.empty();
    });
  };
  return (conversion.from == day && counts(conversion.to)) ||
         (conversion.to == day && counts(conversion.from));
}

bool has_stages(const Conversion& conversion, const DrawnAll& drawn) {
  return is_shown(conversion, drawn) && conversion.verdict == Conversion::Verdict::order &&
         !conversion.steps.empty();
}

PacketSection glance_section(const PacketMatter& of, const DrawnAll& drawn) {
  PacketSection section{"glance", word(PacketWord::glance, of.plan), {}};
  const DrawnConfiguration& day = day_of(drawn);
  for (const DrawnConfiguration& one : drawn) {
    if (&one != &day && !is_by_day(one)) continue;
    section.blocks.emplace_back(PacketHeading{when_of(*one.answer->configuration)});
    section.blocks.emplace_back(glance_views(one));
  }
  return section;
}

PacketSection night_section(const PacketMatter& of, const DrawnAll& drawn) {
  PacketSection section{"night", word(PacketWord::night, of.plan->english), {}};
  for (const DrawnConfiguration& one : drawn) {
    if (one.answer->beds.empty()) continue;
    const Configuration& configuration = *one.answer->configuration;
    section.blocks.emplace_back(PacketHeading{when_of(configuration)});
    if (&one != &day_of(drawn)) section.blocks.emplace_back(glance_views(one));
    for (const BedAnswer& bed : one.answer->beds) {
      PacketList list{bed_sentences(of.plan, bed), false};
      if (bed.room.largest) list.items.push_back(fits_sentence(of.plan, bed.room));
      section.blocks.emplace_back(std::move(list));
    }
    add_blocks(section, asking_blocks(of, configuration.id.text(), bed_rules));
  }
  if (section.blocks.empty())
    section.blocks.emplace_back(
        PacketText{word(PacketWord::no_bed, of.plan->english), PacketText::Tone::plain});
  return section;
}

PacketSection changing_section(const PacketMatter& of, const DrawnAll& drawn) {
  const English english = of.plan->english;
  PacketSection section{"changing", word(PacketWord::changing, english), {}};
  if (of.conversions.empty()) {
    section.blocks.emplace_back(
        PacketText{word(PacketWord::one_configuration, english), PacketText::Tone::plain});
    return section;
  }
  if (std::ranges::any_of(of.conversions, [&](const Conversion& one) { return has_stages(one, drawn); })) {
    section.blocks.emplace_back(PacketText{word(PacketWord::change_hint, english), PacketText::Tone::quiet});
    section.blocks.emplace_back(
        PacketText{word(PacketWord::moving_hint, english), PacketText::Tone::quiet, true});
  }
  for (const Conversion& conversion : of.conversions)
    if (is_shown(conversion, drawn)) add_conversion(section, of, conversion, true);
  // Any other pair is gone through by way of the day.
  const Configuration* day = day_of(drawn).answer->configuration;
  for (const Conversion& conversion : of.conversions)
    if (!is_shown(conversion, drawn) && (conversion.from == day || conversion.to == day))
      add_conversion(section, of, conversion, false);
  for (const DrawnConfiguration& one : drawn) {
    PacketList list;
    for (const Note& note : road_notes(one))
      if (note.kind != Note::Kind::heading) list.items.push_back(note.words);
    if (list.items.empty()) continue;
    section.blocks.emplace_back(PacketHeading{word(PacketWord::before_driving, english)});
    section.blocks.emplace_back(std::move(list));
  }
  return section;
}

PacketSection cushion_section(const PacketMatter& of, const DrawnAll& drawn) {
  const English english = of.plan->english;
  PacketSection section{"cushions", word(PacketWord::cushions, english), {}};
  if (of.covers.empty()) {
    section.blocks.emplace_back(PacketText{word(PacketWord::no_cushion, english), PacketText::Tone::plain});
    return section;
  }
  PacketTable table{{word(PacketWord::cushion, english), word(PacketWord::finished_size, english),
                     word(PacketWord::where_it_lies, english), word(PacketWord::foam, english),
                     word(PacketWord::zip_side, english)},
                    {}};
  const std::vector<std::string> letters = cover_letters(of.plan, of.covers);
  for (std::size_t i = 0; i < of.covers.size(); ++i) {
    const Cover& cover = of.covers[i];
    const Piece& piece = *cover.piece;
    std::string lies;
    for (const DrawnConfiguration& one : drawn)
      if (!is_on_the_road(*one.answer->configuration))
        lies += (lies.empty() ? "" : " ") + cushion_place_sentence(of.plan, one.answer->arrangement, piece);
    const std::string up = up_sentence(cover);
    table.rows.push_back({lettered_name(letters[i], piece),
                          cut_size({piece.length, piece.width, piece.thickness}, of.plan->unit),
                          std::move(lies),
                          piece.material.empty() ? word(PacketWord::unknown_foam, english) : piece.material,
                          zip_sentence(of.plan, cover) + (up.empty() ? "" : " " + up)});
  }
  section.blocks.emplace_back(std::move(table));
  return section;
}

}  // namespace berthwright

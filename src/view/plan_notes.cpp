#include "view/plan_notes.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <stdexcept>

#include <berthwright/view/words.h>

#include "view/alerts.h"
#include "view/bed_marks.h"
#include "view/called.h"
#include "view/label_wishes.h"

namespace berthwright {
namespace {

void add_heading(std::vector<Note>& notes, const std::string& words) {
  notes.push_back({Note::Kind::heading, words, 0, false, std::nullopt});
}
void add_text(std::vector<Note>& notes, const std::string& words) {
  notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
}

std::string listed(const std::vector<std::string>& names) {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : "; ") + name;
  return out;
}

std::string sides_in_both(Length length, Length width, Unit own) {
  const Unit other = own == Unit::inch ? Unit::millimetre : Unit::inch;
  return sides_text(length, width, own, Rounding::down) + " (" +
         sides_text(length, width, other, Rounding::down) + ")";
}

std::string opening_words(Opening::Kind kind) {
  switch (kind) {
    case Opening::Kind::door:
      return "door";
    case Opening::Kind::window:
      return "window";
    case Opening::Kind::hatch:
      return "hatch";
  }
  throw std::logic_error("Opening::Kind out of range");
}

std::string swing_words(Opening::Swing swing) {
  switch (swing) {
    case Opening::Swing::out:
      return "opens out";
    case Opening::Swing::in:
      return "opens in";
    case Opening::Swing::slides:
      return "slides";
    case Opening::Swing::fixed:
      return "does not open";
  }
  throw std::logic_error("Opening::Swing out of range");
}

std::string hold_words(Hold hold) {
  switch (hold) {
    case Hold::lip:
      return "lip";
    case Hold::snap:
      return "snap";
    case Hold::hook_and_loop:
      return "hook and loop";
    case Hold::strap:
      return "strap";
    case Hold::block:
      return "block";
    case Hold::latch:
      return "latch";
    case Hold::hook:
      return "hook";
    case Hold::screws:
      return "screws";
  }
  throw std::logic_error("Hold out of range");
}

bool is_about(const Finding& finding, std::span<const std::string_view> rules) {
  return std::ranges::any_of(rules,
                             [&](std::string_view rule) { return finding.rule.text().starts_with(rule); });
}

struct LegendSign {
  Ink ink;
  std::string_view words;
};
constexpr std::array legend_signs{LegendSign{Ink::fixture, "fixed"},
                                  LegendSign{Ink::cushion, "cushion"},
                                  LegendSign{Ink::foam_dots, "cushion"},
                                  LegendSign{Ink::board, "board"},
                                  LegendSign{Ink::table, "table top"},
                                  LegendSign{Ink::appliance, "gives heat"},
                                  LegendSign{Ink::overhead, "hangs above"},
                                  LegendSign{Ink::alarm, "alarm"},
                                  LegendSign{Ink::bed_outline, "bed"},
                                  LegendSign{Ink::made_up, "bedding made up, hanging over"},
                                  LegendSign{Ink::sleeping_rectangle, "largest rectangle, drawn just inside"},
                                  LegendSign{Ink::off_level, "no mattress: off the bed's level"},
                                  LegendSign{Ink::heat_line, "distance to heat"},
                                  LegendSign{Ink::gap, "gap"},
                                  LegendSign{Ink::ridge, "ridge"},
                                  LegendSign{Ink::clash, "clash: space that two things need"},
                                  LegendSign{Ink::section_cut, "a section is cut here"},
                                  LegendSign{Ink::cut_foam, "cushion, cut"},
                                  LegendSign{Ink::cut_box, "hollow box, cut"},
                                  LegendSign{Ink::cut_board, "timber, board, cut"},
                                  LegendSign{Ink::cut_thin, "thin board, cut"},
                                  LegendSign{Ink::seen_behind, "stands behind"},
                                  LegendSign{Ink::person, "person, for scale"},
                                  LegendSign{Ink::hidden_person, "the same, hidden"},
                                  LegendSign{Ink::before_plane, "stands before the plane"},
                                  LegendSign{Ink::no_room, "person who does not fit"},
                                  LegendSign{Ink::quiet, "stands there"},
                                  LegendSign{Ink::quiet_overhead, "hangs above"},
                                  LegendSign{Ink::alert, "warning: gives heat"},
                                  LegendSign{Ink::zone_published, "nearer than the published distance"},
                                  LegendSign{Ink::zone_plate, "nearer than the data plate asks"},
                                  LegendSign{Ink::cord, "cord, over the floor"},
                                  LegendSign{Ink::sign_outlet, "outlet"},
                                  LegendSign{Ink::site_region, "the heater's corner may stand here"},
                                  LegendSign{Ink::site_taken, "the rule takes these places"},
                                  LegendSign{Ink::site_place, "the heater there, arrow at its front"},
                                  LegendSign{Ink::balance, "centre of gravity"},
                                  LegendSign{Ink::balance_area, "it lies anywhere in this"},
                                  LegendSign{Ink::chassis, "axle and drawbar, a mere line"},
                                  LegendSign{Ink::wheel, "wheel, not to scale"},
                                  LegendSign{Ink::coupling, "coupling, not to scale"},
                                  LegendSign{Ink::asked_range, "of a bar: what is asked"},
                                  LegendSign{Ink::figure_span, "of a bar: the figure; arrow: no end"},
                                  LegendSign{Ink::way_band, "widest way out, as wide as it is"},
                                  LegendSign{Ink::pinch, "where it is narrowest"},
                                  LegendSign{Ink::sign_exit, "opening to get out by"},
                                  LegendSign{Ink::sign_shut, "does not serve from here"},
                                  LegendSign{Ink::sign_alarm, "alarm"}};

}  // namespace

std::vector<Note> alert_notes(const DrawnConfiguration& of, std::span<const std::string_view> rules) {
  std::vector<Note> notes;
  std::map<std::string, std::string> cures;  // and the tag of the alert that told each first
  for (const Finding* alert : alerts_of(of)) {
    if (!is_about(*alert, rules)) continue;
    if (notes.empty()) notes.push_back({Note::Kind::alert, "Alerts", 0, false, std::nullopt});
    std::string words = tag_of(of, *alert) + " " +
                        std::string(word(term_of(alert->status), (*of.plan)->english)) + ": " +
                        sentence(*of.plan, *alert);
    const std::string cure = cure_sentence(*of.plan, *alert);
    const auto [first, fresh] = cures.emplace(cure, tag_of(of, *alert));
    if (!cure.empty()) words += fresh ? " " + cure : " Cure as " + first->second + ".";
    notes.push_back({Note::Kind::caution, words, 0, false, std::nullopt});
  }
  return notes;
}

std::vector<Note> told_notes(const DrawnConfiguration& of, const std::string& heading,
                             std::span<const std::string_view> rules, Told told) {
  std::vector<Note> notes;
  for (const Finding& finding : of.findings) {
    if (told == Told::not_met && finding.status == Status::met) continue;
    const bool here = finding.configuration == of.answer->configuration->id || finding.configuration.empty();
    const bool open = finding.status == Status::not_met || finding.status == Status::unknown;
    const bool alert = find_rule(finding.rule.text())->weight == Weight::alert;
    if (!here || (open && alert) || !is_about(finding, rules)) continue;
    if (notes.empty()) add_heading(notes, heading);
    const std::string status = finding.status == Status::met
                                   ? std::string{}
                                   : std::string(word(term_of(finding.status), (*of.plan)->english)) + ": ";
    const std::string cure = cure_sentence(*of.plan, finding);
    add_text(notes, status + sentence(*of.plan, finding) + (open && !cure.empty() ? " " + cure : ""));
  }
  return notes;
}

std::vector<Note> caution_notes(const DrawnConfiguration& of) {
  constexpr std::array all{std::string_view{}};
  std::vector<Note> notes = alert_notes(of, all);
  if (!notes.empty()) add_text(notes, "Every figure with its source: see the check.");
  if (!(*of.plan)->notes.empty()) add_heading(notes, "Notes of the plan");
  for (const std::string& note : (*of.plan)->notes) add_text(notes, note);
  return notes;
}

std::vector<Note> road_notes(const DrawnConfiguration& of) {
  std::vector<Note> notes;
  if (!is_on_the_road(*of.answer->configuration)) return notes;
  add_heading(notes, "Held on the road");
  std::map<Hold, std::vector<std::string>> held;
  for (const Piece& piece : (*of.plan)->pieces)
    if (piece.held_by) held[*piece.held_by].push_back(name_of(*of.plan, piece.id.text()));
  for (const Fixture& fixture : (*of.plan)->fixtures)
    for (const Leaf& leaf : fixture.leaves)
      if (leaf.held_by) held[*leaf.held_by].push_back(name_of(*of.plan, leaf.id.text()));
  for (const auto& [hold, names] : held)
    add_text(notes, "By " + hold_words(hold) + ": " + listed(names) + ".");
  const RoadHolds holds = holds_on_the_road(*of.plan);
  std::vector<std::string> loose;
  for (const auto& ids : {holds.loose, holds.on_edge, holds.heaters})
    for (const std::string& id : ids) loose.push_back(name_of(*of.plan, id));
  if (!loose.empty()) add_text(notes, "Not told: " + listed(loose) + ".");
  return notes;
}

std::vector<Note> bed_notes(const DrawnConfiguration& of) {
  std::vector<Note> notes;
  const Unit own = (*of.plan)->unit;
  for (const BedAnswer& answer : of.answer->beds) {
    if (notes.empty()) add_heading(notes, "Beds");
    std::string words = answer.bed->name.empty() ? answer.bed->id.text() : answer.bed->name;
    if (answer.mattress.closed.empty()) {
      add_text(notes, words + ": no surface to lie on.");
      continue;
    }
    const Rect box = answer.mattress.closed.bounds();
    words += ": " +
             sides_in_both(std::max(box.width(), box.height()), std::min(box.width(), box.height()), own) +
             in_parts(answer);
    if (answer.room.largest && !is_one_rectangle(answer))
      words += "; largest rectangle " +
               sides_in_both(answer.room.largest->length, answer.room.largest->width, own);
    words += "; lying area " + area_text(answer.room.area, own);
    words += "; sleeping height " + both(answer.mattress.level, own) + ".";
    std::vector<std::string> dropped;
    for (const PieceId& id : answer.mattress.dropped_out) dropped.push_back(name_of(*of.plan, id.text()));
    if (!dropped.empty() && !off_level(of, answer).empty())
      words += " Off its level and no part of it: " + listed(dropped) + ".";
    add_text(notes, words);
  }
  return notes;
}

std::vector<Note> opening_notes(const DrawnConfiguration& of) {
  std::vector<Note> notes;
  const Unit own = (*of.plan)->unit;
  for (const Opening& opening : (*of.plan)->openings) {
    if (notes.empty()) add_heading(notes, "Openings (clear width × height)");
    std::string words = tag_of(*of.plan, opening) + " " +
                        (opening.name.empty() ? opening_words(opening.kind) : opening.name) + ": " +
                        sides_text(opening.width, opening.height, own, Rounding::down);
    if (opening.kind != Opening::Kind::door || opening.sill > Length{})
      words += ", sill " + (own == Unit::inch ? imperial(opening.sill) : metric(opening.sill));
    words += ", " + swing_words(opening.swing);
    if (opening.escape) words += ", a way out";
    add_text(notes, words + ".");
  }
  return notes;
}

std::vector<Note> key_notes(const std::vector<PlacedLabel>& labels, const std::vector<LabelWish>& wishes) {
  std::vector<Note> notes;
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (labels[i].number == 0) continue;
    if (notes.empty()) add_heading(notes, "Key");
    const bool shown = !labels[i].wording.lines.empty();
    notes.push_back({Note::Kind::text,
                     shown ? wishes[i].key : wishes[i].key + " (not marked: " + wishes[i].place + ")",
                     labels[i].number, false, std::nullopt});
  }
  return notes;
}

std::vector<Note> absent_notes(const DrawnConfiguration& of, const std::vector<std::string>& hidden,
                               const std::vector<std::string>& untold) {
  std::vector<Note> notes;
  std::vector<std::string> stowed;
  for (const Pose& pose : of.answer->configuration->poses) {
    if (pose.manner != Pose::Manner::stowed) continue;
    std::string words = name_of(*of.plan, pose.piece.text());
    if (!pose.stowed_in.empty()) words += " (" + name_of(*of.plan, pose.stowed_in) + ")";
    stowed.push_back(words);
  }
  std::vector<std::string> outside;
  for (const Placed& placed : of.answer->arrangement.things)
    if (is_outside(*of.plan, placed)) outside.push_back(name_of(placed));
  if (!hidden.empty() || !stowed.empty() || !outside.empty() || !untold.empty())
    add_heading(notes, "Not on the drawing");
  if (!outside.empty()) add_text(notes, "Outside the room: " + listed(outside) + ".");
  if (!hidden.empty()) add_text(notes, "Beneath other things: " + listed(hidden) + ".");
  if (!stowed.empty()) add_text(notes, "Stowed: " + listed(stowed) + ".");
  for (const std::string& measure : untold) add_text(notes, measure);
  return notes;
}

std::vector<Note> legend_notes(const std::vector<Group>& groups) {
  std::set<Ink> used;
  for (const Group& group : groups)
    for (const Mark& mark : group.marks)
      if (const Path* path = std::get_if<Path>(&mark)) used.insert(path->ink);
  std::vector<Note> notes;
  for (const LegendSign& sign : legend_signs) {
    if (!used.contains(sign.ink) || (sign.ink == Ink::cushion && used.contains(Ink::foam_dots))) continue;
    if (notes.empty()) add_heading(notes, "Signs");
    notes.push_back({Note::Kind::text, std::string(sign.words), 0, false, sign.ink});
  }
  return notes;
}

}  // namespace berthwright

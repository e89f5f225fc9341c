#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "view/telling.h"

namespace berthwright {
namespace {

// " and Right ledge", or nothing.
std::string and_alike(const Plan& plan, Finding about, const Cure& cure) {
  about.subjects = cure.alike;
  std::string names;
  for (std::size_t i = 0; i < cure.alike.size(); ++i)
    names += (i + 1 == cure.alike.size() ? " and " : ", ") + Telling(plan, about).subject(i);
  return names;
}

// " on its right side".
std::string at_side(const Plan& plan, Wall side) {
  return " on its " + std::string(word(term_of(side), plan->english)) + " side";
}

// " away from Left seat": what is too near, where the finding names one other thing.
std::string to_where(const Plan& plan, const Finding& finding, const Cure& cure) {
  if (finding.rule.text() == "room.inside") return " into the room";
  Finding about = finding;
  std::erase(about.subjects, cure.subject);
  return about.subjects.size() == 1 ? " away from " + Telling(plan, about).subject(0) : " away";
}

// The figure that a rule lacks.
std::string stating_figure(const Finding& finding, const std::string& thing) {
  const std::string& rule = finding.rule.text();
  if (rule == "bed.bedding-locker" && finding.variant == "size of the bundle")
    return "Write the length, width and height of the bundled bedding of " + thing +
           " into the plan (bedding).";
  if (rule == "bed.bedding-locker") return "Write the clear inside of " + thing + " into the plan (inside).";
  if (rule == "bed.person-length") return "Write how tall " + thing + " is into the plan (stature).";
  if (rule == "way.opening") return "Write into the plan whether and how " + thing + " opens (opens).";
  if (rule == "way.swing")
    return "Write into the plan on which side the hinge of " + thing + " stands (hinge).";
  return "Write the length, width and place of " + thing + " into the plan (length, width, at).";
}

// What the plan leaves unsaid.
std::string stating(const Finding& finding, Cure::Kind kind, const std::string& thing) {
  switch (kind) {
    case Cure::Kind::state_plate:
      return "Write the distances of the maker's data plate of " + thing + " into the plan (data_plate).";
    case Cure::Kind::state_measure:
      return stating_figure(finding, thing);
    case Cure::Kind::state_cord:
      return "Measure the cord of " + thing + ", plug included, and write it into the plan (cord).";
    case Cure::Kind::state_faces:
      return "Write into the plan which way " + thing + " faces (faces).";
    case Cure::Kind::state_panel:
      return "Write into the plan what is stamped on " + thing +
             " (panel: 48/24, birch 12 mm and the like) and which way its face grain runs (grain).";
    case Cure::Kind::state_grain:
      return "Write into the plan which way the face grain of " + thing + " runs (grain).";
    case Cure::Kind::state_foam:
      return "Write the four-digit grades of the cushions of " + thing + " into the plan (foam).";
    default:
      throw std::logic_error("a cure that states nothing");
  }
}

std::string one_cure(const Plan& plan, const Finding& finding, const Cure& cure) {
  Finding about = finding;
  about.subjects = {cure.subject};
  const std::string thing = Telling(plan, about).subject(0);
  const std::string by = both(cure.by, plan->unit, {.rounding = Rounding::up});
  const std::string alike = and_alike(plan, about, cure);
  // A height to which a ledge is set is told exactly: boards are fitted to it.
  const std::string to = cure.to ? ", to " + exact_text(*cure.to, plan->unit) + " above the floor" : "";
  switch (cure.kind) {
    case Cure::Kind::raise:
      return "Raise " + thing + alike + " by " + by + to + ".";
    case Cure::Kind::lower:
      return "Lower " + thing + alike + " by " + by + to + ".";
    case Cure::Kind::move_apart:
      return "Move " + thing + to_where(plan, finding, cure) + " by " + by + ".";
    case Cure::Kind::widen:
      return "Make " + thing +
             (cure.side ? " broader by " + by + at_side(plan, *cure.side) : " larger by " + by) + ".";
    case Cure::Kind::lengthen:
      return "Make " + thing + " longer by " + by + ".";
    case Cure::Kind::broaden:
      return "Make " + thing + " wider by " + by + ".";
    case Cure::Kind::shorten:
      return cure.side ? "Take " + by + " off " + thing + at_side(plan, *cure.side) + "."
                       : "Make " + thing + " smaller by " + by + ".";
    case Cure::Kind::pad:
      return "Lay a filler of " + by + " under " + thing + ", or make it of foam that much thicker.";
    case Cure::Kind::bridge:
      return "Carry " + thing + " there by a board, or by slats at most " + by + " apart.";
    case Cure::Kind::bring_nearer:
      return "Bring " + thing + " nearer to its outlet by " + by + " of cord.";
    case Cure::Kind::stow_heater:
      return "Switch " + thing + " off, unplug it and stow it before the bed is made.";
    case Cure::Kind::state_plate:
    case Cure::Kind::state_measure:
    case Cure::Kind::state_cord:
    case Cure::Kind::state_faces:
    case Cure::Kind::state_panel:
    case Cure::Kind::state_grain:
    case Cure::Kind::state_foam:
      return stating(finding, cure.kind, thing);
    case Cure::Kind::real_thickness:
      return "Write what the panel really measures, " + exact_text(cure.by, plan->unit) +
             ", as the thickness of " + thing + ", or the panel it is really cut from.";
    case Cure::Kind::turn_grain:
      return "Cut " + thing + " so that its face grain runs along the free span.";
    case Cure::Kind::bear_between:
      return "Carry " + thing + " by a leg, rib or ledge so that no free span is longer than " +
             both(cure.by, plan->unit, {.rounding = Rounding::down}) +
             (cure.panel.empty() ? "." : ", or cut it from " + cure.panel + " with the grain the same way.");
    case Cure::Kind::add_guard_rail:
      return "Fit a guard rail whose top stands at least " + by + " above the mattress.";
  }
  throw std::logic_error("Cure::Kind out of range");
}

}  // namespace

std::string sentence(const Plan& plan, const Finding& finding) {
  for (const std::span<const Teller> tellers :
       {room_tellers(), support_tellers(), bed_tellers(), strength_tellers(), seat_tellers(), heat_tellers(),
        cord_tellers(), leaf_tellers(), way_tellers(), alarm_tellers()})
    for (const Teller& teller : tellers)
      if (teller.rule == finding.rule.text()) return teller.tell(Telling(plan, finding));
  throw std::logic_error("no sentence for " + finding.rule.text());
}

std::string cure_sentence(const Plan& plan, const Finding& finding) {
  if (!finding.cure) return {};
  std::string text = one_cure(plan, finding, *finding.cure);
  for (const Cure& next : finding.cure->then) text += " " + one_cure(plan, finding, next);
  return text;
}

}  // namespace berthwright

#include <algorithm>
#include <stdexcept>

#include <berthwright/exact/measure.h>

#include "view/called.h"
#include "view/cure_words.h"
#include "view/telling.h"

namespace berthwright {
namespace {

// " on its right side".
std::string at_side(const ToldCure& told) {
  return (told.several() ? " on their " : " on its ") +
         std::string(word(term_of(*told.cure.side), told.plan->english)) + " side";
}

// " toward the rear wall".
std::string toward(const ToldCure& told) {
  return " toward the " +
         std::string(word(term_of(told.cure.side.value_or(Wall::rear)), told.plan->english)) + " wall";
}

// " away from Left seat": what is too near, where the finding names one other thing.
std::string to_where(const ToldCure& told) {
  const std::string& rule = told.finding.rule.text();
  if (rule == "room.inside") return " into the room";
  if (rule.starts_with("way.")) return " away";
  std::vector<std::string> others = told.finding.subjects;
  std::erase(others, told.cure.subject);
  return others.size() == 1 ? " away from " + name_of(told.plan, others.front()) : " away";
}

// A height to which a ledge is set is told exactly: boards are fitted to it.
std::string to_height(const ToldCure& told) {
  return told.cure.to ? exact_text(*told.cure.to, told.plan->unit) + " above the floor" : std::string{};
}

bool has_guard_rail(const Plan& plan) {
  return std::ranges::any_of(
      plan->fixtures, [](const Fixture& fixture) { return fixture.kind == Fixture::Kind::guard_rail; });
}

// What stands on the floor is not lifted off it.
bool stands_on_the_floor(const ToldCure& told) {
  const Fixture* fixture = told.plan.fixture(told.cure.subject);
  return fixture != nullptr && fixture->solid.base() == Length{};
}

std::string raised_or_lowered(const ToldCure& told, bool up) {
  const std::string sill = told.finding.rule.text() == "way.sill" ? "the sill of " : "";
  const std::string to = to_height(told);
  const std::string what = stands_on_the_floor(told) ? "Make " + told.things() + (up ? " higher" : " lower")
                                                     : (up ? "Raise " : "Lower ") + sill + told.things();
  return what + " by " + told.by() + (to.empty() ? "" : ", to " + to) + ".";
}

std::string carried(const ToldCure& told) {
  const std::string& rule = told.finding.rule.text();
  const std::string where = rule == "support.rests"         ? ", on both sides of its middle"
                            : rule == "support.tipping"     ? ", up to its edges"
                            : rule == "support.two-heights" ? ", where it lies too low"
                                                            : ", and draw that (fixtures)";
  return "Carry " + told.thing() + " by a ledge, leg or bracket whose top is " + to_height(told) + where +
         ".";
}

std::string cushioned(const ToldCure& told) {
  const std::string& rule = told.finding.rule.text();
  if (rule == "bed.gap")
    return "Lay a cushion " + told.by() + " wide between the parts of " + told.thing() +
           ", carried by a board or by slats.";
  if (rule == "bed.no-cushion")
    return "Lay a cushion at least " + told.by() + " thick on " + told.thing() + ".";
  const bool wide = rule == "bed.berth-width" || rule == "bed.person-width";
  return "Lay a cushion at least " + told.by() + (wide ? " wide on " : " long on ") + told.thing() +
         ", carried all over.";
}

// What stands where nothing should: before an alarm, on the way from a bed, before a seat.
std::string kept_clear(const ToldCure& told) {
  const std::string& id = told.cure.subject;
  const std::string things = names_with_and(told.plan, told.cure.alike);
  if (told.plan.fixture(id) != nullptr)
    return "Keep " + told.by() + " free before " + told.thing() + ": take " + things +
           " farther off, or hang " + told.thing() + " elsewhere.";
  if (told.plan.bed(id) != nullptr)
    return things.empty() ? "Leave " + told.by() + " of floor free along an edge of " + told.thing() +
                                " and from there to a door; until then people climb over what stands there: "
                                "tell the buyer."
                          : "Keep " + told.by() + " of floor free from " + told.thing() +
                                " to a door: move or cut back " + things + ".";
  return "Keep " + told.by() + " free along the front of " + told.thing() + ", or at one of its ends" +
         (things.empty() ? "." : ": move or cut back " + things + ".");
}

std::string set_aside(const ToldCure& told) {
  const std::string& rule = told.finding.rule.text();
  const Piece* piece = told.plan.piece(told.cure.subject);
  if (piece != nullptr && piece->heat)
    return "Switch " + told.thing() + " off, unplug it, let it cool and stow it (stowed).";
  if (rule == "bed.laid-upon") return "Lay or stow " + told.thing() + " elsewhere than on the bed.";
  if (rule.starts_with("leaf.opens"))
    return "Take " + told.thing() + " out of the way before " +
           name_of(told.plan, told.finding.subjects.front()) + " is opened.";
  return "Take " + told.thing() + " out of the way, or stow it (stowed).";
}

std::string repacked(const ToldCure& told) {
  return "Make the bundle of bedding of " + told.thing() + " smaller by " + told.by() +
         " where it is too large" +
         (told.several() ? ", or keep it in " + names_with_and(told.plan, told.cure.alike) + " (kept_in)"
                         : "") +
         ".";
}

std::string enlarged(const ToldCure& told) {
  const std::string make = "Make " + told.things();
  switch (told.cure.kind) {
    case Cure::Kind::widen:
      return make +
             (told.cure.side ? " broader by " + told.by() + at_side(told) : " larger by " + told.by()) + ".";
    case Cure::Kind::lengthen:
      return make + " longer by " + told.by() + ".";
    case Cure::Kind::broaden:
      return make + " wider by " + told.by() + ".";
    case Cure::Kind::heighten:
      return make + " higher by " + told.by() + ".";
    case Cure::Kind::thicken:
      return make + " thicker by " + told.by() + ", or put foam or a board of that thickness behind " +
             (told.several() ? "them." : "it.");
    default:
      throw std::logic_error("a cure that enlarges nothing");
  }
}

// What the plan leaves unsaid.
std::string stated(const ToldCure& told) {
  const std::string thing = told.thing();
  switch (told.cure.kind) {
    case Cure::Kind::state_plate:
      return "Write the distances of the maker's data plate of " + thing + " into the plan (data_plate).";
    case Cure::Kind::state_measure:
      return stating_by_rule(told);
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

std::string moved_there(const ToldCure& told) {
  switch (told.cure.kind) {
    case Cure::Kind::raise:
      return raised_or_lowered(told, true);
    case Cure::Kind::lower:
      return raised_or_lowered(told, false);
    case Cure::Kind::move_apart:
      return "Move " + told.thing() + to_where(told) + " by " + told.by() +
             (told.finding.rule.text().starts_with("heat.")
                  ? ", clear of all else that burns, or leave it off."
                  : ".");
    case Cure::Kind::shift:
      return "Move " + told.thing() + " by " + told.by() + toward(told) + ".";
    default:
      throw std::logic_error("a cure that moves nothing");
  }
}

// What makes a thing smaller, or leaves more room under it.
std::string reduced(const ToldCure& told) {
  switch (told.cure.kind) {
    case Cure::Kind::shorten:
      return told.cure.side ? "Take " + told.by() + " off " + told.things() + at_side(told) + "."
                            : "Make " + told.things() + " smaller by " + told.by() + ".";
    case Cure::Kind::cut_down:
      return "Make " + told.things() + " less high by " + told.by() + ".";
    case Cure::Kind::raise_underside:
      return "Raise the underside of " + told.thing() + " by " + told.by() + ".";
    default:
      throw std::logic_error("a cure that makes nothing smaller");
  }
}

// What a board is cut from, and what carries it.
std::string boarded(const ToldCure& told) {
  const Cure& cure = told.cure;
  switch (cure.kind) {
    case Cure::Kind::real_thickness:
      return "Write what the panel really measures, " + exact_text(cure.by, told.plan->unit) +
             ", as the thickness of " + told.thing() + ", or the panel it is really cut from.";
    case Cure::Kind::turn_grain:
      return "Cut " + told.thing() + " so that its face grain runs along the free span.";
    case Cure::Kind::bear_between:
      return "Carry " + told.thing() + " by a leg, rib or ledge so that no free span is longer than " +
             both(cure.by, told.plan->unit, {.rounding = Rounding::down}) +
             (cure.panel.empty() ? "." : ", or cut it from " + cure.panel + " with the grain the same way.");
    default:
      throw std::logic_error("a cure of no board");
  }
}

}  // namespace

std::string ToldCure::thing() const { return name_of(plan, cure.subject); }

std::string ToldCure::things() const {
  std::vector<std::string> ids{cure.subject};
  ids.insert(ids.end(), cure.alike.begin(), cure.alike.end());
  return names_with_and(plan, ids);
}

std::string ToldCure::by() const { return both(cure.by, plan->unit, {.rounding = Rounding::up}); }

std::string told_cure(const Plan& plan, const Finding& finding, const Cure& cure) {
  const ToldCure told{plan, finding, cure};
  const std::string thing = told.thing();
  const std::string by = told.by();
  switch (cure.kind) {
    case Cure::Kind::raise:
    case Cure::Kind::lower:
    case Cure::Kind::move_apart:
    case Cure::Kind::shift:
      return moved_there(told);
    case Cure::Kind::widen:
    case Cure::Kind::lengthen:
    case Cure::Kind::broaden:
    case Cure::Kind::heighten:
    case Cure::Kind::thicken:
      return enlarged(told);
    case Cure::Kind::shorten:
    case Cure::Kind::cut_down:
    case Cure::Kind::raise_underside:
      return reduced(told);
    case Cure::Kind::pad:
      return "Lay a filler of " + by + " under " + thing + ", or make it of foam that much thicker" +
             (has_guard_rail(plan) ? "; a guard rail beside it must rise as much." : ".");
    case Cure::Kind::lay_cushion:
      return cushioned(told);
    case Cure::Kind::bridge:
      return "Carry " + thing + " there by a board, or by slats at most " + by + " apart.";
    case Cure::Kind::carry_at:
      return carried(told);
    case Cure::Kind::bring_nearer:
      return "Bring " + thing + " nearer to its outlet by " + by +
             " of cord, if its distances to bedding and cushions allow it: check again.";
    case Cure::Kind::set_aside:
      return set_aside(told);
    case Cure::Kind::keep_clear:
      return kept_clear(told);
    case Cure::Kind::stow_heater:
      return "Switch " + thing + " off, unplug it, let it cool and stow it before the bed is made.";
    case Cure::Kind::state_plate:
    case Cure::Kind::state_measure:
    case Cure::Kind::state_cord:
    case Cure::Kind::state_faces:
    case Cure::Kind::state_panel:
    case Cure::Kind::state_grain:
    case Cure::Kind::state_foam:
      return stated(told);
    case Cure::Kind::real_thickness:
    case Cure::Kind::turn_grain:
    case Cure::Kind::bear_between:
      return boarded(told);
    case Cure::Kind::add_guard_rail:
      return "Fit a guard rail whose top stands at least " + by + " above the mattress.";
    case Cure::Kind::rehang:
      return "Hang " + thing + at_side(told) + " (hinge), where nothing stands in its swing.";
    case Cure::Kind::repack:
      return repacked(told);
    case Cure::Kind::as_told:
      return doing_by_rule(told);
    case Cure::Kind::none:
      return nothing_by_rule(told);
  }
  throw std::logic_error("Cure::Kind out of range");
}

}  // namespace berthwright

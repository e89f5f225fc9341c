#include "view/siting_words.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

#include <berthwright/exact/measure.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/face_words.h"

namespace berthwright {
namespace {

const Rule& rule_of(SiteRule yardstick) {
  return *find_rule(yardstick == SiteRule::three_feet ? "heat.three-feet" : "heat.data-plate");
}

std::string at_least(const Plan& plan, Length length) {
  return "at least " + both(length, plan->unit, {.rounding = Rounding::up});
}

std::string source_of(const Plan& plan, SiteRule yardstick) {
  const Rule& rule = rule_of(yardstick);
  const Override* own = plan.override_of(rule);
  if (own == nullptr) return source_text(rule.source);
  return "the plan's own figure (" + own->reason + ") in place of " + source_text(rule.source);
}

std::string rule_text(SiteRule rule) {
  switch (rule) {
    case SiteRule::room:
      return "the walls and the roof";
    case SiteRule::solids:
      return "what stands there";
    case SiteRule::swings:
      return "the swing of doors, drawers and lids";
    case SiteRule::walkway:
      return "the way out";
    case SiteRule::cord:
      return "the reach of its own cord";
    case SiteRule::three_feet:
      return "the published distance";
    case SiteRule::data_plate:
      return "the maker's distances";
  }
  throw std::logic_error("SiteRule out of range");
}

const DataPlate* plate_of_heater(const Plan& plan, const std::string& id) {
  const Piece* piece = plan.piece(id);
  const Fixture* fixture = plan.fixture(id);
  const std::optional<HeatSource>& heat = piece != nullptr ? piece->heat : fixture->heat;
  return heat && heat->plate ? &*heat->plate : nullptr;
}

std::vector<std::pair<std::string, std::optional<Length>>> faces_of(const DataPlate& plate) {
  return {{"front", plate.front}, {"back", plate.back}, {"sides", plate.sides}, {"top", plate.top}};
}

// "front 36", back 6" and top 24" (the maker's data plate…)"; empty where the plan gives none.
std::string faces_text(const Plan& plan, const std::string& source) {
  const DataPlate* plate = plate_of_heater(plan, source);
  if (plate == nullptr) return {};
  std::vector<std::string> faces;
  for (const auto& [face, asked] : faces_of(*plate))
    if (asked)
      faces.push_back(face + " " + both(*asked, plan->unit, {.rounding = Rounding::up, .feet = false}));
  if (faces.empty()) return {};
  return listed_with_and(faces) + " (" + source_of(plan, SiteRule::data_plate) + ")";
}

// "the left", "the front or the rear", "any side".
std::string ways_text(const std::vector<std::string>& ways) {
  if (ways.size() == 4) return "any side";
  std::string text;
  for (const std::string& way : ways) text += (text.empty() ? "the " : " or the ") + way;
  return text;
}

std::string sides_text(const Plan& plan, const std::array<Length, 3>& lengths, Rounding rounding) {
  const LengthStyle style{.rounding = rounding, .feet = false};
  return both(lengths[0], plan->unit, style) + " along, " + both(lengths[1], plan->unit, style) +
         " across and " + both(lengths[2], plan->unit, style) + " up";
}

// Of what a place lacks, the sides on which it lacks something.
std::string short_sides_text(const Plan& plan, const std::array<Length, 3>& clearance) {
  constexpr std::array<std::string_view, 3> sides{" along", " across", " up"};
  std::vector<std::string> missing;
  for (std::size_t i = 0; i < sides.size(); ++i)
    if (clearance[i] < Length{})
      missing.push_back(both(-clearance[i], plan->unit, {.rounding = Rounding::up, .feet = false}) +
                        std::string(sides[i]));
  return listed_with_and(missing);
}

}  // namespace

std::string_view word(SiteRule rule) {
  switch (rule) {
    case SiteRule::room:
      return "room";
    case SiteRule::solids:
      return "solids";
    case SiteRule::swings:
      return "swings";
    case SiteRule::walkway:
      return "walkway";
    case SiteRule::cord:
      return "cord";
    case SiteRule::three_feet:
      return "three feet";
    case SiteRule::data_plate:
      return "data plate";
  }
  throw std::logic_error("SiteRule out of range");
}

std::string place_text(const Plan& plan, const SitePlace& place) {
  return "its nearest sides " + both(place.box.low.x, plan->unit) + " from the front wall and " +
         both(place.box.low.y, plan->unit) + " from the left wall, looking to the " +
         std::string(word(term_of(place.faces), plan->english));
}

std::string rules_text(std::span<const SiteRule> rules) {
  std::vector<std::string> words;
  for (const SiteRule rule : rules) words.push_back(rule_text(rule));
  return listed_with_and(words);
}

std::string margin_text(const Plan& plan, const SiteMargin& margin) {
  const HeatDistance& to = margin.distance;
  const bool of_bed = to.kind == HeatDistance::Kind::bed;
  const bool published = margin.yardstick == SiteRule::three_feet;
  std::string text = both(margin.asked + margin.margin, plan->unit, {.rounding = Rounding::down}) + " from " +
                     name_of(plan, to.nearest_to) +
                     (!of_bed      ? ""
                      : to.made_up ? " (made up)"
                                   : " (bare)");
  text +=
      published ? "; published distance " : ", " + before_faces(to.plate_faces) + ", where its maker asks ";
  text += both(margin.asked, plan->unit, {.rounding = Rounding::up});
  if (margin.margin < Length{})
    return text + ", short by " + both(-margin.margin, plan->unit, {.rounding = Rounding::up});
  return text + ", " + both(margin.margin, plan->unit, {.rounding = Rounding::down}) + " to spare";
}

// Rounded inward, so that none of the places told lies outside of the region.
std::vector<std::string> free_texts(const Plan& plan, const SiteScope& scope) {
  const auto between = [&](Length low, Length high) {
    return both(low, plan->unit, {.rounding = Rounding::up}) + " to " +
           both(high, plan->unit, {.rounding = Rounding::down});
  };
  std::vector<std::string> texts;
  std::vector<const Region*> told;
  for (const SiteRegions& regions : scope.ways) {
    const auto same = [&](const Region* region) { return *region == regions.free; };
    if (regions.free.empty() || std::ranges::any_of(told, same)) continue;
    told.push_back(&regions.free);
    std::vector<std::string> ways;
    for (const SiteRegions& other : scope.ways)
      if (other.free == regions.free) ways.emplace_back(word(term_of(other.faces), plan->english));
    const Rect bounds = regions.free.bounds();
    texts.push_back("looking to " + ways_text(ways) + ": its nearest sides " +
                    between(bounds.low.x, bounds.high.x) + " from the front wall and " +
                    between(bounds.low.y, bounds.high.y) +
                    " from the left wall (outermost places of a region of " +
                    area_text(regions.free.area(), plan->unit) + ")");
  }
  return texts;
}

std::string asked_text(const Plan& plan, const std::string& heater) {
  const Piece* piece = plan.piece(heater);
  const Fixture* fixture = plan.fixture(heater);
  const Rect bounds =
      piece != nullptr ? Rect{{}, {piece->length, piece->width}} : fixture->solid.outline().bounds();
  const Length height = piece != nullptr ? piece->thickness : fixture->solid.height();
  const LengthStyle plain{.feet = false};
  std::string text = "Where " + name_of(plan, heater) + " may stand, " +
                     quantity_text(Sides{bounds.width(), bounds.height()}, plan->unit, Rounding::nearest) +
                     " in plan and " + both(height, plan->unit, plain) +
                     " high. Asked all round: " + published_text(plan) + ".";
  const std::string faces = faces_text(plan, heater);
  if (!faces.empty()) text += " By its data plate: " + faces + ".";
  return text +
         " Walls, cabinets and boards were counted as what burns only where the plan says so (burns): keep "
         "the "
         "maker's distances to them as well, above all before the front.";
}

std::vector<std::string> missing_faces(const Plan& plan, const std::string& source) {
  std::vector<std::string> missing;
  if (const DataPlate* plate = plate_of_heater(plan, source))
    for (const auto& [face, asked] : faces_of(*plate))
      if (!asked) missing.push_back(face);
  return missing;
}

std::string published_text(const Plan& plan) {
  return at_least(plan, plan.limit(rule_of(SiteRule::three_feet))) + " to what can burn (" +
         source_of(plan, SiteRule::three_feet) + ")";
}

std::string plate_text(const Plan& plan, const std::string& source) {
  const std::string faces = faces_text(plan, source);
  if (faces.empty()) return "unknown, the plan does not give it; nothing is drawn for it.";
  const std::vector<std::string> missing = missing_faces(plan, source);
  return faces + (missing.empty()
                      ? "."
                      : "; unknown, since the plan does not give it: " + listed_with_and(missing) + ".");
}

std::string configurations_text(const SiteScope& scope) {
  std::vector<std::string> names;
  for (const Configuration* one : scope.configurations) names.push_back(one->name);
  return listed_with_and(names);
}

std::string verdict_text(const HeaterPlaces& heater, const SiteScope& scope) {
  if (scope.has_place())
    return heater.not_compared.empty() ? "places that keep every rule"
                                       : "places that keep every rule that could be compared";
  if (!scope.reliefs.front().best) return "no place: the heater is larger than the room";
  std::string aside;
  for (const SiteRelief& relief : scope.reliefs)
    aside += (aside.empty() ? "" : ", or ") + rules_text(relief.rules);
  return "no place is left unless one sets aside " + aside;
}

std::string stow_before_bed(const Plan& plan, const HeaterPlaces& heater, const SiteScope& scope) {
  const bool has_bed = std::ranges::any_of(plan->beds, [&](const Bed& bed) {
    return std::ranges::any_of(scope.configurations,
                               [&](const Configuration* one) { return one->id == bed.configuration; });
  });
  if (scope.has_place() || !has_bed || plan.piece(heater.heater) == nullptr) return {};
  return "switch it off, unplug it, let it cool and stow it before the bed is made.";
}

std::string breaks_text(const StandsNow& now) {
  return now.breaks.empty() ? "keeps every rule that could be compared"
                            : "does not keep " + rules_text(now.breaks);
}

std::string surface_text(const Plan& plan, const std::string& stands_on) {
  if (stands_on.empty()) return "As high as it is built in";
  return stands_on == "floor" ? "On the floor" : "On " + name_of(plan, stands_on);
}

std::string stow_sentence(const Plan& plan, const StowFit& fit) {
  std::string text = name_of(plan, fit.place);
  if (!fit.stowed_in.empty()) {
    std::vector<std::string> names;
    for (const std::string& id : fit.stowed_in) names.push_back(plan.configuration(id)->name);
    text += " (the plan stows it here: " + listed_with_and(names) + ")";
  }
  if (!fit.inside) return text + ": the plan does not give its clear inside, so whether it fits is unknown.";
  const std::array<Length, 3> laid{fit.laid.along, fit.laid.across, fit.laid.up};
  if (!fit.fits())
    return text + ": it does not fit, however it is laid; nearest with " +
           sides_text(plan, laid, Rounding::nearest) + ", short by " + short_sides_text(plan, fit.clearance) +
           ".";
  text += ": the heater fits, once cold, laid with " + sides_text(plan, laid, Rounding::nearest) +
          "; clear by " + sides_text(plan, fit.clearance, Rounding::down) + ".";
  if (!fit.through.empty()) text += " It passes " + names_with_and(plan, fit.through) + ".";
  if (!fit.too_small.empty())
    text += " It does not pass " + names_with_and(plan, fit.too_small) + ", which is too small for it.";
  return text;
}

std::string outlets_heading(const Plan& plan, const std::string& heater) {
  const Cord& cord = *plan.piece(heater)->cord;
  return "Outlets and its own cord of " + both(cord.length, plan->unit, {.rounding = Rounding::down}) + " (" +
         source_text(find_rule("cord.reach")->source) + ")";
}

std::string run_text(const Plan& plan, const std::string& heater, const CordRun& run) {
  const Length cord = plan.piece(heater)->cord->length;
  const std::string by = run.blocked_by.empty() ? "" : " (" + name_of(plan, run.blocked_by) + ")";
  switch (run.end) {
    case CordRun::End::shut_in:
      return "something stands close before the side where the cord comes out" + by;
    case CordRun::End::shut_out:
      return "no free floor lies below the face of the outlet" + by;
    case CordRun::End::no_way:
      return "no way leads to it off the way out and from under bedding";
    case CordRun::End::reached:
      break;
  }
  const std::string needs =
      "the cord must be " + both(run.length, plan->unit, {.rounding = Rounding::up}) + " long";
  return run.length <= cord
             ? needs
             : needs + ", short by " + both(run.length - cord, plan->unit, {.rounding = Rounding::up});
}

std::vector<std::string> lacking_sentences(const Plan& plan, const HeaterPlaces& heater) {
  std::vector<std::string> sentences;
  if (std::ranges::find(heater.not_compared, SiteRule::cord) != heater.not_compared.end())
    sentences.push_back(plan.piece(heater.heater)->cord
                            ? "the plan shows no outlet, so the reach of its cord is not compared."
                            : "the plan does not give the length of its cord, so its reach is not compared.");
  const DataPlate* plate = plate_of_heater(plan, heater.heater);
  if (plate == nullptr) {
    sentences.emplace_back(
        "the plan does not give its data plate, so the maker's distances are not compared.");
    return sentences;
  }
  const std::vector<std::string> missing = missing_faces(plan, heater.heater);
  if (!missing.empty())
    sentences.push_back("its data plate in the plan does not give " + listed_with_and(missing) +
                        ", so nothing is compared there.");
  return sentences;
}

}  // namespace berthwright

#include <berthwright/view/words.h>

#include <array>
#include <stdexcept>

#include <berthwright/exact/measure.h>

namespace berthwright {
namespace {

/// What a sentence may draw on: the finding, the plan's names for its subjects, numbers rounded the careful
/// way.
class Telling {
 public:
  Telling(const Plan& plan, const Finding& finding)
      : plan_(plan), finding_(finding), rule_(find_rule(finding.rule.text())) {
    if (rule_ == nullptr) throw std::logic_error("a finding of an unknown rule: " + finding.rule.text());
  }

  /// The name the plan gives to the `index`-th subject, the id where it gives none.
  std::string subject(std::size_t index) const {
    return index < finding_.subjects.size() ? named(finding_.subjects[index]) : "something";
  }
  std::string bed() const {
    const Bed* bed = plan_.bed(finding_.bed.text());
    return bed == nullptr ? "the bed" : bed->name;
  }
  /// "In night: ", or nothing where the finding holds for the trailer.
  std::string when() const {
    const Configuration* configuration = plan_.configuration(finding_.configuration.text());
    if (configuration == nullptr) return {};
    const std::string& id = configuration->id.text();
    return (id == "day" || id == "night" ? "By " : "In ") + configuration->name + ", ";
  }
  std::string measured() const {
    return finding_.measured ? quantity_text(*finding_.measured, plan_->unit, careful()) : "not known";
  }
  /// "at least 3' 0\" (914.4 mm) (CPSC …)", with the plan's own number and reason where it has one.
  std::string demand() const {
    if (!finding_.compared) return "no figure";
    const Rounding against = rule_->at_least ? Rounding::up : Rounding::down;
    std::string text = rule_->at_least ? "at least " : "at most ";
    text += quantity_text(*finding_.compared, plan_->unit, against);
    if (!finding_.override_reason.empty())
      return text + ", the plan's own figure (" + finding_.override_reason + ") in place of " +
             source_text(finding_.source);
    return text + " (" + source_text(finding_.source) + ")";
  }
  /// "; short by 2 in", "; over by …", or nothing when it is met.
  std::string shortfall() const {
    if (!finding_.margin || *finding_.margin >= Length{}) return {};
    const std::string by = both(-*finding_.margin, plan_->unit, {.rounding = Rounding::up});
    return rule_->at_least ? "; short by " + by : "; over by " + by;
  }
  std::string compared() const { return "asked: " + demand() + shortfall(); }
  /// The demand where it is the plan's own; that nothing may stick out needs no number.
  std::string own_figure() const {
    return finding_.override_reason.empty() ? std::string{} : "; " + compared();
  }
  const std::string& variant() const { return finding_.variant; }
  /// The width that `SleepingRoom::longest` has.
  std::string berth() const { return both(24_in, plan_->unit, {.feet = false}); }
  std::string source() const { return source_text(finding_.source); }
  bool is_negative() const {
    const auto* length = finding_.measured ? std::get_if<Length>(&*finding_.measured) : nullptr;
    return length != nullptr && *length < Length{};
  }
  /// The size of a negative measure, rounded up.
  std::string magnitude() const {
    return both(-std::get<Length>(*finding_.measured), plan_->unit, {.rounding = Rounding::up});
  }
  bool is_measured() const { return finding_.measured.has_value(); }
  Status status() const { return finding_.status; }
  bool has_subject(std::size_t index) const { return index < finding_.subjects.size(); }
  std::string place() const {
    if (finding_.where.empty()) return {};
    const Point3& at = finding_.where.front();
    return ", " + both(at.plan.x, plan_->unit) + " from the front and " + both(at.plan.y, plan_->unit) +
           " from the left wall";
  }

 private:
  Rounding careful() const { return rule_->at_least ? Rounding::down : Rounding::up; }
  std::string named(const std::string& id) const {
    if (const Fixture* fixture = plan_.fixture(id)) return fixture->name;
    if (const Piece* piece = plan_.piece(id)) return piece->name;
    if (const Bed* bed = plan_.bed(id)) return bed->name;
    return id;
  }

  const Plan& plan_;
  const Finding& finding_;
  const Rule* rule_;
};

std::string inside(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "everything stands inside the room.";
  if (t.status() == Status::close)
    return t.when() + t.subject(0) + " presses into a wall or the roof by " + t.measured() + ", as foam may" +
           t.own_figure() + ".";
  return t.when() + t.subject(0) + " reaches outside the room by " + t.measured() + t.place() +
         t.own_figure() + ".";
}

std::string overlap(const Telling& t) {
  if (!t.has_subject(0)) return t.when() + "no piece needs the space of another thing.";
  if (t.status() == Status::close)
    return t.when() + t.subject(0) + " and " + t.subject(1) + " press into each other by " + t.measured() +
           ", as foam may" + t.own_figure() + ".";
  return t.when() + t.subject(0) + " and " + t.subject(1) + " need the same space, " + t.measured() +
         " deep" + t.place() + t.own_figure() + ".";
}

std::string gap(const Telling& t) {
  if (t.variant() == "parts")
    return t.bed() + " lies in parts that are " + t.measured() + " apart; " + t.compared() + ".";
  if (!t.variant().empty())
    return t.bed() + " has an opening of " + t.measured() + " between " + t.variant() + t.place() +
           "; nothing is asked of such a one.";
  if (t.status() == Status::met && !t.is_measured()) return t.bed() + " closes without a gap.";
  return t.bed() + " has a gap of " + t.measured() + t.place() + "; " + t.compared() + ".";
}

std::string wall_gap(const Telling& t) {
  return t.bed() + " stands off the wall or what is built in by " + t.measured() + t.place() + "; " +
         t.compared() + ".";
}

std::string ridge(const Telling& t) {
  if (!t.has_subject(1)) return t.bed() + " has no ridge between its cushions.";
  return t.bed() + ": " + t.subject(0) + " lies " + t.measured() + " lower than " + t.subject(1) + "; " +
         t.compared() + ".";
}

std::string dropped(const Telling& t) {
  if (!t.has_subject(0)) return t.bed() + ": every piece of it lies in its surface.";
  return t.bed() + ": " + t.subject(0) + " is " + t.measured() +
         " off the level of the bed and drops out of its surface; " + t.compared() + ".";
}

std::string size(const Telling& t) { return t.bed() + " holds a rectangle of " + t.measured() + "."; }
std::string area(const Telling& t) { return t.bed() + " has a lying area of " + t.measured() + "."; }

std::string berth_width(const Telling& t) {
  return t.bed() + " is " + t.measured() + " wide (its largest rectangle); " + t.compared() + ".";
}
std::string berth_length(const Telling& t) {
  return t.bed() + " is " + t.measured() + " long at a width of " + t.berth() + "; " + t.compared() + ".";
}
std::string vessel_length(const Telling& t) {
  return t.bed() + " is " + t.measured() + " long at a width of " + t.berth() +
         "; asked of berths on small vessels: " + t.demand() + t.shortfall() + ".";
}
std::string clear_height(const Telling& t) {
  return "Over " + t.bed() + " there are " + t.measured() + " of clear height; " + t.compared() + ".";
}
std::string access_aid(const Telling& t) {
  return t.bed() + " lies " + t.measured() +
         " above the floor; without a step or ladder asked: " + t.demand() + t.shortfall() + ".";
}
std::string guard_rail(const Telling& t) {
  return "The underside of what carries " + t.bed() + " is " + t.measured() +
         " above the floor; without guard rails asked: " + t.demand() + t.shortfall() + ".";
}
std::string person_length(const Telling& t) {
  if (!t.is_measured())
    return "How long " + t.subject(0) + " is, who sleeps on " + t.bed() + ", the plan does not say.";
  if (t.is_negative())
    return t.subject(0) + " is " + t.magnitude() + " longer than the place on " + t.bed() +
           "; asked to spare: " + t.demand() + t.shortfall() + ".";
  return t.subject(0) + " has " + t.measured() + " of length left beyond the stature on " + t.bed() + "; " +
         t.compared() + ".";
}
std::string person_width(const Telling& t) {
  return t.subject(0) + " gets " + t.measured() + " of width on " + t.bed() + "; " + t.compared() + ".";
}
std::string named_size(const Telling& t) {
  const bool held = t.status() == Status::met || t.status() == Status::close;
  return t.bed() + (held ? " holds the size " : " does not hold the size ") + t.variant() + "; " +
         t.compared() + "; the bed: " + t.measured() + ".";
}
std::string fits_people(const Telling& t) {
  return t.bed() + " is long enough for " + t.measured() + " of the survey (stature and 100 mm; " +
         t.source() + ").";
}

/// "bare" and "made up" say how a bed was measured; of a cushion or curtain its name says enough.
std::string burning(const Telling& t) {
  const bool of_bed = t.variant() == "bare" || t.variant() == "made up";
  return t.subject(1) + (of_bed ? " (" + t.variant() + ")" : "");
}

std::string three_feet(const Telling& t) {
  return t.when() + t.subject(0) + " stands " + t.measured() + " from " + burning(t) + "; " + t.compared() +
         ".";
}
std::string data_plate(const Telling& t) {
  if (t.status() == Status::unknown) {
    const std::string known = t.is_measured() ? "; before a side that it does give: " + t.measured() +
                                                    ", asked " + t.demand() + t.shortfall()
                                              : std::string{};
    return t.when() + burning(t) + " lies near " + t.subject(0) +
           " before a side whose distance by the maker the plan does not give" + known + ".";
  }
  return t.when() + burning(t) + " lies " + t.measured() + " from " + t.subject(0) +
         ", before a side where its maker asks " + t.demand() + t.shortfall() + ".";
}
std::string data_plate_missing(const Telling& t) {
  return (t.when().empty() ? "The" : t.when() + "the") +
         " plan does not give every distance of the data plate of " + t.subject(0) +
         ", so they could not be compared.";
}
std::string stowed(const Telling& t) {
  const std::string means =
      " is stowed: it must be off, unplugged and cold before it is put away. No distance is ";
  const std::string end = t.status() == Status::unknown
                              ? "measured, and the plan does not say where it is kept."
                              : "measured here.";
  return t.when() + t.subject(0) + means + end;
}

struct Teller {
  std::string_view rule;
  std::string (*tell)(const Telling&);
};
constexpr std::array tellers{
    Teller{"room.inside", inside},
    Teller{"room.overlap", overlap},
    Teller{"bed.gap", gap},
    Teller{"bed.wall-gap", wall_gap},
    Teller{"bed.ridge", ridge},
    Teller{"bed.dropped-piece", dropped},
    Teller{"bed.size", size},
    Teller{"bed.area", area},
    Teller{"bed.berth-width", berth_width},
    Teller{"bed.berth-length", berth_length},
    Teller{"bed.vessel-length", vessel_length},
    Teller{"bed.clear-height", clear_height},
    Teller{"bed.access-aid", access_aid},
    Teller{"bed.guard-rail", guard_rail},
    Teller{"bed.person-length", person_length},
    Teller{"bed.person-width", person_width},
    Teller{"bed.named-size", named_size},
    Teller{"bed.fits-people", fits_people},
    Teller{"heat.three-feet", three_feet},
    Teller{"heat.data-plate", data_plate},
    Teller{"heat.data-plate-missing", data_plate_missing},
    Teller{"heat.stowed", stowed},
};

}  // namespace

std::string sentence(const Plan& plan, const Finding& finding) {
  for (const Teller& teller : tellers)
    if (teller.rule == finding.rule.text()) return teller.tell(Telling(plan, finding));
  throw std::logic_error("no sentence for " + finding.rule.text());
}

std::string cure_sentence(const Plan& plan, const Finding& finding) {
  if (!finding.cure) return {};
  const Cure& cure = *finding.cure;
  Finding about = finding;
  about.subjects = {cure.subject};
  const std::string thing = Telling(plan, about).subject(0);
  const std::string by = both(cure.by, plan->unit, {.rounding = Rounding::up});
  switch (cure.kind) {
    case Cure::Kind::raise:
      return "Raise " + thing + " by " + by + ".";
    case Cure::Kind::lower:
      return "Lower " + thing + " by " + by + ".";
    case Cure::Kind::move_apart:
      return "Move " + thing + " away by " + by + ".";
    case Cure::Kind::widen:
      return "Make " + thing + " larger by " + by + ".";
    case Cure::Kind::shorten:
      return "Make " + thing + " smaller by " + by + ".";
    case Cure::Kind::stow_heater:
      return "Switch " + thing + " off, unplug it and stow it before the bed is made.";
    case Cure::Kind::state_plate:
      return "Write the distances of the maker's data plate of " + thing + " into the plan (data_plate).";
    case Cure::Kind::state_measure:
      return "Write the missing figure of " + thing + " into the plan.";
    case Cure::Kind::add_guard_rail:
      return "Fit a guard rail whose top stands at least " + by + " above the mattress.";
  }
  throw std::logic_error("Cure::Kind out of range");
}

}  // namespace berthwright

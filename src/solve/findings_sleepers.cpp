#include <algorithm>

#include "solve/bed_scene.h"

namespace berthwright {
namespace {

// A width that the plan states for a person is the plan's own number; a number for the rule goes before it.
void compare_width(const BedScene& scene, Finding& finding, const Person& person, Length measured) {
  const Rule& rule = *find_rule("bed.person-width");
  const bool stated = scene.plan.override_of(rule) == nullptr && person.width != rule.limit;
  compare(finding, measured, stated ? person.width : scene.plan.limit(rule));
  if (stated) finding.override_reason = "width of " + person.name;
}

void add_length(const BedScene& scene, const PersonRoom& room) {
  const Person& person = *room.person;
  Finding finding = scene.begin("bed.person-length");
  finding.subjects = {person.name};
  if (room.lying)
    for (const Point& corner : room.lying->shoulders) finding.where.push_back(scene.at_level(corner));
  if (person.stature) {
    compare(scene.plan, finding, (room.lying ? room.lying->length : Length{}) - *person.stature);
    if (*person.stature > longest_in_room(scene.plan)) finding.variant = "longer than the room";
    if (!finding.variant.empty())
      finding.cure = Cure{Cure::Kind::none, person.name, {}};
    else if (finding.status == Status::not_met)
      finding.cure = larger_bed(scene, {*person.stature + std::get<Length>(*finding.compared), person.width},
                                room.lying ? Sides{room.lying->length, person.width} : Sides{});
  } else {
    finding.compared = scene.plan.limit(*find_rule("bed.person-length"));
    finding.cure = Cure{Cure::Kind::state_measure, person.name, {}};
  }
  scene.findings.push_back(std::move(finding));
}

void add_width(const BedScene& scene, const PersonRoom& room) {
  Finding finding = scene.begin("bed.person-width");
  finding.subjects = {room.person->name};
  compare_width(scene, finding, *room.person, room.width);
  if (finding.status == Status::not_met)
    finding.cure = larger_bed(scene, Cure::Kind::broaden, shortfall(finding));
  scene.findings.push_back(std::move(finding));
}

/// What the bed has for one way of lying, over the width this way takes.
struct Way {
  Length width;
  std::optional<Length> length;
};

// Whether the length over this width tells more than the width at the length needed: it is enough, or less is
// missing of it.
bool is_told_by_length(const TwoAbreast& two, const Way& way) {
  if (!way.length) return false;
  if (two.needed_length == Length{}) return *way.length >= way.width;
  return *way.length >= two.needed_length || two.widest == Length{} ||
         two.needed_length - *way.length <= way.width - two.widest;
}

// Those who give no stature, to be asked for it.
Cure asking_statures(const Bed& bed) {
  Cure cure{Cure::Kind::state_measure, {}, {}};
  for (const Person& person : bed.people)
    if (!person.stature && cure.subject.empty())
      cure.subject = person.name;
    else if (!person.stature)
      cure.alike.push_back(person.name);
  return cure;
}

void tell_by_length(Finding& finding, const TwoAbreast& two, const Way& way) {
  finding.measured = Sides{*way.length, way.width};
  if (two.needed_length > Length{}) finding.margin = *way.length - two.needed_length;
  finding.status = finding.margin && *finding.margin < Length{} ? Status::not_met
                   : two.all_statures_known                     ? Status::met
                                                                : Status::unknown;
}

// What there is at the length needed, or where nothing is as long, at all.
void tell_by_width(Finding& finding, const SleepingRoom& room, const Way& way) {
  const Sides largest = room.largest ? Sides{room.largest->length, room.largest->width} : Sides{};
  const Sides has = room.two->widest > Length{} ? Sides{room.two->needed_length, room.two->widest} : largest;
  if (!finding.compared) finding.compared = Sides{has.length, way.width};
  finding.measured = has;
  finding.margin = std::min(has.width - way.width, has.length - std::get<Sides>(*finding.compared).length);
  finding.status = Status::not_met;
}

Cure for_two(const BedScene& scene, const Finding& finding) {
  const Sides asked = std::get<Sides>(*finding.compared);
  if (std::max(asked.length, asked.width) > longest_in_room(scene.plan))
    return {Cure::Kind::none, finding.subjects.front(), {}};
  return larger_bed(scene, asked, std::get<Sides>(*finding.measured));
}

void add_way(const BedScene& scene, std::string_view rule, const Way& way) {
  const TwoAbreast& two = *scene.room().two;
  Finding finding = scene.begin(rule);
  for (const Person& person : scene.bed.bed->people) finding.subjects.push_back(person.name);
  if (two.needed_length > Length{}) finding.compared = Sides{two.needed_length, way.width};
  if (is_told_by_length(two, way))
    tell_by_length(finding, two, way);
  else
    tell_by_width(finding, scene.room(), way);
  if (finding.status == Status::unknown) finding.cure = asking_statures(*scene.bed.bed);
  if (finding.status == Status::not_met) finding.cure = for_two(scene, finding);
  scene.findings.push_back(std::move(finding));
}

void add_two(const BedScene& scene) {
  const std::optional<TwoAbreast>& two = scene.room().two;
  if (!two || scene.room().lying.empty()) return;
  Way side_by_side{two->side_by_side_width, {}};
  if (two->side_by_side) side_by_side.length = two->side_by_side->length;
  Way head_to_foot{two->head_to_foot_width, {}};
  if (two->head_to_foot) head_to_foot.length = side_beside(*two->head_to_foot, two->head_to_foot_width);
  add_way(scene, "bed.side-by-side", side_by_side);
  add_way(scene, "bed.head-to-foot", head_to_foot);
}

void add_shares(const BedScene& scene) {
  Finding finding = scene.begin("bed.fits-people");
  finding.measured = scene.room().fits;
  finding.status = Status::met;
  scene.findings.push_back(std::move(finding));
}

}  // namespace

void add_sleepers(const BedScene& scene) {
  for (const PersonRoom& room : scene.room().people) {
    add_length(scene, room);
    add_width(scene, room);
  }
  add_two(scene);
  add_shares(scene);
}

}  // namespace berthwright

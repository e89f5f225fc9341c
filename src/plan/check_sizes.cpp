#include <algorithm>

#include <berthwright/exact/measure.h>

#include "exact/required.h"
#include "plan/in_quotes.h"
#include "plan/promises.h"

namespace berthwright {
namespace {

constexpr Length longest_room = 15'000_mm;
constexpr Length shortest_room = 3_ft;
constexpr int first_year = 1900;
constexpr int last_year = 2100;
constexpr int fewest_plies = 3;
constexpr int most_plies = 35;
constexpr Mass lightest_person = Mass::pounds(5);
constexpr Mass heaviest_person = Mass::pounds(1000);
constexpr Mass heaviest_piece = Mass::pounds(1000);
constexpr Length shortest_person = 18_in;
constexpr Length tallest_person = 8_ft;

/// A measure typed in the wrong unit is the usual reason for a size that cannot be.
std::string unit_cure(Length length, Unit unit, bool too_large) {
  if (too_large && unit == Unit::inch)
    return "if millimetres are meant, write mm after it, or \"unit\": \"mm\" at the top: " +
           exact_text(length, Unit::inch) + " without a unit counts as inches";
  if (!too_large && unit == Unit::millimetre)
    return "if inches are meant, write in after it, or \"unit\": \"in\" at the top: " +
           exact_text(length, Unit::millimetre) + " without a unit counts as millimetres";
  return "check the measure and its unit";
}

struct SizeRange {
  Length least;
  Length most;
};

/// None: the length is within the range. `id` and `thing` begin the id and the message.
std::optional<Problem> fault_of_size(Length length, SizeRange range, const std::string& id,
                                     const std::string& thing, Unit unit) {
  if (range.least <= length && length <= range.most) return std::nullopt;
  const bool too_large = length > range.most;
  return Problem{
      .id = id + (too_large ? ".too-large" : ".too-small"),
      .message = thing + " is " + both(length, unit) + ", " + (too_large ? "more" : "less") + " than can be",
      .found = exact_text(length, unit),
      .allowed = both(range.least, unit) + " to " + both(range.most, unit),
      .cure = unit_cure(length, unit, too_large)};
}

void check_interior(const PlanParts& parts, Reading& faults) {
  const Interior& room = parts.interior;
  const auto check = [&](Length length, const char* field) {
    if (std::optional<Problem> fault =
            fault_of_size(length, {shortest_room, longest_room}, "interior",
                          "the " + std::string(field) + " of the interior", parts.unit))
      faults.add(field_of(room.origin, field), *std::move(fault));
  };
  check(room.length, "length");
  check(room.width, "width");
  check(room.height, "height");
  if (room.outline.polygon().bounds() != Rect{{}, {room.length, room.width}} ||
      room.side_profile.polygon().bounds() != Rect{{}, {room.length, room.height}} ||
      (room.cross_profile && room.cross_profile->polygon().bounds() != Rect{{}, {room.width, room.height}}))
    faults.add(room.origin,
               {.id = "interior.profile",
                .message = "outline and profiles of the interior do not have its length, width and height",
                .found = "other sizes",
                .allowed = "outlines that begin at 0 and end at these sizes",
                .cure = "measure outline and profiles from the same corner"});
}

void check_opening(const Opening& opening, const PlanParts& parts, Reading& faults) {
  const bool end = opening.wall == Wall::front || opening.wall == Wall::rear;
  const Length wall = end ? parts.interior.width : parts.interior.length;
  if (opening.width <= Length{} || opening.height <= Length{})
    faults.add(opening.origin, {.id = "size.zero",
                                .message = "an opening needs a width and a height above zero",
                                .found = "zero or less",
                                .allowed = "sizes above zero",
                                .cure = "give the clear width and height"});
  const auto report = [&](const char* field, Length end_of_opening, Length end_of_wall, const char* which) {
    if (end_of_opening <= end_of_wall) return;
    faults.add(
        field_of(opening.origin, field),
        {.id = "opening.outside-wall",
         .message = in_quotes(opening.id.text()) + " ends at " + both(end_of_opening, parts.unit) +
                    ", and its wall is " + both(end_of_wall, parts.unit) + " " + which,
         .found = exact_text(end_of_opening, parts.unit),
         .allowed = "at most " + exact_text(end_of_wall, parts.unit),
         .cure = "make it smaller, or move it, by " + exact_text(end_of_opening - end_of_wall, parts.unit)});
  };
  report("width", opening.from + opening.width, wall, end ? "wide" : "long");
  report("height", opening.sill + opening.height, parts.interior.height, "high");
}

bool within_reach(const Region& region) {
  if (region.empty()) return true;
  const Rect bounds = region.bounds();
  return std::min(bounds.low.x, bounds.low.y) >= -farthest &&
         std::max(bounds.high.x, bounds.high.y) <= farthest;
}

void check_title(const Title& title, Reading& faults) {
  if (!title.built || (first_year <= *title.built && *title.built <= last_year)) return;
  faults.add({"/built", 1, 1}, {.id = "title.built",
                                .message = "no trailer was built in the year " + std::to_string(*title.built),
                                .found = std::to_string(*title.built),
                                .allowed = "a year from 1900 to 2100",
                                .cure = "write the year with four digits, or take it away"});
}

void check_plies(const Piece& piece, Reading& faults) {
  if (!piece.plies) return;
  const int plies = *piece.plies;
  if (fewest_plies <= plies && plies <= most_plies) return;
  faults.add(field_of(piece.origin, "plies"), {.id = "piece.plies",
                                               .message = "no panel has " + std::to_string(plies) + " plies",
                                               .found = std::to_string(plies),
                                               .allowed = "3, 4, 5 … 35 plies",
                                               .cure = "count them on a cut edge"});
}

void check_lifted(const std::optional<Mass>& weight, const Origin& origin, Unit unit, Reading& faults) {
  if (!weight || (Mass{} < *weight && *weight <= heaviest_piece)) return;
  faults.add(origin, {.id = "piece.weight",
                      .message = "no piece of " + mass_text(*weight, unit) + " is lifted by hand",
                      .found = mass_text(*weight, unit),
                      .allowed = "above zero, at most " + mass_text(heaviest_piece, unit),
                      .cure = "weigh it, or take the weight away: then it is unknown"});
}

void check_lifting(const PlanParts& parts, Reading& faults) {
  const Lifting& lifting = parts.lifting;
  check_lifted(lifting.weight, {"/lifting/weight", 1, 1}, parts.unit, faults);
  if (lifting.reach && *lifting.reach <= Length{})
    faults.add({"/lifting/reach", 1, 1}, {.id = "size.zero",
                                          .message = "a reach is above zero",
                                          .found = "zero or less",
                                          .allowed = "a length above zero",
                                          .cure = "give how far a person reaches"});
  if ((lifting.weight || lifting.reach) && lifting.reason.empty())
    faults.add({"/lifting", 1, 1}, {.id = "lifting.reason",
                                    .message = "a number of your own is given with its reason",
                                    .found = "no reason",
                                    .allowed = "a reason",
                                    .cure = "write why"});
}

void check_pieces(const PlanParts& parts, Reading& faults) {
  for (const Piece& piece : parts.pieces) {
    const Rect box{{}, {piece.length, piece.width}};
    check_plies(piece, faults);
    check_lifted(piece.weight, field_of(piece.origin, "weight"), parts.unit, faults);
    if (piece.cord && piece.cord->length <= Length{})
      faults.add(field_of(piece.origin, "cord/length"), {.id = "size.zero",
                                                         .message = "a cord needs a length above zero",
                                                         .found = "zero or less",
                                                         .allowed = "a length above zero",
                                                         .cure = "measure the cord, plug included"});
    if (piece.thickness <= Length{} || piece.outline.polygon().bounds() != box)
      faults.add(piece.origin, {.id = "piece.size",
                                .message = "outline, length, width and thickness of a piece do not agree",
                                .found = "other sizes",
                                .allowed = "an outline that begins at 0 and has the length and width",
                                .cure = "give the outline its length and width"});
  }
}

void check_places(const PlanParts& parts, Reading& faults) {
  const Problem too_far{.id = "place.too-far",
                        .message = "this stands more than 25 m (82 ft) away from the front left corner",
                        .found = "a place farther away",
                        .allowed = "a place within 25 m (82 ft)",
                        .cure = "check the distances and the unit of the plan"};
  for (const Fixture& fixture : parts.fixtures)
    if (!within_reach(fixture.solid.outline()) || fixture.solid.top() > farthest ||
        fixture.solid.base() < -farthest)
      faults.add(fixture.origin, too_far);
  for (const Configuration& configuration : parts.configurations) {
    for (const Pose& pose : configuration.poses) {
      const bool stowed = pose.manner == Pose::Manner::stowed;
      if (!within_reach(pose.outline)) faults.add(pose.origin, too_far);
      if (stowed != pose.outline.empty() || (!stowed && pose.height <= Length{}))
        faults.add(pose.origin,
                   {.id = "pose.outline",
                    .message = "a pose has an outline and a height exactly when it is not stowed",
                    .found = "one without the other",
                    .allowed = "an outline and a height, or stowed",
                    .cure = "give both, or stow it"});
    }
  }
}

void check_weight(const Person& person, const Origin& origin, Unit unit, Reading& faults) {
  const Mass weight = required(person.weight);
  if (lightest_person <= weight && weight <= heaviest_person) return;
  faults.add(origin,
             {.id = "person.weight",
              .message = in_quotes(person.name) + " weighs " + mass_text(weight, unit) + ", " +
                         (weight > heaviest_person ? "more" : "less") + " than can be",
              .found = mass_text(weight, unit),
              .allowed = mass_text(lightest_person, unit) + " to " + mass_text(heaviest_person, unit),
              .cure = unit == Unit::inch ? "a bare number counts in pounds: write kg after kilograms"
                                         : "a bare number counts in kilograms: write lb after pounds"});
}

void check_people(const PlanParts& parts, Reading& faults) {
  for (const Bed& bed : parts.beds) {
    for (std::size_t i = 0; i < bed.people.size(); ++i) {
      const Person& person = bed.people[i];
      const std::string at = "people/" + std::to_string(i);
      if (person.stature)
        if (std::optional<Problem> fault =
                fault_of_size(*person.stature, {shortest_person, tallest_person}, "person",
                              "the stature of " + in_quotes(person.name), parts.unit))
          faults.add(field_of(bed.origin, at + "/stature"), *std::move(fault));
      if (person.weight) check_weight(person, field_of(bed.origin, at + "/weight"), parts.unit, faults);
      if (person.width <= Length{})
        faults.add(field_of(bed.origin, at + "/width"), {.id = "size.zero",
                                                         .message = "a person needs a width above zero",
                                                         .found = "zero or less",
                                                         .allowed = "a width above zero",
                                                         .cure = "give the width at the shoulders"});
    }
  }
}

}  // namespace

Origin field_of(const Origin& origin, std::string_view field) {
  Origin place = origin;
  place.pointer += '/' + std::string(field);
  return place;
}

void check_sizes(const PlanParts& parts, Reading& faults) {
  check_title(parts.title, faults);
  check_interior(parts, faults);
  for (const Opening& opening : parts.openings) check_opening(opening, parts, faults);
  check_pieces(parts, faults);
  check_lifting(parts, faults);
  check_places(parts, faults);
  check_leaves(parts, faults);
  check_people(parts, faults);
  check_sewing(parts, faults);
  check_loads(parts, faults);
}

}  // namespace berthwright

#include "view/quiet_sheet.h"

#include <algorithm>

#include <berthwright/view/words.h>

#include "view/bed_marks.h"
#include "view/fitted_plan.h"
#include "view/page.h"
#include "view/plan_notes.h"
#include "view/seen.h"
#include "view/signs.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength beside_wall = paper_mm(9);  // for signs and tags

std::vector<PlanThing> quiet_things(const DrawnConfiguration& of, const PlanView& view,
                                    const std::set<std::string>& strong) {
  std::vector<PlanThing> things = plan_things(view, *of.plan, of.answer->arrangement);
  std::erase_if(things, [](const PlanThing& thing) { return is_alarm(*thing.placed); });
  for (PlanThing& thing : things) {
    if (strong.contains(thing.placed->id) && !thing.overhead) continue;
    thing.ink = thing.overhead ? Ink::quiet_overhead : Ink::quiet;
    for (Path& path : thing.paths) path.ink = thing.ink;
  }
  return things;
}

std::vector<LabelWish> name_wishes(const std::vector<PlanThing>& things, const std::set<std::string>& named,
                                   const DrawnConfiguration& of, const PlanView& view) {
  const std::vector<LabelWish> all = thing_wishes(things, of, view);
  std::vector<LabelWish> wishes;
  auto next = all.begin();
  for (const PlanThing& thing : things) {
    if (!thing.seen) continue;
    const LabelWish& wish = *next++;
    if (!named.contains(thing.placed->id)) continue;
    wishes.push_back(wish);
    wishes.back().may_stand_off = true;
  }
  return wishes;
}

// A leader ends at the side of a sign that looks to the middle of the room, not in the sign.
void point_beside(LabelWish& wish, const std::vector<PaperBox>& signs, PaperPoint middle) {
  for (const PaperBox& sign : signs) {
    if (!holds(sign, {wish.target, wish.target})) continue;
    const PaperPoint c = sign.centre();
    const PaperLength x = middle.x - c.x;
    const PaperLength y = middle.y - c.y;
    const bool level = std::abs(x.micrometres()) > std::abs(y.micrometres());
    wish.target = level ? PaperPoint{x > PaperLength{} ? sign.high.x : sign.low.x, c.y}
                        : PaperPoint{c.x, y > PaperLength{} ? sign.high.y : sign.low.y};
  }
}

// No lettering fits between these.
void keep_off(LabelField& field, const PaperBox& sign) {
  const PaperPoint low{sign.low.x, sign.high.y};
  const PaperPoint high{sign.high.x, sign.low.y};
  for (const PaperLine& line : {PaperLine{sign.low, sign.high},
                                {low, high},
                                {sign.low, high},
                                {low, sign.high},
                                {sign.low, low},
                                {high, sign.high}})
    field.heavy.push_back(line);
  field.signs.push_back(sign);
}

}  // namespace

PaperLength beside_quiet(const Plan& plan, Wall wall, std::int64_t ratio) {
  PaperLength depth = wall_band + beside_wall;
  for (const Opening& opening : plan->openings)
    if (opening.wall == wall)
      depth = std::max(depth, wall_band + beside_wall + reach_outside(opening, ratio));
  return depth;
}

Surroundings bare_surroundings(const Plan& plan, std::int64_t ratio) {
  Surroundings around;
  for (const Wall wall : four_walls) around.lanes[wall].depth = beside_quiet(plan, wall, ratio);
  return around;
}

PlanDrawing quiet_drawing(const DrawnConfiguration& of, const QuietSheet& sheet, const PlanView& view,
                          const PaperBox& area) {
  const Laid laid = sheet.laid(view);
  const std::vector<PlanThing> things = quiet_things(of, view, sheet.strong);
  std::vector<Group> groups{{"Room", room_marks(view, (*of.plan)->interior), 0}, {"Things", {}, 0}};
  Group overhead{"Hangs above", {}, 0};
  Group openings{"Openings", {}, 0};
  for (const PlanThing& thing : things)
    add(thing.overhead ? overhead.marks : groups.back().marks, thing.paths);
  for (const Opening& opening : (*of.plan)->openings)
    add(openings.marks, opening_marks(view, *of.plan, opening));
  groups.insert(groups.end(), laid.beneath.begin(), laid.beneath.end());
  groups.push_back(std::move(overhead));
  groups.push_back(std::move(openings));
  const std::size_t hatching_at = groups.size();
  groups.insert(groups.end(), laid.above.begin(), laid.above.end());

  LabelField field{area, {}, {}, {}, {}};
  for (const Group& group : groups) add_obstacles(field, group.marks);
  for (const PaperBox& sign : laid.signs) keep_off(field, sign);
  std::vector<LabelWish> wishes = laid.wishes;
  for (const auto& more : {name_wishes(things, laid.named, of, view), opening_wishes(of, view)})
    wishes.insert(wishes.end(), more.begin(), more.end());
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  const PaperPoint middle = view({half(room.low.x + room.high.x), half(room.low.y + room.high.y)});
  for (LabelWish& wish : wishes) point_beside(wish, laid.signs, middle);
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);

  std::vector<PaperBox> lettering = laid.signs;
  for (const PlacedLabel& label : labels)
    if (!label.wording.lines.empty()) lettering.push_back(grown(label.box, paper_mm(7, 10)));
  Group hatching{"Filled areas", {}, 0};
  for (const Hatched& area_filled : laid.hatched) {
    if (area_filled.rings.empty()) continue;
    for (Path& line :
         diagonals_in(area_filled.rings, pitch_of(area_filled.edge), area_filled.way, lettering)) {
      line.ink = area_filled.line;
      hatching.marks.emplace_back(std::move(line));
    }
  }
  groups.insert(groups.begin() + static_cast<std::ptrdiff_t>(hatching_at), std::move(hatching));
  Group names{"Names and figures", {}, 0};
  for (const PlacedLabel& label : labels) add(names.marks, marks_of(label));
  groups.push_back(std::move(names));
  std::erase_if(groups, [](const Group& group) { return group.marks.empty(); });

  PlanDrawing attempt{std::move(groups), sheet.notes};
  for (const auto& notes : {key_notes(labels, wishes), legend_notes(attempt.groups)})
    attempt.notes.insert(attempt.notes.end(), notes.begin(), notes.end());
  return attempt;
}

std::vector<Draft> quiet_drafts(const DrawnConfiguration& of, const QuietSheet& sheet) {
  const std::vector<Layout> layouts =
      layouts_of(of, [&](std::int64_t ratio) { return bare_surroundings(*of.plan, ratio); });
  const std::string first_word = sheet.kind.substr(0, sheet.kind.find(' '));
  const std::string when = sheet.when.empty() ? name_of(*of.answer->configuration) : sheet.when;
  return fitted_drafts(of, layouts,
                       {when + ", " + sheet.kind, sheet.subject,
                        sheet.id.empty() ? of.answer->configuration->id.text() : sheet.id, "-" + first_word,
                        "Plan seen from above, front at the left. " + sheet.told},
                       sheet.notes, [&](const Layout& layout) {
                         return quiet_drawing(of, sheet, layout.view, layout.page.drawing);
                       });
}

Group quiet_plan(const DrawnConfiguration& of, const PlanView& view) {
  Group group{"Plan", room_marks(view, (*of.plan)->interior), 0};
  for (const PlanThing& thing : quiet_things(of, view, {})) add(group.marks, thing.paths);
  for (const Opening& opening : (*of.plan)->openings)
    add(group.marks, opening_marks(view, *of.plan, opening));
  return group;
}

std::vector<Note> warning_notes(const Plan& plan, const std::vector<std::string>& warnings) {
  std::vector<Note> notes{{Note::Kind::alert, "Warning", 0, false, std::nullopt}};
  for (const std::string& warning : warnings)
    notes.push_back({Note::Kind::caution, warning, 0, false, std::nullopt});
  notes.push_back({Note::Kind::caution, std::string(deferral(plan->english)), 0, false, std::nullopt});
  return notes;
}

Group bedding_group(const DrawnConfiguration& of, const PlanView& view) {
  Group group{"Beds", {}, 0};
  for (const BedAnswer& answer : of.answer->beds) {
    if (!answer.bedding.made_up.empty()) add(group.marks, made_up_edges(of, view, answer));
    add(group.marks, paths_of(view, answer.mattress.closed, {}, Ink::bed_outline));
  }
  return group;
}

std::vector<LabelWish> bed_name_wishes(const DrawnConfiguration& of, const PlanView& view) {
  std::vector<LabelWish> wishes;
  for (const BedAnswer& answer : of.answer->beds) {
    if (answer.mattress.closed.empty()) continue;
    const Rect box = answer.mattress.closed.bounds();
    const std::string name = answer.bed->name.empty() ? answer.bed->id.text() : answer.bed->name;
    LabelWish wish = place_wish(of, view, {half(box.low.x + box.high.x), half(box.low.y + box.high.y)});
    wish.wordings = name_wordings(name, box.height() > box.width());
    wish.home = view(answer.mattress.closed);
    wish.target = middle_of_seen(wish.home, {}).value_or(wish.target);
    wish.key = name;
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

}  // namespace berthwright

#include "view/packet_views.h"

#include <algorithm>

#include "view/bed_marks.h"
#include "view/frame.h"
#include "view/plan_notes.h"
#include "view/plan_things.h"
#include "view/small_view.h"
#include "view/walls.h"

namespace berthwright {
namespace {

/// The inks of a thing's faces in a raised view.
struct RaisedInks {
  Ink side;
  Ink lid;
};
RaisedInks raised_inks(const Placed& placed) {
  if (placed.piece == nullptr) return {Ink::side_built, Ink::quiet};
  return placed.is_soft() ? RaisedInks{Ink::side_moved, Ink::cushion}
                          : RaisedInks{Ink::side_parked, Ink::board};
}

Group raised_group(const DrawnConfiguration& of, const RaisedView& view) {
  Group group{"Raised view", {}, 0};
  const Interior& interior = (*of.plan)->interior;
  add(group.marks,
      raised_room(view, interior.outline.polygon(), std::min(raised_height, interior.height), Ink::quiet));
  std::vector<RaisedThing> things;
  for (const Placed& placed : of.answer->arrangement.things) {
    const std::optional<Length> top = raised_top(placed);
    if (!top || is_outside(*of.plan, placed)) continue;
    const RaisedInks inks = raised_inks(placed);
    things.push_back({placed.solid.outline(), placed.solid.base(), *top, inks.side, inks.lid});
  }
  add(group.marks, raised_paths(view, things));
  return group;
}

// Small things that others carry, and cushions where the bed that they make is named.
bool is_named_at_a_glance(const DrawnConfiguration& of, const PlanThing& thing) {
  const Placed& placed = *thing.placed;
  if (placed.fixture != nullptr)
    return placed.fixture->kind != Fixture::Kind::ledge && placed.fixture->kind != Fixture::Kind::leg;
  return std::ranges::none_of(of.answer->beds, [&](const BedAnswer& bed) {
    return std::ranges::find(bed.bed->pieces, placed.piece->id) != bed.bed->pieces.end();
  });
}

}  // namespace

std::vector<PacketKey> packet_keys(const std::vector<Note>& notes) {
  std::vector<PacketKey> keys;
  for (const Note& note : notes)
    if (note.number > 0)
      keys.push_back({note.number, std::nullopt, note.words});
    else if (note.swatch)
      keys.push_back({0, swatch_of(*note.swatch), note.words});
  return keys;
}

PacketViews glance_views(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  const SmallLayout layout =
      small_layout(plan, raised_reach(plan, of.answer->arrangement), telephone_width, beside_frame);
  const PlanView view = layout.plan_view();
  const std::vector<PlanThing> things = plan_things(view, plan, of.answer->arrangement);
  Group room{"Room", room_marks(view, plan->interior), 0};
  Group openings{"Openings", {}, 0};
  for (const PlanThing& thing : things) add(room.marks, thing.paths);
  for (const Opening& opening : plan->openings) add(openings.marks, opening_marks(view, plan, opening));
  Group beds = bed_group(of, view);
  LabelField field{layout.plan_area(), {}, {}, {}, {}};
  for (const Group* group : {&room, &openings, &beds}) add_obstacles(field, group->marks);
  std::vector<LabelWish> wishes = bed_wishes(of, view);
  // Names stay off what lies over their thing, named or not, so the wishes are those of all things.
  std::vector<LabelWish> all = thing_wishes(things, of, view);
  auto next = all.begin();
  for (const PlanThing& thing : things) {
    if (!thing.seen) continue;
    if (is_named_at_a_glance(of, thing)) wishes.push_back(std::move(*next));
    ++next;
  }
  const std::vector<PlacedLabel> labels = placed_labels(field, wishes);
  Group names{"Names", {}, 0};
  for (const PlacedLabel& label : labels) add(names.marks, marks_of(label));
  const std::string title = name_of(*of.answer->configuration);
  PacketViews views;
  std::vector<Group> groups{std::move(room), std::move(openings), std::move(beds), std::move(names)};
  std::vector<Note> notes = key_notes(labels, wishes);
  for (Note& note : legend_notes(groups)) notes.push_back(std::move(note));
  views.keys = packet_keys(notes);
  views.views.push_back(small_sheet(title + ", from above", layout.above, layout.ratio, std::move(groups)));
  views.views.push_back(small_sheet(title + ", raised view", layout.raised, layout.ratio,
                                    {raised_group(of, layout.raised_view())}));
  return views;
}

PacketViews quiet_views(const DrawnConfiguration& of, const QuietSheet& sheet) {
  const Plan& plan = *of.plan;
  const SmallLayout layout = filling_layout(plan, telephone_width, beside_quiet);
  PlanDrawing drawing = quiet_drawing(of, sheet, layout.plan_view(), layout.plan_area());
  PacketViews views;
  for (const Opening& opening : plan->openings)
    views.keys.push_back({0, std::nullopt, tag_of(plan, opening) + " " + opening.name});
  for (PacketKey& key : packet_keys(drawing.notes)) views.keys.push_back(std::move(key));
  const std::string when = sheet.when.empty() ? name_of(*of.answer->configuration) : sheet.when;
  views.views.push_back(
      small_sheet(when + ", " + sheet.kind, layout.above, layout.ratio, std::move(drawing.groups)));
  return views;
}

}  // namespace berthwright

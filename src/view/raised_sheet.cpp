#include "view/raised_sheet.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/fitted_plan.h"
#include "view/frame.h"
#include "view/label_wishes.h"
#include "view/plan_notes.h"
#include "view/plan_things.h"
#include "view/seen.h"

namespace berthwright {
namespace {

constexpr PaperLength around_view = paper_mm(6);

bool is_drawn_raised(const Plan& plan, const Placed& placed) {
  return raised_top(placed) && !is_outside(plan, placed);
}

Ink side_under(Ink lid) {
  switch (lid) {
    case Ink::cushion:
      return Ink::side_cushion;
    case Ink::board:
    case Ink::table:
      return Ink::side_board;
    case Ink::appliance:
      return Ink::side_heat;
    default:
      return Ink::side_built;
  }
}

/// What is drawn, in the order of the arrangement, and how.
struct RaisedThings {
  std::vector<const Placed*> placed;
  std::vector<RaisedThing> things;
};

RaisedThings raised_things(const DrawnConfiguration& of) {
  RaisedThings out;
  for (const Placed& placed : of.answer->arrangement.things) {
    if (!is_drawn_raised(*of.plan, placed)) continue;
    const Solid& solid = placed.solid;
    const Ink lid = ink_of(placed);
    out.placed.push_back(&placed);
    out.things.push_back({solid.outline(), solid.base(), *raised_top(placed), side_under(lid), lid});
  }
  return out;
}

// The floor's nearest corner at the foot, the far wall or what stands higher at the head.
PaperBox reach_of(const DrawnConfiguration& of, const RaisedView& view) {
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  const PaperPoint low = view({room.low.x, room.low.y}, {});
  const PaperPoint high = view({room.high.x, room.high.y}, raised_reach(*of.plan, of.answer->arrangement));
  return {{low.x, high.y}, {high.x, low.y}};
}

std::vector<Layout> raised_layouts(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  std::vector<Layout> layouts;
  for (const Scale& scale : scales(plan->unit)) {
    const RaisedView flat{scale.ratio, {}};
    const PaperBox reach = reach_of(of, flat);
    const PaperSize needs{reach.width() + around_view * 2, reach.height() + around_view * 2};
    for (const bool landscape : {true, false})
      for (const NotesAt notes : {NotesAt::right, NotesAt::below})
        if (const std::optional<Page> page = page_for(plan, landscape, notes, needs)) {
          const PaperPoint middle = page->drawing.centre();
          const PaperPoint own = reach.centre();
          layouts.push_back({*page, scale, {}, PlanView{scale.ratio, {middle.x - own.x, middle.y - own.y}}});
        }
  }
  if (layouts.empty()) throw std::logic_error("no scale is small enough for a raised view");
  return layouts;
}

// Wherever something is painted later it may hide a top.
std::vector<std::vector<PaperRing>> painted_after(const RaisedPicture& picture, std::size_t top,
                                                  const PaperBox& box) {
  std::vector<std::vector<PaperRing>> out;
  for (std::size_t i = top + 1; i < picture.paths.size(); ++i) {
    const Path& path = picture.paths[i];
    if (!path.closed) continue;
    PaperRing ring{path.from};
    for (const Stretch& stretch : path.stretches) ring.push_back(stretch.to);
    if (overlaps(bounds(ring), box)) out.push_back({std::move(ring)});
  }
  return out;
}

std::vector<PaperRing> top_of(const RaisedThing& thing, const RaisedView& view) {
  std::vector<PaperRing> rings;
  for (const Face& face : thing.outline.faces()) rings.push_back(raised_ring(view, face.outer, thing.top));
  return rings;
}

struct NamedTops {
  std::vector<LabelWish> wishes;
  Group signs;  // one mark of each kind that is seen
  std::vector<std::string> hidden;
};
NamedTops named_tops(const RaisedThings& all, const RaisedView& view) {
  const RaisedPicture picture = raised_picture(view, all.things);
  NamedTops out;
  for (std::size_t i = 0; i < all.things.size(); ++i) {
    const std::string& name = name_of(*all.placed[i]);
    LabelWish wish;
    wish.home = top_of(all.things[i], view);
    PaperBox box = bounds(wish.home.front());
    for (const PaperRing& ring : wish.home) box = hull(box, bounds(ring));
    wish.covers = painted_after(picture, picture.tops[i], box);
    std::vector<const std::vector<PaperRing>*> above;
    for (const std::vector<PaperRing>& cover : wish.covers) above.push_back(&cover);
    const std::optional<PaperPoint> seen = middle_of_seen(wish.home, above);
    if (!seen) {
      out.hidden.push_back(name);
      continue;
    }
    const Ink lid = all.things[i].lid;
    out.signs.marks.emplace_back(straight(lid == Ink::cushion ? Ink::foam_dots : lid, *seen, *seen));
    wish.wordings = name_wordings(name, false);
    wish.target = *seen;
    wish.may_stand_off = true;
    wish.key = name;
    wish.place = "see the plan";
    out.wishes.push_back(std::move(wish));
  }
  return out;
}

std::vector<Note> cut_notes(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  std::vector<Note> notes{{Note::Kind::heading, "How it is drawn", 0, false, std::nullopt}};
  const auto say = [&](const std::string& words) {
    notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
  };
  say(std::string(raised_view_words));
  const std::string height = both(raised_height, plan->unit);
  say("The rear and the left wall are cut away, and the others at " + height + " or lower.");
  std::vector<std::string> cut;
  std::vector<std::string> above;
  for (const Placed& placed : of.answer->arrangement.things) {
    if (placed.piece != nullptr || is_outside(plan, placed) || is_alarm(placed) || placed.is_curtain())
      continue;
    if (placed.solid.base() >= raised_height)
      above.push_back(name_of(placed));
    else if (placed.solid.top() > raised_height)
      cut.push_back(name_of(placed));
  }
  if (!cut.empty()) say("Cut off at " + height + ": " + listed_with_and(cut) + ".");
  if (!above.empty()) say("Left off, higher than that: " + listed_with_and(above) + ".");
  std::vector<std::string> unseen;
  for (const Opening& opening : plan->openings)
    if (opening.wall == Wall::left || opening.wall == Wall::rear)
      unseen.push_back(name_of(plan, opening.id.text()));
  if (!unseen.empty()) say("In the walls cut away: " + listed_with_and(unseen) + ".");
  return notes;
}

PlanDrawing raised_drawing(const DrawnConfiguration& of, const Layout& layout) {
  const Plan& plan = *of.plan;
  const RaisedView view{layout.scale.ratio, layout.view.origin};
  const Length walls = std::min(raised_height, plan->interior.height);
  Group room{"Room", {}, 0};
  add(room.marks, raised_room(view, plan->interior.outline.polygon(), walls, Ink::quiet));
  for (const Opening& opening : plan->openings)
    if (const std::optional<PaperRing> ring = seen_opening(plan, opening, view, walls))
      room.marks.emplace_back(closed_path(Ink::quiet, *ring));
  RaisedThings all = raised_things(of);
  const NamedTops names = named_tops(all, view);
  LabelField field{layout.page.drawing, {}, {}, {}, {}};
  add_obstacles(field, room.marks);
  std::vector<Mark> bare;
  add(bare, raised_paths(view, all.things));
  add_obstacles(field, bare);
  const std::vector<PlacedLabel> labels = placed_labels(field, names.wishes);
  std::vector<PaperBox> lettering;
  for (const PlacedLabel& label : labels)
    if (!label.wording.lines.empty()) lettering.push_back(grown(label.box, paper_mm(7, 10)));
  for (RaisedThing& thing : all.things) thing.on_lid = lines_on(top_of(thing, view), thing.lid, lettering);
  Group things{"Things, raised view", {}, 0};
  add(things.marks, raised_paths(view, all.things));
  Group lettered{"Names", {}, 0};
  for (const PlacedLabel& label : labels) add(lettered.marks, marks_of(label));

  std::vector<std::string> hidden;
  if (!names.hidden.empty())
    hidden.push_back("Hidden by other things: " + listed_with_and(names.hidden) + ".");
  PlanDrawing drawing{{std::move(room), std::move(things), std::move(lettered)}, cut_notes(of)};
  for (const auto& notes :
       {key_notes(labels, names.wishes), absent_notes(of, {}, hidden), legend_notes({names.signs})})
    drawing.notes.insert(drawing.notes.end(), notes.begin(), notes.end());
  return drawing;
}

}  // namespace

std::vector<Draft> raised_drafts(const DrawnConfiguration& of) {
  const Plan& plan = *of.plan;
  std::vector<std::string> names;
  for (const Placed& placed : of.answer->arrangement.things)
    if (is_drawn_raised(plan, placed)) names.push_back(name_of(placed));
  const Term left = plan->drives_on_right ? Term::street_side : Term::curb_side;
  return fitted_drafts(
      of, raised_layouts(of),
      {name_of(*of.answer->configuration) + ", raised", "", of.answer->configuration->id.text(), "-raised",
       "Raised view, looked down on from the left wall, front at the left. It shows " +
           listed_with_and(names) + ".",
       "Looking in from the " + std::string(word(left, plan->english))},
      cut_notes(of), [&](const Layout& layout) { return raised_drawing(of, layout); });
}

}  // namespace berthwright

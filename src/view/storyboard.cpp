#include "view/storyboard.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include "view/frame.h"
#include "view/frame_words.h"
#include "view/page.h"
#include "view/plan_things.h"
#include "view/step_words.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength between_views = paper_mm(4);
constexpr PaperLength between_rows = paper_mm(4);   // with a thin line in the middle
constexpr PaperLength usual_words = paper_mm(7);    // above the views: two lines
constexpr PaperLength number_width = paper_mm(29);  // of the column in which a step's number stands
constexpr std::int64_t rows_wanted = 3;

struct Margins {
  PaperLength left;
  PaperLength right;
  PaperLength top;
  PaperLength bottom;
};

/// How all frames of one storyboard are laid out.
struct FrameLayout {
  Scale scale;
  Page page;
  Margins around;  ///< of a plan
  PaperSize plan;  ///< with its margins
  PaperSize raised;
  PaperLength under_raised;  ///< from the floor's nearest corner to the foot of the view
  std::int64_t rows = 0;

  PaperLength views() const { return std::max(plan.height, raised.height); }
  PaperLength width() const { return plan.width + between_views + raised.width; }
};

FrameLayout layout_at(const Plan& plan, const Scale& scale, bool landscape, Length height) {
  FrameLayout layout{scale, strip_page(plan, landscape), {}, {}, {}, {}, 0};
  const std::int64_t ratio = scale.ratio;
  layout.around = {beside_frame(plan, Wall::front, ratio), beside_frame(plan, Wall::rear, ratio),
                   beside_frame(plan, Wall::right, ratio), beside_frame(plan, Wall::left, ratio)};
  const Rect& room = plan->interior.outline.polygon().bounds();
  layout.plan = {on_paper(room.width(), ratio) + layout.around.left + layout.around.right,
                 on_paper(room.height(), ratio) + layout.around.top + layout.around.bottom};
  const RaisedView flat{ratio, {}};
  const PaperPoint low = flat({room.low.x, room.low.y}, {});
  const PaperPoint high = flat({room.high.x, room.high.y}, height);
  const PaperLength air = paper_mm(1);
  const bool door_behind = layout.around.top > wall_band + paper_mm(1);
  const bool door_before = layout.around.bottom > wall_band + paper_mm(1);
  layout.under_raised = air + (door_before ? paper_mm(4) : PaperLength{});
  const PaperLength above = air + (door_behind ? paper_mm(1) : PaperLength{});
  layout.raised = {high.x - low.x + layout.around.left + layout.around.right,
                   low.y - high.y + layout.under_raised + above};
  const PaperLength usual_row = usual_words + layout.views() + between_rows;
  layout.rows = layout.page.drawing.height().micrometres() / usual_row.micrometres();
  return layout;
}

// The largest scale at which some frames share a page; of both ways to hold the page the one that takes more.
FrameLayout layout_of(const Plan& plan, const Conversion& conversion) {
  const Length height = highest_drawn(plan, conversion);
  for (const Scale& scale : scales(plan->unit)) {
    std::optional<FrameLayout> best;
    for (const bool landscape : {true, false}) {
      FrameLayout layout = layout_at(plan, scale, landscape, height);
      if (layout.width() > layout.page.drawing.width() || layout.rows < rows_wanted) continue;
      if (!best || layout.rows > best->rows) best = std::move(layout);
    }
    if (best) return *best;
  }
  throw std::logic_error("no scale is small enough for a frame");
}

std::vector<Note> legend(Unit own) {
  struct Sign {
    Ink ink;
    std::string_view words;
  };
  constexpr std::array signs{
      Sign{Ink::moved_piece, "moved in this step: where it comes to"},
      Sign{Ink::ghost, "where it comes from"},
      Sign{Ink::move_way, "its way, or what is opened for it; not followed in lockers and beyond doors"},
      Sign{Ink::parked_piece, "put aside for now"},
      Sign{Ink::still_piece, "other pieces"},
      Sign{Ink::person, "place to stand and let it go"},
      Sign{Ink::hidden_person, "to take it up, where that is another"}};
  std::vector<Note> notes;
  for (const Sign& sign : signs)
    notes.push_back({Note::Kind::text, std::string(sign.words), 0, false, sign.ink});
  notes.push_back({Note::Kind::text,
                   std::string(raised_view_words) + " What is built in higher than " +
                       both(raised_height, own) + " is left off.",
                   0, false, std::nullopt});
  notes.push_back(
      {Note::Kind::text,
       "Each frame shows how all stands after its step. What the plan gives no weight for was not "
       "tested for lifting.",
       0, false, std::nullopt});
  return notes;
}

struct SetLegend {
  std::vector<Mark> marks;
  PaperLength height;
};
// Over the whole width, as low as it can be.
SetLegend set_legend(const FrameLayout& layout, Unit own) {
  const PaperBox& box = layout.page.drawing;
  for (PaperLength height = paper_mm(8);; height = height + paper_mm(1)) {
    std::vector<PaperBox> columns;
    const std::int64_t count = box.width() > paper_mm(200) ? 4 : 3;
    const PaperLength gutter = paper_mm(5);
    const PaperLength width = (box.width() - gutter * (count - 1)) / count;
    for (std::int64_t i = 0; i < count; ++i) {
      const PaperLength x = box.low.x + (width + gutter) * i;
      columns.push_back({{x, box.low.y}, {x + width, box.low.y + height}});
    }
    SetNotes set = set_notes(legend(own), columns);
    if (set.rest.empty()) return {std::move(set.marks), height + between_rows};
    if (height > box.height()) throw std::logic_error("no room for the legend of a storyboard");
  }
}

struct Row {
  std::vector<Group> groups;
  PaperLength height;
};

// What is said, above the views: the number at the left, the words beside it.
struct SaidAbove {
  std::vector<Mark> marks;
  PaperLength height;
};
SaidAbove said_above(const std::vector<Note>& notes, const PaperBox& box) {
  const PaperBox number{box.low, {box.low.x + number_width, box.high.y}};
  const PaperBox words{{number.high.x, box.low.y}, box.high};
  SaidAbove said{set_notes({notes.front()}, {number}).marks, usual_words};
  SetNotes set = set_notes(std::vector<Note>(notes.begin() + 1, notes.end()), {words});
  if (!set.rest.empty()) throw std::logic_error("a step with more words than a page holds");
  add(said.marks, std::move(set.marks));
  for (const Mark& mark : said.marks)
    if (const Text* text = std::get_if<Text>(&mark))
      said.height = std::max(said.height, text->at.y - box.low.y + paper_mm(25, 10));
  return said;
}

Row row_of(const FrameStep& of, const FrameLayout& layout, PaperLength top) {
  const Rect& room = (*of.plan)->interior.outline.polygon().bounds();
  const std::int64_t ratio = layout.scale.ratio;
  const PaperBox& page = layout.page.drawing;
  const PaperLength left = page.low.x + (page.width() - layout.width()) / 2;
  const PaperBox box{{page.low.x, top}, {page.high.x, top + page.height()}};
  std::vector<Note> notes = frame_notes(*of.plan, *of.conversion, of.number);
  SaidAbove said = said_above(notes, box);
  const auto plan_at = [&](PaperLength y) {
    const PaperBox plan{{left, y}, {left + layout.plan.width, y + layout.plan.height}};
    const PlanView view{ratio,
                        {plan.low.x + layout.around.left - on_paper(room.low.x, ratio),
                         plan.low.y + layout.around.top + on_paper(room.high.y, ratio)}};
    return plan_frame(of, view, plan);
  };
  Frame frame = plan_at(top + said.height);
  if (!frame.keys.empty()) {
    // Numbers do not depend on where on the page the frame stands.
    notes.insert(notes.end(), frame.keys.begin(), frame.keys.end());
    said = said_above(notes, box);
    frame = plan_at(top + said.height);
  }
  const PaperLength height = said.height + layout.views();
  const RaisedView flat{ratio, {}};
  const PaperPoint corner = flat(room.low, {});
  const RaisedView raised{ratio,
                          {left + layout.plan.width + between_views + layout.around.left - corner.x,
                           top + height - layout.under_raised - corner.y}};
  Group words{"Step " + std::to_string(of.number), std::move(said.marks), 0};
  return {{std::move(words), std::move(frame.group), raised_frame(of, raised)}, height};
}

// Of its row, which is higher where names need a key.
PaperLength least_height(const FrameStep& of, const FrameLayout& layout) {
  const PaperBox& page = layout.page.drawing;
  return said_above(frame_notes(*of.plan, *of.conversion, of.number), page).height + layout.views();
}

std::string steps_words(std::size_t first, std::size_t last, std::size_t count) {
  const std::string of = " of " + std::to_string(count);
  if (first == last) return "Step " + std::to_string(first) + of;
  return "Steps " + std::to_string(first) + " to " + std::to_string(last) + of;
}

void name_draft(Draft& draft, const Conversion& conversion) {
  draft.id = conversion.from->id.text();
  draft.suffix = "-to-" + plain_stem(conversion.to->id.text()) + "-steps";
}

std::vector<Draft> without_order(const Plan& plan, const Conversion& conversion) {
  Draft draft = draft_of(plan, pair_words(conversion) + ", steps", "none", notes_page(plan));
  name_draft(draft, conversion);
  std::vector<Draft> drafts;
  add_notes_pages(drafts, plan, draft, no_story_notes(plan, conversion));
  for (Draft& one : drafts) {
    one.drawing = draft.drawing;
    one.suffix = draft.suffix;
    one.sheet.title = draft.sheet.title;
  }
  return drafts;
}

}  // namespace

std::vector<Draft> story_drafts(const Plan& plan, const Conversion& conversion) {
  if (conversion.verdict != Conversion::Verdict::order) return without_order(plan, conversion);
  const std::size_t count = conversion.steps.size();
  if (count == 0) return {};
  const FrameLayout layout = layout_of(plan, conversion);
  const SetLegend legend = set_legend(layout, plan->unit);
  const PaperBox& box = layout.page.drawing;
  std::vector<Draft> drafts;
  std::size_t next = 1;
  while (next <= count) {
    Draft draft =
        draft_of(plan, pair_words(conversion) + ", steps", std::string(layout.scale.words), layout.page);
    name_draft(draft, conversion);
    draft.sheet.scale = layout.scale.ratio;
    const std::size_t first = next;
    PaperLength top = box.low.y;
    Group legend_group{"Legend", {}, 0};
    Group rules{"Lines between the steps", {}, 0};
    if (first == 1) {
      legend_group.marks = legend.marks;
      top = top + legend.height;
    }
    std::string told = "One frame a step: a plan seen from above, front at the left, and a raised view.";
    while (next <= count) {
      const PaperLength left = box.high.y - top;
      if (next > first && least_height({&plan, &conversion, next}, layout) > left) break;
      Row row = row_of({&plan, &conversion, next}, layout, top);
      if (next > first && row.height > left) break;
      told += " Step " + std::to_string(next) + ": " + step_sentence(plan, conversion.steps[next - 1]);
      if (top > box.low.y)
        rules.marks.emplace_back(
            straight(Ink::rule, {box.low.x, top - between_rows / 2}, {box.high.x, top - between_rows / 2}));
      for (Group& group : row.groups) draft.sheet.groups.push_back(std::move(group));
      top = top + row.height + between_rows;
      ++next;
    }
    draft.subject = steps_words(first, next - 1, count);
    draft.sheet.title += ", " + draft.subject;
    draft.sheet.description = told;
    for (Group& group : foot_groups(plan, layout.page, layout.scale.ratio))
      draft.sheet.groups.push_back(std::move(group));
    for (Group* group : {&rules, &legend_group})
      if (!group->marks.empty()) draft.sheet.groups.push_back(std::move(*group));
    drafts.push_back(std::move(draft));
  }
  return drafts;
}

}  // namespace berthwright

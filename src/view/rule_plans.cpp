#include "view/rule_plans.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/label_wishes.h"
#include "view/page.h"
#include "view/plan_notes.h"
#include "view/site_sheet.h"
#include "view/siting_words.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength between_cells = paper_mm(5);
constexpr PaperLength least_cell = paper_mm(46);  // for its words
constexpr PaperLength tall = paper_mm(60);        // more than the words of a cell ever are

/// One small plan.
struct RuleCell {
  std::string heading;
  std::string words;
  Region taken;          ///< by one rule
  bool is_last = false;  ///< what all rules leave
};

/// What all cells are about.
struct Ruled {
  const SitedScope& of;
  std::vector<ShownPlace> places;
  const SiteRegions* way = nullptr;
  Region room;
};

Region taken_by(const Ruled& ruled, SiteRule rule, const Region& region) {
  // Beyond the frame the heater stands in a wall.
  const Region beyond = without(ruled.room, *ruled.way->frame);
  return common(rule == SiteRule::room ? united(region, beyond) : region, ruled.room);
}

std::vector<std::string> letters(const Ruled& ruled) {
  std::vector<std::string> all;
  for (const ShownPlace& shown : ruled.places) all.push_back(shown.letter);
  return all;
}

std::string left_of_all(const Ruled& ruled, const SiteRegions& way) {
  return share_text(way.free.area(), ruled.room.area(), Rounding::down);
}

std::vector<RuleCell> cells_of(const Ruled& ruled) {
  std::vector<RuleCell> cells;
  const Area whole = ruled.room.area();
  for (const auto& [rule, region] : ruled.way->forbidden) {
    const Region taken = taken_by(ruled, rule, region);
    if (taken.empty()) continue;
    std::string words = "Takes " + share_text(taken.area(), whole, Rounding::up) + " of the room.";
    // Nobody sets walls and furniture aside.
    if (rule != SiteRule::room && rule != SiteRule::solids)
      words += " Without it all others would leave " +
               share_text(left_without(*ruled.way, std::array{rule}).area(), whole, Rounding::down) + ".";
    cells.push_back({capital_first(rules_text(std::array{rule})), words, taken, false});
  }
  const bool has_place = ruled.of.scope->has_place();
  cells.push_back({"All rules together",
                   "They leave " + left_of_all(ruled, *ruled.way) + ". " + listed_with_and(letters(ruled)) +
                       (has_place                  ? ": most to spare."
                        : ruled.places.size() == 1 ? ": the best that can be had."
                                                   : ": the best that can be had without one of them."),
                   {},
                   true});
  return cells;
}

std::vector<Note> notes_of(const Ruled& ruled) {
  const SitedScope& of = ruled.of;
  const Plan& plan = of.plan();
  std::vector<Note> notes = site_warning(of);
  const auto say = [&](const std::string& words) {
    notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
  };
  const auto way_text = [&](Wall way) { return std::string(word(term_of(way), plan->english)); };
  notes.push_back({Note::Kind::heading, asked_of(of), 0, false, std::nullopt});
  say("A place is where the corner of " + name_of(plan, of.heater->heater) +
      " nearest to the front and the left wall stands, dotted on the heater drawn. Hatched: places that the "
      "rule takes while its front looks to the " +
      way_text(ruled.way->faces) + ", as at " + ruled.places.front().letter + ".");
  std::string left;
  for (const SiteRegions& way : of.scope->ways)
    left += (left.empty() ? "" : ", ") + way_text(way.faces) + " " + left_of_all(ruled, way);
  say(of.scope->has_place() ? "All rules leave of the room, by the way it looks: " + left + "."
                            : "All rules leave nothing, whichever way it looks.");
  std::vector<std::string> idle;
  const bool has_cord = plan.piece(of.heater->heater) != nullptr;
  for (const auto& [rule, region] : ruled.way->forbidden)
    if (taken_by(ruled, rule, region).empty() && (rule != SiteRule::cord || has_cord) &&
        std::ranges::find(of.heater->not_compared, rule) == of.heater->not_compared.end())
      idle.push_back(rules_text(std::array{rule}));
  if (!idle.empty()) say("Nothing is taken by " + listed_with_and(idle) + ".");
  for (const std::string& lacking : lacking_sentences(plan, *of.heater)) say("Unknown: " + lacking);
  for (const ShownPlace& shown : ruled.places) say(shown_text(of, shown));
  return notes;
}

struct Edging {
  PaperLength left;
  PaperLength right;
  PaperLength top;
  PaperLength bottom;
};

/// Where everything stands on its page.
struct Grid {
  Scale scale{};
  Page page;
  Edging around;
  PaperSize plan;
  std::int64_t columns = 0;
  PaperLength cell;   ///< width
  PaperLength words;  ///< height above each plan
  PaperLength top;    ///< height of the notes

  PaperLength row() const { return words + plan.height + between_cells; }
  std::int64_t rows_on(PaperLength height) const {
    return (height + between_cells).micrometres() / row().micrometres();
  }
};

std::vector<Note> notes_of(const RuleCell& cell) {
  return {{Note::Kind::heading, cell.heading, 0, false, std::nullopt},
          {Note::Kind::text, cell.words, 0, false, std::nullopt}};
}

std::vector<Mark> words_in(const std::vector<Note>& notes, const PaperBox& box) {
  SetNotes set = set_notes(notes, {box});
  if (!set.rest.empty()) throw std::logic_error("a rule with more words than its cell holds");
  return std::move(set.marks);
}

PaperLength height_of_words(const RuleCell& cell, PaperLength width) {
  PaperLength height;
  for (const Mark& mark : words_in(notes_of(cell), {{}, {width, tall}}))
    if (const Text* text = std::get_if<Text>(&mark)) height = std::max(height, text->at.y + paper_mm(2));
  return height;
}

std::optional<Grid> grid_at(const Plan& plan, const Scale& scale, bool landscape,
                            const std::vector<RuleCell>& cells) {
  Grid grid{scale, strip_page(plan, landscape), {}, {}, 0, {}, {}, {}};
  const std::int64_t ratio = scale.ratio;
  const Rect& room = plan->interior.outline.polygon().bounds();
  grid.around = {wall_depth(plan, Wall::front, ratio), wall_depth(plan, Wall::rear, ratio),
                 wall_depth(plan, Wall::right, ratio), wall_depth(plan, Wall::left, ratio)};
  grid.plan = {on_paper(room.width(), ratio) + grid.around.left + grid.around.right,
               on_paper(room.height(), ratio) + grid.around.top + grid.around.bottom};
  const PaperLength width = grid.page.drawing.width();
  const PaperLength needed = std::max(grid.plan.width, least_cell);
  grid.columns = std::min((width + between_cells).micrometres() / (needed + between_cells).micrometres(),
                          static_cast<std::int64_t>(cells.size()));
  if (grid.columns == 0) return std::nullopt;
  grid.cell = (width - between_cells * (grid.columns - 1)) / grid.columns;
  for (const RuleCell& cell : cells) grid.words = std::max(grid.words, height_of_words(cell, grid.cell));
  return grid;
}

// The largest scale at which all cells share the page with the notes; else the largest at which a page holds
// some.
Grid grid_of(const Plan& plan, const std::vector<RuleCell>& cells, const std::vector<Note>& notes) {
  std::optional<Grid> some;
  for (const Scale& scale : scales(plan->unit))
    for (const bool landscape : {true, false}) {
      std::optional<Grid> grid = grid_at(plan, scale, landscape, cells);
      if (!grid) continue;
      const PaperBox& box = grid->page.drawing;
      grid->top = set_across(notes, box).height + between_cells;
      const std::int64_t rows = grid->rows_on(box.height() - grid->top);
      if (rows * grid->columns >= static_cast<std::int64_t>(cells.size())) return *grid;
      if (!some && rows > 0) some = std::move(grid);
    }
  if (!some) throw std::logic_error("no scale is small enough for the plan of a rule");
  return *some;
}

void add_left(const Ruled& ruled, const PlanView& view, const PaperBox& area, std::vector<Mark>& marks) {
  const Region& free = ruled.way->free;
  if (!free.empty()) {
    for (Path& line : diagonals_in(view(free), pitch_of(Ink::site_region), Diagonal::rising, {})) {
      line.ink = Ink::site_hatch;
      marks.emplace_back(std::move(line));
    }
    add(marks, paths_of(view, free, {}, Ink::site_region));
  }
  std::vector<LabelWish> wishes;
  for (const ShownPlace& shown : ruled.places) {
    add(marks, place_paths(*shown.place, view));
    marks.emplace_back(circle(Ink::leader_dot, view(shown.place->box.low), paper_mm(6, 10)));
    wishes.push_back(letter_wish(*ruled.of.in.front(), view, shown));
    wishes.back().target = view(shown.place->box.high);
    wishes.back().may_touch = true;
  }
  LabelField field{area, {}, {}, {}, {}};
  add_obstacles(field, marks);
  for (const PlacedLabel& label : placed_labels(field, wishes))
    if (label.number == 0) add(marks, marks_of(label));
}

Group plan_of(const Ruled& ruled, const RuleCell& cell, const Grid& grid, PaperPoint corner) {
  const Plan& plan = ruled.of.plan();
  const Rect& room = plan->interior.outline.polygon().bounds();
  const PaperPoint low{corner.x + (grid.cell - grid.plan.width) / 2, corner.y + grid.words};
  const std::int64_t ratio = grid.scale.ratio;
  const PlanView view{ratio,
                      {low.x + grid.around.left - on_paper(room.low.x, ratio),
                       low.y + grid.around.top + on_paper(room.high.y, ratio)}};
  Group group = quiet_plan(*ruled.of.in.front(), view);
  group.title = cell.heading;
  for (Group& beds : bedding_groups(ruled.of, view)) add(group.marks, std::move(beds.marks));
  if (cell.is_last) {
    add_left(ruled, view, {low, {low.x + grid.plan.width, low.y + grid.plan.height}}, group.marks);
    return group;
  }
  add(group.marks, diagonals_in(view(cell.taken), pitch_of(Ink::site_taken), Diagonal::falling, {}));
  add(group.marks, paths_of(view, cell.taken, {}, Ink::site_taken));
  return group;
}

Group cell_group(const Ruled& ruled, const RuleCell& cell, const Grid& grid, PaperPoint corner) {
  Group group{cell.heading, words_in(notes_of(cell), {corner, {corner.x + grid.cell, corner.y + tall}}), 0};
  add(group.marks, plan_of(ruled, cell, grid, corner).marks);
  return group;
}

// What is drawn does not depend on the scale.
std::vector<Note> legend_of(const Ruled& ruled, const std::vector<RuleCell>& cells) {
  const Plan& plan = ruled.of.plan();
  for (const Scale& scale : scales(plan->unit))
    if (const std::optional<Grid> grid = grid_at(plan, scale, true, cells)) {
      std::vector<Group> groups;
      for (const RuleCell& cell : cells)
        groups.push_back(plan_of(ruled, cell, *grid, grid->page.drawing.low));
      return legend_notes(groups);
    }
  return {};
}

Draft page_of(const SitedScope& of, const Grid& grid) {
  const Plan& plan = of.plan();
  Draft draft = draft_of(plan, when_title(of) + ", site rules", std::string(grid.scale.words), grid.page);
  draft.subject = subject_of(of);
  draft.sheet.scale = grid.scale.ratio;
  draft.id = when_id(of);
  draft.suffix = "-site-rules";
  return draft;
}

}  // namespace

std::string share_text(Area part, Area whole, Rounding rounding) {
  if (part.doubled() == 0) return "nothing";
  if (part >= whole) return "all";
  const Int128 scaled = part.doubled() * 100;
  const Int128 floored = scaled / whole.doubled();
  if (rounding == Rounding::up) {
    const auto percent = static_cast<std::int64_t>(floored + (scaled % whole.doubled() != 0 ? 1 : 0));
    return percent == 100 ? "more than 99 %" : std::to_string(percent) + " %";
  }
  return floored == 0 ? "less than 1 %" : std::to_string(static_cast<std::int64_t>(floored)) + " %";
}

std::vector<Draft> rule_drafts(const SitedScope& of) {
  Ruled ruled{of, shown_places(of.plan(), *of.scope, Outlets::left_out), nullptr,
              Region(of.plan()->interior.outline.polygon())};
  if (ruled.places.empty()) return {};
  ruled.way = &*std::ranges::find(of.scope->ways, ruled.places.front().place->faces, &SiteRegions::faces);
  const std::vector<RuleCell> cells = cells_of(ruled);
  std::vector<Note> notes = notes_of(ruled);
  for (Note& sign : legend_of(ruled, cells)) notes.push_back(std::move(sign));
  const Grid grid = grid_of(of.plan(), cells, notes);
  const PaperBox& box = grid.page.drawing;
  std::vector<Draft> drafts;
  std::vector<Note> rest;
  auto next = cells.begin();
  while (next != cells.end()) {
    Draft draft = page_of(of, grid);
    std::string told = "One small plan a rule, seen from above, front at the left.";
    PaperLength top = box.low.y;
    if (drafts.empty()) {
      told = description_of(told, notes);
      NotesAcross set = set_across(notes, box);
      draft.sheet.groups.push_back({"Notes", std::move(set.marks), 0});
      rest = std::move(set.rest);
      top = top + grid.top;
    }
    for (; next != cells.end() && top + grid.row() - between_cells <= box.high.y; top = top + grid.row())
      for (std::int64_t i = 0; i < grid.columns && next != cells.end(); ++i, ++next) {
        told += " " + next->heading + ": " + next->words;
        draft.sheet.groups.push_back(
            cell_group(ruled, *next, grid, {box.low.x + (grid.cell + between_cells) * i, top}));
      }
    draft.sheet.description = told;
    for (Group& group : foot_groups(of.plan(), grid.page, grid.scale.ratio))
      draft.sheet.groups.push_back(std::move(group));
    drafts.push_back(std::move(draft));
  }
  const Draft first = drafts.front();
  add_notes_pages(drafts, of.plan(), first, std::move(rest));
  return drafts;
}

}  // namespace berthwright

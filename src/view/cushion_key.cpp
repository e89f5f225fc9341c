#include "view/cushion_key.h"

#include <algorithm>
#include <optional>
#include <stdexcept>

#include <berthwright/solve/open/road.h>
#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>

#include "view/called.h"
#include "view/cover_words.h"
#include "view/cushion_outline.h"
#include "view/cushion_words.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/plan_notes.h"
#include "view/shape_words.h"
#include "view/walls.h"

namespace berthwright {
namespace {

constexpr PaperLength between_columns = paper_mm(5);
constexpr PaperLength between_cushions = paper_mm(6);  // with a thin line in the middle
constexpr PaperLength between_places = paper_mm(4);
constexpr PaperLength under_words = paper_mm(3);
constexpr PaperLength caption = paper_mm(4);  // over each small plan
constexpr std::size_t most_places = 4;
constexpr PaperLength tallest_place = paper_mm(28);
constexpr PaperLength tallest_of_all = paper_mm(45);
constexpr std::int64_t smallest_readable = 100;

/// All that the key shows.
struct CushionKey {
  const Plan& plan;
  std::span<const Cover> covers;
  std::vector<Arrangement> stood;  ///< off the road
  std::vector<std::string> letters;
};

CushionKey key_of(const Plan& plan, std::span<const Cover> covers) {
  CushionKey key{plan, covers, {}, cover_letters(plan, covers)};
  for (const Configuration& configuration : plan->configurations)
    if (!is_on_the_road(configuration)) key.stood.push_back(arranged(plan, configuration).value());
  return key;
}

/// The small plans beside each other, in at most two rows.
struct PlacesGrid {
  Scale scale{};
  PaperSize one{};  ///< with the wall around it and what its doors reach
  std::size_t count = 0;
  std::size_t columns = 1;

  PaperLength height() const {
    const auto rows = static_cast<std::int64_t>((count + columns - 1) / columns);
    return rows == 0 ? PaperLength{} : (one.height + caption + between_places) * rows - between_places;
  }
  PaperPoint corner_of(std::size_t place, PaperPoint low) const {
    const auto column = static_cast<std::int64_t>(place % columns);
    const auto row = static_cast<std::int64_t>(place / columns);
    return {low.x + (one.width + between_places) * column,
            low.y + (one.height + caption + between_places) * row};
  }
};

// As many as fit into so many rows at the scale; none where not even one does.
PlacesGrid places_at(const CushionKey& key, const Scale& scale, PaperLength width, std::size_t rows,
                     PaperLength tallest) {
  const Rect& room = key.plan->interior.outline.polygon().bounds();
  const auto depth = [&](Wall wall) { return wall_depth(key.plan, wall, scale.ratio); };
  PlacesGrid grid{scale,
                  {on_paper(room.width(), scale.ratio) + depth(Wall::front) + depth(Wall::rear),
                   on_paper(room.height(), scale.ratio) + depth(Wall::left) + depth(Wall::right)},
                  0,
                  1};
  if (grid.one.height > tallest || grid.one.width > width) return grid;
  grid.columns = static_cast<std::size_t>((width + between_places).micrometres() /
                                          (grid.one.width + between_places).micrometres());
  grid.count = std::min({key.stood.size(), most_places, grid.columns * rows});
  return grid;
}

// The largest scale at which all stand in a row and a person can still read them, else in two; else those
// that do.
PlacesGrid places_grid(const CushionKey& key, PaperLength width) {
  const std::size_t wanted = std::min(key.stood.size(), most_places);
  if (wanted == 0) return {};
  for (const std::size_t rows : {std::size_t{1}, std::size_t{2}})
    for (const Scale& scale : scales(key.plan->unit))
      if (const PlacesGrid grid = places_at(key, scale, width, rows, tallest_place);
          grid.count == wanted && scale.ratio <= smallest_readable)
        return grid;
  for (const PaperLength tallest : {tallest_place, tallest_of_all})
    for (const Scale& scale : scales(key.plan->unit))
      if (const PlacesGrid grid = places_at(key, scale, width, 2, tallest); grid.count > 0) return grid;
  throw std::logic_error("no scale is small enough for the place of a cushion");
}

std::vector<Mark> place_marks(const CushionKey& key, const Cover& cover, const Arrangement& stood,
                              const PlacesGrid& grid, PaperPoint corner) {
  const Plan& plan = key.plan;
  const std::int64_t ratio = grid.scale.ratio;
  const Rect& room = plan->interior.outline.polygon().bounds();
  const PaperPoint low{corner.x, corner.y + caption};
  const PlanView view{ratio,
                      {low.x + wall_depth(plan, Wall::front, ratio) - on_paper(room.low.x, ratio),
                       low.y + wall_depth(plan, Wall::right, ratio) + on_paper(room.high.y, ratio)}};
  std::vector<Mark> marks = room_marks(view, plan->interior);
  const auto add_quiet = [&](Path path, bool overhead) {
    path.ink = overhead ? Ink::quiet_overhead : Ink::quiet;
    marks.emplace_back(std::move(path));
  };
  for (const PlanThing& thing : plan_things(view, plan, stood))
    if (!is_alarm(*thing.placed))
      for (const Path& path : thing.paths) add_quiet(path, thing.overhead);
  for (const Opening& opening : plan->openings) add(marks, opening_marks(view, plan, opening));
  const Placed* self = stood.find(cover.piece->id.text());
  // What reaches out of the room would lie over the words.
  if (self != nullptr)
    add(marks, paths_of(view, common(self->pose->outline, Region(plan->interior.outline.polygon())),
                        self->pose->arcs, Ink::moved_piece));
  const std::string words = when_of(*stood.configuration) + (self == nullptr ? ", kept away" : "");
  marks.emplace_back(Text{Ink::note,
                          {corner.x, corner.y + lettering::note},
                          lettering::note,
                          Anchor::start,
                          false,
                          shortened(words, lettering::note, grid.one.width)});
  return marks;
}

std::vector<Note> key_words(const CushionKey& key, std::size_t number, const SetCushion& set) {
  const Cover& cover = key.covers[number];
  const Piece& piece = *cover.piece;
  const CoverTerms terms = cover_terms(key.plan->english);
  std::vector<Note> notes{
      {Note::Kind::heading, lettered_name(key.letters[number], piece), 0, false, std::nullopt}};
  const auto say = [&](const std::string& words) {
    if (!words.empty()) notes.push_back({Note::Kind::text, words, 0, false, std::nullopt});
  };
  say(cut_size({piece.length, piece.width, piece.thickness}, key.plan->unit) + " finished.");
  say("Foam: " + foam_sentence(key.plan, cover));
  const Fabric& fabric = cover.sewing.fabric;
  say("Fabric: " + (fabric.name.empty() ? "unknown" : fabric.name) + ".");
  if (cover.shaped) say("Cover: " + std::string(word(cover.sewing.shape)) + ".");
  if (const std::string zip = zip_place_sentence(key.plan, cover); !zip.empty())
    say(capital_first(terms.zip) + ": " + zip);
  say(up_sentence(cover));
  say(radius_sentence(key.plan, cover.rim));
  for (const std::string& words : set.around.in_words) say(words);
  for (const Arrangement& stood : key.stood) say(cushion_place_sentence(key.plan, stood, piece));
  return notes;
}

std::vector<Note> key_legend(const CushionKey& key, const PlacesGrid& grid) {
  const CoverTerms terms = cover_terms(key.plan->english);
  std::vector<Note> notes;
  const auto sign = [&](Ink ink, const std::string& words) {
    notes.push_back({Note::Kind::text, words, 0, false, ink});
  };
  sign(Ink::cushion, "finished outline, seam to seam, as it lies unturned: front at the left");
  if (std::ranges::any_of(key.covers, has_zip_edge))
    sign(Ink::zip_run, std::string(terms.zip) + ", with what reaches round the corners");
  if (std::ranges::any_of(key.covers, [](const Cover& cover) { return cover.up.has_value(); }))
    sign(Ink::direction, "up: the way that nap and pattern point");
  if (grid.count > 0)
    sign(Ink::moved_piece,
         "small plans " + std::string(grid.scale.words) + ": where it lies, front at the left");
  return notes;
}

/// How all cushions are laid out.
struct KeyLayout {
  Page page;
  Scale scale{};
  std::vector<SetCushion> cushions;
  PaperLength left;  ///< width of the outlines
  PlacesGrid places;
  NotesAcross legend;
};

struct KeyRow {
  std::size_t number;
  PaperLength top;
  std::vector<Mark> words;
  PaperLength under;  ///< from the top to the small plans
  PaperLength height;
};

KeyRow row_at(const CushionKey& key, const KeyLayout& layout, std::size_t number, PaperLength top) {
  const PaperBox& box = layout.page.drawing;
  const PaperBox beside{{box.low.x + layout.left + between_columns, top}, {box.high.x, top + box.height()}};
  SetNotes set = set_notes(key_words(key, number, layout.cushions[number]), {beside});
  if (!set.rest.empty()) throw std::logic_error("a cushion with more words than a page holds");
  KeyRow row{number, top, std::move(set.marks), {}, {}};
  row.under = last_baseline(row.words, top) - top + under_words;
  row.height = std::max(layout.cushions[number].height, row.under + layout.places.height());
  return row;
}

// How many pages all rows take; none where one is higher than a page.
std::optional<std::size_t> pages_of(const CushionKey& key, const KeyLayout& layout) {
  const PaperBox& box = layout.page.drawing;
  std::size_t pages = 1;
  bool fresh = true;
  PaperLength top = box.low.y + layout.legend.height + under_words;
  for (std::size_t i = 0; i < key.covers.size(); ++i) {
    const PaperLength height = row_at(key, layout, i, top).height;
    if (!fresh && top + height > box.high.y) {
      ++pages;
      top = box.low.y;
      fresh = true;
    }
    if (fresh && top + height > box.high.y) return std::nullopt;
    top = top + height + between_cushions;
    fresh = false;
  }
  return pages;
}

// The small plans as large as they can be without a page more: what would stay empty is theirs.
KeyLayout roomier(const CushionKey& key, KeyLayout layout) {
  const PaperBox& box = layout.page.drawing;
  const std::optional<std::size_t> pages = pages_of(key, layout);
  if (!pages) return layout;
  for (const Scale& scale : scales(key.plan->unit)) {
    if (scale.ratio >= layout.places.scale.ratio) break;
    for (const std::size_t rows : {std::size_t{1}, std::size_t{2}}) {
      KeyLayout larger = layout;
      larger.places = places_at(key, scale, box.width() - layout.left - between_columns, rows, box.height());
      if (larger.places.count < layout.places.count) continue;
      larger.legend = set_across(key_legend(key, larger.places), box);
      if (pages_of(key, larger) == pages) return larger;
    }
  }
  return layout;
}

// The largest scale at which the outlines leave half of the width and two share a page.
KeyLayout key_layout(const CushionKey& key) {
  KeyLayout layout{strip_page(key.plan, false), {}, {}, {}, {}, {}};
  const PaperBox& box = layout.page.drawing;
  for (const Scale& scale : scales(key.plan->unit)) {
    layout.scale = scale;
    layout.cushions.clear();
    layout.left = {};
    PaperLength height;
    for (std::size_t i = 0; i < key.covers.size(); ++i) {
      layout.cushions.push_back(set_cushion(key.covers[i], key.letters[i], scale.ratio, key.plan->unit));
      layout.left = std::max(layout.left, layout.cushions.back().width);
      height = std::max(height, layout.cushions.back().height);
    }
    if (layout.left <= box.width() * 55 / 100 && height <= box.height() * 2 / 5) {
      layout.places = places_grid(key, box.width() - layout.left - between_columns);
      layout.legend = set_across(key_legend(key, layout.places), box);
      return roomier(key, std::move(layout));
    }
  }
  throw std::logic_error("no scale is small enough for a cushion");
}

void add_cushion(const CushionKey& key, const KeyLayout& layout, KeyRow row, Sheet& sheet) {
  const Cover& cover = key.covers[row.number];
  const PaperBox& box = layout.page.drawing;
  const SetCushion& set = layout.cushions[row.number];
  const std::string name = lettered_name(key.letters[row.number], *cover.piece);
  sheet.description += description_of(" ", key_words(key, row.number, set));
  sheet.groups.push_back({name, std::move(row.words), 0});
  sheet.groups.push_back(
      {name + ", outline", cushion_marks(set, layout.scale.ratio, key.plan->unit, {box.low.x, row.top}), 0});
  const PaperPoint low{box.low.x + layout.left + between_columns, row.top + row.under};
  for (std::size_t i = 0; i < layout.places.count; ++i) {
    const PaperPoint corner = layout.places.corner_of(i, low);
    sheet.groups.push_back({name + ", " + name_of(*key.stood[i].configuration),
                            place_marks(key, cover, key.stood[i], layout.places, corner), 0});
  }
}

}  // namespace

std::vector<Draft> key_drafts(const Plan& plan, std::span<const Cover> covers) {
  if (covers.empty()) return {};
  const CushionKey key = key_of(plan, covers);
  KeyLayout layout = key_layout(key);
  const PaperBox& box = layout.page.drawing;
  std::vector<Draft> drafts;
  std::size_t next = 0;
  while (next < covers.size()) {
    Draft draft = draft_of(plan, "Cushions, key", std::string(layout.scale.words), layout.page);
    draft.id = "cushions";
    draft.suffix = "-key";
    draft.sheet.scale = layout.scale.ratio;
    draft.sheet.description = "Each cushion as it lies unturned, front at the left, with its measures.";
    PaperLength top = box.low.y;
    if (next == 0) {
      draft.sheet.groups.push_back({"Signs", std::move(layout.legend.marks), 0});
      top = top + layout.legend.height + under_words;
    }
    Group rules{"Lines between the cushions", {}, 0};
    const std::size_t first = next;
    for (; next < covers.size(); ++next) {
      KeyRow row = row_at(key, layout, next, top);
      if (top + row.height > box.high.y && next > first) break;
      if (next > first)
        rules.marks.emplace_back(straight(Ink::rule, {box.low.x, top - between_cushions / 2},
                                          {box.high.x, top - between_cushions / 2}));
      top = top + row.height + between_cushions;
      add_cushion(key, layout, std::move(row), draft.sheet);
    }
    draft.subject = key.letters[first];
    if (next > first + 1) draft.subject += " to " + key.letters[next - 1];
    draft.sheet.title += ", " + draft.subject;
    if (!rules.marks.empty()) draft.sheet.groups.push_back(std::move(rules));
    for (Group& group : foot_groups(plan, layout.page, layout.scale.ratio))
      draft.sheet.groups.push_back(std::move(group));
    drafts.push_back(std::move(draft));
  }
  return drafts;
}

}  // namespace berthwright

#include "view/notes.h"

#include <algorithm>
#include <stdexcept>

#include "view/hatching.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/signs.h"

namespace berthwright {
namespace {

constexpr PaperLength swatch_width = paper_mm(8);
constexpr PaperLength swatch_height = paper_mm(28, 10);
constexpr PaperLength triangle_width = paper_mm(4);
constexpr PaperLength between_paragraphs = paper_mm(9, 10);  // paragraphs
constexpr PaperLength above_heading = paper_mm(2);

constexpr PaperLength sign_in_notes = paper_mm(17, 10);

bool is_heading(const Note& note) {
  return note.kind == Note::Kind::heading || note.kind == Note::Kind::alert;
}

PaperLength indent(const Note& note) {
  if (note.kind == Note::Kind::alert) return triangle_width + paper_mm(15, 10);
  if (note.swatch) return swatch_width + paper_mm(2);
  if (note.number > 0) return lettering::ring + paper_mm(12, 10);
  return {};
}

PaperLength size_of(const Note& note) { return is_heading(note) ? lettering::heading : lettering::note; }

PaperLength space_after(const Note& note) {
  // Rings and signs stand well apart by themselves.
  const bool short_row = note.number > 0 || note.swatch;
  return note.goes_on ? PaperLength{} : short_row ? paper_mm(55, 100) : between_paragraphs;
}

std::vector<std::string> lines_of(const Note& note, PaperLength width) {
  return wrapped(unbroken_measures(note.words), size_of(note), width - indent(note));
}

/// A paragraph as it is set in a column of one width.
struct SetPart {
  Note note;
  std::vector<std::string> lines;
  PaperLength height;
};

SetPart part_of(Note note, PaperLength width) {
  SetPart part{std::move(note), {}, {}};
  part.lines = lines_of(part.note, width);
  const PaperLength after = space_after(part.note);
  part.height = lettering::note_pitch * static_cast<std::int64_t>(part.lines.size()) + after;
  if (part.note.number > 0) part.height = std::max(part.height, lettering::ring + after);
  if (is_heading(part.note)) part.height = part.height + above_heading;
  return part;
}

Ink ink_of(const Note& note) {
  switch (note.kind) {
    case Note::Kind::heading:
    case Note::Kind::alert:
      return Ink::label;
    case Note::Kind::text:
      return Ink::note;
    case Note::Kind::caution:
      return Ink::caution;
  }
  throw std::logic_error("Note::Kind out of range");
}

PaperRing corners_of(const PaperBox& box) {
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

// One case for each ink.
// NOLINTNEXTLINE(readability-function-size)
void add_swatch(std::vector<Mark>& marks, Ink ink, PaperPoint corner) {
  const PaperBox box{corner, {corner.x + swatch_width, corner.y + swatch_height}};
  const PaperPoint left{corner.x, box.centre().y};
  const PaperPoint right{box.high.x, box.centre().y};
  const PaperPoint left_foot{box.low.x, box.high.y};
  switch (ink) {
    case Ink::bed_outline:
    case Ink::made_up:
    case Ink::sleeping_rectangle:
    case Ink::heat_line:
    case Ink::section_cut:
    case Ink::wall:
    case Ink::cord:
    case Ink::zip_run:
    case Ink::chassis:
      marks.emplace_back(straight(ink, left, right));
      return;
    case Ink::direction:
      marks.emplace_back(straight(ink, left, {right.x - paper_mm(2), right.y}));
      marks.emplace_back(arrow_head(right, left));
      return;
    case Ink::pinch:
      marks.emplace_back(straight(ink, left, right));
      marks.emplace_back(arrow_head(left, right));
      marks.emplace_back(arrow_head(right, left));
      return;
    case Ink::ridge:
      marks.emplace_back(ridge_sign(box.centre()));
      return;
    case Ink::alarm:
      for (Path& ring : alarm_sign(box.centre())) marks.emplace_back(std::move(ring));
      return;
    case Ink::alert:
      add(marks, heat_sign(box.centre(), sign_in_notes));
      return;
    case Ink::sign_exit:
      add(marks, exit_sign(box.centre(), Wall::right, sign_in_notes));
      return;
    case Ink::sign_shut:
      add(marks, shut_sign(box.centre(), sign_in_notes));
      return;
    case Ink::sign_alarm:
      add(marks, alarm_square(box.centre(), sign_in_notes));
      return;
    case Ink::sign_outlet:
      add(marks, outlet_sign(box.centre(), paper_mm(15, 10)));
      return;
    case Ink::balance:
      add(marks, balance_sign(box.centre(), paper_mm(15, 10)));
      return;
    case Ink::wheel:
      add(marks, wheel_sign(box.centre()));
      return;
    case Ink::coupling:
      add(marks, coupling_sign(box.centre()));
      return;
    case Ink::move_way: {
      marks.emplace_back(straight(ink, left, right));
      Path head = berthwright::arrow_head(right, left);
      head.ink = Ink::move_head;
      marks.emplace_back(std::move(head));
      return;
    }
    case Ink::zone_published:
    case Ink::zone_plate:
    case Ink::site_region:
    case Ink::balance_area:
      for (Path& line : diagonals_in({corners_of(box)}, pitch_of(ink),
                                     ink == Ink::zone_plate ? Diagonal::falling : Diagonal::rising, {})) {
        line.ink = ink == Ink::site_region    ? Ink::site_hatch
                   : ink == Ink::balance_area ? Ink::balance_hatch
                                              : Ink::zone_hatch;
        marks.emplace_back(std::move(line));
      }
      marks.emplace_back(ink == Ink::site_region || ink == Ink::balance_area
                             ? closed_path(ink, box)
                             : straight(ink, left_foot, box.high));
      return;
    case Ink::site_taken:
      marks.emplace_back(closed_path(ink, box));
      add(marks, diagonals_in({corners_of(box)}, pitch_of(ink), Diagonal::falling, {}));
      return;
    case Ink::site_place:
      marks.emplace_back(closed_path(ink, grown(box, -paper_mm(3, 10))));
      marks.emplace_back(arrow_head({right.x - paper_mm(3, 10), right.y}, left, paper_mm(15, 10)));
      return;
    case Ink::way_band:
      marks.emplace_back(closed_path(ink, box));
      marks.emplace_back(straight(Ink::way_path, left, right));
      marks.emplace_back(arrow_head(right, left));
      return;
    case Ink::clash:
      for (const Diagonal way : {Diagonal::rising, Diagonal::falling})
        for (Path& line : diagonals_in({corners_of(box)}, paper_mm(2), way, {}))
          marks.emplace_back(std::move(line));
      marks.emplace_back(closed_path(ink, box));
      return;
    case Ink::off_level:
      marks.emplace_back(closed_path(Ink::cushion, box));
      for (Path& line : diagonals_in({corners_of(box)}, paper_mm(2), Diagonal::falling, {})) {
        line.ink = ink;
        marks.emplace_back(std::move(line));
      }
      return;
    case Ink::foam_dots:
      marks.emplace_back(closed_path(Ink::cushion, box));
      for (const int tenths : {9, 19})
        marks.emplace_back(
            straight(ink, {corner.x + paper_mm(tenths == 9 ? 6 : 21, 10), corner.y + paper_mm(tenths, 10)},
                     {box.high.x - paper_mm(8, 10), corner.y + paper_mm(tenths, 10)}));
      return;
    case Ink::board:
    case Ink::table:
      marks.emplace_back(closed_path(ink, box));
      for (PaperLength y = corner.y + paper_mm(9, 10); y < box.high.y;
           y = y + paper_mm(ink == Ink::table ? 9 : 10, 10))
        marks.emplace_back(straight(Ink::grain, {corner.x, y}, {box.high.x, y}));
      return;
    case Ink::cut_foam:
      marks.emplace_back(closed_path(ink, box));
      for (Path& line : zigzag_in(box, {})) marks.emplace_back(std::move(line));
      return;
    case Ink::cut_board:
      marks.emplace_back(closed_path(ink, box));
      for (Path& line : diagonals_in(box, {})) marks.emplace_back(std::move(line));
      return;
    case Ink::cut_box:
      marks.emplace_back(closed_path(ink, box));
      marks.emplace_back(closed_path(Ink::seen_behind, grown(box, -paper_mm(9, 10))));
      return;
    default:
      marks.emplace_back(closed_path(ink, box));
  }
}

// Sets the part from `first`; returns where the next paragraph begins.
PaperLength set_one(std::vector<Mark>& marks, const SetPart& part, PaperPoint at) {
  const auto& [note, lines, height] = part;
  const PaperLength top = is_heading(note) ? at.y + above_heading : at.y;
  const PaperLength h = size_of(note);
  if (note.kind == Note::Kind::alert) {
    const PaperLength foot = top + lettering::heading * ascent_thousandths / 1000 + paper_mm(3, 10);
    marks.emplace_back(closed_path(Ink::alert, PaperRing{{at.x + triangle_width / 2, foot - paper_mm(33, 10)},
                                                         {at.x + triangle_width, foot},
                                                         {at.x, foot}}));
  }
  if (note.swatch) add_swatch(marks, *note.swatch, {at.x, top});
  PaperLength baseline = top + h * ascent_thousandths / 1000;
  if (note.number > 0) {
    const PaperPoint middle{at.x + lettering::ring / 2, top + lettering::ring / 2};
    marks.emplace_back(circle(Ink::balloon, middle, lettering::ring / 2));
    marks.emplace_back(Text{Ink::label,
                            {middle.x, middle.y + lettering::note * 36 / 100},
                            lettering::note,
                            Anchor::middle,
                            false,
                            std::to_string(note.number)});
    if (lines.size() == 1) baseline = middle.y + lettering::note * 36 / 100;
  }
  for (const std::string& line : lines) {
    if (!line.empty())
      marks.emplace_back(Text{ink_of(note), {at.x + indent(note), baseline}, h, Anchor::start, false, line});
    baseline = baseline + lettering::note_pitch;
  }
  return top +
         std::max(lettering::note_pitch * static_cast<std::int64_t>(lines.size()),
                  note.number > 0 ? lettering::ring : PaperLength{}) +
         space_after(note);
}

// Long paragraphs in parts, so that each part fits into any column worth the name.
std::vector<SetPart> broken(const std::vector<Note>& notes, PaperLength width) {
  constexpr std::size_t most_lines = 8;
  std::vector<SetPart> out;
  for (const Note& note : notes) {
    const std::vector<std::string> lines = lines_of(note, width);
    for (std::size_t from = 0; from < lines.size(); from += most_lines) {
      Note part = note;
      part.words.clear();
      for (std::size_t i = from; i < std::min(lines.size(), from + most_lines); ++i)
        part.words += (i == from ? "" : " ") + lines[i];
      if (from > 0) part.number = 0;
      part.goes_on = from + most_lines < lines.size();
      out.push_back(part_of(std::move(part), width));
    }
  }
  return out;
}

SetNotes filled(const std::vector<SetPart>& parts, const std::vector<PaperBox>& columns) {
  SetNotes set;
  std::size_t column = 0;
  PaperLength y = columns.front().low.y;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    PaperLength needed = parts[i].height;
    const bool heading = is_heading(parts[i].note);
    if (heading && i + 1 < parts.size()) needed = needed + parts[i + 1].height;
    while (column < columns.size() && y + needed > columns[column].high.y + between_paragraphs)
      if (++column < columns.size()) y = columns[column].low.y;
    if (column == columns.size()) {
      for (; i < parts.size(); ++i) set.rest.push_back(parts[i].note);
      return set;
    }
    // At the head of a column a heading needs no room above it.
    const bool heads = heading && y == columns[column].low.y;
    const PaperPoint at{columns[column].low.x, heads ? y - above_heading : y};
    y = set_one(set.marks, parts[i], at);
  }
  return set;
}

}  // namespace

Sheet swatch_of(Ink ink) {
  constexpr PaperLength air = paper_mm(12, 10);
  Sheet sheet;
  sheet.width = swatch_width + air * 2;
  sheet.height = swatch_height + air * 2;
  Group group{"Sign", {}, 0};
  add_swatch(group.marks, ink, {air, air});
  sheet.groups.push_back(std::move(group));
  return sheet;
}

SetNotes set_notes(const std::vector<Note>& notes, const std::vector<PaperBox>& columns) {
  if (columns.empty()) return {{}, notes};
  const std::vector<SetPart> parts = broken(notes, columns.front().width());
  if (columns.size() == 1) return filled(parts, columns);
  // Columns of even height: the lowest foot that holds everything.
  std::vector<PaperBox> shorter = columns;
  for (PaperLength height = paper_mm(15); height < columns.front().height(); height = height + paper_mm(3)) {
    for (PaperBox& column : shorter) column.high.y = column.low.y + height;
    SetNotes set = filled(parts, shorter);
    if (set.rest.empty()) return set;
  }
  return filled(parts, columns);
}

NotesAcross set_across(const std::vector<Note>& notes, const PaperBox& box) {
  const std::int64_t count = box.width() > paper_mm(200) ? 4 : 3;
  const PaperLength gutter = paper_mm(5);
  const PaperLength width = (box.width() - gutter * (count - 1)) / count;
  const PaperLength most = box.height() / 2;
  std::vector<PaperBox> columns;
  for (std::int64_t i = 0; i < count; ++i) {
    const PaperLength x = box.low.x + (width + gutter) * i;
    columns.push_back({{x, box.low.y}, {x + width, box.low.y + most}});
  }
  SetNotes set = set_notes(notes, columns);
  const PaperLength height = last_baseline(set.marks, box.low.y) - box.low.y;
  return {std::move(set.marks), std::move(set.rest), height};
}

PaperLength last_baseline(const std::vector<Mark>& marks, PaperLength top) {
  PaperLength bottom = top;
  for (const Mark& mark : marks)
    if (const Text* text = std::get_if<Text>(&mark)) bottom = std::max(bottom, text->at.y);
  return bottom;
}

}  // namespace berthwright

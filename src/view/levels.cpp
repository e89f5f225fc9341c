#include "view/levels.h"

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "view/dimensions.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/plan_things.h"

namespace berthwright {
namespace {

constexpr Length one_level = Length::inches(1, 32);
constexpr PaperLength to_words = paper_mm(6);  // from the wall to the lettering, for the sign and the bend
constexpr PaperLength below_line = paper_mm(6, 10);
constexpr PaperLength above_line = paper_mm(8, 10);
constexpr PaperLength level_up = lettering::label * ascent_thousandths / 1000 + above_line;
constexpr PaperLength level_down = lettering::note + below_line;
constexpr PaperLength level_pitch = level_up + level_down + paper_mm(9, 10);

constexpr PaperLength widest_name = paper_mm(42);

// What its top is called where several lie at one height; none: no level worth telling.
std::string_view kind_words(const Placed& placed) {
  if (placed.piece != nullptr) {
    switch (placed.piece->kind) {
      case Piece::Kind::cushion:
      case Piece::Kind::bolster:
        return placed.pose == nullptr || placed.pose->manner == Pose::Manner::flat ? "cushion" : "back";
      case Piece::Kind::board:
        return "board";
      case Piece::Kind::table:
        return "table";
      case Piece::Kind::leg:
      case Piece::Kind::heater:
        return {};
    }
  }
  if (placed.fixture != nullptr && placed.fixture->kind == Fixture::Kind::bench) return "bench";
  return {};
}

struct Named {
  std::string_view kind;
  std::string name;
};
struct Bunch {
  Length height;
  Length from;
  std::vector<Named> things;
};

// Things of one kind at one height.
std::vector<std::string> names_of(const Bunch& bunch, std::string_view kind) {
  std::vector<std::string> names;
  for (const Named& thing : bunch.things)
    if (thing.kind == kind && std::ranges::find(names, thing.name) == names.end())
      names.push_back(thing.name);
  return names;
}

bool is_told_twice(const std::vector<Bunch>& bunches, std::string_view kind) {
  return std::ranges::count_if(bunches,
                               [&](const Bunch& bunch) { return names_of(bunch, kind).size() > 1; }) > 1;
}

std::string words_for(const Bunch& bunch, const std::vector<Bunch>& all) {
  std::vector<std::string_view> told;
  std::string words;
  for (const Named& thing : bunch.things) {
    // Two names say where a level is; a third makes the column wide.
    if (told.size() == 2 || std::ranges::find(told, thing.kind) != told.end()) continue;
    told.push_back(thing.kind);
    const std::vector<std::string> names = names_of(bunch, thing.kind);
    std::string mine = names.front() + " top";
    if (names.size() > 1) {
      mine = std::string(thing.kind) + " tops";
      if (is_told_twice(all, thing.kind)) {
        mine.clear();
        for (const std::string& name : names) mine += (mine.empty() ? "" : ", ") + name;
      }
    }
    words += (words.empty() ? "" : ", ") + mine;
  }
  return words;
}

}  // namespace

std::vector<Level> levels_of(const Section& section) {
  std::vector<Bunch> bunches;
  for (const SectionShape& shape : section.shapes) {
    if (shape.kind != SectionShape::Kind::cut) continue;
    const std::string_view kind = kind_words(*shape.placed);
    if (kind.empty()) continue;
    const Length height = shape.placed->solid.top();
    auto bunch = std::ranges::find_if(
        bunches, [&](const Bunch& other) { return abs(other.height - height) <= one_level; });
    if (bunch == bunches.end()) bunch = bunches.insert(bunch, {height, shape.box.high.x, {}});
    bunch->from = std::max(bunch->from, shape.box.high.x);
    bunch->things.push_back({kind, name_of(*shape.placed)});
  }
  std::vector<Level> levels;
  if (section.room.empty()) return levels;
  const Rect room = section.room.bounds();
  levels.push_back({{}, "floor", room.high.x});
  for (const Bunch& bunch : bunches) levels.push_back({bunch.height, words_for(bunch, bunches), bunch.from});
  levels.push_back({room.high.y, "roof", room.high.x});
  std::ranges::stable_sort(levels, {}, &Level::height);
  return levels;
}

LevelColumn level_column(std::vector<Level> levels, Unit own) {
  LevelColumn column{std::move(levels), {}, {}};
  for (const Level& level : column.levels) {
    std::string figure = dimension_figure(level.height, own);
    if (level.height != Length{})
      figure += " [" + (own == Unit::inch ? metric(level.height) : imperial(level.height)) + "]";
    std::string name = shortened(level.name, lettering::note, widest_name);
    column.width = std::max({column.width, to_words + text_width(figure, lettering::label),
                             to_words + text_width(name, lettering::note)});
    column.words.emplace_back(std::move(figure), std::move(name));
  }
  return column;
}

PaperLength least_height(const LevelColumn& column) {
  return level_pitch * static_cast<std::int64_t>(column.levels.size());
}

std::vector<Mark> marks_of(const LevelColumn& column, const PlanView& view, PaperLength left, PaperLength top,
                           PaperLength foot) {
  std::vector<PaperLength> lines;
  PaperLength lowest = foot - level_down;  // from the floor up the page
  for (const Level& level : column.levels) {
    lines.push_back(std::min(lowest, view({{}, level.height}).y));
    lowest = lines.back() - level_pitch;
  }
  PaperLength highest = top + level_up;
  for (std::size_t i = lines.size(); i-- > 0;) {
    lines[i] = std::max(lines[i], highest);
    highest = lines[i] + level_pitch;
  }
  std::vector<Mark> marks;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const PaperPoint tip{left + paper_mm(14, 10), view({{}, column.levels[i].height}).y};
    const PaperPoint words{left + to_words, lines[i]};
    const PaperPoint begin = view({column.levels[i].from, column.levels[i].height});
    Path way = straight(Ink::dimension, {std::min(begin.x, left), tip.y}, {left + paper_mm(3), tip.y});
    way.stretches.push_back({{words.x - paper_mm(1), words.y}, {}, false});
    way.stretches.push_back({{left + column.width, words.y}, {}, false});
    marks.emplace_back(std::move(way));
    marks.emplace_back(
        closed_path(Ink::leader_dot, PaperRing{tip,
                                               {tip.x - paper_mm(9, 10), tip.y - paper_mm(16, 10)},
                                               {tip.x + paper_mm(9, 10), tip.y - paper_mm(16, 10)}}));
    marks.emplace_back(Text{Ink::dimension,
                            {words.x, words.y - above_line},
                            lettering::label,
                            Anchor::start,
                            false,
                            column.words[i].first});
    marks.emplace_back(Text{Ink::note,
                            {words.x, words.y + below_line + lettering::note * ascent_thousandths / 1000},
                            lettering::note,
                            Anchor::start,
                            false,
                            column.words[i].second});
  }
  return marks;
}

}  // namespace berthwright

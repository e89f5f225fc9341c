#include "view/levels.h"

#include <algorithm>

#include <berthwright/view/sheets.h>

#include "view/dimensions.h"
#include "view/lettering.h"
#include "view/letters.h"

namespace berthwright {
namespace {

constexpr Length one_level = Length::inches(1, 32);
constexpr std::string_view roof = "roof";
constexpr PaperLength to_words = paper_mm(6);  // from the wall to the lettering, for the sign and the bend
constexpr PaperLength below_line = paper_mm(6, 10);
constexpr PaperLength above_line = paper_mm(8, 10);
constexpr PaperLength up = lettering::label * ascent_thousandths / 1000 + above_line;
constexpr PaperLength down = lettering::note + below_line;
constexpr PaperLength pitch = up + down + paper_mm(9, 10);

// What its top is called; none: no level worth telling.
std::string_view level_name(const Placed& placed) {
  if (placed.piece != nullptr) {
    switch (placed.piece->kind) {
      case Piece::Kind::cushion:
      case Piece::Kind::bolster:
        return placed.pose == nullptr || placed.pose->manner == Pose::Manner::flat ? "cushion top"
                                                                                   : "back top";
      case Piece::Kind::board:
        return "board top";
      case Piece::Kind::table:
        return "table top";
      case Piece::Kind::leg:
      case Piece::Kind::heater:
        return {};
    }
  }
  if (placed.fixture != nullptr && placed.fixture->kind == Fixture::Kind::bench) return "bench top";
  return {};
}

void add(std::vector<Level>& levels, Length height, std::string_view name) {
  for (Level& level : levels) {
    if (abs(level.height - height) > one_level) continue;
    // Two names say where a level is; a third makes the column wide.
    if (level.name.find(name) == std::string::npos && level.name.find(',') == std::string::npos)
      level.name += ", " + std::string(name);
    return;
  }
  levels.push_back({height, std::string(name)});
}

}  // namespace

std::vector<Level> levels_of(const Section& section, const std::vector<Level>& told) {
  std::vector<Level> levels;
  add(levels, {}, "floor");
  for (const SectionShape& shape : section.shapes) {
    if (shape.kind != SectionShape::Kind::cut) continue;
    const std::string_view name = level_name(*shape.placed);
    if (!name.empty()) add(levels, shape.placed->solid.top(), name);
  }
  if (!section.room.empty()) add(levels, section.room.bounds().high.y, roof);
  std::erase_if(levels, [&](const Level& level) {
    return std::ranges::any_of(told, [&](const Level& other) {
      return abs(level.height - other.height) <= one_level || (level.name == roof && other.name == roof);
    });
  });
  std::ranges::stable_sort(levels, {}, &Level::height);
  return levels;
}

LevelColumn level_column(std::vector<Level> levels, Unit own) {
  LevelColumn column{std::move(levels), {}, {}};
  for (const Level& level : column.levels) {
    std::string figure = dimension_figure(level.height, own);
    if (level.height != Length{})
      figure += " [" + (own == Unit::inch ? metric(level.height) : imperial(level.height)) + "]";
    column.width = std::max({column.width, to_words + text_width(figure, lettering::label),
                             to_words + text_width(level.name, lettering::note)});
    column.words.emplace_back(std::move(figure), level.name);
  }
  return column;
}

PaperLength least_height(const LevelColumn& column) {
  return pitch * static_cast<std::int64_t>(column.levels.size());
}

std::vector<Mark> marks_of(const LevelColumn& column, const PlanView& view, PaperLength left, PaperLength top,
                           PaperLength foot) {
  std::vector<PaperLength> lines;
  PaperLength lowest = foot - down;  // from the floor up the page
  for (const Level& level : column.levels) {
    lines.push_back(std::min(lowest, view({{}, level.height}).y));
    lowest = lines.back() - pitch;
  }
  PaperLength highest = top + up;
  for (std::size_t i = lines.size(); i-- > 0;) {
    lines[i] = std::max(lines[i], highest);
    highest = lines[i] + pitch;
  }
  std::vector<Mark> marks;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const PaperPoint tip{left + paper_mm(14, 10), view({{}, column.levels[i].height}).y};
    const PaperPoint words{left + to_words, lines[i]};
    Path way = straight(Ink::dimension, {left, tip.y}, {left + paper_mm(3), tip.y});
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

#include "view/dimensions.h"

#include <algorithm>
#include <stdexcept>

#include <berthwright/view/sheets.h>

#include "exact/required.h"
#include "view/lettering.h"
#include "view/letters.h"

namespace berthwright {
namespace {

constexpr PaperLength gap_at_wall = paper_mm(15, 10);    // between the wall and an extension line
constexpr PaperLength overshoot = paper_mm(2);           // of an extension line beyond the dimension line
constexpr PaperLength over_dimension = paper_mm(9, 10);  // between a line and the baseline of its figure
constexpr PaperLength lane_pitch = paper_mm(8);
constexpr PaperLength half_tick = paper_mm(9, 10);
constexpr PaperLength side_air = paper_mm(8, 10);
constexpr PaperLength line_air = paper_mm(5, 10);  // between a figure and a line that passes
constexpr PaperLength slack = paper_mm(5);         // how far a figure may stand beyond the ends of its chain

bool is_level(Wall side) { return side == Wall::left || side == Wall::right; }
// Figures stand above their line, or left of an upright one: that is toward the trailer on two sides.
bool figure_is_inward(Wall side) { return side == Wall::left || side == Wall::rear; }

std::string other_figure(Length length, Unit own, bool feet) {
  return "[" + (own == Unit::inch ? metric(length) : imperial(length, {.feet = feet})) + "]";
}

constexpr PaperLength figure_height() { return lettering::label * ascent_thousandths / 1000; }
constexpr PaperLength on_line = over_dimension + lettering::label + paper_mm(2, 10);
constexpr PaperLength outer_row = on_line + paper_mm(18, 10);  // begin of the row of figures moved out

// Moves the figures of narrow intervals apart, in their order, within `low` and `high`.
void spread(ChainSetting& set, const std::vector<std::size_t>& narrow, const std::vector<PaperLength>& widths,
            PaperLength low, PaperLength high) {
  PaperLength end = low;
  for (const std::size_t i : narrow) {
    PaperLength& middle = required(set.moved_out[i]);
    const PaperLength begin = std::max(end, middle - widths[i] / 2);
    middle = begin + widths[i] / 2;
    end = begin + widths[i];
  }
  PaperLength begin = high;
  for (std::size_t n = narrow.size(); n-- > 0;) {
    const std::size_t i = narrow[n];
    PaperLength& middle = required(set.moved_out[i]);
    begin = std::min(begin, middle + widths[i] / 2) - widths[i];
    middle = begin + widths[i] / 2;
  }
  set.crowded = begin < low;
}

// Along the wall, and away from it; on paper.
struct WallFrame {
  Wall side;
  PaperBox room;
  PaperPoint at(PaperLength along, PaperLength away) const {
    switch (side) {
      case Wall::left:
        return {along, room.high.y + away};
      case Wall::right:
        return {along, room.low.y - away};
      case Wall::front:
        return {room.low.x - away, along};
      case Wall::rear:
        return {room.high.x + away, along};
    }
    throw std::logic_error("Wall out of range");
  }
};

// `along`: distance on paper from x = 0 or y = 0.
PaperLength along_of(const PlanView& view, Wall side, PaperLength along) {
  return is_level(side) ? view.origin.x + along : view.origin.y - along;
}

// Under a figure moved out, where extension lines of a chain beyond run past.
Patch patch_under(const WallFrame& frame, PaperLength along, PaperLength away, const std::string& words) {
  constexpr PaperLength air = paper_mm(4, 10);
  const PaperLength reach = text_width(words, lettering::label) / 2 + air;
  const PaperPoint a = frame.at(along - reach, away - air);
  const PaperPoint b = frame.at(along + reach, away + lettering::label);
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

// Under a figure on its line, where an extension line of a chain beyond runs through it.
Patch patch_on_line(const WallFrame& frame, PaperLength along, PaperLength away, const std::string& words) {
  const PaperLength reach = text_width(words, lettering::label) / 2 + line_air;
  const PaperLength near = figure_is_inward(frame.side) ? away - on_line : away + paper_mm(3, 10);
  const PaperPoint a = frame.at(along - reach, near);
  const PaperPoint b = frame.at(along + reach, near + on_line - paper_mm(3, 10));
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

// The baseline of a figure that reads along the wall, its lettering `away` on the outer side of the wall.
// `outward`: the lettering begins at `away` and goes on outward; else it begins there and goes inward.
PaperLength baseline(Wall side, PaperLength away, bool outward) {
  const bool letters_rise_outward = !figure_is_inward(side);
  if (outward) return letters_rise_outward ? away : away + figure_height();
  return letters_rise_outward ? away - figure_height() : away;
}

}  // namespace

std::string dimension_figure(Length length, Unit own, bool feet) {
  switch (own) {
    case Unit::inch:
      return imperial(length, {.feet = feet});
    case Unit::millimetre: {
      std::string text = metric(length);
      if (text.ends_with(" mm")) text.resize(text.size() - 3);
      return text;
    }
  }
  throw std::logic_error("Unit out of range");
}

ChainSetting set_chain(const DimensionChain& chain, std::int64_t ratio, Unit own) {
  ChainSetting set{chain, {}, {}, {}, {}, {}, false, paper_mm(2), overshoot};
  std::vector<std::size_t> narrow;
  std::vector<PaperLength> widths;
  for (std::size_t i = 0; i + 1 < chain.stops.size(); ++i) {
    const Length length = chain.stops[i + 1] - chain.stops[i];
    set.figures.push_back(dimension_figure(length, own, chain.feet));
    if (chain.both_units) set.others.push_back(other_figure(length, own, chain.feet));
    widths.push_back(text_width(set.figures.back(), lettering::label) + side_air * 2);
    const PaperLength from = on_paper(chain.stops[i], ratio);
    const PaperLength to = on_paper(chain.stops[i + 1], ratio);
    set.middles.push_back((from + to) / 2);
    set.crossed.push_back(false);
    set.moved_out.emplace_back();
    if (widths.back() <= to - from) continue;
    set.moved_out.back() = (from + to) / 2;
    narrow.push_back(i);
  }
  spread(set, narrow, widths, on_paper(chain.stops.front(), ratio) - slack,
         on_paper(chain.stops.back(), ratio) + slack);
  const bool inward = figure_is_inward(chain.side);
  if (inward || chain.both_units) set.inward = std::max(set.inward, on_line);
  if (!inward || chain.both_units) set.outward = std::max(set.outward, on_line);
  if (!narrow.empty()) set.outward = outer_row + lettering::label + paper_mm(2, 10);
  return set;
}

void keep_off(ChainSetting& setting, std::span<const ChainSetting> beyond, std::int64_t ratio) {
  std::vector<PaperLength> lines;
  for (const ChainSetting& other : beyond)
    for (const Length stop : other.chain.stops) lines.push_back(on_paper(stop, ratio));
  for (std::size_t i = 0; i < setting.figures.size(); ++i) {
    if (setting.moved_out[i]) continue;
    const PaperLength reach = text_width(setting.figures[i], lettering::label) / 2 + line_air;
    const PaperLength low = on_paper(setting.chain.stops[i], ratio) + reach;
    const PaperLength high = on_paper(setting.chain.stops[i + 1], ratio) - reach;
    const PaperLength middle = setting.middles[i];
    const auto is_clear = [&](PaperLength at) {
      return low <= at && at <= high && std::ranges::none_of(lines, [&](PaperLength line) {
               return at - reach < line && line < at + reach;
             });
    };
    std::vector<PaperLength> places{middle};
    for (const PaperLength line : lines) places.insert(places.end(), {line - reach, line + reach});
    std::erase_if(places, [&](PaperLength at) { return !is_clear(at); });
    setting.crossed[i] = places.empty();
    const auto far = [&](PaperLength at) { return std::max(at - middle, middle - at); };
    if (!places.empty()) setting.middles[i] = *std::ranges::min_element(places, {}, far);
  }
}

Lanes lanes_of(const std::vector<ChainSetting>& chains, PaperLength first) {
  Lanes lanes;
  PaperLength taken;  // up to here, from the wall
  for (const ChainSetting& chain : chains) {
    const PaperLength least = lanes.lines.empty() ? first : lanes.lines.back() + lane_pitch;
    lanes.lines.push_back(std::max(least, taken + chain.inward));
    taken = lanes.lines.back() + chain.outward;
  }
  lanes.depth = taken;
  return lanes;
}

std::vector<Mark> marks_of(const ChainSetting& setting, const PlanView& view, const PaperBox& room,
                           PaperLength distance) {
  const DimensionChain& chain = setting.chain;
  const WallFrame frame{chain.side, room};
  std::vector<Mark> marks;
  std::vector<PaperLength> stops;
  for (const Length stop : chain.stops)
    stops.push_back(along_of(view, chain.side, on_paper(stop, view.ratio)));
  marks.emplace_back(
      straight(Ink::dimension, frame.at(stops.front(), distance), frame.at(stops.back(), distance)));
  for (const PaperLength stop : stops) {
    marks.emplace_back(
        straight(Ink::dimension, frame.at(stop, gap_at_wall), frame.at(stop, distance + overshoot)));
    const PaperPoint on = frame.at(stop, distance);
    marks.emplace_back(
        straight(Ink::tick, {on.x - half_tick, on.y + half_tick}, {on.x + half_tick, on.y - half_tick}));
  }
  const bool inward = figure_is_inward(chain.side);
  const auto set = [&](PaperLength along, PaperLength away, bool outward, const std::string& words) {
    marks.emplace_back(Text{Ink::dimension, frame.at(along, baseline(chain.side, away, outward)),
                            lettering::label, Anchor::middle, !is_level(chain.side), words});
  };
  for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
    const PaperLength middle = along_of(view, chain.side, setting.middles[i]);
    const std::optional<PaperLength>& moved_out = setting.moved_out[i];
    if (!moved_out) {
      if (setting.crossed[i]) marks.emplace_back(patch_on_line(frame, middle, distance, setting.figures[i]));
      set(middle, inward ? distance - over_dimension : distance + over_dimension, !inward,
          setting.figures[i]);
    } else {
      const PaperLength along = along_of(view, chain.side, *moved_out);
      marks.emplace_back(patch_under(frame, along, distance + outer_row, setting.figures[i]));
      set(along, distance + outer_row, true, setting.figures[i]);
      Path way = straight(Ink::dimension, frame.at(middle, distance), frame.at(middle, distance + on_line));
      way.stretches.push_back({frame.at(along, distance + outer_row - paper_mm(4, 10)), {}, false});
      marks.emplace_back(std::move(way));
    }
    if (chain.both_units)
      set(middle, inward ? distance + over_dimension : distance - over_dimension, inward, setting.others[i]);
  }
  return marks;
}

}  // namespace berthwright

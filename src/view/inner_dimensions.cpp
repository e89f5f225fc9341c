#include "view/inner_dimensions.h"

#include <algorithm>
#include <array>

#include <berthwright/view/sheets.h>

#include "view/lettering.h"
#include "view/letters.h"

namespace berthwright {
namespace {

constexpr PaperLength line_to_figure = paper_mm(6, 10);
constexpr PaperLength tick_reach = paper_mm(9, 10);
constexpr PaperLength figure_air = paper_mm(12, 10);  // of the figure to the ticks
constexpr PaperLength edge_air = paper_mm(15, 10);
constexpr PaperLength next_try = paper_mm(1);
constexpr std::int64_t seen_samples = 24;

bool told_by(const Surroundings& around, Wall wall, Length from, Length to) {
  return std::ranges::any_of(around.chains.at(wall), [&](const ChainSetting& set) {
    const auto& stops = set.chain.stops;
    return set.chain.what != DimensionChain::Of::openings && std::ranges::find(stops, from) != stops.end() &&
           std::ranges::find(stops, to) != stops.end();
  });
}

// One way to draw an extent: the line, its figure, and the ground that both take.
struct InnerLine {
  PaperLine line;
  Text figure;
  PaperBox ground;
  std::int64_t crossed = 0;  // borders that the line runs over
};

// What lies over the thing there; what hangs over it is seen through.
bool is_seen_along(const PaperLine& line, const std::vector<PlanThing>& things, const PlanThing& thing) {
  for (std::int64_t i = 0; i < seen_samples; ++i) {
    const PaperPoint p{line.from.x + (line.to.x - line.from.x) * (2 * i + 1) / (2 * seen_samples),
                       line.from.y + (line.to.y - line.from.y) * (2 * i + 1) / (2 * seen_samples)};
    if (!inside(thing.rings, p)) return false;
    if (thing.overhead) continue;
    const auto painted_later = things.begin() + (&thing - things.data()) + 1;
    if (std::any_of(painted_later, things.end(),
                    [&](const PlanThing& other) { return !other.overhead && inside(other.rings, p); }))
      return false;
  }
  return true;
}

// What an inner line measures: on the sheet, level or upright.
struct InnerStretch {
  bool level;
  PaperLength from;
  PaperLength to;
};

// A line parallel to the walls at `across`, its figure above it or left of it, `aside` from the middle.
InnerLine inner_line_at(const InnerStretch& stretch, PaperLength across, PaperLength aside,
                        const std::string& figure) {
  const auto& [level, from, to] = stretch;
  const auto at = [&](PaperLength u, PaperLength v) { return level ? PaperPoint{u, v} : PaperPoint{v, u}; };
  const PaperLength middle = (from + to) / 2 + aside;
  const PaperLength half_width = text_width(figure, lettering::label) / 2 + figure_air / 2;
  const PaperLength top = across - line_to_figure - lettering::label;
  InnerLine out{
      {at(from, across), at(to, across)},
      {Ink::dimension, at(middle, across - line_to_figure), lettering::label, Anchor::middle, !level, figure},
      hull({at(middle - half_width, top), at(middle - half_width, top)},
           {at(middle + half_width, across), at(middle + half_width, across)}),
      0};
  return out;
}

// The line without its ends, which touch the borders that it measures.
PaperLine between_ends(const PaperLine& line) {
  return {toward(line.from, line.to, tick_reach), toward(line.to, line.from, tick_reach)};
}

bool is_free(const LabelField& field, const InnerLine& drawn) {
  const PaperBox line =
      grown(hull({drawn.line.from, drawn.line.from}, {drawn.line.to, drawn.line.to}), tick_reach);
  const auto meets = [&](const PaperBox& box) { return overlaps(box, line) || overlaps(box, drawn.ground); };
  return std::ranges::none_of(field.taken, meets) &&
         std::ranges::none_of(field.heavy, [&](const PaperLine& heavy) {
           return crosses(heavy, between_ends(drawn.line)) ||
                  crosses(heavy, grown(drawn.ground, paper_mm(5, 10)));
         });
}

// Near one end of the thing, so that its name keeps the middle.
std::optional<InnerLine> best_of(const PlanView& view, const std::vector<PlanThing>& things,
                                 const UntoldExtent& extent, const LabelField& field,
                                 const std::string& figure) {
  const PlanThing& thing = *extent.thing;
  const PaperLength a = extent.along ? view.origin.x + on_paper(extent.from, view.ratio)
                                     : view.origin.y - on_paper(extent.to, view.ratio);
  const PaperLength b = extent.along ? view.origin.x + on_paper(extent.to, view.ratio)
                                     : view.origin.y - on_paper(extent.from, view.ratio);
  if (text_width(figure, lettering::label) + figure_air * 2 > b - a) return std::nullopt;
  const PaperLength low = extent.along ? thing.bounds.low.y : thing.bounds.low.x;
  const PaperLength high = extent.along ? thing.bounds.high.y : thing.bounds.high.x;
  const PaperLength takes = line_to_figure + lettering::label + paper_mm(5, 10);
  std::optional<InnerLine> best;
  const PaperLength play = (b - a - text_width(figure, lettering::label)) / 2 - figure_air;
  const auto consider = [&](PaperLength across, PaperLength aside) {
    if (best && best->crossed == 0) return;
    InnerLine drawn = inner_line_at({extent.along, a, b}, across, aside, figure);
    if (!is_seen_along(drawn.line, things, thing) || !is_free(field, drawn)) return;
    const PaperLine within = between_ends(drawn.line);
    const PaperBox beside = grown(hull({within.from, within.from}, {within.to, within.to}), least_split);
    const auto runs_along = [&](const PaperLine& line) {
      const auto off = [&](PaperPoint p) {
        const PaperLength away = (extent.along ? p.y : p.x) - across;
        return std::max(away, -away);
      };
      return off(line.from) < least_split && off(line.to) < least_split && crosses(line, beside);
    };
    const auto meets = [&](const PaperLine& line) { return crosses(line, drawn.ground) || runs_along(line); };
    if (std::ranges::any_of(field.light, meets)) return;
    drawn.crossed =
        std::ranges::count_if(field.light, [&](const PaperLine& line) { return crosses(line, within); });
    if (!best || drawn.crossed < best->crossed) best = drawn;
  };
  for (PaperLength in; low + takes + in <= high - edge_air; in = in + next_try)
    for (PaperLength aside; aside <= play; aside = aside + next_try)
      for (const PaperLength across : {high - edge_air - in, low + takes + in}) {
        consider(across, aside);
        consider(across, -aside);
      }
  return best;
}

}  // namespace

std::vector<UntoldExtent> untold_extents(const Plan& plan, const std::vector<PlanThing>& things,
                                         const Surroundings& around) {
  const Rect& room = plan->interior.outline.polygon().bounds();
  std::vector<UntoldExtent> untold;
  for (const PlanThing& thing : things) {
    if (!is_furniture(thing) || (!thing.seen && !thing.overhead)) continue;
    const Rect box = thing.placed->solid.outline().bounds();
    const auto told = [&](Length from, Length to, std::array<Wall, 2> walls) {
      return std::ranges::any_of(
          walls, [&](Wall wall) { return stands_along(box, room, wall) && told_by(around, wall, from, to); });
    };
    const auto at_wall = [&](Wall wall) { return stands_along(box, room, wall); };
    if (!told(box.low.x, box.high.x, {Wall::left, Wall::right}))
      untold.push_back({&thing, true, box.low.x, box.high.x, !at_wall(Wall::front) && !at_wall(Wall::rear)});
    if (!told(box.low.y, box.high.y, {Wall::front, Wall::rear}))
      untold.push_back({&thing, false, box.low.y, box.high.y, !at_wall(Wall::left) && !at_wall(Wall::right)});
  }
  return untold;
}

InnerDimensions inner_dimensions(const DrawnConfiguration& of, const PlanView& view,
                                 const std::vector<PlanThing>& things, const Surroundings& around,
                                 const LabelField& field) {
  InnerDimensions out;
  LabelField rest = field;
  const Unit own = (*of.plan)->unit;
  for (const UntoldExtent& extent : untold_extents(*of.plan, things, around)) {
    const std::string figure = dimension_figure(extent.to - extent.from, own);
    const auto drawn = best_of(view, things, extent, rest, figure);
    std::string words = drawn ? "" : " " + figure + (extent.along ? " along" : " across");
    if (extent.afloat)
      words += (words.empty() ? " " : ", ") + dimension_figure(extent.from, own) +
               (extent.along ? " from the front" : " from the left wall");
    if (!words.empty()) out.in_words.push_back(name_of(*extent.thing->placed) + words);
    if (!drawn) continue;
    const PaperLine& line = drawn->line;
    out.marks.emplace_back(straight(Ink::dimension, line.from, line.to));
    for (const PaperPoint end : {line.from, line.to})
      out.marks.emplace_back(straight(Ink::tick, {end.x - tick_reach, end.y + tick_reach},
                                      {end.x + tick_reach, end.y - tick_reach}));
    out.marks.emplace_back(drawn->figure);
    rest.taken.push_back(drawn->ground);
    rest.light.push_back(line);
  }
  return out;
}

}  // namespace berthwright

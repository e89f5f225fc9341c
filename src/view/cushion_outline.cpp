#include "view/cushion_outline.h"

#include <algorithm>
#include <map>
#include <stdexcept>

#include <berthwright/view/sheets.h>
#include <berthwright/view/words.h>

#include "view/chains.h"
#include "view/label_wishes.h"
#include "view/lettering.h"
#include "view/letters.h"
#include "view/shape_words.h"
#include "view/signs.h"

namespace berthwright {
namespace {

constexpr PaperLength first_chain = paper_mm(6);
constexpr PaperLength around_all = paper_mm(5);  // figures may stand so far beyond the ends of a chain
constexpr PaperLength beside_figure = paper_mm(1);
constexpr PaperLength letter_height = paper_mm(6);
constexpr PaperLength longest_arrow = paper_mm(12);
constexpr PaperLength shortest_arrow = paper_mm(5);
constexpr PaperLength clear_of_letter = paper_mm(3);
constexpr std::size_t most_stops = 14;  // of a chain that a person still reads

// Corners and the bends of what is sewn as one curve; of a rounded corner only its ends.
std::vector<Point> measured_corners(const Rim& rim) {
  std::vector<Point> corners;
  for (const RimEdge& edge : rim.edges) {
    corners.push_back(edge.path.front());
    if (!edge.radius) corners.insert(corners.end(), edge.path.begin() + 1, edge.path.end() - 1);
  }
  return corners;
}

// Every coordinate of a corner is told once, on the side that some corner with it is nearest to.
std::vector<Length> corner_stops(const std::vector<Point>& corners, const Rect& box, Wall side) {
  const bool level = side == Wall::left || side == Wall::right;
  const bool low_side = side == Wall::left || side == Wall::front;
  struct SideDistances {
    Length low;
    Length high;
  };
  std::map<Length, SideDistances> nearest;
  for (const Point& p : corners) {
    const Length from_low = level ? p.y - box.low.y : p.x - box.low.x;
    const Length from_high = level ? box.high.y - p.y : box.high.x - p.x;
    SideDistances& here =
        nearest.try_emplace(level ? p.x : p.y, SideDistances{from_low, from_high}).first->second;
    here = {std::min(here.low, from_low), std::min(here.high, from_high)};
  }
  const Length low = level ? box.low.x : box.low.y;
  const Length high = level ? box.high.x : box.high.y;
  std::vector<Length> stops{low};
  for (const auto& [stop, there] : nearest)
    if (low < stop && stop < high && (there.low <= there.high) == low_side) stops.push_back(stop);
  stops.push_back(high);
  return stops;
}

// Stops that cannot be told apart at the scale become one; the ends stay.
bool merge_stops(std::vector<Length>& stops, std::int64_t ratio) {
  const Length least = in_nature(least_split, ratio);
  std::vector<Length> kept{stops.front()};
  for (std::size_t i = 1; i + 1 < stops.size(); ++i)
    if (stops[i] - kept.back() >= least && stops.back() - stops[i] >= least) kept.push_back(stops[i]);
  kept.push_back(stops.back());
  const bool left_out = kept.size() < stops.size();
  stops = std::move(kept);
  return left_out;
}

std::string_view edge_words(Wall side) {
  switch (side) {
    case Wall::front:
      return "Front edge, from the left";
    case Wall::rear:
      return "Rear edge, from the left";
    case Wall::left:
      return "Left edge, from the front";
    case Wall::right:
      return "Right edge, from the front";
  }
  throw std::logic_error("Wall out of range");
}

std::string chain_in_words(const DimensionChain& chain, Unit own) {
  std::string words(edge_words(chain.side));
  for (std::size_t i = 0; i + 1 < chain.stops.size(); ++i)
    words += (i == 0 ? ": " : ", ") +
             both(chain.stops[i + 1] - chain.stops[i], own, {.rounding = Rounding::nearest, .feet = false});
  return words + ".";
}

void add_chain(Surroundings& around, DimensionChain chain, std::int64_t ratio, Unit own) {
  chain.left_out = merge_stops(chain.stops, ratio);
  chain.feet = false;
  ChainSetting setting = set_chain(chain, ratio, own);
  // The words say it in both units too.
  const PaperLength whole = on_paper(chain.stops.back() - chain.stops.front(), ratio);
  if (chain.both_units && text_width(setting.others.front(), lettering::label) + beside_figure * 2 > whole) {
    chain.both_units = false;
    setting = set_chain(chain, ratio, own);
  }
  if (setting.crowded)
    around.in_words.push_back(chain_in_words(chain, own));
  else
    around.chains[chain.side].push_back(std::move(setting));
}

PlanView view_of(const SetCushion& set, std::int64_t ratio, PaperPoint corner) {
  const Rect box = set.cover->piece->outline.polygon().bounds();
  const PaperLength left = corner.x + std::max(around_all, set.around.lanes.at(Wall::front).depth);
  const PaperLength top = corner.y + std::max(around_all, set.around.lanes.at(Wall::right).depth);
  return {ratio, {left - on_paper(box.low.x, ratio), top + on_paper(box.high.y, ratio)}};
}

// The corners of the rim from one place along it to another, counter-clockwise. Where a place falls within a
// curve its nearest corner stands for it.
std::vector<Point> along_rim(const Rim& rim, Length from, Length finished) {
  std::vector<Point> points;
  const Length to = from + finished;
  const auto between = [](Point a, Point b, Length way, Length whole) {
    const auto part = [&](Length low, Length high) {
      return low + Length::from_ticks(
                       static_cast<std::int64_t>(Int128{(high - low).ticks()} * way.ticks() / whole.ticks()));
    };
    return Point{part(a.x, b.x), part(a.y, b.y)};
  };
  for (const std::int64_t turns : {-1, 0, 1}) {
    for (const RimEdge& edge : rim.edges) {
      const Length begin = edge.start + rim.perimeter * turns;
      const Length low = std::max(from, begin) - begin;
      const Length high = std::min(to, begin + edge.length) - begin;
      if (low >= high) continue;
      if (edge.is_straight()) {
        points.push_back(between(edge.path[0], edge.path[1], low, edge.length));
        points.push_back(between(edge.path[0], edge.path[1], high, edge.length));
        continue;
      }
      const auto pieces = static_cast<std::int64_t>(edge.path.size()) - 1;
      const std::int64_t first = low.ticks() * pieces / edge.length.ticks();
      const std::int64_t last = (high.ticks() * pieces + edge.length.ticks() - 1) / edge.length.ticks();
      for (std::int64_t i = first; i <= std::min(last, pieces); ++i)
        points.push_back(edge.path[static_cast<std::size_t>(i)]);
    }
  }
  return points;
}

Path zip_path(const Cover& cover, const PlanView& view) {
  const RimEdge& edge = cover.rim.edges.at(cover.zip.place.edge);
  // Only the strips of a boxed cover go round the corners.
  const std::vector<Point> points =
      cover.shaped ? edge.path : along_rim(cover.rim, edge.start - cover.zip.before, cover.zip.finished);
  Path path{Ink::zip_run, view(points.front()), {}, false};
  for (std::size_t i = 1; i < points.size(); ++i) path.stretches.push_back({view(points[i]), {}, false});
  return path;
}

// Beside the letter, where the cushion has room for it.
std::vector<Path> up_arrow(Wall up, const std::vector<PaperRing>& rings, const PaperBox& letter) {
  const PaperPoint middle = letter.centre();
  const bool level = up == Wall::front || up == Wall::rear;
  const PaperLength beside = (level ? letter.height() : letter.width()) / 2 + clear_of_letter;
  for (PaperLength length = longest_arrow; length >= shortest_arrow; length = length - paper_mm(1))
    for (const bool before : {true, false}) {
      const PaperLength aside = before ? -beside : beside;
      const PaperPoint at =
          level ? PaperPoint{middle.x, middle.y + aside} : PaperPoint{middle.x + aside, middle.y};
      const PaperPoint tip = outward(up, at, length / 2);
      const PaperPoint tail = outward(up, at, -(length / 2));
      const PaperBox box = grown({{std::min(tip.x, tail.x), std::min(tip.y, tail.y)},
                                  {std::max(tip.x, tail.x), std::max(tip.y, tail.y)}},
                                 paper_mm(15, 10));
      if (!holds(rings, box)) continue;
      return {straight(Ink::direction, tail, outward(up, tip, -paper_mm(2))), arrow_head(tip, tail)};
    }
  return {};
}

LabelWish middle_letter(const std::string& letter, const std::vector<PaperRing>& rings) {
  LabelWish wish;
  for (const PaperLength height : {letter_height, lettering::label})
    wish.wordings.push_back({{letter}, height, false, false});
  wish.home = rings;
  wish.target = bounds(rings.front()).centre();
  wish.weight = weight_of_figures;
  wish.key = letter;
  return wish;
}

std::vector<LabelWish> radius_wishes(const Rim& rim, const PlanView& view, Unit own) {
  std::vector<LabelWish> wishes;
  for (const RimEdge& edge : rim.edges) {
    if (!edge.radius) continue;
    LabelWish wish;
    wish.wordings = {{{"R " + dimension_figure(*edge.radius, own, false)}, lettering::label, false, false}};
    wish.target = view(edge.path[edge.path.size() / 2]);
    wish.may_stand_off = true;
    wish.key = wish.wordings.front().lines.front();
    wishes.push_back(std::move(wish));
  }
  return wishes;
}

}  // namespace

SetCushion set_cushion(const Cover& cover, const std::string& letter, std::int64_t ratio, Unit own) {
  SetCushion set{&cover, letter, {}, {}, {}};
  const Rect box = cover.piece->outline.polygon().bounds();
  const std::vector<Point> corners = measured_corners(cover.rim);
  bool many = false;
  bool left_out = false;
  for (const Wall side : four_walls) {
    DimensionChain parts{side, corner_stops(corners, box, side), false, DimensionChain::Of::things};
    const bool whole_here = side == Wall::left || side == Wall::front;
    many = many || parts.stops.size() > most_stops;
    if (parts.stops.size() > 2 && parts.stops.size() <= most_stops) add_chain(set.around, parts, ratio, own);
    if (whole_here)
      add_chain(set.around,
                {side, {parts.stops.front(), parts.stops.back()}, true, DimensionChain::Of::whole}, ratio,
                own);
    std::vector<ChainSetting>& chains = set.around.chains[side];
    for (std::size_t i = 0; i < chains.size(); ++i)
      keep_off(chains[i], std::span(chains).subspan(i + 1), ratio);
    set.around.lanes[side] = lanes_of(chains, first_chain);
    for (const ChainSetting& chain : chains) left_out = left_out || chain.chain.left_out;
  }
  if (left_out) set.around.in_words.emplace_back("The chains leave out splits too small for the scale.");
  if (many) set.around.in_words.emplace_back("The places of its many corners are in cut --json.");
  const auto depth = [&](Wall side) { return std::max(around_all, set.around.lanes.at(side).depth); };
  set.width = on_paper(box.width(), ratio) + depth(Wall::front) + depth(Wall::rear);
  set.height = on_paper(box.height(), ratio) + depth(Wall::left) + depth(Wall::right);
  return set;
}

std::vector<Mark> cushion_marks(const SetCushion& set, std::int64_t ratio, Unit own, PaperPoint corner) {
  const Cover& cover = *set.cover;
  const Outline& outline = cover.piece->outline;
  const PlanView view = view_of(set, ratio, corner);
  const Region region(outline.polygon());
  const Rect box = region.bounds();
  const PaperBox room{view({box.low.x, box.high.y}), view({box.high.x, box.low.y})};
  std::vector<Mark> marks;
  add(marks, paths_of(view, region, outline.arcs(), Ink::cushion));
  if (has_zip_edge(cover)) marks.emplace_back(zip_path(cover, view));
  std::vector<Mark> measures;
  for (const Wall side : four_walls) {
    const std::vector<ChainSetting>& chains = set.around.chains.at(side);
    for (std::size_t i = 0; i < chains.size(); ++i)
      add(measures, marks_of(chains[i], view, room, set.around.lanes.at(side).lines[i]));
  }
  // Lines first, so that the patches under figures clear those of every chain.
  std::ranges::stable_partition(measures,
                                [](const Mark& mark) { return std::holds_alternative<Path>(mark); });
  add(marks, std::move(measures));

  const std::vector<PaperRing> rings = view(region);
  LabelField field{room, {}, {}, {}, {}};
  add_obstacles(field, marks);
  std::vector<LabelWish> wishes{middle_letter(set.letter, rings)};
  const std::vector<PlacedLabel> letter = placed_labels(field, wishes);
  if (letter.front().number == 0) add(marks, marks_of(letter.front()));
  if (cover.up && letter.front().number == 0) {
    const std::vector<Path> arrow = up_arrow(*cover.up, rings, letter.front().box);
    for (const Path& path : arrow) marks.emplace_back(path);
  }
  LabelField rest{room, {}, {}, {}, {}};
  add_obstacles(rest, marks);
  for (const PlacedLabel& label : placed_labels(rest, radius_wishes(cover.rim, view, own)))
    if (label.number == 0) add(marks, marks_of(label));
  return marks;
}

}  // namespace berthwright
